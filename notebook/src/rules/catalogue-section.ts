import { type Catalogue, ruleInWords, type Topic } from '@tarebook/rules/engine';
import { html, nothing } from 'lit';
import { sourceShown } from './names-shown';

const yearsShown = ({ years }: Catalogue, from: string, to: string | undefined): string =>
  from === years[0] && (to === undefined || to === years.at(-1))
    ? ''
    : ` (${from}–${to ?? years.at(-1)})`;

function offersShown(catalogue: Catalogue, list: string) {
  const models = Object.values(catalogue.models).filter(({ offers }) => offers === list);
  const named = (as: 'standard' | 'optional') =>
    (catalogue.offers[list] ?? [])
      .filter((offer) => offer.as === as)
      .map(
        ({ option, from, to }) =>
          `${catalogue.options[option]?.label ?? option}${yearsShown(catalogue, from, to)}`,
      )
      .join(', ');
  return html`<h3>${models
    .map(({ label, sold: [from, to] }) => `${label}${yearsShown(catalogue, from, to)}`)
    .join(', ')}</h3>
    <dl><dt>Standard</dt><dd>${named('standard') || 'nothing'}</dd>
      <dt>Optional</dt><dd>${named('optional') || 'nothing'}</dd></dl>`;
}

/** What a topic's catalogues offer, and which options need or rule out one another. */
export const catalogueSection = ({ catalogues = {} }: Topic) =>
  Object.keys(catalogues).length === 0
    ? nothing
    : html`<h2>Catalogue</h2>${Object.values(catalogues).map(
        (catalogue) => html`<p>${sourceShown(catalogue.source)}</p>
          ${Object.keys(catalogue.offers).map((list) => offersShown(catalogue, list))}
          <ul>${catalogue.rules.map((rule) => html`<li>${ruleInWords(catalogue, rule)}</li>`)}</ul>`,
      )}`;
