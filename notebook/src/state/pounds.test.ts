import { readFileSync } from 'node:fs';
import { judgeCaseNow, readCase, removeFact } from '@tarebook/casebook';
import { expect, test } from 'vitest';
import { poundsWayOf } from './pounds';

const file = new URL('../../../cases/tow-fit/crossover-and-single-axle.md', import.meta.url);
const doc = readCase(readFileSync(file, 'utf8'));

test('no pound is lost: what rests on the ball and on the axles is the trailer, and the ball counts in the payload', () => {
  const answer = judgeCaseNow(doc);
  const way = poundsWayOf(answer);
  if (!way) throw new Error('There is no way.');
  expect(way.tongue.hi + way.axles.hi).toBeCloseTo(way.trailer.hi, 9);
  expect(way.aboard.hi + way.tongue.hi).toBeCloseTo(answer.values['payload.used']?.hi ?? 0, 9);
  expect(way.axles.hi).toBeCloseTo(answer.values['axle.trailer']?.hi ?? 0, 9);
  expect(way.payload?.hi).toBe(1260);
});

test('where an end is open there is no picture; a payload nobody read leaves out its line alone', () => {
  const without = (id: string) => poundsWayOf(judgeCaseNow(readCase(removeFact(doc, id))));
  expect(without('trailer.dryWeight')).toBeUndefined();
  expect(poundsWayOf({ ...judgeCaseNow(doc), limits: [] })?.payload).toBeUndefined();
});
