import type { ReadLine } from '@tarebook/record';
import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing, type PropertyValues } from 'lit';
import { topicsListed } from '../cases/topics';
import '../counter/case-ticket';
import type { Act, TicketActed } from '../counter/case-ticket';
import type { FactTyped } from '../counter/fact-row';
import '../counter/next-question';
import '../counter/people-steppers';
import type { PersonStepped } from '../counter/people-steppers';
import { toYard } from '../counter/to-yard';
import { PlainElement } from '../elements/plain-element';
import { type CaseView, isAnswered, openOf } from '../sections/case-view';
import { begin } from '../state/history';
import { type Judged, judge } from '../state/judged';
import { beginOwn } from '../state/own-case';
import { countOf, peopleList } from '../state/people';
import { openReader, openReadersFor } from '../state/reading';
import { ticketOf } from '../state/ticket';
import { loadedTopics, openTopic } from '../state/topics';
import { type Draft, keepDraft, keptDraft, noDraft } from './draft';
import './line-marks';
import { caseOfLine } from './line-case';
import type { MarkMended } from './line-marks';
import { danger, topicChoice, whichNumber } from './line-parts';
import { openLineReader, readLine } from './read-line';

/** A line that was read, for the text and the topic it was read for. */
type Read = { readonly text: string; readonly chosen: string; readonly line: ReadLine };

/** Somebody in the middle of a word is not read. */
const restsFor = 120;

/** “Nov 28, 5:20 PM” */
const now = (): string =>
  new Date().toLocaleString('en-US', {
    ...{ month: 'short', day: 'numeric', hour: 'numeric', minute: '2-digit' },
  });

/** One line in: what was understood of it, the answer at once, and the one next question. */
export class OneLine extends PlainElement {
  static override properties = {
    system: { attribute: false },
    draft: { state: true },
    read: { state: true },
    judged: { state: true },
    wrong: { state: true },
    said: { state: true },
    leaving: { state: true },
  };
  declare system: UnitSystem;
  declare draft: Draft;
  declare read: Read | undefined;
  declare judged: Judged | undefined;
  declare wrong: string;
  /** What was last done with the ticket. */
  declare said: string;
  declare leaving: Exclude<Act, 'copy'> | undefined;
  private timer: ReturnType<typeof setTimeout> | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    this.draft = keptDraft();
    this.wrong = '';
    this.said = '';
    if (this.draft.text !== '' || this.draft.topic !== '') void this.look();
  }

  override disconnectedCallback(): void {
    clearTimeout(this.timer);
    super.disconnectedCallback();
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.get('system') !== undefined && this.judged) this.judgeNow();
  }

  /** The reader, and what judges, come as soon as somebody is about to type. */
  private wanted = (): void => {
    openLineReader();
    void openReader().catch(() => undefined);
  };

  private change(draft: Draft): void {
    this.draft = draft;
    keepDraft(draft);
    this.said = '';
  }

  private typed = ({ target }: Event): void => {
    if (!(target instanceof HTMLTextAreaElement)) return;
    this.change({ ...this.draft, text: target.value });
    clearTimeout(this.timer);
    this.timer = setTimeout(this.look, restsFor);
  };

  private about = ({ target }: Event): void => {
    if (!(target instanceof HTMLSelectElement)) return;
    this.change({ ...this.draft, topic: target.value });
    void this.look();
  };

  /** Has the line read; what was typed meanwhile is read after it. */
  private look = async (): Promise<void> => {
    const { text, topic: chosen } = this.draft;
    if (text.trim() === '' && chosen === '') {
      this.read = undefined;
      this.judged = undefined;
      return;
    }
    try {
      const line = await readLine(text, chosen);
      if (line.topic !== null) await Promise.all([openTopic(line.topic), openReader()]);
      if (text !== this.draft.text || chosen !== this.draft.topic) return;
      this.read = { text, chosen, line };
      this.wrong = '';
      await this.judgeSoon();
    } catch {
      this.wrong =
        'The line could not be read: the network is away, or it took too long. What you typed is kept.';
    }
  };

  private caseText(): string | undefined {
    const { read, draft } = this;
    const topic = read?.line.topic ? loadedTopics[read.line.topic] : undefined;
    if (!read || !topic) return undefined;
    const asked = topicsListed.find(({ id }) => id === topic.id)?.asks ?? [];
    return caseOfLine(topic, asked, read.line.marks, read.text, draft, `${topic.title}, ${now()}`);
  }

  private async judgeSoon(): Promise<void> {
    const text = this.caseText();
    if (text !== undefined) await openReadersFor([text]);
    this.judgeNow();
  }

  private judgeNow(): void {
    const text = this.caseText();
    this.judged = text === undefined ? undefined : judge(text, undefined, this.system);
  }

  private mended(mend: (draft: Draft) => Partial<Draft>): void {
    this.change({ ...this.draft, ...mend(this.draft) });
    this.judgeNow();
  }

  private stepped = ({ detail: { kind, by } }: PersonStepped): void => {
    const { judged } = this;
    if (!judged) return;
    const count = countOf(judged.doc, kind) + by;
    this.mended(({ counts }) => ({ counts: { ...counts, [kind]: count } }));
  };

  private clear = async (): Promise<void> => {
    this.change(noDraft);
    this.read = undefined;
    this.judged = undefined;
    await this.updateComplete;
    this.querySelector('textarea')?.focus();
  };

  private openCase = async (): Promise<void> => {
    const { judged } = this;
    if (!judged?.doc.topic) return;
    const at = await beginOwn(judged.doc.topic.id, judged.doc.text);
    keepDraft(noDraft);
    location.hash = at;
  };

  private get view(): CaseView | undefined {
    const { judged, system, said } = this;
    if (!judged) return undefined;
    const { doc, answer, current } = judged;
    return {
      ...{ doc, topic: doc.topic, answer, current, filed: undefined, asFiled: false },
      ...{ ticket: ticketOf(judged, system), asking: undefined, history: begin(doc.text) },
      ...{ name: 'line', system, notice: '', said },
      edit: () => undefined,
      go: () => undefined,
    };
  }

  private acted = async ({ detail: { act } }: TicketActed): Promise<void> => {
    const { view } = this;
    if (!view || !isAnswered(view)) return;
    if (act === 'copy') {
      const { copyPost } = await import('../counter/leaving');
      this.said = await copyPost(view);
      return;
    }
    await import('../counter/leave-dialog');
    this.leaving = act;
  };

  private asking() {
    const { judged, system, read, draft } = this;
    const topic = judged?.doc.topic;
    if (!topic) return nothing;
    const choose = (key: string, fact: string) =>
      this.mended(({ chosen }) => ({ chosen: { ...chosen, [key]: fact } }));
    const which = read ? whichNumber(topic, read.text, read.line, draft, choose) : nothing;
    if (which !== nothing) return which;
    if (!judged.answer) return nothing;
    const values = Object.fromEntries(
      judged.doc.blocks.flatMap((block) =>
        block.kind === 'facts' ? block.rows.map(({ id, value }) => [id, value]) : [],
      ),
    );
    return html`<next-question .topic=${topic} .missing=${judged.answer.missing} .values=${values} .system=${system}></next-question>`;
  }

  private understood() {
    const { read, judged, draft, system } = this;
    const topic = judged?.doc.topic;
    if (!read || !topic || !judged) return nothing;
    const { line, text } = read;
    return html`
      ${text.trim() === '' ? nothing : html`<line-marks .text=${text} .marks=${line.marks} .topic=${topic} .corrected=${draft} .system=${system}></line-marks>`}
      ${this.asking()}
      ${topic.facts[peopleList]?.kind === 'rows' ? html`<people-steppers .doc=${judged.doc}></people-steppers>` : nothing}
      <p class="line-acts"><button type="button" class="main" @click=${this.openCase}>Open as a case</button>
        ${toYard(topic, judged.doc)}
        <button type="button" class="quiet" @click=${this.clear}>Clear</button></p>`;
  }

  private stub() {
    const { view } = this;
    if (!view?.ticket || !view.topic) return nothing;
    const { answer, topic } = view;
    const about = `${topic.title}${answer ? ` · as of ${answer.asOf}` : ''}`;
    return html`<case-ticket .ticket=${view.ticket} .of=${openOf(view.topic, view)} .about=${about} .counted=${''}
      .house=${answer?.house ? `Reckoned with the numbers of ${answer.house.name}.` : ''} .said=${this.said}></case-ticket>`;
  }

  protected override render() {
    const { draft, wrong, leaving, view, read } = this;
    return html`<div class="counter one-line"
      @mark-mended=${({ detail }: MarkMended) => this.mended(detail.mend)}
      @person-stepped=${this.stepped}
      @fact-typed=${({ detail }: FactTyped) =>
        this.mended(({ values }) => ({ values: { ...values, [detail.id]: detail.value } }))}
      @judge-now=${() => {
        if (this.isUpdatePending) this.performUpdate();
      }}
      @ticket-acted=${this.acted}>
      <div class="known">
        <label class="said-in">What did they say?
          <textarea rows="2" .value=${draft.text} @focus=${this.wanted} @input=${this.typed} enterkeyhint="done" autocomplete="off"
            placeholder="crossover rated five thousand, trailer thirty-nine hundred, four of us and a dog"></textarea></label>
        ${topicChoice(read?.line, draft, this.wanted, this.about)}
        ${wrong ? html`<p class="notice" role="alert">${wrong}</p>` : nothing}
        ${danger(read?.line)}
        ${
          read && read.line.topic === null
            ? html`<p class="soft" role="status">No topic is clear from these words. Choose what it is about, or say more.</p>`
            : nothing
        }
        ${this.understood()}
        <near-cases .question=${read?.text ?? ''}></near-cases>
      </div>
      <div class="stub">${this.stub()}</div>
      ${
        leaving && view && isAnswered(view)
          ? html`<leave-dialog .view=${view} .way=${leaving} @left=${() => {
              this.leaving = undefined;
            }}></leave-dialog>`
          : nothing
      }
    </div>`;
  }
}

customElements.define('one-line', OneLine);
