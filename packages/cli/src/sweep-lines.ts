import type { Found, Hits, Sweeper, Swept } from '@tarebook/sweep/many';

/** A cell as CSV has it: in quotes where it would be read as more than one. */
export const cellOf = (text: string): string =>
  /[",\n\r]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;

const columns = 'vehicle,trailer,outcome,binding,left_lo,left_hi,unit';
export const head = `${columns}\n`;

/** Outcomes as columns: the share of the draws in which a pair came to each. */
const chanceColumns = (outcomes: readonly string[]): readonly string[] =>
  outcomes.map((outcome) => `chance_${outcome.replaceAll('-', '_')}`);

/** The head of a file with chances. */
export const headWith = (outcomes: readonly string[]): string =>
  `${[columns, ...chanceColumns(outcomes)].join(',')}\n`;

/** In how many draws each pair came to which outcome. */
type Drawn = { readonly draws: number; readonly hits: Hits };

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
  drawn?: Drawn,
): Generator<string> {
  const end = drawn ? '' : '\n';
  const ends = limits.map(({ unit }) => `,${unit}${end}`);
  // A verdict and what binds, as they stand between the trailer and what is left.
  const between = outcomes.map((outcome) => [
    ...limits.map(({ id }) => `,${outcome},${id},`),
    `,${outcome},,,,${end}`,
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
      if (drawn)
        text += `${drawn.hits.map((all) => `,${(all[at] ?? 0) / drawn.draws}`).join('')}\n`;
      at += 1;
      lines += 1;
      if (lines < linesInPiece) continue;
      yield text;
      [text, lines] = ['', 0];
    }
  }
  if (text !== '') yield text;
}
