import { unitOf } from '../../quantity';
import type { Topic } from '../define/shapes';
import { calendarUnits } from '../define/topic';
import type { Compiled } from '../formula/compile';
import { type Run, run } from '../formula/run';
import type { Inputs } from '../value/values';

/** A day like any other, for what is reckoned by the calendar: the second of July. */
const calendar: Readonly<Record<string, number>> = { 'asOf.day': 183, 'asOf.year': 2026.5 };

/** Every parameter with its latest value, in base units. */
function parametersOf(topic: Topic): ReadonlyMap<string, number> {
  const days = Object.keys(calendarUnits).map((id): [string, number] => [id, calendar[id] ?? 0]);
  const numbers = Object.entries(topic.parameters).map(
    ([id, { unit, values }]): [string, number] => {
      const latest = values.reduce(
        (a, b) => (b.from > a.from ? b : a),
        values[0] ?? { from: '', value: 0 },
      );
      return [id, latest.value * (unit === '' ? 1 : unitOf(unit).factor)];
    },
  );
  return new Map([...days, ...numbers]);
}

/** Reckons facts that a rule set names or that are tried on it, while it is looked at. */
export function trying(compiled: Compiled): (inputs: Inputs) => Run {
  const parameters = parametersOf(compiled.topic);
  return (inputs) => run(compiled, inputs, parameters);
}

/** What asks a catalogue or the sun is reckoned only where these were brought. */
export function reckonable<T>(tried: () => T): T | undefined {
  try {
    return tried();
  } catch (problem) {
    if (!(problem instanceof Error)) throw problem;
    return undefined;
  }
}
