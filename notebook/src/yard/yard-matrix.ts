import { type FactsGiven, levels } from '@tarebook/rules/engine';
import type { UnitSystem } from '@tarebook/rules/quantity';
import type { CatalogueFiles } from '@tarebook/sweep';
import { html, nothing, type PropertyValues } from 'lit';
import { MeasuredWidth } from '../drawings/measured-width';
import { mark } from '../elements/marks';
import { PlainElement } from '../elements/plain-element';
import { houseOf } from '../state/house';
import { people } from '../state/people';
import type { MatrixAsked, MatrixTold, PairAsked, PairTold } from './matrix-asked';
import { drawMatrix } from './matrix-drawn';

/** A pair of the matrix is to be opened as a case. */
export class CellOpened extends CustomEvent<{ pair: PairTold }> {
  constructor(pair: PairTold) {
    super('cell-opened', { detail: { pair }, bubbles: true });
  }
}

const words = {
  ok: 'fits',
  care: 'fits with care',
  if: 'fits if',
  unknown: 'cannot say',
  stop: 'does not fit',
} as const;

const mostPeople = 8;
const mostCargo = 1500;
/** Whoever points at a pair is told of it once they rest on it. */
const restsFor = 120;

type Named = { readonly name: string };

/** Every vehicle against every trailer as one picture, with the table behind it. */
export class YardMatrix extends PlainElement {
  static override properties = {
    files: { attribute: false },
    system: { attribute: false },
    adults: { state: true },
    cargo: { state: true },
    vehicles: { state: true },
    trailers: { state: true },
    done: { state: true },
    took: { state: true },
    at: { state: true },
    pair: { state: true },
    notice: { state: true },
  };
  declare files: CatalogueFiles | undefined;
  declare system: UnitSystem;
  declare adults: number;
  /** Pounds packed in the trailer. */
  declare cargo: number;
  declare vehicles: readonly Named[];
  declare trailers: readonly Named[];
  /** So many rows are judged. */
  declare done: number;
  declare took: number | undefined;
  declare at: { readonly row: number; readonly column: number };
  declare pair: PairTold | undefined;
  declare notice: string;
  private found: (Uint8Array | undefined)[] = [];
  private worker: Worker | undefined;
  private turn = 0;
  private timer: ReturnType<typeof setTimeout> | undefined;
  /** Rows that came in between two pictures are drawn in one. */
  private soon: number | undefined;
  private measured = new MeasuredWidth(this, 600);

  constructor() {
    super();
    this.adults = 2;
    this.cargo = 300;
    this.vehicles = [];
    this.trailers = [];
    this.done = 0;
    this.at = { row: 0, column: 0 };
    this.notice = '';
  }

  override disconnectedCallback(): void {
    clearTimeout(this.timer);
    if (this.soon !== undefined) cancelAnimationFrame(this.soon);
    this.soon = undefined;
    this.worker?.terminate();
    this.worker = undefined;
    super.disconnectedCallback();
  }

  private get facts(): FactsGiven {
    const { weight } = people.adult;
    return {
      'load.occupants': Array.from({ length: this.adults }, (_, i) => ({
        label: i === 0 ? 'Driver' : `Adult ${i + 1}`,
        weight,
      })),
      ...(this.cargo > 0 && {
        'trailer.cargo': [{ label: 'What is packed', weight: `${this.cargo} lb` }],
      }),
    };
  }

  private send(asked: MatrixAsked | PairAsked): void {
    if (!this.worker) {
      this.worker = new Worker(new URL('./matrix-worker.ts', import.meta.url), { type: 'module' });
      this.worker.onmessage = ({ data }: MessageEvent<MatrixTold>) => this.hear(data);
      this.worker.onerror = () => {
        this.notice = 'The pairs could not be reckoned; reload the page and try again.';
      };
    }
    this.worker.postMessage(asked);
  }

  private hear(told: MatrixTold): void {
    if (told.kind === 'refused') this.notice = told.says;
    else if (told.kind === 'pair') this.pair = told.pair;
    else if (told.turn !== this.turn) return;
    else if (told.kind === 'begun') {
      const isOther =
        told.vehicles.length !== this.vehicles.length ||
        told.trailers.length !== this.trailers.length;
      this.vehicles = told.vehicles;
      this.trailers = told.trailers;
      if (isOther) this.at = { row: 0, column: 0 };
    } else if (told.kind === 'row') {
      this.found[told.row] = told.levels;
      this.soon ??= requestAnimationFrame(() => {
        this.soon = undefined;
        this.done = this.found.reduce((n, row) => n + (row ? 1 : 0), 0);
      });
    } else {
      this.done = this.vehicles.length;
      this.took = told.took;
    }
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('files') && !changed.has('adults') && !changed.has('cargo')) return;
    this.turn += 1;
    this.found = [];
    this.done = 0;
    this.took = undefined;
    const { turn, facts, files } = this;
    this.send({ kind: 'all', turn, facts, house: houseOf('tow-fit'), files });
    this.look(0);
  }

  /** Tells of the pair in sight, once somebody rests on it. */
  private look(after = restsFor): void {
    clearTimeout(this.timer);
    this.timer = setTimeout(() => {
      const vehicle = this.vehicles[this.at.row]?.name;
      const trailer = this.trailers[this.at.column]?.name;
      if (vehicle === undefined || trailer === undefined) return;
      const { facts, system, files } = this;
      const house = houseOf('tow-fit');
      this.send({ kind: 'pair', vehicle, trailer, facts, system, house, files });
    }, after);
  }

  private goTo(row: number, column: number): void {
    const most = (value: number, all: readonly Named[]) =>
      Math.max(0, Math.min(all.length - 1, value));
    const at = { row: most(row, this.vehicles), column: most(column, this.trailers) };
    if (at.row === this.at.row && at.column === this.at.column) return;
    this.at = at;
    this.look();
  }

  private pointed = (event: PointerEvent): void => {
    if (!(event.currentTarget instanceof HTMLCanvasElement)) return;
    const box = event.currentTarget.getBoundingClientRect();
    const share = (value: number, whole: number) => Math.floor((value / whole) * 1e6) / 1e6;
    this.goTo(
      Math.floor(share(event.clientY - box.top, box.height) * this.vehicles.length),
      Math.floor(share(event.clientX - box.left, box.width) * this.trailers.length),
    );
  };

  private pressed = (event: KeyboardEvent): void => {
    const { row, column } = this.at;
    const moves: Readonly<Record<string, readonly [number, number]>> = {
      ArrowUp: [row - 1, column],
      ArrowDown: [row + 1, column],
      ArrowLeft: [row, column - 1],
      ArrowRight: [row, column + 1],
      Home: [row, 0],
      End: [row, this.trailers.length - 1],
      PageUp: [0, column],
      PageDown: [this.vehicles.length - 1, column],
    };
    const to = moves[event.key];
    if (to) {
      event.preventDefault();
      this.goTo(...to);
    } else if (event.key === 'Enter') this.open();
  };

  private open = (): void => {
    if (this.pair) this.dispatchEvent(new CellOpened(this.pair));
  };

  protected override updated(): void {
    const canvas = this.querySelector('canvas');
    const { vehicles, trailers, at } = this;
    if (!canvas || vehicles.length === 0) return;
    const width = this.measured.width;
    const height = Math.max(200, Math.min(width, (width / trailers.length) * vehicles.length));
    canvas.style.height = `${height}px`;
    drawMatrix(canvas, {
      ...{ width, height, at, rows: vehicles.length, columns: trailers.length },
      levelAt: (row, column) => this.found[row]?.[column],
    });
  }

  private slider(
    label: string,
    value: number,
    most: number,
    step: number,
    said: string,
    set: (value: number) => void,
  ) {
    const moved = ({ target }: Event): void => {
      if (target instanceof HTMLInputElement) set(Number(target.value));
    };
    return html`<label>${label}: <span class="num">${said}</span><br />
      <input type="range" min=${label === 'Adults aboard' ? 1 : 0} max=${most} step=${step} .value=${String(value)} @input=${moved} /></label>`;
  }

  private counts(row: number) {
    const own = this.found[row];
    return levels.map((_, level) => own?.reduce((n, each) => n + (each === level ? 1 : 0), 0) ?? 0);
  }

  private table() {
    return html`<details><summary>The same as a table: of each vehicle how many trailers</summary>
      <div class="wide-table" tabindex="0" role="region" aria-label="Of each vehicle how many trailers"><table>
        <thead><tr><th scope="col">Vehicle</th>${levels.map((level) => html`<th scope="col">${words[level]}</th>`)}<th scope="col">the heaviest that fits</th></tr></thead>
        <tbody>${this.vehicles.map((vehicle, row) => {
          const going =
            this.found[row]?.reduce((most, level, i) => (level <= 1 ? i : most), -1) ?? -1;
          return html`<tr><th scope="row">${vehicle.name}</th>${this.counts(row).map(
            (n) => html`<td class="num">${n}</td>`,
          )}<td>${this.trailers[going]?.name ?? '–'}</td></tr>`;
        })}</tbody></table></div></details>`;
  }

  private inSight() {
    const { at, vehicles, trailers, pair } = this;
    const [vehicle, trailer] = [vehicles[at.row]?.name, trailers[at.column]?.name];
    if (vehicle === undefined || trailer === undefined) return nothing;
    const level = levels[this.found[at.row]?.[at.column] ?? -1];
    const told = pair?.vehicle === vehicle && pair.trailer === trailer ? pair : undefined;
    return html`<div class="in-sight ${level ? `level-${level}` : ''}" role="status">
      <p><strong>${vehicle}</strong> and <strong>${trailer}</strong>
        ${level ? html`<span class="word-of">${mark(level)}${words[level]}</span>` : nothing}</p>
      <p>${told?.says ?? ' '}</p>
      <button class="noprint" ?disabled=${!told} @click=${this.open}>Open this pair as a case</button>
    </div>`;
  }

  protected override render() {
    const { vehicles, trailers, done, took, notice, adults, cargo } = this;
    const state =
      took === undefined
        ? `${done} of ${vehicles.length} vehicles judged …`
        : `All ${vehicles.length * trailers.length} pairs are judged.`;
    return html`<div class="finder noprint">
        ${this.slider('Adults aboard', adults, mostPeople, 1, `${adults}`, (value) => {
          this.adults = value;
        })}
        ${this.slider('Packed in the trailer', cargo, mostCargo, 50, `${cargo} lb`, (value) => {
          this.cargo = value;
        })}
      </div>
      ${notice ? html`<p class="error" role="alert">${notice}</p>` : nothing}
      <p class="small soft">Down: ${vehicles.length} vehicles, the least rated first. Across: ${trailers.length} trailers, the lightest first.
        <span data-took=${took ?? ''}>${state}</span></p>
      <p class="small matrix-key">${levels.map((level) => html`<span class="word-of level-${level}">${mark(level)}${words[level]}</span> `)}</p>
      <canvas tabindex="0" role="img" aria-label="Every vehicle against every trailer; arrow keys go from pair to pair, the pair in sight is told below."
        @pointermove=${this.pointed} @pointerdown=${this.pointed} @keydown=${this.pressed}></canvas>
      ${this.inSight()}${this.table()}`;
  }
}

customElements.define('yard-matrix', YardMatrix);
