import type { Topic } from '@tarebook/rules/engine';
import { wanted } from '../words/wanted';

/** Which of a topic's askings a question puts, by its words, and what that hangs on first. */
export function askingIn(
  { id, askings = {}, facts }: Topic,
  text: string,
): { readonly asking?: string; readonly look?: string } {
  const all = Object.hasOwn(wanted, id) ? (wanted[id] ?? []) : [];
  const found = all.find(([asking, said]) => Object.hasOwn(askings, asking) && said.test(text));
  if (!found) return {};
  const [asking, , look] = found;
  return { asking, ...(look !== undefined && Object.hasOwn(facts, look) && { look }) };
}
