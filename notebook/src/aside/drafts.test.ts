import { personalIn, type ReadMessage } from '@tarebook/record';
import { wordsIn } from '@tarebook/rules/engine';
import { beforeAll, expect, test } from 'vitest';
import type { Answered } from '../questions/answer-shapes';
import { soughtOf } from '../questions/known';
import type { ReadPart } from '../questions/told-so-far';
import { withUnread } from '../questions/unread';
import { recordsOf } from '../state/questions';
import { hearQuestions } from './questions';

/** Twenty messages of five kinds of writers, most of them with a figure or two. */
const morning: readonly string[] = [
  'We have a wagon, sticker says tow rating 5,000 lb. Looking at one that is 3,850 lb dry, GVWR 4,900. Is that ok?',
  'Door sticker says 1,480 lb payload. Me and the wife are 390 together, dog 60, about 150 of stuff in the bed. Tongue weight is listed 620 lb. Am I over?',
  'When it comes to winterizing, do I have to bypass the water heater first?',
  'can my wagon pull this? 5000 lb tow',
  'how high should the ball be? my coupler sits at 19 inches when its level and the receiver on my truck is 23',
  'battery monitor says 52% in the morning is that bad? two lead acid ones',
  'does it come with the solar package or is that extra? and can you get it with the bigger fridge',
  'would a half ton truck be able to tow it ok',
  'Backed into a post, dent on the rear corner. Worth going through insurance, deductible is $500?',
  'right wheel hub too hot to touch and smells burned, pulled over right now. Can he drive on?',
  'We would like to run our grill off the quick connect of the trailer. I heard it is at 11 inches. Do I need to take the regulator off the grill?',
  'The sidewall of my tires says 65 psi max. Should I run 65 or less when the trailer is light?',
  'what spares should I carry for a single axle trailer on a long trip?',
  'Someone stole a trailer two streets over. What lock do you recommend, coupler lock or wheel boot?',
  'my lead battery reads 12.1 volts, is that empty?',
  'How old can trailer tires get before I have to change them? Mine say 3218.',
  'we smell gas inside the camper right now near the stove, what do we do',
  'i got 2 x 100ah lithium, furnace runs all night, how long will it last',
  'at what percent should i stop using my lead batteries',
  'whats the tongue weight supposed to be on a 4200 lb trailer? and do i need a weight distribution hitch for that',
];

type Draft = { readonly part: ReadPart; readonly answered: Answered };
const drafts: Draft[] = [];

beforeAll(async () => {
  const found = morning.map((text) => ({ channel: '', asker: '', askedOn: '', text }));
  const messages = recordsOf(found, 1);
  const read: ReadMessage[] = [];
  await hearQuestions({ ask: 'read', turn: 1, messages, filed: {} }, (told) => {
    if (told.told === 'read' && !told.near) read.push(...told.read);
  });
  for (const asked of messages) {
    for (const part of read.find(({ id }) => id === asked.id)?.parts ?? []) {
      const of = soughtOf(asked, part);
      if (!of) continue;
      await hearQuestions({ ask: 'answer', key: '', of: { ...of, note: null } }, (told) => {
        if (told.told !== 'answer' || !told.answered) return;
        const answered = withUnread(told.answered, part, personalIn(part.text));
        drafts.push({ part, answered });
      });
    }
  }
});

const draftOf = (words: string): string => {
  const found = drafts.find(({ part }) => part.text.includes(words));
  expect(found, words).toBeDefined();
  return found?.answered.text ?? '';
};

test('the drafts of twenty messages are read in four and a half minutes', () => {
  expect(drafts.length).toBeGreaterThanOrEqual(21);
  const counts = drafts.map(({ answered }) => wordsIn(answered.text));
  // Read silently at 4 words a second.
  expect(counts.reduce((sum, each) => sum + each, 0)).toBeLessThanOrEqual(1_100);
  for (const { answered } of drafts) expect(answered.form).toBe('short');
});

test('what was asked is answered, in the figures that were told', () => {
  expect(draftOf('Am I over')).toMatch(/^In the vehicle 198 lb may still come along\./);
  expect(draftOf('wagon pull this')).toMatch(/^A rating of 5,000 lb means trailers/);
  expect(draftOf('is that bad')).toMatch(/^The battery is 52 % full/);
  expect(draftOf('65 or less')).toMatch(/^The sidewall’s 65 psi are the most/);
  expect(draftOf('Mine say 3218')).toMatch(/^The tire is 8\.\d yr old and past its years/);
  expect(draftOf('furnace runs all night')).toContain(
    'how many amperes does the furnace blower draw',
  );
});

test('whether bars are needed is answered by what rests on the ball, and what may', () => {
  const said = draftOf('weight distribution hitch');
  expect(said).toMatch(/with about \d+ lb on the ball/);
  expect(said).toContain('how much may rest on the ball without a weight-distributing hitch?');
});

test('no figure of an example stands where another was told', () => {
  expect(draftOf('how high should the ball be')).not.toMatch(/21 in|4\.5 in/);
});

test('a danger comes first, and whole', () => {
  expect(draftOf('smell gas')).toMatch(
    /^Everybody out into fresh air now, touch no switch, no flame\./,
  );
  expect(draftOf('smell gas')).toContain('Do not go back in');
  expect(draftOf('too hot to touch')).toMatch(/^Stop where it is safe/);
  expect(draftOf('grill off the quick connect')).toContain('only in the open air');
  expect(draftOf('Backed into a post')).toContain('Do not tow it before');
});

test('the second half of a message is about what the first was, with what it told', () => {
  expect(drafts.find(({ part }) => part.text.includes('bigger fridge'))?.part.topic).toBe(
    'options-fit',
  );
  const bars = drafts.find(({ part }) => part.text.includes('weight distribution'))?.part;
  expect(bars?.asking).toBe('bars');
  expect(bars?.open?.[0]?.value).toBe('4200 lb');
});

test('a weight told without its kind is none of its kinds: it is answered for each, and asked', () => {
  const said = draftOf('tongue weight supposed to be');
  expect(said).toMatch(/^If 4,200 lb is the dry weight: A trailer .* Which is it\?$/);
  expect(said).toMatch(/A trailer of 4,200 lb empty comes to .* with about \d+ lb on the ball/);
  expect(said).toMatch(/A trailer with a maximum of 4,200 lb .* \d+ lb allowed on the ball/);
  const found = drafts.find(({ part }) => part.text.includes('tongue weight supposed'));
  expect(found?.part.facts).toEqual({});
  expect(found?.answered.beside).toBeUndefined();
});
