import { asWritten, type RowGiven } from '@tarebook/rules/engine';
import { html, nothing, type TemplateResult } from 'lit';
import { isEnough, isRatingOnly, packedAsTold, refusedIn, type Told } from './told';
import type { YardSearch } from './yard-search';

const packedSaid = (load: string): string => {
  if (load === '') return 'nothing packed';
  return load === packedAsTold ? 'packed as in the case' : `packed for ${load}`;
};

const ridingSaid = (rows: readonly RowGiven[]): string =>
  rows.map(({ label, weight }) => `${label} ${asWritten(weight ?? 'unknown')}`).join(', ');

const aboardSaid = ({ aboard: { adult, child, dog }, riding, load }: Told): string =>
  riding
    ? `Counted as in the case: ${ridingSaid(riding)}, ${packedSaid(load)}.`
    : `Counted: ${adult} at 150 lb${child > 0 ? `, ${child} at 80 lb` : ''}${dog > 0 ? `, ${dog} at 60 lb` : ''}, ${packedSaid(load)}.`;

/** Which ones, as one says it across the counter, and on what it rests; else what is still to be told. */
export function yardSentence(
  told: Told,
  { found, waiting, notice }: Pick<YardSearch, 'found' | 'waiting' | 'notice'>,
): TemplateResult {
  const refused = refusedIn(told);
  if (refused.length > 0) return html`<p class="say soft">Not read: ${refused.join(', ')}.</p>`;
  if (notice) return html`<p class="error" role="alert">${notice}</p>`;
  if (!isEnough(told)) {
    return html`<p class="say soft">${
      told.way === 'trailers'
        ? 'Tell what they drive, or only what it is rated to pull: one figure is enough.'
        : 'Tell which trailer, or only its own maximum: one figure is enough.'
    }</p>`;
  }
  if (!found) return html`<p class="say soft">Going through the yard …</p>`;
  return html`<div class="say ${waiting ? 'stale' : ''}" role="status" data-took=${found.took.toFixed(1)}>
    <p>${found.sentence}</p>
    ${found.sleeps ? html`<p>${found.sleeps}</p>` : nothing}
    ${found.next ? html`<p class="soft">${found.next}</p>` : nothing}
    ${isRatingOnly(told) ? html`<p class="small soft">Only the rating is told, so each trailer counts at its own maximum, whatever is packed.</p>` : nothing}
    ${told.riding || told.aboard.adult > 0 ? html`<p class="small soft">${aboardSaid(told)}</p>` : nothing}
  </div>`;
}
