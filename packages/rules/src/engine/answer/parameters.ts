import { unitOf } from '../../quantity';
import type { Parameter, Topic } from '../define/shapes';
import { calendarOf } from './calendar';
import type { ParameterAnswer } from './shapes';

/** The entry of a parameter that held on a day: the latest that began on or before it. */
function holding(parameter: Parameter, day: string) {
  const begun = parameter.values.filter((entry) => entry.from <= day);
  const latest = begun.reduce((a, b) => (a && a.from >= b.from ? a : b), begun[0]);
  return latest ?? parameter.values[0];
}

/** The parameters of a topic as they stood on a day (ISO 8601, `2026-11-01`). */
export function parametersOn(topic: Topic, day: string): readonly ParameterAnswer[] {
  return Object.entries(topic.parameters).flatMap(([id, parameter]) => {
    const entry = holding(parameter, day);
    const { label, unit, source } = parameter;
    return entry ? [{ id, label, unit, source, value: entry.value, from: entry.from }] : [];
  });
}

/** By name, in base units, with the calendar of the day they are taken on. */
export function inBase(
  parameters: readonly ParameterAnswer[],
  asOf: string,
): ReadonlyMap<string, number> {
  const numbers = parameters.map(({ id, value, unit }): [string, number] => [
    id,
    unit === '' ? value : value * unitOf(unit).factor,
  ]);
  return new Map([...calendarOf(asOf), ...numbers]);
}
