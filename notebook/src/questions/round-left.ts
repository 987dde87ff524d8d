import type { QuestionPart, ReadMessage } from '@tarebook/record';
import { html, nothing, type PropertyValues } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import { PlainElement } from '../elements/plain-element';
import type { Asked } from '../state/questions';
import { isIn, type Round } from '../state/round';
import { AskedChanged } from './events';
import { soughtOf } from './known';
import { grouped } from './order';

/** More than these are answered where all stand. */
const mostShown = 20;

/** A question that nothing answers, and nobody has. */
export type Unanswered = {
  readonly asked: Asked;
  readonly part: QuestionPart;
  /** Its message asks nothing else, and is done with it. */
  readonly isOnly: boolean;
};

/** An answer in a person’s own words, for the round. */
export class AnswerWritten extends CustomEvent<Unanswered & { readonly text: string }> {
  constructor(of: Unanswered, text: string) {
    super('answer-written', { detail: { ...of, text }, bubbles: true });
  }
}

/** Where words of one’s own stand for a question that nothing answers. */
export const ownPlace = ({ text }: Pick<QuestionPart, 'text'>): string => `own ${text}`;

/** What is open, can wait, and has no answer: a round leaves it out. Repeats stand for one. */
export function unansweredIn(
  round: Pick<Round, 'items'>,
  messages: readonly Asked[],
  readings: ReadonlyMap<string, ReadMessage>,
): readonly Unanswered[] {
  const open = messages.filter(({ done, urgent }) => done === 0 && urgent === '');
  const heads = grouped(open.map((asked) => ({ asked, read: readings.get(asked.id) })));
  return heads.flatMap(([first]) =>
    (first?.read?.parts ?? []).flatMap((part, _, parts) => {
      if (!first || soughtOf(first.asked, part) !== undefined) return [];
      const { asked } = first;
      const isWritten = (asked.wordings[ownPlace(part)] ?? '').trim() !== '';
      if (isWritten || isIn(round, asked.id, part.text)) return [];
      return [{ asked, part, isOnly: parts.length === 1 }];
    }),
  );
}

/** What a round leaves out, as nothing answers it: to be answered here, or laid aside. */
export class RoundLeft extends PlainElement {
  static override properties = {
    left: { attribute: false },
    missing: { state: true },
  };
  declare left: readonly Unanswered[];
  /** The words of the question whose field was empty as its button was pressed. */
  declare missing: string;

  constructor() {
    super();
    this.left = [];
    this.missing = '';
  }

  /** The place of the one that was answered or laid aside; the next there has the focus then. */
  private gone: number | undefined;

  protected override updated(changed: PropertyValues<this>): void {
    const before = changed.get('left')?.length ?? 0;
    if (this.gone === undefined || this.left.length >= before) return;
    const fields = [...this.querySelectorAll('textarea')];
    const next = fields[this.gone] ?? fields.at(-1);
    (next ?? this.closest('round-view')?.querySelector<HTMLElement>('#closing'))?.focus();
    this.gone = undefined;
  }

  private write(event: Event, of: Unanswered, at: number): void {
    event.preventDefault();
    const field =
      event.target instanceof HTMLElement ? event.target.querySelector('textarea') : null;
    const text = field?.value.trim() ?? '';
    this.missing = text === '' ? of.part.text : '';
    if (text === '') {
      field?.focus();
      return;
    }
    this.gone = at;
    this.dispatchEvent(new AnswerWritten(of, text));
  }

  private entry(of: Unanswered, at: number) {
    const { asked, part } = of;
    const name = `question ${at + 1}`;
    return html`<li><form class="left-out" @submit=${(event: Event) => this.write(event, of, at)}>
      <p><span class="small soft">${asked.channel}</span> ${part.text}</p>
      <label class="hidden" for="left-${at}">Your answer to ${name} of these</label>
      <textarea id="left-${at}" rows="2" placeholder="Your answer"></textarea>
      <div class="acts"><button aria-label="Into the round: ${name} of these">Into the round</button>
        ${
          of.isOnly
            ? html`<button type="button" class="quiet" aria-label="Done: ${name} of these" @click=${() => {
                this.gone = at;
                this.dispatchEvent(new AskedChanged({ ...asked, done: Date.now() }));
              }}>Done</button>`
            : nothing
        }
        <span class="small" role="status">${this.missing === part.text ? 'Write the answer first.' : nothing}</span></div>
    </form></li>`;
  }

  protected override render() {
    const { left } = this;
    if (left.length === 0) return nothing;
    const { length } = left;
    return html`<section class="noprint"><h2>Not in the round: ${length} without an answer</h2>
      <ol class="round-items">${repeat(
        left.slice(0, mostShown),
        ({ asked, part }) => `${asked.id} ${part.text}`,
        (of, at) => this.entry(of, at),
      )}</ol>${
        length > mostShown
          ? html`<p>${length - mostShown} more stand in <a href="#/questions">What was asked</a>.</p>`
          : nothing
      }</section>`;
  }
}

customElements.define('round-left', RoundLeft);
