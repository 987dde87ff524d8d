import type { ReadMessage } from '@tarebook/record';
import type { Asked } from '../state/questions';
import { urgentWords } from './words';

/** A message as it came, and as it was read; undefined until it has been. */
export type Entry = { readonly asked: Asked; readonly read: ReadMessage | undefined };

/** The gravest first; what is not urgent comes after all that is. */
const gravity = ({ asked }: Entry): number => {
  const at = Object.keys(urgentWords).indexOf(asked.urgent);
  return at < 0 ? Number.POSITIVE_INFINITY : at;
};

/** Messages that ask the same, the first that asked at their head. */
export type Group = readonly Entry[];

/** What is urgent first, the gravest at the top; then as it came; repeats stand with the first. */
export function grouped(entries: readonly Entry[]): readonly Group[] {
  const heads = new Map<string, string>();
  const groups = new Map<string, Entry[]>();
  for (const entry of entries) {
    const { id } = entry.asked;
    const same = entry.read?.sameAs;
    const head = (same && heads.get(same)) || id;
    heads.set(id, head);
    groups.set(head, [...(groups.get(head) ?? []), entry]);
  }
  const first = (group: Group): number => Math.min(...group.map(gravity));
  return [...groups.values()].toSorted((a, b) => first(a) - first(b));
}
