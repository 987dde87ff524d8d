import { html, nothing } from 'lit';
import '../cases/own-list';
import { type Row, rowsOf } from '../cases/rows';
import { verdictFor } from '../cases/verdict';
import { idle } from '../elements/idle';
import { PlainElement } from '../elements/plain-element';
import { allKept, hearElsewhere } from '../state/kept';
import { openAmong } from './open-among';

const none = 'None waits for anything. What you open as a case stands here until it is answered.';

/** Cases that somebody began and that wait for something, the last touched first. */
export class OpenCalls extends PlainElement {
  static override properties = { rows: { state: true }, others: { state: true } };
  /** Undefined until somebody looked. */
  declare rows: readonly Row[] | undefined;
  declare others: number;
  private unhear: (() => void) | undefined;
  private visit = 0;

  override connectedCallback(): void {
    super.connectedCallback();
    this.others = 0;
    this.unhear = hearElsewhere(this.look);
    void idle().then(this.look);
  }

  override disconnectedCallback(): void {
    this.visit += 1;
    this.unhear?.();
    super.disconnectedCallback();
  }

  private look = async (): Promise<void> => {
    this.visit += 1;
    const { visit } = this;
    const goesOn = (): boolean => visit === this.visit;
    // A device that keeps nothing has none.
    const { own } = rowsOf(await allKept().catch(() => []));
    const rows = await openAmong(own, verdictFor, goesOn);
    if (!goesOn()) return;
    this.rows = rows;
    this.others = own.length - rows.length;
  };

  protected override render() {
    const { rows, others } = this;
    if (!rows) return nothing;
    const rest = others === 1 ? '1 more of your own' : `${others} more of your own`;
    return html`<section class="open-calls" aria-label="Open calls">
      <own-list .heading=${'Open calls'} .none=${none} .rows=${rows} @own-changed=${this.look}></own-list>
      ${others > 0 ? html`<p class="small"><a href="#/cases">${rest}, under Cases</a></p>` : nothing}
    </section>`;
  }
}

customElements.define('open-calls', OpenCalls);
