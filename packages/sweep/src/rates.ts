import type { RefusedRow } from './sheet';
import { readTable, type Wanted } from './table';

/** One work of the house's rate book. */
export type Rate = {
  readonly work: string;
  readonly label: string;
  readonly hours: number;
  /** Dollars. */
  readonly perHour: number;
  readonly parts: number;
};

/**
 * What the house asks for its work. Its figures are the house's own choice, and those that are
 * shipped are invented.
 */
export type RateBook = {
  readonly rates: readonly Rate[];
  readonly source: 'house' | 'invented';
  readonly refused: readonly RefusedRow[];
};

export const rateColumns: Readonly<Record<string, Wanted>> = {
  work: { called: ['id', 'code', 'job'], isNeeded: true },
  label: { called: ['name', 'what', 'description'] },
  hours: { called: ['time', 'flat time'], unit: 'h', most: 200, isNeeded: true },
  perHour: {
    called: ['per hour', 'rate', 'hourly rate', 'labor rate', 'an hour'],
    unit: '',
    least: 1,
    most: 1000,
    isNeeded: true,
  },
  parts: { called: ['materials', 'parts and materials'], unit: '', most: 100_000 },
};

/** A rate book from its file, row by row. */
export function readRates(text: string, source: RateBook['source']): RateBook {
  const { rows, refused } = readTable('rates.csv', text, rateColumns, 'work');
  const rates = rows.map(({ texts: { work = '', label = work }, numbers }) => ({
    ...{ work, label },
    ...{ hours: numbers.hours ?? 0, perHour: numbers.perHour ?? 0, parts: numbers.parts ?? 0 },
  }));
  return { rates, source, refused };
}

/** `$1,234`, to the whole dollar. */
const money = (dollars: number): string => `$${Math.round(dollars).toLocaleString('en-US')}`;

/** What a work comes to, with how it is made up and whose figures they are. */
export function rateSaid({ hours, perHour, parts }: Rate, source: RateBook['source']): string {
  const own = source === 'house' ? 'by the rate book of the house' : 'by an invented rate book';
  const made = `${hours} h at ${money(perHour)} an hour${parts > 0 ? ` and ${money(parts)} of parts` : ''}`;
  return `${money(hours * perHour + parts)}: ${made}, ${own}`;
}
