import type { Block } from '@tarebook/casebook';
import type { Topic } from '@tarebook/rules/engine';
import { html, nothing } from 'lit';
import type { CaseView, Section } from '../sections/case-view';
import { onceDrawn } from '../sections/once-shown';
import { edits } from '../state/editing';
import { groupsOf } from '../state/groups';
import { movedFacts } from '../state/judged';
import { peopleInWords, peopleList, rowsOf } from '../state/people';
import { fold } from './case-fold';
import './fact-row';
import './load-keys';
import './next-question';
import './people-steppers';

/** Lists stand below the facts, and people's weights are folded. */
const rowsSoon = onceDrawn(() => import('./row-list'));

type ListBlock = Block & { kind: 'list' };

const listsIn = ({ doc }: CaseView): readonly ListBlock[] =>
  doc.blocks.filter((block): block is ListBlock => block.kind === 'list');

/** Facts that differ from the case as filed, with what was filed; '' where it was not there. */
function movedFrom({ filed, doc }: CaseView): Readonly<Record<string, string>> {
  if (!filed) return {};
  const { facts } = filed.doc;
  return Object.fromEntries(
    movedFacts(filed.doc, doc).map((id) => {
      const before = facts[id];
      return [id, typeof before === 'string' ? before : before === undefined ? '' : 'other rows'];
    }),
  );
}

function rowList({ system }: CaseView, topic: Topic, { fact, columns, rows }: ListBlock) {
  rowsSoon();
  return html`<row-list .topic=${topic} .fact=${fact} .columns=${columns.filter((each) => each !== '')} .rows=${rows} .system=${system}></row-list>`;
}

function peoplePart(view: CaseView, topic: Topic) {
  if (topic.facts[peopleList]?.kind !== 'rows') return nothing;
  const block = listsIn(view).find(({ fact }) => fact === peopleList);
  return html`<section class="who">
    <people-steppers .doc=${view.doc}></people-steppers>
    ${
      block && block.rows.length > 0
        ? fold({ name: 'people', heading: 'Each by weight', note: peopleInWords(view.doc) }, () =>
            rowList(view, topic, block),
          )
        : nothing
    }
  </section>`;
}

function asking({ topic, answer, doc, system }: CaseView) {
  if (!topic || !answer) return nothing;
  // It stands even where nothing is left to ask: somebody may be in the middle of its field.
  const values = Object.fromEntries(
    doc.blocks.flatMap((block) =>
      block.kind === 'facts' ? block.rows.map(({ id, value }) => [id, value]) : [],
    ),
  );
  return html`<next-question .topic=${topic} .missing=${answer.missing} .values=${values} .system=${system}></next-question>`;
}

function listParts(view: CaseView, topic: Topic) {
  const moved = movedFrom(view);
  return listsIn(view)
    .filter(({ fact }) => fact !== peopleList)
    .map(
      (block) => html`<section class="fact-group">
        <h2>${topic.facts[block.fact]?.label ?? block.fact}</h2>
        ${moved[block.fact] === undefined ? nothing : html`<p class="moved">as filed: ${moved[block.fact] || 'not there'}</p>`}
        ${rowList(view, topic, block)}
      </section>`,
    );
}

function picker(view: CaseView, topic: Topic) {
  const told = new Set(Object.keys(view.doc.facts));
  const absent = Object.entries(topic.facts).filter(
    ([id]) => !told.has(id) && rowsOf(view.doc, id).length === 0,
  );
  const add = (event: Event): void => {
    if (!(event.target instanceof HTMLSelectElement) || event.target.value === '') return;
    const id = event.target.value;
    event.target.value = '';
    const fact = topic.facts[id];
    if (fact?.kind === 'rows') {
      const cells = Object.keys(fact.columns).filter((column) => fact.columns[column]?.required);
      const unknown = Object.fromEntries(cells.map((column) => [column, 'unknown']));
      view.edit((now) => edits().addRow(now, id, 'Not named yet', unknown), id);
    } else view.edit((now) => edits().setFact(now, id, 'unknown'), id);
  };
  return html`<p class="another-fact noprint">
    <label>Another fact
      <select @change=${add}>
        <option value="">choose …</option>
        ${absent.map(([id, fact]) => html`<option value=${id}>${fact.label}</option>`)}
      </select>
    </label>
  </p>`;
}

/** What is known, people first, open to change where it stands; and the one question to ask next. */
export const known: Section = (view) => {
  const { topic, doc, asking: asked, system } = view;
  if (!topic) return nothing;
  const moved = movedFrom(view);
  return html`
    ${peoplePart(view, topic)}
    ${asking(view)}
    <div class="fact-groups">
      ${groupsOf(doc, topic).map(
        ({ title, rows }) => html`<section class="fact-group">
          <h2>${title}</h2>
          ${rows.map(
            (row) =>
              html`<fact-row .topic=${topic} .row=${row} .moved=${moved[row.id]} ?asked=${row.id === asked} .system=${system}></fact-row>`,
          )}
        </section>`,
      )}
      ${listParts(view, topic)}
    </div>
    <load-keys .doc=${doc}></load-keys>
    ${picker(view, topic)}
  `;
};
