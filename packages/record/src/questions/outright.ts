import type { Topic } from '@tarebook/rules/engine';
import { outright } from '../words/outright';
import type { Evidence } from './evidence';

/** What a sign is worth beside what was learned: it is sure. */
const sure = 10;

/** The one topic that a text says outright; where it says two, or none, undefined. */
export function saidOutright(
  topics: Readonly<Record<string, Topic>>,
  text: string,
): Evidence | undefined {
  const all = Object.entries(outright).flatMap(([topic, signs]): readonly Evidence[] => {
    const sign = signs.find((forms) => forms.every((form) => form.test(text)));
    if (!sign || !Object.hasOwn(topics, topic)) return [];
    const because = sign.flatMap((form) => form.exec(text)?.[0].trim() || []);
    return [{ topic, score: sure, because }];
  });
  return all.length === 1 ? all[0] : undefined;
}
