import type { ReadMessage } from '@tarebook/record';
import { html, nothing } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import { PlainElement } from '../elements/plain-element';
import type { Given } from '../state/given';
import type { Asked } from '../state/questions';
import type { Round } from '../state/round';
import type { Answered } from './answer-shapes';
import './asked-entry';
import { earlierOver } from './earlier';
import { type Entry, type Group, grouped, isInRound, laidOut } from './order';
import type { Sought } from './reader';

const shownFirst = 30;
const mostDoneShown = 200;
/** With more than these the top is out of sight. */
const fewForTop = 2;

/** All that was asked: what is urgent first, then as it came, repeats together; what is done below. */
export class AskedList extends PlainElement {
  static override properties = {
    messages: { attribute: false },
    readings: { attribute: false },
    progress: { attribute: false },
    justDone: { attribute: false },
    round: { attribute: false },
    given: { attribute: false },
    answer: { attribute: false },
    labels: { attribute: false },
    shown: { state: true },
  };
  declare messages: readonly Asked[];
  declare readings: ReadonlyMap<string, ReadMessage>;
  declare progress: { readonly done: number; readonly of: number } | undefined;
  /** What was laid aside last, which keeps its place until the next is. */
  declare justDone: string | undefined;
  declare round: Round | undefined;
  /** What was answered so far. */
  declare given: readonly Given[];
  declare answer: (of: Sought, isFirst?: boolean) => Promise<Answered | undefined>;
  declare labels: (topic: string, fact: string) => string;
  declare shown: number;

  constructor() {
    super();
    this.shown = shownFirst;
    this.given = [];
  }

  private group = (group: Group) => {
    const [first, ...more] = group;
    if (!first) return nothing;
    return html`<asked-entry .asked=${first.asked} .read=${first.read} .number=${this.numbers.get(first.asked.id) ?? 0}
      .same=${more.map(({ asked }) => asked)} .earlier=${this.earlier(this.kin.get(first.asked.id) ?? group)} .round=${this.round} .answer=${this.answer} .labels=${this.labels}></asked-entry>`;
  };

  private numbers: ReadonlyMap<string, number> = new Map();
  private earlier = earlierOver([]);
  /** Of each message all that ask the same, done or open. */
  private kin: ReadonlyMap<string, Group> = new Map();

  private list(all: readonly Group[]) {
    const some = all.slice(0, this.shown);
    const left = all.length - some.length;
    return html`${repeat(some, ([first]) => first?.asked.id, this.group)}
      ${
        left > 0
          ? html`<p class="noprint"><button @click=${() => {
              this.shown += shownFirst;
            }}>Show ${Math.min(shownFirst, left)} more of ${left.toLocaleString('en-US')}</button></p>`
          : nothing
      }`;
  }

  /** Back to where messages are taken in and a round is made. */
  private toTop(): void {
    scrollTo(0, 0);
    document.querySelector<HTMLElement>('.questions h1')?.focus({ preventScroll: true });
  }

  private progressSaid() {
    const { progress } = this;
    if (!progress) return nothing;
    return html`<p class="small" role="status">Reading: ${progress.done.toLocaleString('en-US')} of ${progress.of.toLocaleString('en-US')}
      <progress max=${progress.of} value=${progress.done} aria-label="Read so far"></progress></p>`;
  }

  protected override render() {
    const { messages, readings, justDone, round } = this;
    if (messages.length === 0) return nothing;
    this.earlier = earlierOver(this.given);
    this.numbers = new Map(messages.map(({ id }, at) => [id, at + 1]));
    const entries = messages.map((asked): Entry => ({ asked, read: readings.get(asked.id) }));
    this.kin = new Map(
      grouped(entries).flatMap((group) => group.map(({ asked }) => [asked.id, group] as const)),
    );
    const { shown, done, open, urgent } = laidOut(entries, justDone);
    const inRound = round ? shown.filter((group) => isInRound(group, round)).length : 0;
    const isDone = messages.filter((each) => each.done > 0).length;
    return html`${this.progressSaid()}
      <h2>${open} open${urgent > 0 ? html`, <span class="asked-count">${urgent} urgent</span>` : nothing}${isDone > 0 ? html`<span class="soft">, ${isDone} done</span>` : nothing}</h2>
      ${inRound > 0 ? html`<p class="small soft asked-in">${inRound} of the ${open} open ${inRound === 1 ? 'is' : 'are'} in the round.</p>` : nothing}
      <div class="asked-bar noprint"><button ?disabled=${this.progress !== undefined} @click=${() =>
        this.dispatchEvent(
          new CustomEvent('round-wanted', { bubbles: true }),
        )}>Make a round of what has an answer</button>
        ${shown.length > fewForTop ? html`<button class="quiet" @click=${() => this.toTop()}>To the top</button>` : nothing}</div>
      ${this.list(shown)}
      ${
        done.length === 0
          ? nothing
          : html`<details class="asked-done"><summary>${done.length} done${justDone !== undefined && done.length < isDone ? ' before' : ''}</summary>${repeat(
              done.slice(0, mostDoneShown),
              ({ asked }) => asked.id,
              (entry) => this.group([entry]),
            )}</details>`
      }`;
  }
}

customElements.define('asked-list', AskedList);
