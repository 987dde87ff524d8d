import { rounded } from '../../quantity';
import type { Missing } from '../answer/shapes';
import type { State } from '../define/shapes';
import type { Run } from '../formula/run';
import type { Say } from '../words/value';
import { text } from '../words/value';
import { type OpenDecision, openDecisions, type Setting } from './open';
import { largestKnown, type Plausible, plausible } from './plausible';
import { type Deciding, missingSays } from './says';
import { partnersOf } from './together';
import { edgesOf, shareOf, type Tip, type Tried, tryAll } from './trial';

type Weighed = {
  readonly fact: string;
  readonly deciding: readonly Deciding[];
  /** The share of its plausible values that settle the verdict. */
  readonly settles: number;
  /** How many open decisions it closes, each counted by the share of its values that close it. */
  readonly closes: number;
};

/** Under this share of its values, a fact is said to decide only together with others. */
const aloneFrom = 0.5;

/** The options of a choice that would stop a condition, and the others. */
function optionsTried(values: Plausible, tried: Tried, index: number) {
  const options = values.kind === 'options' ? values.options : [];
  const stops = (_: string, place: number) => tried.found[place]?.[index] === 'over';
  return {
    stopping: options.filter(stops),
    others: options.filter((option, place) => !stops(option, place)),
  };
}

function weigh(
  setting: Setting,
  decisions: readonly OpenDecision[],
  fact: string,
  values: ReadonlyMap<string, Plausible>,
): Weighed | undefined {
  const mine = values.get(fact);
  if (!mine) return undefined;
  const moved = decisions.filter(({ facts }) => facts.has(fact));
  const rules = moved.map(({ rule }) => rule);
  const tried = tryAll(setting, rules, fact, mine);
  const shares = rules.map((_, i) => shareOf(tried, (found) => found[i] !== 'undecided'));
  const deciding = moved.map((decision, i) => ({
    of: decision.rule.event.params.of,
    edges: edgesOf(setting, decision.rule, fact, mine, tried, i),
    ...optionsTried(mine, tried, i),
    together: (shares[i] ?? 0) < aloneFrom ? partnersOf(setting, decision, fact, values) : [],
  }));
  const isAll = moved.length === decisions.length;
  const settles = shareOf(
    tried,
    (found) => found.includes('over') || (isAll && found.every((each) => each === 'within')),
  );
  return { fact, deciding, settles, closes: shares.reduce((a, b) => a + b, 0) };
}

/** Of several, the one that the fact meets first. */
function firstTip(deciding: readonly Deciding[]): Tip | undefined {
  return deciding.reduce<Tip | undefined>((best, { edges: { tip } }) => {
    if (!best || !tip || best.side !== tip.side) return best ?? tip;
    const sooner = tip.side === 'above' ? tip.lo < best.lo : tip.hi > best.hi;
    return sooner ? tip : best;
  }, undefined);
}

function told(
  { compiled: { topic } }: Setting,
  { fact, deciding, settles }: Weighed,
  say: Say,
): Missing[] {
  const declared = topic.facts[fact];
  if (!declared) return [];
  const message = missingSays(topic, fact, deciding);
  const { label, ask, where } = declared;
  const tip = firstTip(deciding);
  const stopping = [...new Set(deciding.flatMap((each) => each.stopping))];
  return [
    {
      fact,
      label: say(text(label)),
      ask: say(text(ask)),
      where: say(text(where)),
      decides: deciding.map(({ of }) => of),
      tips: tip
        ? { lo: tip.lo, hi: tip.hi, unit: tip.unit }
        : stopping.length > 0
          ? stopping.join(', ')
          : null,
      side: tip?.side ?? null,
      together: [...new Set(deciding.flatMap((each) => each.together))],
      settles: rounded(settles),
      says: say(message),
      message,
    },
  ];
}

/**
 * What to ask next when it cannot be said, the fact that decides most first.
 *
 * How much a fact decides is the share of its plausible values that settle the verdict (for sure
 * over somewhere, or every open decision within), plus the number of open decisions it closes, each
 * counted by the share of its values that close it. Of equals the one declared first comes first.
 */
export function missingFacts(
  setting: Setting,
  run: Run,
  states: ReadonlyMap<string, State>,
  say: Say,
): readonly Missing[] {
  const decisions = openDecisions(setting, run, states);
  const largest = largestKnown(setting, run, decisions);
  const keysOf = new Map<string, Set<string>>();
  for (const { facts } of decisions) {
    for (const [fact, keys] of facts) {
      keysOf.set(fact, new Set([...(keysOf.get(fact) ?? []), ...keys]));
    }
  }
  const values = new Map<string, Plausible>();
  for (const fact of Object.keys(setting.compiled.topic.facts)) {
    const keys = keysOf.get(fact);
    const found = keys && plausible(setting, fact, [...keys], largest);
    if (found) values.set(fact, found);
  }
  const score = ({ settles, closes }: Weighed) => rounded(settles + closes);
  return [...values.keys()]
    .flatMap((fact) => weigh(setting, decisions, fact, values) ?? [])
    .toSorted((a, b) => score(b) - score(a))
    .flatMap((weighed) => told(setting, weighed, say));
}
