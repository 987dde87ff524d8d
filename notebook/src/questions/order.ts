import type { ReadMessage } from '@tarebook/record';
import type { Asked } from '../state/questions';
import type { Round } from '../state/round';
import { urgentWords } from './words';

/** A message as it came, and as it was read; undefined until it has been. */
export type Entry = { readonly asked: Asked; readonly read: ReadMessage | undefined };

/** The gravest first; what is not urgent comes after all that is. */
const gravity = ({ asked }: Entry): number => {
  const at = Object.keys(urgentWords).indexOf(asked.urgent);
  return at < 0 ? Number.POSITIVE_INFINITY : at;
};

/** Messages that ask the same: the gravest at their head, else the first that asked. */
export type Group = readonly Entry[];

/** What is urgent first, the gravest at the top; then as it came; repeats stand with the first unless a person took them apart. */
export function grouped(entries: readonly Entry[]): readonly Group[] {
  const heads = new Map<string, string>();
  const groups = new Map<string, Entry[]>();
  for (const entry of entries) {
    const { id } = entry.asked;
    // The one that asked first may be done, and not among these; its repeats are repeats all the same.
    const same = entry.asked.apart ? undefined : (entry.read?.sameAs ?? undefined);
    const head = same === undefined ? id : (heads.get(same) ?? same);
    heads.set(id, head);
    groups.set(head, [...(groups.get(head) ?? []), entry]);
  }
  return [...groups.values()]
    .map((group) => group.toSorted((a, b) => gravity(a) - gravity(b)))
    .toSorted((a, b) => firstOf(a) - firstOf(b));
}

const firstOf = ([first]: Group): number => (first ? gravity(first) : Number.POSITIVE_INFINITY);

const isUrgent = ([first]: Group): boolean => first !== undefined && first.asked.urgent !== '';

/** Whether all that an open message asks is answered in a round. */
export const isInRound = ([first]: Group, round: Pick<Round, 'items'>): boolean => {
  const { asked, read } = first ?? {};
  if (!asked || !read || asked.done > 0 || read.parts.length === 0) return false;
  return read.parts.every(({ text }) =>
    round.items.some(({ message, question }) => message === asked.id && question === text),
  );
};

/** What is to be answered, and what is done. */
export type Laid = {
  /** In their order; what was laid aside last still stands where it was, by itself. */
  readonly shown: readonly Group[];
  /** What was laid aside before, the last first. */
  readonly done: readonly Entry[];
  readonly open: number;
  readonly urgent: number;
};

/**
 * Lays out what was asked: repeats stand together where they are open, and none of them under one that
 * is done. Several that ask the same count once.
 *
 * @param justDone which one was laid aside last; it keeps its place until the next one is
 */
export function laidOut(entries: readonly Entry[], justDone: string | undefined): Laid {
  const open = entries.filter(({ asked }) => asked.done === 0);
  const last = entries.find(({ asked }) => asked.done > 0 && asked.id === justDone);
  const groups = grouped(open);
  const place = new Map(entries.map(({ asked }, at) => [asked.id, at]));
  const placeOf = ([first]: Group): number => place.get(first?.asked.id ?? '') ?? 0;
  const isBefore = (group: Group, one: Group): boolean =>
    firstOf(group) < firstOf(one) ||
    (firstOf(group) === firstOf(one) && placeOf(group) < placeOf(one));
  const at = last ? groups.filter((group) => isBefore(group, [last])).length : 0;
  return {
    shown: last ? groups.toSpliced(at, 0, [last]) : groups,
    done: entries
      .filter(({ asked }) => asked.done > 0 && asked.id !== last?.asked.id)
      .toSorted((a, b) => b.asked.done - a.asked.done),
    open: groups.length,
    urgent: groups.filter(isUrgent).length,
  };
}
