import type { ReadMessage } from '@tarebook/record';
import type { Asked } from '../state/questions';

/** The same words however they are written. */
const plain = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();

/** Messages whose topic a person set right in another one of the same words, and not in this one. */
export function setRightAsBefore(
  messages: readonly Asked[],
  read: readonly ReadMessage[],
): readonly Asked[] {
  const chosen = new Map<string, string>();
  for (const { topics } of messages) {
    for (const [question, topic] of Object.entries(topics)) chosen.set(plain(question), topic);
  }
  if (chosen.size === 0) return [];
  const byId = new Map(messages.map((each) => [each.id, each]));
  return read.flatMap(({ id, parts }) => {
    const asked = byId.get(id);
    if (!asked || asked.done > 0) return [];
    const fresh = parts.flatMap(({ text, topic }) => {
      const before = Object.hasOwn(asked.topics, text) ? undefined : chosen.get(plain(text));
      return before === undefined || before === (topic ?? 'none') ? [] : [[text, before] as const];
    });
    if (fresh.length === 0) return [];
    return [{ ...asked, topics: { ...asked.topics, ...Object.fromEntries(fresh) } }];
  });
}
