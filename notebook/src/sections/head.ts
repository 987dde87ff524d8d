import type { CaseDocument } from '@tarebook/casebook';
import { html, nothing } from 'lit';
import type { Section } from './case-view';

/** Troubles that no field shows beside itself. */
function stray({ blocks, troubles }: CaseDocument) {
  const places = blocks.flatMap((block) =>
    block.kind === 'facts'
      ? block.rows.flatMap((row) => [row.valueSpan.start, row.idPlace])
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

/** Who asked, what about, and whatever stands in the way of an answer. */
export const head: Section = ({ doc, topic, notice }) => {
  const { front } = doc;
  return html`
    <p class="soft small">
      ${front.asked ? `Asked: ${front.asked} · ` : ''}${topic?.title ?? front.topic}${front.level ? ` · ${front.level}` : ''}
    </p>
    <h1>${front.title}</h1>
    ${notice ? html`<p class="notice" role="alert">${notice}</p>` : nothing}
    ${stray(doc)}
  `;
};
