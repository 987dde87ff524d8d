import { html, nothing } from 'lit';
import { drawBlocks } from './blocks';
import type { Section } from './case-view';
import { partsOf } from './parts';

/** The reason, as the case's author tells it, with its numbers alive. */
export const reason: Section = (view) => {
  const { reason: blocks } = partsOf(view.doc.blocks);
  if (blocks.length === 0) return nothing;
  return html`<h2>Why</h2>${drawBlocks(view, blocks)}`;
};
