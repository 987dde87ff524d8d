import { html, nothing } from 'lit';
import '../leave.css';
import { type Arrived, openFiles } from '../state/opening';
import { PlainElement } from './plain-element';

const carriesFiles = ({ dataTransfer }: DragEvent): boolean =>
  dataTransfer?.types.includes('Files') ?? false;

/** Opens files that are dropped anywhere on the page, or chosen in a picker, as cases. */
export class DropCases extends PlainElement {
  static override properties = { over: { state: true }, arrived: { state: true } };
  /** Whether files hang over the page just now. */
  declare over: boolean;
  declare arrived: Arrived | undefined;
  private stop = new AbortController();

  override connectedCallback(): void {
    super.connectedCallback();
    this.over = false;
    this.stop = new AbortController();
    const { signal } = this.stop;
    addEventListener('dragover', this.hover, { signal });
    addEventListener('dragleave', this.leave, { signal });
    addEventListener('drop', this.drop, { signal });
    addEventListener('hashchange', this.close, { signal });
    document.addEventListener('files-chosen', this.take, { signal });
  }

  override disconnectedCallback(): void {
    this.stop.abort();
    super.disconnectedCallback();
  }

  private hover = (event: DragEvent): void => {
    if (!carriesFiles(event)) return;
    event.preventDefault();
    this.over = true;
  };

  private leave = (event: DragEvent): void => {
    if (event.relatedTarget === null) this.over = false;
  };

  private drop = (event: DragEvent): void => {
    if (!carriesFiles(event)) return;
    event.preventDefault();
    this.over = false;
    void this.open([...(event.dataTransfer?.files ?? [])]);
  };

  private take = (event: Event): void => {
    if (event instanceof CustomEvent && Array.isArray(event.detail)) {
      void this.open(event.detail.filter((each): each is File => each instanceof File));
    }
  };

  private close = (): void => {
    this.arrived = undefined;
  };

  private async open(files: readonly File[]): Promise<void> {
    if (files.length === 0) return;
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
