import { unitOf } from '../../quantity';
import type { Fact, Topic } from '../define/shapes';
import type { AmongInput, Input, Inputs, NumberInput, RowsInput } from '../value/values';
import { example, type Note, openNumber, readNumber } from './cells';
import { described, isPlain } from './given';
import { nearest } from './near';
import type { Problem } from './problem';
import { presentFacts } from './renamed';

const isUnknown = (given: unknown): boolean =>
  typeof given === 'string' && given.trim().toLowerCase() === 'unknown';

function readOption(
  given: unknown,
  options: readonly string[],
  fact: string,
  note: Note,
): AmongInput {
  if (isUnknown(given)) return { kind: 'among', options, status: 'unknown' };
  const text = typeof given === 'string' ? given.trim() : '';
  const option = options.find((each) => each === text.toLowerCase());
  if (option) return { kind: 'among', options: [option], status: 'known' };
  // “none or surge”: it is known that it is one of these.
  const several = text.toLowerCase().split(/\s+or\s+/);
  if (several.length > 1 && several.every((each) => options.includes(each))) {
    return {
      kind: 'among',
      options: options.filter((each) => several.includes(each)),
      status: 'known',
    };
  }
  const wanted = [...options, 'unknown'].join(', ');
  const asYes = options.includes('yes') && typeof given === 'boolean' && (given ? 'yes' : 'no');
  const near = asYes || (text && nearest(text, options));
  const found = described(given);
  note({
    code: 'no-such-option',
    fact,
    found,
    wanted,
    options: [...options, 'unknown'],
    ...(near && { near }),
  });
  return { kind: 'among', options, status: 'unknown' };
}

/** A loading list has a tenth of it; what is reckoned for each row grows with the rows. */
const mostRows = 100;

function readRows(
  given: unknown,
  id: string,
  fact: Fact & { kind: 'rows' },
  note: Note,
): RowsInput {
  const options = Object.keys(fact.columns);
  const columns = options.join(', ');
  if (!Array.isArray(given)) {
    note({
      code: 'not-rows',
      fact: id,
      found: described(given),
      wanted: `rows with the columns ${columns}`,
      options,
    });
    return { kind: 'rows', rows: [], status: 'unknown' };
  }
  if (given.length > mostRows) {
    note({
      code: 'too-many-rows',
      fact: id,
      found: `${given.length}`,
      wanted: `${mostRows}`,
      most: mostRows,
    });
    return { kind: 'rows', rows: [], status: 'unknown' };
  }
  const rows = given.map((row: unknown, index) => {
    const cells: Record<string, NumberInput> = {};
    const at = { fact: id, row: index + 1 };
    if (!isPlain(row)) {
      note({
        ...at,
        code: 'not-a-row',
        found: described(row),
        wanted: `its cells by column, ${columns}`,
        options,
      });
      return cells;
    }
    for (const column of Object.keys(row)) {
      if (column === 'label' || Object.hasOwn(fact.columns, column)) continue;
      const near = nearest(column, options);
      note({
        ...at,
        code: 'no-such-column',
        found: column,
        wanted: columns,
        options,
        ...(near && { near }),
      });
    }
    for (const [column, want] of Object.entries(fact.columns)) {
      const cell = row[column];
      const place = { ...at, column: want.label, columnId: column };
      if (cell !== undefined && cell !== '') cells[column] = readNumber(cell, want, place, note);
      else {
        cells[column] = openNumber(want, 'silent');
        if (want.required) {
          note({
            ...place,
            code: 'missing-cell',
            found: '',
            wanted: `${example(want.unit)}, or unknown`,
            unit: want.unit,
            least: want.least,
            most: want.most,
          });
        }
      }
    }
    return cells;
  });
  return { kind: 'rows', rows, status: 'known' };
}

/** What a fact is taken for where nobody says anything of it. */
export function silentInput(fact: Fact): Input {
  switch (fact.kind) {
    case 'rows':
      return { kind: 'rows', rows: [], status: 'silent' };
    case 'quantity': {
      if (!fact.silent) return openNumber(fact, 'silent');
      const value = fact.silent.value * (fact.unit === '' ? 1 : unitOf(fact.unit).factor);
      return { kind: 'number', lo: value, hi: value, status: 'silent', open: false };
    }
    case 'choice':
      return {
        kind: 'among',
        options: fact.silent ? [fact.silent.value] : fact.options,
        status: 'silent',
      };
    case 'yes-no':
      return {
        kind: 'among',
        options: fact.silent ? [fact.silent.value] : ['yes', 'no'],
        status: 'silent',
      };
  }
}

function readFact(given: unknown, id: string, fact: Fact, note: Note): Input {
  switch (fact.kind) {
    case 'rows':
      return readRows(given, id, fact, note);
    case 'choice':
      return readOption(given, fact.options, id, note);
    case 'yes-no':
      return readOption(given, ['yes', 'no'], id, note);
    case 'quantity': {
      return readNumber(given, fact, { fact: id }, note);
    }
  }
}

export type Read = { readonly inputs: Inputs; readonly problems: readonly Problem[] };

/**
 * Reads all facts of a case against its topic; all problems are told at once. A fact that is named and
 * is `undefined` or null is refused as any mistake is, never taken for one of which nobody spoke: a
 * rating read from a field that is misspelled would otherwise be no objection.
 */
export function readFacts(topic: Topic, raw: Readonly<Record<string, unknown>>): Read {
  const { facts: given, problems: twice } = presentFacts(topic, raw);
  const problems: Problem[] = [...twice];
  const note: Note = (problem) => problems.push(problem);
  for (const id of Object.keys(given)) {
    if (Object.hasOwn(topic.facts, id)) continue;
    const near = nearest(id, Object.keys(topic.facts));
    note({ code: 'no-such-fact', fact: id, found: id, wanted: topic.id, ...(near && { near }) });
  }
  const inputs = new Map<string, Input>();
  for (const [id, fact] of Object.entries(topic.facts)) {
    inputs.set(
      id,
      Object.hasOwn(given, id) ? readFact(given[id], id, fact, note) : silentInput(fact),
    );
  }
  return { inputs, problems };
}
