import type { Graph, Ref } from './graph';
import { type Stage, stageOf, stages } from './staged';

/** Beyond this nothing is held against where it turns: there may be no such place. */
const farOut = 1e40;

/**
 * Comparisons and what is joined of them, so built that as little as can be is left for every pair: what
 * hangs on a row or a column alone is joined there, once; what is rounded, multiplied or divided is held
 * against where it turns; of many limits of one figure the strictest stands for all.
 */
export function joining(g: Graph) {
  const stageIn = (ref: Ref): Stage => {
    const step = g.steps[ref];
    return step && step.op !== 'constant' ? stageOf(step) : 'case';
  };
  const isOfPairs = (ref: Ref): boolean => stageIn(ref) === 'pairs';
  /** Of a row or of the case: what is done with it is done once for all columns. */
  const isOfRow = (ref: Ref): boolean => stageIn(ref) === 'rows' || stageIn(ref) === 'case';

  /** What a comparison with the strictest limit stands for. */
  const strictest = new Map<Ref, readonly Ref[]>();

  /** All that are joined by “or” over pairs. */
  const alternatives = (ref: Ref): readonly Ref[] => {
    const stoodFor = strictest.get(ref);
    if (stoodFor) return stoodFor;
    const step = g.steps[ref];
    if (step?.op !== 'or' || !isOfPairs(ref)) return [ref];
    return step.args.flatMap(alternatives);
  };

  /** A limit of the row held against what is of a column or a pair, and which of the two it is. */
  const limitIn = (ref: Ref) => {
    const { op, args = [] } = g.steps[ref] ?? {};
    const [a = 0, b = 0] = args;
    if ((op !== 'less' && op !== 'not-above') || isOfRow(a) === isOfRow(b)) return undefined;
    const [limit, figure] = isOfRow(a) ? [a, b] : [b, a];
    if (g.steps[limit]?.mayBeNone !== false) return undefined;
    return { op, limit, figure, isFirst: limit === a };
  };
  /** Of comparisons of one figure with several limits the one that holds where any of them does. */
  const joinedLimits = (all: readonly Ref[]): readonly Ref[] => {
    const alike = new Map<string, Ref[]>();
    for (const ref of all) {
      const found = limitIn(ref);
      const key = found ? `${found.op} ${found.figure} ${found.isFirst}` : `${ref}`;
      const others = alike.get(key) ?? [];
      others.push(ref);
      alike.set(key, others);
    }
    return [...alike.values()].map((some) => {
      const [first = 0, ...others] = some;
      const found = limitIn(first);
      if (others.length === 0 || !found) return first;
      const { op, figure, isFirst } = found;
      const limit = some
        .map((each) => limitIn(each)?.limit ?? found.limit)
        .reduce((a, b) => (isFirst ? g.min(a, b) : g.max(a, b)));
      const [a, b] = isFirst ? [limit, figure] : [figure, limit];
      const one = op === 'less' ? g.less(a, b) : g.notAbove(a, b);
      if (!some.includes(one) && g.steps[one]?.op === op) strictest.set(one, some);
      return one;
    });
  };

  /** Any of them: of each stage in one order, so that what stands on the same is made once. */
  const any = (refs: Iterable<Ref>): Ref => {
    const all = [...new Set([...refs].flatMap(alternatives))].sort((a, b) => a - b);
    const of = (stage: Stage): readonly Ref[] => all.filter((ref) => stageIn(ref) === stage);
    const pairs = joinedLimits(of('pairs')).toSorted((a, b) => a - b);
    const sides = stages.filter((stage) => stage !== 'pairs').map((stage) => g.or(...of(stage)));
    return g.or(...pairs, ...sides);
  };

  /** What is chosen where none of these holds. */
  const whereNone = (of: ReadonlySet<Ref>, ref: Ref): Ref => {
    const step = g.steps[ref];
    if (step?.op !== 'choose' || !isOfPairs(ref)) return ref;
    const [when = 0, then = 0, otherwise = 0] = step.args;
    const left = alternatives(when).filter((each) => !of.has(each));
    return g.choose(any(left), then, whereNone(of, otherwise));
  };
  const choice = (when: Ref, then: Ref, otherwise: Ref): Ref =>
    g.choose(when, then, whereNone(new Set(alternatives(when)), otherwise));

  /** A number that every place has, and that has an end. */
  const isClosed = (ref: Ref): boolean => {
    const { least = -Infinity, most = Infinity, mayBeNone = true } = g.steps[ref] ?? {};
    return least > -farOut && most < farOut && !mayBeNone;
  };
  const isAboveZero = (ref: Ref): boolean => isClosed(ref) && (g.steps[ref]?.least ?? 0) > 0;

  /** A limit of what is multiplied or divided by something of the row, as one of what it is made of. */
  const turned = (limit: Ref, figure: Ref): readonly [limit: Ref, figure: Ref] => {
    const { op, args = [] } = g.steps[figure] ?? {};
    const [a = 0, b = 0] = args;
    if (!isOfPairs(figure) || !isOfRow(limit) || !isClosed(limit)) return [limit, figure];
    const isBy = (by: Ref): boolean => isOfRow(by) && isAboveZero(by);
    if (op === 'div' && isBy(b)) return turned(g.fromOver(limit, b), a);
    if (op !== 'mul') return [limit, figure];
    if (isBy(b)) return turned(g.fromTimes(limit, b), a);
    return isBy(a) ? turned(g.fromTimes(limit, a), b) : [limit, figure];
  };

  const roundedIn = (ref: Ref): Ref | undefined => {
    const step = g.steps[ref];
    return step?.op === 'round' && isOfPairs(ref) ? step.args[0] : undefined;
  };
  /** A choice between two that do not hang on the pair. */
  const chosenIn = (ref: Ref) => {
    const step = g.steps[ref];
    const [when = 0, then = 0, otherwise = 0] = step?.args ?? [];
    const isSo = step?.op === 'choose' && step.sort === 'number' && isOfPairs(ref);
    return isSo && !isOfPairs(then) && !isOfPairs(otherwise)
      ? { when, then, otherwise }
      : undefined;
  };
  const canTurn = (limit: Ref): boolean => !isOfPairs(limit) && isClosed(limit);

  const compared = (op: 'less' | 'not-above', a: Ref, b: Ref): Ref => {
    const [left, right] = [roundedIn(a), roundedIn(b)];
    const chosen = right === undefined ? undefined : chosenIn(a);
    if (chosen) {
      const { when, then, otherwise } = chosen;
      return g.choose(when, compared(op, then, b), compared(op, otherwise, b));
    }
    if (right !== undefined && canTurn(a)) {
      return g.notAbove(...turned(op === 'less' ? g.above(a) : g.from(a), right));
    }
    if (left !== undefined && canTurn(b)) {
      const [limit, figure] = turned(op === 'less' ? g.from(b) : g.above(b), left);
      return g.less(figure, limit);
    }
    return op === 'less' ? g.less(a, b) : g.notAbove(a, b);
  };

  const round = (a: Ref): Ref => {
    const chosen = chosenIn(a);
    if (!chosen) return g.round(a);
    return g.choose(chosen.when, g.round(chosen.then), g.round(chosen.otherwise));
  };

  return { any, choice, compared, round };
}
