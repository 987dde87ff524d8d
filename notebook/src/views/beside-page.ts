import rows from 'virtual:loads';
import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing, type PropertyValues } from 'lit';
import { whyTooMuch } from '../aside/first';
import '../beside/beside.css';
import '../beside/beside-print.css';
import { aloneName } from '../beside/begin';
import { besideTicket, factsTable, limitsTable } from '../beside/beside-table';
import { driverAlone, type Part, swapped, toldOf, withLoad } from '../beside/swap';
import { PlainElement } from '../elements/plain-element';
import { besideAddress, caseAddress, readAddress } from '../state/address';
import { type Beside, type Column, mostColumns, openBeside, packBeside } from '../state/beside';
import { asksFor, catalogueFacts, type Entries, openCatalogue } from '../state/catalogue';
import { readHouses } from '../state/house';
import { type Judged, judge } from '../state/judged';
import { pack } from '../state/link';
import { loadsFor } from '../state/loads';
import { openReader, openYaml, readDocument } from '../state/reading';
import { openTopic } from '../state/topics';

/** Who listens is told once the verdicts have settled. */
const settled = 800;

const partWords: Readonly<Record<Part, string>> = {
  vehicle: 'Vehicle',
  trailer: 'Trailer',
  load: 'Load',
};

/** One case with two or three rigs beside each other: their verdicts, and what differs. */
export class BesidePage extends PlainElement {
  static override properties = {
    system: { attribute: false },
    beside: { state: true },
    broken: { state: true },
    spoken: { state: true },
    said: { state: true },
  };
  declare system: UnitSystem;
  declare beside: Beside | undefined;
  /** Why the link leads to nothing, in a sentence. */
  declare broken: string;
  declare spoken: string;
  declare said: string;
  private topicId = '';
  private name = '';
  private judged: readonly Judged[] = [];
  private entries: Entries = { vehicles: [], trailers: [] };
  private timer: ReturnType<typeof setTimeout> | undefined;
  private opening: Promise<void> = Promise.resolve();

  constructor() {
    super();
    this.broken = '';
    this.spoken = '';
    this.said = '';
  }

  override connectedCallback(): void {
    super.connectedCallback();
    addEventListener('hashchange', this.arrive);
    this.arrive();
  }

  override disconnectedCallback(): void {
    removeEventListener('hashchange', this.arrive);
    clearTimeout(this.timer);
    super.disconnectedCallback();
  }

  /** The rigs are there, or it is said why not. */
  protected override async getUpdateComplete(): Promise<boolean> {
    await super.getUpdateComplete();
    await this.opening;
    return super.getUpdateComplete();
  }

  private arrive = (): void => {
    this.opening = this.open().catch(() => {
      this.broken = 'This part of the page could not be read; reload it.';
    });
  };

  private async open(): Promise<void> {
    const address = readAddress(location.hash);
    if (address.page !== 'beside') return;
    const [found, topic, entries] = await Promise.all([
      openBeside(address.packed),
      openTopic(address.topic),
      openCatalogue(),
      readHouses(),
    ]);
    this.topicId = address.topic;
    this.name = address.name;
    this.entries = entries;
    if ('says' in found) this.broken = found.says;
    else if (!topic) this.broken = `There are no rules called “${address.topic}” here.`;
    else {
      // They came with a link: beside the page first, where they cannot hold it.
      const texts = new Set([found.from, ...found.columns.map(({ text }) => text)]);
      const tooMuch = await whyTooMuch(
        'This link',
        [...texts].map((text) => ({ topic: address.topic, text })),
      );
      if (tooMuch !== undefined) {
        this.broken = tooMuch;
        return;
      }
      // Another rig is a text that nobody has read yet.
      await Promise.all([openReader(), openYaml()]);
      this.broken = '';
      this.beside = found;
    }
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (!this.beside || !(changed.has('beside') || changed.has('system'))) return;
    this.judged = this.beside.columns.map(({ text }) => judge(text, undefined, this.system));
    clearTimeout(this.timer);
    this.timer = setTimeout(() => {
      this.spoken = this.judged
        .map(({ answer, current }, at) => {
          return `${this.nameOf(at)}: ${current && answer ? answer.words : 'not read'}.`;
        })
        .join(' ');
    }, settled);
  }

  private nameOf(at: number): string {
    const column = this.beside?.columns[at];
    const parts = column ? [column.vehicle, column.trailer, column.load] : [];
    const name = parts.filter((each) => each !== '').join(', ') || 'as in the case';
    return `${name.charAt(0).toUpperCase()}${name.slice(1)}`;
  }

  /** Other rigs from now on, in the address too, where going back finds the ones before. */
  private async become(columns: readonly Column[]): Promise<void> {
    const { beside } = this;
    if (!beside) return;
    const now = { ...beside, columns };
    this.beside = now;
    this.said = '';
    const packed = await packBeside(now);
    if (this.beside === now) {
      history.pushState(null, '', besideAddress(this.topicId, this.name, packed));
    }
  }

  private chosen(at: number, part: Part, choice: string): void {
    const { beside } = this;
    const column = beside?.columns[at];
    if (!beside || !column) return;
    const doc = readDocument(column.text);
    const told = this.toldFor(part, choice);
    if (!told) return;
    const text = swapped(doc, part, told);
    const next = { ...column, [part]: choice, text };
    void this.become(beside.columns.map((each, place) => (place === at ? next : each)));
  }

  private toldFor(part: Part, choice: string) {
    const { beside, entries } = this;
    if (!beside) return undefined;
    const from = readDocument(beside.from);
    if (choice === '') return from;
    if (part === 'load') {
      if (choice === aloneName) return driverAlone(from);
      const load = this.loads().find(({ name }) => name === choice);
      return load && withLoad(from, load);
    }
    const entry = entries[`${part}s`].find(({ name }) => name === choice);
    return entry && from.topic && toldOf(catalogueFacts(from.topic, part, entry));
  }

  private loads() {
    const topic = this.judged[0]?.doc.topic;
    const lists = Object.entries(topic?.facts ?? {}).flatMap(([id, { kind }]) =>
      kind === 'rows' ? [id] : [],
    );
    return loadsFor(rows, lists);
  }

  private choices(part: Part): readonly string[] {
    if (part === 'load') return [aloneName, ...this.loads().map(({ name }) => name)];
    return this.entries[`${part}s`].map(({ name }) => name);
  }

  private picker(at: number, part: Part, column: Column) {
    const topic = this.judged[at]?.doc.topic;
    if (!topic || (part !== 'load' && !asksFor(topic, part))) return nothing;
    const all = this.choices(part);
    if (all.length === 0) return nothing;
    const now = column[part];
    const offered = now === '' || all.includes(now) ? all : [now, ...all];
    return html`<label><span class="small soft">${partWords[part]}</span>
      <select aria-label="${partWords[part]} of rig ${at + 1}" @change=${({ target }: Event) => {
        if (target instanceof HTMLSelectElement) this.chosen(at, part, target.value);
      }}>
        <option value="" ?selected=${now === ''}>the case’s</option>
        ${offered.map((each) => html`<option value=${each} ?selected=${each === now}>${each}</option>`)}
      </select></label>`;
  }

  private async openAsCase({ text }: Column, at: number): Promise<void> {
    location.hash = `${caseAddress(this.topicId, `${this.name}-rig-${at + 1}`)}/${await pack(text)}`;
  }

  private share = async (): Promise<void> => {
    try {
      await navigator.clipboard.writeText(location.href);
      this.said = 'Link copied. It holds all rigs as they stand here.';
    } catch {
      this.said = 'This browser does not let the page copy; the address above is the link.';
    }
  };

  private column(column: Column, at: number, beside: Beside) {
    const judged = this.judged[at];
    if (!judged) return nothing;
    const readable = judged.doc.troubles.length === 0;
    const takeAway = () => this.become(beside.columns.filter((_, place) => place !== at));
    return html`<section class="beside-rig" aria-label="Rig ${at + 1}: ${this.nameOf(at)}">
      <h2>${this.nameOf(at)}</h2>
      ${besideTicket(judged, this.system)}
      <div class="beside-picks noprint">
        ${readable ? (['vehicle', 'trailer', 'load'] as const).map((part) => this.picker(at, part, column)) : nothing}
        <div class="beside-acts"><button type="button" class="quiet" @click=${() => this.openAsCase(column, at)}>Open as a case</button>
        ${beside.columns.length > 1 ? html`<button type="button" class="quiet" aria-label="Take rig ${at + 1} away" @click=${takeAway}>Take away</button>` : nothing}</div>
      </div>
    </section>`;
  }

  private shown(beside: Beside) {
    const { columns } = beside;
    const topic = this.judged.find(({ doc }) => doc.topic)?.doc.topic;
    const [first] = this.judged;
    const last = columns.at(-1);
    const names = columns.map((_, at) => this.nameOf(at));
    const drawn = topic && { topic, names, all: this.judged, system: this.system };
    const answered = this.judged.find(({ answer, current }) => current && answer)?.answer;
    return html`<h1>Side by side</h1>
      <p class="soft">${first?.doc.front.title ?? ''} · <a href=${caseAddress(this.topicId, this.name)}>to the case</a></p>
      <div class="beside rigs-${columns.length}">
        <div class="beside-rigs">${columns.map((each, at) => this.column(each, at, beside))}</div>
        <div class="acts noprint">
          ${
            last && columns.length < mostColumns
              ? html`<button type="button" @click=${() => this.become([...columns, last])}>Set another beside it</button>`
              : nothing
          }
          <button type="button" @click=${this.share}>Copy a link to this</button>
          <button type="button" @click=${() => print()}>Print</button>
          <span class="small soft" role="status">${this.said}</span>
        </div>
        ${drawn ? html`${limitsTable(drawn)}${factsTable(drawn)}` : nothing}
        ${
          answered
            ? html`<section><h2>Take care</h2><ul class="small">${answered.cautions.slice(0, 3).map((each) => html`<li>${each}</li>`)}</ul></section>`
            : nothing
        }
      </div>
      <p class="hidden" aria-live="polite">${this.spoken}</p>`;
  }

  protected override render() {
    const { broken, beside } = this;
    if (broken !== '') {
      return html`<h1>Side by side</h1><p class="notice" role="alert">${broken}</p>
        <p><a href="#/cases">All cases</a> are one page back.</p>`;
    }
    return beside ? this.shown(beside) : html`<p class="soft">Reading the rigs …</p>`;
  }
}

customElements.define('beside-page', BesidePage);
