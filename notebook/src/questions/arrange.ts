import type { Spoken } from '../state/round';

const isLight = ({ topic }: Spoken): boolean => topic === 'note';

/**
 * An order in which a round is pleasant to hear: no two warnings in a row as long as something else
 * can stand between, by turns through channels and topics, something light last. What cannot wait
 * comes before all of it.
 */
export function arranged(all: readonly Spoken[]): readonly Spoken[] {
  const urgent = all.filter(({ isUrgent }) => isUrgent);
  const items = all.filter(({ isUrgent }) => !isUrgent);
  const last = items.findLast((each) => isLight(each) && !each.isWarning);
  const left = items.filter((each) => each !== last);
  const order: Spoken[] = [];
  while (left.length > 0) {
    const before = order.at(-1);
    const warnings = left.filter(({ isWarning }) => isWarning).length;
    // Where warnings are as many as what may stand between them, they may not wait.
    const isDue = warnings * 2 > left.length + (last ? 1 : 0) - 1;
    const cost = (each: Spoken): number =>
      (each.isWarning && before?.isWarning ? 100 : 0) +
      (isDue && !each.isWarning ? 50 : 0) +
      (each.channel === before?.channel ? 3 : 0) +
      (each.topic === before?.topic ? 2 : 0);
    const costs = left.map(cost);
    const [next] = left.splice(costs.indexOf(Math.min(...costs)), 1);
    if (next) order.push(next);
  }
  return last ? [...urgent, ...order, last] : [...urgent, ...order];
}

/** A list with one of its items in another place. */
export function moved<T>(items: readonly T[], from: number, to: number): readonly T[] {
  const [item] = items.slice(from, from + 1);
  if (item === undefined || to < 0 || to >= items.length) return items;
  return items.toSpliced(from, 1).toSpliced(to, 0, item);
}

const mostWords = 25;

/** A question as it is read out: its last sentence that asks, in at most 25 words. */
export function asSpoken(question: string): string {
  const sentences = question.match(/[^.?!]+[.?!]*/g) ?? [question];
  const asking = sentences.findLast((each) => each.trim().endsWith('?')) ?? sentences[0] ?? '';
  const whole = question.trim().split(/\s+/).length <= mostWords ? question : asking;
  const words = whole.trim().split(/\s+/);
  return words.length <= mostWords ? words.join(' ') : `${words.slice(0, mostWords).join(' ')} …`;
}
