import type { CaseDocument } from '@tarebook/casebook';
import type { Answer } from '@tarebook/rules/engine';
import { html, nothing } from 'lit';
import { saveAs } from '../state/files';
import { type Carried, codeFor, linkFor } from '../state/link';
import { asJson, asMarkdown, type SavedFile } from '../state/saved';
import { copyFrom } from './copy-text';
import { chosen } from './files-chosen';
import { PlainElement } from './plain-element';
import './qr-code';

const left: Readonly<Record<Carried['without'], string>> = {
  nothing: '',
  words: ' It carries the facts; the words around them were too long for it.',
  places:
    ' It carries the facts alone; the words around them, and where each was read, were too long for it.',
};

/** The address of the page without its fragment. */
export const pageAddress = (): string => location.href.replace(/#.*$/, '');

/** A link, a code to scan and files that carry this very case away, and the way back in. */
export class ShareCase extends PlainElement {
  static override properties = {
    doc: { attribute: false },
    answer: { attribute: false },
    current: { attribute: false },
    name: { attribute: false },
    link: { state: true },
    code: { state: true },
    said: { state: true },
  };
  declare doc: CaseDocument;
  declare answer: Answer | undefined;
  /** Whether the answer is that of the present text. */
  declare current: boolean;
  /** The last part of the case's address. */
  declare name: string;
  declare link: Carried | undefined;
  declare code: Carried | 'none' | undefined;
  declare said: string;

  protected override willUpdate(changed: Map<PropertyKey, unknown>): void {
    if (!changed.has('doc')) return;
    const before = changed.get('doc');
    const same = before instanceof Object && 'text' in before && before.text === this.doc.text;
    if (same) return;
    // A link to what stood here before would be a link to another case.
    this.link = undefined;
    this.code = undefined;
    this.said = '';
  }

  private async copyLink(): Promise<void> {
    const { doc } = this;
    const link = await linkFor(doc, this.name, pageAddress());
    if (doc !== this.doc) return;
    this.link = link;
    if (!link) {
      this.said = 'This case is too long for a link; save it as a file and send that.';
      return;
    }
    await this.updateComplete;
    const field = this.querySelector('textarea');
    if (!field) return;
    const copied = await copyFrom(field);
    this.said =
      copied === 'copied'
        ? `Link copied.${left[link.without]}`
        : `This browser does not let the page copy; the link is marked, so press Ctrl or ⌘ and C.${left[link.without]}`;
  }

  private async showCode(): Promise<void> {
    const { doc } = this;
    if (this.code) {
      this.code = undefined;
      return;
    }
    const code = await codeFor(doc, this.name, pageAddress());
    if (doc === this.doc) this.code = code ?? 'none';
  }

  private save(file: SavedFile): void {
    saveAs(file.name, file.text, file.type);
    this.said = `Saved as ${file.name}.`;
  }

  private shownCode() {
    const { code } = this;
    if (code === undefined) return nothing;
    if (code === 'none') {
      return html`<p>This case is too long for a code that a camera can read; send the link or a file.</p>`;
    }
    return html`<qr-code .text=${code.href} .label=${'Code that opens this case'}></qr-code>
      <p class="small soft">Scan it to open this very case.${left[code.without]}</p>`;
  }

  protected override render() {
    const { doc, answer, current, link } = this;
    return html`
      <p>The link carries the whole case in itself, and no server sees it: whoever has it, has what you typed here.</p>
      <div class="acts">
        <button @click=${this.copyLink}>Copy a link to this case</button>
        <button aria-expanded=${this.code !== undefined} @click=${this.showCode}>
          ${this.code === undefined ? 'Show a code to scan' : 'Put the code away'}
        </button>
        <button @click=${() => this.save(asMarkdown(this.name, doc.text))}>Save as Markdown</button>
        <button ?disabled=${!answer || !current} @click=${() => {
          if (answer) this.save(asJson(this.name, doc, answer));
        }}>Save as JSON</button>
      </div>
      <p class="small" role="status">${this.said}</p>
      ${
        link
          ? html`<label class="small soft">The link
            <textarea class="link" readonly rows="3" .value=${link.href}></textarea></label>`
          : nothing
      }
      ${this.shownCode()}
      <label class="small">Open cases from files, or drop them anywhere on the page<br />
        <input type="file" multiple accept=".md,.markdown,.json,text/markdown,application/json"
          @change=${(event: Event) => {
            const field = event.target;
            if (field instanceof HTMLInputElement && field.files) {
              this.dispatchEvent(chosen(field.files));
              field.value = '';
            }
          }} /></label>
    `;
  }
}

customElements.define('share-case', ShareCase);
