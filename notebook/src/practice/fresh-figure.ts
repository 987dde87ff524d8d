import { readQuantity, showNumber, wasMisread } from '@tarebook/rules/quantity';

/** What is weighed, driven, drawn or stored; sizes, voltages and pressures are stamped and stay. */
const moving = new Set([
  ...['lb', 'kg', 'mi', 'km', 'Ah', 'Wh', 'W', 'h', 'gal', 'L', 'USD', 'A', 'Btu/h', '%'],
]);

/** How long something runs and what it draws differ from camp to camp however small they are. */
const small: Readonly<Record<string, number>> = { h: 2, A: 2 };

/** Figures up to 40 are bottles, batteries and counts, which are sold in sizes. */
const least = 41;

const plain = /^(\d[\d,]*(?:\.\d+)?)( [^\d\s]+)?$/;

/** The finest place a figure is told to: 3,150 to tens, 4,480.5 to tenths; never coarser than a twentieth. */
function placeOf(written: string, value: number): number {
  const [whole = '', part] = written.replaceAll(',', '').split('.');
  const told = part ? 10 ** -part.length : 10 ** (/0*$/.exec(whole)?.[0].length ?? 0);
  return Math.min(told, 10 ** Math.floor(Math.log10(value / 20)));
}

/**
 * A figure as somebody else's label might say it: `3,150 lb` times 1.07 is `3,370 lb`.
 *
 * @param unit what a figure without one is in
 * @returns undefined where it is no single figure, or one that never changes
 */
export function freshFigure(text: string, unit: string, times: number): string | undefined {
  const [, written = '', own = ''] = plain.exec(text.trim()) ?? [];
  const read = readQuantity(text);
  if (written === '' || wasMisread(read)) return undefined;
  const value = Number(written.replaceAll(',', ''));
  const measured = own.trim() || unit;
  if (!moving.has(measured) || value < (small[measured] ?? least)) return undefined;
  const place = placeOf(written, value);
  const made = Math.round((value * times) / place) * place;
  return `${showNumber(made, place < 1 ? 1 : 0)}${own}`;
}
