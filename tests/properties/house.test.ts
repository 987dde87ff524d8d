import { readFileSync } from 'node:fs';
import {
  answerTraced,
  type HouseLayer,
  InputError,
  readHouse,
  type Topic,
  topics,
  towFit,
  withHouse,
} from '@tarebook/rules';
import { checkTopic, defineTopic, type FactsGiven, type HouseValue } from '@tarebook/rules/engine';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formula, shelf, source } from '../../packages/rules/src/engine/define/small-topic.fixture';
import { exactCase } from '../differential/arbitrary-case';
import { givenOf } from '../differential/given';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);
const asOf = '2026-11-01';
const tow: Topic = towFit;
const reason = 'Every road out of the valley climbs.';

const layer = (parameters: HouseLayer['parameters']): HouseLayer => ({
  topic: 'tow-fit',
  name: 'Sallowbridge Trailers',
  parameters,
});
const one = (id: string, value: HouseValue): HouseLayer => layer({ [id]: value });

function refusals(topic: Topic, given: HouseLayer): readonly string[] {
  try {
    withHouse(topic, given);
    return [];
  } catch (problem) {
    if (!(problem instanceof InputError)) throw problem;
    return problem.message.split('\n');
  }
}

const facts: FactsGiven = {
  'vehicle.maxTrailerWeight': '5,000 lb',
  'vehicle.maxTongueCarried': '500 lb',
  'vehicle.placardPayload': '1,260 lb',
  'trailer.dryWeight': '4,350 lb',
  'trailer.gvwr': '5,000 lb',
  'trailer.measuredTongueWeight': '440 lb',
};

describe('a dealer’s own parameters', () => {
  const own = withHouse(towFit, one('margin.towRating', { value: '15 %', reason }));

  test('count in the answer, and are named on it with their reason and what they stand in for', () => {
    const before = answerTraced(towFit, { facts, asOf });
    const found = answerTraced(own, { facts, asOf });
    expect(before.house).toBeNull();
    expect(before.limits.find(({ id }) => id === 'trailer-weight')?.state).toBe('ok');
    expect(found.limits.find(({ id }) => id === 'trailer-weight')?.state).toBe('care');
    expect(found.house).toMatchObject({
      name: 'Sallowbridge Trailers',
      parameters: [
        {
          id: 'margin.towRating',
          label: 'Margin kept below the tow rating',
          value: 15,
          unit: '%',
          from: '2020-01-01',
          instead: 10,
          reason,
          says: `Margin kept below the tow rating: 15 % instead of 10 %. ${reason}`,
        },
      ],
    });
  });

  test('carry the class of a house choice wherever they are cited', () => {
    const found = answerTraced(own, { facts, asOf });
    const cited = { class: 'house', cite: 'Choice of Sallowbridge Trailers', note: reason };
    expect(found.parameters.find(({ id }) => id === 'margin.towRating')?.source).toEqual(cited);
    expect(found.trace.steps['margin.towRating']?.source).toEqual(cited);
  });

  test('leave the rule set itself as it is', () => {
    expect(tow.parameters['margin.towRating']?.values).toEqual([{ from: '2020-01-01', value: 10 }]);
    expect(answerTraced(towFit, { facts, asOf }).house).toBeNull();
  });

  test('count from their day on', () => {
    const later = withHouse(
      towFit,
      one('margin.towRating', { value: '15 %', reason, from: '2026-04-01' }),
    );
    const before = answerTraced(later, { facts, asOf: '2026-03-31' });
    const after = answerTraced(later, { facts, asOf: '2026-04-01' });
    expect(before.house).toEqual({ name: 'Sallowbridge Trailers', parameters: [] });
    expect(before.dated.map(({ says }) => says)).toEqual([
      'Margin kept below the tow rating: 10 % on 2026-03-31; from 2026-04-01 it is 15 %.',
    ]);
    expect(after.house?.parameters.map(({ value, from }) => [value, from])).toEqual([
      [15, '2026-04-01'],
    ]);
  });

  test('end where the rule set’s own end, and stand in for whichever it has on the day', () => {
    const values = [
      { from: '2020-01-01', value: 10 },
      { from: '2024-01-01', until: '2025-12-31', value: 12 },
    ];
    const margin = { label: 'Margin', unit: '%', values, range: [0, 20] as const, source };
    const topic: Topic = defineTopic<Topic>({ ...shelf, parameters: { 'margin.shelf': margin } });
    const given = {
      topic: 'shelf',
      name: 'A shop',
      parameters: { 'margin.shelf': { value: '15 %', reason, from: '2022-01-01' } },
    };
    const mine = withHouse(topic, given);
    const on = (day: string) => answerTraced(mine, { facts: {}, asOf: day }).house?.parameters;
    expect(on('2021-12-31')).toEqual([]);
    expect(on('2022-01-01')?.map(({ instead }) => instead)).toEqual([10]);
    expect(on('2025-12-31')?.map(({ instead }) => instead)).toEqual([12]);
    expect(() => on('2026-01-01')).toThrow('has no value on 2026-01-01');
  });

  test('may be written as a number with its unit beside it', () => {
    const beside = withHouse(towFit, one('margin.other', { value: 12, unit: '%', reason }));
    expect(answerTraced(beside, { facts, asOf }).house?.parameters[0]?.value).toBe(12);
    const given = { ...one('tire.imbalance', { value: '1.1', reason }), topic: 'tires' };
    const { tires } = topics;
    if (!tires) throw new Error('There is no topic of tires.');
    const plain: Topic = withHouse(tires, given);
    expect(answerTraced(plain, { facts: {}, asOf }).house?.parameters[0]?.value).toBe(1.1);
  });

  test('are compiled once for a layer', () => {
    const given = one('margin.other', { value: '6 %', reason });
    expect(withHouse(towFit, given)).toBe(withHouse(towFit, given));
  });
});

describe('what a house may not do is refused in one sentence that names the place', () => {
  const choices =
    'a house may choose margin.towRating, margin.other, margin.least, camper.unplacedBehind, camper.unplacedAhead, unplaced.behind, unplaced.ahead, tank.share, tongue.stopBelow, tongue.stopBelowPin, unbraked.askAbove, margin.trailerTires';
  test.each<readonly [what: string, given: HouseLayer, says: string]>([
    [
      'a value out of its range',
      one('margin.towRating', { value: '30 %', reason }),
      '`margin.towRating`: 30 % is outside what a house may choose; write 5–25 %.',
    ],
    [
      'a value below its range',
      one('tongue.stopBelow', { value: '4 %', reason }),
      '`tongue.stopBelow`: 4 % is outside what a house may choose; write 5–9 %.',
    ],
    [
      'a parameter that is no house choice',
      one('tongue.addOn', { value: '5 %', reason }),
      `\`tongue.addOn\`: this is not a house choice; ${choices}.`,
    ],
    [
      'a rating',
      one('vehicle.gvwr', { value: '9,000 lb', reason }),
      `\`vehicle.gvwr\`: this is a fact of the case, such as a rating, and stays as it was read; ${choices}.`,
    ],
    [
      'a name that is none',
      one('margin.towrating', { value: '12 %', reason }),
      '`margin.towrating` is not a parameter of tow-fit. Did you mean `margin.towRating`?',
    ],
    [
      'a range',
      one('margin.other', { value: '5–10 %', reason }),
      '`margin.other`: “5–10 %” is a range; write one value with its unit, such as “5 %”.',
    ],
    [
      'a value without its unit',
      one('margin.other', { value: '8', reason }),
      '`margin.other`: “8” has no unit; write one value with its unit, such as “5 %”.',
    ],
    [
      'a value in another unit',
      one('margin.other', { value: '8 lb', reason }),
      '`margin.other`: “8 lb” is not in %; write one value with its unit, such as “5 %”.',
    ],
    [
      'no reason',
      one('margin.other', { value: '8 %', reason: '  ' }),
      '`margin.other`: it has no reason; say in a sentence why the house keeps it so.',
    ],
    [
      'no day',
      one('margin.other', { value: '8 %', reason, from: 'spring' }),
      '`margin.other`: “spring” is not a day; write a day such as 2026-01-31.',
    ],
    [
      'no name',
      { ...layer({}), name: ' ' },
      '`name`: the layer does not say whose it is; write the dealer’s name.',
    ],
    [
      'another topic',
      { ...layer({}), topic: 'tow-fits' },
      '`topic`: this layer is for “tow-fits”; write tow-fit.',
    ],
  ])('%s', (_, given, says) => {
    expect(refusals(tow, given)).toEqual([says]);
  });

  test('all of it at once', () => {
    const given = layer({
      'margin.other': { value: '50 %', reason },
      'margin.nothing': { value: '5 %', reason },
    });
    expect(refusals(tow, given)).toHaveLength(2);
  });

  test('on random numbers: inside the range it is taken, outside it is not', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('margin.towRating', 'margin.other'),
        fc.integer({ min: -20, max: 60 }),
        (id, value) => {
          const [least, most] = tow.parameters[id]?.range ?? [0, 0];
          const taken = refusals(tow, one(id, { value: `${value} %`, reason })).length === 0;
          expect(taken).toBe(value >= least && value <= most);
        },
      ),
      { numRuns: 200, seed },
    );
  });
});

describe('a rating can never be loosened', () => {
  /** A shelf whose rating falls with a parameter a house may choose. */
  const sagging: Topic = defineTopic<Topic>({
    ...shelf,
    parameters: {
      ...shelf.parameters,
      'sag.loss': {
        label: 'Loss by sag',
        unit: '%',
        values: [{ from: '2020-01-01', value: 10 }],
        range: [0, 30],
        source,
      },
    },
    formulas: {
      ...shelf.formulas,
      'rating.sagged': {
        ...formula(
          "choose(known(shelf.span) && shelf.braced == 'no', kind.strength * (1 - sag.loss), kind.strength)",
        ),
        within: ['kind.strength * (1 - sag.loss)', 'kind.strength'],
      },
    },
    limits: {
      'all-boxes': {
        label: 'Boxes',
        short: 'the shelf',
        used: 'load.total',
        limit: 'rating.sagged',
        margin: 'margin.shelf',
        source,
      },
    },
  });
  const given = (value: string): HouseLayer => ({
    topic: 'shelf',
    name: 'A shop',
    parameters: { 'sag.loss': { value, reason } },
  });

  test('a move that could raise one, if only in some case, is refused though within its range', () => {
    expect(checkTopic(sagging)).toEqual([]);
    expect(refusals(sagging, given('5 %'))).toEqual([
      '`sag.loss`: 5 % would loosen a rating (Boxes); keep 10 % or choose the stricter side.',
    ]);
  });

  test('a move that lowers it is taken', () => {
    expect(refusals(sagging, given('20 %'))).toEqual([]);
    expect(refusals(sagging, given('10 %'))).toEqual([]);
  });

  test('no layer turns a stop of tow fit into anything else, on random rigs', () => {
    const choices = fc.record({
      tow: fc.integer({ min: 5, max: 25 }),
      other: fc.integer({ min: 0, max: 15 }),
    });
    fc.assert(
      fc.property(exactCase(), choices, (plain, { tow: towMargin, other }) => {
        const own = withHouse(
          towFit,
          layer({
            'margin.towRating': { value: `${towMargin} %`, reason },
            'margin.other': { value: `${other} %`, reason },
          }),
        );
        const asked = { facts: givenOf(plain), asOf };
        const stops = (topic: Topic) =>
          answerTraced(topic, asked)
            .limits.filter(({ state }) => state === 'stop')
            .map(({ id }) => id);
        expect(stops(own)).toEqual(stops(towFit));
      }),
      { numRuns: 100, seed },
    );
  });
});

describe('a house file', () => {
  const text = readFileSync('seeds/house.json', 'utf8');

  test('the one that is kept here is read, and moves what it says', () => {
    const [own] = readHouse(text);
    expect(own?.name).toBe('Sallowbridge Trailers');
    const topic = topics[own?.topic ?? ''];
    if (!own || !topic) throw new Error('The house file names no topic.');
    const { house } = answerTraced(withHouse(topic, own), { facts, asOf });
    expect(house?.parameters.map(({ id, value }) => [id, value])).toEqual([
      ['margin.towRating', 15],
      ['margin.other', 8],
    ]);
  });

  test('may hold several layers', () => {
    expect(readHouse(`[${text}, ${text}]`)).toHaveLength(2);
  });

  const wanted =
    'write { "topic": "tow-fit", "name": "…", "parameters": { "margin.other": { "value": "10 %", "reason": "…" } } }, or a list of these.';
  const none = '{"topic":"tow-fit","name":"A","parameters":{"margin.other":{"value":"5 %"}}}';
  test.each([
    ['{', `\`house layer\`: this is not JSON; ${wanted}`],
    ['3', `\`house layer\`: 3 stands there; ${wanted}`],
    ['{"topic":"tow-fit","parameters":{}}', `\`name\`: this is missing; ${wanted}`],
    [none, '`margin.other`: it has no reason; say in a sentence why the house keeps it so.'],
    [
      '{"topic":"tow-fit","name":"A","parameters":{},"ratings":{}}',
      '`ratings`: nothing reads this key; write one of topic, name, parameters.',
    ],
    [
      `[${text}, {"topic":"tow-fit","name":"A","parameter":{}}]`,
      '`layer 2, parameter`: nothing reads this key; write one of topic, name, parameters. Did you mean `parameters`?',
    ],
  ])('%s is refused in one sentence', (source, says) => {
    expect(() => readHouse(source)).toThrow(says);
  });
});
