import { html, nothing } from 'lit';
import { PlainElement } from '../elements/plain-element';
import { saveAs } from '../state/files';
import { allKept } from '../state/kept';
import { type Lesson, lessonFile, minutesOf } from '../state/lesson';

export type LessonAct = 'open' | 'copy' | 'drop' | 'new';
export class LessonActed extends CustomEvent<{
  readonly act: LessonAct;
  readonly lesson?: Lesson;
}> {
  constructor(act: LessonAct, lesson?: Lesson) {
    super('lesson-acted', { detail: { act, ...(lesson && { lesson }) }, bubbles: true });
  }
}

export class LessonFileChosen extends CustomEvent<File> {
  constructor(file: File) {
    super('lesson-file', { detail: file, bubbles: true });
  }
}

const nameOf = ({ name, items }: Lesson): string =>
  name || items[0]?.title || 'A lesson without a name';

async function saveLesson(lesson: Lesson): Promise<void> {
  const file = lessonFile(lesson, await allKept().catch(() => []));
  const stem = nameOf(lesson)
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 60);
  saveAs(`lesson-${stem}.json`, `${JSON.stringify(file, undefined, 2)}\n`, 'application/json');
}

/** The lessons on this device: opened, copied, passed on, deleted. */
export class LessonList extends PlainElement {
  static override properties = { lessons: { attribute: false }, open: { attribute: false } };
  declare lessons: readonly Lesson[];
  /** The lesson that is open. */
  declare open: Lesson;

  private row(lesson: Lesson) {
    const name = nameOf(lesson);
    const here = lesson.id === this.open.id;
    const button = (act: LessonAct, word: string) =>
      html`<button aria-label=${`${word}: ${name}`} @click=${() => this.dispatchEvent(new LessonActed(act, lesson))}>${word}</button>`;
    return html`<li>
      <span>${name} <span class="from">${lesson.items.length} ${lesson.items.length === 1 ? 'case' : 'cases'}, ${minutesOf(lesson)} min${here ? ' · open above' : ''}</span></span>
      <span class="acts">
        ${here ? nothing : button('open', 'Open')}
        ${button('copy', 'Copy')}
        <button aria-label=${`Save as a file: ${name}`} @click=${() => saveLesson(lesson)}>Save as a file</button>
        ${button('drop', 'Delete')}
      </span>
    </li>`;
  }

  protected override render() {
    const { lessons } = this;
    const chosen = ({ target }: Event): void => {
      if (!(target instanceof HTMLInputElement)) return;
      const [file] = target.files ?? [];
      if (file) this.dispatchEvent(new LessonFileChosen(file));
      target.value = '';
    };
    return html`<h2>Lessons</h2>
      ${lessons.length === 0 ? html`<p class="soft">What is prepared above is kept here.</p>` : html`<ul class="cases">${lessons.map((each) => this.row(each))}</ul>`}
      <div class="acts">
        <button @click=${() => this.dispatchEvent(new LessonActed('new'))}>A new lesson</button>
        <label class="from-file">Open a lesson somebody passed on
          <input type="file" accept=".json,application/json" @change=${chosen} /></label>
      </div>`;
  }
}

customElements.define('lesson-list', LessonList);
