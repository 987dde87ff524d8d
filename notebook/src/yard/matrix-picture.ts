import { html } from 'lit';
import { MeasuredWidth } from '../drawings/measured-width';
import { PlainElement } from '../elements/plain-element';
import type { Named } from './matrix-asked';
import { type Frame, frameOf, type Painter, painterOn } from './matrix-drawn';
import type { Seen } from './matrix-sieve';

/** A pair, by its places among all. */
export type PairAt = { readonly row: number; readonly column: number };

/** Somebody points at a pair, or goes to it by keys. */
export class PairPointed extends CustomEvent<PairAt> {
  constructor(at: PairAt) {
    super('pair-pointed', { detail: at, bubbles: true });
  }
}

/** The pair in sight is wanted whole. */
export class PairWanted extends CustomEvent<undefined> {
  constructor() {
    super('pair-wanted', { bubbles: true });
  }
}

/** All pairs that are seen, drawn anew only where something else is seen, or row by row as they come in. */
export class MatrixPicture extends PlainElement {
  static override properties = {
    seen: { attribute: false },
    vehicles: { attribute: false },
    trailers: { attribute: false },
    without: { attribute: false },
    at: { attribute: false },
  };
  declare seen: Seen;
  declare vehicles: readonly Named[];
  declare trailers: readonly Named[];
  declare without: ReadonlySet<number>;
  declare at: PairAt;
  /** Levels row by row; what came in anew is told by `put`. */
  found = new Uint8Array(0);
  private frame: Frame | undefined;
  private painter: Painter | undefined;
  private drawnFor: readonly unknown[] = [];
  /** Whoever goes by keys has the pair brought into sight; a pointer is on it. */
  private isByKeys = false;
  private measured = new MeasuredWidth(this, 600);

  /** Rows that came in, by their places among all: of them alone the picture is drawn anew. */
  put(from: number, to: number): void {
    const { rows } = this.seen;
    const placeOf = (row: number): number => {
      const at = rows.findIndex((each) => each >= row);
      return at < 0 ? rows.length : at;
    };
    const [first, end] = [placeOf(from), placeOf(to)];
    if (end > first) this.painter?.paint(this.found, first, end);
  }

  private point(row: number | undefined, column: number | undefined): void {
    if (row === undefined || column === undefined) return;
    if (row === this.at.row && column === this.at.column) return;
    this.dispatchEvent(new PairPointed({ row, column }));
  }

  private pointed = (event: PointerEvent): void => {
    const { frame, seen } = this;
    if (!frame || !(event.currentTarget instanceof HTMLCanvasElement)) return;
    const box = event.currentTarget.getBoundingClientRect();
    const scale = frame.width / Math.max(1, box.width);
    this.isByKeys = false;
    this.point(
      seen.rows[Math.floor(((event.clientY - box.top) * scale - frame.top) / frame.h)],
      seen.columns[Math.floor(((event.clientX - box.left) * scale - frame.left) / frame.w)],
    );
  };

  private pressed = (event: KeyboardEvent): void => {
    const { rows, columns } = this.seen;
    const [down, across] = [rows.indexOf(this.at.row), columns.indexOf(this.at.column)];
    const moves: Readonly<Record<string, readonly [number, number]>> = {
      ArrowUp: [down - 1, across],
      ArrowDown: [down + 1, across],
      ArrowLeft: [down, across - 1],
      ArrowRight: [down, across + 1],
      Home: [down, 0],
      End: [down, columns.length - 1],
      PageUp: [0, across],
      PageDown: [rows.length - 1, across],
    };
    const to = moves[event.key];
    if (to) {
      event.preventDefault();
      this.isByKeys = true;
      this.point(rows[to[0]], columns[to[1]]);
    } else if (event.key === 'Enter') this.dispatchEvent(new PairWanted());
  };

  protected override updated(): void {
    const canvas = this.querySelector('canvas');
    if (canvas && this.vehicles.length > 0) this.draw(canvas);
    this.outline();
  }

  private draw(canvas: HTMLCanvasElement): void {
    const { seen, vehicles, trailers, without } = this;
    const { width } = this.measured;
    const drawnFor = [seen, vehicles, without, width];
    if (drawnFor.every((each, i) => each === this.drawnFor[i])) return;
    this.drawnFor = drawnFor;
    this.frame = frameOf(width, seen);
    canvas.style.setProperty('--tall', `${this.frame.height}px`);
    const names = (places: readonly number[], all: readonly Named[]) =>
      places.map((place) => all[place]?.name ?? '');
    const written = { rows: names(seen.rows, vehicles), columns: names(seen.columns, trailers) };
    this.painter = painterOn(canvas, this.frame, seen, trailers.length, written, without);
    this.painter.paint(this.found, 0, seen.rows.length);
  }

  /** Laid over the picture, so that nothing is drawn anew where somebody points elsewhere. */
  private outline(): void {
    const { frame, seen, at } = this;
    const line = this.querySelector<HTMLElement>('.outline');
    if (!frame || !line) return;
    const [down, across] = [seen.rows.indexOf(at.row), seen.columns.indexOf(at.column)];
    line.hidden = down < 0 || across < 0;
    const { left, top, w, h } = frame;
    line.style.left = `${left + across * w}px`;
    line.style.top = `${top + down * h}px`;
    line.style.width = `${Math.max(5, w)}px`;
    line.style.height = `${Math.max(5, h)}px`;
    if (this.isByKeys) line.scrollIntoView({ block: 'nearest' });
    this.isByKeys = false;
  }

  protected override render() {
    return html`<canvas tabindex="0" role="img" aria-label="Every vehicle against every trailer; arrow keys go from pair to pair, the pair in sight is told below."
        @pointermove=${this.pointed} @pointerdown=${this.pointed} @keydown=${this.pressed}></canvas><span class="outline"></span>`;
  }
}

customElements.define('matrix-picture', MatrixPicture);
