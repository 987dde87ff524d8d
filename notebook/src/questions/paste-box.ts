import { html, nothing } from 'lit';
import { PlainElement } from '../elements/plain-element';

/** Text that somebody wants taken in. */
export class BunchPasted extends CustomEvent<string> {
  constructor(text: string) {
    super('bunch-pasted', { detail: text, bubbles: true });
  }
}

/** Larger than this is never laid into a field, which would hold the page; it is taken in at once. */
const mostInField = 200_000;

/** How a bunch may look; once something is here, the room is left to that. */
const example =
  '# Phone\nCan my wagon pull the small one?\n\n# Comments\nDale R., Nov 27\nHow long does …';

/** Where messages are pasted, typed or dictated, one bunch after the other. */
export class PasteBox extends PlainElement {
  static override properties = {
    wrong: { attribute: false },
    said: { attribute: false },
    busy: { attribute: false },
    few: { attribute: false },
    out: { attribute: false },
    back: { attribute: false },
  };
  /** Why nothing was taken in, in one sentence; '' while all is well. */
  declare wrong: string;
  declare said: string;
  declare busy: boolean;
  /** Whether anything is here already; then the box is small. */
  declare few: boolean;

  /** How many of those that were taken in last can be taken out again, and how many can come back. */
  declare out: number;
  declare back: number;

  constructor() {
    super();
    this.out = 0;
    this.back = 0;
  }

  private wish = (what: 'last-out' | 'brought-back') => (): void => {
    this.dispatchEvent(new CustomEvent(what, { bubbles: true }));
  };

  /** A paste that was a mistake goes out again, and comes back if that was one. */
  private undo() {
    const { out, back, busy } = this;
    const messages = (n: number): string => (n === 1 ? 'message' : `${n} messages`);
    return html`${
      out > 0
        ? html`<button type="button" ?disabled=${busy} @click=${this.wish('last-out')}>Take the last ${messages(out)} out again</button>`
        : nothing
    }
    ${
      back > 0
        ? html`<button type="button" ?disabled=${busy} @click=${this.wish('brought-back')}>Bring ${back === 1 ? 'it' : messages(back)} back</button>`
        : nothing
    }`;
  }

  /** What was typed is taken in only once it is kept. */
  empty(): void {
    const field = this.querySelector('textarea');
    if (field) field.value = '';
    sessionStorage.removeItem('tarebook.bunch');
  }

  private take = (event: Event): void => {
    event.preventDefault();
    const field = this.querySelector('textarea');
    if (field) this.dispatchEvent(new BunchPasted(field.value));
  };

  private paste = (event: ClipboardEvent): void => {
    const text = event.clipboardData?.getData('text/plain') ?? '';
    if (text.length <= mostInField) return;
    event.preventDefault();
    this.dispatchEvent(new BunchPasted(text));
  };

  /** What stands in the field outlives a turn to another page. */
  private remember = (event: Event): void => {
    if (!(event.target instanceof HTMLTextAreaElement)) return;
    try {
      sessionStorage.setItem('tarebook.bunch', event.target.value);
    } catch {
      // It stands in the field alone.
    }
  };

  private left(): string {
    try {
      return sessionStorage.getItem('tarebook.bunch') ?? '';
    } catch {
      return '';
    }
  }

  protected override firstUpdated(): void {
    const field = this.querySelector('textarea');
    if (field) field.value = this.left();
  }

  protected override render() {
    const { wrong, said, busy } = this;
    return html`<form class="bunch noprint" @submit=${this.take}>
      <label for="bunch">Paste what came in, from all sides</label>
      <textarea id="bunch" rows=${this.few ? 7 : 3} aria-describedby="bunch-how bunch-wrong" spellcheck="false"
        placeholder=${this.few ? example : ''}
        @input=${this.remember} @paste=${this.paste}></textarea>
      <p class="small soft" id="bunch-how">An empty line or a row of dashes ends a message; a name with its time, or From:, begins one. A line such as “# Phone” tells by which way all that follow came.</p>
      <div class="acts"><button ?disabled=${busy}>Take them in</button> ${this.undo()}
        <span class="small" role="status">${said}</span></div>
      <p class="error" id="bunch-wrong" role="alert">${wrong || nothing}</p>
    </form>`;
  }
}

customElements.define('paste-box', PasteBox);
