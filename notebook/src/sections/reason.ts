import { why } from '@tarebook/rules/engine';
import { html } from 'lit';
import { drawBlocks } from './blocks';
import { whenAnswered } from './case-view';
import { partsOf } from './parts';

/** The reason: as the case's author tells it, with its numbers alive, or else from the working. */
export const reason = whenAnswered((view) => {
  const { doc, topic, answer } = view;
  const { reason: blocks } = partsOf(doc.blocks);
  const told =
    blocks.length > 0
      ? drawBlocks(view, blocks)
      : html`<p>${why(topic, answer, 'verdict', 'full')}</p>`;
  return html`<h2>Why</h2>${told}`;
});
