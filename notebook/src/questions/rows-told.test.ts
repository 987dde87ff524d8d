import { expect, test } from 'vitest';
import { isAsked, recordsOf } from '../state/questions';
import { listsIn, rowsToldIn, weightsIn, withWeights } from './rows-told';

const text = 'Me and the wife are 390 together, dog 60, stuff 150.';
const [plain] = recordsOf([{ channel: '', asker: '', askedOn: '', text }], 1);
if (!plain) throw new Error('One message makes one record.');
const asked = plain;
const part = {
  ...{ text, topic: 'tow-fit', because: [], ask: [], answeredBy: null, facts: {}, words: {} },
  people: [
    { who: 'adult', count: 2, weight: '195 lb' },
    { who: 'dog', count: 1, weight: '60 lb' },
  ] as const,
  loads: [{ list: 'load.cargo', label: 'Stuff', weight: '150 lb', words: 'stuff 150' }],
};
const [people, cargo] = listsIn(part);
if (!people || !cargo) throw new Error('There are two lists.');

test('the weight of one row is set right, and no other changes', () => {
  const [, , dog] = weightsIn(people, {});
  expect(dog).toMatchObject({ label: 'Dog', read: '60 lb', now: '60 lb' });
  const now = withWeights(asked, part, people, { [dog?.fact ?? '']: '75' });
  expect(rowsToldIn(part, now)).toEqual({
    'load.occupants': [
      { label: 'Driver', weight: '195 lb' },
      { label: 'Adult 2', weight: '195 lb' },
      { label: 'Dog', weight: '75 lb' },
    ],
    'load.cargo': [{ label: 'Stuff', weight: '150 lb' }],
  });
  expect(isAsked(JSON.parse(JSON.stringify(now)))).toBe(true);
});

test('an empty field sets nothing right, and what was left out is taken again', () => {
  const [stuff] = weightsIn(cargo, {});
  const set = withWeights(asked, part, cargo, { [stuff?.fact ?? '']: '80 kg' });
  expect(rowsToldIn(part, set)['load.cargo']).toEqual([{ label: 'Stuff', weight: '80 kg' }]);
  const struck = { ...set, struck: [cargo.said] };
  expect(rowsToldIn(part, struck)).not.toHaveProperty(['load.cargo']);
  const again = withWeights(struck, part, cargo, { [stuff?.fact ?? '']: '' });
  expect(again.mended).toEqual({});
  expect(rowsToldIn(part, again)['load.cargo']).toEqual([{ label: 'Stuff', weight: '150 lb' }]);
});
