import { type Block, liveValue } from '@tarebook/casebook';
import { html, nothing, type TemplateResult } from 'lit';
import type { Nodes } from 'mdast';
import { prose } from '../elements/prose';
import type { CaseView } from './case-view';

/** What an author wrote, its numbers alive; tables of facts and of expectations are shown elsewhere. */
export function written(
  { doc, answer, system }: CaseView,
  blocks: readonly Block[],
): readonly (TemplateResult | typeof nothing)[] {
  const live = (name: string) => (answer ? liveValue(doc, answer, name, system) : 'unknown');
  return blocks.map((block) => {
    if (block.kind === 'prose') return html`${prose(block.node, live)}`;
    if (block.kind !== 'predict') return nothing;
    return html`<div class="guess" role="note">${block.children.map((child) => prose(child, live))}</div>`;
  });
}

/** The first words of what was written, without any mark-up. */
export function firstWords(blocks: readonly Block[]): string {
  const text = (node: Nodes): string => {
    if ('value' in node) return node.value;
    return 'children' in node ? node.children.map(text).join('') : '';
  };
  const first = blocks.find((block) => block.kind === 'prose');
  return first?.kind === 'prose' ? text(first.node) : '';
}
