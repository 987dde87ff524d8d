import { type Interval, show, showNumber, type UnitSystem, unitOf } from '../../quantity';
import { below, type Node } from './nodes';
import { reckon, type Scope } from './reckon';
import { asNumber, asTruth } from './truth';
import type { Value } from './values';

/** What putting a formula into words needs to know of its surroundings. */
export type Wording = {
  readonly scope: Scope;
  /** The unit a name is kept in. */
  readonly unit: (name: string) => string;
  readonly system: UnitSystem;
};

const mostRowsShown = 6;

/** A value kept in base units, in words. */
export function inWords(value: Value, unit: string, system: UnitSystem): string {
  if (value.kind === 'truth') return value.yes && value.no ? 'unknown' : value.yes ? 'yes' : 'no';
  if (value.kind === 'among') return value.options.length === 1 ? `${value.options[0]}` : 'unknown';
  return show(inUnit(value, unit), unit, system);
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

function write(node: Node, wording: Wording): Piece {
  const { scope, unit, system } = wording;
  const inner = (each: Node) => write(each, wording);
  const list = (of: readonly Node[]) => {
    const stated = of.filter((each) => asNumber(reckon(each, scope)).lo !== Infinity);
    return stated.map((each) => inner(each).text).join(', ');
  };
  switch (node.kind) {
    case 'number':
      return firm(showNumber(node.value, 6));
    case 'word':
      return firm(node.text);
    case 'unlimited':
      return firm('no limit stated');
    case 'name':
      return firm(inWords(scope.value(node.id), unit(node.id), system));
    case 'negative':
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
      const text = `${left} ${signs[node.op]} ${right}`;
      return tight ? { text, bond: 2 } : loose(text);
    }
    case 'choose': {
      const when = asTruth(reckon(node.when, scope));
      if (!when.no) return inner(node.chosen);
      if (!when.yes) return inner(node.otherwise);
      return loose(`${inner(node.chosen).text} or ${inner(node.otherwise).text}`);
    }
    case 'min':
      return loose(`the least of ${list(node.of)}`);
    case 'max':
      return loose(`the most of ${list(node.of)}`);
    case 'largestKnown': {
      const known = node.of.filter((each) => scope.partKnown(each, reckon(each, scope)));
      const [only] = known;
      if (!only) return firm('not known');
      return known.length === 1 ? inner(only) : loose(`the most of ${list(known)}`);
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
      return firm(`table at ${inner(node.at).text}`);
    case 'power':
      return { text: `${within(inner(node.base), 3)}^${within(inner(node.exponent), 3)}`, bond: 2 };
    case 'between': {
      const [from, to] = [inner(node.a), inner(node.b)];
      return from.text === to.text ? from : loose(`from ${from.text} to ${to.text}`);
    }
    case 'whole':
      return firm(`${within(inner(node.of), 3)} rounded down`);
    case 'sunHeight':
      return firm(
        `the sun’s height at ${inner(node.latitude).text}, day ${inner(node.day).text}, ${inner(node.hour).text} h`,
      );
    case 'over':
      return loose(
        `${overWords[node.how]} over ${scope.simulation(node.simulation).steps.length} steps`,
      );
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

/** Everything that a value was really reckoned from: names in the branches taken. */
export function usedNames(node: Node, scope: Scope): readonly string[] {
  const found = new Set<string>();
  const walk = (each: Node): void => {
    switch (each.kind) {
      case 'name':
        found.add(each.id);
        return;
      case 'sum':
        found.add(each.list);
        walkSum(each.of, each.list);
        return;
      case 'count':
        found.add(each.list);
        return;
      case 'choose': {
        const when = asTruth(reckon(each.when, scope));
        if (when.yes) walk(each.chosen);
        if (when.no) walk(each.otherwise);
        if (when.yes && when.no) walk(each.when);
        return;
      }
      case 'largestKnown':
        for (const part of each.of) if (scope.partKnown(part, reckon(part, scope))) walk(part);
        return;
      case 'needs':
        if (each.names.every((name) => scope.known(name))) walk(each.of);
        else for (const name of each.names) if (!scope.known(name)) found.add(name);
        return;
      case 'negative':
      case 'not':
        walk(each.of);
        return;
      case 'arithmetic':
      case 'compare':
      case 'both':
      case 'either':
        walk(each.a);
        walk(each.b);
        return;
      case 'min':
      case 'max':
        for (const part of each.of) walk(part);
        return;
      case 'lookup':
      case 'pick':
        walk(each.at);
        return;
      case 'whole':
        walk(each.of);
        return;
      case 'power':
      case 'between':
      case 'sunHeight':
        for (const part of below(each)) walk(part);
        return;
      case 'over':
        found.add(each.simulation);
        return;
      case 'catalogued':
        found.add(each.catalogue);
        return;
      case 'given':
      case 'known':
        for (const name of each.names) found.add(name);
        return;
      default:
        return;
    }
  };
  const walkSum = (of: Node, list: string): void => {
    if (of.kind === 'name' && !of.id.startsWith(`${list}.`)) found.add(of.id);
    if (of.kind === 'arithmetic') {
      walkSum(of.a, list);
      walkSum(of.b, list);
    }
  };
  walk(node);
  return [...found];
}
