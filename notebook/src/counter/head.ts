import type { Block, CaseDocument } from '@tarebook/casebook';
import { html, nothing } from 'lit';
import type { CaseView, Section } from '../sections/case-view';
import { firstWords } from '../sections/first-words';
import { onceAsked } from '../sections/once-shown';
import { partsOf } from '../sections/parts';
import { canRedo, canUndo, redo, undo } from '../state/history';
import { fold } from './case-fold';

/** Troubles that no field shows beside itself. */
export function stray({ blocks, troubles }: CaseDocument) {
  const places = blocks.flatMap((block) =>
    block.kind === 'facts'
      ? block.rows.map((row) => row.valueSpan.start)
      : block.kind === 'list'
        ? block.rows.flatMap((row) => Object.values(row.cells).map((cell) => cell.span.start))
        : [],
  );
  const left = troubles.filter(
    ({ line, column }) => !places.some((place) => place.line === line && place.column === column),
  );
  if (left.length === 0) return nothing;
  return html`<div class="notice" role="alert">
    ${left.map(({ line, column, says }) => html`<p>Line ${line}, column ${column}: ${says}</p>`)}
  </div>`;
}

const steps = ({ history, go }: CaseView) => html`<div class="steps-back noprint">
  <button type="button" ?disabled=${!canUndo(history)} @click=${() => go(undo)}>Undo</button>
  <button type="button" ?disabled=${!canRedo(history)} @click=${() => go(redo)}>Redo</button>
</div>`;

const words = onceAsked(() => import('../sections/case-words'));

function asAsked(view: CaseView, blocks: readonly Block[]) {
  words();
  return html`<case-words .view=${view} .blocks=${blocks}></case-words>`;
}

/** What the case is called, what stands in the way of an answer, and what was asked. */
export const head: Section = (view) => {
  const { doc, topic, notice } = view;
  const { front, blocks } = doc;
  const { question } = partsOf(blocks);
  const asked = question.length > 0 && firstWords(question) !== (topic?.question ?? '');
  return html`
    <div class="case-head">
      <p class="soft small">
        ${topic?.title ?? front.topic}${front.level ? ` · ${front.level}` : ''}${front.asked ? ` · asked: ${front.asked}` : ''}
      </p>
      ${steps(view)}
      <h1>${front.title}</h1>
    </div>
    ${notice ? html`<p class="notice" role="alert">${notice}</p>` : nothing}
    ${stray(doc)}
    ${
      asked
        ? html`<div class="question">${fold({ name: 'question', heading: firstWords(question) }, () => asAsked(view, question))}</div>`
        : nothing
    }
  `;
};
