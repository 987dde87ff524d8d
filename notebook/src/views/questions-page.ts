import type { MessageColumns, ReadMessage } from '@tarebook/record';
import { html, nothing, type TemplateResult } from 'lit';
import '../questions/questions.css';
import '../questions/round.css';
import '../questions/asked-list';
import '../questions/paste-box';
import '../questions/prompter-view';
import '../questions/record-desk';
import '../questions/round-view';
import '../questions/see-view';
import '../questions/table-box';
import { topicTitle } from '../cases/topics';
import { PlainElement } from '../elements/plain-element';
import { leavesOpen } from '../questions/answer-shapes';
import { linksIn, markedOff, withoutLink } from '../questions/come-back';
import type { AnswerLeft, AskedChanged, SpokenToggled } from '../questions/events';
import { givenFrom, waitsFor } from '../questions/leaving';
import { type BunchPasted, PasteBox } from '../questions/paste-box';
import { type QuestionsReader, questionsReader, type Sought } from '../questions/reader';
import { setRightAsBefore } from '../questions/remembered';
import { roundDesk } from '../questions/round-desk';
import type { RoundChanged } from '../questions/round-view';
import type { TableRead } from '../questions/table-box';
import { leftTaken, takenBack } from '../questions/take-back';
import { takenSaid, tooMany } from '../questions/taken';
import type { ReadPart } from '../questions/told-so-far';
import { type Given, isGiven } from '../state/given';
import { allOwnFiles, catalogueVersion } from '../state/own-catalogue';
import {
  type Asked,
  allQuestionRecords,
  inOrder,
  isAsked,
  keepQuestion,
  keepQuestions,
  recordsOf,
} from '../state/questions';
import { isRound, newRound, type Round } from '../state/round';
import { whyNotKept } from '../state/shelf';
import { loadedTopics, openTopic } from '../state/topics';

const labels = (topic: string, fact: string): string =>
  loadedTopics[topic]?.facts[fact]?.label ?? fact;

/** What people asked: urgent first, repeats together, each with its answer ready. */
export class QuestionsPage extends PlainElement {
  static override properties = {
    view: { attribute: false },
    messages: { state: true },
    round: { state: true },
    given: { state: true },
    readings: { state: true },
    progress: { state: true },
    near: { state: true },
    wrong: { state: true },
    said: { state: true },
    busy: { state: true },
    notKept: { state: true },
  };
  /** '' for what was asked, `round` and `prompter` for what is spoken, `record` and `seen` for all. */
  declare view: string;
  /** In the order in which they came; undefined until the device was asked. */
  declare messages: readonly Asked[] | undefined;
  declare readings: ReadonlyMap<string, ReadMessage>;
  declare progress: { readonly done: number; readonly of: number } | undefined;
  /** Whether what is filed near to each question was looked for. */
  declare near: boolean;
  declare wrong: string;
  declare said: string;
  declare busy: boolean;
  declare notKept: string;
  /** The round that is made just now; undefined before the first. */
  declare round: Round | undefined;
  /** What was answered so far. */
  declare given: readonly Given[];
  /** Which catalogue counts here; it is kept with every answer. */
  catalogue = '';
  private reader: QuestionsReader | undefined;
  private isTaking = false;
  private readonly whenRead: (() => void)[] = [];
  private readonly desk = roundDesk(this);
  /** Those that were answered while the page is open stay where they are. */
  private readonly doneHere = new Set<string>();

  constructor() {
    super();
    this.readings = new Map();
    this.given = [];
    this.near = false;
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
        this.heardRead();
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
      const [records, own] = await Promise.all([allQuestionRecords(), allOwnFiles()]);
      this.catalogue = catalogueVersion(own);
      this.messages = inOrder(records.filter(isAsked));
      this.given = records.filter(isGiven);
      this.round = records
        .filter(isRound)
        .toSorted((a, b) => a.made - b.made)
        .at(-1);
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

  private took: Parameters<typeof questionsReader>[0]['read'] = (read, { done, of, near }) => {
    this.near = near;
    this.readings = new Map([...this.readings, ...read.map((each) => [each.id, each] as const)]);
    const isAll = this.progress !== undefined && done === of;
    this.progress = done < of ? { done, of } : undefined;
    this.heardRead();
    if (isAll) {
      this.setRight([...this.readings.values()]);
      void this.takeLeft();
    }
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

  /** A correction is remembered: whoever asks in the same words is read as the one before. */
  private setRight(read: readonly ReadMessage[]): void {
    const right = setRightAsBefore(this.messages ?? [], read);
    if (right.length === 0) return;
    const byId = new Map(right.map((each) => [each.id, each]));
    this.messages = this.messages?.map((each) => byId.get(each.id) ?? each);
    void this.keep(right).then(() => this.readAnew());
  }

  readonly failedToKeep = (problem: unknown): void => {
    this.notKept = whyNotKept(problem);
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
      const back = await this.takeBack(linksIn(text));
      const split =
        (await this.reader?.split(markedOff(text, [...back.taken, ...back.held]))) ?? [];
      const found = split.flatMap((each) => {
        const rest = withoutLink(each.text);
        return rest === undefined ? [] : [{ ...each, text: rest }];
      });
      const isIn =
        found.length === 0 && back.taken.length + back.held.length > 0
          ? true
          : await this.takeIn(recordsOf(found, Date.now()));
      // What could not be put stays where it was pasted.
      if (isIn && back.held.length === 0) this.emptyBox();
      this.said = [back.says, this.said].filter((each) => each !== '').join(' ');
    } catch {
      this.wrong =
        'Nothing was taken in, since what reads messages could not be had: the network is away. The words stand where they were.';
    }
    this.busy = false;
  };

  /** Resolves once a message was read, or where it cannot be. */
  readonly isRead = async (id: string): Promise<void> => {
    while (this.progress && !this.readings.has(id)) {
      await new Promise<void>((go) => {
        this.whenRead.push(go);
      });
    }
  };

  private heardRead(): void {
    for (const go of this.whenRead.splice(0)) go();
  }

  private takeBack = (links: readonly string[]) => takenBack(links, this);

  readonly titleOf = topicTitle;
  readonly labels = labels;

  /** What came back is kept and shown with its question, which is read anew. */
  readonly putBack = async (now: Asked): Promise<boolean> => {
    this.doneHere.add(now.id);
    this.messages = this.messages?.map((each) => (each.id === now.id ? now : each));
    const isKept = await this.keep([now]);
    this.readAnew();
    return isKept;
  };

  /** What another page left to be taken in, once its question is read. */
  private async takeLeft(): Promise<void> {
    // What is put is read anew, and that ends here once more.
    if (this.isTaking) return;
    this.isTaking = true;
    const left = await leftTaken(this.takeBack);
    this.isTaking = false;
    if ('wrong' in left) this.wrong = left.wrong;
    else if (left.says !== '') this.said = left.says;
  }

  private async takeIn(records: readonly Asked[], refused?: readonly string[]): Promise<boolean> {
    this.wrong = tooMany(records.length) ?? '';
    if (this.wrong !== '') return false;
    const here = new Set(this.messages?.map(({ id }) => id));
    const fresh = records.filter(({ id }) => !here.has(id));
    // Kept in one go before any of them is shown: what a person saw is never lost.
    const isKept = await this.keep(fresh);
    this.messages = [...(this.messages ?? []), ...fresh];
    if (isKept) this.said = takenSaid(fresh.length, records.length - fresh.length, refused);
    this.readAnew();
    return isKept;
  }

  private table = (text: string, columns: MessageColumns | undefined) =>
    this.reader?.table(text, columns) ?? Promise.reject(new Error('The page is closed.'));

  private tableRead = async ({ detail }: TableRead): Promise<void> => {
    this.said = '';
    await this.takeIn(recordsOf(detail.found, Date.now()), detail.refused);
  };

  private emptyBox(): void {
    const box = this.querySelector('paste-box');
    if (box instanceof PasteBox) box.empty();
  }

  private changed = ({ detail: asked }: AskedChanged): void => this.change(asked);

  readonly change = (asked: Asked): void => {
    const before = this.messages?.find(({ id }) => id === asked.id);
    if (!before) return;
    if (asked.done > 0) this.doneHere.add(asked.id);
    this.messages = this.messages?.map((each) => (each.id === asked.id ? asked : each));
    keepQuestion(asked).catch(this.failedToKeep);
    const parts: readonly ReadPart[] = this.readings.get(asked.id)?.parts ?? [];
    const isMended = asked.struck !== before.struck && parts.some(({ refused }) => refused);
    if (isMended || asked.text !== before.text || asked.topics !== before.topics) this.readAnew();
  };

  readonly answer = (of: Sought, isFirst = false) =>
    this.reader?.answer(of, isFirst) ?? Promise.resolve(undefined);

  private left = ({ detail }: AnswerLeft): void => {
    const { asked } = detail;
    const record = givenFrom(detail, new Date(), this.catalogue);
    keepQuestion(record).catch(this.failedToKeep);
    this.given = [...this.given, record];
    const now = this.messages?.find(({ id }) => id === asked.id);
    if (now && !leavesOpen.has(detail.form)) {
      this.change({ ...now, done: Date.now(), waits: '' });
    } else if (now && detail.form !== 'first reply') {
      this.change({ ...now, waits: waitsFor(detail, record.day) });
    }
  };

  private makeRound = async (): Promise<void> => {
    this.busy = true;
    await this.desk.make();
    this.busy = false;
    location.hash = '#/questions/round';
  };

  private toggled = async ({ detail }: SpokenToggled): Promise<void> => {
    const isDone = await this.desk.toggle(detail.asked, detail.part);
    if (!isDone) this.said = 'Nothing answers this question yet; write the answer first.';
  };

  private listed() {
    const { messages = [], round } = this;
    return html`<paste-box .wrong=${this.wrong} .said=${this.said} .busy=${this.busy} .few=${messages.length === 0}></paste-box>
      <table-box .read=${this.table}></table-box>
      <asked-list .messages=${messages} .readings=${this.readings} .progress=${this.progress} .doneHere=${this.doneHere}
        .given=${this.given} .round=${round?.spoken === 0 ? round : undefined} .answer=${this.answer} .labels=${this.labels}></asked-list>`;
  }

  private body(): TemplateResult {
    const { view, messages } = this;
    if (messages === undefined) return html`<p class="soft">Looking for what was asked …</p>`;
    const round = this.round ?? newRound(Date.now());
    if (view === 'prompter') return html`<prompter-view .round=${round}></prompter-view>`;
    if (view === 'record') return html`<record-desk></record-desk>`;
    if (view === 'seen') {
      return html`<see-view .messages=${messages} .readings=${this.readings} .near=${this.near}></see-view>`;
    }
    if (view !== 'round') return this.listed();
    const isSpoken = (id: string) => round.items.some(({ message }) => message === id);
    const waiting = messages.filter(
      ({ id, done, urgent }) => done === 0 && urgent !== '' && !isSpoken(id),
    ).length;
    return html`<round-view .round=${round} .waiting=${waiting}></round-view>`;
  }

  protected override render() {
    const { view, notKept } = this;
    const here = view === 'prompter' ? 'round' : view;
    const link = (to: string, words: string) =>
      html`<a href="#/questions${to === '' ? '' : `/${to}`}" aria-current=${here === to ? 'true' : nothing}>${words}</a>`;
    const { length } = this.round?.items ?? [];
    return html`<div class="questions" @bunch-pasted=${this.pasted} @asked-changed=${this.changed} @answer-left=${this.left}
      @round-wanted=${this.makeRound} @spoken-toggled=${this.toggled} @table-read=${this.tableRead}
      @round-changed=${({ detail }: RoundChanged) => this.desk.keep(detail)}>
      <h1 tabindex="-1">Questions</h1>
      <nav class="within noprint" aria-label="Within Questions">${link('', 'What was asked')}
        ${link('round', length > 0 ? `The round, ${length}` : 'The round')}
        ${link('record', 'What was answered')} ${link('seen', 'What is asked most')}</nav>
      ${notKept ? html`<p class="notice" role="alert">${notKept}</p>` : nothing}
      ${this.body()}
    </div>`;
  }
}

customElements.define('questions-page', QuestionsPage);
