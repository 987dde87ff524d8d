import {
  type Answer,
  type FactsGiven,
  type Level,
  leftOf,
  levels,
  overOf,
  type Topic,
  withHouse,
} from '@tarebook/rules/engine';
import { showMargin, type UnitSystem } from '@tarebook/rules/quantity';
import {
  type Catalogue,
  factsAgainst,
  narrowed,
  needSaid,
  readCatalogue,
  sleepsSaid,
  type Which,
  type WhichRow,
  which,
  whichSaid,
} from '@tarebook/sweep';
import { barOf } from '../state/bar';
import { allowedHouse } from '../state/house-numbers';
import { openTopic } from '../state/topics';
import type { YardAsked, YardFound, YardRow, YardWhy } from './asked';
import { inventedFiles } from './invented';

/** Read once for as long as the same files are asked about. */
function catalogues() {
  let last: { readonly key: string; readonly read: Catalogue } | undefined;
  return (files: YardAsked['files']): Catalogue => {
    const key = files ? JSON.stringify(files) : '';
    if (last?.key !== key) last = { key, read: readCatalogue({ ...inventedFiles, ...files }) };
    return last.read;
  };
}
const catalogueOf = catalogues();

export async function yardTopic(house: YardAsked['house']): Promise<Topic> {
  const topic = await openTopic('tow-fit');
  if (!topic) throw new Error('There is no rule set for tow fit.');
  return house ? withHouse(topic, allowedHouse(topic, house).house) : topic;
}

type Limit = Answer['limits'][number];

function leftSaid(limit: Limit, system: UnitSystem): string {
  const { lo, hi, unit } = limit.headroom;
  if (!Number.isFinite(lo) || !Number.isFinite(hi)) return '';
  const over = hi < 0;
  return `${showMargin(over ? overOf(limit) : leftOf(limit), unit, system)} ${over ? 'over' : 'left'}`;
}

/**
 * The limit that is drawn: the one that binds; where it does not fit the one gone over most, and
 * none where something else stops it. What is left beside a “cannot say” would only reassure.
 */
function limitShown(answer: Answer, level: Level): Limit | undefined {
  if (level === 'unknown') return undefined;
  if (level !== 'stop') return answer.limits.find(({ id }) => id === answer.binding);
  return answer.limits
    .filter(({ state }) => state === 'stop')
    .toSorted((a, b) => b.roomUsed.lo - a.roomUsed.lo)[0];
}

const levelOf = (topic: Topic, outcome: string): Level =>
  levels.find((each) => topic.outcomes[each].id === outcome) ?? 'unknown';

/** What decides an answer, and how much is left of it: `Payload: 120 lb left`; '' where no limit does. */
export function decidesSaid(topic: Topic, answer: Answer, system: UnitSystem): string {
  const limit = limitShown(answer, levelOf(topic, answer.outcome));
  const left = limit ? leftSaid(limit, system) : '';
  return limit && left !== '' ? `${limit.label}: ${left}` : '';
}

const mostAsks = 4;

function whyOf({ name, answer, needs }: WhichRow): YardWhy {
  const asks = answer.missing
    .filter(({ fact }) => !Object.hasOwn(needs, fact))
    .slice(0, mostAsks)
    .map(({ ask }) => ask);
  return { name, asks, says: answer.sentence };
}

function rowOf(topic: Topic, row: WhichRow, facts: FactsGiven, system: UnitSystem): YardRow {
  const { answer, needs, entry, outcome, words } = row;
  const level = levelOf(topic, outcome);
  const limit = limitShown(answer, level);
  return {
    name: row.name,
    level,
    words,
    ...(limit && {
      limit: {
        label: limit.label,
        bar: barOf(limit, undefined),
        left: leftSaid(limit, system),
      },
    }),
    needs: Object.entries(needs).map(([fact, need]) => needSaid(topic, fact, need, system)),
    cells: entry.cells,
    facts: factsAgainst(facts, entry),
  };
}

let last: { readonly key: string; readonly found: Which } | undefined;
/** What was told last, of which the whys are to be told yet. */
let told: Which | undefined;

/** One vehicle against the trailers, or one trailer against the vehicles; narrowing judges nothing anew. */
export async function yardOf(asked: YardAsked): Promise<YardFound> {
  const { wishes, files, people, ...judged } = asked;
  const { chosen, system } = asked;
  const begun = performance.now();
  const topic = await yardTopic(asked.house);
  const key = JSON.stringify([judged, files]);
  const catalogue = catalogueOf(files);
  const of = chosen && catalogue[chosen.side].find(({ name }) => name === chosen.name);
  const facts = { ...of?.facts, ...asked.facts };
  if (last?.key !== key) {
    const found = which(catalogue, { facts, topic, units: system });
    last = { key, found };
  }
  const found = narrowed(last.found, wishes, topic);
  told = found;
  const rows = found.rows.map((row) => rowOf(topic, row, facts, system));
  return {
    against: found.against,
    ...whichSaid(topic, found, system),
    sleeps: sleepsSaid(topic, found, people),
    rows,
    cautions: found.rows[0]?.answer.cautions ?? [],
    took: performance.now() - begun,
  };
}

/** Why each of what was told last comes out so, in the order in which they are shown. */
export function* yardWhys(): Generator<YardWhy> {
  for (const row of told?.rows ?? []) yield whyOf(row);
}
