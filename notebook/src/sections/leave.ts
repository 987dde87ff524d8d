import { html, nothing } from 'lit';
import { caseAddress } from '../state/address';
import { current } from '../state/history';
import { isShared } from '../state/is-shared';
import { keep } from '../state/kept';
import { whyNotKept } from '../state/shelf';
import { type CaseView, type Section, whenAnswered } from './case-view';
import { onceShown } from './once-shown';
import { partsOf } from './parts';
import { written } from './written';

/** What is printed, read once the case stands. */
const load = onceShown(() => import('../elements/print-sheet'));

/** What is printed. */
export const sheet = whenAnswered((view) => {
  load();
  const { doc, answer, topic, system, name, current: isCurrent } = view;
  // The asker's own words; what stands after them is for whoever answers.
  const question = written(view, partsOf(doc.blocks).question.slice(0, 1));
  return html`<print-sheet .doc=${doc} .answer=${answer} .topic=${topic} .system=${system}
    .current=${isCurrent} .name=${name} .question=${question}></print-sheet>`;
});

async function keepShared(view: CaseView, event: Event): Promise<void> {
  const at = event.currentTarget instanceof Element ? event.currentTarget.parentElement : null;
  const topic = view.doc.front.topic;
  try {
    await keep({ topic, name: view.name, text: current(view.history), at: Date.now() });
    location.hash = caseAddress(topic, view.name);
  } catch (problem) {
    const told = at?.querySelector('output');
    if (told) told.textContent = whyNotKept(problem);
  }
}

/** Says that a case came by link and lies beside one's own. */
export const shared: Section = (view) => {
  if (!isShared(view.name) || !view.filed) return nothing;
  return html`<p class="came noprint">
    This case came with a link. It stands beside your own cases and changes none of them.
    <button @click=${(event: Event) => keepShared(view, event)}>Keep it among my cases</button>
    <output></output>
  </p>`;
};
