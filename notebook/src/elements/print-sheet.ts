import type { CaseDocument } from '@tarebook/casebook';
import { type Answer, type Ends, type LimitAnswer, type Topic, why } from '@tarebook/rules/engine';
import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing, type TemplateResult } from 'lit';
import { changesFound } from '../change/before-print';
import { foundFor } from '../change/found';
import '../drawings/case-figures';
import '../print.css';
import { barOf } from '../state/bar';
import { sentenceBeneath } from '../state/beneath';
import { levelOf } from '../state/level';
import { type Carried, codeFor } from '../state/link';
import {
  classWords,
  factLines,
  findingLines,
  limitLines,
  numberLines,
  sourceLines,
  workingLines,
} from '../state/told';
import { limitBar } from './limit-bar';
import { mark, stateWords } from './marks';
import { alsoAsked, granted, onAllSheets, onOneSheet, sectionsLeft } from './one-sheet';
import { PrintAsked } from './print-asked';
import './qr-code';
import { RestingElement } from './resting-element';
import { pageAddress } from './share-case';

const left: Readonly<Record<Carried['without'], string>> = {
  nothing: 'Scan to open this very case.',
  words:
    'Scan to open this case. The code carries the facts; the words around them were too long for it.',
  places:
    'Scan to open this case. The code carries the facts alone; the words around them were too long for it.',
};

/** Of many questions a sheet that is short of room asks these. */
const mostAsked = 4;

/** Of many ways to change it a sheet tells these. */
const mostChanges = 4;

const listOf = (title: string, lines: readonly (string | TemplateResult)[]) =>
  lines.length === 0
    ? nothing
    : html`<section><h2>${title}</h2><ul>${lines.map((line) => html`<li>${line}</li>`)}</ul></section>`;

/** The case on a sheet of paper, in black and white; unseen on the screen. */
export class PrintSheet extends RestingElement {
  static override properties = {
    doc: { attribute: false },
    answer: { attribute: false },
    topic: { attribute: false },
    system: { attribute: false },
    current: { attribute: false },
    name: { attribute: false },
    question: { attribute: false },
    code: { state: true },
    whole: { state: true },
    without: { state: true },
  };
  declare doc: CaseDocument;
  declare answer: Answer;
  declare topic: Topic;
  declare system: UnitSystem;
  /** Whether the answer is that of the present text. */
  declare current: boolean;
  /** The last part of the case's address. */
  declare name: string;
  /** The question as its author wrote it, drawn. */
  declare question: unknown;
  declare code: { readonly of: string; readonly carried: Carried | undefined } | undefined;
  /** Whether all of it is printed, on as many sheets as that takes. */
  declare whole: boolean;
  /** What was left out to keep to one sheet. */
  declare without: readonly string[];
  protected override rests = 400;
  protected override ahead = [
    () => this.answer.trace,
    () => why(this.topic, this.answer, 'verdict', 'full'),
    () => workingLines(this.answer, this.topic, this.system),
  ];
  private printing: Promise<void> | undefined;
  /** What stands in this drawing's stead of a section that was left out. */
  private gone: readonly string[] = [];

  constructor() {
    super();
    this.whole = false;
    this.without = [];
  }

  override connectedCallback(): void {
    super.connectedCallback();
    addEventListener('beforeprint', this.atOnce);
    addEventListener('afterprint', this.printed);
    document.addEventListener('print-asked', this.asked);
  }

  override disconnectedCallback(): void {
    removeEventListener('beforeprint', this.atOnce);
    removeEventListener('afterprint', this.printed);
    document.removeEventListener('print-asked', this.asked);
    super.disconnectedCallback();
  }

  /** What is printed is what stands there now, and no more of it than fits. */
  private atOnce = (): void => {
    this.leaveOut([]);
    onAllSheets(this);
    if (!this.whole) onOneSheet(this, (sections) => this.leaveOut(sections));
  };

  private leaveOut(without: readonly string[]): void {
    const isShort = this.answer.missing.length <= mostAsked;
    this.without = without.filter((each) => !(isShort && each === alsoAsked));
    this.requestUpdate();
    this.performUpdate();
  }

  private asked = (event: Event): void => {
    if (!(event instanceof PrintAsked)) return;
    event.preventDefault();
    this.whole = event.detail.whole;
    this.printing ??= this.printOnce();
  };

  /** Whoever asks again while it is made ready changes what is printed, and prints once. */
  private async printOnce(): Promise<void> {
    if (['stop', 'care'].includes(levelOf(this.topic.outcomes, this.answer.outcome))) {
      await changesFound(this.doc, this.system);
    }
    this.printing = undefined;
    if (this.isConnected) print();
  }

  private printed = (): void => {
    this.whole = false;
  };

  protected override updated(): void {
    if (this.code?.of !== this.doc.text) void this.encode(this.doc);
  }

  private async encode(doc: CaseDocument): Promise<void> {
    const carried = await codeFor(doc, this.name, pageAddress());
    if (doc.text === this.doc.text) this.code = { of: doc.text, carried };
  }

  private codePart() {
    const { code, doc } = this;
    if (code?.of !== doc.text) {
      return html`<p>There is no code to scan here: it was not ready yet; print once more.</p>`;
    }
    if (!code.carried) {
      return html`<p>There is no code to scan here: the case is too long for one.</p>`;
    }
    const { href, without } = code.carried;
    return html`<qr-code .text=${href} .label=${'Code that opens this case'}></qr-code>
      <p>${left[without]}</p>`;
  }

  private emptyOf({ id }: LimitAnswer): Ends | undefined {
    const name = this.topic.limits[id]?.empty;
    return name === undefined ? undefined : this.answer.values[name];
  }

  private limits() {
    const lines = limitLines(this.answer, this.system);
    if (lines.length === 0) return nothing;
    return html`<section>
      <h2>How close to each limit</h2>
      <table class="sheet-limits">
        <thead>
          <tr>
            <th scope="col">Limit</th><th scope="col">Used</th><th scope="col">Of</th>
            <th scope="col">Room</th><td></td><th scope="col">Stands</th>
          </tr>
        </thead>
        <tbody>
          ${lines.map(
            ({ limit, used, of, left: room }) => html`<tr>
              <th scope="row">${limit.label}</th>
              <td>${used}</td><td>${of}</td><td>${room}</td>
              <td class="level-${limit.state}">${limitBar(barOf(limit, this.emptyOf(limit)))}</td>
              <td class="sheet-state">${mark(limit.state)} ${stateWords[limit.state]}</td>
            </tr>`,
          )}
        </tbody>
      </table>
      <p>A bar begins at zero; its thick stroke is the limit, the dashed one the margin kept here, the lighter part what it weighs empty.</p>
    </section>`;
  }

  private working() {
    const lines = workingLines(this.answer, this.topic, this.system).map(
      ({ label, value, working, source }) =>
        html`${label}: <strong>${value}</strong>${working === '' ? nothing : html` = ${working}`}
          ${source ? html`<small>${classWords(source)}</small>` : nothing}`,
    );
    return this.unless('The working', lines);
  }

  private unless(title: string, lines: readonly (string | TemplateResult)[]) {
    if (!this.without.includes(title)) return listOf(title, lines);
    if (lines.length > 0) this.gone = [...this.gone, title];
    return nothing;
  }

  /** In one stretch, so that there is room for it. */
  private granted() {
    const all = this.answer.assumed.map(({ says }) => says);
    if (all.length === 0) return nothing;
    if (this.without.includes(granted)) {
      this.gone = [...this.gone, granted];
      return nothing;
    }
    return html`<section><h2>${granted}</h2><p>${all.join(' ')}</p></section>`;
  }

  private leftOut() {
    const others = this.without.filter((each) => !sectionsLeft.includes(each));
    const all = [...this.gone, ...others];
    if (all.length === 0) return nothing;
    const of = all.map((each) => each.toLowerCase()).join(', ');
    const opens = this.code?.carried ? ', which the code opens' : '';
    return html`<p class="sheet-left-out">To keep to one sheet, this is not on it: ${of}. All of it stands with the case${opens}.</p>`;
  }

  private changes() {
    const found = foundFor(this.doc.text, this.system);
    if (!found || found.remedies.length === 0) return nothing;
    return listOf(
      'What would change it',
      found.remedies.slice(0, mostChanges).map(({ says }) => says),
    );
  }

  protected override render() {
    const { doc, answer, topic, system, current } = this;
    const words = `${answer.words.charAt(0).toUpperCase()}${answer.words.slice(1)}`;
    const asked = this.without.includes(alsoAsked) ? mostAsked : answer.missing.length;
    const missing = answer.missing
      .slice(0, asked)
      .map(
        ({ label, ask, where, says }) =>
          html`<strong>${label}.</strong> ${ask} Read it from: ${where}. ${says}`,
      );
    this.gone = [];
    return html`
      <header>
        <div>
          <p>Tarebook · ${topic.title} · rules ${answer.topic} ${answer.rules}, as of ${answer.asOf}</p>
          <h1>${doc.front.title}</h1>
          <div class="sheet-question">${this.question ?? nothing}</div>
          <section class="sheet-verdict">
            ${mark(levelOf(topic.outcomes, answer.outcome))}
            <div>
              <p class="sheet-word">${words}</p>
              <p>${sentenceBeneath(topic, answer, system)} ${answer.restsOn}</p>
              ${
                current
                  ? nothing
                  : html`<p><strong>The case holds an entry that cannot be read; this is the verdict before it.</strong></p>`
              }
            </div>
          </section>
        </div>
        <div class="sheet-code">${this.codePart()}</div>
      </header>
      ${listOf('What to be careful about', answer.cautions)}
      ${listOf('Find out first', missing)}
      <case-figures .drawn=${{ doc, answer }} .system=${system}></case-figures>
      ${this.limits()}
      ${listOf(
        'Also',
        findingLines(answer).map(
          ({ label, level, says }) => html`${mark(level)} <strong>${label}.</strong> ${says}`,
        ),
      )}
      <section><h2>Why</h2><p>${why(topic, answer, 'verdict', 'full')}</p></section>
      ${this.granted()}
      ${this.changes()}
      <div class="sheet-columns">
        ${listOf('What was known', factLines(doc, topic))}
        ${this.working()}
        ${this.unless('Numbers used', numberLines(answer, system))}
        ${listOf('The house’s own numbers', answer.house?.parameters.map(({ says }) => says) ?? [])}
        ${this.unless('Sources', sourceLines(answer))}
      </div>
      ${this.leftOut()}
    `;
  }
}

customElements.define('print-sheet', PrintSheet);
