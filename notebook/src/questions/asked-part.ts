import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { notesListed } from '../cases/rows';
import { topicsListed, topicTitle } from '../cases/topics';
import { PlainElement } from '../elements/plain-element';
import type { Asked } from '../state/questions';
import type { Round } from '../state/round';
import { loadedTopics } from '../state/topics';
import type { Answered } from './answer-shapes';
import { asksOpen } from './either';
import type { FigureSet } from './open-figure';
import './open-figure';
import { AskedChanged } from './events';
import type { FactMended, Mended, ReadFact } from './fact-mend';
import './fact-mend';
import { aboutOf } from './known';
import './part-answer';
import type { Sought } from './reader';
import { listsIn, rowsText, weightsIn, withWeights } from './rows-told';
import {
  backOf,
  factsOf,
  mendedOf,
  otherBack,
  type ReadPart,
  returnedText,
  withMended,
  withOpen,
} from './told-so-far';
import { type Stretch, stretches } from './words';

/** One question of a message: its words with what was read in them, and its answer, ready to leave. */
export class AskedPart extends PlainElement {
  static override properties = {
    asked: { attribute: false },
    question: { attribute: false },
    personal: { attribute: false },
    answer: { attribute: false },
    labels: { attribute: false },
    round: { attribute: false },
    mending: { state: true },
  };
  declare asked: Asked;
  declare question: ReadPart;
  /** Words of the message that never leave. */
  declare personal: readonly string[];
  declare answer: (of: Sought, isFirst?: boolean) => Promise<Answered | undefined>;
  /** What facts are called, by id. */
  declare labels: (topic: string, fact: string) => string;
  /** The round that is still to be spoken. */
  declare round: Round | undefined;
  /** The words whose facts are being set right; undefined: none. */
  declare mending: string | undefined;

  private change(change: Partial<Asked>): void {
    this.dispatchEvent(new AskedChanged({ ...this.asked, ...change }));
  }

  private strike(facts: readonly string[]): void {
    const { struck } = this.asked;
    const gone = facts.every((each) => struck.includes(each));
    const others = struck.filter((each) => !facts.includes(each));
    this.change({ struck: gone ? others : [...others, ...facts] });
  }

  private isStruck(facts: readonly string[]): boolean {
    return facts.every((each) => this.asked.struck.includes(each));
  }

  /** Facts as they were read in some words, and as they count now. */
  private factsIn(facts: readonly string[]): readonly ReadFact[] {
    const mended = mendedOf(this.asked, this.question);
    return facts.map((each) => {
      const [fact = '', ...value] = each.split(': ');
      const read = value.join(': ');
      const label = this.labels(this.question.topic ?? '', fact);
      return { fact, label, read, now: mended[fact] ?? read };
    });
  }

  private words(): readonly TemplateResult[] {
    return stretches(this.question, this.personal).map(({ text, kind, facts }) => {
      if (kind === 'plain') return html`${text}`;
      if (kind === 'personal') {
        return html`<span class="asked-personal" title="Personal: it is left out wherever this leaves">${text}</span>`;
      }
      const isStruck = this.isStruck(facts);
      const told = this.factsIn(facts).map(({ label, now }) => `${label}: ${now}`);
      return html`<button type="button" class="asked-fact" aria-pressed=${isStruck ? 'false' : 'true'}
        aria-expanded=${this.mending === text ? 'true' : 'false'}
        title="${isStruck ? 'Not taken' : 'Read'} as ${told.join(', ')}; press to set it right or to leave it out"
        @click=${() => {
          this.mending = this.mending === text ? undefined : text;
        }}>${text}</button>`;
    });
  }

  /** Of the words that were pressed: what was read there, to be set right. */
  private mend() {
    const { mending } = this;
    const of = stretches(this.question, this.personal).find(
      ({ text, kind }) => kind === 'fact' && text === mending,
    );
    if (!of) return nothing;
    const topic = loadedTopics[this.question.topic ?? ''];
    return html`<fact-mend .facts=${this.factsIn(of.facts)} .topic=${topic} .words=${of.text} .struck=${this.isStruck(of.facts)}
      @fact-mended=${({ detail }: FactMended) => this.mended(of, detail)}></fact-mend>`;
  }

  private mended({ facts, text }: Stretch, mended: Mended): void {
    this.mending = undefined;
    if ('strike' in mended) this.strike(facts);
    if ('values' in mended) {
      const { asked, question } = this;
      const back = backOf(asked, question);
      const now = Object.entries(mended.values).reduce(
        (so, [fact, value]) => withMended(so, question, fact, value),
        asked,
      );
      // What was set right by hand last counts before what came back.
      const over = Object.keys(mended.values).flatMap((fact) => {
        const value = Object.hasOwn(back, fact) ? back[fact] : undefined;
        return value === undefined ? [] : [returnedText(fact, value)];
      });
      this.change({ ...now, struck: [...now.struck, ...over] });
    }
    void this.updateComplete.then(() => {
      const words = [...this.querySelectorAll<HTMLElement>('.asked-fact')];
      words.find((each) => each.textContent === text)?.focus();
    });
  }

  private factSaid(fact: string): string {
    const [id = '', ...value] = fact.split(': ');
    return `${this.labels(this.question.topic ?? '', id)}: ${value.join(': ')}`;
  }

  private facts() {
    const { asked, question: part } = this;
    const lists = new Set(listsIn(part).map(({ fact }) => fact));
    const told = Object.entries(factsOf(asked, part)).filter(([fact]) => !lists.has(fact));
    const mended = mendedOf(asked, part);
    const said = told.map(([fact, value]) => {
      const own = mended[fact] === value ? ', set right by hand' : '';
      return `${this.factSaid(returnedText(fact, value))}${own}`;
    });
    return html`<span class="small soft">${said.join(' · ')}</span>
      ${listsIn(part).map((each) => this.list(each))} ${this.open()} ${this.back()}`;
  }

  /** People or loads, each weight to be set right in a field of its own, or all of them left out. */
  private list(list: ReturnType<typeof listsIn>[number]) {
    const { asked, question } = this;
    const { said, rows } = list;
    const own = asked.mended?.[question.text] ?? {};
    const weights = weightsIn(list, own);
    const now = rows.map((row, at) => ({ ...row, weight: weights[at]?.now ?? '' }));
    const told = this.factSaid(returnedText(list.fact, now));
    const isStruck = this.isStruck([said]);
    const isOpen = this.mending === said;
    return html`<button type="button" class="asked-fact small" aria-pressed=${isStruck ? 'false' : 'true'}
      aria-expanded=${isOpen ? 'true' : 'false'}
      title="${isStruck ? 'Not taken' : 'Read'} as ${told}; press to set it right or to leave it out"
      @click=${() => {
        this.mending = isOpen ? undefined : said;
      }}>${told}</button>${
        isOpen
          ? html`<fact-mend .facts=${weights} .words=${rowsText(rows)} .struck=${isStruck} @fact-mended=${({
              detail,
            }: FactMended) => {
              this.mending = undefined;
              if ('strike' in detail) this.strike([said]);
              if ('values' in detail)
                this.change(withWeights(asked, question, list, detail.values));
            }}></fact-mend>`
          : nothing
      }`;
  }

  /** What is no single word of the message, to be struck out by a touch all the same. */
  private told(fact: string) {
    const isStruck = this.asked.struck.includes(fact);
    const told = this.factSaid(fact);
    return html`<button type="button" class="asked-fact small" aria-pressed=${isStruck ? 'false' : 'true'}
      title="${isStruck ? 'Not taken' : 'Read'} as ${told}; press to ${isStruck ? 'take it' : 'strike it out'}"
      @click=${() => this.strike([fact])}>${told}</button>`;
  }

  /** A figure of which nobody said what it is: it is asked here, and set by a touch. */
  private open() {
    const { asked, question: part } = this;
    const topic = loadedTopics[part.topic ?? ''];
    if (!topic) return nothing;
    const mended = mendedOf(asked, part);
    return asksOpen(topic, part.open ?? [], mended).map(
      (asks) =>
        html`<open-figure .asks=${asks} @figure-set=${({ detail: { open, fact } }: FigureSet) =>
          this.change(withOpen(this.asked, part, open, fact))}></open-figure>`,
    );
  }

  private back() {
    const { asked, question: part } = this;
    const all = asked.back && Object.hasOwn(asked.back, part.text) ? asked.back[part.text] : {};
    const told = Object.entries(all ?? {});
    if (told.length === 0) return nothing;
    const other = otherBack(asked, part);
    if (other !== undefined) {
      return html`<span class="small asked-back">What came back was asked by “${topicTitle(other)}”; it counts only where the question is about that.</span>`;
    }
    return html`<span class="small asked-back">Came back: ${told.map(([fact, value]) =>
      this.told(returnedText(fact, value)),
    )}</span>`;
  }

  private about() {
    const { asked, question: part } = this;
    const now = aboutOf(asked, part);
    const option = (value: string, words: string) =>
      html`<option value=${value} ?selected=${value === now}>${words}</option>`;
    return html`<label class="asked-about"><span class="small soft">About</span>
      <select .value=${live(now)} @change=${({ target }: Event) => {
        if (!(target instanceof HTMLSelectElement)) return;
        this.change({ topics: { ...asked.topics, [part.text]: target.value } });
      }}>
        ${option('none', 'no rules of ours')}
        <optgroup label="Rules">${topicsListed.map(({ id, title }) => option(id, title))}</optgroup>
        <optgroup label="Notes">${notesListed.map(({ name, title }) => option(`note/${name}`, title))}</optgroup>
      </select></label>`;
  }

  protected override render() {
    const { asked, question, personal, answer, round } = this;
    return html`<div class="asked-part">
      <div class="asked-question"><p class="asked-words">${this.words()}</p>
        ${this.mend()}
        <p class="asked-known">${this.about()} ${this.facts()}</p>
        ${question.refused ? html`<p class="error">${question.refused}</p>` : nothing}</div>
      <part-answer .asked=${asked} .question=${question} .personal=${personal} .answer=${answer} .round=${round}></part-answer>
    </div>`;
  }
}

customElements.define('asked-part', AskedPart);
