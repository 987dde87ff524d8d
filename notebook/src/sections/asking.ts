import { html, nothing } from 'lit';
import '../elements/ask-one';
import { factErrors } from './blocks';
import type { Section } from './case-view';

/** In a case of one's own: what is still to be found out, one question at a time. */
export const asking: Section = ({ doc, topic, answer, filed }) => {
  if (filed || !topic || !answer) return nothing;
  const values = Object.fromEntries(
    doc.blocks.flatMap((block) =>
      block.kind === 'facts' ? block.rows.map(({ id, value }) => [id, value]) : [],
    ),
  );
  const open = answer.missing
    .map(({ fact }) => fact)
    .filter((id) => topic.facts[id]?.kind !== 'rows');
  return html`<ask-one .topic=${topic} .open=${open} .values=${values} .errors=${factErrors(doc)}></ask-one>`;
};
