import type { Kept } from './kept-shape';
import { allPending, dropPending, notePending } from './pending';
import { everyRecord, hasFields, inTurn, type Shelf, setAside, shelf } from './shelf';
import { allUnsaved, dropUnsaved, holdUnsaved, unsavedCase } from './unsaved';

export type { Kept } from './kept-shape';

/** What happened to a case in another window, for the page to tell. */
export type Elsewhere =
  /** Another window changed or put back the case. */
  | { readonly kind: 'changed'; readonly topic: string; readonly name: string }
  /** Both windows changed it; what was typed here now has a name of its own. */
  | {
      readonly kind: 'apart';
      readonly topic: string;
      readonly name: string;
      readonly own: string;
    };

export const keyOf = (topic: string, name: string): string => `${topic}/${name}`;

/** Whether a stored record is one of ours, whole. */
export function isKept(value: unknown): value is Kept {
  return hasFields(value, { topic: 'string', name: 'string', text: 'string', at: 'number' });
}

/** The text of each case as this window last read or wrote it; undefined: none was kept. */
const seen = new Map<string, string | undefined>();
/** Cases that went on under a name of their own because another window had changed them too. */
const ownName = new Map<string, string>();

const listeners = new Set<(news: Elsewhere) => void>();
const tell = (news: Elsewhere): void => {
  for (const each of listeners) each(news);
};

const channel =
  typeof BroadcastChannel === 'undefined' ? undefined : new BroadcastChannel('tarebook-kept');
channel?.addEventListener('message', ({ data }: MessageEvent<unknown>) => {
  if (hasFields(data, { topic: 'string', name: 'string' }) && 'topic' in data && 'name' in data) {
    tell({ kind: 'changed', topic: String(data.topic), name: String(data.name) });
  }
});

/** Tells `listener` what other windows do to cases; the returned function ends that. */
export function hearElsewhere(listener: (news: Elsewhere) => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

/**
 * Keeps a case. When another window has changed it since this one last saw it, nothing of that is
 * overwritten: this window's text goes on under a name of its own, and the page is told.
 *
 *     stored = seen here        put
 *     stored ≠ seen, same text  nothing to do
 *     stored ≠ seen             put under `name-2-…`, tell
 *
 * What the device refuses is held in this window, and whoever would close it is asked first.
 */
export async function keep(kept: Kept): Promise<void> {
  const key = keyOf(kept.topic, kept.name);
  try {
    await put(kept);
    dropUnsaved(key);
  } catch (problem) {
    holdUnsaved(key, kept);
    throw problem;
  }
}

function put(kept: Kept): Promise<void> {
  const { topic, name, text } = kept;
  const first = keyOf(topic, name);
  const noted = ownName.get(first) ?? name;
  notePending({ ...kept, name: noted, base: seen.get(keyOf(topic, noted)) ?? null });
  return inTurn(async () => {
    const db = await shelf();
    let key = keyOf(topic, ownName.get(first) ?? name);
    const write = db.transaction(['cases', 'aside'], 'readwrite');
    const cases = write.objectStore('cases');
    const stored: unknown = await cases.get(key);
    let apart: string | undefined;
    if (stored !== undefined && !isKept(stored)) {
      await write.objectStore('aside').add({ store: 'cases', key, value: stored });
    } else if (stored && stored.text !== seen.get(key) && stored.text !== text) {
      apart = `${name}-2-${Date.now().toString(36)}`;
      key = keyOf(topic, apart);
    }
    await cases.put({ ...kept, name: key.slice(topic.length + 1) }, key);
    await write.done;
    dropPending(topic, noted);
    seen.set(key, text);
    if (apart !== undefined) {
      ownName.set(first, apart);
      tell({ kind: 'apart', topic, name, own: apart });
    }
    channel?.postMessage({ topic, name: key.slice(topic.length + 1) });
  });
}

/** Forgets what was kept of a case, unless another window has changed it since. */
export function forget(topic: string, name: string): Promise<void> {
  const own = ownName.get(keyOf(topic, name)) ?? name;
  dropUnsaved(keyOf(topic, name));
  dropPending(topic, own);
  return inTurn(async () => {
    const key = keyOf(topic, own);
    const db = await shelf();
    const write = db.transaction('cases', 'readwrite');
    const stored: unknown = await write.store.get(key);
    const ours = isKept(stored) && stored.text === seen.get(key);
    if (ours) await write.store.delete(key);
    await write.done;
    if (!ours) return;
    seen.set(key, undefined);
    channel?.postMessage({ topic, name: key.slice(topic.length + 1) });
  });
}

/** Takes in what a closing tab could only note, under a name of its own where work was done since. */
async function takeInPending(db: Shelf): Promise<void> {
  for (const { base, ...kept } of allPending()) {
    const { topic, name, text } = kept;
    const stored: unknown = await db.get('cases', keyOf(topic, name));
    const now = isKept(stored) ? stored.text : null;
    if (now !== text) {
      const damaged = stored !== undefined && now === null;
      const free = !damaged && now === base;
      const own = free ? name : `${name}-2-${kept.at.toString(36)}`;
      await db.put('cases', { ...kept, name: own }, keyOf(topic, own));
    }
    dropPending(topic, name);
  }
}

/** The kept text of a case. A damaged record is set aside, not deleted. */
export async function keptCase(topic: string, name: string): Promise<Kept | undefined> {
  return unsavedCase(keyOf(topic, name)) ?? fetchKept(topic, name);
}

function fetchKept(topic: string, name: string): Promise<Kept | undefined> {
  return inTurn(async () => {
    const db = await shelf();
    await takeInPending(db);
    const key = keyOf(topic, name);
    const found: unknown = await db.get('cases', key);
    const whole = isKept(found) ? found : undefined;
    seen.set(key, whole?.text);
    ownName.delete(key);
    if (found !== undefined && !whole) await setAside(db, 'cases', key);
    return whole;
  });
}

export async function allKept(): Promise<readonly Kept[]> {
  const held = allUnsaved();
  try {
    await inTurn(async () => takeInPending(await shelf()));
    const kept = await everyRecord('cases', isKept);
    const newer = new Set(held.map(({ topic, name }) => keyOf(topic, name)));
    return [...held, ...kept.filter(({ topic, name }) => !newer.has(keyOf(topic, name)))];
  } catch (problem) {
    if (held.length > 0) return held;
    throw problem;
  }
}
