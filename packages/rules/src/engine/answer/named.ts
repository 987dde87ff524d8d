import { roundedEnds } from '../../quantity';
import type { Named } from '../condition/operators';
import { allNamesCompared } from '../condition/rules';
import { declaredUnit } from '../define/topic';
import type { Compiled } from '../formula/compile';
import type { Run } from '../formula/run';
import { inUnit } from '../formula/words';
import type { Ends } from './shapes';

/** The unit a name is kept in; '' for a count. What is written in % is kept as a fraction. */
export function unitOfName(compiled: Compiled, name: string): string {
  const unit =
    compiled.formulas.get(name)?.formula.unit ?? declaredUnit(compiled.topic, name) ?? '';
  return unit === '%' ? '1' : unit;
}

/** A number of a run in its declared unit, to a millionth. */
export function endsOf(compiled: Compiled, run: Run, name: string): Ends {
  const value = run.value(name);
  if (value.kind !== 'number') throw new Error(`“${name}” is not a number.`);
  const unit = unitOfName(compiled, name);
  return { ...roundedEnds(inUnit(value, unit)), unit };
}

/** A value as conditions compare it. */
export function namedValue(compiled: Compiled, run: Run, name: string): Named {
  const value = run.value(name);
  if (value.kind === 'among') return { among: value.options };
  if (value.kind === 'truth') {
    return { among: [...(value.yes ? ['yes'] : []), ...(value.no ? ['no'] : [])] };
  }
  const { lo, hi } = endsOf(compiled, run, name);
  return { lo, hi };
}

/** All values that the conditions of a topic compare. */
export function namedValues(
  compiled: Compiled,
  run: Run,
  names: readonly string[] = allNamesCompared(compiled.topic),
): ReadonlyMap<string, Named> {
  return new Map(names.map((name) => [name, namedValue(compiled, run, name)]));
}
