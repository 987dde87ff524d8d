import { html, nothing, svg } from 'lit';
import { codeRows } from '../code/asked';
import type { Rows } from '../code/encode';
import { PlainElement } from './plain-element';

/** Width of a module in CSS pixels: a whole number, so that no edge falls within a pixel. */
const wholePixels = 3;

/** Dark modules as one path: a stretch of a row is one step to the right and back. */
function pathOf(rows: Rows): string {
  return rows
    .flatMap((row, y) => {
      const runs: string[] = [];
      for (let x = 0; x < row.length; x += 1) {
        if (!row[x]) continue;
        let end = x;
        while (row[end]) end += 1;
        runs.push(`M${x} ${y}h${end - x}v1h${x - end}z`);
        x = end;
      }
      return runs;
    })
    .join('');
}

/** A text as a code that a phone's camera reads, made on this device, black on white always. */
export class QrCode extends PlainElement {
  static override properties = {
    text: { attribute: false },
    label: { attribute: false },
    rows: { state: true },
  };
  declare text: string;
  /** What opens when it is scanned. */
  declare label: string;
  declare rows: Rows | undefined;

  protected override willUpdate(changed: Map<PropertyKey, unknown>): void {
    if (changed.has('text')) void this.encode(this.text);
  }

  private async encode(text: string): Promise<void> {
    const rows = await codeRows(text);
    if (text === this.text) this.rows = rows;
  }

  protected override render() {
    const { rows, label } = this;
    if (!rows) return nothing;
    return html`<svg class="code" viewBox="0 0 ${rows.length} ${rows.length}" role="img"
      width=${rows.length * wholePixels} height=${rows.length * wholePixels}
      aria-label=${label} shape-rendering="crispEdges">
      ${svg`<rect width="100%" height="100%" fill="#fff" /><path d=${pathOf(rows)} fill="#000" />`}
    </svg>`;
  }
}

customElements.define('qr-code', QrCode);
