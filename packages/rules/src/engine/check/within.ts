import type { Interval } from '../../quantity';
import type { Topic } from '../define/shapes';
import type { Node } from '../formula/grammar/nodes';
import type { Scope } from '../formula/grammar/scope';
import { reckon } from '../formula/reckon';
import type { Run } from '../formula/run';
import type { Inputs } from '../value/values';
import { named, numberFactor, randomly, told, untold } from './any-facts';
import type { Fallback } from './fallbacks-in';
import { meant } from './near';
import type { Beside } from './noted';
import type { Mistake } from './problem';

/** As often a rule set is tried with facts of all kinds, told and not told. */
export const tries = 30;

const shown = (value: number, factor: number, unit: string): string =>
  `${Number((value / factor).toPrecision(6))} ${unit}`.trim();

const isWithin = (value: Interval, least: number, most: number): boolean => {
  const slack = 1e-6 * Math.max(1, ...[least, most].filter(Number.isFinite).map(Math.abs));
  return value.lo >= least - slack && value.hi <= most + slack;
};

export type Trial = {
  readonly reckon: (inputs: Inputs) => Run;
  readonly facts: readonly Inputs[];
  readonly topic: Topic;
};

/** The mistake, what was found, and what belongs to it; undefined where nothing is wrong. */
export type Lacking = readonly [code: Mistake, found: string, beside?: Beside] | undefined;

const numberOf = (scope: Scope, node: Node): Interval | undefined => {
  const value = reckon(node, scope);
  return value.kind === 'number' ? value : undefined;
};

/** Where a formula is reckoned: once in a case, or at every step of a simulation. */
export type Places = (run: Run) => readonly Scope[];

/**
 * Tries a declared range: what is taken where nothing was told must lie in it, and whatever is told
 * then must, too; else the range is not what the told facts prove.
 */
export function proofLacking(
  { reckon: reckoned, facts, topic }: Trial,
  name: string,
  names: readonly string[],
  [least, most]: readonly [Node, Node],
  unit: string,
  places: Places,
): Lacking {
  const random = randomly(names.length);
  const factor = numberFactor(unit);
  const said = ({ lo, hi }: Interval): string =>
    `${shown(lo, factor, unit)} to ${shown(hi, factor, unit)}`;
  for (const base of facts) {
    const more = told(topic, base, names, random);
    const afterwards = places(reckoned(more));
    for (const [place, without] of places(reckoned(untold(topic, base, names))).entries()) {
      const [from, to] = [numberOf(without, least), numberOf(without, most)];
      const taken = without.value(name);
      if (!from || !to || taken.kind !== 'number') return undefined;
      const ends = { lo: from.lo, hi: to.hi };
      if (!isWithin(taken, ends.lo, ends.hi)) {
        return ['taken-outside', said(taken), { of: said(ends), unit }];
      }
      const then = afterwards[place]?.value(name);
      if (then?.kind === 'number' && !isWithin(then, ends.lo, ends.hi)) {
        const found = `with ${named(topic, more, names)} it is ${said(then)}`;
        return ['not-proved', found, { of: said(ends), unit }];
      }
    }
  }
  return undefined;
}

/** An assumption that stands in is said with the answer, and is one about what was not told. */
export function assumptionLacking(
  { reckon: reckoned, facts, topic }: Trial,
  assumes: string,
  fallbacks: readonly Fallback[],
): Lacking {
  const names = [...new Set(fallbacks.flatMap(({ untold: some }) => some))];
  if (names.length === 0) {
    return ['assumes-of-nothing', assumes];
  }
  const silent = topic.facts[assumes]?.silent;
  if (silent) {
    if (!silent.quiet && names.every((each) => each === assumes)) return undefined;
    return ['assumes-another', assumes, { of: names.join(', ') }];
  }
  if (!topic.assumptions.some(({ when }) => when === assumes)) {
    const options = topic.assumptions.map(({ when }) => when);
    return ['not-an-assumption', assumes, { options, ...meant(assumes, options) }];
  }
  const holds = facts.some((base) => {
    const value = reckoned(untold(topic, base, names)).scope.value(assumes);
    return value.kind === 'truth' && value.yes;
  });
  if (holds) return undefined;
  return ['assumption-never-holds', assumes, { of: names.join(', ') }];
}

/** What stands in for a fact must at least once be something that the fact itself may be. */
export function standInLacking(
  { reckon: reckoned, facts, topic }: Trial,
  { fact = '', taken }: Fallback,
  places: Places,
): Lacking {
  const declared = topic.facts[fact];
  if (declared?.kind !== 'quantity') return undefined;
  const factor = numberFactor(declared.unit);
  const [least, most] = [declared.least * factor, declared.most * factor];
  const found = facts.flatMap((base) =>
    places(reckoned(untold(topic, base, [fact]))).flatMap((scope) => numberOf(scope, taken) ?? []),
  );
  if (found.length === 0 || found.some(({ lo, hi }) => hi >= least && lo <= most)) return undefined;
  const { unit } = declared;
  return ['stand-in-outside', fact, { unit, least: declared.least, most: declared.most }];
}
