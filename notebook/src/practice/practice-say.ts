import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing } from 'lit';
import { factsBrief, proseBefore } from '../class/case-read';
import { sayingOf } from '../class/task-read';
import '../elements/limit-rows';
import { mark } from '../elements/marks';
import { PlainElement } from '../elements/plain-element';
import { ExerciseDone } from './exercise-events';
import type { Made } from './made';
import { heardIn, type Part } from './say-aloud';

const longest = 600;

/** The learner says, typed or dictated, what a customer should hear; what was missed is explained. */
export class PracticeSay extends PlainElement {
  static override properties = {
    made: { attribute: false },
    system: { attribute: false },
    heard: { state: true },
    wrong: { state: true },
  };
  declare made: Made;
  declare system: UnitSystem;
  declare heard: readonly Part[] | undefined;
  declare wrong: string;

  constructor() {
    super();
    this.wrong = '';
  }

  private say(event: Event): void {
    event.preventDefault();
    const said = this.querySelector('textarea')?.value.trim().slice(0, longest) ?? '';
    this.wrong = said === '' ? 'Nothing is said yet; type or dictate one or two sentences.' : '';
    if (said === '') return;
    const { made, system, heard: before } = this;
    const heard = heardIn(said, made.doc, made.answer, system);
    this.heard = heard;
    // The first try counts; after it one may go on until nothing is missed.
    if (!before)
      this.dispatchEvent(
        new ExerciseDone(
          said,
          heard.every((part) => part.said),
        ),
      );
  }

  private parts(heard: readonly Part[]) {
    const missed = heard.filter(({ said }) => !said);
    return html`<div role="status">
      <p><strong>${missed.length === 0 ? 'Nothing is missed.' : `Missed: ${missed.length} of ${heard.length}. Say it once more.`}</strong></p>
      <ul class="parts">${heard.map(
        ({ label, said, says }) =>
          html`<li>${mark(said ? 'ok' : 'stop')} ${label}: ${said ? 'said' : html`<strong>missed</strong>; it was to be heard: ${says}`}</li>`,
      )}</ul></div>`;
  }

  protected override render() {
    const { made, system, heard, wrong } = this;
    const limits = made.answer.limits;
    return html`${proseBefore(made, system)}
      ${factsBrief(made)}
      <h3>What came out: ${made.answer.words}</h3>
      ${limits.length === 0 ? nothing : html`<limit-rows .rows=${limits.map((limit) => ({ limit }))} .system=${system}></limit-rows>`}
      <form class="say" @submit=${this.say} novalidate>
        <label for="said">${sayingOf(made).replace(/\.$/, '')}</label>
        <textarea id="said" rows="4" maxlength=${longest} aria-describedby="said-wrong" aria-invalid=${wrong ? 'true' : 'false'}></textarea>
        <p class="error" id="said-wrong" role="alert">${wrong}</p>
        <button>That is what I say</button>
      </form>
      ${heard ? this.parts(heard) : nothing}`;
  }
}

customElements.define('practice-say', PracticeSay);
