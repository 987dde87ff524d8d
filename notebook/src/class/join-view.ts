import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing } from 'lit';
import { keyed } from 'lit/directives/keyed.js';
import { PlainElement } from '../elements/plain-element';
import './guess-field';
import './class-over';
import { type Handed, handedRead } from './handed-read';
import { JoinLine } from './join-line';
import { guessForm, headRead, joinForm, tooLate, whoAreYou } from './join-parts';
import { codeHere, OwnPhone } from './own-phone';
import './own-way';
import type { OwnWayGone } from './own-way';
import { openedClass, type PassedOn } from './passed-on';
import type { Walked } from './record';
import { putIn, saidIn, type Typed } from './said-here';
import { learnerParts } from './task-read';
import { Walks, walking } from './walks';

/** A class on a learner's own phone: who am I, what do I say, and the code that carries it back. */
export class JoinView extends PlainElement {
  static override properties = {
    packed: { attribute: false },
    system: { attribute: false },
    atOnce: { attribute: false },
    scanned: { attribute: false },
    told: { state: true },
    passed: { state: true },
    broken: { state: true },
    me: { state: true },
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
  /** What the trainer's window, or the relay, said last. */
  declare told: string;
  declare passed: PassedOn | undefined;
  declare broken: string;
  /** Which learner, from 0. */
  declare me: number | undefined;
  /** Whether the trainer has ended the class. */
  declare isOver: boolean;
  declare at: number;
  declare wrong: string;
  /** What stood in the form when it was said last, to be said anew where it is not taken. */
  private typed: Typed | undefined;
  /** Whether what is said next takes the place of what was said before, which was mistyped. */
  private isAgain = false;
  private readonly walks = new Walks(this);
  private readonly phone = new OwnPhone();
  declare code: Handed | undefined;
  private readonly line = new JoinLine(this, {
    me: () => this.me,
    at: () => this.at,
    tell: (says) => {
      this.told = says;
    },
    refuse: (why) => {
      this.wrong = why;
    },
    open: (packed) => this.open(packed),
    replied: (isTaken) => this.replied(isTaken),
    goTo: (at) => this.go(at),
    over: () => {
      this.isOver = true;
      this.phone.end();
    },
    nameGone: () => {
      this.be(undefined);
      this.told = 'That name is on another phone.';
    },
  });

  constructor() {
    super();
    this.broken = '';
    this.told = '';
    this.atOnce = false;
    this.scanned = '';
    this.at = 0;
    this.wrong = '';
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
    if (!this.line.isIn) this.at = phone.at;
    this.be(phone.me);
    if (this.me !== undefined) this.line.say({ me: this.me });
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
    this.line.letIn(known);
  }

  /** Asks to be let in; the join code stands before everybody. */
  private join(event: Event): void {
    event.preventDefault();
    const code = this.querySelector<HTMLInputElement>('#join-code')?.value.trim() ?? '';
    if (code === '') {
      this.told = 'Nothing is written here; type the join code that the trainer shows.';
      return;
    }
    this.line.letIn(code);
  }

  /** What was not noted is not what this learner says. */
  private replied(isTaken: boolean): void {
    if (isTaken) this.isAgain = false;
    else if (this.code) {
      this.code = undefined;
      this.phone.takeBack(this.at);
      void this.putBack();
    }
  }

  private choose = (learner: number, instead: boolean): void => {
    this.be(learner);
    this.told = '';
    this.line.say({ me: learner, ...(instead && { instead }) });
  };

  private joining() {
    return joinForm(this.wrong, (event) => this.join(event));
  }

  private go(at: number): void {
    this.at = at;
    this.phone.go(at);
    this.told = '';
    this.line.isTaken = false;
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
    this.line.isTaken = false;
    const { code, why } = read.handed;
    this.line.say({ guess: code, why, ...(this.isAgain && { again: true }) });
    this.code = read.handed;
    this.phone.say(at, read);
    void this.toHanded();
  }

  /** What was said stands in the form again, to be set right. */
  private mistyped = (): void => {
    this.isAgain = true;
    this.told = this.line.isIn ? 'What you sent first stands until you send it anew.' : '';
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
    const onward = this.line.isIn
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
    const { above, below } = learnerParts(walked, this.system);
    const learner = passed.learners[this.me ?? 0];
    return html`${headRead(each, this.at + 1, passed.cases.length, learner, this.line.isOpen)}
      ${above}
      <p role="status">${this.told}</p>
      ${
        this.code
          ? handedRead(
              this.code,
              passed.id,
              this.line.isIn || this.line.isTaken,
              this.line.isOpen ? undefined : this.mistyped,
            )
          : this.line.isOpen
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
        this.atOnce && !this.line.isIn
          ? this.joining()
          : html`<p class="soft">Opening the class …</p>`
      }<p role="status">${this.told}</p>`;
    }
    if (me !== undefined) {
      return html`${this.atOnce && !this.line.isIn ? this.joining() : nothing}${this.asked(passed)}`;
    }
    return html`<h1>Class</h1>
      ${this.atOnce && !this.line.isIn ? this.joining() : nothing}<p role="status">${this.told}</p>
      ${whoAreYou(passed.learners, this.line.taken, this.choose)}`;
  }
}

customElements.define('join-view', JoinView);
