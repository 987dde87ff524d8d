import { html, nothing, type PropertyValues } from 'lit';
import { PlainElement } from '../elements/plain-element';
import { isEndCode } from './end-code';

/** What a learner without a line does by themselves: go to a case, end the class, hand the phone on. */
export class OwnWayGone extends CustomEvent<number | 'over' | 'handed-on'> {
  constructor(to: number | 'over' | 'handed-on') {
    super('own-way-gone', { detail: to });
  }
}

/** Where no line says which case is on or that the class is over: what comes next, and the way there. */
export class OwnWay extends PlainElement {
  static override properties = {
    classId: { attribute: false },
    cases: { attribute: false },
    at: { attribute: false },
    left: { attribute: false },
    isSaid: { attribute: false },
    wrong: { state: true },
  };
  declare classId: string;
  declare cases: number;
  declare at: number;
  /** The cases that this learner has not answered, from 0. */
  declare left: readonly number[];
  /** Whether the present case is answered. */
  declare isSaid: boolean;
  /** What is wrong with an end code. */
  declare wrong: string;

  constructor() {
    super();
    this.wrong = '';
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('at')) this.wrong = '';
  }

  private go(to: OwnWayGone['detail']): void {
    this.dispatchEvent(new OwnWayGone(to));
  }

  private end(event: Event): void {
    event.preventDefault();
    const typed = this.querySelector<HTMLInputElement>('#end-code')?.value.trim() ?? '';
    if (isEndCode(typed, this.classId)) this.go('over');
    else if (typed === '') this.wrong = 'Nothing is written here; type the end code.';
    else
      this.wrong = `“${typed.slice(0, 20)}” is not the end code of this class; look at it again.`;
  }

  private next() {
    const { left, at, cases } = this;
    const [first] = left;
    if (first === undefined) {
      return html`<p class="next-here">You have answered ${cases === 1 ? 'the only case' : `all ${cases} cases`}. Give your code to the trainer, then look at the wall until the class is over. The end code, typed below, shows you what came out.</p>`;
    }
    const isBehind = left.every((each) => each < at);
    return html`<p class="next-here">Give your code to the trainer, then look at the wall: the working is opened there.${
      isBehind
        ? html` You have not answered case ${first + 1} yet. <button @click=${() => this.go(first)}>Go to case ${first + 1}</button>`
        : ' Go to the next case when the trainer does.'
    }</p>`;
  }

  protected override render() {
    const { at, cases, left, isSaid, wrong } = this;
    return html`${isSaid ? this.next() : nothing}
      <div class="acts">
        <button ?disabled=${at === 0} @click=${() => this.go(at - 1)}>The case before</button>
        <button ?disabled=${at === cases - 1} @click=${() => this.go(at + 1)}>The next case</button>
        <button @click=${() => this.go('handed-on')}>Somebody else has this phone</button>
      </div>
      <details class="ends" ?open=${left.length === 0}>
        <summary>The class is over</summary>
        <form class="turn" @submit=${this.end} novalidate>
          <label>End code <input id="end-code" autocomplete="off" autocapitalize="characters" spellcheck="false" aria-invalid=${wrong ? 'true' : 'false'} aria-describedby="end-wrong" /></label>
          <button>See what came out</button>
          <p class="small soft">The trainer shows it on the wall at the end.</p>
          <p class="error" id="end-wrong" role="alert">${wrong}</p>
        </form>
      </details>`;
  }
}

customElements.define('own-way', OwnWay);
