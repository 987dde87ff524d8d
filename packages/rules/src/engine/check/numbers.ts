import { dimensionName, findUnit } from '../../quantity';
import { levels, type Topic } from '../define/shapes';
import { isPlain } from './given';

type Note = (at: string, found: string, wanted: string) => void;

const isDay = /^\d{4}-\d{2}-\d{2}$/;

/** That numbers stand within their own ends, and days are days. */
export function checkNumbers(topic: Topic, note: Note): void {
  for (const [id, fact] of Object.entries(topic.facts)) {
    if (fact.kind !== 'quantity') continue;
    if (fact.least > fact.most) note(`facts ${id}`, 'its least is over its most', 'swap them');
    const value = fact.silent?.value;
    if (value !== undefined && (value < fact.least || value > fact.most)) {
      note(
        `facts ${id}`,
        `its default ${value} is outside ${fact.least} to ${fact.most}`,
        'keep it inside',
      );
    }
  }
  for (const [id, { values, range }] of Object.entries(topic.parameters)) {
    if (values.length === 0)
      note(`parameters ${id}`, 'it has no value', 'give it one with its date');
    for (const { value, from, until } of values) {
      if (!isDay.test(from)) {
        note(`parameters ${id}`, `“${from}” is not a day`, 'write it as 2026-01-31');
      }
      if (until !== undefined && !(isDay.test(until) && until >= from)) {
        note(`parameters ${id}`, `it holds from ${from} until “${until}”`, 'end it on a later day');
      }
      if (range && (value < range[0] || value > range[1])) {
        note(
          `parameters ${id}`,
          `its value ${value} is outside ${range.join(' to ')}`,
          'keep it inside',
        );
      }
    }
  }
  for (const [id, { rows }] of Object.entries(topic.tables)) {
    const rising = rows.every(([key], i) => i === 0 || key > (rows[i - 1]?.[0] ?? key));
    if (rows.length === 0 || !rising) {
      note(`tables ${id}`, 'its keys do not rise from row to row', 'sort them, each once');
    }
  }
}

/** What there is none of at the least; a place, a temperature, a change may lie on either side. */
const neverBelow: readonly string[] = [
  ...['weight', 'area', 'volume', 'pressure', 'charge', 'energy'],
  ...['weight per volume', 'volume per time'],
];

const isBelow = (value: number, unit: string): boolean => {
  const known = value < 0 ? findUnit(unit === '' ? '1' : unit) : undefined;
  return known !== undefined && neverBelow.includes(dimensionName(known.dimension));
};

/**
 * That a number can be: no weight and no density is below nothing, and what it is reckoned with would
 * come out as room that there is not. And that each level has an outcome of its own.
 */
export function checkPossible(topic: Topic, note: Note): void {
  const check = (at: string, value: number, unit: string): void => {
    if (isBelow(value, unit)) note(at, `${value} ${unit} is below nothing`, 'give what it can be');
  };
  for (const [id, { unit, values }] of Object.entries(topic.parameters)) {
    for (const { value } of values) check(`parameters ${id}`, value, unit);
  }
  for (const [id, { valueUnit, rows }] of Object.entries(topic.tables)) {
    for (const [, value] of rows) check(`tables ${id}`, value, valueUnit);
  }
  for (const [id, { valueUnit, values }] of Object.entries(topic.wordTables ?? {})) {
    for (const [word, value] of Object.entries(values)) {
      check(`wordTables ${id} ${word}`, value, valueUnit);
    }
  }
  const seen = new Set<string>();
  for (const level of levels) {
    const outcome: unknown = topic.outcomes[level];
    const id = isPlain(outcome) ? String(outcome.id) : '';
    if (id === '') note(`outcomes ${level}`, 'there is none', 'give its id, words and sentence');
    else if (seen.has(id)) {
      note(`outcomes ${level}`, `another level has “${id}” too`, 'give each an id of its own');
    }
    seen.add(id);
  }
}
