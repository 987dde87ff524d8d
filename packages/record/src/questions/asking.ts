import type { Topic } from '@tarebook/rules/engine';
import { wanted } from '../words/wanted';

/** Which of a topic's askings a question puts, by its words; undefined where they name none. */
export function askingIn({ id, askings = {} }: Topic, text: string): string | undefined {
  const all = Object.hasOwn(wanted, id) ? (wanted[id] ?? []) : [];
  return all.find(([asking, said]) => Object.hasOwn(askings, asking) && said.test(text))?.[0];
}
