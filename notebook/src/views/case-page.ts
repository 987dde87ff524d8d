import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, noChange, nothing } from 'lit';
import type { Act, MendAsked, TicketActed } from '../counter/case-ticket';
import type { FactDropped, FactTyped } from '../counter/fact-row';
import type { LoadTurned } from '../counter/load-keys';
import type { AskingMoved } from '../counter/next-question';
import type { PersonStepped } from '../counter/people-steppers';
import type { CellTyped, RowAdded, RowDropped } from '../counter/row-list';
import { afterPaint } from '../elements/after-paint';
import { PlainElement } from '../elements/plain-element';
import { type CaseView, isAnswered } from '../sections/case-view';
import { sheet } from '../sections/leave';
import { onceShown } from '../sections/once-shown';
import { isAsFiled } from '../state/as-filed';
import { edits, openEditing } from '../state/editing';
import { redo, undo } from '../state/history';
import { isShared } from '../state/is-shared';
import type { Judged } from '../state/judged';
import { rehearse } from '../state/reading';
import { counterFace, loadsHere, ownersFace, type Shows } from './case-faces';
import { CaseWork } from './case-work';

/** What follows what, where a case is opened. */
const grows = { head: 'first', first: 'facts', facts: 'all' } as const;

/** What takes long is found once nobody has typed for so long, in milliseconds. */
const restsFor = 150;

/** What is typed needs a writer and a reader, which are there before anybody types. */
const editingSoon = onceShown(openEditing);

/** One case, as the counter works on it or as its owner reads it. */
export class CasePage extends PlainElement {
  static override properties = {
    topicId: { attribute: false },
    name: { attribute: false },
    filed: { attribute: false },
    kept: { attribute: false },
    first: { attribute: false },
    byLink: { attribute: false },
    system: { attribute: false },
    asking: { state: true },
    leaving: { state: true },
    said: { state: true },
    reading: { state: true },
  };
  declare topicId: string;
  declare name: string;
  declare filed: string | undefined;
  declare kept: string | undefined;
  declare first: Judged | undefined;
  declare byLink: boolean;
  declare system: UnitSystem;
  declare asking: string | undefined;
  /** The way the answer leaves just now. */
  declare leaving: Exclude<Act, 'copy'> | undefined;
  declare said: string;
  /** Whether the reader's face is shown, which links open, and not the counter's. */
  declare reading: boolean;
  private readonly work = new CaseWork(this);
  /** Whether something was shown since the last frame. */
  private shown = false;
  private shows: Shows = 'all';
  private resting: ReturnType<typeof setTimeout> | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    this.said = '';
    this.reading = this.byLink;
    editingSoon();
    document.addEventListener('keydown', this.keys);
    document.addEventListener(loadsHere, this.drawAgain);
  }

  override disconnectedCallback(): void {
    document.removeEventListener('keydown', this.keys);
    document.removeEventListener(loadsHere, this.drawAgain);
    clearTimeout(this.resting);
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

  protected override willUpdate(): void {
    const isFirst = !this.hasUpdated;
    if (!this.work.follow() && !isFirst) return;
    this.said = '';
    // Nothing is painted of what nobody sees.
    const { isComing } = this.work;
    if (document.hidden || this.reading || isFirst) {
      if (isComing) this.work.finish();
      if (isFirst && !document.hidden && !this.reading) this.grow('head');
      return;
    }
    clearTimeout(this.resting);
    if (isComing) this.resting = setTimeout(this.drawRest, restsFor);
    else afterPaint(this.drawRest);
    this.shows = 'ticket';
  }

  /** Unless somebody typed before it was painted: then all of it is drawn with that. */
  private grow(shows: keyof typeof grows): void {
    this.shows = shows;
    afterPaint(() => {
      if (this.shows !== shows) return;
      const next = grows[shows];
      if (next === 'all') this.shows = next;
      else this.grow(next);
      this.requestUpdate();
    });
  }

  private drawAgain = (): void => this.requestUpdate();

  private drawRest = (): void => {
    if (this.shows === 'all') return;
    if (this.work.isComing) this.work.finish();
    this.shows = 'all';
    this.requestUpdate();
  };

  /** Judges and draws what was typed a moment ago, all of it. */
  private drawNow = (): void => {
    if (!this.isUpdatePending && this.shows === 'all') return;
    this.requestUpdate();
    this.performUpdate();
    if (this.shows === 'all') return;
    this.drawRest();
    this.performUpdate();
  };

  private keys = (event: KeyboardEvent): void => {
    const typing = event.target instanceof HTMLInputElement;
    if (typing || !(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== 'z') return;
    event.preventDefault();
    this.work.go(event.shiftKey ? redo : undo);
  };

  private get view(): CaseView {
    const { work, name, system, asking, said } = this;
    const { judged, asFiled, history, notice, ticket } = work;
    const { doc, answer, current } = judged;
    return {
      ...{ doc, topic: doc.topic, answer, current, filed: asFiled, ticket },
      ...{ asking, history, name, system, notice, said },
      get asFiled() {
        return !isShared(name) && isAsFiled(judged, asFiled);
      },
      edit: (write, field) => work.edit(write, field),
      go: (to) => work.go(to),
    };
  }

  private typed = ({ detail: { id, value } }: FactTyped): void =>
    this.work.edit((doc) => edits().setFact(doc, id, value), id);

  private dropped = ({ detail: { id } }: FactDropped): void =>
    this.work.edit((doc) => edits().removeFact(doc, id), `drop ${id}`);

  private typedCell = ({ detail }: CellTyped): void => {
    const { list, row, column, value } = detail;
    const field = `${list}.${row}.${column}`;
    this.work.edit((doc) => edits().setCell(doc, list, row, column, value), field);
  };

  private addedRow = ({ detail: { list, label, cells } }: RowAdded): void =>
    this.work.edit((doc) => edits().addRow(doc, list, label, cells), `add ${list}`);

  private droppedRow = ({ detail: { list, row } }: RowDropped): void =>
    this.work.edit((doc) => edits().removeRow(doc, list, row), `drop ${list}`);

  private stepped = ({ detail: { kind, by } }: PersonStepped): void => {
    this.work.edit(
      (doc) => (by > 0 ? edits().withOneMore : edits().withOneLess)(doc, kind),
      `people ${kind} ${Date.now()}`,
    );
  };

  private acted = async ({ detail: { act } }: TicketActed): Promise<void> => {
    const { view } = this;
    if (!isAnswered(view)) return;
    if (act === 'copy') {
      const { copyPost } = await import('../counter/leaving');
      this.said = await copyPost(view);
      return;
    }
    await import('../counter/leave-dialog');
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

  private turn = (): void => {
    this.reading = !this.reading;
    this.shows = 'all';
    scrollTo({ top: 0 });
    this.closest('main')?.focus();
  };

  /** The same case with other rigs beside it, on a page of its own. */
  private besides = async (): Promise<void> => {
    const { besideFor } = await import('../beside/begin');
    location.hash = await besideFor(this.work.judged.doc, this.name);
  };

  protected override render() {
    const { view, leaving, shows, wentOn, turn, besides } = this;
    const read = this.reading && isAnswered(view);
    return html`
      <article
        class=${read ? 'reading' : 'counter'}
        @focusin=${() => rehearse(this.work.judged.doc.text)}
        @fact-typed=${this.typed}
        @fact-dropped=${this.dropped}
        @cell-typed=${this.typedCell}
        @row-added=${this.addedRow}
        @row-dropped=${this.droppedRow}
        @person-stepped=${this.stepped}
        @load-turned=${({ detail }: LoadTurned) => this.work.edit(detail.write, 'load')}
        @asking-moved=${({ detail }: AskingMoved) => {
          this.asking = detail.fact;
        }}
        @judge-now=${this.drawNow}
        @ticket-acted=${this.acted}
        @mend-asked=${this.mend}
      >
        ${read ? ownersFace(view, turn) : counterFace(view, shows, { wentOn, turn, besides })}
        ${
          leaving && isAnswered(view)
            ? html`<leave-dialog .view=${view} .way=${leaving} @left=${() => {
                this.leaving = undefined;
              }}></leave-dialog>`
            : nothing
        }
        ${shows === 'all' ? sheet(view) : noChange}
      </article>
    `;
  }
}

customElements.define('case-page', CasePage);
