import type { Interval } from '../../quantity';
import type { Topic } from '../define/shapes';
import type { Node } from '../formula/grammar/nodes';
import type { Scope } from '../formula/grammar/scope';
import { reckon } from '../formula/reckon';
import type { Run } from '../formula/run';
import type { Inputs } from '../value/values';
import { named, numberFactor, randomly, told, untold } from './any-facts';
import type { Fallback } from './fallbacks-in';

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

/** What was found, and what is wanted; undefined where nothing is wrong. */
type Lacking = readonly [found: string, wanted: string] | undefined;

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
        return [
          `untold it is taken for ${said(taken)}, outside of ${said(ends)}, which it says to stay within`,
          'widen `within`, or take what lies in it',
        ];
      }
      const then = afterwards[place]?.value(name);
      if (then?.kind === 'number' && !isWithin(then, ends.lo, ends.hi)) {
        return [
          `what is told does not prove that it stays within ${said(ends)}: with ${named(topic, more, names)} it is ${said(then)}`,
          'widen `within` to all that it may be',
        ];
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
    return ['it says `assumes` and falls back on nothing', 'leave `assumes` out'];
  }
  const silent = topic.facts[assumes]?.silent;
  if (silent) {
    if (!silent.quiet && names.every((each) => each === assumes)) return undefined;
    return [
      `what is taken where ${names.join(', ')} is not told is not what is said of ${assumes}`,
      'name the fact whose `silent` says it',
    ];
  }
  if (!topic.assumptions.some(({ when }) => when === assumes)) {
    return [
      `no assumption is said of “${assumes}”`,
      'name an assumption that is said where it stands in',
    ];
  }
  const holds = facts.some((base) => {
    const value = reckoned(untold(topic, base, names)).scope.value(assumes);
    return value.kind === 'truth' && value.yes;
  });
  if (holds) return undefined;
  return [
    `“${assumes}” never holds where ${names.join(', ')} is not told`,
    'name an assumption that is said where it stands in',
  ];
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
  const range = `${shown(least, factor, declared.unit)} to ${shown(most, factor, declared.unit)}`;
  return [
    `what stands in for ${fact} is never within ${range}, which that may be`,
    'take what the fact may be',
  ];
}
