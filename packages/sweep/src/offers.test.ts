import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { offerChanges, offerSaid, optionMeant, readOffers } from './offers';

const seed = (file: string): string =>
  readFileSync(new URL(`../../../seeds/${file}`, import.meta.url), 'utf8');

const offers = readOffers({
  'offers.csv': seed('offers.csv'),
  'options.csv': seed('options.csv'),
  'floor-plans.csv': seed('floor-plans.csv'),
});

describe('on all of that line? in one sentence, with the year and the reason', () => {
  test.each([
    [
      'osier',
      'Not on all: on the Osier line heated tanks are standard from model year 2026 on, because three in four were ordered with them and a tank froze on the lot in the winter before; until model year 2025 only where ordered.',
    ],
    ['millrace', 'Yes: on the Millrace line heated tanks are standard in every model year.'],
    [
      'sallow',
      'Not on all: on the Sallow line heated tanks are an extra to be ordered in every model year.',
    ],
    ['hurdle', 'No: heated tanks are not offered on the Hurdle line in any year.'],
  ])('%s', (line, says) => {
    expect(offerSaid(offers, line, 'heated-tanks')).toBe(says);
  });

  test('one thing is spoken of as one', () => {
    expect(offerSaid(offers, 'hurdle', 'inverter')).toBe(
      'No: the inverter is not offered on the Hurdle line in any year.',
    );
    const read = readOffers({
      'offers.csv': 'line,option,as,from\nosier,rails,standard,2024\nosier,TV-1,optional,2025\n',
      'options.csv': 'id,name\nrails,Tie-down rails in the garage\n',
      'floor-plans.csv': 'name,first,last\nOsier 19,2023,2027\n',
    });
    expect(offerSaid(read, 'osier', 'rails')).toBe(
      'Not on all: on the Osier line tie-down rails in the garage are standard from model year 2024 on.',
    );
    // Nobody gave it a name: it is called as the order sheet calls it.
    expect(offerSaid(read, 'osier', 'TV-1')).toContain('the TV-1 is an extra to be ordered from');
  });
});

test('an option is meant by its name as by its id, and nothing else is one', () => {
  expect(optionMeant(offers, 'Heated Tanks')).toBe('heated-tanks');
  expect(optionMeant(offers, 'heated-tanks')).toBe('heated-tanks');
  expect(optionMeant(offers, 'wings')).toBeUndefined();
});

test('what changed by year stands with its reason, the latest first', () => {
  const changes = offerChanges(offers);
  const years = changes.map(({ year }) => year);
  expect(years).toEqual(years.toSorted().toReversed());
  expect(changes).toContainEqual({
    year: '2026',
    line: 'osier',
    says: 'Heated tanks: now standard',
    because:
      'three in four were ordered with them and a tank froze on the lot in the winter before',
  });
  expect(changes.some(({ says }) => says === 'Second lead-acid battery: no longer offered')).toBe(
    true,
  );
});

test('an offer that cannot be read is told with its line, and the others stand', () => {
  const rows =
    'Model line;Option;As;From year;To year;Why\nOsier;wings;standard;2025;;"they; fly"\nosier;wings;maybe;2023;2024;\nosier;wings;optional;soon;;\n=1+1;wings;optional;2024;;\n';
  const read = readOffers({
    'offers.csv': rows,
    'options.csv': 'id,name\nwings,Wings\n',
    'floor-plans.csv': 'name,first,last\nOsier 19,2023,2027\n',
  });
  expect(read.refused.map(({ file, line }) => `${file}:${line}`)).toEqual([
    'offers.csv:3',
    'offers.csv:4',
    'offers.csv:5',
  ]);
  expect(offerSaid(read, 'osier', 'wings')).toBe(
    'Not on all: on the Osier line wings are standard from model year 2025 on, because they; fly.',
  );
});
