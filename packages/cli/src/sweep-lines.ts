import type { Pair } from '@tarebook/sweep/many';

/** A cell as CSV has it: in quotes where it would be read as more than one. */
export const cellOf = (text: string): string =>
  /[",\n\r]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;

export const head = 'vehicle,trailer,outcome,binding,left_lo,left_hi,unit\n';

/** An open end has no figure. */
const figure = (value: number | undefined): string =>
  value === undefined || !Number.isFinite(value) ? '' : `${value}`;

export const lineOf = ({ vehicle, trailer, outcome, binding, left }: Pair): string =>
  `${cellOf(vehicle)},${cellOf(trailer)},${outcome},${binding ?? ''},${figure(left?.lo)},${figure(left?.hi)},${left?.unit ?? ''}\n`;
