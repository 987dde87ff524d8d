import { html, nothing, type PropertyValues } from 'lit';
import '../leave.css';
import '../elements/reply-card';
import '../elements/share-case';
import { PlainElement } from '../elements/plain-element';
import type { AnsweredView } from '../sections/case-view';
import { toldOf } from '../sections/told-of';

/** How an answer leaves in words or as a link, over the case, which stays as it is. */
export class LeaveDialog extends PlainElement {
  static override properties = { view: { attribute: false }, way: { attribute: false } };
  declare view: AnsweredView;
  declare way: 'say' | 'send';

  private get dialog(): HTMLDialogElement | null {
    return this.querySelector('dialog');
  }

  show(): void {
    if (this.dialog?.open === false) this.dialog.showModal();
  }

  protected override firstUpdated(_: PropertyValues<this>): void {
    this.show();
  }

  private shut = (): void => {
    this.dispatchEvent(new Event('left', { bubbles: true }));
  };

  private say() {
    const { view } = this;
    return html`<reply-card .of=${toldOf(view)} .kinds=${['spoken']} .text=${view.doc.text} .name=${view.name} .current=${view.current}></reply-card>`;
  }

  private send() {
    const { view } = this;
    const { doc, answer, current, name } = view;
    return html`
      <share-case .doc=${doc} .answer=${answer} .current=${current} .name=${name}></share-case>
      <reply-card .of=${toldOf(view)} .kinds=${['post', 'letter']} .text=${doc.text} .name=${name} .current=${current}></reply-card>`;
  }

  protected override render() {
    const { way } = this;
    return html`<dialog class="leave noprint" aria-label=${way === 'say' ? 'Say it' : 'Send it'} @close=${this.shut}>
      <div class="leave-head">
        <h2>${way === 'say' ? 'Say it' : 'Send it'}</h2>
        <button type="button" @click=${() => this.dialog?.close()}>Close</button>
      </div>
      ${way === 'say' ? this.say() : way === 'send' ? this.send() : nothing}
    </dialog>`;
  }
}

customElements.define('leave-dialog', LeaveDialog);
