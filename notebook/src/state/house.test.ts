import { topics } from '@tarebook/rules';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type House, isHouse } from './house';
import { allowedHouse, readHouseNumber, whyRefused } from './house-numbers';

const seed = { seed: Number(process.env.TAREBOOK_SEED ?? 20_261_125) };
const choices = Object.values(topics).flatMap((topic) =>
  Object.entries(topic.parameters).flatMap(([id, { range, unit }]) =>
    range ? [{ topic, id, range, unit }] : [],
  ),
);

test('a number outside its range is refused with the range, one inside is taken', () => {
  expect(choices.length).toBeGreaterThan(0);
  fc.assert(
    fc.property(fc.constantFrom(...choices), fc.integer({ min: -50, max: 150 }), (each, part) => {
      const [least, most] = each.range;
      const value = least + ((most - least) * part) / 100;
      const text = `${value}${each.unit === '1' || each.unit === '' ? '' : ` ${each.unit}`}`;
      const read = readHouseNumber(each.topic, each.id, text);
      if (part < 0 || part > 100) expect(read).toContain('a dealer may choose');
      else expect(read).toBeCloseTo(value, 6);
    }),
    seed,
  );
});

test('what is no house choice stays as it is', () => {
  for (const topic of Object.values(topics)) {
    for (const [id, { range }] of Object.entries(topic.parameters)) {
      if (!range) expect(readHouseNumber(topic, id, '1 %')).toContain('no house choice');
    }
  }
});

test('a stored number that the rules no longer allow is named and not used', () => {
  const [choice] = choices;
  if (!choice) throw new Error('No topic has a house choice.');
  const { topic, id, range, unit } = choice;
  const number = (value: number) => ({ value, unit, reason: 'ours' });
  const house: House = {
    topic: topic.id,
    name: 'Sallowbridge Trailers',
    parameters: { [id]: number(range[1] + 1), 'no.such': number(1) },
  };
  expect(isHouse(JSON.parse(JSON.stringify(house)))).toBe(true);
  const { house: allowed, refused } = allowedHouse(topic, house);
  expect(allowed.parameters).toEqual({});
  expect(refused).toHaveLength(2);
  expect(whyRefused(topic, house, id)).toContain('outside');
});
