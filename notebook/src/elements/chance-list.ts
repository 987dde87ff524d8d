import { askedOf, type CaseDocument } from '@tarebook/casebook';
import type { LimitAnswer, Spread } from '@tarebook/rules/engine';
import { showNumber, type UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing } from 'lit';
import type { SpreadFigure } from '../drawings/figure';
import '../drawings/spread-drawing';
import { houseOver } from '../state/house';
import { type SpreadRun, startSpread } from '../state/spread';
import { PlainElement } from './plain-element';

type Chance = { readonly chance: number; readonly error: number };

/** “24 in 100, give or take 0.1”; what never or always happened is said as that. */
function inWords({ chance, error }: Chance): string {
  if (chance === 0) return 'in none of the draws';
  if (chance === 1) return 'in every draw';
  const share = chance < 0.001 ? 'under 1 in 1,000' : `${showNumber(chance * 100, 1)} in 100`;
  return chance < 0.001 ? share : `${share}, give or take ${showNumber(error * 100, 1)}`;
}

/** How likely each limit is gone over, drawn beside the page when a person asks for it. */
export class ChanceList extends PlainElement {
  static override properties = {
    doc: { attribute: false },
    limits: { attribute: false },
    system: { attribute: false },
    done: { state: true },
    spread: { state: true },
    failed: { state: true },
  };
  declare doc: CaseDocument | undefined;
  declare limits: readonly LimitAnswer[];
  declare system: UnitSystem;
  /** The share of the draws that is done; undefined while nothing is drawn. */
  declare done: number | undefined;
  declare spread: Spread | undefined;
  declare failed: string;
  private running: SpreadRun | undefined;
  private drawnFrom = '';

  protected override willUpdate(): void {
    const text = this.doc?.text ?? '';
    if (text === this.drawnFrom) return;
    this.drawnFrom = text;
    this.stop();
    this.spread = undefined;
    this.failed = '';
  }

  override disconnectedCallback(): void {
    this.stop();
    super.disconnectedCallback();
  }

  private stop = (): void => {
    this.running?.cancel();
    this.running = undefined;
    this.done = undefined;
  };

  private draw = async (): Promise<void> => {
    const { doc } = this;
    if (!doc?.topic) return;
    this.done = 0;
    const house = houseOver(doc.topic)[0];
    const { asked } = askedOf(doc);
    const running = startSpread({ topic: doc.topic.id, asked, house }, (share) => {
      this.done = share;
    });
    this.running = running;
    try {
      const spread = await running.result;
      if (this.running === running) this.spread = spread;
    } catch (problem) {
      if (this.running === running) {
        this.failed = problem instanceof Error ? problem.message : 'The chances could not be had.';
      }
    }
    if (this.running === running) this.stop();
  };

  private figureOf(spread: Spread): SpreadFigure | undefined {
    const chance = ({ id }: LimitAnswer) => spread.limits[id]?.chance ?? 0;
    const moving = this.limits.filter(({ id }) => spread.densities[id]);
    const [open] = moving.toSorted((a, b) => Math.abs(chance(a) - 0.5) - Math.abs(chance(b) - 0.5));
    const density = open && spread.densities[open.id];
    if (!open || !density) return undefined;
    const { lo, hi, counts, unit } = density;
    const step = (hi - lo) / counts.length;
    const bins = counts.map((count, i) => ({
      from: lo + i * step,
      to: lo + (i + 1) * step,
      count,
    }));
    const at = open.limit.lo === open.limit.hi ? open.limit.lo : undefined;
    return {
      kind: 'spread',
      title: open.label,
      x: { label: open.label, unit },
      bins,
      ...(at !== undefined && Number.isFinite(at) && { limit: { label: 'limit', at } }),
    };
  }

  private found(spread: Spread) {
    const figure = this.figureOf(spread);
    const told = this.limits.flatMap(({ id, label }) => {
      const chance = spread.limits[id];
      return chance === undefined ? [] : [{ label, chance }];
    });
    return html`
      <ul>${told.map(
        ({ label, chance }) =>
          html`<li>${label}: ${chance === null ? 'cannot be said, a fact it rests on is not known' : html`over ${inWords(chance)}`}.</li>`,
      )}</ul>
      ${figure ? html`<spread-drawing .figure=${figure} .system=${this.system}></spread-drawing>` : nothing}
      <p class="small soft">From ${showNumber(spread.draws, 0)} draws, seed ${spread.seed}: a–b drawn evenly, a ± b as a triangle with its peak at a. A chance is no leave to go over a rating.</p>`;
  }

  protected override render() {
    const { done, spread, failed, doc } = this;
    return html`
      ${
        done === undefined
          ? html`<p class="noprint"><button ?disabled=${!doc} @click=${this.draw}>Draw the ranges 100,000 times</button></p>`
          : html`<p class="noprint"><progress max="1" .value=${done} aria-label="Draws done"></progress>
              <button @click=${this.stop}>Stop drawing</button></p>`
      }
      <div role="status">${failed ? html`<p class="error">${failed}</p>` : nothing}${spread ? this.found(spread) : nothing}</div>`;
  }
}

customElements.define('chance-list', ChanceList);
