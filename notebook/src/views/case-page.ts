import type { CaseDocument } from '@tarebook/casebook';
import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing, type PropertyValues } from 'lit';
import type { Act, MendAsked, TicketActed } from '../counter/case-ticket';
import '../counter/case-ticket';
import type { FactDropped, FactTyped } from '../counter/fact-row';

import { head, stray } from '../counter/head';
import { known } from '../counter/known';
import { countedIn, type LoadTurned } from '../counter/load-keys';
import type { AskingMoved } from '../counter/next-question';
import type { PersonStepped } from '../counter/people-steppers';
import type { CellTyped, RowAdded, RowDropped } from '../counter/row-list';
import { PlainElement } from '../elements/plain-element';
import { type AnsweredView, type CaseView, isAnswered } from '../sections/case-view';
import { shared, sheet } from '../sections/leave';
import { onceAsked, onceDrawn, onceShown, partMissing } from '../sections/once-shown';
import { isAsFiled } from '../state/as-filed';
import { canEdit, edits, openEditing } from '../state/editing';
import { begin, change, current, type History, redo, undo } from '../state/history';
import { isShared } from '../state/is-shared';
import { type Judged, judge, readNow } from '../state/judged';
import { forget, keep } from '../state/kept';
import { whyNotKept } from '../state/shelf';
import { ticketOf } from '../state/ticket';

const savedAfter = 200;

type Edit = {
  readonly write: (doc: CaseDocument) => string;
  readonly field: string;
};

/** Only a vehicle, a trailer or a load can be exchanged for another. */
const isRig = ({ topic }: CaseView): boolean =>
  Object.keys(topic?.facts ?? {}).some((id) => /^(vehicle|trailer)\./.test(id));

/** What is typed needs a writer and a reader, which are there before anybody types. */
const editingSoon = onceShown(openEditing);

const behind = onceDrawn(() => import('../counter/case-behind'));
const readerFace = onceAsked(() => import('../reader/reader-face'));

/** One case: what is known on one side, the ticket on the other, and behind it all it stands on. */
export class CasePage extends PlainElement {
  static override properties = {
    topicId: { attribute: false },
    name: { attribute: false },
    filed: { attribute: false },
    kept: { attribute: false },
    first: { attribute: false },
    byLink: { attribute: false },
    system: { attribute: false },
    history: { state: true },
    notice: { state: true },
    asking: { state: true },
    leaving: { state: true },
    said: { state: true },
    reading: { state: true },
  };
  declare topicId: string;
  declare name: string;
  /** The text as it came with the page; undefined for a case of one's own. */
  declare filed: string | undefined;
  /** The text as it was left on this device. */
  declare kept: string | undefined;
  /** The filed text judged, or the kept one where there is no other; undefined: still to be judged. */
  declare first: Judged | undefined;
  declare byLink: boolean;
  declare system: UnitSystem;
  declare history: History;
  declare notice: string;
  declare asking: string | undefined;
  /** The way the answer leaves just now. */
  declare leaving: Exclude<Act, 'copy'> | undefined;
  declare said: string;
  /** Whether the reader's face is shown, which links open, and not the counter's. */
  declare reading: boolean;
  private judged: Judged = judge('');
  private asFiled: Judged | undefined;
  /** What was typed and is not in the text yet, the first first. */
  private edits: Edit[] = [];
  /** Whether something was shown since the last frame. */
  private shown = false;
  private saving: ReturnType<typeof setTimeout> | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    const first = this.filed ?? this.kept ?? '';
    this.judged = this.first ?? judge(first, undefined, this.system);
    this.asFiled = this.filed === undefined ? undefined : this.judged;
    this.history = begin(first);
    if (this.kept !== undefined && this.kept !== first) {
      this.history = change(this.history, this.kept, 'kept', 0);
      this.judged = judge(this.kept, this.judged, this.system);
    }
    this.notice = '';
    this.said = '';
    this.reading = this.byLink;
    editingSoon();
    document.addEventListener('keydown', this.keys);
    addEventListener('pagehide', this.save);
  }

  override disconnectedCallback(): void {
    document.removeEventListener('keydown', this.keys);
    removeEventListener('pagehide', this.save);
    if (this.saving) void this.save();
    super.disconnectedCallback();
  }

  /** A first change is shown at once; whatever follows within its frame is shown with the next. */
  protected override async scheduleUpdate(): Promise<void> {
    if (this.shown && !document.hidden) await new Promise(requestAnimationFrame);
    this.shown = true;
    requestAnimationFrame(() => {
      this.shown = false;
    });
    super.scheduleUpdate();
  }

  /** The words of an answer are in the reader's units, so another system judges anew. */
  protected override willUpdate(changed: PropertyValues<this>): void {
    const { filed, system } = this;
    const text = current(this.history);
    const turned = changed.get('system') !== undefined;
    if (turned) this.asFiled = filed === undefined ? undefined : judge(filed, this.asFiled, system);
    if (turned || text !== this.judged.doc.text) {
      this.judged = judge(text, this.judged, system);
      this.said = '';
    }
  }

  private keys = (event: KeyboardEvent): void => {
    const typing = event.target instanceof HTMLInputElement;
    if (typing || !(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== 'z') return;
    event.preventDefault();
    this.go(event.shiftKey ? redo : undo);
  };

  private save = async (): Promise<void> => {
    clearTimeout(this.saving);
    this.saving = undefined;
    const text = current(this.history);
    try {
      if (text === this.filed) await forget(this.topicId, this.name);
      else await keep({ topic: this.topicId, name: this.name, text, at: Date.now() });
      this.notice = '';
    } catch (problem) {
      this.notice = `${whyNotKept(problem)} Save it as a file.`;
    }
  };

  private go(to: (history: History) => History): void {
    this.history = to(this.history);
    clearTimeout(this.saving);
    this.saving = setTimeout(this.save, savedAfter);
  }

  private edit(write: (doc: CaseDocument) => string, field: string): void {
    this.edits.push({ write, field });
    if (canEdit()) this.writeEdits();
    else if (this.edits.length === 1) this.editOnceRead();
  }

  /** A case as it came needs no reader of Markdown; what somebody types does. */
  private async editOnceRead(): Promise<void> {
    try {
      await openEditing();
    } catch {
      document.dispatchEvent(new Event(partMissing));
    }
    if (canEdit()) this.writeEdits();
    else this.edits = [];
  }

  private writeEdits(): void {
    const { edits: all } = this;
    this.edits = [];
    for (const { write, field } of all) {
      const text = write(readNow(current(this.history), this.judged));
      this.go((history) => change(history, text, field, Date.now()));
    }
  }

  private get view(): CaseView {
    const { judged, asFiled, history, name, system, notice, asking, said } = this;
    const { doc, answer } = judged;
    return {
      doc,
      topic: doc.topic,
      answer,
      current: judged.current,
      filed: asFiled,
      asFiled: !isShared(name) && isAsFiled(judged, asFiled),
      ticket: ticketOf(judged, system),
      asking,
      history,
      name,
      system,
      notice,
      said,
      edit: (write, field) => this.edit(write, field),
      go: (to) => this.go(to),
    };
  }

  private typedCell = ({ detail }: CellTyped): void => {
    const { list, row, column, value } = detail;
    this.edit((doc) => edits().setCell(doc, list, row, column, value), `${list}.${row}.${column}`);
  };

  private stepped = ({ detail: { kind, by } }: PersonStepped): void => {
    this.edit(
      (doc) => (by > 0 ? edits().withOneMore : edits().withOneLess)(doc, kind),
      `people ${kind} ${Date.now()}`,
    );
  };

  private acted = async ({ detail: { act } }: TicketActed): Promise<void> => {
    const { view } = this;
    if (!isAnswered(view)) return;
    const load = () => import('../counter/leave-dialog');
    if (act === 'copy') {
      const { copyPost } = await import('../counter/leaving');
      this.said = await copyPost(view);
      return;
    }
    await load();
    this.leaving = act;
  };

  /** Shows the field that an entry stands in. */
  private mend = ({ detail: { place } }: MendAsked): void => {
    const field = this.querySelector<HTMLElement>(`[data-fact="${CSS.escape(place)}"]`);
    field?.focus();
    field?.scrollIntoView({ block: 'center' });
  };

  /** Enter in a field that is in order goes on to the next one. */
  private wentOn = (event: Event): void => {
    const all = [...this.querySelectorAll<HTMLElement>('.known [data-entry]')];
    const { activeElement: here } = document;
    const at = here instanceof HTMLElement ? all.indexOf(here) : -1;
    const next = all.slice(at + 1).find((each) => each.getAttribute('type') !== 'radio');
    event.stopPropagation();
    next?.focus();
    if (next instanceof HTMLInputElement) next.select();
  };

  private ticket(view: CaseView) {
    const { ticket, doc, topic, answer } = view;
    if (!ticket || !topic) return nothing;
    const about = `${topic.title}${answer ? ` · as of ${answer.asOf}` : ''}`;
    return html`<case-ticket .ticket=${ticket} .about=${about} .counted=${countedIn(doc)}
      .house=${answer?.house ? `Reckoned with the numbers of ${answer.house.name}.` : ''} .said=${view.said}></case-ticket>`;
  }

  private turn = (): void => {
    this.reading = !this.reading;
    scrollTo({ top: 0 });
    this.closest('main')?.focus();
  };

  /** The same case with other rigs beside it, on a page of its own. */
  private besides = async (): Promise<void> => {
    const { besideFor } = await import('../beside/begin');
    location.hash = await besideFor(this.judged.doc, this.name);
  };

  private counter(view: CaseView) {
    behind();
    return html`<div class="known" @went-on=${this.wentOn}>${head(view)}${shared(view)}${known(view)}</div>
      <div class="stub">
        ${this.ticket(view)}
        <div class="folds"><case-behind .view=${view}></case-behind>
          <button type="button" class="quiet noprint" @click=${this.turn}>As the owner reads it</button>
          ${isRig(view) ? html`<button type="button" class="quiet noprint" @click=${this.besides}>Side by side</button>` : nothing}</div>
      </div>`;
  }

  private reader(view: AnsweredView) {
    readerFace();
    return html`<div class="read">${stray(view.doc)}${shared(view)}<reader-face .view=${view} @face-turned=${this.turn}></reader-face></div>`;
  }

  protected override render() {
    const { view, leaving } = this;
    const read = this.reading && isAnswered(view);
    return html`
      <article
        class=${read ? 'reading' : 'counter'}
        @fact-typed=${({ detail }: FactTyped) => this.edit((doc) => edits().setFact(doc, detail.id, detail.value), detail.id)}
        @fact-dropped=${({ detail }: FactDropped) => this.edit((doc) => edits().removeFact(doc, detail.id), `drop ${detail.id}`)}
        @cell-typed=${this.typedCell}
        @row-added=${({ detail }: RowAdded) =>
          this.edit(
            (doc) => edits().addRow(doc, detail.list, detail.label, detail.cells),
            `add ${detail.list}`,
          )}
        @row-dropped=${({ detail }: RowDropped) =>
          this.edit(
            (doc) => edits().removeRow(doc, detail.list, detail.row),
            `drop ${detail.list}`,
          )}
        @person-stepped=${this.stepped}
        @load-turned=${({ detail }: LoadTurned) => this.edit(detail.write, 'load')}
        @asking-moved=${({ detail }: AskingMoved) => {
          this.asking = detail.fact;
        }}
        @judge-now=${() => {
          if (this.isUpdatePending) this.performUpdate();
        }}
        @ticket-acted=${this.acted}
        @mend-asked=${this.mend}
      >
        ${read ? this.reader(view) : this.counter(view)}
        ${
          leaving && isAnswered(view)
            ? html`<leave-dialog .view=${view} .way=${leaving} @left=${() => {
                this.leaving = undefined;
              }}></leave-dialog>`
            : nothing
        }
        ${sheet(view)}
      </article>
    `;
  }
}

customElements.define('case-page', CasePage);
