import type { Source, Topic } from '@tarebook/rules/engine';
import { html, type TemplateResult } from 'lit';
import { cited, namedIn } from './names';

export const sourceShown = (source: Source): TemplateResult =>
  html`<span class="tag">${source.class.replace('-', ' ')}</span> <span class="small soft">${cited(source)}</span>`;

const placeOf = (topic: Topic, id: string): string =>
  `#/rules/${encodeURIComponent(topic.id)}/${encodeURIComponent(id)}`;

/** What a name stands for; what is reckoned leads to its formula. */
export function nameShown(topic: Topic, id: string): TemplateResult {
  const named = namedIn(topic, id);
  if (!named) return html`<code>${id}</code>`;
  return named.kind === 'reckoned'
    ? html`<a href=${placeOf(topic, id)}>${named.label}</a>`
    : html`${named.label}`;
}
