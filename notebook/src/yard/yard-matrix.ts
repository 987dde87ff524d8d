import { levels } from '@tarebook/rules/engine';
import type { UnitSystem } from '@tarebook/rules/quantity';
import { type CatalogueFiles, isSold } from '@tarebook/sweep';
import { html, nothing, type PropertyValues } from 'lit';
import { mark } from '../elements/marks';
import { PlainElement } from '../elements/plain-element';
import { houseOf } from '../state/house';
import type { MatrixTold, Named, PairTold } from './matrix-asked';
import { levelKeys, marginField, sieveFields, slider } from './matrix-filters';
import { MatrixPicture, type PairAt, type PairPointed } from './matrix-picture';
import { countsOf, type Seen, type Sieve, seenThrough, wholeYard } from './matrix-sieve';
import { countsTable, rowTable } from './matrix-table';
import {
  beginsSaid,
  levelWords,
  mostCargo,
  mostPeople,
  packedFor,
  sieveSaid,
  withMargin,
} from './matrix-words';
import { MatrixWorkers } from './matrix-workers';

/** A pair of the matrix is to be opened as a case. */
export class CellOpened extends CustomEvent<{ pair: PairTold }> {
  constructor(pair: PairTold) {
    super('cell-opened', { detail: { pair }, bubbles: true });
  }
}

/** Whoever points at a pair is told of it once they rest on it. */
const restsFor = 60;
const notJudged = 255;

/** Every vehicle against every trailer as one picture, with the table behind it. */
export class YardMatrix extends PlainElement {
  static override properties = {
    files: { attribute: false },
    system: { attribute: false },
    people: { attribute: false },
    adults: { state: true },
    cargo: { state: true },
    margin: { state: true },
    sieve: { state: true },
    at: { state: true },
    pair: { state: true },
    notice: { state: true },
    took: { state: true },
    isOpen: { state: true },
  };
  declare files: CatalogueFiles | undefined;
  declare system: UnitSystem;
  /** How many ride along, as it was told; the picture begins with them. */
  declare people: number;
  declare adults: number;
  /** Pounds packed in the trailer. */
  declare cargo: number;
  /** Percent of each rating that is kept free; undefined: as the house has it. */
  declare margin: number | undefined;
  declare sieve: Sieve;
  /** The pair in sight, by its places among all. */
  declare at: PairAt;
  declare pair: PairTold | undefined;
  declare notice: string;
  /** Milliseconds that the worker reckoned; undefined while it does. */
  declare took: number | undefined;
  /** Whether the table is looked at; until then none is made. */
  declare isOpen: boolean;
  private vehicles: readonly Named[] = [];
  private trailers: readonly Named[] = [];
  private found = new Uint8Array(0);
  private seen: Seen = { rows: [], columns: [] };
  private readonly workers = new MatrixWorkers((told) => this.hear(told));
  private turn = 0;
  /** Whether somebody counted those aboard for the picture alone. */
  private isCountedHere = false;
  private timer: ReturnType<typeof setTimeout> | undefined;

  constructor() {
    super();
    this.people = 2;
    this.adults = 2;
    this.cargo = 300;
    this.sieve = wholeYard;
    this.at = { row: 0, column: 0 };
    this.notice = '';
    this.isOpen = false;
  }

  override disconnectedCallback(): void {
    clearTimeout(this.timer);
    this.workers.end();
    super.disconnectedCallback();
  }

  private hear(told: MatrixTold): void {
    if (told.kind === 'refused') this.notice = told.says;
    else if (told.kind === 'pair') this.pair = told.pair;
    else if (told.kind === 'begun') {
      // The pair in sight stays in sight where the same yard is judged by other margins.
      const vehicle = this.vehicles[this.at.row]?.name;
      const trailer = this.trailers[this.at.column]?.name;
      this.vehicles = told.vehicles;
      this.trailers = told.trailers;
      this.found = new Uint8Array(told.vehicles.length * told.trailers.length).fill(notJudged);
      this.at = {
        row: Math.max(
          0,
          told.vehicles.findIndex(({ name }) => name === vehicle),
        ),
        column: Math.max(
          0,
          told.trailers.findIndex(({ name }) => name === trailer),
        ),
      };
      this.sift();
      this.look();
      this.requestUpdate();
    } else if (told.turn !== this.turn) return;
    else if (told.kind === 'rows') this.put(told);
    else {
      this.took = told.took;
      this.sift();
    }
  }

  /** Rows that came in: of them alone the picture is drawn anew. */
  private put({ from, of, levels: found }: Extract<MatrixTold, { kind: 'rows' }>): void {
    const wide = Math.max(1, this.trailers.length);
    const count = found.length / wide;
    for (let i = 0; i < count; i += 1) {
      this.found.set(found.subarray(i * wide, (i + 1) * wide), (from + i * of) * wide);
    }
    const to = from + (count - 1) * of + 1;
    const picture = this.querySelector('matrix-picture');
    if (picture instanceof MatrixPicture) picture.put(from, to);
  }

  private sift(): void {
    const { rows, columns } = seenThrough(this.sieve, this.vehicles, this.trailers, this.found);
    const isSame = (a: readonly number[], b: readonly number[]): boolean =>
      a.length === b.length && a.every((each, i) => each === b[i]);
    if (isSame(rows, this.seen.rows) && isSame(columns, this.seen.columns)) return;
    this.seen = { rows, columns };
    const [row = 0, column = 0] = [rows[0], columns[0]];
    if (rows.includes(this.at.row) && columns.includes(this.at.column)) return;
    this.at = { row, column };
    this.look();
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('sieve')) this.sift();
    if (changed.has('people') && !this.isCountedHere) {
      this.adults = Math.min(mostPeople, Math.max(1, this.people));
    }
    const asked = ['files', 'adults', 'cargo', 'margin'] as const;
    if (!asked.some((each) => changed.has(each))) return;
    this.turn += 1;
    this.took = undefined;
    const { turn, files, margin, adults, cargo } = this;
    const own = houseOf('tow-fit');
    const house = margin === undefined ? own : withMargin(own, margin);
    this.workers.mean(house, files);
    this.workers.all({ kind: 'all', turn, adults, cargo });
    this.look();
  }

  /** Tells of the pair in sight, once somebody rests on it. */
  private look(): void {
    clearTimeout(this.timer);
    this.timer = setTimeout(() => {
      const vehicle = this.vehicles[this.at.row]?.name;
      const trailer = this.trailers[this.at.column]?.name;
      if (vehicle === undefined || trailer === undefined) {
        if (this.vehicles.length === 0) this.look();
        return;
      }
      const facts = packedFor(this.adults, this.cargo);
      this.workers.pair({ kind: 'pair', vehicle, trailer, facts, system: this.system });
    }, restsFor);
  }

  private goTo(row: number, column: number): void {
    if (row === this.at.row && column === this.at.column) return;
    this.at = { row, column };
    this.look();
  }

  private open = (): void => {
    if (this.told) this.dispatchEvent(new CellOpened(this.told));
  };

  /** What is told of the very pair in sight. */
  private get told(): PairTold | undefined {
    const { at, vehicles, trailers, pair } = this;
    const isOf =
      pair?.vehicle === vehicles[at.row]?.name && pair?.trailer === trailers[at.column]?.name;
    return isOf ? pair : undefined;
  }

  private print = async (): Promise<void> => {
    const yard = this.closest<HTMLElement>('.yard');
    this.isOpen = true;
    await this.updateComplete;
    if (yard) yard.dataset.sheet = 'pairs';
    print();
    if (yard) delete yard.dataset.sheet;
  };

  private inSight() {
    const { at, vehicles, trailers, found, told } = this;
    const [vehicle, trailer] = [vehicles[at.row]?.name, trailers[at.column]?.name];
    if (vehicle === undefined || trailer === undefined) return nothing;
    const level = levels[found[at.row * trailers.length + at.column] ?? notJudged];
    return html`<div class="in-sight ${level ? `level-${level}` : ''}" role="status">
      <p><strong>${vehicle}</strong> and <strong>${trailer}</strong>${isSold(trailers[at.column] ?? { cells: {} }) ? ' (sold)' : nothing}
        ${level ? html`<span class="word-of">${mark(level)}${levelWords[level]}</span>` : nothing}
        ${told?.decides ? html`<span class="num decides">${told.decides}</span>` : nothing}</p>
      <p>${told?.says ?? ' '}</p>
      <button class="noprint" ?disabled=${!told} @click=${this.open}>Open this pair as a case</button>
    </div>`;
  }

  private table() {
    const { seen, vehicles, trailers, found, at } = this;
    const judged = { seen, vehicles, trailers, found };
    const opened = ({ currentTarget }: Event): void => {
      if (currentTarget instanceof HTMLDetailsElement) this.isOpen = currentTarget.open;
    };
    return html`<details ?open=${this.isOpen} @toggle=${opened}><summary>The same as a table: of each vehicle how many trailers</summary>
      ${
        this.isOpen
          ? html`<div class="wide-table" tabindex="0" role="region" aria-label="Of each vehicle how many trailers">
              ${countsTable(judged, (row) => this.goTo(row, at.column))}</div>
            <div class="wide-table noprint" tabindex="0" role="region" aria-label="The vehicle in sight against each trailer">
              ${rowTable(judged, at.row, (column) => this.goTo(at.row, column))}</div>`
          : nothing
      }</details>`;
  }

  protected override render() {
    const { vehicles, trailers, took, notice, adults, cargo, margin, sieve, seen, found } = this;
    const pairs = seen.rows.length * seen.columns.length;
    const all = vehicles.length * trailers.length;
    const state = took === undefined ? 'Going through the pairs …' : `All ${all} pairs are judged.`;
    const change = (next: Sieve): void => {
      this.sieve = next;
    };
    return html`<p class="paper-only">${adults} aboard, ${cargo} lb packed in the trailer. ${sieveSaid(sieve, margin)} ${new Date().toLocaleDateString('en-US')}</p>
      <div class="finder noprint">
        ${slider('Adults aboard', [1, adults, mostPeople], 1, `${adults}`, (value) => {
          this.isCountedHere = true;
          this.adults = value;
        })}
        ${slider('Packed in the trailer', [0, cargo, mostCargo], 50, `${cargo} lb`, (value) => {
          this.cargo = value;
        })}
        ${marginField(margin, (value) => {
          this.margin = value;
        })}
        ${sieveFields(sieve, vehicles, trailers, change)}
      </div>
      <p class="small soft noprint">${beginsSaid(this.people, adults, cargo)}</p>
      ${notice ? html`<p class="error" role="alert">${notice}</p>` : nothing}
      <p class="small soft">Down: ${seen.rows.length} vehicles, the least rated first. Across: ${seen.columns.length} trailers, the lightest first.
        <span data-took=${took === undefined ? '' : took.toFixed(1)}>${state}</span>${pairs < all ? html` ${pairs} are shown.` : nothing}</p>
      ${levelKeys(sieve, countsOf(seen, trailers.length, found), change)}
      ${pairs === 0 && all > 0 ? html`<p role="status">No pair is so; show more of them.</p>` : nothing}
      <div class="picture-with-sight"><matrix-picture ?hidden=${pairs === 0} .seen=${seen} .vehicles=${vehicles} .trailers=${trailers} .found=${found} .without=${sieve.without} .at=${this.at}
        @pair-pointed=${({ detail: { row, column } }: PairPointed) => this.goTo(row, column)} @pair-wanted=${this.open}></matrix-picture>
      ${this.inSight()}</div>
      <p class="noprint"><button @click=${this.print}>Print these pairs</button></p>
      ${this.table()}
      <p class="paper-only small">Before anybody tows: the labels of that very vehicle and trailer, the maker’s manuals and a scale win over this sheet, and no rated part may carry more than its rating.</p>`;
  }
}

customElements.define('yard-matrix', YardMatrix);
