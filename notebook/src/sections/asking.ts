import { addRow } from '@tarebook/casebook';
import type { Topic } from '@tarebook/rules/engine';
import { html, nothing } from 'lit';
import '../elements/ask-one';
import { factErrors } from './blocks';
import type { CaseView, Section } from './case-view';

/** Lists nobody has said anything of yet count as empty, so they are offered. */
function lists(view: CaseView, topic: Topic) {
  return Object.entries(topic.facts).flatMap(([id, fact]) => {
    if (fact.kind !== 'rows' || view.doc.facts[id] !== undefined) return [];
    const needed = Object.keys(fact.columns).filter((column) => fact.columns[column]?.required);
    const cells = Object.fromEntries(needed.map((column) => [column, 'unknown']));
    const add = () => view.edit((now) => addRow(now, id, 'Not named yet', cells), id);
    return [html`<li>${fact.ask} <button @click=${add}>Add: ${fact.label}</button></li>`];
  });
}

/** In a case of one's own: what is still to be found out, one question at a time. */
export const asking: Section = (view) => {
  const { doc, topic, answer, filed } = view;
  if (filed || !topic || !answer) return nothing;
  const values = Object.fromEntries(
    doc.blocks.flatMap((block) =>
      block.kind === 'facts' ? block.rows.map(({ id, value }) => [id, value]) : [],
    ),
  );
  const open = answer.missing
    .map(({ fact }) => fact)
    .filter((id) => topic.facts[id]?.kind !== 'rows');
  const left = open.length === 0 ? lists(view, topic) : [];
  return html`
    <ask-one .topic=${topic} .open=${open} .values=${values} .errors=${factErrors(doc)}></ask-one>
    ${left.length === 0 ? nothing : html`<details class="ask" open><summary>Counted as none so far</summary><ul>${left}</ul></details>`}`;
};
