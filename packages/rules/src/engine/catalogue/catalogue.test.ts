import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Asked } from '../answer/answer';
import { bringingCatalogues } from '../answer/bringing-catalogues';
import { answerTraced } from '../answer/traced';
import { defineTopic } from '../check/define';
import { sayProblem } from '../check/messages';
import { checkTopic } from '../check/topic';
import type { Catalogue } from '../define/catalogue';
import type { Topic } from '../define/shapes';
import { parseFormula } from '../formula/parse';
import { buildsOf } from './builds';
import { standsAgainst } from './conflict';
import { offeredIn } from './offers';
import { ordersOf } from './orders';
import { boatPart, boats } from './small-catalogue.fixture';
import { ruleInWords } from './words';

const source = { class: 'invented', cite: 'Made up for the tests' } as const;
const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);
const outcome = (id: string) => ({ id, words: id, sentence: id });

const topic: Topic = defineTopic<Topic>({
  id: 'boats',
  version: '1.0.0',
  title: 'Boats',
  question: 'Can it be had?',
  ...boatPart,
  parameters: {},
  tables: {},
  limits: {},
  findings: {
    can: {
      label: 'Can be had',
      stop: {
        when: { all: [{ fact: 'boat.can', operator: 'equal', value: 'no' }] },
        wrong: 'It cannot be had.',
      },
      otherwise: 'It can be had.',
      source,
    },
  },
  outcomes: {
    ok: outcome('ok'),
    if: outcome('if'),
    care: outcome('care'),
    stop: outcome('stop'),
    unknown: outcome('cannot-say'),
  },
  apart: {},
  headline: ['boat.all'],
  assumptions: [],
  cautions: [],
  catalogues: bringingCatalogues({ boats }),
});
const judge = (facts: Asked['facts']) => answerTraced(topic, { facts, asOf: '2026-01-01' });
const at = (facts: Asked['facts'], name: string) => {
  const ends = judge(facts).values[name];
  return [ends?.lo, ends?.hi];
};
const gig = (year: string, wishes: Asked['facts'] = {}) => ({
  'boat.name': 'gig',
  'boat.year': year,
  ...wishes,
});

test('the topic that asks it has nothing told against it', () => {
  expect(checkTopic(topic).map(sayProblem)).toEqual([]);
});

describe('what is offered', () => {
  test('follows the year, and nothing is offered of what is not sold', () => {
    expect(offeredIn(boats, 'gig', '2001').optional).toEqual(['sail', 'mast', 'spar']);
    expect([...offeredIn(boats, 'gig', '2003').standard]).toEqual(['spar']);
    expect(offeredIn(boats, 'punt', '2001').optional).toEqual([]);
    expect(at(gig('2003'), 'boat.hull')).toEqual([130, 130]);
  });
});

describe('builds', () => {
  // By hand, sail, mast and spar in 2001: none, mast, spar, sail + mast, sail + spar.
  test('are counted with every rule kept', () => {
    expect(at(gig('2001'), 'boat.inAll')).toEqual([5, 5]);
    expect(at(gig('2002'), 'boat.inAll')).toEqual([10, 10]);
    expect(at(gig('2001', { 'wish.sail': 'yes' }), 'boat.builds')).toEqual([2, 2]);
    expect(at(gig('2001', { 'wish.sail': 'yes', 'wish.spar': 'no' }), 'boat.builds')).toEqual([
      1, 1,
    ]);
  });

  test('what a wish needs is built in, and weighs; what is still to choose is a range', () => {
    const open = judge(gig('2001', { 'wish.sail': 'yes' }));
    expect(open.values['boat.all']).toMatchObject({ lo: 128, hi: 138 });
    expect(open.values['boat.moment']).toMatchObject({ lo: 48 - 30 * 4, hi: 48 + 30 * 6 });
    expect(open.values['boat.brought']).toMatchObject({ lo: 1, hi: 1 });
    const settled = gig('2001', { 'wish.sail': 'yes', 'wish.mast': 'no' });
    expect(at(settled, 'boat.all')).toEqual([138, 138]);
    expect(at(settled, 'boat.moment')).toEqual([48 - 120, 48 - 120]);
  });

  test('what is standard is not built in, comes wanted or not, and may rule a wish out', () => {
    const facts = gig('2003', { 'wish.sail': 'yes', 'wish.spar': 'no' });
    expect(at(facts, 'boat.all')).toEqual([138, 138]);
    expect(at(facts, 'boat.imposed')).toEqual([1, 1]);
    expect(judge(gig('2003', { 'wish.mast': 'yes' })).outcome).toBe('stop');
  });

  test('rows that somebody typed in stay, and the build’s come after them', () => {
    const extras = [{ weight: '5 lb', ahead: '1 ft' }];
    const facts = { ...gig('2001', { 'wish.mast': 'yes' }), 'boat.extras': extras };
    expect(at(facts, 'boat.all')).toEqual([125, 125]);
    const { trace } = judge(facts);
    expect(trace.steps['boat.extras']?.value).toBe('2 rows');
  });
});

describe('what is not known', () => {
  test('an unknown wish leaves both ways open, and is asked', () => {
    const facts = gig('2001', { 'wish.mast': 'yes', 'wish.spar': 'unknown' });
    const { outcome: found, missing, values } = judge(facts);
    expect(found).toBe('cannot-say');
    expect(missing.map(({ fact }) => fact)).toContain('wish.spar');
    expect(values['boat.builds']).toMatchObject({ lo: 0, hi: 2 });
  });

  test('an unknown year takes in every year, and every result of a year lies within', () => {
    const wish = fc.constantFrom('yes', 'no', 'unknown');
    const wishes = fc.record(
      { 'wish.sail': wish, 'wish.mast': wish, 'wish.spar': wish, 'wish.anchor': wish },
      { requiredKeys: [] },
    );
    const names = ['boat.builds', 'boat.met', 'boat.all', 'boat.moment', 'boat.brought'];
    fc.assert(
      fc.property(wishes, fc.constantFrom('2001', '2002', '2003'), (given, year) => {
        const wide = judge({ 'boat.name': 'gig', ...given });
        const settled = Object.fromEntries(
          Object.entries(given).map(([fact, word]) => [fact, word === 'unknown' ? 'no' : word]),
        );
        const narrow = judge({ ...gig(year), ...settled });
        for (const name of names) {
          const [out, inn] = [wide.values[name], narrow.values[name]];
          expect(out?.lo).toBeLessThanOrEqual(inn?.lo ?? Number.NaN);
          expect(out?.hi).toBeGreaterThanOrEqual(inn?.hi ?? Number.NaN);
        }
      }),
      { numRuns: 150, seed },
    );
  });

  test('a model that is not sold that year is no candidate for a figure', () => {
    expect(at({ 'boat.year': '2001' }, 'boat.hull')).toEqual([100, 100]);
    expect(judge({ 'boat.name': 'punt', 'boat.year': '2001' }).outcome).toBe('stop');
  });
});

test('the lists say why, in which years and which models', () => {
  const told: Catalogue = {
    ...boats,
    tells: {
      build: { title: 'Build', amount: 'weight', wanted: 'w', needed: 'n', oneOf: 'o' },
      models: { title: 'Models', because: 'b' },
      years: { title: 'Years', because: '{ways}' },
      against: { title: 'Against', notOffered: 'no', wanted: 'w', unwanted: 'u', rule: 'r' },
      standard: { title: 'Standard', amount: 'weight', because: 's' },
      choices: { title: 'Choices' },
    },
  };
  const answer = answerTraced(defineTopic<Topic>({ ...topic, catalogues: { boats: told } }), {
    facts: gig('2002', { 'wish.sail': 'yes', 'wish.mast': 'no' }),
    asOf: '2026-01-01',
  });
  const list = (id: string) => answer.selections.find((each) => each.id === id);
  const chosen = (id: string) =>
    list(id)?.items.flatMap((item) =>
      item.chosen === 'yes' ? [`${item.id} ${item.because}`] : [],
    );
  expect(chosen('build')).toEqual(['sail w', 'spar n']);
  expect(list('build')?.totals.weight).toEqual({ lo: 38, hi: 38, unit: 'lb' });
  expect(chosen('models')).toEqual(['gig b']);
  expect(chosen('years')).toEqual(['2001 1', '2002 2', '2003 2']);
  expect(chosen('against')).toEqual([]);
  expect(chosen('standard')).toEqual([]);
  expect(answer.rankings.map(({ entries }) => entries.map(({ id }) => id))).toEqual([
    ['gig', 'punt'],
  ]);
});

describe('what is wrong with a catalogue is told', () => {
  const gigModel = {
    label: 'Tub',
    sold: ['2001', '2003'],
    offers: 'small',
    figures: { hull: 1 },
    places: { bow: 1, stern: 0 },
  } as const;
  const told = (change: Partial<Catalogue>) =>
    checkTopic({ ...topic, catalogues: { boats: { ...boats, ...change } } })
      .map(sayProblem)
      .join('\n');
  const wrong: readonly (readonly [string, Partial<Catalogue>, string])[] = [
    [
      'an option that is not there',
      { rules: [{ kind: 'requires', option: 'oar', others: ['sail'] }] },
      'no option “oar”',
    ],
    ['years that do not rise', { years: ['2002', '2001', '2003'] }, 'do not rise'],
    [
      'an option offered twice in a year',
      {
        offers: {
          ...boats.offers,
          plain: [
            { option: 'anchor', as: 'optional', from: '2001' },
            { option: 'anchor', as: 'standard', from: '2003' },
          ],
        },
      },
      'twice in one year',
    ],
    ['a wish for nothing', { wishes: { oar: 'wish.sail' } }, 'wishes: there is no option “oar”'],
    [
      'rows without a list',
      { rows: { list: 'boat.name', figures: {}, place: 'ahead' } },
      'name a list',
    ],
    [
      'a model that the choice lacks',
      { models: { ...boats.models, tub: gigModel } },
      'no option of boat.name',
    ],
    ['a unit that is none', { placeUnit: 'furlongs of old' }, 'there is no unit'],
  ];
  test.each(wrong)('%s', (_, change, says) => {
    expect(told(change)).toContain(says);
  });

  test.each([
    ['figure(boats, keel)', 'has no figure “keel”'],
    ["builds(boats, 'tub')", 'has no model “tub”'],
    ["inBuild(boats, 'oar')", 'has no option “oar”'],
    ["becameStandard(boats, 'sail', '1999')", 'has no year “1999”'],
    ['choices(ships)', 'there is no catalogue “ships”'],
  ])('%s', (is, says) => {
    const formulas = { ...topic.formulas, 'boat.odd': { label: 'Odd', unit: '', is, source } };
    expect(
      checkTopic({ ...topic, formulas })
        .map(sayProblem)
        .join('\n'),
    ).toContain(says);
  });

  test('a question with too few words is refused where it is read', () => {
    expect(() => parseFormula('inBuild(boats)')).toThrow("write inBuild(catalogue, 'option')");
  });
});

test('nothing is kept of an order beyond its own words', () => {
  const order = { model: 'gig', year: '2001', wanted: ['sail'], unwanted: [] };
  expect(buildsOf(boats, order)).toBe(buildsOf(boats, { ...order, wanted: ['sail'] }));
  expect(buildsOf(boats, { ...order, wanted: [], unwanted: ['sail'] }).count).toBe(3n);
});

describe('what stands against an order', () => {
  const against = (wanted: readonly string[], unwanted: readonly string[], year = '2001') =>
    standsAgainst(boats, { model: 'gig', year, wanted, unwanted }).map((each) =>
      each.kind === 'rule' ? ruleInWords(boats, each.rule) : `${each.kind} ${each.option}`,
    );

  test('is nothing where it can be built or is not sold', () => {
    expect(against(['sail'], [])).toEqual([]);
    expect(against(['anchor'], [], '2009')).toEqual([]);
  });

  test('is every wish that is not offered', () => {
    expect(against(['sail', 'anchor'], [])).toEqual(['not-offered anchor']);
  });

  test('is else no more than what clashes', () => {
    expect(against(['anchor', 'sail'], ['mast', 'spar'], '2002')).toEqual([
      'wanted sail',
      'unwanted mast',
      'unwanted spar',
      'Sail: only with mast or spar',
    ]);
    expect(against(['mast', 'sail', 'spar'], [])).toEqual([
      'wanted mast',
      'wanted spar',
      'Mast: not together with spar',
    ]);
  });
});

test('orders are listed once for as long as nothing they hang on changes', () => {
  const read = (said: Readonly<Record<string, readonly string[]>>) => (fact: string) => ({
    options: said[fact] ?? ['yes', 'no'],
    given: said[fact] !== undefined,
  });
  const gig = { 'boat.name': ['gig'], 'boat.year': ['2001', '2002'] };
  const before = ordersOf(boats, read(gig));
  expect(ordersOf(boats, read({ ...gig }))).toBe(before);
  expect(ordersOf(boats, read({ ...gig, 'boat.year': ['2001'] })).orders).toEqual([
    { model: 'gig', year: '2001', wanted: [], unwanted: [] },
  ]);
  expect(before.orders?.length).toBe(2);
});
