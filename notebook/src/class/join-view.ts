import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing } from 'lit';
import { keyed } from 'lit/directives/keyed.js';
import { PlainElement } from '../elements/plain-element';
import './guess-field';
import './class-over';
import { type Handed, handedRead } from './handed-read';
import { guessForm, joinForm, tooLate, whoAreYou } from './join-parts';
import { type Heard, lineTo } from './line';
import { codeHere, OwnPhone } from './own-phone';
import './own-way';
import type { OwnWayGone } from './own-way';
import { openedClass, type PassedOn } from './passed-on';
import type { Walked } from './record';
import { putIn, saidIn, type Typed } from './said-here';
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
    taken: { state: true },
    isOpen: { state: true },
    isOver: { state: true },
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
  /** Learners that a phone has already, from 0. */
  declare taken: ReadonlySet<number>;
  /** Whether the working of the present case is open, as the line tells. */
  declare isOpen: boolean;
  /** Whether the trainer has ended the class. */
  declare isOver: boolean;
  declare at: number;
  declare wrong: string;
  /** Whether the trainer's window has taken down what this learner says of the present case. */
  private isTaken = false;
  /** What stood in the form when it was said last, to be said anew where it is not taken. */
  private typed: Typed | undefined;
  /** Whether what is said next takes the place of what was said before, which was mistyped. */
  private isAgain = false;
  /** The join code that was sent last. */
  private sent = '';
  private readonly walks = new Walks(this);
  private readonly phone = new OwnPhone();
  declare code: Handed | undefined;

  constructor() {
    super();
    this.broken = '';
    this.told = '';
    this.atOnce = false;
    this.scanned = '';
    this.at = 0;
    this.wrong = '';
    this.taken = new Set();
    this.isOpen = false;
    this.isOver = false;
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
        if (this.phone.open(passed.id)) this.takeUp();
      },
      (problem: unknown) => {
        this.broken = problem instanceof Error ? problem.message : String(problem);
      },
    );
  }

  /** Whatever this phone knew of the class before it slept; which case is on, a line says. */
  private takeUp(): void {
    const { phone } = this;
    this.isOver = phone.isOver;
    if (!this.line) this.at = phone.at;
    this.be(phone.me);
    if (this.me !== undefined) this.line?.say({ me: this.me });
  }

  private be(me: number | undefined): void {
    this.me = me;
    this.phone.isNow(me);
    this.recall();
  }

  /** What was said of the present case stands there again. */
  private recall(): void {
    const said = this.phone.said(this.at);
    this.code = said?.handed;
    this.typed = said?.typed;
  }

  /** A code that was scanned has the join code in it; one that was typed holds for as long as the tab. */
  protected override firstUpdated(): void {
    const field = this.querySelector<HTMLInputElement>('#join-code');
    const known = this.scanned || codeHere.known();
    if (!field || !known) return;
    field.value = known;
    this.letIn(known);
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
    this.sent = code;
    const line = lineTo(
      'learner',
      (message) => this.hear(message, line),
      (wasOpen) => {
        if (!wasOpen) this.wrong = 'Nobody takes guesses at once just now; read your guess out.';
        const had = this.line !== undefined;
        this.line = undefined;
        if (had)
          this.told = this.isTaken
            ? 'Your guess is noted. The line to the trainer is closed.'
            : 'The line to the trainer is closed; read your guess out, or join once more.';
      },
      () => line.say({ code }),
    );
  }

  private hear(heard: Heard, line: ReturnType<typeof lineTo>): void {
    const { kind, at, says, taken, lesson } = heard;
    if (kind === 'wrong') {
      line.close();
      codeHere.know('');
      this.wrong = 'That is not the join code; look at it once more.';
    }
    if (kind === 'in') {
      this.line = line;
      this.wrong = '';
      codeHere.know(this.sent);
      // Whoever joins once more is who they were.
      if (this.me !== undefined) line.say({ me: this.me });
    }
    if (typeof lesson === 'string') this.open(lesson);
    if (kind === 'reply') {
      this.told = String(says);
      // What was not taken down is not what this learner says.
      if (taken !== true && this.code) {
        this.code = undefined;
        this.phone.takeBack(this.at);
        void this.putBack();
      }
      if (taken === true) this.isAgain = false;
      this.isTaken = taken === true;
    }
    if (kind === 'in' || kind === 'names') this.hearNames(heard);
    if (kind === 'over') {
      this.isOver = true;
      this.phone.end();
      line.close();
    }
    const to = Number(at);
    if ((kind === 'in' || kind === 'at') && to !== this.at) this.go(to);
    if (kind === 'in' || kind === 'at') this.isOpen = heard.open === true;
    if (kind === 'in') this.told = 'You have joined.';
  }

  /** Who is here; a phone whose name went along to another asks once more. */
  private hearNames({ kind, taken, mine }: Heard): void {
    this.taken = new Set(Array.isArray(taken) ? taken.map(Number) : []);
    if (kind !== 'names' || mine === undefined || this.me === undefined || mine === this.me) return;
    this.be(undefined);
    this.told = 'That name is on another phone.';
  }

  private choose = (learner: number, instead: boolean): void => {
    this.be(learner);
    this.told = '';
    this.line?.say({ me: learner, ...(instead && { instead }) });
  };

  private joining() {
    return joinForm(this.wrong, (event) => this.join(event));
  }

  private go(at: number): void {
    this.at = at;
    this.phone.go(at);
    this.told = '';
    this.isTaken = false;
    this.isAgain = false;
    this.wrong = '';
    this.recall();
    const later = async (): Promise<void> => {
      await this.updateComplete;
      this.querySelector<HTMLElement>('h1')?.focus();
    };
    void later();
  }

  private async putBack(): Promise<void> {
    const { typed } = this;
    await this.updateComplete;
    if (typed && !this.code) await putIn(this, typed);
  }

  private say(event: Event, { question }: Walked): void {
    event.preventDefault();
    const { me, at, system } = this;
    if (me === undefined) return;
    const read = saidIn(this, { case: at, learner: me }, question, system);
    if (!read) return;
    this.wrong = 'wrong' in read ? read.wrong : '';
    if ('wrong' in read) return;
    this.typed = read.typed;
    this.told = '';
    this.isTaken = false;
    const { code, why } = read.handed;
    this.line?.say({ guess: code, why, ...(this.isAgain && { again: true }) });
    this.code = read.handed;
    this.phone.say(at, read);
    void this.toHanded();
  }

  /** What was said stands in the form again, to be set right. */
  private mistyped = (): void => {
    this.isAgain = true;
    this.told = this.line ? 'What you sent first stands until you send it anew.' : '';
    this.code = undefined;
    this.phone.takeBack(this.at);
    void this.putBack();
  };

  private ownWay = ({ detail }: OwnWayGone): void => {
    if (typeof detail === 'number') {
      this.go(detail);
      return;
    }
    this.told = '';
    this.isOver = detail === 'over';
    if (this.isOver) this.phone.end();
    else this.be(undefined);
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
    // Over the line the trainer's window says which case is on.
    const onward = this.line
      ? nothing
      : html`<own-way
          .classId=${passed.id}
          .cases=${passed.cases.length}
          .at=${this.at}
          .left=${this.phone.left(passed.cases.length)}
          .isSaid=${this.code !== undefined}
          @own-way-gone=${this.ownWay}
        ></own-way>`;
    if (walked === 'coming') return html`${walking}${onward}`;
    if (!each || !walked)
      return html`<p class="notice">This case cannot be shown here.</p>${onward}`;
    const { above, below } = taskParts(walked, this.system);
    return html`<h1 tabindex="-1">${each.title}</h1>
      <h2 class="small soft">Case ${this.at + 1} of ${passed.cases.length} · ${passed.learners[this.me ?? 0]}</h2>
      ${above}
      <p role="status">${this.told}</p>
      ${
        this.code
          ? handedRead(
              this.code,
              passed.id,
              this.line !== undefined || this.isTaken,
              this.isOpen ? undefined : this.mistyped,
            )
          : this.isOpen
            ? tooLate
            : keyed(
                this.at,
                guessForm(walked, this.system, this.wrong, (event) => this.say(event, walked)),
              )
      }
      ${onward}
      ${below}`;
  }

  protected override render() {
    const { passed, broken, me, phone, system } = this;
    if (this.isOver) {
      return html`<class-over .passed=${passed} .phone=${phone} .system=${system}></class-over>`;
    }
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
      ${this.atOnce && !this.line ? this.joining() : nothing}<p role="status">${this.told}</p>
      ${whoAreYou(passed.learners, this.taken, this.choose)}`;
  }
}

customElements.define('join-view', JoinView);
