import { describe, expect, test } from 'vitest';
import { towFit } from '../../topics/tow-fit/index';
import { answerNow } from '../answer/answer';
import type { Condition, Topic } from '../define/shapes';
import { facts, formula, shelf, source } from '../define/small-topic.fixture';
import { defineTopic } from './define';
import { sayProblem } from './messages';
import { checkTopic } from './topic';

const told = (topic: Topic): string => checkTopic(topic).map(sayProblem).join('\n');

const withFormula = (is: string, unit = 'lb'): Topic => ({
  ...shelf,
  formulas: { ...shelf.formulas, 'it.is': formula(is, unit) },
});

/** A rule set is data and may come from a file: then any shape at all can stand for a condition. */
function withCondition(when: unknown): Topic {
  const text = JSON.stringify({
    ...shelf,
    findings: { strange: { ...shelf.findings['not-braced'], stop: { when, wrong: 'It is so.' } } },
  });
  const made: Topic = JSON.parse(text);
  return made;
}

test('a sound topic has nothing told against it', () => {
  expect(told(shelf)).toBe('');
  expect(told(towFit)).toBe('');
});

test('a topic that went through JSON is as sound, and gives the same answers', () => {
  const copy: Topic = defineTopic<Topic>(JSON.parse(JSON.stringify(towFit)));
  expect(told(copy)).toBe('');
  const asked = {
    facts: {
      'vehicle.maxTrailerWeight': '6,000 lb',
      'vehicle.maxTongueCarried': '600 lb',
      'vehicle.placardPayload': '1,400–1,450 lb',
      'trailer.dryWeight': '4,100 ± 50 lb',
      'trailer.gvwr': '5,500 lb',
      'trailer.dryTongueWeight': '430 lb',
      'load.occupants': [{ weight: '180 lb' }, { weight: 'unknown' }],
    },
    asOf: '2026-11-01',
  };
  expect(answerNow(copy, asked)).toEqual(answerNow<Topic>(towFit, asked));
});

describe('what a limit cautiously uses is checked as what it uses', () => {
  const limit = shelf.limits['all-boxes'];
  const cautious = (when: string, used: string): string =>
    told(
      JSON.parse(
        JSON.stringify({
          ...shelf,
          limits: { 'all-boxes': { ...limit, cautious: { when, used } } },
        }),
      ),
    );
  const braced = { label: 'Braced', unit: 'yes-no', is: "shelf.braced == 'yes'", source };
  const withBraced: Topic = { ...shelf, formulas: { ...shelf.formulas, 'shelf.isBraced': braced } };

  test('one that is there, of the limit’s own unit, is sound', () => {
    const limits = {
      'all-boxes': { ...limit, cautious: { when: 'shelf.isBraced', used: 'load.spared' } },
    };
    const copy: Topic = JSON.parse(JSON.stringify({ ...withBraced, limits }));
    expect(told(copy)).toBe('');
  });

  test.each([
    ['load.total', 'load.spared', /limit\.all-boxes\.cautious/],
    ['shelf.braced', 'load.spard', /limit\.all-boxes\.cautious: .*“load\.spard”.*`load\.spared`/],
    [
      'shelf.brased',
      'load.spared',
      /limit\.all-boxes\.cautious: .*“shelf\.brased”.*`shelf\.braced`/,
    ],
    ['shelf.braced', 'load.part', /limit\.all-boxes\.cautious/],
  ])('%s with %s is not', (when, used, message) => {
    expect(cautious(when, used)).toMatch(message);
  });

  test('a key that nothing reads is told', () => {
    const limits = {
      'all-boxes': { ...limit, cautious: { when: 'shelf.braced', usd: 'load.spared' } },
    };
    expect(told(JSON.parse(JSON.stringify({ ...shelf, limits })))).toMatch(/“usd”|cautious/);
  });
});

describe('a formula is refused', () => {
  test.each([
    ['box.weight + shelf.span', 'lb', /formulas it\.is: .*weight.*length/],
    ['box.weight', 'in', /formulas it\.is: .*“in”/],
    ['box.wait', 'lb', /no “box\.wait”/],
    ['box.weight +', 'lb', /formulas it\.is: .*box\.weight \+/],
    ['sqrt(box.weight)', 'lb', /no function sqrt/],
    ['lookup(sog, shelf.span)', 'lb', /no table “sog”/],
    ['box.weight', 'stone', /stone/],
  ])('%s in %s', (is, unit, message) => {
    expect(told(withFormula(is, unit))).toMatch(message);
  });

  test('when it goes round in a circle, which is drawn', () => {
    const topic: Topic = {
      ...shelf,
      formulas: {
        ...shelf.formulas,
        'it.a': formula('it.b + 0'),
        'it.b': formula('it.c + 0'),
        'it.c': formula('it.a + 0'),
      },
    };
    expect(told(topic)).toMatch(/it\.a → it\.b → it\.c → it\.a/);
    expect(told(withFormula('it.is + box.weight'))).toMatch(/it\.is → it\.is/);
  });

  test('when its name is not dotted camelCase', () => {
    const named = (name: string) =>
      told({ ...shelf, formulas: { ...shelf.formulas, [name]: formula('box.weight') } });
    expect(named('total')).toMatch(/total.*dotted camelCase/);
    expect(named('It.is')).toMatch(/dotted camelCase/);
    expect(named('it-is.so')).toMatch(/dotted camelCase/);
    expect(named('it.isSo')).toBe('');
  });
});

describe('whatever has no source, or one of no class, is refused', () => {
  const [unsourced, strange] = [
    { class: 'published', cite: ' ' } as const,
    JSON.parse('{ "class": "hearsay", "cite": "A neighbor" }'),
  ];
  const each: readonly (readonly [string, Topic, (bad: typeof source) => Topic])[] = [
    [
      'formulas load.total',
      shelf,
      (bad) => ({
        ...shelf,
        formulas: {
          ...shelf.formulas,
          'load.total': { ...formula('box.weight + box.lid'), source: bad },
        },
      }),
    ],
    [
      'limits all-boxes',
      shelf,
      (bad) => ({
        ...shelf,
        limits: Object.fromEntries(
          Object.entries(shelf.limits).map(([id, limit]) => [id, { ...limit, source: bad }]),
        ),
      }),
    ],
    [
      'findings not-braced',
      shelf,
      (bad) => ({
        ...shelf,
        findings: Object.fromEntries(
          Object.entries(shelf.findings).map(([id, finding]) => [id, { ...finding, source: bad }]),
        ),
      }),
    ],
    [
      'parameters margin.shelf',
      shelf,
      (bad) => ({
        ...shelf,
        parameters: Object.fromEntries(
          Object.entries(shelf.parameters).map(([id, p]) => [id, { ...p, source: bad }]),
        ),
      }),
    ],
    [
      'tables sag',
      shelf,
      (bad) => ({
        ...shelf,
        tables: Object.fromEntries(
          Object.entries(shelf.tables).map(([id, table]) => [id, { ...table, source: bad }]),
        ),
      }),
    ],
    [
      'Look before you load.',
      shelf,
      (bad) => ({ ...shelf, cautions: [{ says: 'Look before you load.', source: bad }] }),
    ],
  ];

  test.each(each)('%s', (at, _, made) => {
    expect(told(made(unsourced))).toBe(`${at}: it has no source; give every item one.`);
    expect(told(made(strange))).toMatch(`${at}: there is no source class “hearsay”`);
  });
});

describe('numbers outside their own bounds are refused', () => {
  const quantity = { kind: 'quantity', label: 'L', ask: 'A', where: 'W', unit: 'lb' } as const;
  const withFact = (least: number, most: number, value: number): Topic => ({
    ...shelf,
    facts: {
      ...facts,
      'box.lid': { ...quantity, least, most, silent: { value, says: 'So.', source } },
    },
  });

  test('a default outside the range of its fact', () => {
    expect(told(withFact(0, 10, 11))).toMatch(/facts box\.lid: its default 11 is outside 0 to 10/);
    expect(told(withFact(0, 10, -1))).toMatch(/default -1 is outside/);
    expect(told(withFact(0, 10, 10))).toBe('');
  });

  test('a fact whose least is over its most', () => {
    expect(told(withFact(10, 0, 5))).toMatch(/least is over its most/);
  });

  test.each([
    [[{ from: '2020-01-01', value: 21 }], /value 21 is outside 0 to 20/],
    [[{ from: '2020-01', value: 10 }], /“2020-01” is not a day/],
    [[], /has no value/],
  ] as const)('a parameter with the values %j', (values, message) => {
    const margin = { label: 'M', unit: '%', range: [0, 20], source, values } as const;
    expect(told({ ...shelf, parameters: { 'margin.shelf': margin } })).toMatch(message);
  });

  test.each([
    [
      'falling',
      [
        [10, 1],
        [5, 2],
      ],
    ],
    [
      'twice the same',
      [
        [10, 1],
        [10, 2],
      ],
    ],
  ] as const)('a table whose keys do not rise: %s', (_, rows) => {
    const sag = { label: 'S', keyUnit: 'in', valueUnit: 'lb', source, rows };
    expect(told({ ...shelf, tables: { sag } })).toMatch(/tables sag: its keys do not rise/);
  });

  test('a table of nothing', () => {
    const sag = { label: 'S', keyUnit: 'in', valueUnit: 'lb', source, rows: [] };
    expect(told({ ...shelf, tables: { sag } })).toMatch(/tables sag: it has no entry/);
  });
});

describe('a condition is refused', () => {
  const braced = { fact: 'shelf.braced', operator: 'equal', value: 'no' } as const;
  const heavy = {
    fact: 'load.total',
    operator: 'greaterThan',
    value: { fact: 'kind.strength' },
  } as const;

  test.each<readonly [string, Condition]>([
    ['a fact and a word', { all: [braced] }],
    ['two values of one unit', { any: [heavy, { all: [braced, heavy] }] }],
    [
      'words of a choice',
      { all: [braced, { fact: 'shelf.kind', operator: 'in', value: ['oak', 'pine'] }] },
    ],
  ])('never for %s', (_, when) => {
    expect(told(withCondition(when))).toBe('');
  });

  test.each([
    ['over no named value', { all: [{ ...heavy, fact: 'load.totl' }] }, /load\.totl.*load\.total/],
    ['against no named value', { all: [{ ...heavy, value: { fact: 'x.y' } }] }, /“x\.y”/],
    ['over two units', { all: [{ ...heavy, value: { fact: 'shelf.span' } }] }, /lb with in/],
    ['over a number and a literal', { all: [{ ...heavy, value: '100' }] }, /with a literal/],
    ['over a word that is no option', { all: [{ ...braced, value: 'maybe' }] }, /“maybe”/],
    ['with an operator of nobody', { all: [{ ...braced, operator: 'looksLike' }] }, /looksLike/],
    ['with contains', { all: [{ ...braced, operator: 'contains' }] }, /contains/],
    ['with doesNotContain', { all: [{ ...braced, operator: 'doesNotContain' }] }, /doesNotContain/],
    ['with a decorator', { all: [{ ...braced, operator: 'not:equal' }] }, /not:equal/],
    ['with not', { not: braced }, /“not”/],
    ['with not inside', { all: [braced, { not: braced }] }, /“not”/],
    ['with an empty all', { all: [] }, /its “all” is empty/],
    ['with an empty any', { any: [] }, /its “any” is empty/],
    ['with an empty any inside', { all: [braced, { any: [] }] }, /its “any” is empty/],
    ['with a path', { all: [{ ...braced, path: '$.x' }] }, /“path”/],
    ['with params', { all: [{ ...braced, params: { a: 1 } }] }, /“params”/],
    ['with a priority', { all: [braced], priority: 5 }, /“priority”/],
    ['with a name', { all: [braced], name: 'x' }, /“name”/],
    ['with all and any at once', { all: [braced], any: [braced] }, /“any”/],
    ['kept elsewhere', { condition: 'shared' }, /“condition”/],
  ])('%s', (_, when, message) => {
    expect(told(withCondition(when))).toMatch(message);
    expect(told(withCondition(when))).toMatch(/finding\.strange\.stop/);
  });
});

describe('what nothing uses, or is not there, is told', () => {
  test('a fact and a parameter that nothing uses', () => {
    const spare = { kind: 'yes-no', label: 'L', ask: 'A', where: 'W' } as const;
    expect(told({ ...shelf, facts: { ...facts, 'shelf.spare': spare } })).toMatch(
      /facts shelf\.spare: nothing uses it/,
    );
    const margin = shelf.parameters['margin.shelf'];
    if (!margin) throw new Error('The margin is gone.');
    const parameters = { ...shelf.parameters, 'margin.spare': margin };
    expect(told({ ...shelf, parameters })).toMatch(/parameters margin\.spare: nothing uses it/);
    const cautions = [{ says: 'Keep {margin.spare} free.', source }];
    expect(told({ ...shelf, parameters, cautions })).toBe('');
  });

  test('a limit or finding asked by what is no fact', () => {
    const limits = Object.fromEntries(
      Object.entries(shelf.limits).map(([id, each]) => [id, { ...each, askedBy: ['shelf.color'] }]),
    );
    expect(told({ ...shelf, limits })).toMatch(
      /limits all-boxes askedBy: it names “shelf\.color”, which is no fact/,
    );
  });

  test('a result that is said and is none, or without its value', () => {
    const tells = [{ of: 'load.gone', says: 'It carries much.' }];
    expect(told({ ...shelf, tells })).toMatch(/tells: there is no result “load\.gone”/);
    expect(told({ ...shelf, tells })).toMatch(/tells: “load\.gone” is told without its value/);
  });

  test('a headline, a result apart or an assumption that names no result', () => {
    expect(told({ ...shelf, headline: ['load.gone'] })).toMatch(
      /headline: there is no result “load\.gone”/,
    );
    expect(told({ ...shelf, apart: { most: 'load.gone' } })).toMatch(/load\.gone/);
    const assumptions = [{ when: 'load.gone', says: 'So.', source }];
    expect(told({ ...shelf, assumptions })).toMatch(/load\.gone/);
  });

  test('all that is wrong is told at once', () => {
    const bad: Topic = { ...withFormula('box.weight + shelf.span'), headline: ['load.gone'] };
    expect(checkTopic(bad).length).toBe(2);
  });
});

describe('what stands beside the rules is refused where it names what is not there', () => {
  const all = {
    rule: 'Oak holds.',
    because: 'It is hard.',
    look: ['shelf.kind'],
    otherwise: 'Ask.',
  };
  test.each<[Partial<Topic>, RegExp]>([
    [
      { askings: { much: { label: 'How much?', results: ['limit.sag'] } } },
      /no result “limit\.sag”/,
    ],
    [
      { askings: { much: { label: 'How much?', results: [], impliedBy: ['box.wait'] } } },
      /“box\.wait”, which is no fact/,
    ],
    [
      { askings: { much: { label: 'How much?', results: [], says: '{box.wait}' } } },
      /\{box\.wait\}/,
    ],
    [
      { how: { brace: { label: 'Brace', steps: ['To {wall}.'], caution: '', source } } },
      /\{wall\}/,
    ],
    [{ everybody: { any: { ...all, given: { 'shelf.kind': 'ash' } } } }, /“ash” is not one of oak/],
    [{ everybody: { any: { ...all, given: { 'box.weight': '5' } } } }, /“5” has no unit/],
    [
      { everybody: { any: { ...all, given: { 'box.wait': '5 lb' } } } },
      /“box\.wait”, which is no fact/,
    ],
    [
      { everybody: { any: { ...all, clauses: { 'shelf.sort': 'x' } } } },
      /“shelf\.sort”, which is no fact/,
    ],
    [
      { everybody: { any: { ...all, clauses: { 'shelf.kind': { okk: 'it is oak' } } } } },
      /“okk” is no option of shelf\.kind; .* Did you mean `oak`/,
    ],
    [{ called: { topic: [], facts: { 'box.wait': ['load'] } } }, /“box\.wait”, which is no fact/],
    [{ renamed: { 'box.heft': 'box.wait' } }, /“box\.heft” is now “box\.wait”/],
  ])('%j', (more, message) => {
    expect(told({ ...shelf, ...more })).toMatch(message);
  });
});
