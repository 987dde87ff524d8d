import { type Block, type CaseDocument, liveValue } from '@tarebook/casebook';
import { html, nothing, type TemplateResult } from 'lit';
import '../elements/fact-table';
import '../elements/load-list';
import { type Live, prose } from '../elements/prose';
import { movedFacts, troubleAt } from '../state/judged';
import type { CaseView } from './case-view';

type Drawn = TemplateResult | typeof nothing;

/** Facts that differ from the case as filed, with what was filed; '' where it was not there. */
export function movedFrom({ filed, doc }: CaseView): Readonly<Record<string, string>> {
  if (!filed) return {};
  const { facts } = filed.doc;
  return Object.fromEntries(
    movedFacts(filed.doc, doc).map((id) => {
      const before = facts[id];
      return [id, typeof before === 'string' ? before : before === undefined ? '' : 'other rows'];
    }),
  );
}

/** What is wrong with the value of a fact, by the fact's id. */
export function factErrors({ blocks, troubles }: CaseDocument): Readonly<Record<string, string>> {
  const rows = blocks.flatMap((block) => (block.kind === 'facts' ? block.rows : []));
  return Object.fromEntries(
    rows.flatMap((row) => {
      const says = troubleAt(troubles, row.valueSpan.start) ?? troubleAt(troubles, row.idPlace);
      return says ? [[row.id, says]] : [];
    }),
  );
}

function list(view: CaseView, block: Block & { kind: 'list' }) {
  const errors = Object.fromEntries(
    block.rows.flatMap((row, index) =>
      Object.entries(row.cells).flatMap(([column, cell]) => {
        const says = troubleAt(view.doc.troubles, cell.span.start);
        return says ? [[`${index}.${column}`, says]] : [];
      }),
    ),
  );
  const { fact, columns, rows } = block;
  return html`<load-list .topic=${view.topic} .fact=${fact} .columns=${columns} .rows=${rows} .errors=${errors}></load-list>`;
}

function draw(view: CaseView, block: Block, moved: Record<string, string>, live: Live): Drawn {
  switch (block.kind) {
    case 'prose':
      return html`${prose(block.node, live)}`;
    case 'facts':
      return html`<fact-table .topic=${view.topic} .rows=${block.rows} .errors=${factErrors(view.doc)} .moved=${moved}></fact-table>`;
    case 'list':
      return list(view, block);
    case 'predict':
      return html`<div class="guess" role="note">${block.children.map((child) => prose(child, live))}</div>`;
    case 'expect':
      return nothing;
  }
}

/** Blocks of the document in their author's order, its tables open to change. */
export function drawBlocks(view: CaseView, blocks: readonly Block[]): readonly Drawn[] {
  const { doc, answer, system } = view;
  const moved = movedFrom(view);
  const live = (name: string) => (answer ? liveValue(doc, answer, name, system) : 'unknown');
  return blocks.map((block) => draw(view, block, moved, live));
}
