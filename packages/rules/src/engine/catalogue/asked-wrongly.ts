import type { Catalogue } from '../define/catalogue';
import { type AskName, asks } from './ask-names';

/** What is wrong with what a formula asks of a catalogue; undefined when nothing is. */
export function askedWrongly(
  catalogue: Catalogue | undefined,
  { catalogue: name, ask, args }: { catalogue: string; ask: AskName; args: readonly string[] },
): string | undefined {
  if (!catalogue) return `there is no catalogue “${name}”`;
  const [first, second] = args;
  if (first === undefined) return undefined;
  const missing = (kind: string, word: string) => `catalogue ${name} has no ${kind} “${word}”`;
  const { about } = asks[ask];
  if (about === 'figure' && !Object.hasOwn(catalogue.figures, first)) {
    return missing('figure', first);
  }
  if (about === 'model' && !Object.hasOwn(catalogue.models, first)) return missing('model', first);
  if (about === 'year' && !catalogue.years.includes(first)) return missing('year', first);
  if (about !== 'option' && about !== 'change') return undefined;
  if (!Object.hasOwn(catalogue.options, first)) return missing('option', first);
  const isYear = second === undefined || catalogue.years.includes(second);
  return isYear ? undefined : missing('year', second);
}
