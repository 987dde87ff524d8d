import type { Source } from '@tarebook/rules/engine';
import { html, type TemplateResult } from 'lit';

/** A source as one would cite it. */
export const cited = ({ cite, section, note }: Source): string =>
  `${cite}${section ? `, ${section}` : ''}${note ? `. ${note}` : ''}`;

/** A source with its class before it. */
export const sourceNote = (source: Source): TemplateResult =>
  html`<span class="tag">${source.class.replace('-', ' ')}</span> <span class="soft small">${cited(source)}</span>`;
