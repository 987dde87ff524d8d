import type { UnitSystem } from '@tarebook/rules/quantity';
import { html } from 'lit';
import { answerRead, questionRead } from '../class/case-read';
import { askedUnit, compared, leftOpen, type Question, readPrediction } from '../class/predict';
import { PlainElement } from '../elements/plain-element';
import { ExerciseDone } from './exercise-events';
import type { Made } from './made';
import { mistakeOf, mistakes } from './mistakes';

/** One prediction, what came out, and which mistake it looks like. */
export class PracticePredict extends PlainElement {
  static override properties = {
    made: { attribute: false },
    system: { attribute: false },
    said: { state: true },
    wrong: { state: true },
  };
  declare made: Made;
  declare system: UnitSystem;
  declare said: string | undefined;
  declare wrong: string;

  constructor() {
    super();
    this.wrong = '';
  }

  private say(event: Event): void {
    event.preventDefault();
    const { made, system } = this;
    const field = this.querySelector<HTMLInputElement | HTMLSelectElement>('#my-prediction');
    const read = readPrediction(field?.value ?? '', made.question, system);
    this.wrong = 'wrong' in read ? read.wrong : '';
    if ('wrong' in read) {
      field?.focus();
      return;
    }
    this.said = read.said;
    this.dispatchEvent(new ExerciseDone(read.said, compared(read.said, made.question, system).met));
    const later = async (): Promise<void> => {
      await this.updateComplete;
      this.querySelector<HTMLElement>('.score')?.focus();
    };
    void later();
  }

  private field(question: Question) {
    if (question.kind === 'word') {
      return html`<label>I say <select id="my-prediction"><option value="">choose …</option>${question.words.map((each) => html`<option value=${each}>${each}</option>`)}</select></label>`;
    }
    const unit = question.kind === 'number' ? askedUnit(question, this.system) : '';
    const open = (): void => {
      const field = this.querySelector<HTMLInputElement>('#my-prediction');
      if (field) field.value = leftOpen;
    };
    return html`<label>I say${unit ? `, in ${unit}` : ''} <input id="my-prediction" class="num" inputmode="decimal" autocomplete="off" /></label>
      <button type="button" @click=${open}>It ${leftOpen}</button>`;
  }

  protected override render() {
    const { made, system, said } = this;
    if (said === undefined) {
      return html`${questionRead(made, system)}
        <form class="turn" @submit=${this.say} novalidate>
          ${this.field(made.question)}
          <button>That is my guess</button>
          <p class="error" role="alert">${this.wrong}</p>
        </form>`;
    }
    const { met, says } = compared(said, made.question, system);
    const mistake = mistakeOf(made.doc, made.question, said);
    return html`${questionRead(made, system)}
      <p class="score" tabindex="-1" role="status"><strong>${met ? 'Met' : 'Not met'}:</strong> you said ${said}, ${says}.
        ${mistake ? `It looks like this: ${mistakes[mistake]}.` : ''}</p>
      ${answerRead(made, system)}`;
  }
}

customElements.define('practice-predict', PracticePredict);
