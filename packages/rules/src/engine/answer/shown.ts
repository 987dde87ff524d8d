import { againstName } from '../define/topic';
import type { Compiled } from '../formula/compile';
import type { Run } from '../formula/run';
import { holesIn } from '../words/fill';
import { message } from '../words/message';
import { heading, type Sayable, type Text, text } from '../words/value';
import { fromCatalogues } from './listed';
import { endsOf } from './named';
import type { Told } from './shapes';

export function toldOf(compiled: Compiled, run: Run, name: string): Told {
  if (name === againstName) return { among: [] };
  const value = run.value(name);
  if (value.kind === 'number') return endsOf(compiled, run, name);
  if (value.kind === 'among') return { among: value.options };
  return { among: [...(value.yes ? ['yes'] : []), ...(value.no ? ['no'] : [])] };
}

/** How an option is said: that of a decision by its label. */
export function optionOf({ topic }: Compiled, name: string, option: string): Sayable {
  const result = topic.decisions?.[name]?.results[option];
  return result ? heading(result.label) : { option };
}

/** A value as words say it: a quantity, or the options it may be. */
export function sayableOf(compiled: Compiled, run: Run, name: string): Sayable {
  if (name === againstName) {
    const of = fromCatalogues().against(compiled.topic, run);
    return of.length === 0 ? text('something that is wanted') : message('all', { of });
  }
  const told = toldOf(compiled, run, name);
  if (!('among' in told)) return told;
  const of = told.among.map((option) => optionOf(compiled, name, option));
  const [only, more] = of;
  return only && !more ? only : message('either', { of });
}

/** A text of the rule set with this run's values for its holes. */
export function textOf(compiled: Compiled, run: Run, words: string): Text {
  const names = holesIn(words);
  if (names.length === 0) return text(words);
  return text(words, Object.fromEntries(names.map((n) => [n, sayableOf(compiled, run, n)])));
}
