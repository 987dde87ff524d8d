import { type Block, liveValue } from '@tarebook/casebook';
import { html, nothing, type TemplateResult } from 'lit';
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
