import { type DBSchema, type IDBPDatabase, openDB } from 'idb';

/** The stores of this device. Every value is read as unknown and checked before it is used. */
interface Stores extends DBSchema {
  /** Cases as they were typed, under their address. */
  cases: { key: string; value: unknown };
  /** Classes, under their id. */
  classes: { key: string; value: unknown };
  /** The dealer's own numbers, under the topic. */
  house: { key: string; value: unknown };
  /** Lessons a trainer has prepared, under their id. */
  lessons: { key: string; value: unknown };
  /** What people asked and what was answered, under its id. */
  questions: { key: string; value: unknown };
  /** What learners practiced, under its id. */
  practice: { key: string; value: unknown };
  /** The dealer's own catalogue, one file a name. */
  catalogue: { key: string; value: unknown };
  /** Records that could not be read; never deleted. */
  aside: { key: number; value: unknown };
}

export type Shelf = IDBPDatabase<Stores>;
const stores = [
  'cases',
  'classes',
  'house',
  'lessons',
  'questions',
  'practice',
  'catalogue',
] as const;
export type Store = (typeof stores)[number];

const version = 4;
let opened: Promise<Shelf> | undefined;

const isVersionError = (problem: unknown): boolean =>
  problem instanceof DOMException && problem.name === 'VersionError';

async function open(): Promise<Shelf> {
  const shut = (): void => {
    opened = undefined;
  };
  const watch = {
    // A newer page wants to rearrange the stores: let it, and open them again when next needed.
    blocking: (_from: number, _to: number | null, event: IDBVersionChangeEvent): void => {
      shut();
      if (event.target instanceof IDBDatabase) event.target.close();
    },
    terminated: shut,
  };
  try {
    return await new Promise<Shelf>((done, failed) => {
      openDB<Stores>('tarebook', version, {
        ...watch,
        // An older page in another window holds the stores: do without rather than wait for it.
        blocked: () => failed(new Error('An older page holds what is kept.')),
        upgrade(db) {
          for (const name of stores) {
            if (!db.objectStoreNames.contains(name)) db.createObjectStore(name);
          }
          if (!db.objectStoreNames.contains('aside')) {
            db.createObjectStore('aside', { autoIncrement: true });
          }
        },
      }).then(done, failed);
    });
  } catch (problem) {
    // A newer page has been here; its stores serve an older page as they are.
    if (isVersionError(problem)) return openDB<Stores>('tarebook', undefined, watch);
    throw problem;
  }
}

/** @throws when this device refuses to keep anything; the next call tries again. */
export function shelf(): Promise<Shelf> {
  opened ??= open().catch((problem: unknown) => {
    opened = undefined;
    throw problem;
  });
  return opened;
}

let last: Promise<unknown> = Promise.resolve();

/** One after another, in the order asked for, so that a late write never meets an early read. */
export function inTurn<T>(work: () => Promise<T>): Promise<T> {
  const next = last.then(work);
  last = next.catch(() => undefined);
  return next;
}

/** Resolves once everything asked for so far is kept, or has failed. */
export async function settled(): Promise<void> {
  await last;
}

/** Why nothing could be kept, in one sentence. */
export function whyNotKept(problem: unknown): string {
  const full = problem instanceof DOMException && problem.name === 'QuotaExceededError';
  return full
    ? 'The room this device gives the page is full, so what you do now lives only in this window.'
    : 'This device keeps nothing for the page just now, so what you do lives only in this window.';
}

/** Moves a record that cannot be read out of the way, whole. */
export async function setAside(db: Shelf, store: Store, key: string): Promise<void> {
  const move = db.transaction([store, 'aside'], 'readwrite');
  const value: unknown = await move.objectStore(store).get(key);
  if (value !== undefined) {
    await move.objectStore('aside').add({ store, key, value });
    await move.objectStore(store).delete(key);
  }
  await move.done;
}

/** All that was ever set aside, as it was found. */
export const allAside = (): Promise<readonly unknown[]> =>
  inTurn(async () => (await shelf()).getAll('aside'));

/** Every whole record of a store; what is damaged is set aside. */
export function everyRecord<T>(
  store: Store,
  isWhole: (value: unknown) => value is T,
): Promise<readonly T[]> {
  return inTurn(async () => {
    const db = await shelf();
    const found: T[] = [];
    // In one go: of thousands, each asked for by itself would take a second.
    const read = db.transaction(store);
    const [keys, values] = await Promise.all([read.store.getAllKeys(), read.store.getAll()]);
    for (const [at, key] of keys.entries()) {
      const value: unknown = values[at];
      if (isWhole(value)) found.push(value);
      else if (value !== undefined) await setAside(db, store, key);
    }
    return found;
  });
}

export const putRecord = (store: Store, key: string, value: object): Promise<void> =>
  inTurn(async () => {
    await (await shelf()).put(store, value, key);
  });

/** Writes what `change` makes of what is there, with no other window's write between the two. */
export const changeRecord = <T extends object>(
  store: Store,
  key: string,
  change: (kept: unknown) => T,
): Promise<T> =>
  inTurn(async () => {
    const write = (await shelf()).transaction(store, 'readwrite');
    const now = change(await write.store.get(key));
    await write.store.put(now, key);
    await write.done;
    return now;
  });

export const dropRecord = (store: Store, key: string): Promise<void> =>
  inTurn(async () => {
    await (await shelf()).delete(store, key);
  });

/** Whether a value is an object with these fields of these types. */
export function hasFields(
  value: unknown,
  fields: Readonly<Record<string, 'string' | 'number' | 'object'>>,
): value is object {
  if (typeof value !== 'object' || value === null) return false;
  return Object.entries(fields).every(([key, type]) => {
    const held: unknown = Object.getOwnPropertyDescriptor(value, key)?.value;
    return typeof held === type && held !== null;
  });
}
