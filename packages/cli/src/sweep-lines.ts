import type { Found, Sweeper, Swept } from '@tarebook/sweep/many';

/** A cell as CSV has it: in quotes where it would be read as more than one. */
export const cellOf = (text: string): string =>
  /[",\n\r]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;

export const head = 'vehicle,trailer,outcome,binding,left_lo,left_hi,unit\n';

/** An open end has no figure. */
const figure = (value: number | undefined): string =>
  value === undefined || !Number.isFinite(value) ? '' : `${value}`;

/** So many lines are one piece of text. */
const linesInPiece = 2048;

/** Pairs as lines of CSV, in pieces, vehicle by vehicle. */
export function* linesOf(
  { outcomes, limits }: Pick<Sweeper, 'outcomes' | 'limits'>,
  vehicles: readonly Swept[],
  trailerCells: readonly string[],
  found: Found,
): Generator<string> {
  const ends = limits.map(({ unit }) => `,${unit}\n`);
  // A verdict and what binds, as they stand between the trailer and what is left.
  const between = outcomes.map((outcome) => [
    ...limits.map(({ id }) => `,${outcome},${id},`),
    `,${outcome},,,,\n`,
  ]);
  let [text, lines, at] = ['', 0, 0];
  for (const { name } of vehicles) {
    const vehicle = `${cellOf(name)},`;
    for (const trailer of trailerCells) {
      const binding = found.bindings[at] ?? -1;
      const some = between[found.levels[at] ?? 0] ?? [];
      text += vehicle + trailer;
      if (binding < 0) text += some[limits.length] ?? '';
      else {
        const [lo, hi] = [found.leftLo[at], found.leftHi[at]];
        const low = figure(lo);
        text += `${some[binding] ?? ''}${low},${lo === hi ? low : figure(hi)}${ends[binding] ?? ''}`;
      }
      at += 1;
      lines += 1;
      if (lines < linesInPiece) continue;
      yield text;
      [text, lines] = ['', 0];
    }
  }
  if (text !== '') yield text;
}
