import { html, nothing } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import { type Row, rowsOf } from '../cases/rows';
import { caseFinder } from '../cases/search';
import { topicTitle } from '../cases/topics';
import { PlainElement } from '../elements/plain-element';
import { topicChoice } from '../elements/topic-choice';
import { filedCase } from '../state/filed';
import { allKept } from '../state/kept';
import { type LessonItem, usualMinutes } from '../state/lesson';

export class CaseChosen extends CustomEvent<LessonItem> {
  constructor(item: LessonItem) {
    super('case-chosen', { detail: item, bubbles: true });
  }
}

/** So many are drawn before somebody asks for more. */
const few = 12;

const keyOf = ({ topic, name }: { readonly topic: string; readonly name: string }): string =>
  `${topic}/${name}`;

/** What a document begins with, up to its first table or block. */
const askedOf = (text: string): string =>
  text
    .replace(/^---\n[\s\S]*?\n---\n/, '')
    .trim()
    .split(/\n\s*(?=\||:::|\n\s*(?:\||:::))/)[0]
    ?.replace(/[*_`>#]/g, '')
    .trim() ?? '';

/** Every case that can be walked, found by what people say; nothing is judged here. */
export class CaseChooser extends PlainElement {
  static override properties = {
    items: { attribute: false },
    rows: { state: true },
    about: { state: true },
    query: { state: true },
    most: { state: true },
    hits: { state: true },
    looking: { state: true },
    failed: { state: true },
    questions: { state: true },
  };
  /** What the lesson walks already. */
  declare items: readonly LessonItem[];
  declare rows: readonly Row[] | undefined;
  /** The topic shown; '' shows all. */
  declare about: string;
  declare query: string;
  declare most: number;
  /** What was found for the present words; undefined where nobody looks for any. */
  declare hits: readonly Row[] | undefined;
  /** Whether what was typed is still being looked for, or could not be. */
  declare looking: boolean;
  declare failed: boolean;
  /** What is asked, of the cases that were looked at. */
  declare questions: ReadonlyMap<string, string>;
  private find: ReturnType<typeof caseFinder> | undefined;

  constructor() {
    super();
    this.items = [];
    this.about = '';
    this.query = '';
    this.most = few;
    this.looking = false;
    this.failed = false;
    this.questions = new Map();
  }

  override connectedCallback(): void {
    super.connectedCallback();
    allKept()
      .catch(() => [])
      .then((kept) => {
        const { own, filed } = rowsOf(kept);
        // What was changed here stands among one's own, and not a second time as it came.
        this.rows = [...own, ...filed.filter((row) => row.own === 'filed')];
      });
  }

  private async search({ target }: Event): Promise<void> {
    if (!(target instanceof HTMLInputElement)) return;
    const query = target.value;
    this.query = query;
    this.most = few;
    if (query.trim() === '' || !this.rows) {
      this.hits = undefined;
      this.looking = false;
      return;
    }
    this.find ??= caseFinder(this.rows);
    this.looking = true;
    const found = await this.find(query).catch(() => undefined);
    if (query !== this.query) return;
    this.hits = found?.hits;
    this.looking = false;
    this.failed = found === undefined;
  }

  private get shown(): readonly Row[] {
    return (this.hits ?? this.rows ?? []).filter(
      ({ topic }) => this.about === '' || topic === this.about,
    );
  }

  /** The question of a case, for whom its title tells too little; read when it is wanted. */
  private async peek({ target }: Event, row: Row): Promise<void> {
    if (!(target instanceof HTMLDetailsElement) || !target.open) return;
    if (this.questions.has(keyOf(row))) return;
    const text = row.text ?? (await filedCase(row.topic, row.name).catch(() => undefined));
    const asked = text === undefined ? 'It could not be read: the network is away.' : askedOf(text);
    this.questions = new Map(this.questions).set(keyOf(row), asked);
  }

  private choice(row: Row) {
    const { topic, name, title, level } = row;
    const item: LessonItem = { topic, name, title, minutes: usualMinutes, note: '' };
    const on = this.items.some((each) => keyOf(each) === keyOf(row));
    return html`<label><input
        type="checkbox"
        .checked=${on}
        @change=${() => this.dispatchEvent(new CaseChosen(item))}
      /> ${title}${
        this.about === ''
          ? html` <span class="from small soft">${topicTitle(topic)}${level ? ` · ${level}` : ''}</span>`
          : level
            ? html` <span class="from small soft">${level}</span>`
            : nothing
      }</label>
      <details class="peek" @toggle=${(event: Event) => this.peek(event, row)}>
        <summary aria-label=${`What is asked: ${title}`}>What is asked</summary>
        <p>${this.questions.get(keyOf(row)) ?? 'Reading it …'}</p>
      </details>`;
  }

  protected override render() {
    const { rows, shown, most } = this;
    if (rows === undefined) return html`<p class="soft">Reading the list of cases …</p>`;
    const choose = (topic: string): void => {
      this.about = topic;
      this.most = few;
    };
    return html`<div class="finder">
        <label>What it is about, as a customer would ask<br />
          <input type="search" autocomplete="off" .value=${this.query} @input=${this.search} />
        </label>
        ${topicChoice(this.about, rows, choose)}
      </div>
      <fieldset class="choices">
        <legend>Cases to choose from</legend>
        <p class="small soft" role="status">${
          this.looking
            ? 'Looking for what you typed …'
            : this.failed
              ? 'The search could not be read: the network is away.'
              : ''
        }</p>
        ${repeat(shown.slice(0, most), keyOf, (row) => this.choice(row))}
        ${shown.length === 0 ? html`<p>None is about that; try another word, or another topic.</p>` : nothing}
        ${
          shown.length > most
            ? html`<button type="button" @click=${() => {
                this.most = most + 10 * few;
              }}>Show more of ${shown.length}</button>`
            : nothing
        }
      </fieldset>`;
  }
}

customElements.define('case-chooser', CaseChooser);
