import { readdirSync, readFileSync } from 'node:fs';
import { compareWithExpect } from '@tarebook/casebook';
import { expect, test } from 'vitest';
import { judge } from '../state/judged';
import { openReader } from '../state/reading';
import { openTopic } from '../state/topics';
import { caseText, expectedOf } from './case-text';
import { freshFigure } from './fresh-figure';
import { variantOf } from './variant';

const folder = new URL('../../../cases/', import.meta.url);
const topics = ['tow-fit', 'house-battery', 'gas-supply', 'truck-camper', 'weigh-in'];
const read = async (topic: string, file: string) => {
  await Promise.all([openTopic(topic), openReader()]);
  const { doc, answer } = judge(readFileSync(new URL(`${topic}/${file}`, folder), 'utf8'));
  if (!answer) throw new Error(`${topic}/${file} cannot be judged.`);
  return { doc, answer };
};
const filesOf = (topic: string) =>
  readdirSync(new URL(`${topic}/`, folder))
    .filter((file) => file.endsWith('.md'))
    .slice(-15);

test.each([
  ['3,150 lb', 'lb', 1.07, '3,370 lb'],
  ['180', 'lb', 0.9, '162'],
  ['180 lb', 'lb', 1.1, '198 lb'],
  ['20 lb', 'lb', 1.1, undefined],
  ['40 lb', 'lb', 1.1, undefined],
  ['12 V', 'V', 1.1, undefined],
  ['11 h', 'h', 1.1, '12.1 h'],
  ['7 A', 'A', 1.1, '7.7 A'],
  ['30,000 Btu/h', 'Btu/h', 1.07, '32,000 Btu/h'],
  ['60 %', '%', 1.1, '66 %'],
  ['4', 'd', 1.1, undefined],
  ['300–400 lb', 'lb', 1.1, undefined],
  ['unknown', 'lb', 1.1, undefined],
])('“%s” in %s, times %s, is %s', (text, unit, times, made) => {
  expect(freshFigure(text, unit, times)).toBe(made);
});

test.each(topics)(
  '%s: every variant can be judged, holds what it expects, and has other figures',
  async (topic) => {
    let made = 0;
    for (const file of filesOf(topic)) {
      const { doc, answer } = await read(topic, file);
      for (const seed of [1, 77]) {
        const variant = variantOf(doc, answer, seed);
        if (!variant) continue;
        made += 1;
        expect(variant.doc.troubles, file).toEqual([]);
        expect(variant.doc.expectations.length, file).toBeGreaterThan(0);
        expect(compareWithExpect(variant.doc, variant.answer), `${file}, seed ${seed}`).toEqual([]);
        expect(variant.doc.facts, file).not.toEqual(doc.facts);
        expect(Object.keys(variant.doc.facts), file).toEqual(Object.keys(doc.facts));
        expect(variantOf(doc, answer, seed)?.text, 'the same seed').toBe(variant.text);
      }
    }
    expect(made).toBeGreaterThan(5);
  },
);

test('seeds differ, and so do verdicts of one case among its variants', async () => {
  const { doc, answer } = await read('tow-fit', 'tandem-close-to-maximum.md');
  const all = Array.from({ length: 20 }, (_, seed) => variantOf(doc, answer, seed + 1));
  expect(new Set(all.map((each) => each?.text)).size).toBe(20);
  expect(new Set(all.map((each) => each?.answer.outcome)).size).toBeGreaterThan(1);
});

test('what is expected of a variant is refused where the figure is another', async () => {
  const { doc, answer } = await read('tow-fit', 'payload-not-known.md');
  const text = caseText({
    ...{ title: 'x', topic: 'tow-fit', question: 'x', tables: [], why: '' },
    expect: [['payload.used', '1,017 lb']],
  });
  expect(expectedOf(answer, 'payload.used')).toBe('1,016 lb');
  expect(expectedOf(answer, 'payload.available')).toBe('unknown');
  const { doc: wrong } = judge(text);
  expect(compareWithExpect(wrong, answer)).toEqual([
    { name: 'payload.used', expected: '1,017 lb', found: '1,016 lb' },
  ]);
  expect(doc.expectations.length).toBeGreaterThan(0);
});
