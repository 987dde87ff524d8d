import { type Interval, unitOf } from '../../quantity';
import { asNumber, asTruth } from '../value/truth';
import type { Value } from '../value/values';
import { message } from '../words/message';
import type { Quantity, Sayable } from '../words/value';
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
  /** Whether a name is a year, and no amount. */
  readonly isYear: (name: string) => boolean;
};

const mostRowsShown = 6;

const unknown = message('not-known', {});
const exactly = ({ lo, hi }: Interval, unit: string): Quantity => ({
  lo,
  hi,
  unit,
  style: 'exact',
});

/** A value kept in base units, to be said. */
export function valueSaid(value: Value, unit: string): Sayable {
  if (value.kind === 'truth') {
    return value.yes && value.no ? unknown : { option: value.yes ? 'yes' : 'no' };
  }
  if (value.kind === 'among') {
    const [only, more] = value.options;
    return only === undefined || more !== undefined ? unknown : { option: only };
  }
  return exactly(inUnit(value, unit), unit);
}

/** A value that may go either way by as much. */
const isEitherWay = ({ lo, hi }: Interval): boolean => hi > 0 && lo === -hi && Number.isFinite(hi);

const farOf = ({ hi }: Interval, unit: string): Quantity =>
  exactly(inUnit({ lo: hi, hi }, unit), unit);

/** A value as it is written under a name: a year has no comma, and what may go either way a ±. */
export function namedSaid(value: Value, unit: string, isYear: boolean): Sayable {
  if (value.kind !== 'number') return valueSaid(value, unit);
  if (isYear) return { lo: value.lo, hi: value.hi, unit: '', style: 'year' };
  if (!isEitherWay(value)) return valueSaid(value, unit);
  return message('either-way', { of: farOf(value, unit) });
}

export function inUnit(range: Interval, unit: string): Interval {
  if (unit === '' || unit === 'yes-no') return { lo: range.lo, hi: range.hi };
  const { factor } = unitOf(unit);
  return { lo: range.lo / factor, hi: range.hi / factor };
}

/**
 * A piece of a working, how tightly it holds together, so that brackets come where they are needed,
 * and what it is with its sign turned, where it begins with a minus.
 */
type Piece = {
  readonly of: Sayable;
  readonly bond: 1 | 2 | 3;
  readonly turned?: Sayable;
  /** A range with its lower end below zero, to which alone the minus belongs. */
  readonly isMixed?: boolean;
  /** Of what may go either way, how far. */
  readonly far?: Quantity;
};
const loose = (of: Sayable): Piece => ({ of, bond: 1 });
const firm = (of: Sayable): Piece => ({ of, bond: 3 });
const bracket = (of: Sayable): Sayable => message('bracket', { of });
const within = ({ of, bond }: Piece, least: number): Sayable => (bond >= least ? of : bracket(of));

const negated = (of: Quantity): Quantity => ({ ...of, lo: -of.hi, hi: -of.lo });

/** A number as a piece. */
function figure(of: Quantity): Piece {
  const { lo, hi } = of;
  if (!(lo < 0) || lo === -Infinity) return firm(of);
  return hi > 0 ? { ...firm(of), isMixed: true } : { ...firm(of), turned: negated(of) };
}

const signs = { '+': 'plus', '-': 'minus', '*': 'times', '/': 'over' } as const;

/** “a + −b” is written “a − b”, and “a − −b” is “a + b”; “a + ±b” is “a ± b”. */
function joined(left: Piece, op: '+' | '-', right: Piece): Piece {
  const a = left.of;
  const b = within(right, op === '-' ? 2 : 1);
  const made = (sign: '+' | '-', other: Sayable): Piece => ({
    of: message(signs[sign], { a, b: other }),
    bond: 1,
    ...(left.turned && { turned: message(signs[sign], { a: left.turned, b: other }) }),
  });
  if (right.far) return loose(message('give-or-take', { a, far: right.far }));
  if (b !== right.of || (!right.turned && !right.isMixed)) return made(op, b);
  if (right.turned) return made(op === '+' ? '-' : '+', right.turned);
  return made(op, bracket(b));
}

/**
 * The working of a formula with the numbers put in: `430 lb × (1 + 10 %)`. Of a choice only the
 * branch that was taken is written; of a sum, its rows.
 */
export function working(node: Node, wording: Wording): Sayable {
  return write(node, wording).of;
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
const wholeOf = (node: Node, wording: Wording): Piece => {
  const { scope, unit } = wording;
  if (node.kind !== 'name' || unit(node.id) !== '1') return write(node, wording);
  return figure(exactly(asNumber(scope.value(node.id)), ''));
};

/** What is taken down and its sign turned was turned first and taken up: `−whole(−x)`. */
function roundedUp(node: Node, wording: Wording): Sayable {
  if (node.kind === 'negative')
    return message('rounded', { of: wholeOf(node.of, wording).of, up: true });
  const { of: whole, turned } = wholeOf(node, wording);
  const of = 'unit' in whole ? negated(whole) : (turned ?? message('negative', { of: whole }));
  return message('rounded', { of, up: true });
}

function negative(node: Node & { kind: 'negative' }, wording: Wording): Piece {
  if (node.of.kind === 'whole') return firm(roundedUp(node.of.of, wording));
  const of = within(write(node.of, wording), 3);
  return { of: message('negative', { of }), bond: 1, turned: of };
}

function arithmetic(node: Node & { kind: 'arithmetic' }, wording: Wording): Piece {
  const { op, a, b } = node;
  if (op === '+' && isNothing(a, wording.scope)) return write(b, wording);
  if (op === '+' && isNothing(b, wording.scope)) return write(a, wording);
  const [first, second] = [write(a, wording), write(b, wording)];
  if (op === '+' || op === '-') return joined(first, op, second);
  const left = within(first, 2);
  const right = within(second, op === '/' ? 3 : 2);
  const { turned, isMixed = false }: Partial<Piece> = left === first.of ? first : {};
  return {
    of: message(signs[op], { a: left, b: right }),
    bond: 2,
    isMixed,
    ...(turned && { turned: message(signs[op], { a: turned, b: right }) }),
  };
}

function rowsOf(node: Node & { kind: 'sum' }, wording: Wording): Piece {
  const { scope } = wording;
  const rows = scope.rows(node.list);
  if (rows === 0) return firm(message('nothing', {}));
  if (rows > mostRowsShown) return loose(message('sum-of-rows', { rows }));
  const each = Array.from({ length: rows }, (_, row) =>
    write(node.of, { ...wording, scope: scope.inRow(node.list, row) }),
  );
  return rows === 1
    ? { of: each[0]?.of ?? unknown, bond: 2 }
    : loose(message('sum-of', { of: each.map(({ of }) => of) }));
}

function write(node: Node, wording: Wording): Piece {
  const { scope, unit, isYear } = wording;
  const inner = (each: Node) => write(each, wording);
  /** Of one alone there is no least and no most. */
  const extreme = (code: 'least-of' | 'most-of', of: readonly Node[]): Piece => {
    const stated = of
      .filter((each) => asNumber(reckon(each, scope)).lo !== Infinity)
      .map((each) => inner(each).of);
    const [only, more] = stated;
    return only !== undefined && more === undefined
      ? loose(only)
      : loose(message(code, { of: stated }));
  };
  switch (node.kind) {
    case 'number':
      return firm(message('number', { value: node.value }));
    case 'word':
      return firm({ option: node.text });
    case 'unlimited':
      return firm(message('no-limit-stated', {}));
    case 'name': {
      const value = scope.value(node.id);
      const said = namedSaid(value, unit(node.id), isYear(node.id));
      if ('unit' in said) return figure(said);
      const isFar = value.kind === 'number' && isEitherWay(value);
      return isFar ? { ...firm(said), far: farOf(value, unit(node.id)) } : firm(said);
    }
    case 'negative':
      return negative(node, wording);
    case 'arithmetic':
      return arithmetic(node, wording);
    case 'choose': {
      const when = asTruth(reckon(node.when, scope));
      if (!when.no) return inner(node.chosen);
      if (!when.yes) return inner(node.otherwise);
      return loose(message('either', { of: [inner(node.chosen).of, inner(node.otherwise).of] }));
    }
    case 'min':
      return extreme('least-of', node.of);
    case 'max':
      return extreme('most-of', node.of);
    case 'largestKnown': {
      const known = node.of.filter((each) => scope.partKnown(each, reckon(each, scope)));
      const [only] = known;
      if (!only) return firm(message('is-not-known', {}));
      return known.length === 1 ? inner(only) : extreme('most-of', known);
    }
    case 'sum':
      return rowsOf(node, wording);
    case 'count':
      return firm(message('number', { value: scope.rows(node.list) }));
    case 'needs':
      return node.names.every((name) => scope.known(name))
        ? inner(node.of)
        : firm(message('is-not-known', {}));
    case 'lookup':
    case 'pick': {
      const value = valueSaid(reckon(node, scope), wording.tableUnit(node.table));
      return firm(message('table-at', { value, at: inner(node.at).of }));
    }
    case 'power': {
      const [base, exponent] = [within(inner(node.base), 3), within(inner(node.exponent), 3)];
      return { of: message('power', { base, exponent }), bond: 2 };
    }
    case 'between':
      return loose(message('from-to', { from: inner(node.a).of, to: inner(node.b).of }));
    case 'whole':
      return firm(message('rounded', { of: wholeOf(node.of, wording).of, up: false }));
    case 'sunHeight': {
      const { latitude, day, hour } = node;
      const [where, when, at] = [inner(latitude).of, inner(day).of, inner(hour).of];
      return firm(message('sun-height', { latitude: where, day: when, hour: at }));
    }
    case 'over': {
      const steps = scope.simulation(node.simulation).steps.length;
      return loose(message('over-steps', { how: node.how, steps }));
    }
    case 'catalogued': {
      const { label } = scope.catalogue(node.catalogue);
      const code = node.ask === 'figure' ? 'as-catalogue' : 'counted-in';
      return firm(message(code, { catalogue: { text: label } }));
    }
    default:
      return firm(valueSaid(asTruth(reckon(node, scope)), 'yes-no'));
  }
}
