import { findUnit, sameDimension, unitOf } from '../../quantity';
import type { Source } from '../define/shapes';

/** How far off a number may plausibly be, either way: a share of it, or an amount. */
type Off = { readonly share: number } | { readonly amount: number; readonly unit: string };

type Doubt = {
  /** Words of where a number was read. */
  readonly words: readonly string[];
  /** The first that has the number’s kind of unit counts; a share has every kind. */
  readonly off: readonly Off[];
};

/** Every number of this page is a choice of the house; none of them moves a result or a verdict. */
export const offSource: Source = {
  class: 'house',
  cite: 'Choice of the dealer',
  note: 'How far off a number may be by where it was read; only to tell which is worth a second look.',
};

/** A step of the scale, an inch of the tape, 3 % of a brochure. The first that matches counts. */
const doubts: readonly Doubt[] = [
  { words: ['kitchen scale', 'bathroom scale'], off: [{ amount: 2, unit: 'lb' }] },
  { words: ['scale', 'weighed'], off: [{ amount: 20, unit: 'lb' }] },
  { words: ['tape', 'measured'], off: [{ amount: 1, unit: 'in' }] },
  { words: ['cylinder', 'box', 'stamp'], off: [{ share: 0.02 }] },
  { words: ['sticker', 'label', 'plate', 'manual'], off: [{ share: 0.01 }] },
  { words: ['brochure', 'booklet'], off: [{ share: 0.03 }] },
];

/** What people tell from memory, and what nobody says where it was read. */
const estimate: readonly Off[] = [{ share: 0.1 }];

/** How far off a number may plausibly be by where it was read; base units. */
export function plausiblyOff(readFrom: string, value: number, unit: string): number {
  const place = readFrom.toLowerCase();
  const found = doubts.find(({ words }) => words.some((word) => place.includes(word)));
  for (const each of [...(found?.off ?? []), ...estimate]) {
    if ('share' in each) return Math.abs(value) * each.share;
    const own = findUnit(each.unit);
    if (own && unit !== '' && sameDimension(own.dimension, unitOf(unit).dimension)) {
      return each.amount * own.factor;
    }
  }
  return 0;
}
