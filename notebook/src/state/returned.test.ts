import { expect, test } from 'vitest';
import { isAsked, recordsOf } from './questions';
import { changedIn, isReturned, standsAgainst } from './returned';

test('only what is told otherwise than it was known came back', () => {
  const known = {
    'trailer.dryWeight': '3900 lb',
    'load.cargo': [{ label: 'Tools', weight: '120 lb' }],
  };
  const told = {
    'trailer.dryWeight': '3900 lb',
    'trailer.gvwr': '5000 lb',
    'vehicle.gvwr': 'unknown',
    'load.cargo': [{ label: 'Tools', weight: '150 lb' }],
  };
  expect(changedIn(known, told)).toEqual({
    'trailer.gvwr': '5000 lb',
    'load.cargo': [{ label: 'Tools', weight: '150 lb' }],
  });
  expect(changedIn(told, told)).toEqual({});
});

test('“not known” takes back what the question told, and nothing that a link without answers can undo', () => {
  const own = { 'trailer.gvwr': '5000 lb', 'vehicle.gvwr': 'unknown' };
  const known = { ...own, 'vehicle.placardPayload': '1260 lb' };
  const told = {
    ...{ 'trailer.gvwr': 'Unknown', 'vehicle.gvwr': 'unknown', 'load.hitch': 'unknown' },
    'vehicle.placardPayload': 'unknown',
  };
  expect(changedIn(known, told, own)).toEqual({ 'trailer.gvwr': 'Unknown' });
  expect(standsAgainst(known, told, own)).toEqual(['vehicle.placardPayload']);
});

test('a record of before has nothing that came back, and one that is damaged is none', () => {
  const [one] = recordsOf([{ channel: '', asker: '', askedOn: '', text: 'What pressure?' }], 1);
  expect(isAsked(one)).toBe(true);
  expect(isAsked({ ...one, back: { Q: { a: 'b' } }, waits: 'an answer' })).toBe(true);
  expect(isAsked({ ...one, back: { Q: { a: 5 } } })).toBe(false);
  expect(isAsked({ ...one, waits: 5 })).toBe(false);
  expect(isReturned({ Q: { rows: [{ label: 'Tools' }] } })).toBe(true);
  expect(isReturned([])).toBe(false);
});
