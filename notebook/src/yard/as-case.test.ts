import { readCase } from '@tarebook/casebook';
import { expect, test } from 'vitest';
import { pairAsCase, readInYard } from './as-case';

test('what stands so in an entry is read from the catalogue, what was told otherwise is not', () => {
  const trailer = { name: 'Heron 14', cells: { dryWeight: '1900', gvwr: '2600', propane: '20' } };
  const facts = {
    'vehicle.maxTrailerWeight': '3,500 lb',
    'trailer.dryWeight': '1900 lb',
    'trailer.gvwr': '2700 lb',
    'trailer.propane': '0 lb',
  };
  const { readFrom } = readCase(pairAsCase('One', facts, readInYard({ trailer })));
  expect(readFrom).toEqual({
    'vehicle.maxTrailerWeight': 'the yard',
    'trailer.dryWeight': 'catalogue, Heron 14',
    'trailer.gvwr': 'the yard',
    'trailer.propane': 'the yard',
  });
});
