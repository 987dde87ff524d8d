import type { ReadMessage } from '@tarebook/record';
import { html, nothing } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import '../questions/questions.css';
import '../questions/asked-entry';
import '../questions/paste-box';
import { PlainElement } from '../elements/plain-element';
import type { AskedChanged } from '../questions/events';
import { type Entry, type Group, grouped } from '../questions/order';
import { type BunchPasted, PasteBox } from '../questions/paste-box';
import { type QuestionsReader, questionsReader, type Sought } from '../questions/reader';
import { type Asked, allAsked, keepQuestion, keepQuestions, recordsOf } from '../state/questions';
import { whyNotKept } from '../state/shelf';
import { loadedTopics, openTopic } from '../state/topics';

/** More than this in one go nobody answers. */
const mostInBunch = 5_000;
const shownFirst = 30;

const labels = (topic: string, fact: string): string =>
  loadedTopics[topic]?.facts[fact]?.label ?? fact;

/** What people asked: urgent first, repeats together, each with its answer ready. */
export class QuestionsPage extends PlainElement {
  static override properties = {
    messages: { state: true },
    readings: { state: true },
    progress: { state: true },
    shown: { state: true },
    wrong: { state: true },
    said: { state: true },
    busy: { state: true },
    notKept: { state: true },
  };
  /** In the order in which they came; undefined until the device was asked. */
  declare messages: readonly Asked[] | undefined;
  declare readings: ReadonlyMap<string, ReadMessage>;
  declare progress: { readonly done: number; readonly of: number } | undefined;
  declare shown: number;
  declare wrong: string;
  declare said: string;
  declare busy: boolean;
  declare notKept: string;
  private reader: QuestionsReader | undefined;
  /** Those that were answered while the page is open stay where they are. */
  private readonly doneHere = new Set<string>();

  constructor() {
    super();
    this.readings = new Map();
    this.shown = shownFirst;
    this.wrong = '';
    this.said = '';
    this.busy = false;
    this.notKept = '';
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.reader = questionsReader({
      read: this.took,
      failed: () => {
        this.progress = undefined;
        this.busy = false;
        this.wrong =
          'The messages could not be read: the network is away. They are kept; reload the page once it is back.';
      },
    });
    void this.open();
  }

  override disconnectedCallback(): void {
    this.reader?.close();
    super.disconnectedCallback();
  }

  private async open(): Promise<void> {
    try {
      this.messages = await allAsked();
    } catch (problem) {
      this.messages = [];
      this.notKept = whyNotKept(problem);
    }
    this.readAnew();
  }

  private readAnew(): void {
    const { messages = [] } = this;
    if (messages.length === 0) return;
    this.progress = { done: 0, of: messages.length };
    this.reader?.read(messages);
  }

  private took = (read: readonly ReadMessage[], done: number, of: number): void => {
    this.readings = new Map([...this.readings, ...read.map((each) => [each.id, each] as const)]);
    this.progress = done < of ? { done, of } : undefined;
    for (const topic of new Set(
      read.flatMap(({ parts }) => parts.map((part) => part.topic ?? '')),
    )) {
      if (topic !== '') openTopic(topic).then(() => this.requestUpdate());
    }
    const urgent = new Map(read.map((each) => [each.id, each.urgent ?? '']));
    const turned = (this.messages ?? []).filter(
      (each) => (urgent.get(each.id) ?? each.urgent) !== each.urgent,
    );
    if (turned.length === 0) return;
    const now = turned.map((each) => ({ ...each, urgent: urgent.get(each.id) ?? '' }));
    const byId = new Map(now.map((each) => [each.id, each]));
    this.messages = this.messages?.map((each) => byId.get(each.id) ?? each);
    void this.keep(now);
  };

  private async keep(records: readonly Asked[]): Promise<boolean> {
    try {
      await keepQuestions(records);
      this.notKept = '';
      return true;
    } catch (problem) {
      this.notKept = whyNotKept(problem);
      return false;
    }
  }

  private pasted = async ({ detail: text }: BunchPasted): Promise<void> => {
    this.wrong = '';
    this.said = '';
    if (!/[\p{L}\p{N}]/u.test(text)) {
      this.wrong =
        'There are no words here yet; paste the messages as they came, with an empty line between two.';
      return;
    }
    this.busy = true;
    try {
      const found = (await this.reader?.split(text)) ?? [];
      await this.takeIn(recordsOf(found, Date.now()));
    } catch {
      this.wrong =
        'Nothing was taken in, since what reads messages could not be had: the network is away. The words stand where they were.';
    }
    this.busy = false;
  };

  private async takeIn(records: readonly Asked[]): Promise<void> {
    const count = (n: number): string => n.toLocaleString('en-US');
    if (records.length > mostInBunch) {
      this.wrong = `These are ${count(records.length)} messages, and ${count(mostInBunch)} are taken in at a time; paste a part of them. Nothing was taken in.`;
      return;
    }
    const here = new Set(this.messages?.map(({ id }) => id));
    const fresh = records.filter(({ id }) => !here.has(id));
    if (!(await this.keep(fresh))) return this.withoutShelf(fresh);
    this.messages = [...(this.messages ?? []), ...fresh];
    const before = records.length - fresh.length;
    this.said = `${count(fresh.length)} ${fresh.length === 1 ? 'message was' : 'messages were'} taken in${before > 0 ? `, ${count(before)} were here already` : ''}.`;
    this.emptyBox();
    this.readAnew();
  }

  /** A device that keeps nothing still serves while the window is open. */
  private withoutShelf(fresh: readonly Asked[]): void {
    this.messages = [...(this.messages ?? []), ...fresh];
    this.readAnew();
  }

  private emptyBox(): void {
    const box = this.querySelector('paste-box');
    if (box instanceof PasteBox) box.empty();
  }

  private changed = ({ detail: asked }: AskedChanged): void => {
    const before = this.messages?.find(({ id }) => id === asked.id);
    if (!before) return;
    if (asked.done > 0) this.doneHere.add(asked.id);
    this.messages = this.messages?.map((each) => (each.id === asked.id ? asked : each));
    keepQuestion(asked).catch((problem: unknown) => {
      this.notKept = whyNotKept(problem);
    });
    if (asked.text !== before.text || asked.topics !== before.topics) this.readAnew();
  };

  private answer = (of: Sought) => this.reader?.answer(of) ?? Promise.resolve(undefined);

  private group = (group: Group) => {
    const [first, ...more] = group;
    if (!first) return nothing;
    const number = (this.messages ?? []).indexOf(first.asked) + 1;
    return html`<asked-entry .asked=${first.asked} .read=${first.read} .number=${number}
      .same=${more.map(({ asked }) => asked)} .answer=${this.answer} .labels=${labels}></asked-entry>`;
  };

  private list(all: readonly Group[]) {
    const some = all.slice(0, this.shown);
    return html`${repeat(some, ([first]) => first?.asked.id, this.group)}
      ${
        all.length > some.length
          ? html`<p class="noprint"><button @click=${() => {
              this.shown += shownFirst;
            }}>Show ${Math.min(shownFirst, all.length - some.length)} more of ${all.length - some.length}</button></p>`
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
    const { messages, readings } = this;
    const entries = (messages ?? []).map(
      (asked): Entry => ({ asked, read: readings.get(asked.id) }),
    );
    const all = grouped(entries);
    const isOpen = (group: Group): boolean =>
      group.some(({ asked }) => asked.done === 0 || this.doneHere.has(asked.id));
    const open = all.filter(isOpen);
    const done = all.filter((group) => !isOpen(group));
    const urgent = open.filter((group) => group.some(({ asked }) => asked.urgent !== '')).length;
    return html`<div class="questions" @bunch-pasted=${this.pasted} @asked-changed=${this.changed}>
      <h1 tabindex="-1">Questions</h1>
      <paste-box .wrong=${this.wrong} .said=${this.said} .busy=${this.busy} .few=${(messages ?? []).length === 0}></paste-box>
      ${this.notKept ? html`<p class="notice" role="alert">${this.notKept}</p>` : nothing}
      ${this.progressSaid()}
      ${
        entries.length === 0
          ? nothing
          : html`<h2>${open.length} open${urgent > 0 ? html`, <span class="asked-count">${urgent} urgent</span>` : nothing}</h2>
            ${this.list(open)}`
      }
      ${
        done.length === 0
          ? nothing
          : html`<details class="asked-done"><summary>${done.length} done</summary>${done.slice(0, 200).map(this.group)}</details>`
      }
    </div>`;
  }
}

customElements.define('questions-page', QuestionsPage);
