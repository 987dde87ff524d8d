import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing } from 'lit';
import { PlainElement } from '../elements/plain-element';
import '../elements/working-steps';
import { committed, type Group, isOpen, waiting } from '../state/group';
import { answerRead, questionRead } from './case-read';
import { askedUnit, compared, type Question, readPrediction } from './predict';
import { walkedCase } from './record';

export class Committed extends CustomEvent<{ learner: string; said: string }> {
  constructor(learner: string, said: string) {
    super('prediction-committed', { detail: { learner, said }, bubbles: true });
  }
}

/** One case of a class: the question, each learner’s prediction, then what came out and why. */
export class ClassCase extends PlainElement {
  static override properties = {
    group: { attribute: false },
    system: { attribute: false },
    turn: { state: true },
    wrong: { state: true },
    told: { state: true },
  };
  declare group: Group;
  declare system: UnitSystem;
  /** Whose turn was chosen by hand; else the first who has not committed. */
  declare turn: string | undefined;
  declare wrong: string;
  declare told: string;

  constructor() {
    super();
    this.wrong = '';
    this.told = '';
  }

  private get learner(): string | undefined {
    const left = waiting(this.group);
    return left.find((each) => each === this.turn) ?? left[0];
  }

  private take(event: Event, question: Question): void {
    event.preventDefault();
    const { learner } = this;
    const field = this.querySelector<HTMLInputElement | HTMLSelectElement>('#prediction');
    if (!field || learner === undefined) return;
    const read = readPrediction(field.value, question, this.system);
    if ('wrong' in read) {
      this.wrong = read.wrong;
      field.focus();
      return;
    }
    const next = waiting(this.group).filter((each) => each !== learner);
    this.wrong = '';
    this.turn = undefined;
    field.value = '';
    const [then] = next;
    this.told = then
      ? `${learner} has committed. Hand over to ${then}.`
      : `${learner} has committed, and so has everyone. The working can be opened.`;
    this.dispatchEvent(new Committed(learner, read.said));
    if (then) field.focus();
    else this.updateComplete.then(() => this.querySelector<HTMLElement>('.open-working')?.focus());
  }

  private field(question: Question) {
    const shared = 'prediction-wrong';
    if (question.kind === 'word') {
      return html`<select id="prediction" aria-describedby=${shared} aria-invalid=${this.wrong ? 'true' : 'false'}>
        <option value="">choose …</option>
        ${question.words.map((word) => html`<option value=${word}>${word}</option>`)}
      </select>`;
    }
    return html`<input
        id="prediction"
        class="num"
        autocomplete="off"
        inputmode="decimal"
        aria-describedby=${shared}
        aria-invalid=${this.wrong ? 'true' : 'false'}
      />
      <span class="unit" aria-hidden="true">${askedUnit(question, this.system)}</span>`;
  }

  private turnForm(question: Question) {
    const { learner, group } = this;
    if (learner === undefined) return nothing;
    const left = waiting(group);
    const unit = question.kind === 'number' ? askedUnit(question, this.system) : '';
    const choose = (event: Event): void => {
      if (event.target instanceof HTMLSelectElement) this.turn = event.target.value;
    };
    return html`<form class="turn noprint" @submit=${(event: Event) => this.take(event, question)} novalidate>
      <label>Whose turn
        <select @change=${choose}>
          ${left.map((each) => html`<option value=${each} ?selected=${each === learner}>${each}</option>`)}
        </select>
      </label>
      <span>
        <label for="prediction">${learner} predicts${unit ? html`<span class="hidden">, in ${unit}</span>` : nothing}</label>
        ${this.field(question)}
      </span>
      <button>Commit</button>
      <p class="error" id="prediction-wrong" role="alert">${this.wrong}</p>
    </form>`;
  }

  private opening() {
    const left = waiting(this.group).length;
    const act = () => this.dispatchEvent(new Event('working-opened', { bubbles: true }));
    return html`<div class="acts">
      <button class="open-working" @click=${act}>
        ${left === 0 ? 'Open the working' : `Open the working without ${left} of ${this.group.learners.length}`}
      </button>
    </div>`;
  }

  private predictions(question: Question) {
    const { group, system } = this;
    return html`<table>
      <thead><tr><th scope="col">Learner</th><th scope="col">Predicted</th><th scope="col">Difference</th><th scope="col">Met</th></tr></thead>
      <tbody>${group.learners.map((learner) => {
        const said = committed(group, learner)?.said;
        if (said === undefined) {
          return html`<tr><th scope="row">${learner}</th><td class="soft">nothing</td><td></td><td></td></tr>`;
        }
        const { says, met } = compared(said, question, system);
        return html`<tr><th scope="row">${learner}</th><td class="num">${said}</td><td>${says}</td><td>${met ? 'met' : 'not met'}</td></tr>`;
      })}</tbody>
    </table>`;
  }

  protected override render() {
    const { group, system } = this;
    const each = group.cases[group.at];
    const walked = each && walkedCase(each.text);
    if (!each) return nothing;
    const last = group.at + 1 === group.cases.length;
    const on = () => this.dispatchEvent(new Event('class-goes-on', { bubbles: true }));
    const next = html`<div class="acts"><button @click=${on}>${last ? 'To the tally' : 'The next case'}</button></div>`;
    if (!walked) {
      return html`<h2>${each.title}</h2><p class="notice" role="alert">This case cannot be judged any more; go on to the next.</p>${next}`;
    }
    const { question, answer, doc } = walked;
    return html`
      <p class="soft small">Case ${group.at + 1} of ${group.cases.length}</p>
      <h2 tabindex="-1">${each.title}</h2>
      ${questionRead(walked, system)}
      <p role="status">${this.told}</p>
      ${
        isOpen(group)
          ? html`<h2 tabindex="-1" class="out">What came out</h2>
            ${this.predictions(question)}
            ${answerRead(walked, system)}
            <h3>The working</h3>
            ${doc.topic ? html`<working-steps .trace=${answer.trace} .topic=${doc.topic}></working-steps>` : nothing}
            ${next}`
          : html`${this.turnForm(question)}
            <p class="small">Committed: ${group.learners.length - waiting(group).length} of ${group.learners.length}.</p>
            ${this.opening()}`
      }
    `;
  }
}

customElements.define('class-case', ClassCase);
