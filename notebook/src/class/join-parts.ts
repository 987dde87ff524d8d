import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing, type TemplateResult } from 'lit';
import type { GroupCase } from '../state/group';
import { surenesses } from '../state/group';
import { titleAbove } from './case-title';
import type { Walked } from './walked';

/** The join code stands before everybody. */
export const joinForm = (wrong: string, join: (event: Event) => void): TemplateResult =>
  html`<form class="turn" @submit=${join} novalidate>
      <label>Join code <input id="join-code" autocomplete="off" autocapitalize="characters" spellcheck="false" /></label>
      <button>Join</button>
      <p class="error" role="alert">${wrong}</p>
    </form>`;

/** What a learner says of a case, how sure and why. */
export const guessForm = (
  walked: Walked,
  system: UnitSystem,
  wrong: string,
  say: (event: Event) => void,
): TemplateResult =>
  html`<form class="turn" @submit=${say} novalidate>
      <guess-field .walked=${walked} .system=${system} .label=${'I say'} .fieldId=${'my-guess'} .describedBy=${'my-wrong'} .refused=${wrong !== ''}></guess-field>
      <label>How sure
        <select id="my-sure"><option value="">not said</option>${surenesses.map((word) => html`<option value=${word}>${word}</option>`)}</select></label>
      ${walked.task.kind === 'say' ? nothing : html`<label>Because <input id="my-why" autocomplete="off" maxlength="300" /></label>`}
      <button>${walked.task.kind === 'predict' ? 'That is my guess' : 'That is my answer'}</button>
      <p class="error" id="my-wrong" role="alert">${wrong}</p>
    </form>`;

/** The names that nobody has yet, each a button; those that another phone has stand behind them. */
export function whoAreYou(
  learners: readonly string[],
  taken: ReadonlySet<number>,
  choose: (learner: number, instead: boolean) => void,
): TemplateResult {
  const one = (learner: string, at: number, instead: boolean) =>
    html`<button @click=${() => choose(at, instead)}>${learner}</button>`;
  const all = learners.map((learner, at) => ({ learner, at }));
  const [free, others] = [false, true].map((is) => all.filter(({ at }) => taken.has(at) === is));
  return html`<p>Who are you?</p>
    <div class="acts">${free?.map(({ learner, at }) => one(learner, at, false))}</div>
    ${
      others && others.length > 0
        ? html`<details><summary>On another phone already: ${others.map(({ learner }) => learner).join(', ')}</summary>
            <p>If one of them is you, go on here; that phone is asked who it is.</p>
            <div class="acts">${others.map(({ learner, at }) => one(learner, at, true))}</div></details>`
        : nothing
    }
    ${learners.length === 0 ? nothing : html`<p class="small soft">Your name is not here? Tell the trainer, who adds you and shows a new code.</p>`}`;
}

/** In the place of the form, for whoever comes once the working of a case is open. */
export const tooLate: TemplateResult = html`<p class="notice" role="status">The working of this case is open, so no guess is taken any more: look at the wall. The next case comes here by itself.</p>`;

/** Which case is on, and who guesses. */
export const headRead = (
  each: GroupCase,
  number: number,
  cases: number,
  learner: string | undefined,
  isOpen: boolean,
) => html`<h1 tabindex="-1">${titleAbove(each, number, isOpen)}</h1>
  <h2 class="small soft">Case ${number} of ${cases} · ${learner}</h2>`;
