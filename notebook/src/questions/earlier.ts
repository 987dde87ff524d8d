import { masked } from '@tarebook/record';
import type { Given } from '../state/given';
import { leavesOpen } from './answer-shapes';
import type { Group } from './order';

/**
 * What was answered before to a question that stands together with others, the latest first, each text
 * once: whoever asks again hears the same from everybody here.
 */
export function earlierOver(all: readonly Given[]): (group: Group) => readonly Given[] {
  const byQuestion = new Map<string, Given[]>();
  for (const each of all) {
    if (leavesOpen.has(each.form) || each.question === '') continue;
    byQuestion.set(each.question, [...(byQuestion.get(each.question) ?? []), each]);
  }
  return (group) => {
    if (byQuestion.size === 0) return [];
    const questions = group.flatMap(
      ({ read }) => read?.parts.map(({ text }) => masked(text)) ?? [],
    );
    const found = [...new Set(questions)].flatMap((each) => byQuestion.get(each) ?? []);
    const latest = found.toSorted((a, b) => b.day.localeCompare(a.day));
    return latest.filter(({ text }, at) => latest.findIndex((each) => each.text === text) === at);
  };
}
