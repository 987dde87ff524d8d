import { type Answer, gravestFirst } from '@tarebook/rules/engine';
import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing } from 'lit';
import { restating } from '../state/restated';
import { mark } from './marks';

/** What to find out first: the question, where to read it, and where the verdict tips. */
export function missingList(answer: Answer, system: UnitSystem) {
  const { missing } = answer;
  if (missing.length === 0) return nothing;
  const restated = restating(answer, system);
  return html`<h2>Find out first</h2>
        <ul>
          ${missing.map(
            ({ label, ask, where, says }) =>
              html`<li><strong>${label}.</strong> ${ask} <span class="soft">Read it from: ${where}.</span> ${restated(says)}</li>`,
          )}
        </ul>`;
}

/** What is said beside the limits, the gravest first; what is in order is not repeated. */
export function findingList(answer: Answer, system: UnitSystem) {
  const told = gravestFirst(answer.findings);
  if (told.length === 0) return nothing;
  const restated = restating(answer, system);
  return html`<h2>Also</h2>
    <ul>
      ${told.map(
        ({ label, level, says }) =>
          html`<li class="level-${level}"><span class="word-of">${mark(level)}${label}</span> ${restated(says)}</li>`,
      )}
    </ul>`;
}
