import {
  add,
  anything,
  divide,
  hull,
  type Interval,
  isClosed,
  least,
  most,
  multiply,
  negate,
  point,
  reciprocal,
  subtract,
  zeroUp,
} from '../../quantity';
import type { Read } from '../catalogue/orders';
import type { Catalogue } from '../define/catalogue';
import { brought } from './brought';
import type { Arithmetic, Node } from './nodes';
import { between, made, power, whole } from './special';
import { asNumber, asTruth, both, compare, opposite } from './truth';
import {
  blend,
  eitherSlopes,
  exactly,
  joinOn,
  jumpSlopes,
  movedBy,
  type NumberValue,
  noSlopes,
  nothing,
  settled,
  type TruthValue,
  type Value,
} from './values';

/** What a formula can ask of the run it is reckoned in. */
export type Scope = {
  /** The value of a fact, parameter or formula; of a column, in the present row. */
  readonly value: (name: string) => Value;
  readonly given: (name: string) => boolean;
  readonly known: (name: string) => boolean;
  /** Whether a part of a formula rests on nothing unknown. */
  readonly partKnown: (node: Node, value: Value) => boolean;
  readonly rows: (list: string) => number;
  readonly inRow: (list: string, row: number) => Scope;
  readonly table: (name: string) => readonly (readonly [number, number])[];
  /** What a table of words gives for an option. */
  readonly wordValue: (table: string, word: string) => number;
  readonly catalogue: (name: string) => Catalogue;
  /** The scopes of a simulation's steps, and of its states once they are done. */
  readonly simulation: (name: string) => {
    readonly steps: readonly Scope[];
    readonly end: Scope;
    readonly isState: (name: string) => boolean;
  };
};

const one = point(1);
const minusOne = point(-1);

function arithmetic(op: Arithmetic, a: NumberValue, b: NumberValue): NumberValue {
  switch (op) {
    case '+':
      return made(add(a, b), blend(a.slopes, one, b.slopes, one));
    case '-':
      return made(subtract(a, b), blend(a.slopes, one, b.slopes, minusOne));
    case '*':
      return made(multiply(a, b), blend(a.slopes, b, b.slopes, a));
    case '/': {
      const quotient = divide(a, b);
      if (a.slopes.size === 0 && b.slopes.size === 0) return made(quotient, noSlopes);
      const under = reciprocal(b);
      return made(quotient, blend(a.slopes, under, b.slopes, negate(multiply(quotient, under))));
    }
  }
}

function extreme(kind: 'min' | 'max', a: NumberValue, b: NumberValue): NumberValue {
  const range = kind === 'min' ? least(a, b) : most(a, b);
  const [low, high] = a.hi < b.lo ? [a, b] : b.hi < a.lo ? [b, a] : [];
  if (low && high) return made(range, kind === 'min' ? low.slopes : high.slopes);
  return made(range, eitherSlopes(a.slopes, b.slopes));
}

function choose(when: TruthValue, then: () => Value, otherwise: () => Value): Value {
  if (!when.no) return then();
  if (!when.yes) return otherwise();
  const a = then();
  const b = otherwise();
  if (a.kind === 'number' && b.kind === 'number') {
    return made(hull(a, b), jumpSlopes(eitherSlopes(a.slopes, b.slopes), when.on));
  }
  const [p, q] = [asTruth(a), asTruth(b)];
  return {
    kind: 'truth',
    yes: p.yes || q.yes,
    no: p.no || q.no,
    on: joinOn(when.on, joinOn(p.on, q.on)),
  };
}

function lookup(rows: readonly (readonly [number, number])[], at: NumberValue): NumberValue {
  const value = (key: number): number => {
    const above = rows.findIndex(([k]) => k >= key);
    const [first, last] = [rows[0], rows.at(-1)];
    if (!first || !last) throw new Error('A table without rows was looked up.');
    if (above === 0) return first[1];
    const [hiRow, loRow] = [rows[above], rows[above - 1]];
    if (!hiRow || !loRow) return last[1];
    return loRow[1] + ((key - loRow[0]) / (hiRow[0] - loRow[0])) * (hiRow[1] - loRow[1]);
  };
  const inside = rows.filter(([key]) => key > at.lo && key < at.hi).map(([, v]) => v);
  const seen = [value(at.lo), ...inside, value(at.hi)];
  const range = { lo: Math.min(...seen), hi: Math.max(...seen) };
  if (at.slopes.size === 0) return made(range, noSlopes);
  let slope: Interval | undefined;
  rows.forEach(([key, v], i) => {
    const next = rows[i + 1];
    if (!next || next[0] < at.lo || key > at.hi) return;
    const piece = point((next[1] - v) / (next[0] - key));
    slope = slope ? hull(slope, piece) : piece;
  });
  const [start, end] = [rows[0]?.[0] ?? 0, rows.at(-1)?.[0] ?? 0];
  if (!slope || at.lo < start || at.hi > end) slope = slope ? hull(slope, point(0)) : point(0);
  return made(range, blend(at.slopes, slope, noSlopes, one));
}

function largestKnown(of: readonly Node[], scope: Scope): NumberValue {
  const parts = of.map((node) => ({ node, value: asNumber(reckon(node, scope)) }));
  const known = parts.filter(({ node, value }) => scope.partKnown(node, value));
  if (known.length > 0) return known.map((p) => p.value).reduce((a, b) => extreme('max', a, b));
  const open = parts.map((p) => p.value.slopes).reduce(eitherSlopes);
  return made(zeroUp, open);
}

function needs(of: Node, names: readonly string[], scope: Scope): NumberValue {
  const missing = names.filter((name) => !scope.known(name));
  if (missing.length === 0) return asNumber(reckon(of, scope));
  return made(zeroUp, new Map(missing.map((name) => [name, { lo: -Infinity, hi: Infinity }])));
}

/** Any of the options may be meant: the number lies between the least and the most of theirs. */
function pick(table: string, at: Value, scope: Scope): NumberValue {
  if (at.kind !== 'among') throw new Error('A table of words was looked up with a number.');
  const range = at.options.map((word) => point(scope.wordValue(table, word))).reduce(hull);
  return made(range, jumpSlopes(noSlopes, at.options.length > 1 ? at.on : nothing));
}

function over(node: Node & { kind: 'over' }, scope: Scope): NumberValue {
  const { steps, end, isState } = scope.simulation(node.simulation);
  if (node.how === 'last') return asNumber(reckon(node.of, end));
  const each = steps.map((step) => asNumber(reckon(node.of, step)));
  if (node.how === 'total') return each.reduce((a, b) => arithmetic('+', a, b), exactly(0));
  const how = node.how === 'least' ? 'min' : 'max';
  // A state is met at the start of each step; its last value stands only at the end.
  const isLast = node.of.kind === 'name' && isState(node.of.id);
  const last = isLast ? [asNumber(reckon(node.of, end))] : [];
  const all = [...each, ...last];
  // Of no steps there is neither a least nor a most: nothing is known.
  if (all.length === 0) return made(anything, noSlopes);
  return all.reduce((a, b) => extreme(how, a, b));
}

/** Choices and wishes, as a catalogue reads them. */
const choicesIn =
  (scope: Scope): Read =>
  (fact) => {
    const value = scope.value(fact);
    if (value.kind !== 'among') throw new Error(`“${fact}” is no choice.`);
    return { options: value.options, given: scope.given(fact) };
  };

/** The value of a formula in a scope: every result its inputs allow lies within it. */
export function reckon(node: Node, scope: Scope): Value {
  switch (node.kind) {
    case 'number':
      return exactly(node.value);
    case 'word':
      return { kind: 'among', options: [node.text], on: nothing };
    case 'name':
      return scope.value(node.id);
    case 'unlimited':
      return exactly(Infinity);
    case 'negative': {
      const of = asNumber(reckon(node.of, scope));
      return made(negate(of), blend(of.slopes, minusOne, noSlopes, one));
    }
    case 'arithmetic':
      return arithmetic(node.op, asNumber(reckon(node.a, scope)), asNumber(reckon(node.b, scope)));
    case 'compare':
      return compare(node.op, reckon(node.a, scope), reckon(node.b, scope));
    case 'both': {
      const a = asTruth(reckon(node.a, scope));
      return a.yes ? both(a, asTruth(reckon(node.b, scope))) : a;
    }
    case 'either': {
      const a = asTruth(reckon(node.a, scope));
      if (!a.no) return a;
      return opposite(both(opposite(a), opposite(asTruth(reckon(node.b, scope)))));
    }
    case 'not':
      return opposite(asTruth(reckon(node.of, scope)));
    case 'choose':
      return choose(
        asTruth(reckon(node.when, scope)),
        () => reckon(node.chosen, scope),
        () => reckon(node.otherwise, scope),
      );
    case 'min':
    case 'max':
      return node.of
        .map((each) => asNumber(reckon(each, scope)))
        .reduce((a, b) => extreme(node.kind, a, b));
    case 'largestKnown':
      return largestKnown(node.of, scope);
    case 'sum': {
      let total = exactly(0);
      for (let row = 0; row < scope.rows(node.list); row += 1) {
        const each = asNumber(reckon(node.of, scope.inRow(node.list, row)));
        total = arithmetic('+', total, each);
      }
      return total;
    }
    case 'count':
      return exactly(scope.rows(node.list));
    case 'given':
      return settled(node.names.every((name) => scope.given(name)));
    case 'known':
      return settled(node.names.every((name) => scope.known(name)));
    case 'needs':
      return needs(node.of, node.names, scope);
    case 'lookup':
      return lookup(scope.table(node.table), asNumber(reckon(node.at, scope)));
    case 'pick':
      return pick(node.table, reckon(node.at, scope), scope);
    case 'power':
      return power(asNumber(reckon(node.base, scope)), asNumber(reckon(node.exponent, scope)));
    case 'between':
      return between(asNumber(reckon(node.a, scope)), asNumber(reckon(node.b, scope)));
    case 'whole':
      return whole(asNumber(reckon(node.of, scope)));
    case 'sunHeight':
      return brought('sunHeight')(
        asNumber(reckon(node.latitude, scope)),
        asNumber(reckon(node.day, scope)),
        asNumber(reckon(node.hour, scope)),
      );
    case 'over':
      return over(node, scope);
    case 'catalogued':
      return brought('catalogued')(node, scope.catalogue(node.catalogue), choicesIn(scope));
  }
}

/** Closed at both ends and moved by nothing that is unknown. */
export function restsOnKnown(value: Value, isOpen: (key: string) => boolean): boolean {
  if (value.kind === 'number' && !isClosed(value)) return false;
  return !movedBy(value).some(isOpen);
}
