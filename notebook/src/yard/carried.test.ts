import { towFit } from '@tarebook/rules/tow-fit';
import { expect, test } from 'vitest';
import { carriedOf } from '../state/carried';
import { factsOf, isEnough, isRatingOnly, nothingTold, packedAsTold, toldSaid } from './told';
import { toldOf } from './told-carried';

const shopper = {
  'vehicle.maxTrailerWeight': '3,500 lb',
  'vehicle.placardPayload': '1,180 lb',
  'vehicle.gcwr': '8,000 lb',
  'vehicle.curbWeight': 'unknown',
  'load.occupants': [
    { label: 'Driver', weight: '190 lb' },
    { label: 'Partner', weight: '160 lb' },
    { label: 'Older child', weight: '70 lb' },
  ],
  'load.cargo': [{ label: 'Bags', weight: '60 lb' }],
};

const told = (facts: Parameters<typeof carriedOf>[1]) => {
  const carried = carriedOf(towFit, facts);
  if (!carried) throw new Error('Nothing was carried.');
  return toldOf(carried);
};

test('what a case tells of a vehicle and of those aboard goes along to the yard', () => {
  const found = told(shopper);
  expect(found.way).toBe('trailers');
  expect(found.figures).toEqual({
    'vehicle.maxTrailerWeight': '3,500 lb',
    'vehicle.placardPayload': '1,180 lb',
  });
  expect(found.aboard).toEqual({ adult: 2, child: 1, dog: 0 });
  const { 'vehicle.curbWeight': _, ...known } = shopper;
  expect(factsOf(found, [])).toEqual(known);
  expect(found.more?.said).toEqual(['GCWR: 8,000 lb', 'Bags: 60 lb']);
  expect(toldSaid(found)).toBe(
    'Their vehicle; Rated to pull: 3,500 lb; Payload: 1,180 lb; GCWR: 8,000 lb; Bags: 60 lb.',
  );
});

test('whoever is counted anew is counted at the usual weights', () => {
  const found = told(shopper);
  const anew = { ...found, aboard: { ...found.aboard, adult: 4 }, riding: undefined };
  expect(factsOf(anew, [])['load.occupants']).toHaveLength(5);
  expect(factsOf(anew, [])['vehicle.gcwr']).toBe('8,000 lb');
});

test('of a pair the trailer stays behind and what is packed goes along, without its place', () => {
  const found = told({
    ...shopper,
    'trailer.dryWeight': '2,900 lb',
    'trailer.cargo': [{ label: 'Kitchen', weight: '120 lb', ahead: '3 ft' }],
  });
  const facts = factsOf(found, []);
  expect(Object.keys(facts).filter((id) => id.startsWith('trailer.'))).toEqual(['trailer.cargo']);
  expect(facts['trailer.cargo']).toEqual([{ label: 'Kitchen', weight: '120 lb' }]);
  expect(found.load).toBe(packedAsTold);
  expect(factsOf({ ...found, load: '' }, [])['trailer.cargo']).toBeUndefined();
});

test('a trailer alone is set against vehicles, and a case of neither against nothing', () => {
  const found = told({ 'trailer.gvwr': '3,500 lb', 'trailer.axles': '1' });
  expect([found.way, found.figures]).toEqual(['vehicles', { 'trailer.gvwr': '3,500 lb' }]);
  expect(found.aboard).toEqual(nothingTold('vehicles').aboard);
  expect(carriedOf(towFit, { 'load.cargo': shopper['load.cargo'] })).toBeUndefined();
  expect(carriedOf(towFit, { 'vehicle.placardPayload': 'unknown' })).toBeUndefined();
});

test('a figure that the yard has no field for is enough, and a rating beside others is not alone', () => {
  expect(isEnough(told({ 'vehicle.gcwr': '8,000 lb' }))).toBe(true);
  expect(isRatingOnly(told({ 'vehicle.maxTrailerWeight': '3,500 lb' }))).toBe(true);
  const both = told({ 'vehicle.maxTrailerWeight': '3,500 lb', 'vehicle.gcwr': '8,000 lb' });
  expect(isRatingOnly(both)).toBe(false);
});
