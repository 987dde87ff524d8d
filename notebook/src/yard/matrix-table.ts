import { levels } from '@tarebook/rules/engine';
import { isSold, nameSaid } from '@tarebook/sweep';
import { html, nothing, type TemplateResult } from 'lit';
import { mark } from '../elements/marks';
import type { Named } from './matrix-asked';
import type { Seen } from './matrix-sieve';
import { levelWords } from './matrix-words';

type Judged = {
  readonly seen: Seen;
  readonly vehicles: readonly Named[];
  readonly trailers: readonly Named[];
  /** Levels row by row. */
  readonly found: Uint8Array;
};

/** What fits, or fits with care. */
const mostThatGoes = 1;

const levelAt = ({ trailers, found }: Judged, row: number, column: number): number =>
  found[row * trailers.length + column] ?? 255;

const named = (trailer: Named | undefined): string =>
  trailer ? nameSaid(trailer.name, trailer) : '';

function countsOf(judged: Judged, row: number): readonly number[] {
  const counts = levels.map(() => 0);
  for (const column of judged.seen.columns) {
    const level = levelAt(judged, row, column);
    if (level < counts.length) counts[level] = (counts[level] ?? 0) + 1;
  }
  return counts;
}

/** Of each vehicle how many trailers; its name leads to its own row. */
export function countsTable(judged: Judged, look: (row: number) => void): TemplateResult {
  const { seen, vehicles, trailers } = judged;
  return html`<table>
    <thead><tr><th scope="col">Vehicle</th>${levels.map((level) => html`<th scope="col">${levelWords[level]}</th>`)}<th scope="col">the heaviest that fits and is not sold</th></tr></thead>
    <tbody>${seen.rows.map((row) => {
      const isOffered = (each: number): boolean => {
        const trailer = trailers[each];
        return trailer !== undefined && !isSold(trailer);
      };
      const going = seen.columns.findLast(
        (each) => levelAt(judged, row, each) <= mostThatGoes && isOffered(each),
      );
      return html`<tr><th scope="row"><button class="plain" @click=${() => look(row)}>${vehicles[row]?.name}</button></th>${countsOf(
        judged,
        row,
      ).map(
        (n) => html`<td class="num">${n}</td>`,
      )}<td>${going === undefined ? '–' : trailers[going]?.name}</td></tr>`;
    })}</tbody></table>`;
}

/** One vehicle against every trailer that is seen, in words. */
export function rowTable(
  judged: Judged,
  row: number,
  look: (column: number) => void,
): TemplateResult | typeof nothing {
  const { seen, vehicles, trailers } = judged;
  const vehicle = vehicles[row];
  if (!vehicle) return nothing;
  return html`<table class="one-row">
    <caption>${vehicle.name}</caption>
    <thead><tr><th scope="col">Trailer</th><th scope="col">Verdict</th></tr></thead>
    <tbody>${seen.columns.map((column) => {
      const level = levels[levelAt(judged, row, column)];
      return html`<tr><th scope="row"><button class="plain" @click=${() => look(column)}>${named(trailers[column])}</button></th>
        <td>${level ? html`<span class="word-of level-${level}">${mark(level)}${levelWords[level]}</span>` : '…'}</td></tr>`;
    })}</tbody></table>`;
}
