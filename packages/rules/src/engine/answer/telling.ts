import { show } from '../../quantity';
import type { Level } from '../define/shapes';
import type { Compiled } from '../formula/compile';
import { restsOnKnown } from '../formula/reckon';
import type { Run } from '../formula/run';
import { asTruth } from '../formula/truth';
import { endsOf } from './named';

/**
 * Results that belong into the sentence, such as the drop of a ball mount; none where the verdict
 * does not go ahead, since nobody is to act on them then.
 */
export function tellings(compiled: Compiled, run: Run, level: Level): readonly string[] {
  if (level === 'unknown' || level === 'stop') return [];
  return (compiled.topic.tells ?? []).flatMap(({ of, says, when }) => {
    const holds = when === undefined || !asTruth(run.value(when)).no;
    if (!holds || !restsOnKnown(run.value(of), run.isOpen)) return [];
    const ends = endsOf(compiled, run, of);
    return [says.replace('{of}', show(ends, ends.unit))];
  });
}
