import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing } from 'lit';
import { PlainElement } from '../elements/plain-element';
import { heardIn } from '../practice/say-aloud';
import { factsBrief } from './case-read';
import { askedUnit, leftOpen, type Question } from './predict';
import type { Walked } from './record';
import { severalSaid } from './several';
import { askingNow, hiddenSaid } from './task-read';

/** How long a sentence for a customer may be; what a line of the relay takes of it. */
const longestSaid = 300;

type Kept = { readonly typed: string; readonly asked: readonly string[] };

/** Where a learner answers, whatever is asked: a figure, a choice, questions one after another, a sentence. */
export class GuessField extends PlainElement {
  static override properties = {
    walked: { attribute: false },
    system: { attribute: false },
    label: { attribute: false },
    fieldId: { attribute: false },
    describedBy: { attribute: false },
    refused: { attribute: false },
    asked: { state: true },
  };
  declare walked: Walked;
  declare system: UnitSystem;
  /** Who says it: "Ada predicts", "I say". */
  declare label: string;
  declare fieldId: string;
  /** Where it is told what is wrong. */
  declare describedBy: string;
  declare refused: boolean;
  /** What was asked for, one after another. */
  declare asked: readonly string[];

  constructor() {
    super();
    this.refused = false;
    this.asked = [];
  }

  private get field(): HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement | null {
    return this.querySelector<HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement>(
      `#${this.fieldId}`,
    );
  }

  /** What was answered, ready to be read; '' while nothing is. */
  get said(): string {
    const { walked, system, asked } = this;
    const { task, doc, answer, question } = walked;
    if (task.kind === 'ask') {
      const { settled, asked: told } = askingNow(task.asking, asked);
      const verdict = this.field?.value ? [this.field.value] : [];
      return settled ? severalSaid([...told.map(({ label }) => label), ...verdict]) : '';
    }
    const typed = this.field?.value.trim() ?? '';
    if (task.kind !== 'say' || typed === '' || question.kind !== 'several') return typed;
    const heard = heardIn(typed, doc, answer, system);
    return severalSaid(heard.flatMap(({ label, said }) => (said ? [label] : [])));
  }

  /** The sentence itself, where one was to be said. */
  get sentence(): string {
    const { walked, field } = this;
    return walked.task.kind === 'say' ? (field?.value.trim().slice(0, longestSaid) ?? '') : '';
  }

  /** What was typed or asked for, to stand here again where it was not taken. */
  get kept(): Kept {
    return { typed: this.field?.value ?? '', asked: this.asked };
  }

  async putBack({ typed, asked }: Kept): Promise<void> {
    this.asked = asked;
    await this.updateComplete;
    if (this.field) this.field.value = typed;
  }

  clear(): void {
    this.asked = [];
    if (this.field) this.field.value = '';
  }

  override focus(): void {
    (this.field ?? this.querySelector<HTMLElement>('button'))?.focus();
  }

  private leaveOpen = (): void => {
    if (this.field) this.field.value = leftOpen;
    this.field?.focus();
  };

  private ask(id: string): void {
    this.asked = [...this.asked, id];
    const later = async (): Promise<void> => {
      await this.updateComplete;
      this.querySelector<HTMLElement>('.told')?.focus();
    };
    void later();
  }

  private asking() {
    const { walked, asked } = this;
    const { task, question } = walked;
    if (task.kind !== 'ask' || question.kind !== 'several') return nothing;
    const { hidden } = task.asking;
    const now = askingNow(task.asking, asked);
    const last = now.asked.at(-1);
    const stands = now.settled ? 'That settles it.' : 'The verdict is still open.';
    return html`<div class="known">${factsBrief({ ...walked, doc: now.doc })}</div>
      <p class="told" tabindex="-1" role="status">${last ? html`${last.label}: <strong class="num">${hiddenSaid(task.asking, last)}</strong>. ${stands}` : nothing}</p>
      ${
        now.settled
          ? this.choice(question.verdict?.words ?? [], 'What is the verdict?')
          : html`<p>${this.label}, asked so far: ${asked.length}.</p>
            <div class="acts asks">${hidden
              .filter(({ id }) => !asked.includes(id))
              .map(
                ({ id, ask }) =>
                  html`<button type="button" @click=${() => this.ask(id)}>${ask}</button>`,
              )}</div>`
      }`;
  }

  private choice(words: readonly string[], label = this.label) {
    const { fieldId, describedBy, refused } = this;
    return html`<label for=${fieldId}>${label}</label>
      <select id=${fieldId} aria-describedby=${describedBy} aria-invalid=${refused ? 'true' : 'false'}>
        <option value="">choose …</option>
        ${words.map((word) => html`<option value=${word}>${word}</option>`)}
      </select>`;
  }

  private figure(question: Question & { kind: 'number' }) {
    const { fieldId, describedBy, refused, label } = this;
    const unit = askedUnit(question, this.system);
    return html`<label for=${fieldId}>${label}${unit ? html`<span class="hidden">, in ${unit}</span>` : nothing}</label>
      <input
        id=${fieldId}
        class="num"
        autocomplete="off"
        inputmode="decimal"
        aria-describedby=${describedBy}
        aria-invalid=${refused ? 'true' : 'false'}
      />
      <span class="unit" aria-hidden="true">${unit}</span>
      <button type="button" class="open-guess" @click=${this.leaveOpen}>It ${leftOpen}</button>`;
  }

  protected override render() {
    const { question, task } = this.walked;
    const { fieldId, describedBy, refused, label } = this;
    if (task.kind === 'ask') return this.asking();
    if (question.kind === 'word') return this.choice(question.words);
    if (question.kind === 'number') return this.figure(question);
    return html`<label for=${fieldId}>${label} to the customer</label>
      <textarea id=${fieldId} rows="4" maxlength=${longestSaid} aria-describedby=${describedBy} aria-invalid=${refused ? 'true' : 'false'}></textarea>`;
  }
}

customElements.define('guess-field', GuessField);
