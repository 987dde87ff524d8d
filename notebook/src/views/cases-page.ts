import { html, nothing } from 'lit';
import '../cases/own-list';
import { caseRow } from '../cases/row';
import { notesListed, type Row, rowsOf } from '../cases/rows';
import { caseFinder, type Found } from '../cases/search';
import { topicsListed } from '../cases/topics';
import { fold } from '../counter/case-fold';
import { chosen } from '../elements/files-chosen';
import { PlainElement } from '../elements/plain-element';
import type { CaseStarted } from '../elements/start-case';
import '../elements/start-case';
import { caseAddress } from '../state/address';
import { allKept, hearElsewhere } from '../state/kept';
import { beginOwn } from '../state/own-case';
import { openLineReader } from '../today/read-line';

/** So many of what was found are drawn. */
const most = 30;
/** Somebody in the middle of a word is not looked up. */
const restsFor = 120;

/** One's own cases, then the worked ones by topic, and a search over all of them. */
export class CasesPage extends PlainElement {
  static override properties = {
    rows: { state: true },
    search: { state: true },
    notice: { state: true },
    result: { state: true },
  };
  declare rows: ReturnType<typeof rowsOf> | undefined;
  declare search: string;
  declare notice: string;
  /** What was found, and for which question. */
  declare result: (Found & { readonly of: string }) | undefined;
  private finder: ReturnType<typeof caseFinder> | undefined;
  private timer: ReturnType<typeof setTimeout> | undefined;
  private unhear: (() => void) | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    this.search = '';
    this.notice = '';
    this.unhear = hearElsewhere(this.read);
    void this.read();
  }

  override disconnectedCallback(): void {
    clearTimeout(this.timer);
    this.unhear?.();
    super.disconnectedCallback();
  }

  private read = async (): Promise<void> => {
    // A device that keeps nothing has none of one's own.
    this.rows = rowsOf(await allKept().catch(() => []));
    this.finder = undefined;
    if (this.search.trim() !== '') void this.look();
  };

  private async begin(text: string, topic: string): Promise<void> {
    location.hash = await beginOwn(topic, text);
  }

  /** Files are opened by what takes dropped ones. */
  private picked({ target: field }: Event): void {
    if (!(field instanceof HTMLInputElement)) return;
    const files = [...(field.files ?? [])];
    field.value = '';
    document.dispatchEvent(chosen(files));
  }

  private look = async (): Promise<void> => {
    const { search: of, rows } = this;
    if (!rows || of.trim() === '') return;
    const mine = rows.own.filter((row) => row.own === 'mine');
    this.finder ??= caseFinder([...mine, ...rows.filed]);
    try {
      const found = await this.finder(of);
      if (of !== this.search) return;
      this.result = { ...found, of };
      this.notice = '';
    } catch {
      this.notice = 'The search could not be read: the network is away.';
    }
  };

  private typed = ({ target }: Event): void => {
    if (!(target instanceof HTMLInputElement)) return;
    this.search = target.value;
    clearTimeout(this.timer);
    this.timer = setTimeout(this.look, restsFor);
  };

  private found() {
    const { result } = this;
    if (!result) return html`<p class="soft" role="status">Looking …</p>`;
    const { hits, nowhere } = result;
    const without =
      nowhere.length === 0
        ? ''
        : ` No case has ${nowhere.map((word) => `“${word}”`).join(' or ')}.`;
    const said =
      hits.length === 0
        ? `No case is about this.${without} Try other words, or start a blank case.`
        : `${hits.length === 1 ? '1 case' : `${hits.length} cases`}, the nearest first.${without}`;
    return html`<p class="small soft" role="status">${said}</p>
      <ul class="cases">${hits.slice(0, most).map((row) => caseRow(row, nothing, true))}</ul>
      ${hits.length > most ? html`<p class="small soft">The first ${most} are shown; one more word finds fewer.</p>` : nothing}`;
  }

  private topic(id: string, title: string, question: string, filed: readonly Row[]) {
    const rows = filed.filter((row) => row.topic === id);
    return fold(
      { name: `cases-${id}`, heading: title, note: `${rows.length}` },
      () =>
        html`<p class="soft">${question}</p><ul class="cases">${rows.map((row) => caseRow(row))}</ul>`,
    );
  }

  /** Answers that no rule reckons. */
  private notes() {
    if (notesListed.length === 0) return nothing;
    return fold(
      { name: 'cases-note', heading: 'Notes', note: `${notesListed.length}` },
      () =>
        html`<p class="soft">What people ask and nothing reckons: each with who keeps it, and the day until which it is good.</p>
          <ul class="cases">${notesListed.map(
            ({ name, title }) => html`<li><a href=${caseAddress('note', name)}>${title}</a></li>`,
          )}</ul>`,
    );
  }

  protected override render() {
    const { rows, search, notice } = this;
    return html`
      <h1>Cases</h1>
      <div class="finder">
        <label class="wide-field">Find a case, by words or by the whole question as it was asked<br />
          <input type="search" .value=${search} @focus=${openLineReader} @input=${this.typed} /></label>
      </div>
      ${notice ? html`<p class="notice" role="alert">${notice}</p>` : nothing}
      ${!rows ? html`<p class="soft">Reading the cases …</p>` : search.trim() === '' ? this.lists(rows) : this.found()}
    `;
  }

  private lists({ own, filed }: ReturnType<typeof rowsOf>) {
    return html`
      <own-list .rows=${own} @own-changed=${this.read}></own-list>
      <h2>Start a case</h2>
      <start-case @case-started=${({ detail }: CaseStarted) => this.begin(detail.text, detail.topic)}></start-case>
      <label class="small from-file">Or open one from a file<br /><input type="file" multiple accept=".md,.json,text/markdown,application/json" @change=${this.picked} /></label>
      <h2>Worked cases</h2>
      <p class="soft">Questions people asked, each with what was known, the verdict and the reason. Open one, change what is known, and the verdict follows.</p>
      <div class="topics">${topicsListed.map(({ id, title, question }) => this.topic(id, title, question, filed))}${this.notes()}</div>
    `;
  }
}

customElements.define('cases-page', CasesPage);
