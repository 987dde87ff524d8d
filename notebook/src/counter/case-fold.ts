import { html, nothing, type TemplateResult } from 'lit';
import { PlainElement } from '../elements/plain-element';
import { isLeftOpen, leaveOpen } from '../state/remembered';

/** One line that opens in place and stays as it was left; what is shut is not drawn. */
export class CaseFold extends PlainElement {
  static override properties = {
    name: { attribute: false },
    heading: { attribute: false },
    note: { attribute: false },
    begins: { type: Boolean },
    body: { attribute: false },
    open: { state: true },
  };
  /** Under which it is remembered. */
  declare name: string;
  declare heading: string;
  /** What stands at the end of the line. */
  declare note: string | undefined;
  /** Whether it is open before anybody has touched it. */
  declare begins: boolean;
  declare body: () => unknown;
  declare open: boolean | undefined;

  private toggled = (event: Event): void => {
    if (!(event.currentTarget instanceof HTMLDetailsElement)) return;
    const { open } = event.currentTarget;
    if (open === this.open) return;
    this.open = open;
    leaveOpen(this.name, open);
  };

  protected override render() {
    this.open ??= isLeftOpen(this.name, this.begins);
    return html`<details class="fold" ?open=${this.open} @toggle=${this.toggled}>
      <summary><h2>${this.heading}</h2>${this.note ? html`<small class="soft">${this.note}</small>` : nothing}</summary>
      ${this.open ? html`<div class="folded">${this.body()}</div>` : nothing}
    </details>`;
  }
}

customElements.define('case-fold', CaseFold);

type Folded = {
  readonly name: string;
  readonly heading: string;
  readonly note?: string | undefined;
  readonly begins?: boolean;
};

export const fold = (
  { name, heading, note, begins = false }: Folded,
  body: () => unknown,
): TemplateResult =>
  html`<case-fold .name=${name} .heading=${heading} .note=${note} .begins=${begins} .body=${body}></case-fold>`;
