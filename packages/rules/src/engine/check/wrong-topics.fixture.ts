import type { Topic } from '../define/shapes';
import { facts, formula, shelf, source } from '../define/small-topic.fixture';
import type { Mistake } from './problem';

/** A rule set as a program without a compiler writes it: the shelf with other parts. */
export const shelfWith = (more: object): Topic => JSON.parse(JSON.stringify({ ...shelf, ...more }));

const { formulas, findings, limits, parameters, outcomes } = shelf;
const rated = 'choose(given(shelf.rating), shelf.rating / 2, box.weight)';

const reckoning = (is: string, more: object = {}): Topic =>
  shelfWith({ formulas: { ...formulas, 'load.tried': { ...formula(is), ...more } } });

const ruled = (when: unknown, more: object = {}, level = 'stop'): Topic => {
  const braces = { ...findings['not-braced'], stop: undefined };
  const finding = { ...braces, [level]: { when, wrong: 'It has no braces.' }, ...more };
  return shelfWith({ findings: { 'not-braced': finding } });
};

const limited = (more: object): Topic =>
  shelfWith({ limits: { 'all-boxes': { ...limits['all-boxes'], ...more } } });

const margin = (more: object): Topic =>
  shelfWith({ parameters: { 'margin.shelf': { ...parameters['margin.shelf'], ...more } } });

const spanned = (more: object): Topic =>
  shelfWith({ facts: { ...facts, 'shelf.span': { ...facts['shelf.span'], ...more } } });

const everybody = (more: object): Topic => {
  const any = { rule: 'Oak holds.', because: 'It is hard.', look: [], otherwise: 'Ask.' };
  return shelfWith({ everybody: { any: { ...any, ...more } } });
};

const changing = (...changes: readonly object[]): Topic => {
  const less = {
    kind: 'less',
    fact: 'box.weight',
    step: 1,
    asks: 1,
    says: 'Take {amount}.',
    source,
  };
  return shelfWith({ changes: changes.map((each) => ({ ...less, ...each })) });
};

const assuming = (assumes: string, when: string, is = rated): Topic =>
  shelfWith({
    formulas: {
      ...formulas,
      'load.tried': { ...formula(is), assumes },
      'assumed.strength': formula(when, 'yes-no'),
    },
    assumptions: [{ when: 'assumed.strength', says: 'The shelf is strong.', source }],
  });

const word = { fact: 'shelf.braced', operator: 'equal', value: 'no' };
const heavy = { fact: 'load.total', operator: 'greaterThan', value: { fact: 'kind.strength' } };
/** More than the rating of a shelf can be. */
const usual = [{ from: '2020-01-01', value: 1200 }];
const untold = { ...formulas, 'kind.isUntold': formula('!known(shelf.kind)', 'yes-no') };

const worked = { says: '{box.weight}', given: { 'box.weight': '5 lb' } };
const clauses = { 'shelf.kind': { oak: 'it is oak' }, 'box.weight': 'the box is {value}' };

/** What stands beside the rules of the shelf, as it should be. */
export const soundShelves = {
  everybody: everybody({ look: ['shelf.kind'], given: worked.given, clauses, worked }),
  changes: changing({}),
  askings: shelfWith({
    askings: {
      much: {
        ...{ label: 'How much?', results: ['load.total'], impliedBy: ['box.weight'] },
        says: [{ says: 'It is {load.total}.' }],
      },
    },
  }),
  called: shelfWith({
    called: {
      ...{ topic: ['shelf'], facts: { 'box.weight': ['load'] } },
      options: { 'shelf.kind': { oak: ['oaken'] } },
    },
  }),
  how: shelfWith({
    how: { brace: { label: 'Brace', steps: ['Lean.'], caution: 'Mind.', source } },
  }),
  renamed: shelfWith({
    renamed: { 'box.heft': 'box.weight', 'shelf.wood': { to: 'shelf.kind', values: {} } },
  }),
  tells: shelfWith({ tells: [{ of: 'load.total', says: 'It is {of}.' }] }),
} satisfies Partial<Record<keyof Topic, Topic>>;

/** For each kind of mistake a rule set that has it; tables, catalogues and the like apart. */
export const wrongShelves = {
  'missing-part': shelfWith({ title: undefined }),
  'wrong-part': shelfWith({ title: 5 }),
  'wrong-word': shelfWith({
    facts: { ...facts, 'box.lid': { ...facts['box.lid'], kind: 'wieght' } },
  }),
  'unread-key': limited({ margn: 'margin.shelf' }),
  'wrong-name': shelfWith({ formulas: { ...formulas, total: formula('box.weight') } }),
  'not-used': shelfWith({ facts: { ...facts, 'shelf.spare': facts['shelf.braced'] } }),
  'no-source': margin({ source: { class: 'invented', cite: ' ' } }),
  'no-such-class': margin({ source: { class: 'hearsay', cite: 'A neighbor' } }),
  'not-a-fact': limited({ askedBy: ['shelf.kindd'] }),
  'not-a-value': reckoning('box.wieght * 2'),
  'not-a-formula': changing({
    ...{ kind: 'scale', scaled: ['box.weight'], shown: 'load.totl', least: 0 },
  }),
  'not-a-finding': changing({ rights: ['not-brased'] }),
  'not-an-asking': shelfWith({
    everybody: { much: { rule: 'Oak.', because: 'Hard.', look: [], otherwise: 'Ask.' } },
  }),
  'not-a-result': shelfWith({ headline: ['load.totl'] }),
  'not-yes-no': limited({ askedWhen: 'load.total' }),
  'not-an-option': ruled("shelf.kind == 'oack'"),
  'not-a-table': reckoning('lookup(sog, shelf.span)'),
  'not-a-unit': spanned({ unit: 'inn' }),
  'not-a-hole': limited({ do: 'Take {box.wieght} away.' }),
  'not-a-change-hole': changing({ says: 'Take {much}.' }),
  'fits-nothing': shelfWith({ cautions: [{ says: 'Look.', source, fits: ['shelf.kind!=elm'] }] }),
  'renamed-wrongly': shelfWith({ renamed: { 'box.heft': 'box.wait' } }),
  'renamed-to-nothing': shelfWith({
    renamed: { 'shelf.wood': { to: 'shelf.kind', values: { elm: [] } } },
  }),
  'told-without-value': shelfWith({ tells: [{ of: 'load.total', says: 'It is heavy.' }] }),
  'clause-without-value': everybody({ clauses: { 'shelf.rating': 'it is rated' } }),
  'worked-from-nothing': everybody({ worked: { says: '{load.total}', given: {} } }),
  'no-proviso': ruled({ all: [word] }, {}, 'if'),
  'no-outcome': shelfWith({ outcomes: { ...outcomes, if: undefined } }),
  'outcome-twice': shelfWith({ outcomes: { ...outcomes, if: outcomes.ok } }),
  'least-over-most': spanned({ least: 300 }),
  'default-outside': spanned({ silent: { value: 999, says: 'It is long.', source } }),
  'value-outside': margin({ values: [{ from: '2020-01-01', value: 21 }] }),
  'no-step': changing({ step: 0 }),
  'below-nothing': shelfWith({
    tables: { sag: { ...shelf.tables.sag, rows: [[10, -100]] } },
  }),
  'without-values': margin({ values: [] }),
  'not-a-date': margin({ values: [{ from: 'May 2020', value: 10 }] }),
  'ends-before-it-begins': margin({
    values: [{ from: '2020-01-01', until: '2019-01-01', value: 10 }],
  }),
  'no-options': shelfWith({
    facts: { ...facts, 'shelf.kind': { ...facts['shelf.kind'], options: [] } },
  }),
  'empty-table': shelfWith({ tables: { sag: { ...shelf.tables.sag, rows: [] } } }),
  'not-rising': shelfWith({
    tables: {
      sag: {
        ...shelf.tables.sag,
        rows: [
          [20, 1],
          [10, 2],
        ],
      },
    },
  }),
  'unreadable-formula': reckoning('box.weight +'),
  'circular-formulas': reckoning('load.tried + box.weight'),
  'wrong-kind': reckoning('shelf.kind + 1'),
  'mixed-units': reckoning('box.weight + shelf.span'),
  'no-such-function': reckoning('sqrt(box.weight)'),
  'not-a-condition': ruled('box.weight + box.lid'),
  'reckoned-in-condition': ruled('box.weight < 5'),
  'strange-condition': ruled({ not: word }),
  'empty-condition': ruled({ all: [] }),
  'not-an-operator': ruled({ all: [{ ...word, operator: 'equals' }] }),
  'not-compared': ruled({ all: [{ ...heavy, fact: 'load.totl' }] }),
  'word-without-quotes': ruled('shelf.kind == oak'),
  'compared-units': ruled({ all: [{ ...heavy, value: { fact: 'shelf.span' } }] }),
  'literal-number': ruled({ all: [{ ...heavy, value: '100' }] }),
  'never-an-if': shelfWith({
    formulas: untold,
    findings: {
      'not-braced': {
        ...findings['not-braced'],
        stop: { when: "shelf.kind == 'pine'", wrong: 'It is soft.' },
        if: { when: 'kind.isUntold', wrong: 'It may be soft.', proviso: 'it is oak' },
      },
    },
  }),
  'not-said-within': reckoning(rated),
  'within-of-nothing': reckoning('box.weight * 2', { within: ['0', 'unlimited'] }),
  'within-anything': reckoning(rated, { within: ['-unlimited', 'unlimited'] }),
  'taken-outside': reckoning(rated, { within: ['2 * box.weight', 'unlimited'] }),
  'not-proved': reckoning(rated, { within: ['0', '2 * box.weight'] }),
  'assumes-of-nothing': assuming('assumed.strength', '!given(shelf.rating)', 'box.weight * 2'),
  'assumes-another': assuming('boxes', '!given(shelf.rating)'),
  'not-an-assumption': assuming('assumed.strenght', '!given(shelf.rating)'),
  'assumption-never-holds': assuming('assumed.strength', 'given(shelf.rating)'),
  'stand-in-outside': shelfWith({
    parameters: {
      ...parameters,
      'shelf.usual': { ...parameters['margin.shelf'], unit: 'lb', values: usual, range: undefined },
    },
    formulas: {
      ...formulas,
      'load.tried': formula('choose(given(shelf.rating), shelf.rating, shelf.usual)'),
    },
  }),
  'rating-changed': changing({ fact: 'shelf.rating' }),
  'asks-in-two-units': changing({}, { kind: 'shift', fact: 'shelf.span' }),
} satisfies Partial<Record<Mistake, Topic>>;
