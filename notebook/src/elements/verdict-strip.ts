import type { Answer, State } from '@tarebook/rules/engine';
import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing, type TemplateResult } from 'lit';
import { leftOf } from './figures';
import { mark } from './marks';

/** The verdict in a line that stays in sight while facts are changed, and leads to the whole. */
export function verdictStrip(
  answer: Answer,
  level: State,
  system: UnitSystem,
  onwards: () => void,
): TemplateResult {
  const binding = answer.limits.find(({ id }) => id === answer.binding);
  const [first] = answer.missing;
  const rest = binding
    ? html`${binding.label}: ${leftOf(binding, system)}`
    : first
      ? html`find out: ${first.label.toLowerCase()}`
      : nothing;
  return html`<p class="strip level-${level}">
    <button @click=${onwards}>
      <span class="word-of">${mark(level)}${answer.words}</span> <span>${rest}</span><span class="hidden">; to the verdict</span>
    </button>
  </p>`;
}
