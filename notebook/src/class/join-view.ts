import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing } from 'lit';
import { keyed } from 'lit/directives/keyed.js';
import { PlainElement } from '../elements/plain-element';
import { isSureness, surenesses } from '../state/group';
import './guess-field';
import { guessCode } from './guess-code';
import { GuessField } from './guess-field';
import { type Handed, handedRead } from './handed-read';
import { type Heard, lineTo } from './line';
import { openedClass, type PassedOn } from './passed-on';
import { readPrediction } from './predict';
import type { Walked } from './record';
import { taskParts } from './task-read';
import { Walks, walking } from './walks';

/** A class on a learner's own phone: who am I, what do I say, and the code that carries it back. */
export class JoinView extends PlainElement {
  static override properties = {
    packed: { attribute: false },
    system: { attribute: false },
    atOnce: { attribute: false },
    scanned: { attribute: false },
    line: { state: true },
    told: { state: true },
    passed: { state: true },
    broken: { state: true },
    me: { state: true },
    at: { state: true },
    wrong: { state: true },
    code: { state: true },
  };
  declare packed: string;
  declare system: UnitSystem;
  /** Whether guesses travel at once, over the relay that this page came from. */
  declare atOnce: boolean;
  /** The join code that stood in the address; '' where it is to be typed. */
  declare scanned: string;
  /** Set once the relay has let this phone in. */
  declare line: ReturnType<typeof lineTo> | undefined;
  /** What the trainer's window, or the relay, said last. */
  declare told: string;
  declare passed: PassedOn | undefined;
  declare broken: string;
  /** Which learner, from 0. */
  declare me: number | undefined;
  declare at: number;
  declare wrong: string;
  /** Whether the trainer's window has taken down what this learner says of the present case. */
  private isTaken = false;
  /** What stood in the form when it was said last, to be said anew where it is not taken. */
  private typed: { guess: GuessField['kept']; sure: string; why: string } | undefined;
  /** Whether what is said next takes the place of what was said before, which was mistyped. */
  private isAgain = false;
  private readonly walks = new Walks(this);
  declare code: Handed | undefined;

  constructor() {
    super();
    this.broken = '';
    this.told = '';
    this.atOnce = false;
    this.scanned = '';
    this.at = 0;
    this.wrong = '';
  }

  protected override willUpdate(changed: Map<PropertyKey, unknown>): void {
    if (!changed.has('packed')) return;
    if (!this.packed || this.packed === '-') return;
    this.open(this.packed);
  }

  private open(packed: string): void {
    openedClass(packed).then(
      (passed) => {
        this.passed = passed;
      },
      (problem: unknown) => {
        this.broken = problem instanceof Error ? problem.message : String(problem);
      },
    );
  }

  /** A code that was scanned has the join code in it. */
  protected override firstUpdated(): void {
    const field = this.querySelector<HTMLInputElement>('#join-code');
    if (!field || !this.scanned) return;
    field.value = this.scanned;
    this.letIn(this.scanned);
  }

  override disconnectedCallback(): void {
    this.line?.close();
    super.disconnectedCallback();
  }

  /** Asks to be let in; the join code stands before everybody. */
  private join(event: Event): void {
    event.preventDefault();
    const code = this.querySelector<HTMLInputElement>('#join-code')?.value.trim() ?? '';
    if (code === '') {
      this.told = 'Nothing is written here; type the join code that the trainer shows.';
      return;
    }
    this.letIn(code);
  }

  private letIn(code: string): void {
    const line = lineTo(
      'learner',
      (message) => this.hear(message, line),
      (wasOpen) => {
        if (!wasOpen) this.wrong = 'Nobody takes guesses at once just now; read your guess out.';
        const had = this.line !== undefined;
        this.line = undefined;
        if (had)
          this.told = this.isTaken
            ? 'Your guess is taken down. The line to the trainer is closed.'
            : 'The line to the trainer is closed; read your guess out, or join once more.';
      },
      () => line.say({ code }),
    );
  }

  private hear({ kind, at, says, taken, lesson }: Heard, line: ReturnType<typeof lineTo>): void {
    if (kind === 'wrong') {
      line.close();
      this.wrong = 'That is not the join code; look at it once more.';
    }
    if (kind === 'in') {
      this.line = line;
      this.wrong = '';
    }
    if (typeof lesson === 'string') this.open(lesson);
    if (kind === 'reply') {
      this.told = String(says);
      // What was not taken down is not what this learner says.
      if (taken !== true && this.code) {
        this.code = undefined;
        void this.putBack();
      }
      if (taken === true) this.isAgain = false;
      this.isTaken = taken === true;
    }
    const to = Number(at);
    if ((kind === 'in' || kind === 'at') && to !== this.at) this.go(to);
    if (kind === 'in') this.told = 'You have joined.';
  }

  private joining() {
    return html`<form class="turn" @submit=${this.join} novalidate>
      <label>Join code <input id="join-code" autocomplete="off" autocapitalize="characters" spellcheck="false" /></label>
      <button>Join</button>
      <p class="error" role="alert">${this.wrong}</p>
    </form>`;
  }

  private go(at: number): void {
    this.at = at;
    this.told = '';
    this.isTaken = false;
    this.isAgain = false;
    this.code = undefined;
    this.typed = undefined;
    this.wrong = '';
    const later = async (): Promise<void> => {
      await this.updateComplete;
      this.querySelector<HTMLElement>('h1')?.focus();
    };
    void later();
  }

  private beside(id: string): HTMLInputElement | HTMLSelectElement | undefined {
    const field = this.querySelector(`#${id}`);
    return field instanceof HTMLInputElement || field instanceof HTMLSelectElement
      ? field
      : undefined;
  }

  private async putBack(): Promise<void> {
    const { typed } = this;
    await this.updateComplete;
    const guess = this.querySelector('guess-field');
    if (!typed || this.code || !(guess instanceof GuessField)) return;
    await guess.putBack(typed.guess);
    const sure = this.beside('my-sure');
    const why = this.beside('my-why');
    if (sure) sure.value = typed.sure;
    if (why) why.value = typed.why;
  }

  private say(event: Event, { question }: Walked): void {
    event.preventDefault();
    const { me, at, system } = this;
    const guess = this.querySelector('guess-field');
    if (!(guess instanceof GuessField) || me === undefined) return;
    const value = (id: string): string => this.beside(id)?.value ?? '';
    const read = readPrediction(guess.said, question, system);
    this.wrong = 'wrong' in read ? read.wrong : '';
    if ('wrong' in read) return;
    const sure = value('my-sure');
    const guessed = { case: at, learner: me, said: read.said };
    const code = guessCode({ ...guessed, ...(isSureness(sure) && { sure }) }, question, system);
    this.wrong = code ? '' : 'A code carries one figure; write a single number.';
    if (!code) return;
    this.typed = { guess: guess.kept, sure, why: value('my-why') };
    const why = guess.sentence || value('my-why').trim().slice(0, 300);
    this.told = '';
    this.isTaken = false;
    this.line?.say({ guess: code, why, ...(this.isAgain && { again: true }) });
    const said = guess.sentence ? `“${guess.sentence}”` : read.said;
    this.code = { code, said, why };
    void this.toHanded();
  }

  /** What was said stands in the form again, to be set right. */
  private mistyped = (): void => {
    this.isAgain = this.isAgain || this.isTaken;
    this.code = undefined;
    void this.putBack();
  };

  /** What is to be read out stands where the form was, which may be out of sight by then. */
  private async toHanded(): Promise<void> {
    await this.updateComplete;
    const handed = this.querySelector<HTMLElement>('.handed');
    handed?.focus({ preventScroll: true });
    handed?.scrollIntoView({ block: 'start' });
  }

  private asked(passed: PassedOn) {
    const each = passed.cases[this.at];
    const walked = each && this.walks.of(each);
    const last = passed.cases.length - 1;
    // Over the line the trainer's window says which case is on.
    const onward = this.line
      ? nothing
      : html`<div class="acts">
        <button ?disabled=${this.at === 0} @click=${() => this.go(this.at - 1)}>The case before</button>
        <button ?disabled=${this.at === last} @click=${() => this.go(this.at + 1)}>The next case</button>
      </div>`;
    if (walked === 'coming') return html`${walking}${onward}`;
    if (!each || !walked)
      return html`<p class="notice">This case cannot be shown here.</p>${onward}`;
    const { above, below } = taskParts(walked, this.system);
    return html`<h1 tabindex="-1">${each.title}</h1>
      <p class="small soft">Case ${this.at + 1} of ${passed.cases.length} · ${passed.learners[this.me ?? 0]}</p>
      ${above}
      <p role="status">${this.told}</p>
      ${
        this.code
          ? handedRead(this.code, passed.id, this.line !== undefined || this.isTaken, this.mistyped)
          : keyed(
              this.at,
              html`<form class="turn" @submit=${(event: Event) => this.say(event, walked)} novalidate>
              <guess-field .walked=${walked} .system=${this.system} .label=${'I say'} .fieldId=${'my-guess'} .describedBy=${'my-wrong'} .refused=${this.wrong !== ''}></guess-field>
              <label>How sure
                <select id="my-sure"><option value="">not said</option>${surenesses.map((word) => html`<option value=${word}>${word}</option>`)}</select></label>
              ${walked.task.kind === 'say' ? nothing : html`<label>Because <input id="my-why" autocomplete="off" maxlength="300" /></label>`}
              <button>${walked.task.kind === 'predict' ? 'That is my guess' : 'That is my answer'}</button>
              <p class="error" id="my-wrong" role="alert">${this.wrong}</p>
            </form>`,
            )
      }
      ${onward}
      ${below}`;
  }

  protected override render() {
    const { passed, broken, me } = this;
    if (broken) return html`<h1>Class</h1><p class="notice" role="alert">${broken}</p>`;
    if (!passed) {
      return html`<h1>Class</h1>${
        this.atOnce && !this.line ? this.joining() : html`<p class="soft">Opening the class …</p>`
      }<p role="status">${this.told}</p>`;
    }
    if (me !== undefined) {
      return html`${this.atOnce && !this.line ? this.joining() : nothing}${this.asked(passed)}`;
    }
    return html`<h1>Class</h1>
      ${this.atOnce && !this.line ? this.joining() : nothing}<p role="status">${this.told}</p><p>Who are you?</p>
      <div class="acts">${passed.learners.map(
        (learner, i) =>
          html`<button @click=${() => {
            this.me = i;
          }}>${learner}</button>`,
      )}</div>
      ${passed.learners.length === 0 ? nothing : html`<p class="small soft">Your name is not here? Tell the trainer, who takes you in and shows a new code.</p>`}`;
  }
}

customElements.define('join-view', JoinView);
