import inventedLoads from 'virtual:loads';
import type { FactsGiven } from '@tarebook/rules/engine';
import type { UnitSystem } from '@tarebook/rules/quantity';
import type { Wish } from '@tarebook/sweep';
import { html, nothing, type PropertyValues } from 'lit';
import '../yard/yard-accessories';
import '../yard/yard.css';
import '../yard/yard-matrix';
import '../yard/yard-offers';
import '../yard/yard-rows';
import '../yard/yard-told';
import '../yard/yard-wishes';
import { CaseFold, fold } from '../counter/case-fold';
import { PlainElement } from '../elements/plain-element';
import { caseAddress } from '../state/address';
import { type Entries, openCatalogue, trailers, vehicles } from '../state/catalogue';
import { houseOf } from '../state/house';
import { keep } from '../state/kept';
import type { LoadRow } from '../state/loads';
import { allOwnFiles, filesOf, type OwnFile, type OwnTexts, pairsOf } from '../state/own-catalogue';
import { pairAsCase, readInYard } from '../yard/as-case';
import type { Beside, YardFound, YardWhy } from '../yard/asked';
import { type YardAsking, yardAsking } from '../yard/asking';
import { OwnCatalogue } from '../yard/own-catalogue';
import {
  factsOf,
  isEnough,
  isRatingOnly,
  nothingTold,
  refusedIn,
  type Told,
  toldSaid,
} from '../yard/told';
import type { CellOpened } from '../yard/yard-matrix';
import type { PairOpened } from '../yard/yard-rows';
import type { ToldChanged } from '../yard/yard-told';
import { type WishesChanged, wishesSaid } from '../yard/yard-wishes';

/** Whoever types is not answered at every key. */
const rests = 150;

/** What was told last, for as long as the window is open. */
let toldLast: Told = nothingTold('trailers');
let wishesLast: readonly Wish[] = [];
let loadsLast: readonly LoadRow[] = inventedLoads;

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
    found: { state: true },
    whys: { state: true },
    notice: { state: true },
    waiting: { state: true },
    own: { state: true },
    entries: { state: true },
    beside: { state: true },
  };
  declare system: UnitSystem;
  declare told: Told;
  declare wishes: readonly Wish[];
  declare found: YardFound | undefined;
  /** Why each of what was found comes out so, by its name, as far as it is told. */
  declare whys: ReadonlyMap<string, YardWhy>;
  declare notice: string;
  declare waiting: boolean;
  /** The dealer's own catalogue, as it is kept here. */
  declare own: readonly OwnFile[];
  declare entries: Entries;
  /** Accessories, offers and loads; undefined until they are read. */
  declare beside: Beside | undefined;
  /** The vehicles and trailers of one's own; another only where they are others. */
  private pairs: OwnTexts | undefined;
  private asking: YardAsking = yardAsking();
  private timer: ReturnType<typeof setTimeout> | undefined;
  private turn = 0;

  constructor() {
    super();
    this.told = toldLast;
    this.wishes = wishesLast;
    this.notice = '';
    this.whys = new Map();
    this.waiting = false;
    this.own = [];
    this.entries = { vehicles, trailers };
  }

  override connectedCallback(): void {
    super.connectedCallback();
    void this.look();
  }

  /** Reads the catalogue that counts here; a device that keeps nothing has the invented one. */
  private look = async (): Promise<void> => {
    this.own = await allOwnFiles().catch(() => []);
    this.pairs = pairsOf(filesOf(this.own));
    if (this.beside || this.own.some(({ file }) => file === 'loads.csv')) void this.readBeside();
    if (
      this.own.length > 0 ||
      this.entries.vehicles !== vehicles ||
      this.entries.trailers !== trailers
    ) {
      this.entries = await openCatalogue();
    }
    const { told, entries } = this;
    const side = told.way === 'trailers' ? entries.vehicles : entries.trailers;
    if (told.chosen !== '' && !side.some(({ name }) => name === told.chosen)) {
      this.told = { ...told, chosen: '' };
    }
  };

  private wantBeside = (): void => {
    if (!this.beside) void this.readBeside();
  };

  /** In a worker of its own that is not needed afterwards. */
  private readBeside = async (): Promise<void> => {
    const { own } = this;
    const reading = yardAsking();
    const read = await reading.beside(filesOf(own)).catch(() => undefined);
    reading.end();
    if (own === this.own) this.beside = read;
  };

  private get loads(): readonly LoadRow[] {
    return this.beside?.loads ?? inventedLoads;
  }

  override disconnectedCallback(): void {
    clearTimeout(this.timer);
    this.asking.end();
    super.disconnectedCallback();
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    const asked = ['told', 'wishes', 'system', 'own'] as const;
    const hasOtherLoads = this.loads !== loadsLast;
    loadsLast = this.loads;
    if (hasOtherLoads || asked.some((each) => changed.has(each))) this.ask();
    toldLast = this.told;
    wishesLast = this.wishes;
  }

  /** An answer never stands beside other figures than it was found for. */
  private ask(): void {
    clearTimeout(this.timer);
    this.turn += 1;
    const { turn } = this;
    const { told, wishes, system } = this;
    if (!isEnough(told) || refusedIn(told).length > 0) {
      this.found = undefined;
      this.waiting = false;
      return;
    }
    this.waiting = true;
    const side = told.way === 'trailers' ? 'vehicles' : 'trailers';
    const chosen = told.chosen === '' ? undefined : ({ side, name: told.chosen } as const);
    const facts = factsOf(told, this.loads);
    this.timer = setTimeout(async () => {
      try {
        const asked = { kind: 'which', facts, chosen, system, wishes } as const;
        const found = await this.asking.ask(
          {
            ...asked,
            house: houseOf('tow-fit'),
            files: this.pairs,
            people: told.aboard.adult + told.aboard.child,
          },
          (whys) => {
            if (turn !== this.turn) return;
            this.whys = new Map([...this.whys, ...whys.map((each) => [each.name, each] as const)]);
          },
        );
        if (turn !== this.turn) return;
        if (found) {
          this.found = found;
          this.whys = new Map();
        }
        this.notice = '';
        this.waiting = false;
      } catch (problem) {
        if (turn !== this.turn) return;
        this.found = undefined;
        this.waiting = false;
        this.notice = problem instanceof Error ? problem.message : String(problem);
      }
    }, rests);
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
    const { told } = this;
    const own =
      told.chosen === ''
        ? told.way === 'trailers'
          ? 'Their vehicle'
          : 'Their trailer'
        : told.chosen;
    const title = told.way === 'trailers' ? `${own} and ${row.name}` : `${row.name} and ${own}`;
    const [vehicle, trailer] =
      told.way === 'trailers' ? [told.chosen, row.name] : [row.name, told.chosen];
    await this.begin(title, row.facts, vehicle, trailer);
  };

  private async begin(
    title: string,
    facts: FactsGiven,
    vehicle: string,
    trailer: string,
  ): Promise<void> {
    const from = readInYard({
      vehicle: this.entries.vehicles.find(({ name }) => name === vehicle),
      trailer: this.entries.trailers.find(({ name }) => name === trailer),
    });
    const text = pairAsCase(title, facts, from);
    const name = `mine-${Date.now().toString(36)}`;
    try {
      await keep({ topic: 'tow-fit', name, text, at: Date.now() });
      location.hash = caseAddress('tow-fit', name);
    } catch {
      const { pack } = await import('../state/link');
      location.hash = `${caseAddress('tow-fit', name)}/${await pack(text)}`;
    }
  }

  private print = (): void => {
    const yard = this.querySelector<HTMLElement>('.yard');
    if (yard) yard.dataset.sheet = 'list';
    print();
    if (yard) delete yard.dataset.sheet;
  };

  private sentence() {
    const { told, found, waiting, notice } = this;
    const refused = refusedIn(told);
    if (refused.length > 0) return html`<p class="say soft">Not read: ${refused.join(', ')}.</p>`;
    if (notice) return html`<p class="error" role="alert">${notice}</p>`;
    if (!isEnough(told)) {
      return html`<p class="say soft">${
        told.way === 'trailers'
          ? 'Tell what they drive, or only what it is rated to pull: one figure is enough.'
          : 'Tell which trailer, or only its own maximum: one figure is enough.'
      }</p>`;
    }
    if (!found) return html`<p class="say soft">Going through the yard …</p>`;
    return html`<div class="say ${waiting ? 'stale' : ''}" role="status">
      <p>${found.sentence}</p>
      ${found.sleeps ? html`<p>${found.sleeps}</p>` : nothing}
      ${found.next ? html`<p class="soft">${found.next}</p>` : nothing}
      ${isRatingOnly(told) ? html`<p class="small soft">Only the rating is told, so each trailer counts at its own maximum, whatever is packed.</p>` : nothing}
      ${told.aboard.adult > 0 ? html`<p class="small soft">${aboardSaid(told)}</p>` : nothing}
    </div>`;
  }

  protected override render() {
    const { told, found, wishes, system, waiting, entries } = this;
    const side = told.way === 'trailers' ? entries.vehicles : entries.trailers;
    const other = told.way === 'trailers' ? entries.trailers : entries.vehicles;
    return html`<div class="yard"
        @told-changed=${({ detail }: ToldChanged) => {
          if (detail.told.way !== this.told.way) this.wishes = [];
          this.told = detail.told;
        }}
        @wishes-changed=${({ detail }: WishesChanged) => {
          this.wishes = detail.wishes;
        }}
        @catalogue-changed=${this.look}
        @beside-wanted=${this.wantBeside}
        @pair-opened=${this.open}
        @cell-opened=${({ detail: { pair } }: CellOpened) =>
          this.begin(
            `${pair.vehicle} and ${pair.trailer}`,
            pair.facts,
            pair.vehicle,
            pair.trailer,
          )}>
      <h1>Yard</h1>
      <div class="yard-sides">
        <yard-told .told=${told} .system=${system} .entries=${side} .loads=${loadsIn(this.loads)}></yard-told>
        <section class="yard-answer" aria-label="Which ones">
          <p class="paper-only">${toldSaid(told)} ${wishes.length === 0 ? '' : `Only: ${wishesSaid(wishes)}.`} ${new Date().toLocaleDateString('en-US')}</p>
          ${this.sentence()}
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
            found && isEnough(told) && refusedIn(told).length === 0
              ? html`<div class=${waiting ? 'stale' : ''}><yard-rows .found=${found} .whys=${this.whys}></yard-rows></div>
                <ul class="small soft cautions">${found.cautions.map((each) => html`<li>${each}</li>`)}</ul>
                <p class="noprint"><button @click=${this.print}>Print this list</button></p>`
              : nothing
          }
        </section>
      </div>
      ${fold(
        { name: 'yard-matrix', heading: 'Every pair', note: 'as one picture' },
        () => html`<yard-matrix .files=${this.pairs} .system=${system}></yard-matrix>`,
      )}
      ${fold(
        { name: 'yard-offers', heading: 'On all of that line?', note: 'options by year, and why' },
        () => html`<yard-offers .beside=${this.beside}></yard-offers>`,
      )}
      ${fold(
        {
          name: 'yard-accessories',
          heading: 'Fitted afterwards',
          note: 'what it does to the tongue',
        },
        () =>
          html`<yard-accessories .beside=${this.beside} .meant=${told.way === 'vehicles' ? told.chosen : ''}></yard-accessories>`,
      )}
      ${fold(
        {
          name: 'yard-catalogue',
          heading: 'The catalogue',
          note: this.own.length === 0 ? 'invented' : 'your own',
        },
        () =>
          html`<own-catalogue .own=${this.own} .files=${filesOf(this.own)} .asking=${this.asking}></own-catalogue>`,
      )}
    </div>`;
  }
}

const aboardSaid = ({ aboard: { adult, child, dog }, load }: Told): string =>
  `Counted: ${adult} at 150 lb${child > 0 ? `, ${child} at 80 lb` : ''}${dog > 0 ? `, ${dog} at 60 lb` : ''}${load === '' ? ', nothing packed' : `, packed for ${load}`}.`;

customElements.define('yard-page', YardPage);
