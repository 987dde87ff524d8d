import {
  addRow,
  type CaseDocument,
  removeFact,
  removeRow,
  setCell,
  setFact,
} from '@tarebook/casebook';
import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, type PropertyValues } from 'lit';
import type { FactDropped, FactTyped } from '../elements/fact-table';
import type { CellTyped, RowAdded, RowDropped } from '../elements/load-list';
import { PlainElement } from '../elements/plain-element';
import { acts } from '../sections/acts';
import { asking } from '../sections/asking';
import { decided, rankings, selections } from '../sections/beyond';
import { careful, taken } from '../sections/careful';
import type { CaseView, Section } from '../sections/case-view';
import { chances } from '../sections/chances';
import { drawing } from '../sections/drawing';
import { head } from '../sections/head';
import { known, question } from '../sections/known';
import { reasoning, sources } from '../sections/later';
import { reply, share, shared, sheet } from '../sections/leave';
import { findings, limits, missing } from '../sections/limits';
import { strip, verdict } from '../sections/verdict';
import { begin, change, current, type History, redo, undo } from '../state/history';
import { type Judged, judge, readNow } from '../state/judged';
import { forget, keep } from '../state/kept';
import { whyNotKept } from '../state/shelf';

/** The page from top to bottom. */
const sections: readonly Section[] = [
  head,
  shared,
  strip,
  question,
  asking,
  known,
  verdict,
  acts,
  drawing,
  missing,
  decided,
  limits,
  chances,
  findings,
  selections,
  rankings,
  reasoning,
  taken,
  careful,
  sources,
  reply,
  share,
  sheet,
];

const savedAfter = 200;

/** One case from top to bottom: the question, what is known, the verdict and all that it stands on. */
export class CasePage extends PlainElement {
  static override properties = {
    topicId: { attribute: false },
    name: { attribute: false },
    filed: { attribute: false },
    kept: { attribute: false },
    first: { attribute: false },
    system: { attribute: false },
    history: { state: true },
    notice: { state: true },
  };
  declare topicId: string;
  declare name: string;
  /** The text as it came with the page; undefined for a case of one's own. */
  declare filed: string | undefined;
  /** The text as it was left on this device. */
  declare kept: string | undefined;
  /** The filed text judged, or the kept one where there is no other; undefined: still to be judged. */
  declare first: Judged | undefined;
  declare system: UnitSystem;
  declare history: History;
  declare notice: string;
  private judged: Judged = judge('');
  private asFiled: Judged | undefined;
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
    if (turned || text !== this.judged.doc.text) this.judged = judge(text, this.judged, system);
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
    const text = write(readNow(current(this.history), this.judged));
    this.go((history) => change(history, text, field, Date.now()));
  }

  private get view(): CaseView {
    const { judged, asFiled, history, name, system, notice } = this;
    const { doc, answer } = judged;
    return {
      doc,
      topic: doc.topic,
      answer,
      current: judged.current,
      filed: asFiled,
      history,
      name,
      system,
      notice,
      edit: (write, field) => this.edit(write, field),
      go: (to) => this.go(to),
    };
  }

  private typedFact({ detail }: FactTyped): void {
    this.edit((doc) => setFact(doc, detail.id, detail.value), detail.id);
  }

  private typedCell({ detail }: CellTyped): void {
    const { list, row, column, value } = detail;
    this.edit((doc) => setCell(doc, list, row, column, value), `${list}.${row}.${column}`);
  }

  protected override render() {
    const { view } = this;
    return html`
      <article
        class="columns"
        @fact-typed=${this.typedFact}
        @fact-dropped=${({ detail }: FactDropped) => this.edit((doc) => removeFact(doc, detail.id), `drop ${detail.id}`)}
        @cell-typed=${this.typedCell}
        @row-added=${({ detail }: RowAdded) =>
          this.edit(
            (doc) => addRow(doc, detail.list, detail.label, detail.cells),
            `add ${detail.list}`,
          )}
        @row-dropped=${({ detail }: RowDropped) =>
          this.edit((doc) => removeRow(doc, detail.list, detail.row), `drop ${detail.list}`)}
      >${sections.map((section) => section(view))}</article>
    `;
  }
}

customElements.define('case-page', CasePage);
