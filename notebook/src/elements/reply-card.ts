import { html, nothing } from 'lit';
import { live } from 'lit/directives/live.js';
import { foundFor, hearFound } from '../change/found';
import { secondsAloud } from '../state/aloud';
import { guarded, type ReplyKind, replyOf, type Told, verdictKey } from '../state/reply';
import { wordedReply, wordingPlace } from '../state/worded';
import { keepWordings, keptWordings, markOf, type Wordings } from '../state/wording';
import { copyFrom } from './copy-text';
import { RestingElement } from './resting-element';

const titles: Readonly<Record<ReplyKind, string>> = {
  spoken: 'To say aloud',
  post: 'A short post',
  letter: 'A long reply, with the working',
};

const idOf = (kind: ReplyKind): string => `reply-${kind}`;

const lines: Readonly<Record<ReplyKind, number>> = { spoken: 3, post: 8, letter: 16 };

/**
 * The reply three ways, each with its figure and its caution, open to rewording. A wording is kept
 * until the verdict changes; whatever is copied has its cautions.
 */
export class ReplyCard extends RestingElement {
  static override properties = {
    of: { attribute: false },
    kinds: { attribute: false },
    text: { attribute: false },
    name: { attribute: false },
    current: { attribute: false },
    wordings: { state: true },
    said: { state: true },
  };
  declare of: Told;
  /** Which of the replies are shown. */
  declare kinds: readonly ReplyKind[];
  /** The text that was judged: what would change it is looked for beside the page, and comes later. */
  declare text: string;
  /** The last part of the case's address. */
  declare name: string;
  /** Whether the answer is that of the present text. */
  declare current: boolean;
  declare wordings: Wordings | undefined;
  /** What was last done, for the reader and for those who listen. */
  declare said: { readonly kind: ReplyKind; readonly words: string } | undefined;

  private unhear: (() => void) | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    this.unhear = hearFound(() => this.requestUpdate());
  }

  override disconnectedCallback(): void {
    this.unhear?.();
    super.disconnectedCallback();
  }

  /** What would change the verdict, as it stands in each reply, and of which text that is. */
  private readonly taken = new Map<ReplyKind, ReturnType<typeof foundFor>>();
  private takenOf = '';

  /** Whether somebody is in a reply's field, to word it or to take it away. */
  private isInHand(kind: ReplyKind): boolean {
    const { activeElement } = document;
    return activeElement?.id === idOf(kind) && this.contains(activeElement);
  }

  /** What comes later is written into no field that somebody is in; it comes when they leave it. */
  private toldFor(kind: ReplyKind): Told {
    if (!this.isInHand(kind)) this.taken.set(kind, foundFor(this.text, this.of.system));
    const found = this.current ? this.taken.get(kind) : undefined;
    return { ...this.of, ...(found && { remedies: found.remedies }) };
  }

  protected override willUpdate(): void {
    const of = `${this.of.system} ${this.text}`;
    if (of !== this.takenOf) this.taken.clear();
    this.takenOf = of;
    this.wordings ??= keptWordings(this.of.topic.id, this.name);
  }

  private reword(kind: ReplyKind, text: string | undefined): void {
    const told = this.toldFor(kind);
    const place = wordingPlace(kind, told);
    const { [place]: _, ...others } = this.wordings ?? {};
    const writtenFor = markOf(verdictKey(told));
    const wordings = text === undefined ? others : { ...others, [place]: { text, writtenFor } };
    this.wordings = wordings;
    const kept = keepWordings(told.topic.id, this.name, wordings);
    this.said = kept
      ? undefined
      : {
          kind,
          words: 'This device keeps nothing just now; your wording lives only in this window.',
        };
  }

  private async copy(kind: ReplyKind, event: Event): Promise<void> {
    const at = event.currentTarget instanceof Element ? event.currentTarget : null;
    const field = at?.closest('.reply')?.querySelector('textarea');
    if (!field) return;
    this.performUpdate();
    const { cautions } = replyOf(kind, this.toldFor(kind));
    const { text, putBack } = guarded(field.value, cautions);
    if (putBack.length > 0) {
      this.reword(kind, text);
      field.value = text;
    }
    this.said = undefined;
    const copied = await copyFrom(field);
    const what =
      copied === 'copied'
        ? 'Copied, with its caution.'
        : 'This browser does not let the page copy; the text is marked, so press Ctrl or ⌘ and C.';
    const back =
      putBack.length === 0
        ? ''
        : ' The caution was missing, so it was put back: an answer never leaves without it.';
    this.said = { kind, words: `${what}${back}` };
  }

  private one(kind: ReplyKind) {
    const { current, said } = this;
    const told = this.toldFor(kind);
    const { text, own, isOwn } = wordedReply(kind, told, this.wordings ?? {});
    const seconds = secondsAloud(text);
    const id = idOf(kind);
    return html`<div class="reply">
      <label for=${id}>${titles[kind]}</label>
      <textarea id=${id} rows=${lines[kind]} .value=${live(text)} @input=${(event: Event) => {
        if (event.target instanceof HTMLTextAreaElement) this.reword(kind, event.target.value);
      }} @blur=${() => this.requestUpdate()}></textarea>
      <p class="small soft">
        ${kind === 'letter' ? nothing : `About ${seconds} seconds aloud, at 150 words a minute.`}
        ${isOwn ? 'In your words.' : nothing}
      </p>
      ${
        own && !isOwn
          ? html`<p class="small">The verdict has changed since you reworded this, so it is written afresh.
            <button @click=${() => this.reword(kind, own.text)}>Bring my words back</button>
            <span class="soft">(check their figures)</span></p>`
          : nothing
      }
      <div class="acts">
        <button ?disabled=${!current} @click=${(event: Event) => this.copy(kind, event)}
          aria-label="Copy: ${titles[kind]}">Copy</button>
        ${
          own
            ? html`<button @click=${() => this.reword(kind, undefined)}
              aria-label="Write it afresh: ${titles[kind]}">Write it afresh</button>`
            : nothing
        }
        <span class="small soft">${said?.kind === kind ? said.words : nothing}</span>
      </div>
    </div>`;
  }

  protected override render() {
    return html`
      ${
        this.current
          ? nothing
          : html`<p class="small">An entry of the case is not read; these can be copied once it is mended.</p>`
      }
      ${this.kinds.map((kind) => this.one(kind))}
      <p class="hidden" role="status">${this.said?.words ?? ''}</p>
    `;
  }
}

customElements.define('reply-card', ReplyCard);
