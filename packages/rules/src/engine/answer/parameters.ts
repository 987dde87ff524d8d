import { unitOf } from '../../quantity';
import { refuse } from '../check/asked';
import { described } from '../check/given';
import type { Problem } from '../check/problem';
import type { Parameter, ParameterValue, Topic } from '../define/shapes';
import { message } from '../words/message';
import { own, type Quantity, type Say, text } from '../words/value';
import { calendarOf } from './calendar';
import type { Dated, HouseAnswer, ParameterAnswer } from './shapes';

/**
 * Which value of a parameter holds on a day: the latest begun, unless it has run out.
 *
 *     from ├──── 5 % ────┤ until      from ├──── 10 % ─────▶
 *        no value ▲                ▲ no value
 */
export function holdingOn({ values }: Parameter, day: string): ParameterValue | undefined {
  const begun = values.filter((entry) => entry.from <= day);
  const latest = begun.reduce((a, b) => (a && a.from >= b.from ? a : b), begun[0]);
  return latest?.until !== undefined && latest.until < day ? undefined : latest;
}

const begunBefore = ({ values }: Parameter, day: string): readonly ParameterValue[] =>
  values.filter((entry) => entry.from <= day).toSorted((a, b) => (a.from < b.from ? -1 : 1));

/** The first value that begins after a day. */
function following({ values }: Parameter, day: string): ParameterValue | undefined {
  return values
    .filter((entry) => entry.from > day)
    .toSorted((a, b) => (a.from < b.from ? -1 : 1))[0];
}

function noValue(id: string, parameter: Parameter, day: string): Problem {
  const next = following(parameter, day);
  const last = begunBefore(parameter, day).at(-1);
  const ended = last && `${next ? 'the one before' : 'its last'} held until ${last.until}`;
  const begins = next && `its ${last ? 'next' : 'first'} holds from ${next.from}`;
  const wanted = [ended, begins].filter((each) => each !== undefined).join(', and ');
  return { code: 'no-value-on', fact: id, found: day, wanted };
}

const isDay = (text: unknown): boolean =>
  typeof text === 'string' &&
  /^\d{4}-\d{2}-\d{2}$/.test(text) &&
  !Number.isNaN(Date.parse(text)) &&
  new Date(Date.parse(text)).toISOString().startsWith(text);

/** Why a topic cannot be answered as of a day: it is none, or a parameter has no value on it. */
export function dayProblems(topic: Topic, day: string): readonly Problem[] {
  if (!isDay(day)) {
    return [
      {
        code: 'not-a-day',
        fact: 'as-of',
        found: described(day),
        wanted: 'a day such as 2026-11-01',
      },
    ];
  }
  return Object.entries(topic.parameters)
    .filter(([, parameter]) => !holdingOn(parameter, day))
    .map(([id, parameter]) => noValue(id, parameter, day));
}

/**
 * The parameters of a topic as they stood on a day (ISO 8601, `2026-11-01`).
 *
 * @throws InputError when one of them had no value then: none is ever used before or after its time
 */
export function parametersOn(topic: Topic, day: string): readonly ParameterAnswer[] {
  const problems = dayProblems(topic, day);
  refuse(problems);
  return Object.entries(topic.parameters).flatMap(([id, parameter]) => {
    const entry = holdingOn(parameter, day);
    if (!entry) return [];
    const { label, unit } = parameter;
    const { value, from, until, house } = entry;
    const source = house
      ? ({ class: 'house', cite: `Choice of ${house.name}`, note: house.reason } as const)
      : parameter.source;
    return [{ id, label, unit, source, value, from, ...(until !== undefined && { until }) }];
  });
}

const exactly = (value: number, unit: string): Quantity => ({
  lo: value,
  hi: value,
  unit,
  style: 'exact',
});

/** What is known to change after the day: told, so that nobody takes a value for a lasting one. */
export function datedOn(topic: Topic, day: string, say: Say): readonly Dated[] {
  return parametersOn(topic, day).flatMap(({ id, label, value, unit, from, until }) => {
    const parameter = topic.parameters[id];
    const next = parameter && following(parameter, day);
    if (until === undefined && (!next || next.value === value)) return [];
    const told = message('known-to-change', {
      label: text(label),
      day,
      is: exactly(value, unit),
      until: until ?? null,
      from: next?.from ?? null,
      later: next ? exactly(next.value, unit) : null,
    });
    return [
      {
        parameter: id,
        value,
        unit,
        from,
        ...(until !== undefined && { until }),
        ...(next && { next: { from: next.from, value: next.value } }),
        says: say(told),
        message: told,
      },
    ];
  });
}

/** The dealer's own parameters that hold on a day, each with the value it stands in for. */
export function houseOn(topic: Topic, day: string, say: Say): HouseAnswer | null {
  if (topic.house === undefined) return null;
  const moved = Object.entries(topic.parameters).flatMap(([id, parameter]) => {
    const entry = holdingOn(parameter, day);
    if (!entry?.house) return [];
    const { label, unit } = parameter;
    const { value, from, house } = entry;
    const { reason, instead } = house;
    const told = message('house-instead', {
      label: text(label),
      is: exactly(value, unit),
      instead: exactly(instead, unit),
      reason: own(reason),
    });
    const name = say(text(label));
    const says = say(told);
    return [{ id, label: name, value, unit, from, instead, reason, says, message: told }];
  });
  return { name: topic.house, parameters: moved };
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
