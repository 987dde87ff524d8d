import { html, nothing } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import { PlainElement } from '../elements/plain-element';
import { type GroupCase, readLearners } from '../state/group';
import {
  type Lesson,
  type LessonItem,
  minutesOf,
  moved,
  readMinutes,
  toggled,
} from '../state/lesson';
import './case-chooser';
import { caseAddress } from '../state/address';
import type { CaseChosen } from './case-chooser';
import { casesOf } from './class-cases';
import './exercise-choice';
import type { ExerciseChosen } from './exercise-choice';
import { type Sheets, SheetsWanted } from './sheets-wanted';

export class LessonChanged extends CustomEvent<Lesson> {
  constructor(lesson: Lesson) {
    super('lesson-changed', { detail: lesson, bubbles: true });
  }
}

export class ClassBegun extends CustomEvent<{
  readonly learners: readonly string[];
  readonly cases: readonly GroupCase[];
}> {
  constructor(learners: readonly string[], cases: readonly GroupCase[]) {
    super('class-begun', { detail: { learners, cases }, bubbles: true });
  }
}

const counted = (n: number, one: string): string => `${n} ${one}${n === 1 ? '' : 's'}`;

/** A lesson as it is prepared: its name, who takes part, which cases in which order, how long each. */
export class LessonPlan extends PlainElement {
  static override properties = {
    lesson: { attribute: false },
    wrongNames: { state: true },
    wrongCases: { state: true },
    wrongMinutes: { state: true },
    read: { state: true },
  };
  declare lesson: Lesson;
  declare wrongNames: string;
  declare wrongCases: string;
  declare wrongMinutes: { readonly at: number; readonly says: string } | undefined;
  /** How many cases are read, while they are. */
  declare read: number | undefined;
  private dragged: number | undefined;
  private reading = new AbortController();

  constructor() {
    super();
    this.wrongNames = '';
    this.wrongCases = '';
  }

  private change(part: Partial<Lesson>): void {
    this.dispatchEvent(new LessonChanged({ ...this.lesson, ...part, changed: Date.now() }));
  }

  private changeItem(at: number, part: Partial<LessonItem>): void {
    const items = this.lesson.items.map((each, i) => (i === at ? { ...each, ...part } : each));
    this.change({ items });
  }

  private minutes(at: number, event: Event): void {
    if (!(event.target instanceof HTMLInputElement)) return;
    const minutes = readMinutes(event.target.value);
    this.wrongMinutes = typeof minutes === 'string' ? { at, says: minutes } : undefined;
    if (typeof minutes === 'number') this.changeItem(at, { minutes });
  }

  private async shift(from: number, to: number, act: string): Promise<void> {
    this.change(moved(this.lesson, from, to));
    await this.updateComplete;
    const buttons = this.querySelectorAll<HTMLButtonElement>(`ol.plan .${act}`);
    const button = buttons[to];
    // At either end the key that moved it has nothing more to do; its neighbor takes the focus.
    if (button?.disabled)
      button.parentElement?.querySelector<HTMLElement>('button:enabled')?.focus();
    else button?.focus();
  }

  /** The cases of the lesson, or undefined and what is wrong told. */
  private async walked(): Promise<readonly GroupCase[] | undefined> {
    const { items } = this.lesson;
    this.wrongCases = items.length === 0 ? 'No case is chosen; tick one under “Which cases”.' : '';
    if (items.length === 0) return undefined;
    this.read = 0;
    this.reading = new AbortController();
    const told = (done: number): void => {
      this.read = done;
    };
    const cases = await casesOf(items, told, this.reading.signal);
    this.read = undefined;
    if (typeof cases !== 'string') return cases;
    this.wrongCases = cases;
    return undefined;
  }

  private async begin(event: Event): Promise<void> {
    event.preventDefault();
    if (this.read !== undefined) return;
    const learners = readLearners(this.lesson.learners);
    this.wrongNames = typeof learners === 'string' ? learners : '';
    const cases = await this.walked();
    if (typeof learners === 'string') this.querySelector('textarea')?.focus();
    else if (cases) this.dispatchEvent(new ClassBegun(learners, cases));
    else if (!this.reading.signal.aborted)
      this.querySelector<HTMLElement>('case-chooser input')?.focus();
  }

  private async print(sheets: Sheets): Promise<void> {
    if (this.read !== undefined) return;
    const { learners } = this.lesson;
    const named = learners.trim() === '' ? [] : readLearners(learners);
    this.wrongNames = typeof named === 'string' ? named : '';
    if (typeof named === 'string') return;
    const cases = await this.walked();
    if (cases) this.dispatchEvent(new SheetsWanted(sheets, cases, named));
  }

  private progress(read: number): string {
    const { items } = this.lesson;
    const at = `case ${read + 1} of ${items.length}`;
    return items[read]?.exercise === 'ask'
      ? `Working out which questions settle ${at} …`
      : `Reading ${at} …`;
  }

  override disconnectedCallback(): void {
    this.reading.abort();
    super.disconnectedCallback();
  }

  private item(item: LessonItem, at: number, last: number) {
    const { title, minutes, note } = item;
    const wrong = this.wrongMinutes?.at === at ? this.wrongMinutes.says : '';
    const noted = (event: Event): void => {
      if (event.target instanceof HTMLTextAreaElement) {
        this.changeItem(at, { note: event.target.value.slice(0, 2000) });
      }
    };
    const dropped = (event: DragEvent): void => {
      event.preventDefault();
      if (this.dragged !== undefined) this.change(moved(this.lesson, this.dragged, at));
      this.dragged = undefined;
    };
    return html`<li
      draggable="true"
      @dragstart=${() => {
        this.dragged = at;
      }}
      @dragover=${(event: DragEvent) => {
        if (this.dragged !== undefined) event.preventDefault();
      }}
      @drop=${dropped}
    >
      <a class="title" href=${caseAddress(item.topic, item.name)} target="_blank">${title}</a>
      <label class="minutes"><input
        class="num"
        inputmode="numeric"
        aria-label=${`Minutes for ${title}`}
        aria-invalid=${wrong ? 'true' : 'false'}
        .value=${String(minutes)}
        @change=${(event: Event) => this.minutes(at, event)}
      /> min</label>
      <exercise-choice
        .item=${item}
        @exercise-chosen=${({ detail: exercise }: ExerciseChosen) => this.changeItem(at, { exercise })}
      ></exercise-choice>
      <span class="acts">
        <button type="button" class="up" aria-label=${`Earlier: ${title}`} ?disabled=${at === 0} @click=${() => this.shift(at, at - 1, 'up')}>Earlier</button>
        <button type="button" class="down" aria-label=${`Later: ${title}`} ?disabled=${at === last} @click=${() => this.shift(at, at + 1, 'down')}>Later</button>
        <button type="button" aria-label=${`Take out: ${title}`} @click=${() => this.change(toggled(this.lesson, item))}>Take out</button>
      </span>
      ${wrong ? html`<p class="error" role="alert">${wrong}</p>` : nothing}
      <details ?open=${note !== ''}>
        <summary>What I want to say</summary>
        <textarea rows="2" aria-label=${`Note on ${title}`} .value=${note} @change=${noted}></textarea>
      </details>
    </li>`;
  }

  private plan() {
    const { items } = this.lesson;
    if (items.length === 0)
      return html`<p class="soft">Nothing is chosen yet; tick cases, and they stand here in the order in which you walk them.</p>`;
    return html`<ol class="plan">${repeat(
      items,
      ({ topic, name }) => `${topic}/${name}`,
      (item, at) => this.item(item, at, items.length - 1),
    )}</ol>
    <p>${counted(items.length, 'case')}, ${counted(minutesOf(this.lesson), 'minute')} in all.</p>`;
  }

  protected override render() {
    const { lesson, wrongNames, wrongCases, read } = this;
    const typed = (part: (text: string) => Partial<Lesson>) => (event: Event) => {
      const { target } = event;
      if (target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement) {
        this.change(part(target.value));
      }
    };
    return html`<section class="which">
      <h2>Which cases</h2>
      <case-chooser
        .items=${lesson.items}
        @case-chosen=${({ detail }: CaseChosen) => this.change(toggled(lesson, detail))}
      ></case-chooser>
    </section>
    <form @submit=${this.begin} novalidate>
      <h2>The lesson</h2>
      <label for="lesson-name">What it is called</label>
      <input
        id="lesson-name"
        autocomplete="off"
        maxlength="80"
        placeholder="Week 1, tongue weight"
        .value=${lesson.name}
        @input=${typed((name) => ({ name }))}
      />
      ${this.plan()}
      <p class="error" role="alert">${wrongCases}</p>
      <h2>Who takes part</h2>
      <label for="learners">First names or numbers, one on a line</label>
      <textarea
        id="learners"
        rows="4"
        autocomplete="off"
        spellcheck="false"
        aria-invalid=${wrongNames ? 'true' : 'false'}
        aria-describedby="learners-wrong"
        .value=${lesson.learners}
        @input=${typed((learners) => ({ learners }))}
      ></textarea>
      <p class="error" id="learners-wrong" role="alert">${wrongNames}</p>
      <div class="acts">
        <button class="main">Begin with ${counted(lesson.items.length, 'case')}</button>
        <button type="button" @click=${() => this.print('both')}>Print worksheets and key</button>
        <button type="button" @click=${() => this.print('key')}>Print the key alone</button>
        <button type="button" @click=${() => this.print('worksheets')}>Print the worksheets alone</button>
      </div>
      <p role="status">${read === undefined ? '' : this.progress(read)}</p>
      ${read === undefined ? nothing : html`<p><button type="button" @click=${() => this.reading.abort()}>Stop</button></p>`}
    </form>`;
  }
}

customElements.define('lesson-plan', LessonPlan);
