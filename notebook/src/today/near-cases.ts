import { html, nothing, type PropertyValues } from 'lit';
import { caseRow } from '../cases/row';
import { type Row, rowsOf } from '../cases/rows';
import { caseFinder } from '../cases/search';
import { PlainElement } from '../elements/plain-element';
import { allKept } from '../state/kept';

const few = 3;
/** What is shorter is about anything. */
const leastWords = 3;
/** Cases are looked up once somebody has said it, not at every key. */
const restsFor = 700;

/** The cases that are nearest to what somebody said, one's own among them. */
export class NearCases extends PlainElement {
  static override properties = { question: { attribute: false }, rows: { state: true } };
  declare question: string;
  declare rows: readonly Row[];
  private finder: Promise<ReturnType<typeof caseFinder>> | undefined;
  private timer: ReturnType<typeof setTimeout> | undefined;

  constructor() {
    super();
    this.rows = [];
  }

  override disconnectedCallback(): void {
    clearTimeout(this.timer);
    super.disconnectedCallback();
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('question')) return;
    clearTimeout(this.timer);
    this.timer = setTimeout(this.look, restsFor);
  }

  private look = async (): Promise<void> => {
    const { question } = this;
    if (question.trim().split(/\s+/).length < leastWords) {
      this.rows = [];
      return;
    }
    this.finder ??= allKept()
      .catch(() => [])
      .then((kept) => {
        const { own, filed } = rowsOf(kept);
        return caseFinder([...own.filter((row) => row.own === 'mine'), ...filed]);
      });
    // Where nothing can be found the answer stands without it.
    const found = await (await this.finder)(question).catch(() => undefined);
    if (question === this.question) this.rows = found?.hits.slice(0, few) ?? [];
  };

  protected override render() {
    const { rows } = this;
    if (rows.length === 0) return nothing;
    return html`<section class="near" aria-label="Cases like this"><h2>Cases like this</h2>
      <ul class="cases">${rows.map((row) => caseRow(row, nothing, true))}</ul></section>`;
  }
}

customElements.define('near-cases', NearCases);
