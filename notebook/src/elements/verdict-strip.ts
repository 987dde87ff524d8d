import { type Answer, gist, type Topic, urgentOf } from '@tarebook/rules/engine';
import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing, type TemplateResult } from 'lit';
import { leftOf } from './figures';
import { levelOf, mark } from './marks';

/** What is to be done at once; else the limit that runs out first, or what to find out. */
function restOf(answer: Answer, topic: Topic, system: UnitSystem) {
  const urgent = urgentOf(topic, answer.findings);
  if (urgent) return gist(urgent.says);
  const binding = answer.limits.find(({ id }) => id === answer.binding);
  if (binding) return html`${binding.label}: ${leftOf(binding, system)}`;
  const [first] = answer.missing;
  return first ? html`find out: ${first.label.toLowerCase()}` : nothing;
}

/** The verdict in a line that stays in sight while facts are changed, and leads to the whole. */
export function verdictStrip(
  answer: Answer,
  topic: Topic,
  system: UnitSystem,
  onwards: () => void,
): TemplateResult {
  const level = levelOf(topic.outcomes, answer.outcome);
  return html`<p class="strip level-${level}">
    <button @click=${onwards}>
      <span class="word-of">${mark(level)}${answer.words}</span> <span>${restOf(answer, topic, system)}</span><span class="hidden">; to the verdict</span>
    </button>
  </p>`;
}
