import { expect, test } from 'vitest';
import { topics } from '../../topics/all';
import { towFit } from '../../topics/tow-fit/index';
import {
  answer,
  answerEverybody,
  answerNow,
  checkTopic,
  compareTopics,
  compareVerdicts,
  formOf,
  formsOf,
  InputError,
  matters,
  type Problem,
  quickly,
  readHouse,
  readSaved,
  remedies,
  sayProblem,
  spread,
  topicFromPublished,
  why,
  whys,
  withHouse,
} from '../index';

// Called as a program without a compiler calls it.
type Entry = (topic: unknown, asked: unknown) => unknown;
// biome-ignore lint/suspicious/noExplicitAny: what a caller without types hands over
const any = (value: unknown): any => value;

const entries: Readonly<Record<string, Entry>> = {
  answer: (topic, asked) => answer(any(topic), any(asked)),
  answerNow: (topic, asked) => answerNow(any(topic), any(asked)),
  answerEverybody: (topic, asked) => answerEverybody(any(topic), any(asked)),
  formsOf: (topic, asked) => formsOf(any(topic), any(asked)),
  formOf: (topic, asked) => formOf('ticket', any(topic), any(asked)),
  matters: (topic, asked) => matters(any(topic), any(asked)),
  remedies: (topic, asked) => remedies(any(topic), any(asked)),
  spread: (topic, asked) => spread(any(topic), any(asked), { draws: 1, seed: 1 }),
  why: (topic, asked) => why(any(topic), any(asked), 'verdict', 'short'),
  compareVerdicts: (topic, asked) => compareVerdicts(any(topic), any(topic), any(asked)),
};

async function refused(act: () => unknown): Promise<readonly Problem[]> {
  try {
    await act();
  } catch (problem) {
    if (problem instanceof InputError) return problem.problems;
    throw problem;
  }
  return [];
}

const asOf = '2026-11-01';
const facts = (given: unknown) => ({ facts: given, asOf });

const nothingAsked: readonly (readonly [string, unknown, Problem['code']])[] = [
  ['nothing', undefined, 'not-a-case'],
  ['null', null, 'not-a-case'],
  ['a text', '5,000 lb', 'not-a-case'],
  ['a list', [], 'not-a-case'],
  ['no facts', {}, 'not-facts'],
  ['null for the facts', facts(null), 'not-facts'],
  ['a list for the facts', facts([['trailer.gvwr', '5,000 lb']]), 'not-facts'],
  ['a text for the facts', facts('trailer.gvwr: 5,000 lb'), 'not-facts'],
  ['a Date for the day', { facts: {}, asOf: new Date(0) }, 'not-a-day'],
  ['null for the day', { facts: {}, asOf: null }, 'not-a-day'],
  ['a day in another order', { facts: {}, asOf: '11/01/2026' }, 'not-a-day'],
  ['units that are none', { facts: {}, asOf, units: 'imperial' }, 'no-such-option'],
  ['a medium that is none', { facts: {}, asOf, medium: 'loud' }, 'no-such-option'],
  ['a language by its tag', { facts: {}, asOf, language: 'en-US' }, 'not-facts'],
  ['a text for where it was read', { facts: {}, asOf, readFrom: 'label' }, 'not-facts'],
];

const noFacts: readonly (readonly [string, Readonly<Record<string, unknown>>, Problem['code']])[] =
  [
    ['a number for a weight', { 'trailer.gvwr': 5000 }, 'no-unit'],
    ['text without a unit', { 'trailer.gvwr': '5,000' }, 'no-unit'],
    ['another kind of unit', { 'trailer.gvwr': '5,000 ft' }, 'wrong-unit'],
    ['a unit that is none', { 'trailer.gvwr': '5,000 lbz' }, 'no-such-unit'],
    ['words for a weight', { 'trailer.gvwr': 'heavy' }, 'not-a-quantity'],
    ['null for a weight', { 'trailer.gvwr': null }, 'not-plain'],
    ['NaN for a weight', { 'trailer.gvwr': Number.NaN }, 'not-plain'],
    ['a value without its unit', { 'trailer.gvwr': { value: 5000 } }, 'not-plain'],
    ['rows for a weight', { 'trailer.gvwr': [{ weight: '5,000 lb' }] }, 'not-plain'],
    ['true for a weight', { 'trailer.gvwr': true }, 'not-plain'],
    ['a weight beyond what is', { 'trailer.gvwr': '-1 lb' }, 'out-of-range'],
    ['a range back to front', { 'trailer.gvwr': '6,000–5,000 lb' }, 'back-to-front'],
    ['a weight for a list', { 'trailer.cargo': '300 lb' }, 'not-rows'],
    ['one row for a list', { 'trailer.cargo': { weight: '300 lb' } }, 'not-rows'],
    ['numbers for rows', { 'trailer.cargo': [300] }, 'not-a-row'],
    ['null for a row', { 'trailer.cargo': [null] }, 'not-a-row'],
    [
      'a column that is none',
      { 'trailer.cargo': [{ weight: '300 lb', heft: 'much' }] },
      'no-such-column',
    ],
    ['a cell without its unit', { 'trailer.cargo': [{ weight: 300 }] }, 'no-unit'],
    ['null for a cell', { 'trailer.cargo': [{ weight: null }] }, 'not-plain'],
    ['an option that is none', { 'trailer.brakes': 'magnet' }, 'no-such-option'],
    ['null for a choice', { 'trailer.brakes': null }, 'no-such-option'],
    ['undefined for a rating', { 'hitch.ballRating': undefined }, 'not-plain'],
    ['undefined for a choice', { 'trailer.brakes': undefined }, 'no-such-option'],
    ['undefined for a list', { 'trailer.cargo': undefined }, 'not-rows'],
    ['true for yes or no', { 'vehicle.sevenWay': true }, 'no-such-option'],
    [
      'more than value and unit',
      { 'trailer.gvwr': { value: 5000, unit: 'lb', plusMinus: 400 } },
      'not-plain',
    ],
    ['a fact that is none', { 'trailer.gvw': '5,000 lb' }, 'no-such-fact'],
  ];

const isWorded = (problem: Problem): boolean => /^[^\n]{20,}\.$|\?$/.test(sayProblem(problem));

for (const [name, enter] of Object.entries(entries)) {
  test.each([undefined, null, 'tow-fit', 7, [], {}, { id: 'tow-fit', facts: null }])(
    `${name} takes %j for no rule set, and says so`,
    async (topic) => {
      const problems = await refused(() => enter(topic, facts({})));
      expect(problems[0]).toMatchObject({ code: 'not-a-topic', fact: 'topic' });
      expect(problems.every(isWorded)).toBe(true);
    },
  );

  test.each(nothingAsked)(`${name} tells of %s as data`, async (_, asked, code) => {
    const problems = await refused(() => enter(towFit, asked));
    if (
      name === 'compareVerdicts' &&
      typeof Object(asked).asOf === 'string' &&
      code === 'not-a-day'
    )
      return;
    expect(problems.map((each) => each.code)).toEqual(
      name === 'compareVerdicts' ? expect.arrayContaining([code]) : [code],
    );
    expect(problems.every(isWorded)).toBe(true);
  });

  // What two versions make of a case is told in the result, refusals too.
  if (name === 'compareVerdicts') continue;
  test.each(noFacts)(`${name} tells of %s as data`, async (_, given, code) => {
    const problems = await refused(() => enter(towFit, facts(given)));
    expect(problems.map((each) => each.code)).toEqual([code]);
    expect(problems[0]?.fact).toBe(Object.keys(given)[0]);
    expect(problems.every(isWorded)).toBe(true);
  });
}

test('a number refused says its unit, the least and the most it can be', async () => {
  const [problem] = await refused(() => answerNow(towFit, any(facts({ 'trailer.gvwr': 5000 }))));
  const { unit, least, most } = any(towFit.facts['trailer.gvwr']);
  expect(problem).toMatchObject({ found: '5000', unit, least, most });
});

test('an option refused says which there are, and the nearest', async () => {
  const [problem] = await refused(() =>
    answerNow(towFit, any(facts({ 'trailer.brakes': 'surg' }))),
  );
  const { options } = any(towFit.facts['trailer.brakes']);
  expect(problem).toMatchObject({ found: 'surg', options: [...options, 'unknown'], near: 'surge' });
});

test('a cell refused says its row and its column, by label and by id', async () => {
  const given = { 'trailer.cargo': [{ weight: '300 lb' }, { weight: 300 }] };
  const [problem] = await refused(() => answerNow(towFit, any(facts(given))));
  const { columns } = any(towFit.facts['trailer.cargo']);
  expect(problem).toMatchObject({
    row: 2,
    column: columns.weight.label,
    columnId: 'weight',
    unit: columns.weight.unit,
  });
});

test.each([
  [true, 'yes'],
  [false, 'no'],
  [1, undefined],
  [0, undefined],
])('of %j where yes or no belongs no other than what it says is offered', async (given, near) => {
  const [problem] = await refused(() =>
    answerNow(towFit, any(facts({ 'vehicle.sevenWay': given }))),
  );
  expect(problem?.near).toBe(near);
});

test('a rating from a misspelled field is no rating of which nobody spoke', async () => {
  const row: Record<string, string> = { ballRating: '1,500 lb' };
  const wrong = any(facts({ 'hitch.ballRating': row.balRating }));
  for (const enter of [() => answerNow(towFit, wrong), () => quickly(towFit)(wrong.facts)]) {
    const [problem] = await refused(enter);
    expect(problem).toMatchObject({ fact: 'hitch.ballRating', found: 'undefined', unit: 'lb' });
  }
});

test.each([
  ['a key of what is asked', () => answerNow(towFit, any({ facts: {}, asof: '2026-11-01' }))],
  ['an option', () => quickly(towFit, any({ asof: '2026-11-01' }))],
])('%s that is misspelled is told with the one that was meant', async (_, enter) => {
  const [problem, ...others] = await refused(enter);
  expect(others).toEqual([]);
  expect(problem).toMatchObject({ code: 'no-such-option', found: 'asof', near: 'asOf' });
  expect(problem && sayProblem(problem)).toContain('Did you mean `asOf`?');
});

const layer = (parameters: unknown) => ({ topic: 'tow-fit', name: 'Sallowbridge', parameters });
const because = 'We have seen it.';

test.each([
  ['null', null, 'not-a-house-layer'],
  ['a text', 'tow-fit', 'not-a-house-layer'],
  ['no parameters', { topic: 'tow-fit', name: 'Sallowbridge' }, 'not-a-house-layer'],
  ['no name', { topic: 'tow-fit', parameters: {} }, 'not-a-house-layer'],
  ['an empty name', { topic: 'tow-fit', name: ' ', parameters: {} }, 'no-house-name'],
  ['another topic', { topic: 'tires', name: 'Sallowbridge', parameters: {} }, 'other-topic'],
  ['a bare value', layer({ 'margin.other': '12 %' }), 'not-a-house-layer'],
  ['a missing reason', layer({ 'margin.other': { value: '12 %' } }), 'no-reason'],
  ['an empty reason', layer({ 'margin.other': { value: '12 %', reason: '' } }), 'no-reason'],
  ['a null reason', layer({ 'margin.other': { value: '12 %', reason: null } }), 'no-reason'],
  ['null', layer({ 'margin.other': { value: null, reason: because } }), 'not-a-house-layer'],
  ['no unit', layer({ 'margin.other': { value: 12, reason: because } }), 'no-unit'],
  ['too much', layer({ 'margin.other': { value: '90 %', reason: because } }), 'beyond-house-range'],
  ['a range', layer({ 'margin.other': { value: '5–9 %', reason: because } }), 'not-one-value'],
  ['a weight', layer({ 'margin.other': { value: '5 lb', reason: because } }), 'wrong-unit'],
  ['a fact', layer({ 'trailer.gvwr': { value: '5 lb', reason: because } }), 'not-a-parameter'],
  [
    'no parameter',
    layer({ 'margin.othr': { value: '5 %', reason: because } }),
    'no-such-parameter',
  ],
  [
    'no day',
    layer({ 'margin.other': { value: '12 %', reason: because, from: 'May' } }),
    'not-a-day',
  ],
])('a house layer with %s is refused as data', async (_, given, code) => {
  const problems = await refused(() => withHouse(towFit, any(given)));
  expect(problems.map((each) => each.code)).toEqual([code]);
  expect(problems.every(isWorded)).toBe(true);
});

const asked = { facts: {}, asOf };
test.each<readonly [string, () => unknown, Problem['code']]>([
  ['withHouse of no topic', () => withHouse(any(null), any(layer({}))), 'not-a-topic'],
  ['readHouse of null', () => readHouse(any(null)), 'not-json'],
  ['readHouse of no JSON', () => readHouse('{'), 'not-json'],
  ['readHouse of a number', () => readHouse('3'), 'not-a-house-layer'],
  ['readSaved of null', () => readSaved(null), 'not-a-saved-answer'],
  ['topicFromPublished of null', () => topicFromPublished(null), 'wrong-part'],
  ['compareTopics of null', () => compareTopics(any(null), towFit), 'not-a-topic'],
  ['whys of null', () => whys(towFit, any(null)), 'not-an-answer'],
  ['why of nothing', () => why(towFit, asked, any(undefined), 'short'), 'no-such-part'],
  ['why of a limit that is none', () => why(towFit, asked, 'limit.pay', 'short'), 'no-such-part'],
  ['why at no length', () => why(towFit, asked, 'verdict', any('long')), 'no-such-part'],
  ['forms of no asking', () => formsOf(towFit, asked, { asking: 'pay' }), 'no-such-asking'],
  ['forms with null', () => formsOf(towFit, asked, any(null)), 'not-options'],
  ['a form that is none', () => formOf(any('poem'), towFit, asked), 'no-such-part'],
  ['everybody of no asking', () => answerEverybody(towFit, asked, 'pay'), 'no-such-asking'],
  [
    'draws that are none',
    () => spread(towFit, asked, any({ draws: '9', seed: 1 })),
    'not-a-whole-number',
  ],
  ['no options of a spread', () => spread(towFit, asked, any(undefined)), 'not-a-whole-number'],
])('%s is refused as data', async (_, act, code) => {
  const problems = await refused(act);
  expect(problems.map((each) => each.code)).toEqual([code]);
  expect(problems.every(isWorded)).toBe(true);
});

test('what is no rule set is told by its check', () => {
  expect(checkTopic(any(null)).map(({ code }) => code)).toEqual(['not-a-topic']);
});

test.each(Object.entries(topics))('%s tells of null for each of its facts', async (_, topic) => {
  for (const id of Object.keys(topic.facts)) {
    const problems = await refused(() => answerNow(topic, any(facts({ [id]: null }))));
    expect(problems.map(({ fact }) => fact)).toEqual([id]);
    expect(problems.every(isWorded)).toBe(true);
  }
});
