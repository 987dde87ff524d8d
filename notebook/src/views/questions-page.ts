import type { MessageColumns, ReadMessage } from '@tarebook/record';
import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import '../questions/questions.css';
import '../questions/asked-bar.css';
import '../questions/round.css';
import '../questions/asked-list';
import '../questions/paste-box';
import '../questions/prompter-view';
import '../questions/record-desk';
import '../questions/round-view';
import '../questions/see-view';
import '../questions/table-box';
import { PlainElement } from '../elements/plain-element';
import type { AnswerLeft, AskedChanged, SpokenToggled, TakenOut } from '../questions/events';
import { intakeDesk, labelOf } from '../questions/intake-desk';
import { afterLeaving, givenFrom } from '../questions/leaving';
import { type BunchPasted, PasteBox } from '../questions/paste-box';
import type { Sought } from '../questions/reader';
import { readingDesk } from '../questions/reading-desk';
import { roundDesk } from '../questions/round-desk';
import { type AnswerWritten, ownPlace, unansweredIn } from '../questions/round-left';
import type { RoundChanged } from '../questions/round-view';
import { type UrgentLifted, waitingIn } from '../questions/round-waiting';
import type { TableRead } from '../questions/table-box';
import type { ReadPart } from '../questions/told-so-far';
import { withLifted } from '../questions/urgency';
import { type Given, isGiven } from '../state/given';
import { allOwnFiles, catalogueVersion } from '../state/own-catalogue';
import {
  type Asked,
  allQuestionRecords,
  inOrder,
  isAsked,
  keepQuestion,
  keepQuestions,
} from '../state/questions';
import { isRound, newRound, type Round } from '../state/round';
import { whyNotKept } from '../state/shelf';

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
    takenOut: { state: true },
    justDone: { state: true },
    labels: { state: true },
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
  /** What was taken out, until it comes back. */
  declare takenOut: readonly Asked[];
  /** What was laid aside last; it keeps its place until the next is. */
  declare justDone: string | undefined;
  /** What facts are called, by topic and id. */
  declare labels: typeof labelOf;
  /** Which catalogue counts here; it is kept with every answer. */
  catalogue = '';
  private readonly reading = readingDesk(this);
  private readonly intake = intakeDesk(this, this.reading);
  private readonly desk = roundDesk(this);

  constructor() {
    super();
    this.readings = new Map();
    this.given = [];
    this.near = false;
    this.wrong = '';
    this.said = '';
    this.busy = false;
    this.notKept = '';
    this.takenOut = [];
    this.labels = labelOf;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.reading.open();
    void this.open();
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has('view') && this.view === 'round') void this.desk.follow();
  }

  override disconnectedCallback(): void {
    this.reading.close();
    super.disconnectedCallback();
  }

  private async open(): Promise<void> {
    try {
      const [records, own] = await Promise.all([allQuestionRecords(), allOwnFiles()]);
      this.catalogue = catalogueVersion(own);
      this.messages = inOrder(records.filter(isAsked));
      this.takenOut = this.intake.outBefore(this.messages);
      this.given = records.filter(isGiven);
      this.round = records
        .filter(isRound)
        .toSorted((a, b) => a.made - b.made)
        .at(-1);
    } catch (problem) {
      this.messages = [];
      this.notKept = whyNotKept(problem);
    }
    this.reading.anew();
  }

  readonly topicCame = (): void => {
    // Another function, so that whatever shows a label shows it anew.
    this.labels = (...of) => labelOf(...of);
  };

  readonly isAllRead = (): void => {
    void this.intake.takeLeft();
  };

  readonly failedToRead = (): void => {
    this.busy = false;
    this.wrong =
      'The messages could not be read: the network is away. They are kept; reload the page once it is back.';
  };

  readonly failedToKeep = (problem: unknown): void => {
    this.notKept = whyNotKept(problem);
  };

  readonly keep = async (records: readonly Asked[]): Promise<boolean> => {
    try {
      await keepQuestions(records);
      this.notKept = '';
      return true;
    } catch (problem) {
      this.notKept = whyNotKept(problem);
      return false;
    }
  };

  readonly emptyBox = (): void => {
    const box = this.querySelector('paste-box');
    if (box instanceof PasteBox) box.empty();
  };

  readonly change = (asked: Asked): void => {
    const before = this.messages?.find(({ id }) => id === asked.id);
    if (!before) return;
    if (asked.done > 0 && before.done === 0) this.justDone = asked.id;
    this.messages = this.messages?.map((each) => (each.id === asked.id ? asked : each));
    keepQuestion(asked).catch(this.failedToKeep);
    const parts: readonly ReadPart[] = this.readings.get(asked.id)?.parts ?? [];
    const isSetRight = asked.struck !== before.struck && parts.some(({ refused }) => refused);
    const isOther = (['text', 'topics', 'mended'] as const).some(
      (each) => asked[each] !== before[each],
    );
    if (isSetRight || isOther) this.reading.anew();
  };

  readonly answer = (of: Sought, isFirst = false) => this.reading.answer(of, isFirst);

  /** What was said of the act before is past with the next one. */
  private acted = ({ detail }: AskedChanged): void => {
    this.said = '';
    this.change(detail);
  };

  private left = ({ detail }: AnswerLeft): void => {
    this.said = '';
    const record = givenFrom(detail, new Date(), this.catalogue);
    keepQuestion(record).catch(this.failedToKeep);
    this.given = [...this.given, record];
    const now = this.messages?.find(({ id }) => id === detail.asked.id);
    const questions = this.readings.get(detail.asked.id)?.parts.map(({ text }) => text) ?? [];
    const then = now && afterLeaving(now, detail, questions, record.day);
    if (then) this.change(then);
  };

  private makeRound = async (): Promise<void> => {
    this.busy = true;
    this.said = '';
    await this.desk.make();
    this.busy = false;
    location.hash = '#/questions/round';
  };

  private toggled = async ({ detail }: SpokenToggled): Promise<void> => {
    this.said = '';
    const isDone = await this.desk.toggle(detail.asked, detail.part, detail.form);
    if (!isDone) this.said = 'Nothing answers this question yet; write the answer first.';
  };

  /** What nobody had answered goes into the round, and stands beside its question too. */
  private wrote = async ({ detail: { asked, part, text } }: AnswerWritten): Promise<void> => {
    const now = { ...asked, wordings: { ...asked.wordings, [ownPlace(part)]: text } };
    this.change(now);
    await this.desk.toggle(now, part, undefined);
  };

  /** What somebody looked at and can wait goes into the round, as far as it has an answer. */
  private lifted = async ({ detail: { asked, read } }: UrgentLifted): Promise<void> => {
    const now = withLifted(asked, read);
    this.change(now);
    for (const part of read.parts) await this.desk.toggle(now, part, undefined);
  };

  private table = (text: string, columns: MessageColumns | undefined) =>
    this.reading.table(text, columns);

  private listed() {
    const { messages = [], round, takenOut } = this;
    return html`<paste-box .wrong=${this.wrong} .said=${this.said} .busy=${this.busy} .few=${messages.length === 0}
        .out=${this.intake.goesOut()} .back=${takenOut.length}></paste-box>
      <table-box .read=${this.table}></table-box>
      <asked-list .messages=${messages} .readings=${this.readings} .progress=${this.progress} .justDone=${this.justDone}
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
    const waiting = waitingIn(round.items, messages, this.readings);
    const left = round.spoken > 0 ? [] : unansweredIn(round, messages, this.readings);
    return html`<round-view .round=${round} .waiting=${waiting} .left=${left}></round-view>`;
  }

  private pages() {
    const here = this.view === 'prompter' ? 'round' : this.view;
    const link = (to: string, words: string) =>
      html`<a href="#/questions${to === '' ? '' : `/${to}`}" aria-current=${here === to ? 'true' : nothing}>${words}</a>`;
    const { length } = this.round?.items ?? [];
    return html`<nav class="within noprint" aria-label="Within Questions">${link('', 'What was asked')}
      ${link('round', length > 0 ? `The round, ${length}` : 'The round')}
      ${link('record', 'What was answered')} ${link('seen', 'What is asked most')}</nav>`;
  }

  protected override render() {
    const { notKept, intake } = this;
    return html`<div class="questions" @bunch-pasted=${({ detail }: BunchPasted) => intake.pasted(detail)}
      @table-read=${({ detail }: TableRead) => intake.tableRead(detail)}
      @last-out=${() => intake.lastOut()} @brought-back=${() => intake.broughtBack()}
      @taken-out=${({ detail }: TakenOut) => intake.oneOut(detail)}
      @asked-changed=${this.acted} @answer-left=${this.left}
      @round-wanted=${this.makeRound} @spoken-toggled=${this.toggled} @answer-written=${this.wrote} @urgent-lifted=${this.lifted}
      @round-stopped=${() => this.desk.stop()} @round-printed=${() => this.desk.printed()}
      @round-changed=${({ detail }: RoundChanged) => this.desk.keep(detail)}>
      <h1 tabindex="-1">Questions</h1>
      ${this.pages()}
      ${notKept ? html`<p class="notice" role="alert">${notKept}</p>` : nothing}
      ${this.body()}
    </div>`;
  }
}

customElements.define('questions-page', QuestionsPage);
