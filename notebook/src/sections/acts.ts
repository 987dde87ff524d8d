import { html, nothing } from 'lit';
import { canRedo, canUndo, current, redo, undo } from '../state/history';
import type { CaseView, Section } from './case-view';

function saveFile({ history, name }: CaseView): void {
  const url = URL.createObjectURL(new Blob([current(history)], { type: 'text/markdown' }));
  const link = Object.assign(document.createElement('a'), { href: url, download: `${name}.md` });
  link.click();
  URL.revokeObjectURL(url);
}

/** What can be done with the case as a whole. */
export const acts: Section = (view) => {
  const { history, filed } = view;
  const text = filed?.doc.text;
  return html`<div class="acts">
    <button ?disabled=${!canUndo(history)} @click=${() => view.go(undo(history))}>Undo</button>
    <button ?disabled=${!canRedo(history)} @click=${() => view.go(redo(history))}>Redo</button>
    ${
      text !== undefined && current(history) !== text
        ? html`<button @click=${() => view.edit(text, 'filed')}>Put back as filed</button>`
        : nothing
    }
    <button @click=${() => saveFile(view)}>Save as Markdown</button>
    <button @click=${() => print()}>Print</button>
  </div>`;
};
