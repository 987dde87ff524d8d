import { html, nothing } from 'lit';
import { PlainElement } from '../elements/plain-element';
import { exerciseWords } from '../practice/exercise-words';
import type { Lacking } from '../practice/lacking';
import type { LessonItem } from '../state/lesson';
import { type Exercise, exercises } from '../state/practice';
import { exercisesLacking } from './exercises-lacking';

export class ExerciseChosen extends CustomEvent<Exercise> {
  constructor(exercise: Exercise) {
    super('exercise-chosen', { detail: exercise, bubbles: true });
  }
}

/** What learners do with a case of the lesson; what the case has nothing for cannot be chosen. */
export class ExerciseChoice extends PlainElement {
  static override properties = { item: { attribute: false }, lacking: { state: true } };
  declare item: LessonItem;
  declare lacking: Lacking;
  private of = '';

  constructor() {
    super();
    this.lacking = {};
  }

  protected override willUpdate(): void {
    const { topic, name } = this.item;
    if (this.of === `${topic}/${name}`) return;
    this.of = `${topic}/${name}`;
    void this.look(this.of);
  }

  private async look(of: string): Promise<void> {
    const lacking = await exercisesLacking(this.item);
    if (of === this.of) this.lacking = lacking;
  }

  private readonly chosen = ({ target }: Event): void => {
    const to = exercises.find(
      (each) => target instanceof HTMLSelectElement && each === target.value,
    );
    if (to) this.dispatchEvent(new ExerciseChosen(to));
  };

  /** What cannot be chosen and why; what shares a reason stands together. */
  private reasons(id: string) {
    const { lacking } = this;
    const out = exercises.filter((each) => lacking[each] !== undefined);
    if (out.length === 0) return nothing;
    const why = [...new Set(out.map((each) => lacking[each]))].map((reason) => {
      const alike = out.filter((each) => lacking[each] === reason);
      return `${alike.map((each) => `“${exerciseWords[each]}”`).join(' and ')}: ${reason}`;
    });
    return html`<p class="small soft" id=${id}>Not with this case: ${why.join('; ')}.</p>`;
  }

  protected override render() {
    const { title, topic, name, exercise = 'predict' } = this.item;
    const { lacking } = this;
    const id = `lacks-${topic}-${name}`;
    const wrong = lacking[exercise] !== undefined;
    return html`<select
        class="exercise"
        aria-label=${`What they do with ${title}`}
        aria-describedby=${id}
        aria-invalid=${wrong ? 'true' : 'false'}
        .value=${exercise}
        @change=${this.chosen}
      >${exercises.map(
        (each) =>
          html`<option value=${each} ?selected=${each === exercise} ?disabled=${lacking[each] !== undefined && each !== exercise}>${exerciseWords[each]}</option>`,
      )}</select>
      ${wrong ? html`<p class="error">This case has nothing for “${exerciseWords[exercise]}”; choose another exercise for it.</p>` : nothing}
      ${this.reasons(id)}`;
  }
}

customElements.define('exercise-choice', ExerciseChoice);
