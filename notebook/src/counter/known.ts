import type { Block } from '@tarebook/casebook';
import type { Topic } from '@tarebook/rules/engine';
import { html, nothing } from 'lit';
import type { CaseView, Section } from '../sections/case-view';
import { onceDrawn } from '../sections/once-shown';
import { groupsOf } from '../state/groups';
import { movedFacts } from '../state/judged';
import { peopleInWords, peopleList } from '../state/people';
import { fold } from './case-fold';
import './fact-row';
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

function groups(view: CaseView, topic: Topic, most?: number) {
  const { doc, asking: asked, system } = view;
  const moved = movedFrom(view);
  return groupsOf(doc, topic)
    .slice(0, most)
    .map(
      ({ title, rows }) => html`<section class="fact-group">
        <h2>${title}</h2>
        ${rows.map(
          (row) =>
            html`<fact-row .topic=${topic} .row=${row} .moved=${moved[row.id]} ?asked=${row.id === asked} .system=${system}></fact-row>`,
        )}
      </section>`,
    );
}

function drawn(view: CaseView, most?: number) {
  const { topic, doc } = view;
  if (!topic) return nothing;
  const isAll = most === undefined;
  return html`
    ${peoplePart(view, topic)}
    ${asking(view)}
    <div class="fact-groups">${groups(view, topic, most)}${isAll ? listParts(view, topic) : nothing}</div>
    ${isAll ? html`<load-keys .doc=${doc}></load-keys><fact-picker .view=${view}></fact-picker>` : nothing}
  `;
}

/** What is known, people first, open to change where it stands; and the one question to ask next. */
export const known: Section = (view) => drawn(view);

/** What of it stands uppermost. */
export const firstKnown: Section = (view) => drawn(view, 1);
