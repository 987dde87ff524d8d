import type { CaseDocument } from '@tarebook/casebook';
import type { Topic } from '@tarebook/rules/engine';
import { html, nothing } from 'lit';
import { carriedOf, carryToYard } from '../state/carried';

/** From one vehicle or trailer to all of the yard that go with it, with what is told of it. */
export function toYard(topic: Topic | undefined, { facts }: CaseDocument) {
  const carried = topic?.id === 'tow-fit' ? carriedOf(topic, facts) : undefined;
  if (!carried) return nothing;
  return html`<button type="button" @click=${() => carryToYard(carried)}>${
    carried.way === 'trailers' ? 'Which of ours can they take?' : 'What can pull it?'
  }</button>`;
}
