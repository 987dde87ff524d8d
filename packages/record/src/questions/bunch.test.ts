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

const n = 30_000;
/** Lines that make a reader go back over and over, were it let to. */
const long: readonly (readonly [string, string])[] = [
  ['a handle that does not end', `a${'1'.repeat(n)}`],
  ['dashes before a question', `${'-'.repeat(n)}?`],
  ['a row that is no rule', `| text |\n|${'-'.repeat(n)}x`],
  ['a time before spaces', `9:14${' '.repeat(n)}x`],
  ['a way before spaces', `Phone${' '.repeat(n)}x`],
  ['a count before spaces', `Message 3${' '.repeat(n)}x`],
  ['spaces alone', `${' '.repeat(n)}x`],
  ['marks of a quotation', `${'> '.repeat(n)}x`],
  ['a sender who does not end', `From: ${'<'.repeat(n)}\nx`],
  ['a sender of spaces', `From: ${' '.repeat(n)}x\nx`],
  ['who wrote, and spaces', `On Nov 28,${', '.repeat(n)}x wrote`],
  ['a name without an end', `A${'b'.repeat(n)} ${'C'.repeat(n)}!`],
  ['names without an end', `A${' B'.repeat(n)}!`],
  ['bold without an end', `**${'a*'.repeat(n)}`],
];

test.each(long)('a long line takes no longer than it is: %s', (_, line) => {
  const before = process.cpuUsage().user;
  expect(splitBunch(line).length).toBeLessThanOrEqual(1);
  expect((process.cpuUsage().user - before) / 1000).toBeLessThan(1_000);
});

test('what was said behind a time or a name is whole, however long it is', () => {
  const words = 'what ball height '.repeat(1_000).trim();
  for (const line of [`9:14 AM Dale R.: ${words}`, `**Dale R.:** ${words}`]) {
    expect(splitBunch(line)).toMatchObject([{ asker: 'Dale R.', text: words }]);
  }
  expect(splitBunch(`Message 3: ${words}`)).toMatchObject([{ text: words }]);
  expect(splitBunch(`Phone: ${words}`)).toMatchObject([{ channel: 'Phone', text: words }]);
});

test('a table of more rows than a call takes is read', () => {
  const table = `| text |\n| --- |\n${'| Which ball? |\n'.repeat(130_000)}`;
  expect(splitBunch(table)).toHaveLength(130_000);
});

/** A bunch as it comes off a screen or a page, and of each message by whom and how it begins. */
const pasted: readonly (readonly [string, string, readonly (readonly [string, string])[]])[] = [
  [
    'quoted Markdown',
    '> Can I tow 3,900 lb?\n> It is rated 5,000.\n\n> What ball height?\n',
    [
      ['', 'Can I tow 3,900 lb?\nIt is rated 5,000.'],
      ['', 'What ball height?'],
    ],
  ],
  [
    'a list with numbers',
    '## Comments\n1. Can I tow 3,900 lb?\n2. What ball height?\n10. Do you open Sundays?\n',
    [
      ['', 'Can I tow 3,900 lb?'],
      ['', 'What ball height?'],
      ['', 'Do you open Sundays?'],
    ],
  ],
  [
    'a list with numbers inside a message',
    'Two questions please:\n1) How heavy is the tongue?\n2) Which ball?\n\nNext one?\n',
    [
      ['', 'Two questions please:\n1) How heavy is the tongue?\n2) Which ball?'],
      ['', 'Next one?'],
    ],
  ],
  [
    'names in bold',
    '**Dale R.** (Nov 27)\nCan I tow 3,900 lb?\n\n**Wren:** What ball height?\n\n*Ike P., 9:14 AM*\nHow cold is too cold?\n',
    [
      ['Dale R.', 'Can I tow 3,900 lb?'],
      ['Wren', 'What ball height?'],
      ['Ike P.', 'How cold is too cold?'],
    ],
  ],
  [
    'handles with how long ago',
    'marsh_hen88 • 2h ago\nCan I tow 3,900 lb?\n@dale_r · 3 days ago\nWhat ball height?\n',
    [
      ['marsh_hen88', 'Can I tow 3,900 lb?'],
      ['@dale_r', 'What ball height?'],
    ],
  ],
  [
    'names and times before each, no empty lines',
    'Dale R. 9:14 AM\nCan I tow 3,900 lb?\nWren Oast 9:20 AM\nWhat ball height?\nand which shank\n',
    [
      ['Dale R.', 'Can I tow 3,900 lb?'],
      ['Wren Oast', 'What ball height?\nand which shank'],
    ],
  ],
  [
    'time first, then who',
    '9:14 AM Dale R.: Can I tow 3,900 lb?\n2026-11-27 09:20 - Wren: What ball height?\n',
    [
      ['Dale R.', 'Can I tow 3,900 lb?'],
      ['Wren', 'What ball height?'],
    ],
  ],
  [
    'numbered headings',
    'Message 1:\nCan I tow 3,900 lb?\nMessage 2: What ball height?\nQuestion #3\nHow cold is too cold?\n',
    [
      ['', 'Can I tow 3,900 lb?'],
      ['', 'What ball height?'],
      ['', 'How cold is too cold?'],
    ],
  ],
  [
    'figures behind a way, which count nothing',
    'Call 555-0142, what ball height?\n\nCall 2:30 pm please\n\nQuestion 2-inch ball or 2 5/16?\n\nShow 12.5 lb on it?\n\nText 1234: who is it?\n',
    [
      ['', 'Call 555-0142, what ball height?'],
      ['', 'Call 2:30 pm please'],
      ['', 'Question 2-inch ball or 2 5/16?'],
      ['', 'Show 12.5 lb on it?'],
      ['', 'Text 1234: who is it?'],
    ],
  ],
  [
    'a number to call inside of a list',
    '1. What ball height?\nCall 555-0142\n2. How cold is too cold?\n',
    [
      ['', 'What ball height?\nCall 555-0142'],
      ['', 'How cold is too cold?'],
    ],
  ],
  [
    'counted with a dash or a point',
    'Call 4 – What ball height?\nQuestion 3. How cold is too cold?\nText 5\nWhat pressure?\n',
    [
      ['', 'What ball height?'],
      ['', 'How cold is too cold?'],
      ['', 'What pressure?'],
    ],
  ],
  [
    'mails one under the other',
    'From: Ada Pell <ada@post.example>\nSent: Friday\nTo: us\nSubject: Ball\n\nWhich ball?\n\nAda\n\nFrom: Bo Nye <bo@post.example>\nSubject: Tires\n\nWhat pressure?\n',
    [
      ['Ada Pell', 'Ball\n\nWhich ball?\n\nAda'],
      ['Bo Nye', 'Tires\n\nWhat pressure?'],
    ],
  ],
  [
    'lines of who wrote',
    'On Fri, Nov 27, 2026 at 9:14 AM Ada Pell <ada@post.example> wrote:\n> Which ball?\n> Thanks\n\nOn Nov 28, 2026, Bo Nye wrote:\n> What pressure?\n',
    [
      ['Ada Pell', 'Which ball?\nThanks'],
      ['Bo Nye', 'What pressure?'],
    ],
  ],
  [
    'a table of Markdown',
    '| channel | from | message |\n| --- | --- | --- |\n| phone | Ada | Which ball? |\n| text | Bo | What pressure \\| how cold? |\n',
    [
      ['Ada', 'Which ball?'],
      ['Bo', 'What pressure | how cold?'],
    ],
  ],
  [
    'front matter before it',
    '---\ntitle: Friday\nday: 2026-11-27\n---\n\n# Phone\n\nWhich ball?\n\n# Mail\n\nWhat pressure?\n',
    [
      ['', 'Which ball?'],
      ['', 'What pressure?'],
    ],
  ],
];

test.each(pasted)('%s', (_, text, wanted) => {
  expect(splitBunch(text).map((each) => [each.asker, each.text])).toEqual(wanted);
});

test('a way alone on a line heads what follows, and ends a mail before it', () => {
  const read = splitBunch(`Forum

Dale: my midsize is rated 5000, is he right??

E-mail

Subject: Used trailer
We found one online, asking 9,500. Marcus

Phone note

Anita called 9:40 - smells gas inside by the stove, kids are in there

Counter

Lady asks if she needs sway bars
`);
  expect(read.map(({ channel, text }) => [channel, text.slice(0, 12)])).toEqual([
    ['Forum', 'my midsize i'],
    ['E-mail', 'Used trailer'],
    ['Phone note', 'Anita called'],
    ['Counter', 'Lady asks if'],
  ]);
});
