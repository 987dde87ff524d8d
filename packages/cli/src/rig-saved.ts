import type { Topic } from '@tarebook/rules/engine';
import { type Replayed, replayAsJson, replayAsText, replaySaved } from './replay';

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** The answers in a rig saved as JSON; undefined where it is none. */
export function savedRig(text: string): readonly Readonly<Record<string, unknown>>[] | undefined {
  try {
    const saved: unknown = JSON.parse(text.replace(/^\uFEFF/, ''));
    if (!isObject(saved) || saved.topic !== 'rig' || !Array.isArray(saved.answers))
      return undefined;
    const { answers } = saved;
    return answers.every(isObject) ? answers : undefined;
  } catch {
    return undefined;
  }
}

type ReplayedRig = readonly (Replayed & { readonly moment: string | null })[];

/**
 * Each answer of a saved rig, run again by the rules it was made by.
 *
 * @throws BadInput as `replaySaved` does, with the topic it is about
 */
export async function replayRig(
  name: string,
  answers: readonly Readonly<Record<string, unknown>>[],
  among: Readonly<Record<string, Topic>>,
): Promise<ReplayedRig> {
  const all: (Replayed & { readonly moment: string | null })[] = [];
  for (const { moment, level: _, ...each } of answers) {
    const of = typeof each.topic === 'string' ? `${name}, ${each.topic}` : name;
    const replayed = await replaySaved(of, JSON.stringify(each), { among });
    all.push({ ...replayed, moment: typeof moment === 'string' ? moment : null });
  }
  return all;
}

export const replayedRigAsText = (all: ReplayedRig): string =>
  all
    .map(
      (each) =>
        `${each.topic.title}${each.moment === null ? '' : `, ${each.moment}`}\n\n${replayAsText(each)}`,
    )
    .join('\n');

export const replayedRigAsJson = (all: ReplayedRig): object => ({
  topic: 'rig',
  answers: all.map((each) => ({ ...replayAsJson(each), moment: each.moment })),
});
