import { reckoned, today } from '../../answer/answer';
import type { FactsGiven } from '../../check/given';
import { InputError } from '../../check/problem';
import type { Level } from '../../define/shapes';
import { benchOf, isSpent, judge } from '../../remedy/trial';
import type { Matter } from '../matter';

/** How a case stands with other facts; undefined for facts that are none. */
export type LevelAt = (facts: FactsGiven) => Level | undefined;

/** Judges the case of a matter again and again, with facts added to its own. */
export function levelsOf({ topic, asked }: Matter): LevelAt {
  const asOf = asked.asOf ?? today();
  const own = reckoned(topic, asked, asOf).inputs;
  const bench = benchOf(topic, asOf, own);
  return (facts) => {
    if (isSpent(bench)) return undefined;
    try {
      const { inputs } = reckoned(topic, { facts: { ...asked.facts, ...facts }, asOf }, asOf);
      return judge(bench, inputs).level;
    } catch (problem) {
      if (problem instanceof InputError) return undefined;
      throw problem;
    }
  };
}
