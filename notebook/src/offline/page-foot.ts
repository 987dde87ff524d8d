import { html, nothing } from 'lit';
import './foot.css';
import { PlainElement } from '../elements/plain-element';
import { gatherEverything, NotOurs, takeIn } from '../state/everything';
import { saveAs } from '../state/files';
import { allAside, settled, whyNotKept } from '../state/shelf';
import { onceQuiet } from './once-quiet';
import { keepOffline, type Offline, offlineWords } from './worker';

/** A little longer than any page waits before it keeps what was typed. */
const typedIsKept = 400;

/** The foot of every page: whether it works without a network, and everything kept here as one file. */
export class PageFoot extends PlainElement {
  static override properties = {
    offline: { state: true },
    aside: { state: true },
    told: { state: true },
    wrong: { state: true },
  };
  declare offline: Offline;
  declare aside: readonly unknown[];
  declare told: string;
  declare wrong: string;

  constructor() {
    super();
    this.offline = { kind: 'getting' };
    this.aside = [];
    this.told = '';
    this.wrong = '';
  }

  override connectedCallback(): void {
    super.connectedCallback();
    addEventListener('hashchange', this.look);
    void this.look();
    if (import.meta.env.PROD) {
      void onceQuiet().then(() => keepOffline(this.report, this.allKept));
    } else this.report({ kind: 'no' });
  }

  override disconnectedCallback(): void {
    removeEventListener('hashchange', this.look);
    super.disconnectedCallback();
  }

  private report = (offline: Offline): void => {
    this.offline = offline;
  };

  private allKept = async (): Promise<void> => {
    await new Promise((done) => setTimeout(done, typedIsKept));
    await settled();
  };

  private look = async (): Promise<void> => {
    this.aside = await allAside().catch(() => []);
  };

  private async save(): Promise<void> {
    await this.allKept();
    this.wrong = '';
    try {
      const all = await gatherEverything(new Date());
      const day = all.saved.slice(0, 10);
      saveAs(`tarebook-${day}.json`, `${JSON.stringify(all, null, 1)}\n`, 'application/json');
      this.told = `Saved: ${all.cases.length} cases of yours, ${all.classes.length} classes.`;
    } catch (problem) {
      this.wrong = whyNotKept(problem);
    }
  }

  private async open(event: Event): Promise<void> {
    const field = event.target;
    const file = field instanceof HTMLInputElement ? field.files?.[0] : undefined;
    if (!file || !(field instanceof HTMLInputElement)) return;
    this.wrong = '';
    this.told = '';
    try {
      this.told = await takeIn(await file.text());
    } catch (problem) {
      this.wrong = problem instanceof NotOurs ? problem.message : whyNotKept(problem);
    }
    field.value = '';
  }

  private saveAside(): void {
    const text = `${JSON.stringify(this.aside, null, 1)}\n`;
    saveAs('tarebook-set-aside.json', text, 'application/json');
  }

  protected override render() {
    const { offline, aside } = this;
    const n = aside.length;
    return html`<footer class="page-foot noprint small soft">
      <p role="status">
        ${offlineWords[offline.kind]}
        ${offline.kind === 'newer' ? html`<button @click=${offline.use}>Use it now</button>` : nothing}
      </p>
      ${
        n === 0
          ? nothing
          : html`<p>
              ${n === 1 ? 'One record kept here' : `${n} records kept here`} could not be read and ${n === 1 ? 'was' : 'were'} set aside, not deleted.
              <button @click=${this.saveAside}>Save what was set aside</button>
            </p>`
      }
      <p>
        What you type is kept on this device alone.
        <button @click=${this.save}>Save everything as one file</button>
      </p>
      <p>
        <label>Open such a file <input type="file" accept=".json,application/json" @change=${this.open} /></label>
      </p>
      <p role="status">${this.told}</p>
      ${this.wrong ? html`<p class="error" role="alert">${this.wrong}</p>` : nothing}
    </footer>`;
  }
}

customElements.define('page-foot', PageFoot);
