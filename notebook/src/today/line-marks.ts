import type { LineMark } from '@tarebook/record';
import type { Topic } from '@tarebook/rules/engine';
import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing } from 'lit';
import '../counter/quantity-field';
import { PlainElement } from '../elements/plain-element';
import { people } from '../state/people';
import { refusalOf } from '../state/refused';
import type { Corrected } from './draft';
import { markKey, shown } from './line-case';

/** A mark was put right. */
export class MarkMended extends CustomEvent<{ mend: (now: Corrected) => Partial<Corrected> }> {
  constructor(mend: (now: Corrected) => Partial<Corrected>) {
    super('mark-mended', { detail: { mend }, bubbles: true });
  }
}

/** A comma stands right behind its word, whatever is written beneath. */
const endOf = ({ to }: LineMark, text: string): number =>
  to + (/^[,.;:!?]?/.exec(text.slice(to))?.[0].length ?? 0);

/**
 * The words of a line with what was understood beneath them, each to be put right by a touch.
 *
 *     crossover rated five thousand, trailer thirty-nine hundred, four of us and a dog
 *               ───────────────────  ───────────────────────────  ──────────     ─────
 *               Tow rating 5,000 lb  which weight?                4 adults       1 dog
 */
export class LineMarks extends PlainElement {
  static override properties = {
    text: { attribute: false },
    marks: { attribute: false },
    topic: { attribute: false },
    corrected: { attribute: false },
    system: { attribute: false },
    open: { state: true },
  };
  declare text: string;
  declare marks: readonly LineMark[];
  declare topic: Topic;
  declare corrected: Corrected;
  declare system: UnitSystem;
  /** The key of the mark that is being put right. */
  declare open: string | undefined;

  private label = (id: string): string => this.topic.facts[id]?.label ?? id;

  private mend(mend: (now: Corrected) => Partial<Corrected>): void {
    this.dispatchEvent(new MarkMended(mend));
  }

  private meaning(mark: LineMark, key: string): string {
    const { corrected, system } = this;
    if (corrected.dropped.includes(key)) return 'left out';
    if (mark.kind === 'fact') {
      return `${this.label(mark.fact)} ${shown(corrected.values[mark.fact] ?? mark.value, system)}`;
    }
    if (mark.kind === 'people') {
      const count = corrected.counts[mark.who] ?? mark.count;
      return `${count} ${count === 1 ? people[mark.who].one : people[mark.who].many}`;
    }
    const chosen = corrected.chosen[key];
    if (chosen === '') return 'not a fact';
    if (chosen !== undefined) {
      return `${this.label(chosen)} ${shown(corrected.values[chosen] ?? mark.value, system)}`;
    }
    return mark.among.length > 0 ? 'which is it?' : 'not read';
  }

  private touch(mark: LineMark, key: string): void {
    if (this.corrected.dropped.includes(key)) {
      this.mend(({ dropped }) => ({ dropped: dropped.filter((each) => each !== key) }));
      return;
    }
    this.open = this.open === key ? undefined : key;
    if (this.open === undefined || mark.kind === 'people') return;
    void this.updateComplete.then(async () => {
      await new Promise(requestAnimationFrame);
      this.querySelector<HTMLElement>('.mark-open :is([data-entry], button, select)')?.focus();
    });
  }

  private takeAway(key: string) {
    return html`<button type="button" class="quiet" @click=${() => {
      this.open = undefined;
      this.mend(({ dropped }) => ({ dropped: [...dropped, key] }));
    }}>Take it away</button>`;
  }

  private field(id: string, value: string) {
    const { topic, system, corrected } = this;
    const fact = topic.facts[id];
    if (fact?.kind !== 'quantity') return nothing;
    return html`<quantity-field .text=${corrected.values[id] ?? value} .unit=${fact.unit} .label=${fact.label}
      .field=${'mark-field'} .fact=${id} .system=${system}
      .refuses=${(typed: string) => refusalOf(topic, id, typed)?.says}></quantity-field>`;
  }

  /** Which of the facts of a topic a number may be at all, by its unit. */
  private possible(value: string): readonly string[] {
    const { facts } = this.topic;
    return Object.keys(facts).filter((id) => {
      const fact = facts[id];
      return fact?.kind === 'quantity' && refusalOf(this.topic, id, value) === undefined;
    });
  }

  private choose(key: string, id: string): void {
    this.open = undefined;
    this.mend(({ chosen }) => ({ chosen: { ...chosen, [key]: id } }));
  }

  /** Which fact a number is: the likely ones by a touch, any other from a list. */
  private which(mark: LineMark & { kind: 'open' }, key: string) {
    const others = this.possible(mark.value).filter((id) => !mark.among.includes(id));
    return html`<div class="which">
      ${mark.among.map(
        (id) =>
          html`<button type="button" aria-pressed=${this.corrected.chosen[key] === id ? 'true' : 'false'}
            @click=${() => this.choose(key, id)}>${this.label(id)}</button>`,
      )}
      <label><span class="hidden">Another fact for ${shown(mark.value, this.system)}</span>
        <select @change=${({ target }: Event) => {
          if (target instanceof HTMLSelectElement && target.value !== '?')
            this.choose(key, target.value);
        }}>
          <option value="?">${mark.among.length > 0 ? 'another …' : 'it is …'}</option>
          ${others.map((id) => html`<option value=${id}>${this.label(id)}</option>`)}
          <option value="">no fact of this</option>
        </select></label>
    </div>`;
  }

  private editor() {
    const { text, marks, open, corrected } = this;
    const mark = marks.find((each) => markKey(each, text) === open);
    if (!mark || open === undefined) return nothing;
    const said = text.slice(mark.from, mark.to);
    const id =
      mark.kind === 'fact' ? mark.fact : mark.kind === 'open' ? corrected.chosen[open] : '';
    return html`<div class="mark-open" role="group" aria-label="“${said}”" @value-typed=${(
      event: Event,
    ) => {
      if (!(event instanceof CustomEvent) || !id) return;
      const value = String(event.detail.text);
      event.stopPropagation();
      this.mend(({ values }) => ({ values: { ...values, [id]: value } }));
    }} @went-on=${(event: Event) => {
      event.stopPropagation();
      this.open = undefined;
    }} @keydown=${(event: KeyboardEvent) => {
      if (event.key === 'Escape') this.open = undefined;
    }}>
      <p class="small soft">“${said}”${id ? html` is read as <label for="mark-field">${this.label(id)}</label>` : nothing}</p>
      ${id ? this.field(id, mark.kind === 'people' ? '' : mark.value) : nothing}
      ${mark.kind === 'open' ? this.which(mark, open) : nothing}
      ${mark.kind === 'people' ? html`<p class="small">Change the number by the keys below.</p>` : nothing}
      <p class="mark-acts">${this.takeAway(open)}
        <button type="button" class="quiet" @click=${() => {
          this.open = undefined;
        }}>Done</button></p>
    </div>`;
  }

  private one(mark: LineMark) {
    const { text, open, corrected } = this;
    const key = markKey(mark, text);
    const meaning = this.meaning(mark, key);
    const asks = mark.kind === 'open' && corrected.chosen[key] === undefined;
    const gone = corrected.dropped.includes(key) || corrected.chosen[key] === '';
    const kind = gone ? 'gone' : asks ? 'asks' : 'read';
    return html`<button type="button" class="mark is-${kind}" aria-expanded=${key === open ? 'true' : 'false'}
      @click=${() => this.touch(mark, key)}><span><span class="said">${text.slice(mark.from, mark.to)}</span>${text.slice(mark.to, endOf(mark, text))}</span><span
      class="means small">${meaning}</span></button>`;
  }

  protected override render() {
    const { text, marks } = this;
    let end = 0;
    const parts = marks.flatMap((mark) => {
      const before = text.slice(end, mark.from);
      end = endOf(mark, text);
      return [html`<span class="unread">${before}</span>`, this.one(mark)];
    });
    return html`<p class="line-marks" role="group" aria-label="What was understood">${parts}<span class="unread">${text.slice(end)}</span></p>
      ${this.editor()}`;
  }
}

customElements.define('line-marks', LineMarks);
