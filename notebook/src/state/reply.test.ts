import { readdirSync, readFileSync } from 'node:fs';
import { askedOf, judgeCaseNow, readCase } from '@tarebook/casebook';
import { answerTraced } from '@tarebook/rules/engine';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { aloud, secondsAloud } from './aloud';
import { guarded, replyKinds, replyOf, type Told, verdictKey } from './reply';

const seed = Number(process.env.TAREBOOK_SEED ?? 20261101);
const folder = new URL('../../../cases/tow-fit/', import.meta.url);
const names = readdirSync(folder).map((file) => file.slice(0, -'.md'.length));

const judgedOnce = new Map<string, Told>();

function toldOf(name: string, system: 'us' | 'metric' = 'us'): Told {
  const key = `${system} ${name}`;
  const known = judgedOnce.get(key);
  if (known) return known;
  const doc = readCase(readFileSync(new URL(`${name}.md`, folder), 'utf8'));
  if (!doc.topic) throw new Error(`${name} has no topic.`);
  const { topic, asked } = askedOf(doc);
  const answer = answerTraced(topic, { ...asked, units: system });
  const told = { title: doc.front.title, topic, answer, system };
  judgedOnce.set(key, told);
  return told;
}

/** Where the facts of a case were read, as they stand in a sentence. */
const readFrom = (name: string): readonly string[] =>
  Object.values(readCase(readFileSync(new URL(`${name}.md`, folder), 'utf8')).readFrom).flatMap(
    (place) => [place, `${place.charAt(0).toLowerCase()}${place.slice(1)}`],
  );

test('every reply of every case carries a figure and its cautions, in both systems of units', () => {
  for (const name of names) {
    for (const system of ['us', 'metric'] as const) {
      for (const kind of replyKinds) {
        const { text, cautions } = replyOf(kind, toldOf(name, system));
        expect(text, `${name} ${kind}`).toMatch(/\d/);
        expect(cautions.length).toBeGreaterThan(0);
        for (const each of cautions) expect(text).toContain(each);
        expect(text).not.toMatch(/undefined|NaN|Infinity|\[object/);
      }
    }
  }
});

test('the letter goes from the verdict by its cautions to limits, working, sources and rules', () => {
  const told = toldOf('crossover-and-single-axle');
  const { text } = replyOf('letter', told);
  const { answer, title } = told;
  const places = [
    title,
    answer.sentence,
    ...answer.cautions,
    '\n\nHow close to each limit\n',
    ', 52 lb left',
    '\n\nThe working\n',
    'Tongue weight, loaded: 473 lb',
    '\n\nNumbers used\n',
    '(house)',
    '\n\nSources\n',
    'published: ',
    `Rules tow-fit ${answer.rules}, as of 2026-11-01.`,
  ].map((part) => text.indexOf(part));
  expect(places.every((place) => place >= 0)).toBe(true);
  expect(places).toEqual(places.toSorted((a, b) => a - b));
  expect(text.endsWith('as of 2026-11-01.')).toBe(true);
});

test('what is said aloud is the verdict in one breath, then its caution', () => {
  const told = toldOf('crossover-and-single-axle');
  expect(replyOf('spoken', told).text).toBe(
    `The trailer fits, with care – payload runs out first: 52 pounds left of 1,260 pounds. The tongue weight is only estimated: 564 pounds would be as common, and no more than 500 pounds may rest on the ball. ${told.answer.cautions[0]}`,
  );
});

test('when it cannot be said, the reply says what to find out and where it tips', () => {
  const told = toldOf('payload-not-known');
  const [first] = told.answer.missing;
  if (!first) throw new Error('Nothing is missing.');
  for (const kind of replyKinds) expect(replyOf(kind, told).text).toContain('below 1,016');
  expect(replyOf('post', told).text).toContain(first.ask);
  expect(replyOf('letter', told).text).toContain(`Read it from: ${first.where}.`);
});

test('what is said aloud is said in under a minute', () => {
  for (const name of names) {
    expect(secondsAloud(replyOf('spoken', toldOf(name)).text), name).toBeLessThan(60);
  }
});

test('a hundred and fifty words take a minute, and signs between words take none', () => {
  expect(secondsAloud('word '.repeat(150))).toBe(60);
  expect(secondsAloud('fits – with care')).toBe(secondsAloud('fits with care'));
});

test('no sign is left that a speaker would stumble over', () => {
  expect(aloud('16–38 lb left of 500 lb, −2 ft at 92.4–96.8 %')).toBe(
    '16 to 38 pounds left of 500 pounds, minus 2 feet at 92.4 to 96.8 percent',
  );
  expect(aloud('1 lb, 1 ft, 11 lb, 2 in the bed, 2 in')).toBe(
    '1 pound, 1 foot, 11 pounds, 2 in the bed, 2 inches',
  );
  for (const name of names) {
    for (const system of ['us', 'metric'] as const) {
      expect(replyOf('spoken', toldOf(name, system)).text, name).not.toMatch(
        /\d (lb|kg|ft|in|m|mm|gal|L|%)(?![\w·])|\d–\d|±/,
      );
    }
  }
});

test('in metric no pound or foot is left', () => {
  for (const name of names) {
    const told = toldOf(name, 'metric');
    for (const kind of replyKinds) {
      const { text } = replyOf(kind, told);
      // A source is cited as it is printed, and where a fact was read as its author wrote it.
      const places = readFrom(name).reduce((before, place) => before.replaceAll(place, ''), text);
      const ours = places.replace(/\n\nSources\n(– .*\n)+/, '').replaceAll('per 1,000 ft', '');
      expect(ours, `${name} ${kind}`).not.toMatch(/\d (lb|ft|gal|ft²|lb·ft)\b(?! per)/);
    }
  }
});

test('a caution that was taken out is put back, and what is there is not said twice', () => {
  const { text, cautions } = replyOf('post', toldOf('crossover-and-single-axle'));
  expect(guarded(text, cautions)).toEqual({ text, putBack: [] });
  const [first = ''] = cautions;
  const without = text.replace(first, '');
  const back = guarded(without, cautions);
  expect(back.putBack).toEqual([first]);
  for (const each of cautions) expect(back.text).toContain(each);
  expect(guarded(text.toUpperCase().replaceAll(' ', '\n'), cautions).putBack).toEqual([]);
});

test('whatever a person makes of it, the text that leaves has its cautions', () => {
  const { cautions } = replyOf('letter', toldOf('two-too-many'));
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme', maxLength: 200 }), (text) => {
      const { text: sent } = guarded(text, cautions);
      for (const each of cautions) expect(sent).toContain(each);
      expect(sent.startsWith(text.trimEnd())).toBe(true);
      expect(guarded(sent, cautions)).toEqual({ text: sent, putBack: [] });
    }),
    { seed },
  );
});

test('a wording belongs to its verdict: another figure, another verdict', () => {
  const text = readFileSync(new URL('crossover-and-single-axle.md', folder), 'utf8');
  const doc = readCase(text);
  const heavier = readCase(text.replace('1,260 lb', '1,250 lb'));
  if (!doc.topic) throw new Error('The case has no topic.');
  const key = (of: typeof doc) => {
    const { topic } = of;
    if (!topic) throw new Error('The case has no topic.');
    return verdictKey({ title: of.front.title, topic, answer: judgeCaseNow(of), system: 'us' });
  };
  expect(key(doc)).toBe(key(readCase(text)));
  expect(key(heavier)).not.toBe(key(doc));
});
