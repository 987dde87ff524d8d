import { readFileSync } from 'node:fs';
import { setFact } from '@tarebook/casebook';
import { expect, test } from 'vitest';
import { questionOf } from '../class/predict';
import { judge } from '../state/judged';
import { openReader, readDocument } from '../state/reading';
import { openTopic } from '../state/topics';
import { mistakeOf } from './mistakes';

const judged = async (name: string, change: (text: string) => string = (text) => text) => {
  await Promise.all([openTopic('tow-fit'), openReader()]);
  const file = new URL(`../../../cases/tow-fit/${name}.md`, import.meta.url);
  const { doc, answer } = judge(change(readFileSync(file, 'utf8')));
  if (!answer) throw new Error(`${name} cannot be judged.`);
  return { doc, question: questionOf(doc, answer) };
};
const asking = (result: string) => (text: string) =>
  text.replace(/:::predict\{[^}]*\}/, `:::predict{result="${result}" within="5 lb"}`);

test('a figure is taken for the mistake under which it would have been right', async () => {
  // 3,150 lb on the sticker; 240 lb of kitchen and bedding and 20 lb of gas make 3,410 lb.
  const loaded = await judged('payload-not-known', asking('trailer.loaded'));
  expect(mistakeOf(loaded.doc, loaded.question, '3,150 lb')).toBe('dry');
  expect(mistakeOf(loaded.doc, loaded.question, '3,410 lb')).toBeUndefined();
  expect(mistakeOf(loaded.doc, loaded.question, '3,300 lb')).toBeUndefined();
  // 360 lb on the sticker, with 10 % on top 396 lb.
  const tongue = await judged('payload-not-known', asking('tongue.loaded'));
  expect(mistakeOf(tongue.doc, tongue.question, '360 lb')).toBe('dry');
  // Four people and bags are 595 lb of the 1,016 lb.
  const used = await judged('payload-not-known', asking('payload.used'));
  expect(mistakeOf(used.doc, used.question, '421 lb')).toBe('payload');
  expect(mistakeOf(used.doc, used.question, '396 lb')).toBe('payload');
});

test('whoever reckons a payload from the brochure, or is sure of what nobody read, is told apart', async () => {
  // 6,000 lb less 4,480 lb, both of the brochure.
  const available = await judged('payload-not-known', asking('payload.available'));
  expect(mistakeOf(available.doc, available.question, '1,520 lb')).toBe('brochure');
  expect(mistakeOf(available.doc, available.question, '900 lb')).toBe('open');
  const read = await judged('payload-not-known', (text) =>
    setFact(readDocument(asking('payload.available')(text)), 'vehicle.placardPayload', '1,200 lb'),
  );
  expect(mistakeOf(read.doc, read.question, 'cannot be told from this')).toBe('known');
});
