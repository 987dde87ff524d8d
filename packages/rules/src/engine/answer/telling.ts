import type { Level } from '../define/shapes';
import type { Compiled } from '../formula/compile';
import { restsOnKnown } from '../formula/reckon';
import type { Run } from '../formula/run';
import { asTruth } from '../value/truth';
import { holesIn } from '../words/fill';
import { type Sayable, text } from '../words/value';
import { endsOf } from './named';
import { sayableOf } from './shown';

/**
 * Results that belong into the sentence, such as the drop of a ball mount; none where the verdict
 * does not go ahead, since nobody is to act on them then.
 */
export function tellings(compiled: Compiled, run: Run, level: Level): readonly Sayable[] {
  if (level === 'unknown' || level === 'stop') return [];
  return (compiled.topic.tells ?? []).flatMap(({ of, says, when }) => {
    const holds = when === undefined || !asTruth(run.value(when)).no;
    if (!holds || !restsOnKnown(run.value(of), run.isOpen)) return [];
    const value = (name: string): Sayable =>
      name === 'of'
        ? { ...endsOf(compiled, run, of), style: 'exact' }
        : sayableOf(compiled, run, name);
    return [text(says, Object.fromEntries(holesIn(says).map((name) => [name, value(name)])))];
  });
}
