import { type DBSchema, type IDBPDatabase, openDB } from 'idb';

/** What a person typed, kept on this device under the case's address. */
export type Kept = {
  readonly topic: string;
  readonly name: string;
  readonly text: string;
  /** Milliseconds since 1970. */
  readonly at: number;
};

interface Shelf extends DBSchema {
  cases: { key: string; value: unknown };
  /** Records that could not be read; never deleted. */
  aside: { key: number; value: unknown };
}

let opened: Promise<IDBPDatabase<Shelf>> | undefined;

function shelf(): Promise<IDBPDatabase<Shelf>> {
  opened ??= openDB<Shelf>('tarebook', 1, {
    upgrade(db) {
      db.createObjectStore('cases');
      db.createObjectStore('aside', { autoIncrement: true });
    },
  });
  return opened;
}

export const keyOf = (topic: string, name: string): string => `${topic}/${name}`;

/** Whether a stored record is one of ours, whole. */
export function isKept(value: unknown): value is Kept {
  if (typeof value !== 'object' || value === null) return false;
  const has = (key: string, type: string): boolean =>
    typeof Object.getOwnPropertyDescriptor(value, key)?.value === type;
  return (
    has('topic', 'string') && has('name', 'string') && has('text', 'string') && has('at', 'number')
  );
}

export async function keep(kept: Kept): Promise<void> {
  await (await shelf()).put('cases', kept, keyOf(kept.topic, kept.name));
}

export async function forget(topic: string, name: string): Promise<void> {
  await (await shelf()).delete('cases', keyOf(topic, name));
}

/** The kept text of a case. A damaged record is set aside, not deleted. */
export async function keptCase(topic: string, name: string): Promise<Kept | undefined> {
  const db = await shelf();
  const key = keyOf(topic, name);
  const found = await db.get('cases', key);
  if (found === undefined) return undefined;
  if (isKept(found)) return found;
  await setAside(db, key, found);
  return undefined;
}

async function setAside(db: IDBPDatabase<Shelf>, key: string, value: unknown): Promise<void> {
  const move = db.transaction(['cases', 'aside'], 'readwrite');
  await move.objectStore('aside').add({ key, value });
  await move.objectStore('cases').delete(key);
  await move.done;
}

export async function allKept(): Promise<readonly Kept[]> {
  const db = await shelf();
  const keys = await db.getAllKeys('cases');
  const found = await Promise.all(
    keys.map(async (key) => {
      const value = await db.get('cases', key);
      if (isKept(value)) return [value];
      await setAside(db, key, value);
      return [];
    }),
  );
  return found.flat();
}
