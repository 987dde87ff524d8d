import { expect, test } from 'vitest';
import { splitBunch } from './bunch';

const fromSeveral = `FORUM - the valley campers board
trailrunner_dee wrote:
Is 3,850 lb dry really ok with a rating of 5,000?

MapleMarge wrote:
Do I have to bypass the water heater?

VIDEO COMMENTS (under our walkaround video)
@benji_r  3 days ago
can my wagon pull this?

@lil_tow_peep  22 hours ago
would a small one be able to tow it ok

PHONE NOTE
Tues 9:10 Mrs. Quarrie called about a dent.

E-MAIL
From: Marcus Yeo
Subject: (no subject)
12.1 volts, is that empty?

COUNTER CHAT
[10:02] Guest: hi are you open?

# Comments (under the long film of the walkaround)
How high is the ball?

Phone note:
A man asks about the jack.
`;

test('headings tell the way, in capitals too, and whoever wrote is a person', () => {
  expect(
    splitBunch(fromSeveral).map(({ channel, asker, text }) => [channel, asker, text.slice(0, 12)]),
  ).toEqual([
    ['Forum - the valley campers board', 'trailrunner_dee', 'Is 3,850 lb '],
    ['Forum - the valley campers board', 'MapleMarge', 'Do I have to'],
    ['Video comments (under our walkaround video)', '@benji_r', 'can my wagon'],
    ['Video comments (under our walkaround video)', '@lil_tow_peep', 'would a smal'],
    ['Phone note', '', 'Tues 9:10 Mr'],
    ['E-mail', 'Marcus Yeo', '12.1 volts, '],
    ['Counter chat', 'Guest', 'hi are you o'],
    ['Comments (under the long film of the walkaround)', '', 'How high is '],
    ['Phone note', '', 'A man asks a'],
  ]);
});

test('what is said in capitals or behind a way is no heading', () => {
  for (const text of ['PHONE - WE SMELL GAS NOW', 'CALL ME BACK PLEASE', 'Counter - needs a jack'])
    expect(
      splitBunch(`${text}\nand the heater is off`)
        .map((each) => each.text)
        .join(' '),
    ).toContain(text);
});

test('a way in brackets heads what follows, and what is shown in brackets does not', () => {
  const ways = splitBunch(
    '[forum]\nFrom: gus\nCan it pull it?\n\n[phone notes]\nMon 4:10 - a hub is hot\n\n[photo]\nIs this dent bad?\n',
  ).map(({ channel, asker, text }) => [channel, asker, text]);
  expect(ways.map(([way]) => way)).toEqual(['forum', 'phone notes', 'phone notes']);
  expect(ways[2]?.[2]).toContain('[photo]');
});

test('calls that are noted one below the other are a message each', () => {
  const calls = splitBunch(
    '[phone notes]\nFri 8:50a - left hub too hot to touch\non the shoulder now\nFri 9:15 - when to repack bearings\n\nWe leave\nFri 9:15 - is that early enough?\n',
  );
  expect(calls.map(({ text }) => text)).toEqual([
    'Fri 8:50a - left hub too hot to touch\non the shoulder now',
    'Fri 9:15 - when to repack bearings',
    'We leave\nFri 9:15 - is that early enough?',
  ]);
});
