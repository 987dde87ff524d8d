import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing, type PropertyValues } from 'lit';
import { factsBrief, proseBefore } from '../class/case-read';
import { choiceSaid } from '../class/choice-said';
import { verdictRead } from '../class/verdict-read';
import { PlainElement } from '../elements/plain-element';
import { type Judged, judge } from '../state/judged';
import { type Asking, type Standing, scored, standing } from './ask-next';
import { ExerciseDone } from './exercise-events';
import type { Made } from './made';

/** Facts are hidden; the learner asks for one after another until the verdict is settled. */
export class PracticeAsk extends PlainElement {
  static override properties = {
    made: { attribute: false },
    asking: { attribute: false },
    system: { attribute: false },
    asked: { state: true },
  };
  declare made: Made;
  declare asking: Asking;
  declare system: UnitSystem;
  declare asked: readonly string[];
  private now: Standing | undefined;

  constructor() {
    super();
    this.asked = [];
  }

  /** Reckoned once for each question asked. */
  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('asked') || changed.has('asking')) this.now = standing(this.asking, this.asked);
  }

  private async ask(id: string): Promise<void> {
    this.asked = [...this.asked, id];
    await this.updateComplete;
    const { asking, asked } = this;
    if (!this.now?.settled) return;
    const { met, says } = scored(asking, asked.length);
    this.dispatchEvent(new ExerciseDone(says, met));
    this.querySelector<HTMLElement>('.score')?.focus();
  }

  private end({ answer }: Judged) {
    const { asking, asked, made } = this;
    const { met, says } = scored(asking, asked.length);
    const label = (id: string) => asking.hidden.find((each) => each.id === id)?.label ?? id;
    return html`<p class="score" tabindex="-1" role="status"><strong>${met ? 'Well asked.' : 'Settled.'}</strong> ${says}</p>
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
    return html`${proseBefore({ ...made, doc: made.doc }, system)}
      <h3>What is known</h3>
      ${answer ? factsBrief({ ...made, doc, answer }) : nothing}
      ${
        now.settled
          ? this.end(judged)
          : html`<h3>What do you ask next?</h3>
            <p>The verdict is open. Ask for what settles it, with as few questions as you can. Asked so far: ${asked.length}.</p>
            <div class="acts asks">${left.map(({ id, ask }) => html`<button @click=${() => this.ask(id)}>${ask}</button>`)}</div>
            <p role="status">${!last ? nothing : html`${last.label}: <strong>${lastSaid}</strong>. The verdict is still open.`}</p>`
      }`;
  }
}

customElements.define('practice-ask', PracticeAsk);
