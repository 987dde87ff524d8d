import type { UnitSystem } from '@tarebook/rules/quantity';
import type { Wish } from '@tarebook/sweep';
import { html, nothing, type PropertyValues } from 'lit';
import '../yard/yard-accessories';
import '../yard/matrix.css';
import '../yard/yard.css';
import '../yard/yard-matrix';
import '../yard/yard-offers';
import '../yard/yard-rows';
import '../yard/yard-told';
import '../yard/yard-wishes';
import { CaseFold, fold } from '../counter/case-fold';
import { PlainElement } from '../elements/plain-element';
import { takeCarried } from '../state/carried';
import { houseOf } from '../state/house';
import type { LoadRow } from '../state/loads';
import { NarrowScreen } from '../yard/narrow-screen';
import { openPair } from '../yard/open-pair';
import { OwnCatalogue } from '../yard/own-catalogue';
import {
  factsOf,
  isEnough,
  nothingTold,
  peopleIn,
  refusedIn,
  type Told,
  toldSaid,
} from '../yard/told';
import { toldOf } from '../yard/told-carried';
import { YardCatalogue } from '../yard/yard-catalogue';
import type { CellOpened } from '../yard/yard-matrix';
import type { PairOpened } from '../yard/yard-rows';
import { YardSearch } from '../yard/yard-search';
import { yardSentence } from '../yard/yard-sentence';
import type { ToldChanged } from '../yard/yard-told';
import { type WishesChanged, wishesSaid } from '../yard/yard-wishes';

/** What was told last, for as long as the window is open. */
let toldLast: Told = nothingTold('trailers');
let wishesLast: readonly Wish[] = [];

/** Loads that are packed into the trailer; who rides along is told by itself. */
const loadsIn = (rows: readonly LoadRow[]): readonly string[] =>
  [...new Set(rows.map(({ name }) => name))].filter((name) =>
    rows.every((row) => row.name !== name || row.list !== 'load.occupants'),
  );

/** One customer’s vehicle against the lot, or one trailer against what people drive. */
export class YardPage extends PlainElement {
  static override properties = {
    system: { attribute: false },
    told: { state: true },
    wishes: { state: true },
  };
  declare system: UnitSystem;
  declare told: Told;
  declare wishes: readonly Wish[];
  private readonly catalogue = new YardCatalogue(this);
  private readonly search = new YardSearch(this);
  private readonly narrow = new NarrowScreen(this);
  private askedLast: readonly unknown[] = [];

  constructor() {
    super();
    const carried = takeCarried();
    this.told = carried ? toldOf(carried) : toldLast;
    this.wishes = carried ? [] : wishesLast;
  }

  /** What may be chosen in place of figures. */
  private get side() {
    const { entries } = this.catalogue;
    return this.told.way === 'trailers' ? entries.vehicles : entries.trailers;
  }

  private get isAnswerable(): boolean {
    return isEnough(this.told) && refusedIn(this.told).length === 0;
  }

  protected override willUpdate(_: PropertyValues<this>): void {
    const { chosen } = this.told;
    // Another catalogue may not have what was chosen.
    if (chosen !== '' && !this.side.some(({ name }) => name === chosen)) {
      this.told = { ...this.told, chosen: '' };
    }
    toldLast = this.told;
    wishesLast = this.wishes;
    const { own, loads } = this.catalogue;
    const asked = [this.told, this.wishes, this.system, own, loads];
    if (asked.every((each, i) => each === this.askedLast[i])) return;
    this.askedLast = asked;
    if (this.isAnswerable) this.ask();
    else this.search.leave();
  }

  private ask(): void {
    const { told, wishes, system, catalogue } = this;
    const side = told.way === 'trailers' ? 'vehicles' : 'trailers';
    this.search.ask({
      kind: 'which',
      facts: factsOf(told, catalogue.loads),
      chosen: told.chosen === '' ? undefined : { side, name: told.chosen },
      ...{ system, wishes, house: houseOf('tow-fit'), files: catalogue.pairs },
      people: peopleIn(told),
    });
  }

  /** Opens a sheet that was dropped on this page; it is a catalogue, not a case. */
  async take(files: readonly File[]): Promise<void> {
    const all = [...this.querySelectorAll('case-fold')].filter((each) => each instanceof CaseFold);
    const part = all.find(({ name }) => name === 'yard-catalogue');
    if (part) part.open = true;
    await part?.updateComplete;
    const at = this.querySelector('own-catalogue');
    if (!(at instanceof OwnCatalogue)) return;
    at.scrollIntoView();
    await at.take(files);
  }

  private open = async ({ detail: { row } }: PairOpened): Promise<void> => {
    const { chosen, way } = this.told;
    const [vehicle, trailer] = way === 'trailers' ? [chosen, row.name] : [row.name, chosen];
    await openPair(row.facts, { vehicle, trailer }, this.catalogue.entries);
  };

  private print = (): void => {
    const yard = this.querySelector<HTMLElement>('.yard');
    if (yard) yard.dataset.sheet = 'list';
    print();
    if (yard) delete yard.dataset.sheet;
  };

  private answer() {
    const { told, wishes, search, catalogue, isAnswerable } = this;
    const { entries } = catalogue;
    const other = told.way === 'trailers' ? entries.trailers : entries.vehicles;
    return html`<section class="yard-answer" aria-label="Which ones">
      <p class="paper-only">${toldSaid(told)} ${wishes.length === 0 ? '' : `Only: ${wishesSaid(wishes)}.`} ${new Date().toLocaleDateString('en-US')}</p>
      ${this.narrow.is ? nothing : yardSentence(told, search)}
      ${fold(
        {
          name: 'yard-wishes',
          heading: 'Narrow it down',
          note: wishes.length === 0 ? 'all are asked about' : `${wishes.length} wished`,
        },
        () =>
          html`<yard-wishes .entries=${other.map(({ cells }) => cells)} .wishes=${wishes}></yard-wishes>`,
      )}
      ${
        search.found && isAnswerable
          ? html`<div class=${search.waiting ? 'stale' : ''}><yard-rows .found=${search.found} .whys=${search.whys}></yard-rows></div>
            <ul class="small soft cautions">${search.found.cautions.map((each) => html`<li>${each}</li>`)}</ul>
            <p class="noprint"><button @click=${this.print}>Print this list</button></p>`
          : nothing
      }
    </section>`;
  }

  protected override render() {
    const { told, system, catalogue, search } = this;
    return html`<div class="yard"
        @told-changed=${({ detail }: ToldChanged) => {
          if (detail.told.way !== this.told.way) this.wishes = [];
          this.told = detail.told;
        }}
        @wishes-changed=${({ detail }: WishesChanged) => {
          this.wishes = detail.wishes;
        }}
        @catalogue-changed=${catalogue.look}
        @beside-wanted=${catalogue.wantBeside}
        @pair-opened=${this.open}
        @cell-opened=${({ detail: { pair } }: CellOpened) => openPair(pair.facts, pair, catalogue.entries)}>
      <h1>Yard</h1>
      <div class="yard-sides">
        <yard-told .told=${told} .system=${system} .entries=${this.side}
          .loads=${loadsIn(catalogue.loads)} .answer=${this.narrow.is ? yardSentence(told, search) : undefined}></yard-told>
        ${this.answer()}
      </div>
      ${fold(
        { name: 'yard-matrix', heading: 'Every pair', note: 'as one picture' },
        () =>
          html`<yard-matrix .files=${catalogue.pairs} .system=${system} .people=${peopleIn(told)}></yard-matrix>`,
      )}
      ${fold(
        { name: 'yard-offers', heading: 'On all of that line?', note: 'options by year, and why' },
        () => html`<yard-offers .beside=${catalogue.beside}></yard-offers>`,
      )}
      ${fold(
        {
          name: 'yard-accessories',
          heading: 'Fitted afterwards',
          note: 'what it does to the tongue',
        },
        () =>
          html`<yard-accessories .beside=${catalogue.beside} .meant=${told.way === 'vehicles' ? told.chosen : ''}></yard-accessories>`,
      )}
      ${fold(
        {
          name: 'yard-catalogue',
          heading: 'The catalogue',
          note: catalogue.own.length === 0 ? 'invented' : 'your own',
        },
        () =>
          html`<own-catalogue .own=${catalogue.own} .files=${catalogue.files} .asking=${search.asking}></own-catalogue>`,
      )}
    </div>`;
  }
}

customElements.define('yard-page', YardPage);
