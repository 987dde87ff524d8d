import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing, type PropertyValues } from 'lit';
import { PlainElement } from '../elements/plain-element';
import '../elements/working-steps';
import {
  type ClassStep,
  committed,
  type Group,
  type GroupCase,
  isOpen,
  isSureness,
  surenesses,
  waiting,
} from '../state/group';
import { answerRead } from './case-read';
import { titleAbove } from './case-title';
import { Committed, Joined, type Reason, StepShown, TakenBack } from './class-case-events';
import './on-phones';
import type { PhonesOpened } from './on-phones';
import './guess-spread';
import { guessesOf } from './guesses';
import './what-if';
import type { FactMoved } from './what-if';
import './guess-field';
import { GuessField } from './guess-field';
import { compared, type Question, readPrediction } from './predict';
import type { Walked } from './record';
import { saidMarks } from './said-marks';
import { answersTold, putRight, taskParts } from './task-read';
import { Walks, walking } from './walks';
import { stepsShown, stepWords } from './wall-steps';

/** A reason is a sentence or two. */
const longestWhy = 300;

/** One case of a class: the question, each learner’s prediction, then what came out and why. */
export class ClassCase extends PlainElement {
  static override properties = {
    group: { attribute: false },
    system: { attribute: false },
    turn: { state: true },
    wrong: { state: true },
    told: { state: true },
    moved: { state: true },
  };
  declare group: Group;
  declare system: UnitSystem;
  /** Whose turn was chosen by hand; else the first who has not committed. */
  declare turn: string | undefined;
  declare wrong: string;
  declare told: string;
  /** Whether the wall shows the case with a fact moved. */
  declare moved: boolean;
  /** Whether learners guess on phones of their own, which lasts from case to case. */
  private onPhones = false;
  private readonly walks = new Walks(this);

  constructor() {
    super();
    this.wrong = '';
    this.told = '';
    this.moved = false;
  }

  /** What was said of one case is nothing to the next. */
  protected override willUpdate(changed: PropertyValues<this>): void {
    const before = changed.get('group');
    if (before && (before.at !== this.group.at || before.id !== this.group.id)) {
      this.told = '';
      this.moved = false;
    }
  }

  private get learner(): string | undefined {
    const left = waiting(this.group);
    return left.find((each) => each === this.turn) ?? left[0];
  }

  private take(event: Event, question: Question): void {
    event.preventDefault();
    const { learner } = this;
    const field = this.querySelector('guess-field');
    if (!(field instanceof GuessField) || learner === undefined) return;
    const read = readPrediction(field.said, question, this.system);
    if ('wrong' in read) {
      this.wrong = read.wrong;
      field.focus();
      return;
    }
    const next = waiting(this.group).filter((each) => each !== learner);
    const sure = this.querySelector<HTMLSelectElement>('#sure');
    const why = this.querySelector<HTMLInputElement>('#because');
    const because = field.sentence || (why?.value.trim().slice(0, longestWhy) ?? '');
    const reason: Reason = {
      ...(sure && isSureness(sure.value) && { sure: sure.value }),
      ...(because !== '' && { why: because }),
    };
    this.wrong = '';
    this.turn = undefined;
    field.clear();
    for (const each of [sure, why]) if (each) each.value = '';
    const [then] = next;
    this.told = then
      ? `${learner} has committed. Hand over to ${then}.`
      : `${learner} has committed, and so has everyone. The working can be opened.`;
    this.dispatchEvent(new Committed(learner, read.said, reason));
    if (then) field.focus();
    else this.updateComplete.then(() => this.querySelector<HTMLElement>('.open-working')?.focus());
  }

  private turnForm(walked: Walked) {
    const { learner, group, system } = this;
    const { question, task } = walked;
    if (learner === undefined) return nothing;
    const left = waiting(group);
    const choose = (event: Event): void => {
      if (event.target instanceof HTMLSelectElement) this.turn = event.target.value;
    };
    return html`<form class="turn noprint" @submit=${(event: Event) => this.take(event, question)} novalidate>
      <label>Whose turn
        <select @change=${choose}>
          ${left.map((each) => html`<option value=${each} ?selected=${each === learner}>${each}</option>`)}
        </select>
      </label>
      <guess-field
        .walked=${walked}
        .system=${system}
        .label=${`${learner} ${task.kind === 'predict' ? 'predicts' : 'says'}`}
        .fieldId=${'prediction'}
        .describedBy=${'prediction-wrong'}
        .refused=${this.wrong !== ''}
      ></guess-field>
      <label>How sure
        <select id="sure"><option value="">not said</option>${surenesses.map((each) => html`<option value=${each}>${each}</option>`)}</select>
      </label>
      ${
        task.kind === 'say'
          ? nothing
          : html`<label>Because
        <input id="because" autocomplete="off" maxlength=${longestWhy} />
      </label>`
      }
      <button>Commit</button>
      <p class="error" id="prediction-wrong" role="alert">${this.wrong}</p>
    </form>`;
  }

  /** Who has committed may take it back until the working is open; who came late is taken in. */
  private changes() {
    const { group } = this;
    const done = group.learners.filter((learner) => committed(group, learner));
    const join = (event: Event): void => {
      event.preventDefault();
      const field = this.querySelector<HTMLInputElement>('#late');
      const name = field?.value.trim().slice(0, 40) ?? '';
      if (!field || name === '') return;
      const there = group.learners.includes(name);
      this.told = there ? `“${name}” takes part already.` : `${name} takes part from now on.`;
      field.value = '';
      if (!there) this.dispatchEvent(new Joined(name));
    };
    return html`<details class="noprint">
      <summary>Take a guess back, or take somebody in</summary>
      <div class="acts">${done.map(
        (learner) =>
          html`<button @click=${() => {
            this.told = `${learner}’s guess is taken back; ${learner} may guess anew.`;
            this.dispatchEvent(new TakenBack(learner));
          }}>Take back the guess of ${learner}</button>`,
      )}</div>
      <form class="turn" @submit=${join}>
        <label>Came late <input id="late" autocomplete="off" /></label>
        <button>Take in</button>
      </form>
    </details>`;
  }

  /** Folded, as learners may hold this very device. */
  private planned({ minutes, note = '' }: GroupCase) {
    const time =
      minutes === undefined ? nothing : html`<p class="soft small">${minutes} min planned</p>`;
    if (note === '') return time;
    return html`${time}<details class="noprint note"><summary>What I want to say</summary><p>${note}</p></details>`;
  }

  private show(step: ClassStep): void {
    this.moved = false;
    this.dispatchEvent(new StepShown(step));
  }

  private onScreen(walked: Walked) {
    const now = this.group.step ?? 'guesses';
    return html`<div class="acts noprint" role="group" aria-label="On the wall">
      <span class="soft">On the wall:${this.moved ? ' what if. Back to' : nothing}</span>
      ${stepsShown(walked).map((to) => {
        return html`<button aria-pressed=${to === now && !this.moved ? 'true' : 'false'} @click=${() => this.show(to)}>${stepWords(to, walked)}</button>`;
      })}
    </div>`;
  }

  private opening() {
    const { learners } = this.group;
    const names = waiting(this.group);
    const left = names.length;
    const act = () => this.dispatchEvent(new Event('working-opened', { bubbles: true }));
    const some = names.slice(0, 6).join(', ');
    const whom = left > 6 ? `${some} and ${left - 6} more` : some;
    return html`<p class="small">Committed: ${learners.length - left} of ${learners.length}.${left === 0 ? '' : ` Waiting for ${whom}.`}</p>
      <div class="acts">
        <button class="open-working" @click=${act}>
          ${left === 0 ? 'Open the working' : `Open the working without ${left} of ${learners.length}`}
        </button>
      </div>`;
  }

  private predictions(question: Question) {
    const { group, system } = this;
    const isSentence = question.kind === 'several' && question.result === 'say';
    return html`${isSentence ? html`<p class="small soft">Marked by the words that were heard. Read each sentence, and tap a mark that is wrong: the tally keeps yours.</p>` : nothing}<table>
      <thead><tr><th scope="col">Learner</th><th scope="col">${question.kind === 'several' ? 'Answered' : 'Predicted'}</th><th scope="col">Difference</th><th scope="col">Met</th><th scope="col">How sure, and why</th></tr></thead>
      <tbody>${group.learners.map((learner) => {
        const made = committed(group, learner);
        if (made === undefined) {
          return html`<tr><th scope="row">${learner}</th><td class="soft">nothing</td><td></td><td></td><td></td></tr>`;
        }
        const { said, sure = '', why = '' } = made;
        const { says, met } = compared(said, question, system);
        return html`<tr><th scope="row">${learner}</th><td class=${question.kind === 'number' ? 'num' : ''}>${isSentence ? saidMarks(made, question) : said}</td><td>${says}</td><td>${met ? 'met' : 'not met'}</td><td class="small">${sure}${sure && why ? ': ' : ''}${why}</td></tr>`;
      })}</tbody>
    </table>`;
  }

  protected override render() {
    const { group, system } = this;
    const each = group.cases[group.at];
    const walked = each && this.walks.of(each);
    if (!each) return nothing;
    const last = group.at + 1 === group.cases.length;
    const on = () => this.dispatchEvent(new Event('class-goes-on', { bubbles: true }));
    const next = html`<div class="acts"><button @click=${on}>${last ? 'To the tally' : 'The next case'}</button></div>`;
    const title = titleAbove(each, group.at + 1, isOpen(group));
    if (walked === 'coming') {
      return html`<h2 tabindex="-1">${title}</h2>${walking}${next}`;
    }
    if (!walked) {
      return html`<h2>${each.title}</h2><p class="notice" role="alert">This case cannot be judged any more; go on to the next.</p>${next}`;
    }
    const { question, answer, doc } = walked;
    const { above, below } = taskParts(walked, system);
    return html`
      <p class="soft small">Case ${group.at + 1} of ${group.cases.length}</p>
      <h2 tabindex="-1">${title}</h2>
      ${this.planned(each)}
      ${above}
      <p role="status">${this.told}</p>
      ${
        isOpen(group)
          ? html`<h2 tabindex="-1" class="out">What came out</h2>
            <guess-spread .guesses=${guessesOf(group)} .question=${question} .system=${system}></guess-spread>
            ${this.predictions(question)}
            ${putRight(walked)}${answersTold(walked)}
            ${answerRead(walked, system)}
            <what-if .walked=${walked} .system=${system} @fact-moved=${({ detail }: FactMoved) => {
              this.moved = Boolean(detail);
            }}></what-if>
            ${below}
            <h3>The working</h3>
            ${doc.topic ? html`<working-steps .trace=${answer.trace} .topic=${doc.topic}></working-steps>` : nothing}
            <div class="desk noprint">${this.onScreen(walked)}${next}</div>`
          : html`${this.turnForm(walked)}
            <on-phones
              .group=${group}
              .open=${this.onPhones}
              @phones-opened=${({ detail }: PhonesOpened) => {
                this.onPhones = detail;
              }}
            ></on-phones>
            ${this.changes()}
            ${below}
            <div class="desk noprint">${this.opening()}</div>`
      }
    `;
  }
}

customElements.define('class-case', ClassCase);
