import { expect, test, vi } from 'vitest';
import { housesNow, readHouses } from '../state/house';
import * as shelf from '../state/shelf';
import { foundFor, tellFound } from './found';

const found = { remedies: [], noHelp: [], better: [] };

test('what was found holds for its text, its units and the numbers of the house of then', async () => {
  tellFound({ text: 'a case', system: 'us', houses: housesNow(), found });
  expect(foundFor('a case', 'us')).toBe(found);
  expect(foundFor('a case', 'metric')).toBeUndefined();
  expect(foundFor('another', 'us')).toBeUndefined();
  await readHouses();
  expect(foundFor('a case', 'us')).toBe(found);
  const margin = { value: 20, unit: '%', reason: 'a cautious house' };
  vi.spyOn(shelf, 'everyRecord').mockResolvedValue([
    { topic: 'tow-fit', name: 'Sallowbridge Trailers', parameters: { 'payload.margin': margin } },
  ]);
  await readHouses();
  expect(foundFor('a case', 'us')).toBeUndefined();
  vi.restoreAllMocks();
  await readHouses();
});
