import { type Asked, reckoned, today } from '../answer/answer';
import { refuseAsked, refuseOnlyJudging } from '../check/asked';
import type { FactsGiven } from '../check/given';
import { presentFacts } from '../check/renamed';
import type { Level, Topic } from '../define/shapes';
import type { Inputs } from '../value/values';
import { message } from '../words/message';
import { type Say, type Sayable, text } from '../words/value';
import { othersOf, upsetElsewhere } from './beside';
import { givenAfter } from './edits';
import { noHelpOf, type Vain, vainOf } from './no-help';
import { type Pair, smallestPair } from './pairs';
import type { NoHelp, Remedies, Remedy } from './shapes';
import { turns } from './solve';
import { type Bench, benchOf, isSpent, type Judged, judge, pay } from './trial';
import type { Way } from './way';
import { allWays, applies, barred, reminder } from './ways';
import { changeOf, instruction } from './words';

type Case = {
  readonly bench: Bench;
  readonly asked: Asked;
  readonly asOf: string;
  readonly inputs: Inputs;
  readonly before: Judged;
};

/** Rows left out by some ways, by list. */
function leftOut(ways: readonly Way[]): ReadonlyMap<string, ReadonlySet<number>> {
  const left = new Map<string, Set<number>>();
  for (const { change, row } of ways) {
    if (change.kind !== 'leave' || row === undefined) continue;
    left.set(change.fact, (left.get(change.fact) ?? new Set()).add(row));
  }
  return left;
}

function changedFacts(
  { bench, asked, inputs }: Case,
  ways: readonly Way[],
  after: Inputs,
): FactsGiven {
  return givenAfter(bench.topic, asked.facts, inputs, after, leftOut(ways));
}

/**
 * The level of changed facts, read and judged from the beginning as any others; it must be the one
 * that was found.
 */
function confirmed({ bench, asOf }: Case, facts: FactsGiven, level: Level): boolean {
  const { inputs } = reckoned(bench.topic, { facts, asOf }, asOf);
  return judge(bench, inputs).level === level;
}

type Worded = Pick<Remedy, 'says' | 'message' | 'outcome' | 'words'>;

/** What is said of changes that come to a level. */
function worded(of: Case, ways: readonly (readonly [Way, number])[], level: Level): Worded {
  const { topic, say } = of.bench;
  const { id, words } = topic.outcomes[level];
  const reminders = ways.flatMap(([{ change }]) => reminder(of.inputs, change) ?? []);
  const told = message('remedy', {
    changes: ways.map(([way, x]) => instruction(way, x)),
    outcome: text(words),
    reminders: reminders.filter(
      (each, i) => reminders.findIndex((r) => r.text === each.text) === i,
    ),
  });
  return { says: say(told), message: told, outcome: id, words: say(text(words)) };
}

function remedyOf(of: Case, way: Way, x: number, level: Level): readonly Remedy[] {
  const facts = changedFacts(of, [way], way.edit(of.inputs, x));
  if (!confirmed(of, facts, level)) return [];
  return [
    {
      ...changeOf(way, x),
      ...worded(of, [[way, x]], level),
      asks: way.change.asks,
      size: way.size(x),
      source: way.change.source,
      facts,
    },
  ];
}

function remedyOfPair(of: Case, pair: Pair): readonly Remedy[] {
  const { first, second, x, y, level } = pair;
  const facts = changedFacts(of, [first, second], pair.edit(of.inputs));
  if (!confirmed(of, facts, level)) return [];
  const both = [
    [first, x],
    [second, y],
  ] as const;
  return [
    {
      ...changeOf(first, x),
      ...worded(of, both, level),
      asks: Math.max(first.change.asks, second.change.asks),
      size: first.size(x) + second.size(y),
      source: first.change.source,
      with: changeOf(second, y),
      facts,
    },
  ];
}

/** Changes that upset nothing elsewhere, and those that do, told with what it is. */
function apart(
  found: readonly Remedy[],
  upsets: (each: Remedy) => readonly Sayable[] | undefined,
  say: Say,
): readonly [readonly Remedy[], readonly NoHelp[]] {
  const harmless: Remedy[] = [];
  const harmful: NoHelp[] = [];
  for (const each of found) {
    const broken = upsets(each);
    if (!broken) continue;
    if (broken.length === 0) harmless.push(each);
    else {
      const { fact, row, rowName, column, shown, from, to } = each;
      const told = message('worse-elsewhere', { remedy: each.message, of: broken });
      harmful.push({
        fact,
        ...(row !== undefined && { row }),
        ...(rowName !== undefined && { rowName }),
        ...(column !== undefined && { column }),
        ...(shown !== undefined && { shown }),
        from,
        to,
        says: say(told),
        message: told,
      });
    }
  }
  return [harmless, harmful];
}

/** A row left out whole asks no less than a part of it that is enough. */
function withoutWholeRows(all: readonly Remedy[]): readonly Remedy[] {
  return all.filter(
    (each) =>
      each.to !== 'none' ||
      !all.some(
        (other) =>
          other.to !== 'none' &&
          other.fact === each.fact &&
          other.row === each.row &&
          other.outcome === each.outcome &&
          other.asks <= each.asks,
      ),
  );
}

/** A part of a row that, left out whole, does not help either needs no line of its own. */
const isPartOfVain = ({ change, row }: Way, vain: readonly Vain[]): boolean =>
  change.kind === 'less' &&
  row !== undefined &&
  vain.some(
    ({ way }) => way.change.kind === 'leave' && way.change.fact === change.fact && way.row === row,
  );

/**
 * What would change an outcome that says stop or care. Each single change is solved for the least
 * that turns it, rounded outward to a whole step, and confirmed by the rules; where none turns it,
 * the smallest pair. Where it cannot be said yet, nothing: what is missing comes first.
 *
 * @param beside other topics that the same facts may answer: a change that makes any of their
 *   findings or limits worse is told among what does not help
 * @param rig all that was told of the same rig, where other topics know more of it
 * @throws InputError for facts that are none.
 */
export function remedies(
  topic: Topic,
  told: Asked,
  beside: readonly Topic[] = [],
  rig?: FactsGiven,
): Remedies {
  refuseAsked(topic, told);
  refuseOnlyJudging(topic);
  const asked = { ...told, facts: presentFacts(topic, told.facts).facts };
  const asOf = asked.asOf ?? today();
  const { inputs } = reckoned(topic, asked, asOf);
  const bench = benchOf(topic, asOf, inputs, asked);
  const before = judge(bench, inputs);
  const outcome = topic.outcomes[before.level].id;
  if (before.level !== 'care' && before.level !== 'stop') {
    return { outcome, remedies: [], noHelp: [] };
  }
  const of: Case = { bench, asked, asOf, inputs, before };
  const ways = allWays({ bench, inputs, judged: before, given: asked.facts });
  const open = ways.filter(({ change }) => barred(inputs, change) === undefined);
  const vain: Vain[] = [];
  const single = ways
    .filter(({ change }) => applies(inputs, change))
    .flatMap((way) => {
      if (isSpent(bench)) return [];
      const turned = open.includes(way) ? turns(bench, inputs, before, way) : [];
      const found = turned.flatMap(({ x, level }) => remedyOf(of, way, x, level));
      vain.push(...vainOf(way, found.length === 0 ? [] : turned.map(({ x }) => x)));
      return found;
    });
  const others = othersOf(topic, beside, { ...rig, ...asked.facts }, asOf);
  const upsets = (each: Remedy) => {
    pay(bench, 3 * others.length);
    return upsetElsewhere(others, { ...rig, ...each.facts }, asOf);
  };
  // What could not be held against the other topics any more is not offered.
  const [harmless, harmful] = apart(
    single,
    (each) => (isSpent(bench) ? undefined : upsets(each)),
    bench.say,
  );
  const ranked = withoutWholeRows(harmless).toSorted((a, b) => a.asks - b.asks || a.size - b.size);
  const telling = vain.filter(({ way }) => !isPartOfVain(way, vain));
  const noHelp = noHelpOf(bench, inputs, before, telling);
  const pair = ranked.length > 0 ? undefined : smallestPair({ bench, inputs, before, ways: open });
  const paired = pair ? remedyOfPair(of, pair) : ranked;
  const sound = paired.filter(
    ({ facts }) => upsetElsewhere(others, { ...rig, ...facts }, asOf).length === 0,
  );
  return {
    outcome,
    remedies: sound,
    noHelp: [...noHelp, ...harmful],
    ...(isSpent(bench) && { cutShort: true as const }),
  };
}
