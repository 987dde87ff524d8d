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
import { type Entry, type Group, grouped } from './order';
import type { Sought } from './reader';

const shownFirst = 30;
const mostDoneShown = 200;

/** All that was asked: what is urgent first, then as it came, repeats together; what is done below. */
export class AskedList extends PlainElement {
  static override properties = {
    messages: { attribute: false },
    readings: { attribute: false },
    progress: { attribute: false },
    doneHere: { attribute: false },
    round: { attribute: false },
    given: { attribute: false },
    answer: { attribute: false },
    labels: { attribute: false },
    shown: { state: true },
  };
  declare messages: readonly Asked[];
  declare readings: ReadonlyMap<string, ReadMessage>;
  declare progress: { readonly done: number; readonly of: number } | undefined;
  /** Those that were answered while the page is open stay where they are. */
  declare doneHere: ReadonlySet<string>;
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
      .same=${more.map(({ asked }) => asked)} .earlier=${this.earlier(group)} .round=${this.round} .answer=${this.answer} .labels=${this.labels}></asked-entry>`;
  };

  private numbers: ReadonlyMap<string, number> = new Map();
  private earlier = earlierOver([]);

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

  private progressSaid() {
    const { progress } = this;
    if (!progress) return nothing;
    return html`<p class="small" role="status">Reading: ${progress.done.toLocaleString('en-US')} of ${progress.of.toLocaleString('en-US')}
      <progress max=${progress.of} value=${progress.done} aria-label="Read so far"></progress></p>`;
  }

  protected override render() {
    const { messages, readings, doneHere } = this;
    if (messages.length === 0) return nothing;
    this.earlier = earlierOver(this.given);
    this.numbers = new Map(messages.map(({ id }, at) => [id, at + 1]));
    const entries = messages.map((asked): Entry => ({ asked, read: readings.get(asked.id) }));
    const all = grouped(entries);
    const isOpen = (group: Group): boolean =>
      group.some(({ asked }) => asked.done === 0 || doneHere.has(asked.id));
    const open = all.filter(isOpen);
    const done = all.filter((group) => !isOpen(group));
    const urgent = open.filter((group) => group.some(({ asked }) => asked.urgent !== '')).length;
    return html`${this.progressSaid()}
      <h2>${open.length} open${urgent > 0 ? html`, <span class="asked-count">${urgent} urgent</span>` : nothing}</h2>
      <div class="acts"><button ?disabled=${this.progress !== undefined} @click=${() =>
        this.dispatchEvent(
          new CustomEvent('round-wanted', { bubbles: true }),
        )}>Make a round of what has an answer</button></div>
      ${this.list(open)}
      ${
        done.length === 0
          ? nothing
          : html`<details class="asked-done"><summary>${done.length} done</summary>${done.slice(0, mostDoneShown).map(this.group)}</details>`
      }`;
  }
}

customElements.define('asked-list', AskedList);
