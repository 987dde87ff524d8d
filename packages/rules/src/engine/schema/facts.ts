import { sameDimension, unitOf, unitSymbols } from '../../quantity';
import type { Column, Fact, Topic } from '../define/shapes';

/** A JSON Schema, 2020-12, as plain data. */
export type Schema = { readonly [keyword: string]: unknown };

export const dialect = 'https://json-schema.org/draft/2020-12/schema';

type Quantity = Pick<Column, 'unit' | 'least' | 'most'>;

/** All units in which something may be told; one of temperature is no difference of temperatures. */
function unitsFor(unit: string): readonly string[] {
  if (unit === '') return ['1', ''];
  const isStep = (symbol: string): boolean => symbol === 'F°' || symbol === 'C°';
  const { dimension } = unitOf(unit);
  return unitSymbols.filter(
    (each) => sameDimension(unitOf(each).dimension, dimension) && isStep(each) === isStep(unit),
  );
}

function inUnits(units: readonly string[], number: Schema): readonly Schema[] {
  const end = { anyOf: [number, { type: 'null' }] };
  const unit = { enum: units };
  const shape = { type: 'object', additionalProperties: false };
  return [
    { ...shape, properties: { value: number, unit }, required: ['value', 'unit'] },
    { ...shape, properties: { lo: end, hi: end, unit }, required: ['lo', 'hi', 'unit'] },
  ];
}

/** One quantity: text as a person writes it, or numbers with their unit. */
function quantity({ unit, least, most }: Quantity, mayBeEmpty = false): Schema {
  const own = unit === '' ? ['1', ''] : [unit];
  const others = unitsFor(unit).filter((each) => !own.includes(each));
  const number = { type: 'number', minimum: least, maximum: most };
  return {
    anyOf: [
      { type: 'string', minLength: mayBeEmpty ? 0 : 1, maxLength: 120 },
      ...(unit === '' ? [number] : []),
      ...inUnits(own, number),
      ...(others.length > 0 ? inUnits(others, { type: 'number' }) : []),
    ],
    'x-unit': unit,
    'x-least': least,
    'x-most': most,
  };
}

/** A word in capitals or not, as a person writes it. */
const inAnyCase = (word: string): string =>
  word
    .replace(/[.*+?^${}()|[\]\\]/g, '\\$&')
    .replace(/[a-z]/g, (letter) => `[${letter}${letter.toUpperCase()}]`);

function words(options: readonly string[]): Schema {
  const one = `(?:${options.map(inAnyCase).join('|')})`;
  // “none or surge”: it is known that it is one of these.
  const written = {
    type: 'string',
    pattern: `^(?:${inAnyCase('unknown')}|${one}(?: or ${one})*)$`,
  };
  return { anyOf: [{ enum: [...options, 'unknown'] }, written], 'x-options': options };
}

function rows(columns: Readonly<Record<string, Column>>): Schema {
  const cells = Object.entries(columns).map(([id, column]) => [
    id,
    { title: column.label, ...quantity(column, !column.required) },
  ]);
  const required = Object.entries(columns).flatMap(([id, each]) => (each.required ? [id] : []));
  return {
    type: 'array',
    maxItems: 100,
    items: {
      type: 'object',
      properties: { label: { type: 'string' }, ...Object.fromEntries(cells) },
      required,
      additionalProperties: false,
    },
  };
}

function shapeOf(fact: Fact): Schema {
  switch (fact.kind) {
    case 'quantity':
      return quantity(fact);
    case 'choice':
      return words(fact.options);
    case 'yes-no':
      return words(['yes', 'no']);
    case 'rows':
      return rows(fact.columns);
  }
}

/** What a topic may be told, by fact: with the unit each is kept in, what it can be, its options. */
export function factsSchema(topic: Topic): Schema {
  const facts = Object.entries(topic.facts).map(([id, fact]) => [
    id,
    { title: fact.label, description: `${fact.ask} ${fact.where}`, ...shapeOf(fact) },
  ]);
  const old = Object.entries(topic.renamed ?? {}).flatMap(([id, renamed]) => {
    const now = typeof renamed === 'string' ? renamed : renamed.to;
    return id === now ? [] : [[id, { deprecated: true, description: `Its present id is ${now}.` }]];
  });
  return {
    $schema: dialect,
    $id: `https://example.org/tarebook/${topic.id}/${topic.version}/facts`,
    title: `${topic.title}: what it may be told`,
    type: 'object',
    properties: Object.fromEntries([...old, ...facts]),
    additionalProperties: false,
  };
}
