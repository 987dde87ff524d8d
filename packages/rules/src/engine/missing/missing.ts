import { rounded } from '../../quantity';
import type { Missing } from '../answer/shapes';
import { whenRead } from '../answer/when-read';
import type { State, Topic } from '../define/shapes';
import type { Run } from '../formula/run';
import { keyName } from '../value/values';
import type { Say } from '../words/value';
import { text } from '../words/value';
import { isClosedBy, isStop, type OpenDecision, openDecisions, type Setting } from './open';
import { largestKnown, type Plausible, plausible } from './plausible';
import { type Deciding, missingSays } from './says';
import { partnersOf } from './together';
import { coarsely, edgesOf, finely, shareOf, type Tip, type Tried, tryAll } from './trial';
import { turnsOf } from './turn';
import { columnIn, untoldIn } from './untold';

type Weighed = {
  readonly fact: string;
  /** The inputs of it that were varied. */
  readonly keys: readonly string[];
  /** The open decisions that it moves. */
  readonly of: readonly string[];
  /**
   * What it does to each of them. To find where one tips, and with what else, takes many times as long
   * as to find which fact comes first, so it is found for those that somebody reads.
   */
  readonly deciding: () => readonly Deciding[];
  /** The share of its plausible values that settle the verdict. */
  readonly settles: number;
  /** How many open decisions it closes, each counted by the share of its values that close it. */
  readonly closes: number;
};

/** How many decisions are open in all, and at how many places a number is tried. */
type Trials = { readonly openInAll: number; readonly places: number };

/** Under this share of its values, a fact is said to decide only together with others. */
const aloneFrom = 0.5;

function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

/** What decides a proviso makes it go, and stops nothing. */
const noTip = { edges: {}, stopping: [], others: [] } as const;

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
  { openInAll, places }: Trials,
): Weighed | undefined {
  const mine = values.get(fact);
  if (!mine) return undefined;
  const moved = decisions.filter(({ facts }) => facts.has(fact));
  const rules = moved.map(({ rule }) => rule);
  const tried = tryAll(setting, rules, fact, mine, places);
  const shares = moved.map((decision, i) =>
    shareOf(tried, (found) => isClosedBy(decision, found[i])),
  );
  const deciding = once(() =>
    moved.map((decision, i) => ({
      of: decision.rule.event.params.of,
      ...(isStop(decision)
        ? {
            edges: edgesOf(setting, decision.rule, fact, mine, tried, i),
            ...optionsTried(mine, tried, i),
          }
        : noTip),
      together: (shares[i] ?? 0) < aloneFrom ? partnersOf(setting, decision, fact, values) : [],
    })),
  );
  const isAll = moved.length === openInAll;
  const settles = shareOf(
    tried,
    (found) =>
      moved.some((decision, i) => isStop(decision) && found[i] === 'over') ||
      (isAll && found.every((each) => each === 'within')),
  );
  const keys = [...new Set(moved.flatMap(({ facts }) => facts.get(fact) ?? []))];
  const of = rules.map(({ event }) => event.params.of);
  return { fact, keys, of, deciding, settles, closes: shares.reduce((a, b) => a + b, 0) };
}

/** Of several, the one that the fact meets first. */
function firstTip(deciding: readonly Deciding[]): Tip | undefined {
  return deciding.reduce<Tip | undefined>((best, { edges: { tip } }) => {
    if (!best || !tip || best.side !== tip.side) return best ?? tip;
    const sooner = tip.side === 'above' ? tip.lo < best.lo : tip.hi > best.hi;
    return sooner ? tip : best;
  }, undefined);
}

/** What is asked: a fact, or one column of a list where only that is missing. */
function question(topic: Topic, fact: string, keys: readonly string[]) {
  const declared = topic.facts[fact];
  const names = keys.map((key) => columnIn(topic, keyName(key))?.[1]);
  const [column, more] = new Set(names);
  const only = declared?.kind === 'rows' && more === undefined && column !== undefined;
  const cell = only ? declared.columns[column] : undefined;
  if (!declared || !cell?.ask) return declared;
  return { label: cell.label, ask: cell.ask, where: cell.where ?? declared.where };
}

function told(
  { compiled: { topic } }: Setting,
  { fact, keys, of, deciding, settles }: Weighed,
  say: Say,
): Missing[] {
  const asked = question(topic, fact, keys);
  if (!asked) return [];
  const { label, ask, where } = asked;
  const tip = once(() => firstTip(deciding()));
  const message = once(() => missingSays(topic, fact, deciding()));
  const stopping = () => [...new Set(deciding().flatMap((each) => each.stopping))].join(', ');
  return [
    whenRead<Missing>({
      fact: () => fact,
      label: () => say(text(label)),
      ask: () => say(text(ask)),
      where: () => say(text(where)),
      decides: () => of,
      tips: () => {
        const first = tip();
        return first ? { lo: first.lo, hi: first.hi, unit: first.unit } : stopping() || null;
      },
      side: () => tip()?.side ?? null,
      together: () => [...new Set(deciding().flatMap((each) => each.together))],
      settles: () => rounded(settles),
      says: () => say(message()),
      message,
    }),
  ];
}

const score = ({ settles, closes }: Weighed): number => rounded(settles + closes);

/** What decides, of the facts that some open decisions hang on, the one that decides most first. */
function weighAll(
  setting: Setting,
  run: Run,
  decisions: readonly OpenDecision[],
  trials: Trials = { openInAll: decisions.length, places: finely },
): Weighed[] {
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
  return [...values.keys()]
    .flatMap((fact) => weigh(setting, decisions, fact, values, trials) ?? [])
    .toSorted((a, b) => score(b) - score(a));
}

/** Whether telling it can close what is open, alone or with one other. */
const mayClose = ({ closes, deciding }: Weighed): boolean =>
  closes > 0 || deciding().some(({ together }) => together.length === 1);

/** So many questions of what nobody told are asked at once. */
const most = 4;

/**
 * What nobody told, and what is open for want of it: the place of a row or a tank, the manual’s limit
 * without brakes. Asked where nothing that was told, or said to be unknown, decides.
 */
function weighUntold(
  setting: Setting,
  run: Run,
  decisions: readonly OpenDecision[],
  asked: readonly Weighed[],
): readonly Weighed[] {
  const decided = new Set(asked.flatMap(({ of }) => of));
  const open = decisions
    .filter(({ rule }) => !decided.has(rule.event.params.of))
    .map((decision) => untoldIn(setting, decision));
  if (open.length === 0) return [];
  return weighAll(setting, run, open, { openInAll: decisions.length, places: coarsely })
    .filter((each) => mayClose(each) && !asked.some(({ fact }) => fact === each.fact))
    .slice(0, most);
}

/**
 * What to ask next when it cannot be said: what an open danger hangs on before anything that may only
 * be too heavy, then what a told rating waits for; what only a proviso hangs on last. Within these the
 * fact that decides most first, and of what nobody told at most four.
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
  const asked = weighAll(setting, run, decisions);
  const turn = turnsOf(setting, run, decisions, states);
  return [...asked, ...weighUntold(setting, run, decisions, asked)]
    .map((weighed) => ({ weighed, turn: turn(weighed.fact, weighed.of) }))
    .toSorted((a, b) => a.turn - b.turn || score(b.weighed) - score(a.weighed))
    .flatMap(({ weighed }) => told(setting, weighed, say));
}
