import type { ReadMessage } from '@tarebook/record';
import { html, nothing, type PropertyValues } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import { copyFrom } from '../elements/copy-text';
import { PlainElement } from '../elements/plain-element';
import type { Given } from '../state/given';
import type { Asked } from '../state/questions';
import type { Round } from '../state/round';
import type { Answered } from './answer-shapes';
import type { Sought } from './reader';
import './asked-part';
import { AnswerLeft, AskedChanged, TakenOut } from './events';
import { withLifted, withPutBack } from './urgency';
import { urgentWords } from './words';

/** Longer messages are shown as far as this until somebody wants the rest. */
const mostShown = 1_500;

const shortly = (text: string): string => (text.length > 90 ? `${text.slice(0, 90)} …` : text);

/** A message: by which way it came, what in it is urgent, and each of its questions. */
export class AskedEntry extends PlainElement {
  static override properties = {
    asked: { attribute: false },
    read: { attribute: false },
    number: { attribute: false },
    same: { attribute: false },
    earlier: { attribute: false },
    answer: { attribute: false },
    labels: { attribute: false },
    round: { attribute: false },
    unfolded: { state: true },
    correcting: { state: true },
    whole: { state: true },
    said: { state: true },
  };
  declare asked: Asked;
  declare read: ReadMessage | undefined;
  declare number: number;
  /** Those who asked the same after this one. */
  declare same: readonly Asked[];
  /** What was answered before to one of those who ask this, the latest first. */
  declare earlier: readonly Given[];
  declare answer: (of: Sought, isFirst?: boolean) => Promise<Answered | undefined>;
  declare labels: (topic: string, fact: string) => string;
  declare round: Round | undefined;
  /** Whether one that is done is shown whole all the same. */
  declare unfolded: boolean;
  declare correcting: boolean;
  declare whole: boolean;
  declare said: string;

  constructor() {
    super();
    this.same = [];
    this.earlier = [];
    this.said = '';
  }

  private change(change: Partial<Asked>): void {
    this.dispatchEvent(new AskedChanged({ ...this.asked, ...change }));
  }

  private head() {
    const { asked } = this;
    const { channel, asker, askedOn } = asked;
    const from = [channel || 'way not told', askedOn].filter((each) => each !== '').join(', ');
    return html`<p class="asked-from"><span class="num">${this.number}</span> ${from}${
      asker === ''
        ? nothing
        : html` <span class="asked-personal" title="A name: kept here, and left out wherever this leaves">${asker}</span>`
    }${asked.waits ? html` · waits for: ${asked.waits}` : nothing}</p>`;
  }

  /** Why it is taken to be urgent, and that whoever looked at it knows better. */
  private urgent() {
    const { read, asked } = this;
    if (!read?.urgent || read.firstReply === null) return nothing;
    const { firstReply, urgentBecause } = read;
    const because =
      urgentBecause.length === 0 ? nothing : html` It says “${urgentBecause.join('”, “')}”.`;
    if (asked.urgent === '') {
      return html`<p class="small soft asked-lifted">Read as urgent, ${urgentWords[read.urgent]}; you said it is not.${because}
        <button type="button" class="quiet" @click=${() => this.change(withPutBack(asked, read))}>Urgent after all</button></p>`;
    }
    const copy = async ({ currentTarget }: Event): Promise<void> => {
      const at = currentTarget instanceof Element ? currentTarget : null;
      const field = at?.closest('.asked-urgent')?.querySelector('textarea');
      if (!field) return;
      const isCopied = (await copyFrom(field)) === 'copied';
      this.said = isCopied ? 'Copied.' : 'The text is marked; press Ctrl or ⌘ and C.';
      const left = { asked, question: asked.text, text: firstReply, answered: undefined, isCopied };
      this.dispatchEvent(new AnswerLeft({ ...left, form: 'first reply' }));
    };
    return html`<div class="asked-urgent">
      <p><strong>Urgent: ${urgentWords[read.urgent]}.</strong>${because} Answer this first:</p>
      <textarea rows="2" readonly aria-label="First reply" .value=${firstReply}></textarea>
      <div class="acts"><button type="button" @click=${copy}>Copy the first reply</button>
        <button type="button" class="quiet" @click=${() => this.change(withLifted(asked, read))}>It is not urgent</button>
        <span class="small soft" role="status">${this.said}</span></div>
    </div>`;
  }

  private correct() {
    const { asked } = this;
    const save = (event: Event): void => {
      event.preventDefault();
      if (!(event.target instanceof HTMLFormElement)) return;
      const typed = new FormData(event.target);
      const of = (name: string): string => String(typed.get(name) ?? '').trim();
      if (of('text') === '') return;
      this.correcting = false;
      this.change({ text: of('text'), channel: of('channel'), asker: of('asker') });
    };
    return html`<form class="asked-correct" @submit=${save}>
      <label>How it came <input name="channel" .value=${asked.channel} /></label>
      <label>Who asked <input name="asker" .value=${asked.asker} /></label>
      <label class="wide-field">The words <textarea name="text" rows="4" required .value=${asked.text}></textarea></label>
      <div class="acts"><button>Read it so</button>
        <button type="button" @click=${() => {
          this.correcting = false;
        }}>As it was</button>
        <button type="button" @click=${() => this.dispatchEvent(new TakenOut(asked))}>Take this message out</button></div>
    </form>`;
  }

  private sameSaid() {
    const { same } = this;
    if (same.length === 0) return nothing;
    return html`<details class="asked-same"><summary>Asked ${same.length + 1} times: show them, or take one apart</summary>
      ${same.map((each) => {
        const { channel, askedOn, text } = each;
        return html`<div class="asked-again"><p class="small">${[channel, askedOn].filter((one) => one !== '').join(', ')}: ${text.slice(0, mostShown)}</p>
          <button type="button" class="quiet" @click=${() =>
            this.dispatchEvent(
              new AskedChanged({ ...each, apart: true }),
            )}>Not the same: answer it by itself</button></div>`;
      })}</details>`;
  }

  private earlierSaid() {
    const [latest] = this.earlier;
    if (!latest) return nothing;
    const { day, by, text } = latest;
    return html`<details class="asked-same"><summary>Answered on ${day}${by === '' ? '' : ` by ${by}`}</summary>
      <p class="small as-written">${text}</p></details>`;
  }

  private body() {
    const { asked, read } = this;
    if (this.correcting) return this.correct();
    if (!read) {
      return html`<p class="asked-words as-written">${asked.text.slice(0, mostShown)}</p>`;
    }
    const rest = asked.text.length > mostShown;
    return html`${this.urgent()}
      ${
        rest
          ? html`<details><summary>The whole message, ${asked.text.length.toLocaleString('en-US')} letters; its first 6,000 were read</summary>
            <p class="asked-words as-written">${asked.text.slice(0, 20_000)}</p></details>`
          : nothing
      }
      ${repeat(
        read.parts,
        ({ text }) => text,
        (part) =>
          html`<asked-part .asked=${asked} .question=${part} .personal=${read.personal} .answer=${this.answer} .labels=${this.labels} .round=${this.round}></asked-part>`,
      )}`;
  }

  /** What was laid aside is one line, so that the next one is next; it opens in its place. */
  private folded() {
    const { asked } = this;
    return html`<article class="asked is-done">
      <header><p class="asked-from">${this.number} Done: <span class="asked-done-words">${shortly(asked.text)}</span></p>
        <div class="acts"><button type="button" class="quiet" data-act="show" @click=${() => {
          this.unfolded = true;
        }}>Show</button>
          <button type="button" class="quiet" @click=${() => this.lay(0)}>Open again</button></div></header>
    </article>`;
  }

  private lay(done: number): void {
    this.unfolded = false;
    this.change(done === 0 ? { done, sent: [] } : { done });
  }

  protected override updated(changed: PropertyValues<this>): void {
    const before = changed.get('asked');
    if (!before || before.id !== this.asked.id || before.done > 0 || this.asked.done === 0) return;
    // Where one was laid aside the next follows, and is in sight.
    this.querySelector<HTMLElement>('[data-act="show"]')?.focus({ preventScroll: true });
    if (this.getBoundingClientRect().top < 0) this.scrollIntoView({ block: 'start' });
  }

  private acts() {
    const { asked, same } = this;
    const done = asked.done > 0;
    return html`<div class="acts">
      ${
        same.length > 0
          ? html`<button type="button" class="quiet" @click=${() => {
              for (const each of same) {
                this.dispatchEvent(new AskedChanged({ ...each, done: Date.now() }));
              }
              this.lay(Date.now());
            }}>Done, all ${same.length + 1}</button>`
          : nothing
      }
      ${
        asked.apart
          ? html`<button type="button" class="quiet" @click=${() => this.change({ apart: false })}>The same after all</button>`
          : nothing
      }
      ${done ? html`<button type="button" class="quiet" @click=${() => this.fold()}>Fold</button>` : nothing}
      <button type="button" class="quiet" @click=${() => this.lay(done ? 0 : Date.now())}>${done ? 'Open again' : 'Done'}</button>
      <button type="button" class="quiet" @click=${() => {
        this.correcting = !this.correcting;
      }}>Correct</button>
    </div>`;
  }

  private fold(): void {
    this.unfolded = false;
    this.correcting = false;
  }

  protected override render() {
    const { asked } = this;
    if (asked.done > 0 && !this.unfolded) return this.folded();
    return html`<article class="asked ${asked.urgent ? 'is-urgent' : ''} ${asked.done > 0 ? 'is-done' : ''}">
      <header>${this.head()} ${this.acts()}</header>
      ${this.body()} ${this.sameSaid()} ${this.earlierSaid()}
    </article>`;
  }
}

customElements.define('asked-entry', AskedEntry);
