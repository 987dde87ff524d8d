import { expect, test } from 'vitest';
import { splitBunch } from './bunch';

const bunch = `# Phone
Ruth asks whether her wagon pulls the Teasel 16.

Man with a truck camper, wants to know about the rear axle.
Calls back at noon.

Comments under the towing film:
Dale R., Nov 27
Can I tow 3,900 lb with 5,000 lb rated?
Thanks
---
- u open 4th of july
- what tire pressure cold?

[11/27/2026, 9:14 AM] Wren: Smell of gas at the stove!
[11/27/2026, 9:20 AM] Ike: how long does a 100 Ah battery last
and does it matter how cold it is

From: Ada Pell <ada@example.org>
Date: Fri, 27 Nov 2026
Subject: Two questions

Hello,

first, what does the label say?

Second, which ball?


Counter (Finn): does the furnace eat the battery?
`;

test('a bunch from several channels is split into its messages, each with who and when', () => {
  expect(splitBunch(bunch)).toEqual([
    { channel: 'Phone', asker: '', askedOn: '', text: expect.stringMatching(/^Ruth asks/) },
    {
      channel: 'Phone',
      asker: '',
      askedOn: '',
      text: 'Man with a truck camper, wants to know about the rear axle.\nCalls back at noon.',
    },
    {
      channel: 'Comments under the towing film',
      asker: 'Dale R.',
      askedOn: 'Nov 27',
      text: 'Can I tow 3,900 lb with 5,000 lb rated?\nThanks',
    },
    expect.objectContaining({ asker: '', text: 'u open 4th of july' }),
    expect.objectContaining({ asker: '', text: 'what tire pressure cold?' }),
    expect.objectContaining({
      asker: 'Wren',
      askedOn: '11/27/2026, 9:14 AM',
      text: 'Smell of gas at the stove!',
    }),
    expect.objectContaining({
      asker: 'Ike',
      text: 'how long does a 100 Ah battery last\nand does it matter how cold it is',
    }),
    expect.objectContaining({
      asker: 'Ada Pell',
      askedOn: 'Fri, 27 Nov 2026',
      text: 'Two questions\n\nHello,\n\nfirst, what does the label say?\n\nSecond, which ball?',
    }),
    {
      channel: 'Counter',
      asker: 'Finn',
      askedOn: '',
      text: 'does the furnace eat the battery?',
    },
  ]);
});

test('what has no words is no message, and megabytes are split at once', () => {
  expect(splitBunch(' \n\0\n---\n?!\n')).toEqual([]);
  const many = splitBunch('Is it safe to tow this one home?\n\n'.repeat(100_000));
  expect(many).toHaveLength(100_000);
  const long = `${'a'.repeat(2_000_000)} ${'- '.repeat(500_000)}`;
  expect(splitBunch(long)).toHaveLength(1);
  expect(splitBunch('1:'.repeat(1_000_000))).toHaveLength(1);
});
