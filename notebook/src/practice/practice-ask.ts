import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing, type PropertyValues } from 'lit';
import { customerAsks, factsBrief } from '../class/case-read';
import { choiceSaid } from '../class/choice-said';
import { verdictWords } from '../class/predict';
import { verdictRead } from '../class/verdict-read';
import { PlainElement } from '../elements/plain-element';
import { surenesses } from '../state/group';
import { type Judged, judge } from '../state/judged';
import { type Asking, type Standing, scored, standing } from './ask-next';
import { ExerciseDone } from './exercise-events';
import type { Made } from './made';

/** Facts are hidden; the learner asks for one after another until the verdict is settled, and then says it. */
export class PracticeAsk extends PlainElement {
  static override properties = {
    made: { attribute: false },
    asking: { attribute: false },
    system: { attribute: false },
    asked: { state: true },
    said: { state: true },
    wrong: { state: true },
  };
  declare made: Made;
  declare asking: Asking;
  declare system: UnitSystem;
  declare asked: readonly string[];
  /** What the verdict was said to be, and how sure. */
  declare said: { readonly verdict: string; readonly sure: string } | undefined;
  declare wrong: string;
  private now: Standing | undefined;

  constructor() {
    super();
    this.asked = [];
    this.wrong = '';
  }

  /** Reckoned once for each question asked. */
  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('asked') || changed.has('asking')) this.now = standing(this.asking, this.asked);
  }

  private async ask(id: string): Promise<void> {
    this.asked = [...this.asked, id];
    await this.updateComplete;
    if (this.now?.settled) this.querySelector<HTMLElement>('#my-verdict')?.focus();
  }

  private async say(event: Event): Promise<void> {
    event.preventDefault();
    const chosen = (id: string) => this.querySelector<HTMLSelectElement>(id)?.value ?? '';
    const verdict = chosen('#my-verdict');
    this.wrong = verdict === '' ? 'It is settled; choose what the verdict is.' : '';
    if (verdict === '') {
      this.querySelector<HTMLElement>('#my-verdict')?.focus();
      return;
    }
    this.said = { verdict, sure: chosen('#my-sureness') };
    const { met, says } = scored(this.asking, this.asked.length);
    const isRight = verdict === this.made.answer.words;
    this.dispatchEvent(new ExerciseDone(`${says} The verdict: ${this.sure}.`, met && isRight));
    await this.updateComplete;
    this.querySelector<HTMLElement>('.score')?.focus();
  }

  /** “cannot say, certain” */
  private get sure(): string {
    const { verdict = '', sure = '' } = this.said ?? {};
    return sure === '' ? verdict : `${verdict}, ${sure}`;
  }

  private verdictForm() {
    const { topic } = this.made.doc;
    const words = topic ? [...new Set(verdictWords(topic))] : [];
    const option = (word: string) => html`<option value=${word}>${word}</option>`;
    return html`<p role="status">That settles it.</p>
      <form class="turn" @submit=${this.say} novalidate>
        <label>The verdict is
          <select id="my-verdict"><option value="">choose …</option>${words.map(option)}</select>
        </label>
        <label>How sure
          <select id="my-sureness"><option value="">not said</option>${surenesses.map(option)}</select>
        </label>
        <button>That is my answer</button>
        <p class="error" role="alert">${this.wrong}</p>
      </form>`;
  }

  private end({ answer }: Judged) {
    const { asking, asked, made } = this;
    const { met, says } = scored(asking, asked.length);
    const isRight = this.said?.verdict === made.answer.words;
    const label = (id: string) => asking.hidden.find((each) => each.id === id)?.label ?? id;
    return html`<p class="score" tabindex="-1" role="status"><strong>${met ? 'Well asked.' : 'Settled.'}</strong> ${says}
        You said ${this.sure}: ${isRight ? 'as it came out' : `it came out otherwise, ${made.answer.words}`}.</p>
      <p>The rules would have asked: ${asking.best.map((id, at) => html`${at > 0 ? ', then ' : ''}${label(id).toLowerCase()}`)}.</p>
      ${answer ? verdictRead({ doc: made.doc, answer }) : nothing}`;
  }

  protected override render() {
    const { made, asking, asked, system } = this;
    const { now } = this;
    if (!now) return nothing;
    const judged = judge(now.text);
    const { doc, answer } = judged;
    const left = asking.hidden.filter(({ id }) => !asked.includes(id));
    const last = now.asked.at(-1);
    const lastSaid = last && choiceSaid(asking.topic.facts[last.id], last.value);
    return html`${customerAsks(made, asking, system)}
      <h3>What is known</h3>
      ${answer ? factsBrief({ ...made, doc, answer }) : nothing}
      ${
        now.settled
          ? this.said
            ? this.end(judged)
            : this.verdictForm()
          : html`<h3>What do you ask next?</h3>
            <p>The verdict is open. Ask for what settles it, with as few questions as you can. Asked so far: ${asked.length}.</p>
            <div class="acts asks">${left.map(({ id, ask }) => html`<button @click=${() => this.ask(id)}>${ask}</button>`)}</div>
            <p role="status">${!last ? nothing : html`${last.label}: <strong>${lastSaid}</strong>. The verdict is still open.`}</p>`
      }`;
  }
}

customElements.define('practice-ask', PracticeAsk);
