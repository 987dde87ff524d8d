import type { Graph, Ref } from './graph';
import { joinKeys, jumpingOn, type Keys, keysMeet, noKeys, pickKeys } from './keys';

/**
 * Values as the engine has them, each as steps of a graph. Where the engine narrows a range by its
 * slopes, ours is kept as it is and marked `loose`: the engine's lies within it. What is not loose is
 * the engine's, end by end.
 *
 * Of slopes no more is kept than their signs: by which inputs a number may rise and by which it may
 * fall. One that does both with the same input may be wider than it need be.
 */
export type NumberSteps = {
  readonly kind: 'number';
  readonly lo: Ref;
  readonly hi: Ref;
  /** Inputs with which it may rise, and with which it may fall. */
  readonly rises: Keys;
  readonly falls: Keys;
  /** Whether one of them is open. */
  readonly open: Ref;
  readonly loose: Ref;
};

export type TruthSteps = {
  readonly kind: 'truth';
  readonly yes: Ref;
  readonly no: Ref;
  /** Inputs on which it hangs while it may be both. */
  readonly on: Keys;
  readonly open: Ref;
  readonly loose: Ref;
};

export type AmongSteps = {
  readonly kind: 'among';
  readonly options: readonly string[];
  /** Which of them it may be. */
  readonly may: Ref;
  readonly on: Keys;
};

export type WordSteps = { readonly kind: 'word'; readonly text: string };

export type ValueSteps = NumberSteps | TruthSteps | AmongSteps | WordSteps;

/** What a kernel cannot hold: a kind of formula, or a shape of rule. */
export class NotHeld extends Error {}

export const isPoint = (g: Graph, { lo, hi }: NumberSteps): Ref => g.same(lo, hi);

export const exactly = (g: Graph, at: Ref): NumberSteps => ({
  ...{ kind: 'number', lo: at, hi: at },
  ...{ rises: noKeys(g), falls: noKeys(g), open: g.truth(false), loose: g.truth(false) },
});

type Made = Omit<NumberSteps, 'kind'>;

/** An end that is no number is an open one; what comes to one number moves with nothing. */
export function made(g: Graph, { lo, hi, rises, falls, open, loose }: Made): NumberSteps {
  const [least, most] = [g.numberOr(lo, -Infinity), g.numberOr(hi, Infinity)];
  const is = g.same(least, most);
  const none = noKeys(g);
  return {
    ...{ kind: 'number', lo: least, hi: most },
    rises: pickKeys(g, is, none, rises),
    falls: pickKeys(g, is, none, falls),
    open: g.and(open, g.not(is)),
    loose: g.and(loose, g.not(is)),
  };
}

export const moves = (g: Graph, { rises, falls }: NumberSteps): Keys => joinKeys(g, rises, falls);

/** Moved either way by one input: the engine may find it narrower. */
export const isTangled = (g: Graph, { rises, falls }: NumberSteps): Ref =>
  keysMeet(g, rises, falls);

export const add = (g: Graph, a: NumberSteps, b: NumberSteps): NumberSteps =>
  made(g, {
    lo: g.add(a.lo, b.lo),
    hi: g.add(a.hi, b.hi),
    rises: joinKeys(g, a.rises, b.rises),
    falls: joinKeys(g, a.falls, b.falls),
    open: g.or(a.open, b.open),
    loose: g.or(a.loose, b.loose),
  });

export const negate = (g: Graph, a: NumberSteps): NumberSteps => ({
  ...a,
  ...{ lo: g.neg(a.hi), hi: g.neg(a.lo), rises: a.falls, falls: a.rises },
});

/** Zero times an open end is zero; of ends that are numbers nothing else comes to none. */
const times = (g: Graph, a: Ref, b: Ref): Ref => g.numberOr(g.mul(a, b), 0);

type Ends = { readonly lo: Ref; readonly hi: Ref };

export function multiplied(g: Graph, a: Ends, b: Ends): Ends {
  const isAbove = ({ lo }: Ends) => (g.steps[lo]?.least ?? -1) >= 0;
  if (isAbove(a) && isAbove(b)) return { lo: times(g, a.lo, b.lo), hi: times(g, a.hi, b.hi) };
  const all = [
    times(g, a.lo, b.lo),
    times(g, a.lo, b.hi),
    times(g, a.hi, b.lo),
    times(g, a.hi, b.hi),
  ];
  return { lo: all.reduce(g.min), hi: all.reduce(g.max) };
}

/** The inputs of `a` as they move what it is multiplied into. */
function scaled(g: Graph, a: NumberSteps, by: Ends) {
  const zero = g.constant(0);
  const [up, down] = [g.notAbove(zero, by.lo), g.notAbove(by.hi, zero)];
  const either = moves(g, a);
  return {
    rises: pickKeys(g, up, a.rises, pickKeys(g, down, a.falls, either)),
    falls: pickKeys(g, up, a.falls, pickKeys(g, down, a.rises, either)),
  };
}

export function multiply(g: Graph, a: NumberSteps, b: NumberSteps): NumberSteps {
  const [p, q] = [scaled(g, a, b), scaled(g, b, a)];
  return made(g, {
    ...multiplied(g, a, b),
    rises: joinKeys(g, p.rises, q.rises),
    falls: joinKeys(g, p.falls, q.falls),
    open: g.or(a.open, b.open),
    loose: g.or(a.loose, b.loose),
  });
}

/** A divisor that may be zero gives an open end, or anything at all when zero lies inside it. */
function reciprocal(g: Graph, { lo, hi }: Ends): Ends {
  const [zero, one] = [g.constant(0), g.constant(1)];
  const isApart = g.or(g.less(zero, lo), g.less(hi, zero));
  const isFrom = g.and(g.same(lo, zero), g.less(zero, hi));
  const isTo = g.and(g.same(hi, zero), g.less(lo, zero));
  const [least, most] = [g.div(one, hi), g.div(one, lo)];
  return {
    lo: g.choose(g.or(isApart, isFrom), least, g.constant(-Infinity)),
    hi: g.choose(g.or(isApart, isTo), most, g.constant(Infinity)),
  };
}

export function divide(g: Graph, a: NumberSteps, b: NumberSteps): NumberSteps {
  const zero = g.constant(0);
  const under = reciprocal(g, b);
  const is = isPoint(g, b);
  const isEndless = g.and(
    is,
    g.or(g.same(b.lo, g.constant(Infinity)), g.same(b.lo, g.constant(-Infinity))),
  );
  const isPlain = g.and(is, g.not(g.same(b.lo, zero)));
  const [p, q] = [g.div(a.lo, b.lo), g.div(a.hi, b.lo)];
  const isAbove = g.less(zero, b.lo);
  const other = multiplied(g, a, under);
  const pick = (plain: Ref, otherwise: Ref) =>
    g.choose(isEndless, zero, g.choose(isPlain, plain, otherwise));
  const quotient = {
    lo: pick(g.choose(isAbove, p, q), other.lo),
    hi: pick(g.choose(isAbove, q, p), other.hi),
  };
  const fall = multiplied(g, quotient, under);
  const [m, n] = [scaled(g, a, under), scaled(g, negate(g, b), fall)];
  return made(g, {
    ...quotient,
    rises: joinKeys(g, m.rises, n.rises),
    falls: joinKeys(g, m.falls, n.falls),
    open: g.or(a.open, b.open),
    loose: g.or(a.loose, b.loose),
  });
}

/** Of two that lie apart the lesser or greater alone counts. */
export function extreme(
  g: Graph,
  kind: 'min' | 'max',
  a: NumberSteps,
  b: NumberSteps,
): NumberSteps {
  const [isA, isB] = [g.less(a.hi, b.lo), g.less(b.hi, a.lo)];
  const [first, second] = kind === 'min' ? [isA, isB] : [isB, isA];
  const pick = (p: Ref, q: Ref, joined: Ref) => g.choose(first, p, g.choose(second, q, joined));
  const keys = (p: Keys, q: Keys) =>
    pickKeys(g, first, p, pickKeys(g, second, q, joinKeys(g, p, q)));
  return made(g, {
    lo: g[kind](a.lo, b.lo),
    hi: g[kind](a.hi, b.hi),
    rises: keys(a.rises, b.rises),
    falls: keys(a.falls, b.falls),
    open: pick(a.open, b.open, g.or(a.open, b.open)),
    loose: pick(a.loose, b.loose, g.or(a.loose, b.loose)),
  });
}

export const hull = (g: Graph, a: NumberSteps, b: NumberSteps): NumberSteps =>
  made(g, {
    lo: g.min(a.lo, b.lo),
    hi: g.max(a.hi, b.hi),
    rises: joinKeys(g, a.rises, b.rises),
    falls: joinKeys(g, a.falls, b.falls),
    open: g.or(a.open, b.open),
    loose: g.or(a.loose, b.loose),
  });

/** One or the other, by a truth; both where it may be both. */
export function chosen(g: Graph, when: TruthSteps, a: NumberSteps, b: NumberSteps): NumberSteps {
  const joined = hull(g, a, b);
  const jumps = { ...joined, rises: joinKeys(g, joined.rises, jumpingOn(g, when.on)) };
  const either = made(g, {
    ...jumps,
    falls: joinKeys(g, joined.falls, jumpingOn(g, when.on)),
    open: g.or(joined.open, when.open),
    loose: g.or(joined.loose, when.loose),
  });
  return pickNumber(g, when.no, pickNumber(g, when.yes, either, b), a);
}

export function pickNumber(g: Graph, when: Ref, a: NumberSteps, b: NumberSteps): NumberSteps {
  const pick = (key: 'lo' | 'hi' | 'open' | 'loose'): Ref => g.choose(when, a[key], b[key]);
  return {
    ...{ kind: 'number', lo: pick('lo'), hi: pick('hi') },
    rises: pickKeys(g, when, a.rises, b.rises),
    falls: pickKeys(g, when, a.falls, b.falls),
    ...{ open: pick('open'), loose: pick('loose') },
  };
}

/** Anything from zero up, of what is not known. */
export const zeroUp = (g: Graph, on: Keys, open: Ref): NumberSteps => ({
  ...{ kind: 'number', lo: g.constant(0), hi: g.constant(Infinity) },
  ...{ rises: on, falls: on, open, loose: g.truth(false) },
});
