import type { Answer } from '@tarebook/rules/engine';
import { show, type UnitSystem } from '@tarebook/rules/quantity';
import type { CaseDocument } from './shapes';

/** What a live value in prose shows: a result, a fact as given, or the verdict. */
export function liveValue(
  doc: CaseDocument,
  found: Answer,
  name: string,
  system: UnitSystem,
): string {
  if (name === 'verdict') return found.words;
  if (name === 'limit.binding') return found.binding ?? 'none';
  const value = found.values[name];
  if (value) return show(value, value.unit, system);
  const choice = found.choices[name];
  if (choice) return choice.labels.join(' or ');
  const given = doc.facts[name];
  return typeof given === 'string' ? given : (found.trace.steps[name]?.value ?? 'unknown');
}
