import { html, nothing } from 'lit';
import { PlainElement } from '../elements/plain-element';
import { exerciseWords } from '../practice/exercise-words';
import type { Due } from '../practice/weeks';
import type { Lesson } from '../state/lesson';

/** A lesson was made of what comes back. */
export class LessonMade extends CustomEvent<Lesson> {
  constructor(lesson: Lesson) {
    super('lesson-made', { detail: lesson, bubbles: true });
  }
}

/** So many are named; the others are counted. */
const mostNamed = 6;

/** What somebody missed and is due again by today: said where a lesson is prepared, and made one of. */
export class ComesBack extends PlainElement {
  static override properties = { due: { state: true } };
  declare due: readonly Due[];

  constructor() {
    super();
    this.due = [];
  }

  override connectedCallback(): void {
    super.connectedCallback();
    void this.look();
  }

  /** Read when the page stands, as every case of earlier classes is judged for it. */
  private async look(): Promise<void> {
    try {
      const [{ allDone }, { comingBack }] = await Promise.all([
        import('../practice/all-done'),
        import('../practice/weeks'),
      ]);
      const now = Date.now();
      this.due = comingBack(await allDone()).filter(({ due }) => due <= now);
    } catch {
      // That nothing is kept here is told by the page itself, which reads the same shelves.
      this.due = [];
    }
  }

  private make = async (): Promise<void> => {
    const { lessonOfDue } = await import('../practice/lesson-of-due');
    this.dispatchEvent(new LessonMade(lessonOfDue(this.due, Date.now())));
  };

  protected override render() {
    const { due } = this;
    if (due.length === 0) return nothing;
    const others = due.length - mostNamed;
    return html`<section class="comes-back noprint" aria-label="Due again today">
      <h2>Due again today</h2>
      <p>What somebody missed comes back after days. The lesson has the same figures; practice alone makes fresh ones where a case allows it.</p>
      <ul>${due
        .slice(0, mostNamed)
        .map(
          ({ learner, title, exercise }) =>
            html`<li>${learner}: ${title} <span class="soft small">${exerciseWords[exercise]}</span></li>`,
        )}</ul>
      ${others > 0 ? html`<p>And ${others} more: see <a href="#/class/weeks">Over weeks</a>.</p>` : nothing}
      <div class="acts"><button @click=${this.make}>Make a lesson of these</button></div>
    </section>`;
  }
}

customElements.define('comes-back', ComesBack);
