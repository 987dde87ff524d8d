import { dimensionName, findUnit, unitSymbols } from '../../quantity';
import { levels, type Topic } from '../define/shapes';
import { isPlain } from './given';
import { meant } from './near';
import type { Note } from './noted';

const isDay = /^\d{4}-\d{2}-\d{2}$/;

/** Every unit that something is kept in, by its place; '' is a count. */
function unitsOf(topic: Topic): readonly (readonly [at: string, unit: string])[] {
  const { facts, parameters, tables, formulas, wordTables = {}, selections = {} } = topic;
  const of = <T>(kind: string, group: Readonly<Record<string, T>>, units: (entry: T) => string[]) =>
    Object.entries(group).flatMap(([id, entry]) =>
      units(entry).map((unit) => [`${kind} ${id}`, unit] as const),
    );
  return [
    ...of('facts', facts, (fact) =>
      fact.kind === 'quantity'
        ? [fact.unit]
        : fact.kind === 'rows'
          ? Object.values(fact.columns).map(({ unit }) => unit)
          : [],
    ),
    ...of('parameters', parameters, ({ unit }) => [unit]),
    ...of('tables', tables, ({ keyUnit, valueUnit }) => [keyUnit, valueUnit]),
    ...of('wordTables', wordTables, ({ valueUnit }) => [valueUnit]),
    ...of('formulas', formulas, ({ unit }) => (unit === 'yes-no' ? [] : [unit])),
    ...of('selections', selections, ({ amounts }) => Object.values(amounts)),
    ...of('catalogues', topic.catalogues ?? {}, ({ figures, placeUnit }) => [
      ...Object.values(figures),
      placeUnit,
    ]),
    ...Object.values(topic.simulations ?? {}).flatMap(({ states, values }) =>
      of('simulations', { ...states, ...values }, ({ unit }) => (unit === 'yes-no' ? [] : [unit])),
    ),
  ];
}

/** That numbers stand within their own ends, units are units, and days are days. */
export function checkNumbers(topic: Topic, note: Note): void {
  for (const [at, unit] of unitsOf(topic)) {
    if (unit !== '' && !findUnit(unit)) note('not-a-unit', at, unit, meant(unit, unitSymbols));
  }
  for (const [id, fact] of Object.entries(topic.facts)) {
    if (fact.kind === 'choice' && fact.options.length === 0) note('no-options', `facts ${id}`, '');
    if (fact.kind !== 'quantity') continue;
    const { unit, least, most } = fact;
    if (least > most) note('least-over-most', `facts ${id}`, '', { unit, least, most });
    const value = fact.silent?.value;
    if (value !== undefined && (value < least || value > most)) {
      note('default-outside', `facts ${id}`, `${value}`, { unit, least, most });
    }
  }
  for (const [id, { values, range, unit }] of Object.entries(topic.parameters)) {
    const at = `parameters ${id}`;
    if (values.length === 0) note('without-values', at, '');
    for (const { value, from, until } of values) {
      if (!isDay.test(from)) {
        note('not-a-date', at, from);
      }
      if (until !== undefined && !(isDay.test(until) && until >= from)) {
        note('ends-before-it-begins', at, until, { of: from });
      }
      if (range && (value < range[0] || value > range[1])) {
        const [least, most] = range;
        note('value-outside', at, `${value}`, { unit, least, most });
      }
    }
  }
  for (const [id, { rows }] of Object.entries(topic.tables)) {
    const rising = rows.every(([key], i) => i === 0 || key > (rows[i - 1]?.[0] ?? key));
    if (rows.length === 0) note('empty-table', `tables ${id}`, '');
    if (!rising) {
      note('not-rising', `tables ${id}`, rows.map(([key]) => key).join(', '), { of: 'keys' });
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
    if (isBelow(value, unit)) note('below-nothing', at, `${value}`, { unit, least: 0 });
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
    if (id === '') note('no-outcome', `outcomes ${level}`, '');
    else if (seen.has(id)) {
      note('outcome-twice', `outcomes ${level}`, id);
    }
    seen.add(id);
  }
}
