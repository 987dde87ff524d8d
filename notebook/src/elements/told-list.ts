import type { FindingAnswer, Missing } from '@tarebook/rules/engine';
import { html, nothing } from 'lit';
import { mark } from './marks';

/** What to find out first: the question, where to read it, and where the verdict tips. */
export const missingList = (missing: readonly Missing[]) =>
  missing.length === 0
    ? nothing
    : html`<h2>Find out first</h2>
        <ul>
          ${missing.map(
            ({ label, ask, where, says }) =>
              html`<li><strong>${label}.</strong> ${ask} <span class="soft">Read it from: ${where}.</span> ${says}</li>`,
          )}
        </ul>`;

/** What is said beside the limits, the gravest first; what is in order is not repeated. */
export function findingList(findings: readonly FindingAnswer[]) {
  const order = ['stop', 'unknown', 'care'];
  const told = findings
    .filter(({ level }) => order.includes(level))
    .toSorted((a, b) => order.indexOf(a.level) - order.indexOf(b.level));
  if (told.length === 0) return nothing;
  return html`<h2>Also</h2>
    <ul>
      ${told.map(
        ({ label, level, says }) =>
          html`<li class="level-${level}"><span class="word-of">${mark(level)}${label}</span> ${says}</li>`,
      )}
    </ul>`;
}
