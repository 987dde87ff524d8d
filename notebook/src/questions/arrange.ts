import type { Spoken } from '../state/round';

const isLight = ({ topic }: Spoken): boolean => topic === 'note';

/** What one message asks is heard together, and in its order. */
function byMessage(items: readonly Spoken[]): readonly (readonly Spoken[])[] {
  const found = new Map<string, Spoken[]>();
  for (const each of items) {
    found.set(each.message, [...(found.get(each.message) ?? []), each]);
  }
  return [...found.values()];
}

/**
 * An order in which a round is pleasant to hear: no two warnings in a row as long as something else
 * can stand between, by turns through channels and topics, something light last. The questions of one
 * message stay together. What cannot wait comes before all of it.
 */
export function arranged(all: readonly Spoken[]): readonly Spoken[] {
  const urgent = all.filter(({ isUrgent }) => isUrgent);
  const units = byMessage(all.filter(({ isUrgent }) => !isUrgent));
  const last = units.findLast((unit) => unit.every((each) => isLight(each) && !each.isWarning));
  const left = units.filter((each) => each !== last);
  const order: Spoken[] = [];
  while (left.length > 0) {
    const before = order.at(-1);
    const warnings = left.filter((unit) => unit.some(({ isWarning }) => isWarning)).length;
    // Where warnings are as many as what may stand between them, they may not wait.
    const isDue = warnings * 2 > left.length + (last ? 1 : 0) - 1;
    const cost = (unit: readonly Spoken[]): number => {
      const [first] = unit;
      const warns = unit.some(({ isWarning }) => isWarning);
      return (
        (first?.isWarning && before?.isWarning ? 100 : 0) +
        (isDue && !warns ? 50 : 0) +
        (first?.channel === before?.channel ? 3 : 0) +
        (first?.topic === before?.topic ? 2 : 0)
      );
    };
    const costs = left.map(cost);
    const [next = []] = left.splice(costs.indexOf(Math.min(...costs)), 1);
    order.push(...next);
  }
  return [...urgent, ...order, ...(last ?? [])];
}

/** A list with one of its items in another place. */
export function moved<T>(items: readonly T[], from: number, to: number): readonly T[] {
  const [item] = items.slice(from, from + 1);
  if (item === undefined || to < 0 || to >= items.length) return items;
  return items.toSpliced(from, 1).toSpliced(to, 0, item);
}
