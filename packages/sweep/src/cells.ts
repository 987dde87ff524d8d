import type { Fact } from '@tarebook/rules/engine';
import { readQuantity, wasMisread } from '@tarebook/rules/quantity';

/** What a cell says, or why it cannot be taken. */
export type CellRead = { readonly text: string } | { readonly says: string };

const empty = new Set(['', '-', '–', '—', '?', 'n/a', 'na', 'n.a.', 'tbd', 'unknown', '#n/a']);
const yes = new Set(['yes', 'y', 'true', 'x', '✓', 'ja']);
const no = new Set(['no', 'n', 'false', 'nein']);

export const isBare = (cell: string): boolean => /^[-+−]?[\d.,\s\u00a0\u202f]+$/.test(cell);

/** A number, a range or “about” a number, that says no unit of its own. */
export function isUnitless(cell: string): boolean {
  if (isBare(cell)) return true;
  const read = readQuantity(cell);
  return !wasMisread(read) && read.unit === undefined;
}

/** A spreadsheet would run it once the file is saved and opened again. */
export const isFormula = (cell: string): boolean => /^[=@]|^[+-](?![\d.,\s])/.test(cell);

const shown = (cell: string): string => `“${cell.slice(0, 40)}”`;

/**
 * A number with a comma before its decimals, as sheets with semicolons have it, as it is written here.
 *
 *     1.450,5   ►   1450.5          3,500   may be either
 */
function withPoint(cell: string): CellRead {
  const [number = '', rest = ''] = [
    /^[-+−]?[\d.,]+/.exec(cell)?.[0] ?? '',
    cell.replace(/^[-+−]?[\d.,]+/, ''),
  ];
  if (/^[-+−]?\d{1,3},\d{3}$/.test(number)) {
    const [whole = '', part = ''] = number.split(',');
    return {
      says: `${shown(cell)} may be ${whole}${part} or ${whole}.${part}; write it without a comma.`,
    };
  }
  if (/^[-+−]?(\d+|\d{1,3}(\.\d{3})+),\d+$/.test(number)) {
    return { text: `${number.replaceAll('.', '').replace(',', '.')}${rest}` };
  }
  if (/^[-+−]?\d{1,3}(\.\d{3}){2,}$/.test(number)) {
    return { text: `${number.replaceAll('.', '')}${rest}` };
  }
  return { text: cell };
}

/**
 * A quantity as it is written, with its unit.
 *
 * @param unit what a bare number is in, by the head of its column
 */
export function quantity(cell: string, unit: string | undefined, semicolons: boolean): CellRead {
  const plain = semicolons ? withPoint(cell) : { text: cell };
  if ('says' in plain) return plain;
  const { text } = plain;
  return { text: unit && isUnitless(text) ? `${text} ${unit}` : text };
}

/**
 * A cell as a fact says it.
 *
 * @param unit that the head of its column names
 * @param semicolons whether semicolons stand between cells, so that commas may stand before decimals
 */
export function readCell(
  cell: string,
  fact: Fact | undefined,
  unit: string | undefined,
  semicolons: boolean,
): CellRead {
  const low = cell.toLowerCase();
  if (empty.has(low)) return { text: '' };
  if (isFormula(cell)) return { says: `${shown(cell)} is a formula; put its value there.` };
  if (!fact) return { text: cell };
  if (fact.kind === 'yes-no') return { text: yes.has(low) ? 'yes' : no.has(low) ? 'no' : cell };
  if (fact.kind === 'choice') {
    const option = fact.options.find(
      (each) => each.replaceAll('-', ' ') === low.replaceAll('-', ' '),
    );
    return { text: option ?? cell };
  }
  return fact.kind === 'quantity' ? quantity(cell, unit, semicolons) : { text: cell };
}
