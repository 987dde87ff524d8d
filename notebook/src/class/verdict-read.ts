import { html } from 'lit';
import { mark } from '../elements/marks';
import { levelOf } from '../state/level';
import type { Walked } from './record';

/** The verdict of a case with its sentence, as a class reads it. */
export function verdictRead({ doc, answer }: Pick<Walked, 'doc' | 'answer'>) {
  const level = doc.topic ? levelOf(doc.topic.outcomes, answer.outcome) : 'unknown';
  return html`<section class="verdict level-${level}" aria-label="Verdict">
    ${mark(level)}
    <p class="word">${answer.words.charAt(0).toUpperCase()}${answer.words.slice(1)}</p>
    <p>${answer.sentence}</p>
  </section>`;
}
