import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { judge } from '../state/judged';
import { openReader } from '../state/reading';
import { openTopic } from '../state/topics';
import { heardIn } from './say-aloud';

const judged = async (name: string) => {
  await Promise.all([openTopic('tow-fit'), openReader()]);
  const { doc, answer } = judge(
    readFileSync(new URL(`../../../cases/tow-fit/${name}.md`, import.meta.url), 'utf8'),
  );
  if (!answer) throw new Error(`${name} cannot be judged.`);
  return { doc, answer };
};

const missed = async (name: string, sentence: string) => {
  const { doc, answer } = await judged(name);
  return heardIn(sentence, doc, answer, 'us').flatMap(({ id, said }) => (said ? [] : [id]));
};

const stop = 'payload-before-rating';

test('a whole sentence misses nothing, typed with a figure or dictated in words', async () => {
  const { answer } = await judged(stop);
  const limit = answer.limits.find(({ id }) => id === answer.binding);
  const over = Math.round(-(limit?.headroom.hi ?? 0));
  expect(over).toBeGreaterThan(0);
  const label = limit?.label.toLowerCase();
  const end = 'Weigh the loaded rig on a scale before the trip.';
  expect(
    await missed(stop, `The trailer does not fit: the ${label} is ${over} lb over. ${end}`),
  ).toEqual([]);
  expect(await missed(stop, `That won’t do, ${label} is over by ${over} pounds. ${end}`)).toEqual(
    [],
  );
  const metric = Math.round(over * 0.45359237);
  expect(await missed(stop, `Not this one, ${metric} kg too much ${label}. ${end}`)).toEqual([]);
});

test('each part that is left out, or wrong, is named', async () => {
  expect(await missed(stop, '')).toEqual(['verdict', 'limit', 'left', 'caution']);
  expect(await missed(stop, 'That fits fine.')).toEqual(['verdict', 'limit', 'left', 'caution']);
  expect(await missed(stop, 'The trailer does not fit.')).toEqual(['limit', 'left', 'caution']);
  expect(await missed(stop, 'The trailer does not fit, the payload is 9,999 lb over.')).toContain(
    'left',
  );
  expect(await missed(stop, 'The trailer does not fit; weigh it on a scale.')).not.toContain(
    'caution',
  );
});

test('where the verdict is open, the question to ask is listened for, and no figure', async () => {
  const name = 'payload-not-known';
  expect(await missed(name, 'That fits.')).toEqual(['verdict', 'ask', 'caution']);
  expect(
    await missed(
      name,
      'I cannot say yet: ask her what payload the door label gives, for the label wins over any brochure.',
    ),
  ).toEqual([]);
});

test('a figure in words counts as one in digits, and one far off counts as none', async () => {
  const { doc, answer } = await judged('payload-not-known');
  const level = { ...answer, outcome: 'fits', binding: 'tongue' } as const;
  const left = (sentence: string) =>
    heardIn(sentence, doc, level, 'us').find(({ id }) => id === 'left')?.said;
  expect(left('You have a hundred and four pounds of tongue weight left')).toBe(true);
  expect(left('You have about a hundred pounds of tongue weight left')).toBe(true);
  expect(left('You have 104 lb left')).toBe(true);
  expect(left('You have 47 kg left')).toBe(true);
  expect(left('You have a hundred and fifty pounds left')).toBe(false);
  expect(left('You have 104 kg left')).toBe(false);
  expect(left('You have some left')).toBe(false);
});

test('what stops without a limit is listened for instead of one', async () => {
  expect(await missed('wrong-ball-size', 'No.')).toEqual(['limit', 'caution']);
  expect(
    await missed(
      'wrong-ball-size',
      'Not with this ball: the coupler asks for another size. Weigh it on a scale, too.',
    ),
  ).toEqual([]);
});
