import { html, nothing } from 'lit';
import { isShared } from '../state/is-shared';
import { type Section, whenAnswered } from './case-view';
import { onceAsked, onceShown } from './once-shown';
import { partsOf } from './parts';

/** What is printed, read once the case stands. */
const load = onceShown(() =>
  Promise.all([import('../elements/print-sheet'), import('./case-words')]),
);

/** What is printed. */
export const sheet = whenAnswered((view) => {
  load();
  const { doc, answer, topic, system, name, current: isCurrent } = view;
  // The asker's own words; what stands after them is for whoever answers.
  const asked = partsOf(doc.blocks).question.slice(0, 1);
  const question = html`<case-words .view=${view} .blocks=${asked}></case-words>`;
  return html`<print-sheet .doc=${doc} .answer=${answer} .topic=${topic} .system=${system}
    .current=${isCurrent} .name=${name} .question=${question}></print-sheet>`;
});

const came = onceAsked(() => import('./came-by-link'));

/** Says that a case came by link and lies beside one's own. */
export const shared: Section = (view) => {
  if (!isShared(view.name) || !view.filed) return nothing;
  came();
  return html`<came-by-link .view=${view}></came-by-link>`;
};
