import type { Topic } from '../define/shapes';
import { allFormulas } from '../define/topic';
import type { Node } from '../formula/grammar/nodes';
import { parseFormula } from '../formula/parse';
import { compiledOf, isCompiled, prepare } from './answer';

/** So many formulas are read between two pauses: a few milliseconds on a slow telephone. */
const atATime = 40;

/**
 * What `prepare` does, in short stretches, so that a page can answer its reader in between.
 *
 * @param pause resolves once it may go on
 */
export async function prepareInSteps(topic: Topic, pause: () => Promise<void>): Promise<void> {
  if (isCompiled(topic)) return prepare(topic);
  const parsed = new Map<string, Node>();
  for (const [name, { is }] of allFormulas(topic)) {
    parsed.set(name, parseFormula(is));
    if (parsed.size % atATime === 0) await pause();
  }
  compiledOf(topic, parsed);
  await pause();
  prepare(topic);
}
