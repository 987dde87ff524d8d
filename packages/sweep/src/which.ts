import { towFit } from '@tarebook/rules';
import {
  type Answer,
  answerNow,
  type Ends,
  type FactGiven,
  type FactsGiven,
  levels,
  type Topic,
} from '@tarebook/rules/engine';
import type { Catalogue, Entry } from './catalogue';
import { type Need, needsOf } from './needs';

/** What a case is set against: the trailers of a catalogue, or its vehicles. */
export type Against = 'trailers' | 'vehicles';

export type WhichRow = {
  readonly name: string;
  readonly entry: Entry;
  readonly outcome: string;
  readonly words: string;
  readonly binding: string | null;
  /** What is left on the binding limit; null where none binds. */
  readonly left: Ends | null;
  /** What an unknown rating or weight must be so that nothing is exceeded, by fact. */
  readonly needs: Readonly<Record<string, Need>>;
  readonly answer: Answer;
};

export type Which = {
  readonly against: Against;
  readonly count: Readonly<Record<string, number>>;
  /** What is asked, best first: as the outcomes stand, then by what is left. */
  readonly rows: readonly WhichRow[];
  /** The one that fails by least, and by which limit; null where none fails. */
  readonly next: { readonly row: WhichRow; readonly limit: Answer['limits'][number] } | null;
};

export type WhichAsked = {
  readonly facts: FactsGiven;
  readonly asOf?: string;
  readonly topic?: Topic;
  /** Cells that an entry must have, by column. */
  readonly where?: Readonly<Record<string, string>>;
};

const isAbout = (facts: FactsGiven, prefix: string): boolean =>
  Object.keys(facts).some((id) => id.startsWith(prefix));

/** Facts that say which trailer it is; what is loaded into one says nothing of it. */
const ofTrailer = ['trailer.dryWeight', 'trailer.gvwr', 'trailer.cargoCapacity', 'trailer.axles'];

/** What a case is set against by what it tells of; `both` and `neither` can be set against nothing. */
export function sidesOf(facts: FactsGiven): Against | 'both' | 'neither' {
  const hasTrailer = ofTrailer.some((id) => Object.hasOwn(facts, id));
  const hasVehicle = isAbout(facts, 'vehicle.');
  if (hasVehicle && hasTrailer) return 'both';
  if (!hasVehicle && !hasTrailer) return 'neither';
  return hasVehicle ? 'trailers' : 'vehicles';
}

const hasCells = (entry: Entry, where: Readonly<Record<string, string>>): boolean =>
  Object.entries(where).every(
    ([column, value]) => (entry.cells[column] ?? '').toLowerCase() === value.toLowerCase(),
  );

/** One fact of the vehicle and it is its rating: all that is told of it. */
const isRatingAlone = (facts: FactsGiven): boolean => {
  const told = Object.keys(facts).filter((id) => id.startsWith('vehicle.'));
  return told.length === 1 && told[0] === 'vehicle.maxTrailerWeight';
};

const pounds = (given: FactGiven | undefined): number | undefined => {
  const found = typeof given === 'string' ? /^([\d,.]+) lb$/.exec(given)?.[1] : undefined;
  return found === undefined ? undefined : Number(found.replaceAll(',', ''));
};

/** A trailer at its own maximum, as one is set against a rating of which nothing else is told. */
function atItsMaximum(facts: FactsGiven): FactsGiven {
  const [gross, dry] = [pounds(facts['trailer.gvwr']), pounds(facts['trailer.dryWeight'])];
  if (gross === undefined || dry === undefined || gross <= dry) return facts;
  const packed = { label: 'Up to its own maximum', weight: `${gross - dry} lb` };
  return { ...facts, 'trailer.propane': '0 lb', 'trailer.cargo': [packed] };
}

function rowOf(topic: Topic, entry: Entry, facts: FactsGiven, asOf: string | undefined): WhichRow {
  const asked = { facts, ...(asOf !== undefined && { asOf }) };
  const answer = answerNow(topic, asked);
  const limit = answer.limits.find(({ id }) => id === answer.binding);
  return {
    name: entry.name,
    entry,
    outcome: answer.outcome,
    words: answer.words,
    binding: answer.binding,
    left: limit?.headroom ?? null,
    needs: needsOf(topic, asked, answer),
    answer,
  };
}

/** How bad an outcome is, from 0. */
const rankIn = (topic: Topic, outcome: string): number =>
  levels.findIndex((level) => topic.outcomes[level].id === outcome);

/** The share of a limit by which it is gone over most. */
function overBy({
  answer,
}: WhichRow): { share: number; limit: Answer['limits'][number] } | undefined {
  const over = answer.limits.flatMap((limit) =>
    limit.state === 'stop' ? [{ share: limit.roomUsed.lo, limit }] : [],
  );
  return over.toSorted((a, b) => b.share - a.share)[0];
}

/** The one that comes nearest to fitting of those that certainly do not, by a limit and nothing else. */
function nextOf(rows: readonly WhichRow[], topic: Topic): Which['next'] {
  const failing = rows.flatMap((row) => {
    if (row.outcome !== topic.outcomes.stop.id) return [];
    const over = overBy(row);
    return over ? [{ row, ...over }] : [];
  });
  const [nearest] = failing.toSorted((a, b) => a.share - b.share);
  return nearest ? { row: nearest.row, limit: nearest.limit } : null;
}

const leftOf = ({ left }: WhichRow): number => (left && Number.isFinite(left.lo) ? left.lo : 0);

/**
 * Which of a catalogue's trailers this vehicle may tow, or which of its vehicles may tow this
 * trailer: each judged whole, by the same rules as one case. A rating of which nothing else is told
 * is set against each trailer at its own maximum.
 *
 * @throws Error where the facts tell of neither vehicle nor trailer, or of both.
 */
export function which(catalogue: Catalogue, asked: WhichAsked): Which {
  const { facts, asOf, where = {}, topic = towFit } = asked;
  const against = sidesOf(facts);
  if (against === 'both' || against === 'neither') {
    throw new Error(
      'Which ones is asked of a vehicle or of a trailer, not of both and not of neither.',
    );
  }
  const rated = isRatingAlone(facts);
  const rows = catalogue[against]
    .filter((entry) => hasCells(entry, where))
    .map((entry) => {
      const both = { ...entry.facts, ...facts };
      return rowOf(topic, entry, rated ? atItsMaximum(both) : both, asOf);
    })
    .toSorted(
      (a, b) => rankIn(topic, a.outcome) - rankIn(topic, b.outcome) || leftOf(b) - leftOf(a),
    );
  const count: Record<string, number> = {};
  for (const level of levels) {
    const { id } = topic.outcomes[level];
    count[id] = rows.filter(({ outcome }) => outcome === id).length;
  }
  return { against, count, rows, next: nextOf(rows, topic) };
}
