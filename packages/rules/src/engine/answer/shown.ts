import { showRound, type UnitSystem } from '../../quantity';
import type { Topic } from '../define/shapes';
import type { Compiled } from '../formula/compile';
import type { Run } from '../formula/run';
import { filled } from '../words/fill';
import { endsOf } from './named';
import { listed, lowered } from './phrases';
import type { Told } from './shapes';

export function toldOf(compiled: Compiled, run: Run, name: string): Told {
  const value = run.value(name);
  if (value.kind === 'number') return endsOf(compiled, run, name);
  if (value.kind === 'among') return { among: value.options };
  return { among: [...(value.yes ? ['yes'] : []), ...(value.no ? ['no'] : [])] };
}

/** How an option is said: that of a decision by its label. */
const optionSaid = (topic: Topic, name: string, option: string): string =>
  lowered(topic.decisions?.[name]?.results[option]?.label ?? option);

export function shownTold(topic: Topic, name: string, told: Told, system: UnitSystem): string {
  if (!('among' in told)) return showRound(told, told.unit, system);
  return listed(
    told.among.map((option) => optionSaid(topic, name, option)),
    'or',
  );
}

/** The words of a rule set with this run's values in their holes. */
export function filledIn(compiled: Compiled, run: Run, text: string, system: UnitSystem): string {
  const { topic } = compiled;
  return filled(text, (name) => shownTold(topic, name, toldOf(compiled, run, name), system));
}
