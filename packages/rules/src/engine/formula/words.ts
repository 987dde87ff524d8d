import { type Interval, show, showNumber, type UnitSystem, unitOf } from '../../quantity';
import { asNumber, asTruth } from '../value/truth';
import type { Value } from '../value/values';
import type { Node } from './grammar/nodes';
import type { Scope } from './grammar/scope';
import { reckon } from './reckon';

/** What putting a formula into words needs to know of its surroundings. */
export type Wording = {
  readonly scope: Scope;
  /** The unit a name is kept in. */
  readonly unit: (name: string) => string;
  /** The unit that a table gives its values in. */
  readonly tableUnit: (table: string) => string;
  readonly system: UnitSystem;
};

const mostRowsShown = 6;

/** A value kept in base units, in words. */
export function inWords(value: Value, unit: string, system: UnitSystem): string {
  if (value.kind === 'truth') return value.yes && value.no ? 'unknown' : value.yes ? 'yes' : 'no';
  if (value.kind === 'among') return value.options.length === 1 ? `${value.options[0]}` : 'unknown';
  return show(inUnit(value, unit), unit, system);
}

/** A value as it is written under a name: a year has no comma, and what may go either way a ±. */
export function namedInWords(name: string, value: Value, unit: string, system: UnitSystem): string {
  if (value.kind !== 'number') return inWords(value, unit, system);
  const isYear = unit === '' && /(?:\.year|\.built)$/.test(name) && value.lo === value.hi;
  if (isYear) return showNumber(value.lo, 2).replace(',', '');
  const isEitherWay = value.hi > 0 && value.lo === -value.hi && Number.isFinite(value.hi);
  const shown = inWords(isEitherWay ? { ...value, lo: value.hi } : value, unit, system);
  return isEitherWay ? `±${shown}` : shown;
}

export function inUnit(range: Interval, unit: string): Interval {
  if (unit === '' || unit === 'yes-no') return { lo: range.lo, hi: range.hi };
  const { factor } = unitOf(unit);
  return { lo: range.lo / factor, hi: range.hi / factor };
}

/** How tightly a piece of text holds together, so that brackets come where they are needed. */
type Piece = { readonly text: string; readonly bond: 1 | 2 | 3 };
const loose = (text: string): Piece => ({ text, bond: 1 });
const firm = (text: string): Piece => ({ text, bond: 3 });
const within = (piece: Piece, bond: number): string =>
  piece.bond >= bond ? piece.text : `(${piece.text})`;

const overWords = {
  least: 'the least',
  most: 'the most',
  total: 'the sum',
  last: 'the last value',
} as const;
const signs = { '+': '+', '-': '−', '*': '×', '/': '÷' } as const;

/** “a + −b” is written “a − b”, “a − −b” is “a + b”, and “a + ±b” is “a ± b”. */
function joined(left: string, op: '+' | '-', right: string): string {
  const [same, other] = op === '+' ? (['+', '−'] as const) : (['−', '+'] as const);
  if (right.startsWith('±')) return `${left} ± ${right.slice(1)}`;
  if (!right.startsWith('−')) return `${left} ${same} ${right}`;
  const below = /^−([\d.,]+)–−([\d.,]+)(.*)$/.exec(right);
  if (below) return `${left} ${other} ${below[2]}–${below[1]}${below[3]}`;
  // Of a range such as −10–5 the sign belongs to its lower end alone.
  const isPlain = !/^−[\d.,]+–| or /.test(right);
  return isPlain ? `${left} ${other} ${right.slice(1)}` : `${left} ${same} (${right})`;
}

/**
 * The working of a formula with the numbers put in: `430 lb × (1 + 10 %)`. Of a choice only the
 * branch that was taken is written; of a sum, its rows.
 */
export function working(node: Node, wording: Wording): string {
  return write(node, wording).text;
}

/** The branch of a formula that was taken: what is left once every decided choice is made. */
export function branchTaken(node: Node, scope: Scope): Node {
  if (node.kind === 'needs' && node.names.every((name) => scope.known(name))) {
    return branchTaken(node.of, scope);
  }
  if (node.kind !== 'choose') return node;
  const when = asTruth(reckon(node.when, scope));
  if (when.yes && when.no) return node;
  return branchTaken(when.yes ? node.chosen : node.otherwise, scope);
}

/** A list without rows adds nothing, and is not worth a word in a sum. */
const isNothing = (node: Node, scope: Scope): boolean =>
  node.kind === 'sum' && scope.rows(node.list) === 0;

/** A count is no percentage, though a plain ratio is written as one. */
const wholeOf = (node: Node, wording: Wording): string => {
  const { scope, unit, system } = wording;
  if (node.kind !== 'name' || unit(node.id) !== '1') return write(node, wording).text;
  return inWords(scope.value(node.id), '', system);
};

/** What is taken down and its sign turned was turned first and taken up: `−whole(−x)`. */
function roundedUp(node: Node, wording: Wording): string {
  const turned = node.kind === 'negative' ? node.of : node;
  const sign = turned === node ? '−' : '';
  const text = wholeOf(turned, wording);
  if (sign === '' || text === '0') return `(${text}, rounded up)`;
  return text.startsWith('−') ? `(${text.slice(1)}, rounded up)` : `(−${text}, rounded up)`;
}

const overSteps = (how: keyof typeof overWords, steps: number): string =>
  steps === 1 ? 'reckoned in one step' : `${overWords[how]} over ${steps} steps`;

function write(node: Node, wording: Wording): Piece {
  const { scope, unit, system } = wording;
  const inner = (each: Node) => write(each, wording);
  const list = (of: readonly Node[]) => {
    const stated = of.filter((each) => asNumber(reckon(each, scope)).lo !== Infinity);
    return stated.map((each) => inner(each).text);
  };
  /** Of one alone there is no least and no most. */
  const extreme = (word: string, of: readonly Node[]): Piece => {
    const stated = list(of);
    const [only, more] = stated;
    return only !== undefined && more === undefined
      ? loose(only)
      : loose(`the ${word} of ${stated.join(', ')}`);
  };
  switch (node.kind) {
    case 'number':
      return firm(showNumber(node.value, 6));
    case 'word':
      return firm(node.text);
    case 'unlimited':
      return firm('no limit stated');
    case 'name':
      return firm(namedInWords(node.id, scope.value(node.id), unit(node.id), system));
    case 'negative':
      if (node.of.kind === 'whole') return firm(roundedUp(node.of.of, wording));
      return loose(`−${within(inner(node.of), 3)}`);
    case 'arithmetic': {
      if (node.op === '+' && isNothing(node.a, scope)) return inner(node.b);
      if (node.op === '+' && isNothing(node.b, scope)) return inner(node.a);
      const tight = node.op === '*' || node.op === '/';
      const left = within(inner(node.a), tight ? 2 : 1);
      const right = within(
        inner(node.b),
        tight ? (node.op === '/' ? 3 : 2) : node.op === '-' ? 2 : 1,
      );
      if (node.op === '+' || node.op === '-') return loose(joined(left, node.op, right));
      return { text: `${left} ${signs[node.op]} ${right}`, bond: 2 };
    }
    case 'choose': {
      const when = asTruth(reckon(node.when, scope));
      if (!when.no) return inner(node.chosen);
      if (!when.yes) return inner(node.otherwise);
      return loose(`${inner(node.chosen).text} or ${inner(node.otherwise).text}`);
    }
    case 'min':
      return extreme('least', node.of);
    case 'max':
      return extreme('most', node.of);
    case 'largestKnown': {
      const known = node.of.filter((each) => scope.partKnown(each, reckon(each, scope)));
      const [only] = known;
      if (!only) return firm('not known');
      return known.length === 1 ? inner(only) : extreme('most', known);
    }
    case 'sum': {
      const rows = scope.rows(node.list);
      if (rows === 0) return firm('nothing');
      if (rows > mostRowsShown) return loose(`the sum of ${rows} rows`);
      const each = Array.from({ length: rows }, (_, row) =>
        within(write(node.of, { ...wording, scope: scope.inRow(node.list, row) }), 1),
      );
      return rows === 1 ? { text: each.join(''), bond: 2 } : loose(each.join(' + '));
    }
    case 'count':
      return firm(String(scope.rows(node.list)));
    case 'needs':
      return node.names.every((name) => scope.known(name)) ? inner(node.of) : firm('not known');
    case 'lookup':
    case 'pick':
      return firm(
        `${inWords(reckon(node, scope), wording.tableUnit(node.table), system)} (table at ${inner(node.at).text})`,
      );
    case 'power':
      return { text: `${within(inner(node.base), 3)}^${within(inner(node.exponent), 3)}`, bond: 2 };
    case 'between': {
      const [from, to] = [inner(node.a), inner(node.b)];
      return from.text === to.text ? from : loose(`from ${from.text} to ${to.text}`);
    }
    case 'whole':
      return firm(`(${wholeOf(node.of, wording)}, rounded down)`);
    case 'sunHeight':
      return firm(
        `the sun’s height at ${inner(node.latitude).text}, day ${inner(node.day).text}, ${inner(node.hour).text} h`,
      );
    case 'over':
      return loose(overSteps(node.how, scope.simulation(node.simulation).steps.length));
    case 'catalogued':
      return firm(
        node.ask === 'figure'
          ? `as ${scope.catalogue(node.catalogue).label} has it`
          : `counted in ${scope.catalogue(node.catalogue).label}`,
      );
    default:
      return firm(inWords(asTruth(reckon(node, scope)), 'yes-no', system));
  }
}
