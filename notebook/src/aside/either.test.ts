import { retrofit } from '@tarebook/rules/retrofit';
import { towFit } from '@tarebook/rules/tow-fit';
import { expect, test } from 'vitest';
import { madeOf } from './either';

const open = [
  { value: '1480 lb', among: ['vehicle.placardPayload', 'trailer.cargoCapacity'] },
] as const;

test('what is the same whichever a figure is, is not said for each', () => {
  const asked = { facts: {}, asOf: '2026-11-01' };
  expect(madeOf(retrofit, asked, { open, asking: 'hands' })).toBe('');
});

test('what differs is said for each, and asked', () => {
  const asked = { facts: {}, asOf: '2026-11-01' };
  const weights = [{ value: '4200 lb', among: ['trailer.dryWeight', 'trailer.gvwr'] }];
  expect(madeOf(towFit, asked, { open: weights, asking: 'fit' })).toMatch(
    /^If 4,200 lb is the dry weight: .+ If it is the trailer’s GVWR: .+ Which is it\?$/,
  );
});
