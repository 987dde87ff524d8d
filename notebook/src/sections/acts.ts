import { html, nothing } from 'lit';
import { caseAddress } from '../state/address';
import { canRedo, canUndo, current, redo, undo } from '../state/history';
import { keep } from '../state/kept';
import { whyNotKept } from '../state/shelf';
import { keptWordings } from '../state/wording';
import { type AnsweredView, type CaseView, isAnswered, type Section } from './case-view';
import { toldOf } from './told-of';

const statusBeside = ({ currentTarget: at }: Event): Element | null =>
  at instanceof Element ? (at.parentElement?.querySelector('output') ?? null) : null;

/** What is said aloud, word for word as the reply below has it. */
async function copySentence(view: AnsweredView, status: Element | null): Promise<void> {
  const { leavingReply } = await import('../state/worded');
  const wordings = keptWordings(view.topic.id, view.name);
  const says = await navigator.clipboard
    .writeText(leavingReply('spoken', toldOf(view), wordings))
    .then(() => 'Copied, with its caution.')
    .catch(() => 'This browser does not let the page copy; mark the text and copy it yourself.');
  if (status) status.textContent = says;
}

/** Puts the case as it stands beside this one, under a name of its own, and goes there. */
async function copyCase({ doc, history, name }: CaseView, status: Element | null): Promise<void> {
  const { topic } = doc.front;
  const own = `${name}-copy-${Date.now().toString(36)}`;
  try {
    await keep({ topic, name: own, text: current(history), at: Date.now() });
    location.hash = caseAddress(topic, own);
  } catch (problem) {
    if (status) status.textContent = whyNotKept(problem);
  }
}

/** What can be done with the case as a whole. */
export const acts: Section = (view) => {
  const { history, filed } = view;
  const text = filed?.doc.text;
  return html`<div class="acts">
    ${
      isAnswered(view)
        ? html`<button ?disabled=${!view.current} @click=${(event: Event) => copySentence(view, statusBeside(event))}>Copy the sentence</button>`
        : nothing
    }
    <button ?disabled=${!canUndo(history)} @click=${() => view.go(undo)}>Undo</button>
    <button ?disabled=${!canRedo(history)} @click=${() => view.go(redo)}>Redo</button>
    ${
      text !== undefined && current(history) !== text
        ? html`<button @click=${() => view.edit(() => text, 'filed')}>Put back as filed</button>`
        : nothing
    }
    <button @click=${(event: Event) => copyCase(view, statusBeside(event))}>Make a copy</button>
    <button @click=${() => print()}>Print</button>
    <output class="small soft"></output>
  </div>`;
};
