import { roundedEnds } from '../../quantity';
import type { Named } from '../condition/operators';
import { allNamesCompared } from '../condition/rules';
import type { Look } from '../condition/walk';
import { declaredUnit } from '../define/topic';
import type { Compiled } from '../formula/compile';
import type { Run } from '../formula/run';
import { inUnit } from '../formula/words';
import type { Ends } from './shapes';

const units = new WeakMap<Compiled, Map<string, string>>();

/** The unit a name is kept in; '' for a count. What is written in % is kept as a fraction. */
export function unitOfName(compiled: Compiled, name: string): string {
  const kept = units.get(compiled) ?? new Map<string, string>();
  const before = kept.get(name);
  if (before !== undefined) return before;
  const declared =
    compiled.formulas.get(name)?.formula.unit ?? declaredUnit(compiled.topic, name) ?? '';
  const unit = declared === '%' ? '1' : declared;
  units.set(compiled, kept.set(name, unit));
  return unit;
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

/** The same, each found when a condition first asks for it. */
export function lookIn(compiled: Compiled, run: Run): Look {
  const seen = new Map<string, Named>();
  return (name) => {
    const before = seen.get(name);
    if (before) return before;
    const found = namedValue(compiled, run, name);
    seen.set(name, found);
    return found;
  };
}

/** All values that the conditions of a topic compare. */
export function namedValues(
  compiled: Compiled,
  run: Run,
  names: readonly string[] = allNamesCompared(compiled.topic),
): ReadonlyMap<string, Named> {
  return new Map(names.map((name) => [name, namedValue(compiled, run, name)]));
}
