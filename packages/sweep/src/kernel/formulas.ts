import type { Compiled, Node } from '@tarebook/rules/engine';
import type { Graph, Ref } from './graph';
import { joinKeys, jumpingOn, noKeys, pickKeys } from './keys';
import type { Row, Source, SumNode } from './source';
import { whatIsTold } from './told';
import { asTruth, both, chosenTruth, compare, either, opposite, settled } from './truths';
import {
  add,
  chosen,
  divide,
  exactly,
  extreme,
  hull,
  isTangled,
  multiply,
  NotHeld,
  type NumberSteps,
  negate,
  pickNumber,
  type TruthSteps,
  type ValueSteps,
  zeroUp,
} from './values';

/** Whether a formula's name is known, and whether that is in doubt here. */
export type Known = { readonly is: Ref; readonly doubt: Ref };

export type Reckoning = {
  readonly value: (name: string) => ValueSteps;
  readonly number: (name: string) => NumberSteps;
  readonly truth: (name: string) => TruthSteps;
  readonly given: (name: string) => Ref;
  readonly known: (name: string) => Known;
  /** Closed at both ends and moved by nothing that is open. */
  readonly restsOnKnown: (value: ValueSteps) => Known;
  readonly total: (sum: SumNode) => NumberSteps;
};

const mustBeNumber = (value: ValueSteps): NumberSteps => {
  if (value.kind === 'number') return value;
  throw new NotHeld('A number is wanted in a formula, and something else stands there.');
};

/** The formulas of a topic as steps of a graph: each name once, when it is first asked for. */
export function reckoning(g: Graph, compiled: Compiled, source: Source): Reckoning {
  const { topic, formulas } = compiled;
  const kept = new Map<string, ValueSteps>();
  const yes = g.truth(true);
  const never = g.truth(false);
  const told = whatIsTold(g, topic, source);
  const { factOf, listOf, given, isOpenName, heldBy, cell } = told;

  const value = (name: string): ValueSteps => {
    const before = kept.get(name);
    if (before) return before;
    const formula = formulas.get(name);
    const found = formula ? tightened(of(formula.node), formula.repeats) : told.input(name);
    kept.set(name, found);
    return found;
  };

  /** The engine looks closer at what one input enters more than once. */
  const tightened = (found: ValueSteps, repeats: boolean): ValueSteps =>
    found.kind === 'number' && repeats
      ? { ...found, loose: g.or(found.loose, isTangled(g, found)) }
      : found;

  const restsOnKnown = (found: ValueSteps): Known => {
    if (found.kind === 'word') return { is: yes, doubt: never };
    if (found.kind === 'among') return { is: yes, doubt: never };
    if (found.kind === 'truth') {
      return { is: g.not(found.open), doubt: g.and(found.open, found.loose) };
    }
    const { lo, hi, open, loose } = found;
    const isClosed = g.and(g.less(g.constant(-Infinity), lo), g.less(hi, g.constant(Infinity)));
    // What an open input moves both ways may come out unmoved; what is loose may come out closed.
    const unsure = g.or(g.and(open, isTangled(g, found)), loose);
    const is = g.and(isClosed, g.not(open));
    return { is, doubt: g.and(g.not(is), unsure) };
  };

  const settledKnown = (is: Ref): Known => ({ is, doubt: never });

  const known = (name: string): Known => {
    if (factOf(name)) return settledKnown(source.telling(name).isKnown);
    if (listOf(name) !== undefined) return settledKnown(source.column(name).isKnown);
    return restsOnKnown(value(name));
  };

  const all = (names: readonly string[], row: Row | undefined): Known => {
    const each = names.map((name) =>
      row !== undefined && listOf(name) === row.list
        ? settledKnown(source.cell(name, row).isKnown)
        : known(name),
    );
    // One that is not known for sure settles it.
    const lacks = g.or(...each.map(({ is, doubt }) => g.not(g.or(is, doubt))));
    const doubt = g.and(g.not(lacks), g.or(...each.map((one) => one.doubt)));
    return { is: g.and(...each.map(({ is }) => is)), doubt };
  };

  const needed = (node: NodeOf<'needs'>, row: Row | undefined): NumberSteps => {
    if (row !== undefined) throw new NotHeld('What is needed stands in a sum.');
    const { is, doubt } = all(node.names, row);
    const missing = node.names.map((name) => {
      const fact = factOf(name);
      const lacks = g.not(known(name).is);
      // Only a fact can be held at an end, and may be narrowed by it.
      const value = fact && of({ kind: 'name', id: name });
      const on = value ? jumpingOn(g, heldBy(name, value)) : noKeys(g);
      return {
        on: pickKeys(g, lacks, on, noKeys(g)),
        open: g.and(lacks, isOpenName(name)),
      };
    });
    const on = missing.map((each) => each.on).reduce((a, b) => joinKeys(g, a, b), noKeys(g));
    const nothing = zeroUp(g, on, g.or(...missing.map((each) => each.open)));
    const found = mustBeNumber(of(node.of, row));
    const either = { ...hull(g, found, nothing), loose: yes };
    return pickNumber(g, doubt, either, pickNumber(g, is, found, nothing));
  };
  const largest = (nodes: readonly Node[], row: Row | undefined): NumberSteps => {
    const parts = nodes.map((node) => {
      const found = mustBeNumber(of(node, row));
      return { found, ...restsOnKnown(found) };
    });
    const [first] = parts;
    if (!first) throw new NotHeld('largestKnown of nothing.');
    let has: Ref = never;
    let most = first.found;
    for (const { found, is } of parts) {
      const more = pickNumber(g, has, extreme(g, 'max', most, found), found);
      most = pickNumber(g, is, more, most);
      has = g.or(has, is);
    }
    const joined = parts.map(({ found }) => found).reduce((a, b) => hull(g, a, b));
    const on = joinKeys(g, joined.rises, joined.falls);
    const nothing = zeroUp(g, on, joined.open);
    const whole = { ...nothing, lo: g.min(g.constant(0), joined.lo), loose: yes };
    const doubt = g.or(...parts.map((each) => each.doubt));
    return pickNumber(g, doubt, whole, pickNumber(g, has, most, nothing));
  };

  const total = (sum: SumNode): NumberSteps =>
    source.summed(sum) ??
    source
      .rows(sum.list)
      .map((row) => mustBeNumber(of(sum.of, row)))
      .reduce((a, b) => add(g, a, b), exactly(g, g.constant(0)));

  /** `row`: inside a sum, the one that the list's columns mean. */
  const of = (node: Node, row?: Row): ValueSteps => {
    const num = (each: Node): NumberSteps => mustBeNumber(of(each, row));
    const truth = (each: Node): TruthSteps => asTruth(g, of(each, row));
    switch (node.kind) {
      case 'number':
        return exactly(g, g.constant(node.value));
      case 'word':
        return { kind: 'word', text: node.text };
      case 'unlimited':
        return exactly(g, g.constant(Infinity));
      case 'name': {
        const list = listOf(node.id);
        if (list === undefined) return value(node.id);
        if (!row || list !== row.list) throw new NotHeld(`“${node.id}” stands outside its list.`);
        return cell(node.id, row);
      }
      case 'negative':
        return negate(g, num(node.of));
      case 'arithmetic': {
        const [a, b] = [num(node.a), num(node.b)];
        if (node.op === '+') return add(g, a, b);
        if (node.op === '-') return add(g, a, negate(g, b));
        return node.op === '*' ? multiply(g, a, b) : divide(g, a, b);
      }
      case 'compare':
        return compare(g, node.op, of(node.a, row), of(node.b, row));
      case 'both':
        return both(g, truth(node.a), truth(node.b));
      case 'either':
        return either(g, truth(node.a), truth(node.b));
      case 'not':
        return opposite(truth(node.of));
      case 'choose': {
        const when = truth(node.when);
        const [a, b] = [of(node.chosen, row), of(node.otherwise, row)];
        if (a.kind === 'number' && b.kind === 'number') return chosen(g, when, a, b);
        return chosenTruth(g, when, asTruth(g, a), asTruth(g, b));
      }
      case 'min':
      case 'max':
        return node.of.map(num).reduce((a, b) => extreme(g, node.kind, a, b));
      case 'largestKnown':
        return largest(node.of, row);
      case 'count':
        return exactly(g, source.count(node.list));
      case 'sum':
        if (row !== undefined) throw new NotHeld('A sum stands in a sum.');
        return total(node);
      case 'given': {
        const each = node.names.map((name) =>
          row !== undefined && listOf(name) === row.list
            ? source.cell(name, row).isGiven
            : given(name),
        );
        return settled(g, g.and(...each));
      }
      case 'known': {
        const { is, doubt } = all(node.names, row);
        return settled(g, is, doubt);
      }
      case 'may': {
        const { yes: may, no, loose } = truth(node.of);
        return settled(g, may, g.and(may, no, loose));
      }
      case 'needs':
        return needed(node, row);
      case 'between':
        return hull(g, num(node.a), num(node.b));
      default:
        throw new NotHeld(`A kernel holds no ${node.kind}.`);
    }
  };

  return {
    value,
    number: (name) => mustBeNumber(value(name)),
    truth: (name) => asTruth(g, value(name)),
    given,
    known,
    restsOnKnown,
    total,
  };
}

type NodeOf<K extends Node['kind']> = Extract<Node, { readonly kind: K }>;
