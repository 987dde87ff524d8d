import { towFit } from '@tarebook/rules';
import { type Asked, answerNow } from '@tarebook/rules/engine';
import { expect, test } from 'vitest';
import { readCatalogue } from './catalogue';
import { catalogueMoves } from './moves';
import { judgedThen, restingOn } from './resting';

const catalogue = (dry: number) =>
  readCatalogue({
    'trailers.csv': `name,dryWeight,gvwr\nHeron 14,${dry},3900\nBittern,2000,2900\n`,
  });
const moves = catalogueMoves(catalogue(1900), catalogue(2300));

const asked = (readFrom: string): Asked => ({
  facts: { 'vehicle.maxTrailerWeight': '2,000 lb', 'trailer.dryWeight': '1900 lb' },
  readFrom: { 'trailer.dryWeight': readFrom },
  asOf: '2026-11-01',
});

test('a case that was read from the changed entry comes to what its new figure makes it', () => {
  const found = restingOn(moves, {
    name: 'one',
    topic: towFit,
    asked: asked('catalogue, Heron 14'),
  });
  expect(found?.isTurned).toBe(true);
  const facts = { ...asked('').facts, 'trailer.dryWeight': '2300 lb' };
  expect(found?.is).toBe(answerNow(towFit, { facts, asOf: '2026-11-01' }).sentence);
});

test('what rests on another entry, or on a label, is not named', () => {
  for (const from of ['catalogue, Bittern', 'label']) {
    expect(restingOn(moves, { name: 'one', topic: towFit, asked: asked(from) })).toBeUndefined();
  }
});

test('an answer that was given is told by the words it had then', () => {
  const own = asked('catalogue, Heron 14');
  const answer = answerNow(towFit, own);
  const saved = JSON.parse(
    JSON.stringify({
      ...answer,
      asked: { facts: own.facts, readFrom: own.readFrom },
      sentence: 'It goes.',
    }),
  );
  const then = judgedThen('call-1', saved, { 'tow-fit': towFit });
  expect(then?.was).toBe('It goes.');
  expect(then && restingOn(moves, then)).toMatchObject({
    name: 'call-1',
    was: 'It goes.',
    isTurned: true,
  });
  expect(judgedThen('call-2', { topic: 'note' }, { 'tow-fit': towFit })).toBeUndefined();
});
