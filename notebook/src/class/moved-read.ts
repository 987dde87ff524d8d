import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing } from 'lit';
import { mark } from '../elements/marks';
import { sentenceBeneath } from '../state/beneath';
import { judge } from '../state/judged';
import { levelOf } from '../state/level';
import type { Shown } from './channel';
import { foundWords, questionOf } from './predict';
import type { Walked } from './record';
import { limitRead } from './shown-limit';

/** What comes out with a fact moved, and what came out before, as both windows show it. */
export function movedRead(
  moved: NonNullable<Shown['moved']>,
  { answer: filed, question: asked }: Walked,
  system: UnitSystem,
) {
  const { doc, answer } = judge(moved.text, undefined, system);
  if (!answer) return nothing;
  const level = doc.topic ? levelOf(doc.topic.outcomes, answer.outcome) : 'unknown';
  const question = questionOf(doc, answer);
  return html`<p class="what-if">${moved.says}</p>
    <section class="verdict level-${level}">
      ${mark(level)}
      <p class="word">${answer.words.charAt(0).toUpperCase()}${answer.words.slice(1)}</p>
      <p>${sentenceBeneath(doc.topic, answer, system)}</p>
    </section>
    ${
      question.kind === 'number'
        ? html`<p>${question.label}: <strong class="num">${foundWords(question, system)}</strong>${
            asked.kind === 'number' && asked.result === question.result
              ? `, and before ${foundWords(asked, system)}`
              : ''
          }</p>`
        : nothing
    }
    ${limitRead(doc.topic, answer, system, filed) ?? nothing}
    <p>Before: ${filed.words}.</p>`;
}
