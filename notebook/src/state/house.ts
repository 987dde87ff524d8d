import type { HouseLayer, Topic } from '@tarebook/rules/engine';
import type { House } from './house-numbers';
import { everyRecord, hasFields, putRecord } from './shelf';

export type { House } from './house-numbers';

export const noHouse = (topic: string): House => ({ topic, name: '', parameters: {} });

/** Whether a stored record is a house's numbers, whole. */
export function isHouse(value: unknown): value is House {
  if (!hasFields(value, { topic: 'string', name: 'string', parameters: 'object' })) return false;
  const held: unknown = Object.getOwnPropertyDescriptor(value, 'parameters')?.value;
  return (
    typeof held === 'object' &&
    held !== null &&
    Object.values(held).every((each) =>
      hasFields(each, { value: 'number', unit: 'string', reason: 'string' }),
    )
  );
}

export const allHouses = (): Promise<readonly House[]> => everyRecord('house', isHouse);

export async function keptHouse(topic: string): Promise<House | undefined> {
  return (await allHouses()).find((house) => house.topic === topic);
}

/** The houses as last read from the device or kept on it, for judging at once. */
let now: readonly House[] = [];
/** What lays a house over a topic: few devices have one, and the others need none of it. */
let numbers: typeof import('./house-numbers') | undefined;
const layers = new WeakMap<House, readonly HouseLayer[]>();
const under = new WeakMap<House, Topic>();

async function take(houses: readonly House[]): Promise<void> {
  if (houses.length > 0) numbers ??= await import('./house-numbers');
  // The same again is no news to whoever keeps what was found by them.
  if (JSON.stringify(houses) !== JSON.stringify(now)) now = houses;
}

/** Reads the houses, so that `houseOver` knows them. A device that keeps nothing has none. */
export const readHouses = async (): Promise<void> => take(await allHouses().catch(() => []));

/** The houses as last read, for whatever reckons beside the page. */
export const housesNow = (): readonly House[] => now;

/** The numbers a dealer keeps for a topic, as last read. */
export const houseOf = (topic: string): House | undefined =>
  now.find((each) => each.topic === topic && Object.keys(each.parameters).length > 0);

/** The layer under which cases of a topic are judged here; none when there is nothing in it. */
export function houseOver(topic: Topic): readonly HouseLayer[] {
  const kept = now.find((each) => each.topic === topic.id);
  if (!kept || !numbers) return [];
  const before = layers.get(kept);
  if (before) return before;
  const { house } = numbers.allowedHouse(topic, kept);
  const made = Object.keys(house.parameters).length === 0 ? [] : [house];
  layers.set(kept, made);
  return made;
}

/** A topic as cases of it are judged here. */
export function topicHere(topic: Topic): Topic {
  const kept = now.find((each) => each.topic === topic.id);
  if (!kept || !numbers) return topic;
  const made = under.get(kept) ?? numbers.underHouse(topic, kept);
  under.set(kept, made);
  return made;
}

export async function keepHouse(house: House): Promise<void> {
  await take([...now.filter(({ topic }) => topic !== house.topic), house]);
  await putRecord('house', house.topic, house);
}
