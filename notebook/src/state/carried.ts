import { type FactGiven, type FactsGiven, isRows, type Topic } from '@tarebook/rules/engine';

/** What a case tells that goes along to the yard. */
export type Carried = {
  /** What it is set against there. */
  readonly way: 'trailers' | 'vehicles';
  readonly facts: FactsGiven;
  /** What each of them is called. */
  readonly labels: Readonly<Record<string, string>>;
};

const isKnown = (given: FactGiven | undefined): boolean =>
  given !== undefined && (isRows(given) ? given.length > 0 : given !== 'unknown');

/** Where things lie in one trailer says nothing of another. */
const unplaced = (given: FactGiven): FactGiven =>
  isRows(given) ? given.map(({ ahead: _, ...row }) => row) : given;

/**
 * What is known of a vehicle, or else of a trailer, with what rides along and is packed; undefined
 * where a case tells of neither. Of a pair the trailer stays behind: another is looked for.
 */
export function carriedOf(topic: Topic, facts: FactsGiven): Carried | undefined {
  const known = Object.entries(facts).filter(([, given]) => isKnown(given));
  const isOf = (side: string): boolean =>
    known.some(([id, given]) => id.startsWith(`${side}.`) && !isRows(given));
  const way = isOf('vehicle') ? 'trailers' : isOf('trailer') ? 'vehicles' : undefined;
  if (way === undefined) return undefined;
  const goes = ([id]: readonly [string, FactGiven]): boolean =>
    way === 'trailers'
      ? !id.startsWith('trailer.') || id === 'trailer.cargo'
      : !/^(?:vehicle|hitch)\./.test(id);
  const along = known.filter(goes);
  const label = (id: string): string => topic.facts[id]?.label ?? id;
  return {
    way,
    facts: Object.fromEntries(
      along.map(([id, given]) => [
        id,
        way === 'trailers' && id === 'trailer.cargo' ? unplaced(given) : given,
      ]),
    ),
    labels: Object.fromEntries(along.map(([id]) => [id, label(id)])),
  };
}

let waiting: Carried | undefined;

/** Goes to the yard and takes it along. */
export function carryToYard(carried: Carried): void {
  waiting = carried;
  location.hash = '#/yard';
}

/** What was taken along, once. */
export function takeCarried(): Carried | undefined {
  const taken = waiting;
  waiting = undefined;
  return taken;
}
