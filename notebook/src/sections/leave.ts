import { html, nothing } from 'lit';
import { caseAddress } from '../state/address';
import { current } from '../state/history';
import { keep } from '../state/kept';
import { whyNotKept } from '../state/shelf';
import { drawBlocks } from './blocks';
import { type CaseView, type Section, whenAnswered } from './case-view';
import { onceShown } from './once-shown';
import { partsOf } from './parts';
import { toldOf } from './told-of';

/** How an answer leaves. */
const load = onceShown(() => import('../elements/leave'));

/** The reply, three ways. */
export const reply = whenAnswered((view) => {
  load();
  const { doc, name, current: isCurrent } = view;
  return html`<section>
    <h2>The reply</h2>
    <reply-card .of=${toldOf(view)} .text=${doc.text} .name=${name} .current=${isCurrent}></reply-card>
  </section>`;
});

/** Link, code and files. */
export const share: Section = ({ doc, answer, current: isCurrent, name }) => {
  load();
  return html`<section class="noprint">
    <h2>Hand it on</h2>
    <share-case .doc=${doc} .answer=${answer} .current=${isCurrent} .name=${name}></share-case>
  </section>`;
};

/** What is printed. */
export const sheet = whenAnswered((view) => {
  const { doc, answer, topic, system, name, current: isCurrent } = view;
  // The asker's own words; what stands after them is for whoever answers.
  const question = drawBlocks(view, partsOf(doc.blocks).question.slice(0, 1));
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
  if (!view.name.startsWith('shared: ') || !view.filed) return nothing;
  return html`<p class="came noprint">
    This case came with a link. It stands beside your own cases and changes none of them.
    <button @click=${(event: Event) => keepShared(view, event)}>Keep it among my cases</button>
    <output></output>
  </p>`;
};
