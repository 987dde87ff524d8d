import type { Graph, Ref } from './graph';
import { joinKeys, type Keys, noKeys, pickKeys } from './keys';
import {
  type AmongSteps,
  moves,
  NotHeld,
  type NumberSteps,
  type TruthSteps,
  type ValueSteps,
} from './values';

export type Compare = '<' | '<=' | '>' | '>=' | '==' | '!=';

/** Settled, unless it is in doubt: then the engine has it settled, and nobody here knows how. */
export function settled(g: Graph, yes: Ref, doubt: Ref = g.truth(false)): TruthSteps {
  return {
    ...{ kind: 'truth', yes: g.or(yes, doubt), no: g.or(g.not(yes), doubt) },
    ...{ on: noKeys(g), open: g.truth(false), loose: doubt },
  };
}

function undecided(g: Graph, truth: Omit<TruthSteps, 'kind'>): TruthSteps {
  const isBoth = g.and(truth.yes, truth.no);
  return {
    ...{ kind: 'truth', yes: truth.yes, no: truth.no },
    on: pickKeys(g, isBoth, truth.on, noKeys(g)),
    open: g.and(isBoth, truth.open),
    loose: g.and(isBoth, truth.loose),
  };
}

export const bitOf = ({ options }: AmongSteps, word: string): number =>
  options.includes(word) ? 1 << options.indexOf(word) : 0;

export function asTruth(g: Graph, value: ValueSteps): TruthSteps {
  if (value.kind === 'truth') return value;
  if (value.kind !== 'among') throw new NotHeld('A yes or no is wanted, and none stands there.');
  const yes = bitOf(value, 'yes');
  return undecided(g, {
    yes: g.not(g.bitsAre(g.bitsAnd(value.may, g.bits(yes)), 0)),
    no: g.not(g.bitsAre(g.bitsAnd(value.may, g.bits(~yes)), 0)),
    on: value.on,
    ...{ open: g.truth(false), loose: g.truth(false) },
  });
}

function compareNumbers(g: Graph, op: Compare, a: NumberSteps, b: NumberSteps): TruthSteps {
  const [al, ah, bl, bh] = [g.round(a.lo), g.round(a.hi), g.round(b.lo), g.round(b.hi)];
  const same = g.and(g.same(al, ah), g.same(bl, bh), g.same(al, bl));
  const apart = g.or(g.less(ah, bl), g.less(bh, al));
  const possible: Record<Compare, readonly [yes: Ref, no: Ref]> = {
    '<': [g.less(al, bh), g.notAbove(bl, ah)],
    '<=': [g.notAbove(al, bh), g.less(bl, ah)],
    '>': [g.less(bl, ah), g.notAbove(al, bh)],
    '>=': [g.notAbove(bl, ah), g.less(al, bh)],
    '==': [g.not(apart), g.not(same)],
    '!=': [g.not(same), g.not(apart)],
  };
  const [yes, no] = possible[op];
  return undecided(g, {
    ...{ yes, no },
    on: joinKeys(g, moves(g, a), moves(g, b)),
    open: g.or(a.open, b.open),
    loose: g.or(a.loose, b.loose),
  });
}

function compareWord(g: Graph, op: Compare, a: AmongSteps, word: string): TruthSteps {
  const bit = bitOf(a, word);
  const yes = g.not(g.bitsAre(g.bitsAnd(a.may, g.bits(bit)), 0));
  const no = g.not(g.bitsAre(a.may, bit));
  const equal = undecided(g, {
    ...{ yes, no, on: a.on },
    ...{ open: g.truth(false), loose: g.truth(false) },
  });
  if (op === '==') return equal;
  if (op === '!=') return opposite(equal);
  throw new NotHeld(`A choice is compared by “${op}”.`);
}

export function compare(g: Graph, op: Compare, a: ValueSteps, b: ValueSteps): TruthSteps {
  if (a.kind === 'number' && b.kind === 'number') return compareNumbers(g, op, a, b);
  if (a.kind === 'among' && b.kind === 'word') return compareWord(g, op, a, b.text);
  if (a.kind === 'word' && b.kind === 'among') return compareWord(g, op, b, a.text);
  throw new NotHeld(`A ${a.kind} is compared with a ${b.kind}.`);
}

export const opposite = (a: TruthSteps): TruthSteps => ({ ...a, yes: a.no, no: a.yes });

export const both = (g: Graph, a: TruthSteps, b: TruthSteps): TruthSteps =>
  undecided(g, {
    yes: g.and(a.yes, b.yes),
    no: g.or(a.no, b.no),
    on: joinKeys(g, a.on, b.on),
    open: g.or(a.open, b.open),
    loose: g.or(a.loose, b.loose),
  });

export const either = (g: Graph, a: TruthSteps, b: TruthSteps): TruthSteps =>
  opposite(both(g, opposite(a), opposite(b)));

export function chosenTruth(g: Graph, when: TruthSteps, a: TruthSteps, b: TruthSteps): TruthSteps {
  const [isA, isB] = [g.not(when.no), g.not(when.yes)];
  const pick = (p: Ref, q: Ref, joined: Ref) => g.choose(isA, p, g.choose(isB, q, joined));
  const keys = (p: Keys, q: Keys, joined: Keys) => pickKeys(g, isA, p, pickKeys(g, isB, q, joined));
  return {
    kind: 'truth',
    yes: pick(a.yes, b.yes, g.or(a.yes, b.yes)),
    no: pick(a.no, b.no, g.or(a.no, b.no)),
    on: keys(a.on, b.on, joinKeys(g, when.on, joinKeys(g, a.on, b.on))),
    open: pick(a.open, b.open, g.or(when.open, a.open, b.open)),
    loose: pick(a.loose, b.loose, g.or(when.loose, a.loose, b.loose)),
  };
}
