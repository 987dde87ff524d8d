import type { Again, AgainState } from '@tarebook/record';
import { html, nothing } from 'lit';
import { copyFrom } from '../elements/copy-text';
import { PlainElement } from '../elements/plain-element';
import { saveAs } from '../state/files';
import { type Given, ledgerOf } from '../state/given';
import { csvOf } from './round-out';

/** A colleague's file is to be taken in. */
export class LedgerOpened extends CustomEvent<{ name: string; text: string }> {
  constructor(name: string, text: string) {
    super('ledger-opened', { detail: { name, text }, bubbles: true });
  }
}

const stateWords: Readonly<Record<AgainState, string>> = {
  same: 'holds',
  wording: 'holds, in other words',
  figure: 'another figure',
  verdict: 'another answer',
  expired: 'past its date',
  'not-judged': 'not judged again',
};

const shownFirst = 100;
const mostBytes = 50_000_000;

const rulesOf = ({ saved }: Given): string =>
  saved.topic === 'note' ? 'a note' : `${String(saved.topic)} ${String(saved.rules ?? '')}`;

/** Every answer that was given, and what would be said today. */
export class RecordView extends PlainElement {
  static override properties = {
    all: { attribute: false },
    again: { attribute: false },
    asking: { attribute: false },
    said: { attribute: false },
    wrong: { attribute: false },
    shown: { state: true },
    large: { state: true },
  };
  /** The newest first. */
  declare all: readonly Given[];
  /** How each stands today, by id; undefined before it was asked. */
  declare again: ReadonlyMap<string, Again> | undefined;
  declare asking: boolean;
  declare said: string;
  declare wrong: string;
  declare shown: number;
  declare large: string;

  constructor() {
    super();
    this.shown = shownFirst;
    this.large = '';
  }

  private open = async (event: Event): Promise<void> => {
    const field = event.target;
    const file = field instanceof HTMLInputElement ? field.files?.[0] : undefined;
    if (!file || !(field instanceof HTMLInputElement)) return;
    this.large =
      file.size > mostBytes ? `${file.name} is larger than 50 MB; a record of years has less.` : '';
    if (this.large === '') this.dispatchEvent(new LedgerOpened(file.name, await file.text()));
    field.value = '';
  };

  private asCsv(): string {
    const rows = this.all.map((each) => [
      ...[each.day, each.by, each.channel, each.question, each.form, each.text, rulesOf(each)],
      this.again?.get(each.id)?.state ?? '',
    ]);
    const head = ['day', 'by', 'channel', 'question', 'form', 'answer', 'rules', 'today'];
    return csvOf([head, ...rows]);
  }

  private row(each: Given) {
    const now = this.again?.get(each.id);
    const turned = now && now.state !== 'same';
    const facts = Object.getOwnPropertyDescriptor(each.saved, 'asked')?.value;
    return html`<li class="given">
      <p class="small soft"><span class="num">${each.day}</span> ${[
        each.by,
        each.channel,
        each.form,
        rulesOf(each),
      ]
        .filter((word) => word !== '')
        .join(' · ')}${now ? html` · <strong>${stateWords[now.state]}</strong>` : nothing}</p>
      <p class="given-question">${each.question}</p>
      <details><summary>What was said</summary><p class="as-written">${each.text}</p>
        ${each.catalogue ? html`<p class="small soft">Catalogue: ${each.catalogue}</p>` : nothing}
        ${facts ? html`<p class="small soft">With: ${JSON.stringify(facts.facts ?? facts)}</p>` : nothing}</details>
      ${turned ? html`<p>Today: ${now.now}</p>` : nothing}
      ${now?.correction ? this.correction(now.correction) : nothing}
    </li>`;
  }

  /** What can be sent to whoever was told otherwise, in the form it left in. */
  private correction(text: string) {
    const copy = async ({ currentTarget: at }: Event): Promise<void> => {
      const field =
        at instanceof Element ? at.closest('.given-right')?.querySelector('textarea') : null;
      const said = at instanceof Element ? at.parentElement?.querySelector('[role=status]') : null;
      if (!field || !said) return;
      const copied = await copyFrom(field);
      said.textContent =
        copied === 'copied' ? 'Copied.' : 'The text is marked; press Ctrl or ⌘ and C.';
    };
    return html`<div class="given-right"><textarea rows="4" aria-label="Correction, ready to send" .value=${text}></textarea>
      <div class="acts"><button type="button" @click=${copy}>Copy the correction</button>
        <span class="small soft" role="status"></span></div></div>`;
  }

  private turnedFirst(): readonly Given[] {
    const { all, again } = this;
    const isSame = ({ id }: Given): boolean => (again?.get(id)?.state ?? 'same') === 'same';
    return again ? [...all.filter((each) => !isSame(each)), ...all.filter(isSame)] : all;
  }

  private standing() {
    const { again, all } = this;
    if (!again) return nothing;
    const turned = [...again.values()].filter(({ state }) => state !== 'same').length;
    return turned === 0
      ? `All ${all.length} hold as they were given.`
      : `Of ${all.length}, ${turned} would be given differently today; they stand first.`;
  }

  protected override render() {
    const { all, asking } = this;
    const rows = this.turnedFirst();
    const wrong = this.large || this.wrong;
    return html`<div class="acts noprint">
        <button ?disabled=${all.length === 0 || asking} @click=${() =>
          this.dispatchEvent(
            new CustomEvent('again-wanted', { bubbles: true }),
          )}>What would we say today?</button>
        <button ?disabled=${all.length === 0} @click=${() =>
          saveAs(
            'answers-given.json',
            `${JSON.stringify(ledgerOf(all), null, 1)}\n`,
            'application/json',
          )}>Save for a colleague</button>
        <button ?disabled=${all.length === 0} @click=${() => saveAs('answers-given.csv', this.asCsv(), 'text/csv')}>Save as CSV</button>
        <label class="from-file">Take in a colleague’s file <input type="file" accept=".json,application/json" @change=${this.open} /></label>
      </div>
      <p role="status">${asking ? 'Asking every answer again …' : this.standing()} ${this.said}</p>
      ${wrong ? html`<p class="error" role="alert">${wrong}</p>` : nothing}
      ${all.length === 0 ? html`<p>Nothing has left yet. What you copy from a question, and what you speak in a round, stands here with its day, its rules and its facts.</p>` : nothing}
      <ol class="given-list">${rows.slice(0, this.shown).map((each) => this.row(each))}</ol>
      ${
        rows.length > this.shown
          ? html`<button @click=${() => {
              this.shown += shownFirst;
            }}>Show more of ${rows.length - this.shown}</button>`
          : nothing
      }`;
  }
}

customElements.define('record-view', RecordView);
