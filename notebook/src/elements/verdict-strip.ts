import { type Answer, type Topic, urgentOf } from '@tarebook/rules/engine';
import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing, type TemplateResult } from 'lit';
import { leftOf } from './figures';
import { levelOf, mark } from './marks';

/** What stops it, in the order of the sentence; else what runs out first, or is to be found out. */
function restOf(answer: Answer, topic: Topic, system: UnitSystem) {
  const { limits, findings, missing, binding } = answer;
  const urgent = urgentOf(topic, findings);
  if (urgent) return urgent.wrong;
  const [over] = limits
    .filter(({ state }) => state === 'stop')
    .toSorted((a, b) => b.roomUsed.hi - a.roomUsed.hi);
  const stop = findings.find(({ level }) => level === 'stop');
  if (stop && !over) return stop.wrong;
  const limit = over ?? limits.find(({ id }) => id === binding);
  if (limit) return html`${limit.label}: ${leftOf(limit, system)}`;
  const [first] = missing;
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
