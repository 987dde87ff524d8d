import {
  addRow,
  type Block,
  type CaseDocument,
  liveValue,
  removeFact,
  removeRow,
  setCell,
  setFact,
} from '@tarebook/casebook';
import type { Answer, Topic } from '@tarebook/rules/engine';
import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing, type TemplateResult } from 'lit';
import '../elements/fact-table';
import '../elements/limit-rows';
import '../elements/load-list';
import '../elements/verdict-note';
import '../elements/working-steps';
import type { FactDropped, FactTyped } from '../elements/fact-table';
import type { CellTyped, RowAdded, RowDropped } from '../elements/load-list';
import { levelOf } from '../elements/marks';
import { PlainElement } from '../elements/plain-element';
import { prose } from '../elements/prose';
import { findingList, missingList } from '../elements/told-list';
import { cited } from '../elements/working-steps';
import {
  begin,
  canRedo,
  canUndo,
  change,
  current,
  type History,
  redo,
  undo,
} from '../state/history';
import { type Judged, judge, movedFacts, troubleAt } from '../state/judged';
import { forget, keep } from '../state/kept';

const savedAfter = 200;

/** One case from top to bottom: the question, what is known, the verdict and all that it stands on. */
export class CasePage extends PlainElement {
  static override properties = {
    topicId: { attribute: false },
    name: { attribute: false },
    filed: { attribute: false },
    kept: { attribute: false },
    system: { attribute: false },
    history: { state: true },
    notice: { state: true },
    told: { state: true },
  };
  declare topicId: string;
  declare name: string;
  /** The text as it came with the page; undefined for a case of one's own. */
  declare filed: string | undefined;
  /** The text as it was left on this device. */
  declare kept: string | undefined;
  declare system: UnitSystem;
  declare history: History;
  declare notice: string;
  declare told: string;
  private judged: Judged | undefined;
  private filedDoc: CaseDocument | undefined;
  private saving: ReturnType<typeof setTimeout> | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    const first = this.filed ?? this.kept ?? '';
    const filed = judge(first);
    this.filedDoc = filed.doc;
    this.history = begin(first);
    this.judged = filed;
    if (this.kept !== undefined && this.kept !== first) {
      this.history = change(this.history, this.kept, 'kept', 0);
      this.judged = judge(this.kept, filed);
    }
    this.notice = '';
    this.told = '';
    document.addEventListener('keydown', this.keys);
    addEventListener('pagehide', this.save);
  }

  override disconnectedCallback(): void {
    document.removeEventListener('keydown', this.keys);
    removeEventListener('pagehide', this.save);
    if (this.saving) void this.save();
    super.disconnectedCallback();
  }

  private keys = (event: KeyboardEvent): void => {
    const typing = event.target instanceof HTMLInputElement;
    if (typing || !(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== 'z') return;
    event.preventDefault();
    this.go(event.shiftKey ? redo(this.history) : undo(this.history));
  };

  private save = async (): Promise<void> => {
    clearTimeout(this.saving);
    this.saving = undefined;
    const text = current(this.history);
    try {
      if (text === this.filed) await forget(this.topicId, this.name);
      else await keep({ topic: this.topicId, name: this.name, text, at: Date.now() });
      this.notice = '';
    } catch {
      this.notice =
        'This device keeps nothing for the page just now, so what you typed lives only in this tab; save it as a file.';
    }
  };

  private go(history: History): void {
    this.history = history;
    this.judged = judge(current(history), this.judged);
    clearTimeout(this.saving);
    this.saving = setTimeout(this.save, savedAfter);
  }

  private edit(text: string, field: string): void {
    this.go(change(this.history, text, field, Date.now()));
  }

  private get doc(): CaseDocument {
    return this.judged?.doc ?? judge(current(this.history)).doc;
  }

  private async copy(): Promise<void> {
    const answer = this.judged?.answer;
    if (!answer) return;
    const text = `${answer.sentence} ${answer.cautions[1] ?? ''} ${answer.cautions[0] ?? ''}`;
    try {
      await navigator.clipboard.writeText(text);
      this.told = 'Copied, with its caution.';
    } catch {
      this.told = 'This browser does not let the page copy; mark the text and copy it yourself.';
    }
  }

  private saveFile(): void {
    const url = URL.createObjectURL(new Blob([current(this.history)], { type: 'text/markdown' }));
    const link = Object.assign(document.createElement('a'), {
      href: url,
      download: `${this.name}.md`,
    });
    link.click();
    URL.revokeObjectURL(url);
  }

  private facts(
    block: Block & { kind: 'facts' },
    topic: Topic,
    moved: Readonly<Record<string, string>>,
  ) {
    const errors = Object.fromEntries(
      block.rows.flatMap((row) => {
        const { troubles } = this.doc;
        const says = troubleAt(troubles, row.valueSpan.start) ?? troubleAt(troubles, row.idPlace);
        return says ? [[row.id, says]] : [];
      }),
    );
    return html`<fact-table .topic=${topic} .rows=${block.rows} .errors=${errors} .moved=${moved}></fact-table>`;
  }

  private list(block: Block & { kind: 'list' }, topic: Topic) {
    const errors = Object.fromEntries(
      block.rows.flatMap((row, index) =>
        Object.entries(row.cells).flatMap(([column, cell]) => {
          const says = troubleAt(this.doc.troubles, cell.span.start);
          return says ? [[`${index}.${column}`, says]] : [];
        }),
      ),
    );
    const { fact, columns, rows } = block;
    return html`<load-list .topic=${topic} .fact=${fact} .columns=${columns} .rows=${rows} .errors=${errors}></load-list>`;
  }

  private block(
    block: Block,
    topic: Topic,
    moved: Readonly<Record<string, string>>,
  ): TemplateResult | typeof nothing {
    const answer = this.judged?.answer;
    const live = (name: string) =>
      answer ? liveValue(this.doc, answer, name, this.system) : 'unknown';
    switch (block.kind) {
      case 'prose':
        return html`${prose(block.node, live)}`;
      case 'facts':
        return this.facts(block, topic, moved);
      case 'list':
        return this.list(block, topic);
      case 'predict':
        return html`<div class="guess" role="note">${block.children.map((child) => prose(child, live))}</div>`;
      case 'expect':
        return nothing;
    }
  }

  private moved(): Readonly<Record<string, string>> {
    if (!this.filedDoc || this.filed === undefined) return {};
    const { facts } = this.filedDoc;
    return Object.fromEntries(
      movedFacts(this.filedDoc, this.doc).map((id) => {
        const before = facts[id];
        return [id, typeof before === 'string' ? before : before === undefined ? '' : 'other rows'];
      }),
    );
  }

  private picker(topic: Topic) {
    const given = this.doc.facts;
    const absent = Object.entries(topic.facts).filter(([id]) => given[id] === undefined);
    const add = (event: Event): void => {
      if (!(event.target instanceof HTMLSelectElement) || event.target.value === '') return;
      const id = event.target.value;
      event.target.value = '';
      const fact = topic.facts[id];
      if (fact?.kind === 'rows') {
        const cells = Object.keys(fact.columns).filter((column) => fact.columns[column]?.required);
        const unknown = Object.fromEntries(cells.map((column) => [column, 'unknown']));
        this.edit(addRow(this.doc, id, 'Not named yet', unknown), id);
      } else this.edit(setFact(this.doc, id, 'unknown'), id);
    };
    return html`<p class="noprint">
      <label>Another fact
        <select @change=${add}>
          <option value="">choose …</option>
          ${absent.map(([id, fact]) => html`<option value=${id}>${fact.label}</option>`)}
        </select>
      </label>
    </p>`;
  }

  private strayTroubles() {
    const places = this.doc.blocks.flatMap((block) =>
      block.kind === 'facts'
        ? block.rows.flatMap((row) => [row.valueSpan.start, row.idPlace])
        : block.kind === 'list'
          ? block.rows.flatMap((row) => Object.values(row.cells).map((cell) => cell.span.start))
          : [],
    );
    const stray = this.doc.troubles.filter(
      ({ line, column }) => !places.some((place) => place.line === line && place.column === column),
    );
    if (stray.length === 0) return nothing;
    return html`<div class="notice" role="alert">
      ${stray.map(({ line, column, says }) => html`<p>Line ${line}, column ${column}: ${says}</p>`)}
    </div>`;
  }

  private verdict(answer: Answer, topic: Topic) {
    const level = levelOf(topic.outcomes, answer.outcome);
    return html`
      <verdict-note .answer=${answer} .level=${level} .current=${this.judged?.current ?? false}></verdict-note>
      <div class="acts">
        <button @click=${this.copy}>Copy the sentence</button>
        <button ?disabled=${!canUndo(this.history)} @click=${() => this.go(undo(this.history))}>Undo</button>
        <button ?disabled=${!canRedo(this.history)} @click=${() => this.go(redo(this.history))}>Redo</button>
        ${
          this.filed !== undefined && current(this.history) !== this.filed
            ? html`<button @click=${() => this.edit(this.filed ?? '', 'filed')}>Put back as filed</button>`
            : nothing
        }
        <button @click=${this.saveFile}>Save as Markdown</button>
        <button @click=${() => print()}>Print</button>
      </div>
      <p class="small soft" role="status">${this.told}</p>
      ${missingList(answer.missing)}
      <h2>How close to each limit</h2>
      <aside class="side">
        The dashed notch is the margin this dealer keeps; the solid line is the maker’s rating, and it is never moved.
      </aside>
      <limit-rows .limits=${answer.limits} .system=${this.system}></limit-rows>
      ${findingList(answer.findings)}
    `;
  }

  private standing(answer: Answer, topic: Topic) {
    const sources = [
      ...new Set(
        Object.values(answer.trace.steps).flatMap(({ source }) =>
          source ? [`${source.class.replace('-', ' ')}: ${cited(source)}`] : [],
        ),
      ),
    ].toSorted();
    return html`
      <h2>The working</h2>
      <working-steps .trace=${answer.trace} .topic=${topic}></working-steps>
      ${
        answer.assumed.length === 0
          ? nothing
          : html`<h2>Taken for granted</h2>
            <ul>${answer.assumed.map(({ says }) => html`<li>${says}</li>`)}</ul>`
      }
      <h2>What to be careful about</h2>
      <ul>${answer.cautions.map((each) => html`<li>${each}</li>`)}</ul>
      <h2>Sources</h2>
      <ul class="small soft">${sources.map((each) => html`<li>${each}</li>`)}</ul>
      <p class="small soft">Rules ${answer.topic} ${answer.rules}, as of ${answer.asOf}.</p>
    `;
  }

  private typedFact(event: FactTyped): void {
    this.edit(setFact(this.doc, event.detail.id, event.detail.value), event.detail.id);
  }

  private typedCell({ detail }: CellTyped): void {
    const { list, row, column, value } = detail;
    this.edit(setCell(this.doc, list, row, column, value), `${list}.${row}.${column}`);
  }

  protected override render() {
    const { doc } = this;
    const { topic, front } = doc;
    const answer = this.judged?.answer;
    const moved = this.moved();
    return html`
      <article
        class="columns"
        @fact-typed=${this.typedFact}
        @fact-dropped=${(e: FactDropped) => this.edit(removeFact(doc, e.detail.id), `drop ${e.detail.id}`)}
        @cell-typed=${this.typedCell}
        @row-added=${({ detail }: RowAdded) =>
          this.edit(addRow(doc, detail.list, detail.label, detail.cells), `add ${detail.list}`)}
        @row-dropped=${({ detail }: RowDropped) =>
          this.edit(removeRow(doc, detail.list, detail.row), `drop ${detail.list}`)}
      >
        <p class="soft small">
          ${front.asked ? `Asked by ${front.asked} · ` : ''}${topic?.title ?? front.topic}${front.level ? ` · ${front.level}` : ''}
        </p>
        <h1>${front.title}</h1>
        ${this.notice ? html`<p class="notice" role="alert">${this.notice}</p>` : nothing}
        ${this.strayTroubles()}
        ${
          topic
            ? html`${answer ? this.verdict(answer, topic) : nothing}
              <h2>The case, and what we know</h2>
              <aside class="side">
                Write a number with its unit, a range such as 4,900–5,100 lb, 560 ± 20 lb, or unknown.
              </aside>
              ${doc.blocks.map((block) => this.block(block, topic, moved))}
              ${this.picker(topic)}
              ${answer ? this.standing(answer, topic) : nothing}`
            : nothing
        }
      </article>
    `;
  }
}

customElements.define('case-page', CasePage);
