import { topics } from '@tarebook/rules';
import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing } from 'lit';
import { keyed } from 'lit/directives/keyed.js';
import { PlainElement } from '../elements/plain-element';
import { type Exercise, exercises, keepAttempt, newAttempt } from '../state/practice';
import { whyNotKept } from '../state/shelf';
import type { ExerciseDone } from './exercise-events';
import { exerciseWords } from './exercise-words';
import type { Made } from './made';
import { makeAny, makeOf, type Waiting } from './make';
import { mistakeOf } from './mistakes';
import './practice-ask';
import './practice-predict';
import './practice-say';
import './practice-spot';
import './practice.css';

/** One who practices alone: chooses what, and gets case after case, each with figures of its own. */
export class PracticeView extends PlainElement {
  static override properties = {
    system: { attribute: false },
    learner: { state: true },
    topic: { state: true },
    exercise: { state: true },
    made: { state: true },
    told: { state: true },
    done: { state: true },
    making: { state: true },
  };
  declare system: UnitSystem;
  declare learner: string;
  declare topic: string;
  declare exercise: Exercise;
  declare made: Made | undefined;
  declare told: string;
  declare done: boolean;
  /** While an exercise is made. */
  declare making: AbortController | undefined;
  private seed = 1 + Math.floor(Math.random() * 1_000_000);

  constructor() {
    super();
    this.learner = '';
    this.topic = 'tow-fit';
    this.exercise = 'predict';
    this.told = '';
    this.done = false;
  }

  /** What comes back is opened by its address: who, what, of which case, and by which seed. */
  protected override firstUpdated(): void {
    const [, , , learner = '', exercise = '', topic = '', name = '', seed = ''] = location.hash
      .split('/')
      .map((part) => {
        try {
          return decodeURIComponent(part);
        } catch {
          return '';
        }
      });
    this.learner = learner;
    this.exercise = exercises.find((each) => each === exercise) ?? 'predict';
    if (Object.hasOwn(topics, topic)) this.topic = topic;
    if (/^\d{1,9}$/.test(seed)) this.seed = Number(seed) - 1;
    if (name) void this.begin(name);
  }

  /** @param name the case; '' takes any of the topic */
  private async begin(name: string): Promise<void> {
    const { exercise, topic } = this;
    this.stop();
    this.seed += 1;
    this.made = undefined;
    this.done = false;
    this.told = 'Drawing up an exercise …';
    const making = new AbortController();
    this.making = making;
    const waiting: Waiting = {
      signal: making.signal,
      tried: (count) => {
        this.told = `Drawing up an exercise … ${count === 1 ? 'one case has' : `${count} cases have`} nothing for it, looking on.`;
      },
    };
    try {
      const made = await (name
        ? makeOf(exercise, { topic, name, title: name }, this.seed, waiting)
        : makeAny(exercise, topic, this.seed, waiting));
      if (making.signal.aborted) return;
      this.told = made
        ? ''
        : 'The cases of this topic have nothing for this exercise; choose another.';
      this.made = made;
    } catch {
      this.told = 'No exercise could be drawn up; reload the page and try once more.';
    }
    this.making = undefined;
    await this.updateComplete;
    this.querySelector<HTMLElement>('h2')?.focus();
  }

  /** Nobody wants the exercise any more that is being made. */
  private stop(): void {
    this.making?.abort();
    this.making = undefined;
    this.told = '';
  }

  override disconnectedCallback(): void {
    this.stop();
    super.disconnectedCallback();
  }

  private async took({ detail: { said, met } }: ExerciseDone): Promise<void> {
    const { made, exercise, learner } = this;
    if (!made) return;
    this.done = true;
    if (learner.trim() === '') return;
    const mistake = exercise === 'predict' ? mistakeOf(made.doc, made.question, said) : undefined;
    const { topic, name, title } = made;
    const of = { learner: learner.trim().slice(0, 40), topic, name, title, exercise, met };
    const attempt = newAttempt({ ...of, said, ...(mistake && { mistake }) }, Date.now());
    await keepAttempt(attempt).catch((problem: unknown) => {
      this.told = whyNotKept(problem);
    });
  }

  private start(event: Event): void {
    event.preventDefault();
    void this.begin('');
  }

  private choice() {
    const chosen =
      (change: (value: string) => void) =>
      ({ target }: Event) => {
        if (target instanceof HTMLSelectElement || target instanceof HTMLInputElement)
          change(target.value);
      };
    return html`<form class="turn" @submit=${this.start} novalidate>
      <label>Who practices
        <input id="who" autocomplete="off" maxlength="40" placeholder="may stay empty" .value=${this.learner} @input=${chosen(
          (value) => {
            this.learner = value;
          },
        )} /></label>
      <label>What
        <select @change=${chosen((value) => {
          this.exercise = exercises.find((each) => each === value) ?? 'predict';
        })}>${exercises.map((each) => html`<option value=${each} ?selected=${each === this.exercise}>${exerciseWords[each]}</option>`)}</select></label>
      <label>About
        <select @change=${chosen((value) => {
          this.topic = value;
        })}>${Object.entries(topics).map(([id, { title }]) => html`<option value=${id} ?selected=${id === this.topic}>${title}</option>`)}</select></label>
      <button>${this.made ? 'Another one' : 'Begin'}</button>
    </form>`;
  }

  private task(made: Made) {
    const { system } = this;
    const { task } = made;
    switch (task.kind) {
      case 'ask':
        return html`<practice-ask .made=${made} .asking=${task.asking} .system=${system}></practice-ask>`;
      case 'spot':
        return html`<practice-spot .made=${made} .wrong=${task.wrong}></practice-spot>`;
      case 'say':
        return html`<practice-say .made=${made} .system=${system}></practice-say>`;
      default:
        return html`<practice-predict .made=${made} .system=${system}></practice-predict>`;
    }
  }

  protected override render() {
    const { made, told, done, making } = this;
    return html`<h1>Practice</h1>
      <p><a href="#/class">Class</a> · Names and answers stay on this device; with a name, what is missed comes back after days.</p>
      ${this.choice()}
      <p role="status">${told}</p>
      ${making ? html`<p><button type="button" @click=${() => this.stop()}>Stop</button></p>` : nothing}
      ${
        made
          ? html`<h2 tabindex="-1">${exerciseWords[made.task.kind]}${made.task.kind === 'ask' && !done ? nothing : ` · ${made.title}`}</h2>
            <p class="small soft">${
              made.isFresh
                ? `The figures are this exercise’s own, drawn by the seed ${this.seed}; vehicle, trailer and people are invented.`
                : 'The figures are those of the filed case, of which none can be drawn anew here; vehicle, trailer and people are invented.'
            }</p>
            ${keyed(made, html`<div @exercise-done=${this.took}>${this.task(made)}</div>`)}
            ${done ? html`<div class="acts"><button class="main" @click=${() => this.begin('')}>Another one</button></div>` : nothing}`
          : nothing
      }`;
  }
}

customElements.define('practice-view', PracticeView);
