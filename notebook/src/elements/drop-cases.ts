import { html, nothing } from 'lit';
import '../leave.css';
import type { Arrived } from '../state/opening';
import { PlainElement } from './plain-element';

/** Opens files as cases, and says what came of it. */
export class DropCases extends PlainElement {
  static override properties = { over: { type: Boolean }, arrived: { state: true } };
  /** Whether files hang over the page just now. */
  declare over: boolean;
  declare arrived: Arrived | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    addEventListener('hashchange', this.close);
  }

  override disconnectedCallback(): void {
    removeEventListener('hashchange', this.close);
    super.disconnectedCallback();
  }

  private close = (): void => {
    this.arrived = undefined;
  };

  async open(files: readonly File[]): Promise<void> {
    if (files.length === 0) return;
    // It reads cases of any topic, so it brings all of them.
    const { openFiles } = await import('../state/opening');
    const arrived = await openFiles(files);
    const [only, more] = arrived.cases;
    if (only && !more && arrived.says.length === 0) location.hash = only.href;
    else this.arrived = arrived;
  }

  private news({ cases, says }: Arrived) {
    return html`<div class="arrived">
      ${says.map((each) => html`<p class="error">${each}</p>`)}
      ${
        cases.length === 0
          ? nothing
          : html`<p>Opened, beside what was here:
            ${cases.map(({ href, from }) => html` <a href=${href}>${from}</a>`)}</p>`
      }
      <button @click=${this.close}>Close</button>
    </div>`;
  }

  protected override render() {
    return html`
      ${
        this.over
          ? html`<div class="drop-hint"><p>Let go to open as a case: Markdown, or JSON saved here.</p></div>`
          : nothing
      }
      <div role="status">${this.arrived ? this.news(this.arrived) : nothing}</div>
    `;
  }
}

customElements.define('drop-cases', DropCases);
