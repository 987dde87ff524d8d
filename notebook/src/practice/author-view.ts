import { topics } from '@tarebook/rules';
import { html, nothing } from 'lit';
import { PlainElement } from '../elements/plain-element';
import { alwaysAsked } from '../state/always-asked';
import { saveAs } from '../state/files';
import { beginOwn } from '../state/own-case';
import { type Authored, amountColumn, resultsOf, written } from './authored';
import './practice.css';

const blank = (topic: string): Authored => {
  const rules = topics[topic];
  const facts = (rules ? alwaysAsked(rules) : []).map((id) => ({ id, value: '', readFrom: '' }));
  const asked = { title: '', topic, question: '', facts, rows: [], why: '', expect: {} };
  return { ...asked, predict: 'verdict', within: '', prompt: '' };
};

/** A trainer writes a case: title, question, where each thing is read, what to predict, what must come out. */
export class AuthorView extends PlainElement {
  static override properties = { draft: { state: true }, address: { state: true } };
  declare draft: Authored;
  /** Where the case opens, once it is kept. */
  declare address: string;

  constructor() {
    super();
    this.draft = blank('tow-fit');
    this.address = '';
  }

  private change(part: Partial<Authored>): void {
    this.draft = { ...this.draft, ...part };
    this.address = '';
  }

  private typed(part: (text: string) => Partial<Authored>) {
    return ({ target }: Event): void => {
      if (
        target instanceof HTMLInputElement ||
        target instanceof HTMLTextAreaElement ||
        target instanceof HTMLSelectElement
      ) {
        this.change(part(target.value));
      }
    };
  }

  private area(
    id: string,
    label: string,
    value: string,
    part: (text: string) => Partial<Authored>,
  ) {
    return html`<label for=${id}>${label}</label><textarea id=${id} rows="3" .value=${value} @input=${this.typed(part)}></textarea>`;
  }

  private facts() {
    const { facts, topic } = this.draft;
    const rules = topics[topic];
    if (!rules) return nothing;
    const set = (at: number, part: Partial<Authored['facts'][number]>) => ({
      facts: facts.map((each, i) => (i === at ? { ...each, ...part } : each)),
    });
    const more = Object.entries(rules.facts).filter(
      ([id, { kind }]) => kind !== 'rows' && !facts.some((each) => each.id === id),
    );
    return html`<h2>What is known, and where it is read</h2>
      <ul class="author">${facts.map(({ id, value, readFrom }, at) => {
        const label = rules.facts[id]?.label ?? id;
        return html`<li><span>${label}</span>
          <label>Value <input class="num" aria-label=${`Value: ${label}`} autocomplete="off" placeholder="unknown" .value=${value} @input=${this.typed((text) => set(at, { value: text }))} /></label>
          <label>Read from <input aria-label=${`Read from: ${label}`} autocomplete="off" .value=${readFrom} @input=${this.typed((text) => set(at, { readFrom: text }))} /></label>
          <button type="button" aria-label=${`Take out: ${label}`} @click=${() => this.change({ facts: facts.filter((each) => each.id !== id) })}>Take out</button></li>`;
      })}</ul>
      <label>One thing more <select id="more-facts" .value=${''} @change=${(event: Event) => {
        const { target } = event;
        if (!(target instanceof HTMLSelectElement) || target.value === '') return;
        this.change({ facts: [...facts, { id: target.value, value: '', readFrom: '' }] });
        target.value = '';
      }}><option value="">choose …</option>${more.map(([id, { label }]) => html`<option value=${id}>${label}</option>`)}</select></label>`;
  }

  private rows() {
    const { rows, topic } = this.draft;
    const rules = topics[topic];
    if (!rules) return nothing;
    const lists = Object.entries(rules.facts).filter(([id]) => amountColumn(rules, id));
    if (lists.length === 0) return nothing;
    const set = (at: number, part: Partial<Authored['rows'][number]>) => ({
      rows: rows.map((each, i) => (i === at ? { ...each, ...part } : each)),
    });
    return html`<h2>Lists</h2>
      <ul class="author">${rows.map(({ list, label, amount }, at) => {
        const name = rules.facts[list]?.label ?? list;
        return html`<li><span>${name}</span>
          <label>What <input aria-label=${`${name}, what, ${at + 1}`} autocomplete="off" .value=${label} @input=${this.typed((text) => set(at, { label: text }))} /></label>
          <label>How much <input class="num" aria-label=${`${name}, how much, ${at + 1}`} autocomplete="off" .value=${amount} @input=${this.typed((text) => set(at, { amount: text }))} /></label>
          <button type="button" aria-label=${`Take out: ${name}, ${at + 1}`} @click=${() => this.change({ rows: rows.toSpliced(at, 1) })}>Take out</button></li>`;
      })}</ul>
      <div class="acts">${lists.map(([id, { label }]) => html`<button type="button" @click=${() => this.change({ rows: [...rows, { list: id, label: '', amount: '' }] })}>Add to: ${label}</button>`)}</div>`;
  }

  private async keep(text: string): Promise<void> {
    this.address = await beginOwn(this.draft.topic, text);
  }

  private outcome() {
    const { draft } = this;
    const rules = topics[draft.topic];
    if (!rules) return nothing;
    const { text, wrong, found } = written(draft, rules);
    const results = resultsOf(rules);
    const labelOf = (id: string) => results.find((each) => each.id === id)?.label ?? id;
    const name =
      draft.title
        .toLowerCase()
        .replace(/[^\p{L}\p{N}]+/gu, '-')
        .replace(/^-+|-+$/g, '')
        .slice(0, 60) || 'case';
    return html`<h2>What must come out</h2>
      ${Object.entries(found).map(
        ([
          id,
          came,
        ]) => html`<label>${labelOf(id)} <input data-expect=${id} autocomplete="off" placeholder=${came} .value=${draft.expect[id] ?? ''} @input=${this.typed((value) => ({ expect: { ...draft.expect, [id]: value } }))} /></label>
          <p class="small soft">Now comes out: ${came}. Left empty, that is what must come out.</p>`,
      )}
      <div role="status">${
        wrong.length === 0
          ? html`<p>The case holds: what comes out is what must.</p>`
          : html`<ul class="error">${wrong.slice(0, 8).map((each) => html`<li>${each}</li>`)}</ul>`
      }</div>
      <div class="acts">
        <button class="main" ?disabled=${wrong.length > 0} @click=${() => this.keep(text)}>Keep it among your cases</button>
        <button ?disabled=${wrong.length > 0} @click=${() => saveAs(`${name}.md`, text, 'text/markdown')}>Save as a case document</button>
      </div>
      ${this.address ? html`<p role="status">Kept. <a href=${this.address}>Open it</a>, or choose it for a lesson in <a href="#/class">Class</a>, where your own cases stand first.</p>` : nothing}`;
  }

  protected override render() {
    const { draft } = this;
    const rules = topics[draft.topic];
    return html`<h1>Write a case</h1>
      <p><a href="#/class">Class</a> · Vehicle, trailer and people should be invented. Nothing leaves this device.</p>
      <div class="author-form">
        <label>About <select id="author-topic" @change=${({ target }: Event) => {
          if (target instanceof HTMLSelectElement)
            this.draft = { ...blank(target.value), title: draft.title, question: draft.question };
        }}>${Object.entries(topics).map(([id, { title }]) => html`<option value=${id} ?selected=${id === draft.topic}>${title}</option>`)}</select></label>
        <label for="author-title">Title</label>
        <input id="author-title" autocomplete="off" maxlength="120" .value=${draft.title} @input=${this.typed((title) => ({ title }))} />
        ${this.area('author-question', 'The question, as it was asked', draft.question, (question) => ({ question }))}
        ${this.facts()}${this.rows()}
        <h2>What to predict</h2>
        <label>Result <select id="author-predict" @change=${this.typed((predict) => ({ predict }))}>${(rules ? resultsOf(rules) : []).map(({ id, label }) => html`<option value=${id} ?selected=${id === draft.predict}>${label}</option>`)}</select></label>
        <label>Met within <input id="author-within" autocomplete="off" placeholder="a tenth" .value=${draft.within} @input=${this.typed((within) => ({ within }))} /></label>
        ${this.area('author-prompt', 'How you ask for it', draft.prompt, (prompt) => ({ prompt }))}
        ${this.area('author-why', 'Why it comes out so', draft.why, (why) => ({ why }))}
        ${this.outcome()}
      </div>`;
  }
}

customElements.define('author-view', AuthorView);
