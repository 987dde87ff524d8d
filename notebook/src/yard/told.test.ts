import { expect, test } from 'vitest';
import {
  factsOf,
  isEnough,
  isRatingOnly,
  nothingTold,
  refusedIn,
  refusedWeight,
  toldSaid,
} from './told';

const hybrid = {
  ...nothingTold('trailers'),
  figures: { 'vehicle.maxTrailerWeight': '3,500 lb', 'vehicle.placardPayload': 'unknown' },
  aboard: { adult: 3, child: 1, dog: 0 },
};

test('one figure is enough, none is not', () => {
  expect(isEnough(hybrid)).toBe(true);
  expect(isRatingOnly(hybrid)).toBe(true);
  expect(isEnough(nothingTold('trailers'))).toBe(false);
  expect(isEnough({ ...nothingTold('vehicles'), chosen: 'Sallow 13' })).toBe(true);
});

test('whom it is about, in one line for paper', () => {
  expect(toldSaid(hybrid)).toBe('Their vehicle; Rated to pull: 3,500 lb.');
  const figures = { 'trailer.dryWeight': '3,900', 'trailer.gvwr': 'unknown' };
  expect(toldSaid({ ...nothingTold('vehicles'), figures })).toBe(
    'Their trailer; Dry weight: 3,900 lb.',
  );
  expect(toldSaid({ ...nothingTold('trailers'), chosen: 'Corrie Hybrid' })).toBe('Corrie Hybrid.');
});

test('what is not known is not told; everybody aboard has a weight of their own', () => {
  const rows = [
    { name: 'a weekend', list: 'trailer.cargo', label: 'Food', weight: '120', ahead: '-2' },
    { name: 'a week', list: 'trailer.cargo', label: 'Food', weight: '190', ahead: '' },
  ];
  expect(factsOf({ ...hybrid, load: 'a weekend' }, rows)).toEqual({
    'vehicle.maxTrailerWeight': '3,500 lb',
    'load.occupants': [
      { label: 'Driver', weight: '150 lb' },
      { label: 'Adult 2', weight: '150 lb' },
      { label: 'Adult 3', weight: '150 lb' },
      { label: 'Child 1', weight: '80 lb' },
    ],
    'trailer.cargo': [{ label: 'Food', weight: '120 lb', ahead: '-2 ft' }],
  });
});

test.each([
  ['lots', /“lots” is no weight/],
  ['12 ft', /write it in lb or kg/],
  ['0 lb', /not above zero/],
  ['-5 lb', /not above zero/],
])('%j is refused in one sentence', (text, says) => {
  expect(refusedWeight(text)).toMatch(says);
  const told = { ...hybrid, figures: { 'vehicle.placardPayload': text } };
  expect(refusedIn(told)).toEqual(['Payload']);
});

test.each(['', 'unknown', '3,500 lb', '1.6 t', 'about 900 lb'])('%j is taken', (text) => {
  expect(refusedWeight(text)).toBeUndefined();
});
