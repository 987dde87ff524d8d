import type { Level } from '@tarebook/rules/engine';
import { nameSaid } from '@tarebook/sweep';
import { html, nothing, type TemplateResult } from 'lit';
import { fold } from '../counter/case-fold';
import { limitBar } from '../elements/limit-bar';
import { mark } from '../elements/marks';
import { PlainElement } from '../elements/plain-element';
import type { YardFound, YardRow, YardWhy } from './asked';

/** A pair is to be opened as a case. */
export class PairOpened extends CustomEvent<{ row: YardRow }> {
  constructor(row: YardRow) {
    super('pair-opened', { detail: { row }, bubbles: true });
  }
}

const order: readonly Level[] = ['ok', 'care', 'if', 'unknown', 'stop'];

const headings: Readonly<Record<Level, string>> = {
  ok: 'Fits',
  care: 'Fits with care',
  if: 'Fits if what was not told holds',
  unknown: 'Cannot say: look this up first',
  stop: 'Does not fit',
};

/** “21.5 ft · sleeps 4 · $18,895 · here” */
function described({ cells }: YardRow): string {
  const { body = '', length = '', sleeps = '', price = '', lot = '' } = cells;
  const isBare = /^[\d.,]+$/;
  const parts = [
    body,
    isBare.test(length) ? `${length} ft` : length,
    sleeps && `sleeps ${sleeps}`,
    isBare.test(price) ? `$${Number(price.replaceAll(',', '')).toLocaleString('en-US')}` : price,
    lot,
  ];
  return parts.filter((part) => part !== '').join(' · ');
}

const listed = (items: readonly string[]): string =>
  items.length < 2 ? items.join('') : `${items.slice(0, -1).join(', ')} and ${items.at(-1)}`;

/** The yard as rows to be read from across a desk, by how each comes out. */
export class YardRows extends PlainElement {
  static override properties = { found: { attribute: false }, whys: { attribute: false } };
  declare found: YardFound;
  /** Why each comes out so, by its name, as far as it is told. */
  declare whys: ReadonlyMap<string, YardWhy>;

  /** What is asked of every one that is open is told once, above them. */
  private get askedOfAll(): readonly string[] {
    const open = this.found.rows.filter(({ level }) => level === 'unknown');
    const [first, ...others] = open.map(({ name }) => this.whys.get(name)?.asks ?? []);
    return (first ?? []).filter((ask) => others.every((asks) => asks.includes(ask)));
  }

  private why({ name, needs, level }: YardRow, common: readonly string[]): TemplateResult {
    const { asks = [], says = '\u00a0' } = this.whys.get(name) ?? {};
    const own = asks.filter((ask) => !common.includes(ask));
    if (level !== 'unknown') return html`<p>${says}</p>`;
    return html`${needs.length > 0 ? html`<p class="needs">if ${listed(needs)}</p>` : nothing}
      ${own.length > 0 ? html`<p>${needs.length > 0 ? 'and to ask: ' : ''}${own.join(' ')}</p>` : nothing}`;
  }

  private row(row: YardRow, common: readonly string[]) {
    const { level, name, words, limit } = row;
    return html`<li class="level-${level}" data-name=${name}>
      <span class="word-of">${mark(level)}<span class="hidden">${words}: </span></span>
      <span class="called"><strong>${nameSaid(name, row)}</strong> <small class="soft">${described(row)}</small></span>
      ${
        limit
          ? html`<span class="runs-out">${limitBar(limit.bar)}<span class="of">${limit.label}</span></span>
            <span class="left num">${limit.left}</span>`
          : nothing
      }
      <div class="because">${this.why(row, common)}</div>
      <button class="noprint" aria-label="Open as a case: ${name}"
        @click=${() => this.dispatchEvent(new PairOpened(row))}>Open as a case</button>
    </li>`;
  }

  private group(level: Level): TemplateResult | typeof nothing {
    const rows = this.found.rows.filter((row) => row.level === level);
    if (rows.length === 0) return nothing;
    const common = level === 'unknown' ? this.askedOfAll : [];
    return fold(
      {
        name: `yard-${level}`,
        heading: headings[level],
        note: `${rows.length}`,
        begins: level !== 'stop',
      },
      () =>
        html`${
          common.length > 0
            ? html`<p class="small soft">Whichever it is, ask too: ${common.join(' ')}</p>`
            : nothing
        }<ul class="yard-rows">${rows.map((row) => this.row(row, common))}</ul>`,
    );
  }

  protected override render() {
    return html`${order.map((level) => this.group(level))}`;
  }
}

customElements.define('yard-rows', YardRows);
