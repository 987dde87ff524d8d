import { askedOf, type CaseDocument, setValues } from '@tarebook/casebook';
import type { Answer } from '@tarebook/rules/engine';
import { type Along, alongScale, type Stretch } from '@tarebook/rules/engine';
import { show, type UnitSystem } from '@tarebook/rules/quantity';
import { scaleLinear } from 'd3-scale';
import { html, nothing, type PropertyValues, svg } from 'lit';
import { live } from 'lit/directives/live.js';
import { mark } from '../elements/marks';
import { PlainElement } from '../elements/plain-element';
import { houseOver } from '../state/house';
import './heaviest.css';
import { changesTo } from './changes-to';

/** The weight was moved: the case as it then is. */
export class WeightMoved extends CustomEvent<{ write: (doc: CaseDocument) => string }> {
  constructor(write: (doc: CaseDocument) => string) {
    super('weight-moved', { detail: { write }, bubbles: true });
  }
}

/** The line that is moved along, and the case that it was made for. */
type Base = {
  readonly along: Along;
  readonly doc: CaseDocument;
  readonly most: number;
  /** The largest trailer that fits, as the rules reckon it; undefined where they cannot. */
  readonly largest: number | undefined;
};

const width = 600;
const good = (each: Stretch): boolean => each.level === 'ok' || each.level === 'care';

/** So far beyond what is told, or beyond what fits, it can be moved. */
const beyond = 1.15;

/** The weight that decides, to be moved by hand, with marks where the verdict turns. */
export class HeaviestSlider extends PlainElement {
  static override properties = {
    doc: { attribute: false },
    answer: { attribute: false },
    system: { attribute: false },
    at: { state: true },
  };
  /** A case without troubles; undefined while there are some. */
  declare doc: CaseDocument | undefined;
  declare answer: Answer;
  declare system: UnitSystem;
  /** Where it was moved to; undefined: as the case tells it. */
  declare at: number | undefined;
  private base: Base | undefined;
  /** What was written last, so that its own edits begin no new line. */
  private mine = '';
  private wanted: number | undefined;

  /** Only a case that comes in begins a line or puts it back; a move that has not been judged yet stands. */
  protected override willUpdate(changed: PropertyValues<this>): void {
    const { doc } = this;
    if (!changed.has('doc') || !doc || doc.text === this.mine) return;
    if (doc.text === this.base?.doc.text) {
      this.at = undefined;
      return;
    }
    this.base = this.baseOf(doc);
    this.at = undefined;
    this.mine = '';
  }

  private baseOf(doc: CaseDocument): Base | undefined {
    const { topic, asked } = askedOf(doc, doc.topic ? { house: houseOver(doc.topic) } : {});
    const { values } = this.answer;
    const scale = topic.changes?.find(({ kind }) => kind === 'scale');
    const shown = scale?.kind === 'scale' ? values[scale.shown] : undefined;
    const largest = values['largest.trailer']?.hi ?? 0;
    const tops = [shown?.hi ?? 0, largest].filter(Number.isFinite);
    const along = alongScale(topic, { ...asked, units: this.system }, beyond * Math.max(...tops));
    const most = along?.stretches.at(-1)?.to;
    return along && most !== undefined
      ? { along, doc, most, largest: values['largest.trailer']?.lo }
      : undefined;
  }

  private shown(x: number): string {
    const unit = this.base?.along.unit ?? 'lb';
    return show({ lo: x, hi: x }, unit, this.system);
  }

  /** What is moved faster than the page is painted is judged with the next frame. */
  private move = (x: number): void => {
    const waiting = this.wanted !== undefined;
    this.wanted = x;
    this.at = x;
    if (waiting) return;
    requestAnimationFrame(() => {
      const to = this.wanted;
      this.wanted = undefined;
      if (to !== undefined) this.write(to);
    });
  };

  private write(x: number): void {
    const { base } = this;
    if (!base) return;
    const changes = changesTo(base.doc, base.along, x);
    this.dispatchEvent(
      new WeightMoved((doc) => {
        this.mine = setValues(doc, changes);
        return this.mine;
      }),
    );
  }

  private strip({ along, most }: Base, now: number) {
    const { stretches, start } = along;
    const x = scaleLinear([stretches[0]?.from ?? 0, most], [0, width]);
    return svg`<svg class="stretches" viewBox="0 0 ${width} 20" preserveAspectRatio="none" aria-hidden="true">
      ${stretches.map(({ from, to, level }) => svg`<rect class="level-${level}" x=${x(from)} y="6" width=${Math.max(0, x(to) - x(from))} height="8" />`)}
      ${stretches.slice(1).map(({ from }) => svg`<path class="turn" d="M${x(from)} 0V20" />`)}
      ${now === start ? nothing : svg`<path class="told" d="M${x(start)} 2V18" />`}
    </svg>`;
  }

  private list({ along, most }: Base) {
    return html`<ul class="turns">${along.stretches.map(({ from, to, level, words }, i) => {
      const range =
        to === most
          ? `from ${this.shown(from)} up`
          : i === 0
            ? `up to ${this.shown(to)}`
            : `${this.shown(from)} to ${this.shown(to)}`;
      return html`<li class="level-${level}"><span class="word-of">${mark(level)}${words}</span> <span class="num">${range}</span></li>`;
    })}</ul>`;
  }

  /** What vehicle and hitch could pull, where that is not what this trailer comes to. */
  private otherwise(last: Stretch | undefined) {
    const largest = this.largest();
    if (largest === undefined || !last || Math.abs(largest - last.to) < 10) return nothing;
    return largest > last.to
      ? html`<p class="small">Vehicle and hitch could pull ${this.shown(largest)}; this trailer’s own ratings, or what else is said of it, stop it before.</p>`
      : html`<p class="small">The tongue here is an estimate. With the share that the brochure gives it, the largest trailer that fits comes to ${this.shown(largest)}: keep to that until the tongue has been weighed.</p>`;
  }

  private largest(): number | undefined {
    const of = this.base?.largest;
    return of !== undefined && of > 0 && Number.isFinite(of) ? of : undefined;
  }

  protected override render() {
    const { base, answer } = this;
    if (!this.doc)
      return html`<p class="small soft">Once every entry is read, the weight can be moved here.</p>`;
    if (!base)
      return html`<p class="small soft">The weight of the trailer as loaded is not known yet; once it is, it can be moved here.</p>`;
    const { along, most } = base;
    const least = along.stretches[0]?.from ?? 0;
    const now = this.at ?? along.start;
    const last = along.stretches.findLast(good);
    // The stricter of the two counts.
    const heaviest =
      last && Math.min(last.to, Math.floor((this.largest() ?? last.to) / along.step) * along.step);
    const { words } = answer;
    return html`<div class="heaviest">
      <label><span>${along.label}: <strong class="num">${this.shown(now)}</strong></span>
        <input type="range" min=${least} max=${most} step=${along.step} .value=${live(String(now))}
          aria-valuetext="${this.shown(now)}: ${words}"
          @input=${({ target }: Event) => {
            if (target instanceof HTMLInputElement) this.move(Number(target.value));
          }} /></label>
      ${this.strip(base, now)}
      ${this.list(base)}
      <div class="acts">
        ${heaviest ? html`<button type="button" @click=${() => this.move(heaviest)}>The heaviest that fits: ${this.shown(heaviest)}</button>` : html`<p class="small">Nothing from ${this.shown(least)} up fits.</p>`}
        ${now === along.start ? nothing : html`<button type="button" @click=${() => this.move(along.start)}>Back to ${this.shown(along.start)}</button>`}
      </div>
      ${this.otherwise(last)}
      <p class="small soft">It moves the whole trailer in one proportion: its empty weight, what is packed in it, its tanks and its tongue, which keeps its share. Its ratings stay. The facts of the case follow, and Undo brings them back.</p>
    </div>`;
  }
}

customElements.define('heaviest-slider', HeaviestSlider);
