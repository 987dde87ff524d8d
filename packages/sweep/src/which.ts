import {
  type Answer,
  type Asked,
  answerTraced,
  type Ends,
  type FactGiven,
  type FactsGiven,
  InputError,
  levels,
  refuseUnlessParts,
  type Topic,
} from '@tarebook/rules/engine';
import {
  convert,
  readQuantity,
  type UnitSystem,
  unitOf,
  wasMisread,
} from '@tarebook/rules/quantity';
import { towFit } from '@tarebook/rules/tow-fit';
import type { Catalogue, Entry } from './catalogue';
import { type Need, needsOf } from './needs';
import { isAsWished, isSold, type Wish } from './wishes';

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
  /** What an unknown rating or weight must be so that nothing is exceeded, by fact; none for what is stopped. */
  readonly needs: Readonly<Record<string, Need>>;
  readonly answer: Answer;
};

export type Which = {
  readonly against: Against;
  readonly count: Readonly<Record<string, number>>;
  /** What is asked, best first: as the outcomes stand, what is sold last, then by what is left. */
  readonly rows: readonly WhichRow[];
  /** The one that fails by least, and by which limit; null where none fails. */
  readonly next: { readonly row: WhichRow; readonly limit: Answer['limits'][number] } | null;
};

export type WhichAsked = {
  readonly facts: FactsGiven;
  readonly asOf?: string;
  readonly topic?: Topic;
  /** In which units answers are put; absent: US. */
  readonly units?: UnitSystem | undefined;
  /** What an entry of the catalogue must be to be asked about. */
  readonly where?: readonly Wish[];
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

/** One fact of the vehicle and it is its rating: all that is known of it. */
const isRatingAlone = (facts: FactsGiven): boolean => {
  const known = Object.keys(facts).filter(
    (id) => id.startsWith('vehicle.') && facts[id] !== 'unknown',
  );
  return known.length === 1 && known[0] === 'vehicle.maxTrailerWeight';
};

/** An exact weight in pounds; undefined for a range and for what nobody knows. */
const pounds = (given: FactGiven | undefined): number | undefined => {
  const read = typeof given === 'string' ? readQuantity(given) : undefined;
  if (!read || wasMisread(read) || read.from !== read.to || !read.unit) return undefined;
  return convert(read.from, read.unit, unitOf('lb'));
};

/** A trailer at its own maximum, as one is set against a rating of which nothing else is told. */
function atItsMaximum(facts: FactsGiven): FactsGiven {
  const [gross, dry] = [pounds(facts['trailer.gvwr']), pounds(facts['trailer.dryWeight'])];
  if (gross === undefined || dry === undefined || gross <= dry) return facts;
  const packed = { label: 'Up to its own maximum', weight: `${gross - dry} lb` };
  return { ...facts, 'trailer.propane': '0 lb', 'trailer.cargo': [packed] };
}

/** What is judged where these facts are set against an entry: the facts of one case. */
export function factsAgainst(facts: FactsGiven, entry: Entry): FactsGiven {
  const both = { ...entry.facts, ...facts };
  return isRatingAlone(facts) ? atItsMaximum(both) : both;
}

function rowOf(topic: Topic, entry: Entry, asked: Asked): WhichRow {
  const answer = answerTraced(topic, asked);
  const limit = answer.limits.find(({ id }) => id === answer.binding);
  return {
    name: entry.name,
    entry,
    outcome: answer.outcome,
    words: answer.words,
    binding: answer.binding,
    left: limit?.headroom ?? null,
    // What is stopped whatever the unknown comes to is helped by no figure.
    needs: answer.outcome === topic.outcomes.stop.id ? {} : needsOf(topic, asked, answer),
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

/**
 * The one that comes nearest to fitting of those that certainly do not, by a limit and nothing else;
 * a sold one only where there is no other.
 */
function nextOf(rows: readonly WhichRow[], topic: Topic): Which['next'] {
  const failing = rows.flatMap((row) => {
    if (row.outcome !== topic.outcomes.stop.id) return [];
    const over = overBy(row);
    return over ? [{ row, ...over }] : [];
  });
  const [nearest] = failing.toSorted(
    (a, b) => soldLast(a.row) - soldLast(b.row) || a.share - b.share,
  );
  return nearest ? { row: nearest.row, limit: nearest.limit } : null;
}

const soldLast = ({ entry }: WhichRow): number => (isSold(entry) ? 1 : 0);

const leftOf = ({ left }: WhichRow): number => (left && Number.isFinite(left.lo) ? left.lo : 0);

function counted(against: Against, rows: readonly WhichRow[], topic: Topic): Which {
  const count: Record<string, number> = {};
  for (const level of levels) {
    const { id } = topic.outcomes[level];
    count[id] = rows.filter(({ outcome }) => outcome === id).length;
  }
  return { against, count, rows, next: nextOf(rows, topic) };
}

/** Of what was found only what is as wished, with its own count; nothing is judged anew. */
export const narrowed = (
  { against, rows }: Which,
  where: readonly Wish[],
  topic: Topic = towFit,
): Which =>
  counted(
    against,
    rows.filter(({ entry }) => isAsWished(entry, where)),
    topic,
  );

/** What may stand beside the facts: all that a case is asked with, and the wishes. */
const askedBeside = ['asOf', 'topic', 'units', 'where', 'readFrom', 'medium', 'language'];

/**
 * Which of a catalogue's trailers this vehicle may tow, or which of its vehicles may tow this
 * trailer: each judged whole, by the same rules as one case. A rating of which nothing else is known
 * is set against each trailer at its own maximum.
 *
 * @throws InputError where the facts tell of neither vehicle nor trailer, or of both, and for what is
 *   no catalogue or has a key that nothing reads.
 */
export function which(catalogue: Catalogue, asked: WhichAsked): Which {
  const lists = { vehicles: 'list', trailers: 'list' } as const;
  refuseUnlessParts('catalogue', catalogue, lists, 'a catalogue, as `readCatalogue` gives it');
  const wanted = '{ facts, asOf } with the facts by id';
  refuseUnlessParts('asked', asked, { facts: 'parts' }, wanted, askedBeside);
  const { facts, where = [], topic = towFit, ...voice } = asked;
  const against = sidesOf(facts);
  if (against === 'both' || against === 'neither') {
    throw new InputError(
      [
        {
          code: 'wrong-argument',
          fact: 'asked.facts',
          found: against === 'both' ? 'of a vehicle and of a trailer' : 'of neither',
          wanted: 'facts of a vehicle or of a trailer',
        },
      ],
      () => 'Which ones is asked of a vehicle or of a trailer, not of both and not of neither.',
    );
  }
  const rows = catalogue[against]
    .filter((entry) => isAsWished(entry, where))
    .map((entry) => rowOf(topic, entry, { ...voice, facts: factsAgainst(facts, entry) }))
    .toSorted(
      (a, b) =>
        rankIn(topic, a.outcome) - rankIn(topic, b.outcome) ||
        soldLast(a) - soldLast(b) ||
        leftOf(b) - leftOf(a),
    );
  return counted(against, rows, topic);
}
