import type { Formula, Topic } from '@tarebook/rules/engine';
import { html, nothing, type PropertyValues } from 'lit';
import { unsafeHTML } from 'lit/directives/unsafe-html.js';
import { PlainElement } from '../elements/plain-element';
import { formulaMath } from './mathml';
import { legendOf } from './names';
import { nameShown, sourceShown } from './names-shown';

/** Those that wait to come near to what is in sight. */
const waiting = new IntersectionObserver(
  (seen) => {
    for (const { target, isIntersecting } of seen) {
      if (isIntersecting && target instanceof RulesFormula) target.draw();
    }
  },
  { rootMargin: '1000px' },
);

/** Those that are set, which a turned phone or a larger type makes wider than the page. */
const widths = new ResizeObserver((seen) => {
  for (const { target } of seen) if (target instanceof RulesFormula) target.look();
});

/**
 * One formula: what it is called, set as mathematics, what its letters stand for, by which source. A
 * topic has hundreds, whose mathematics take seconds to lay out: one is set once it is near.
 */
export class RulesFormula extends PlainElement {
  static override properties = {
    topic: { attribute: false },
    name: { attribute: false },
    formula: { attribute: false },
    near: { state: true },
  };
  declare topic: Topic;
  /** The id of the formula. */
  declare name: string;
  declare formula: Formula;
  declare near: boolean;

  constructor() {
    super();
    this.near = false;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    if (!this.near) waiting.observe(this);
    addEventListener('beforeprint', this.drawAll);
  }

  override disconnectedCallback(): void {
    waiting.unobserve(this);
    widths.unobserve(this);
    removeEventListener('beforeprint', this.drawAll);
    super.disconnectedCallback();
  }

  draw(): void {
    waiting.unobserve(this);
    this.near = true;
  }

  private drawAll = (): void => {
    this.draw();
    this.performUpdate();
  };

  protected override updated(changed: PropertyValues<this>): void {
    if (this.near && (changed.has('near') || changed.has('formula'))) widths.observe(this);
  }

  /** A formula too wide for the page can be scrolled, by keyboard too. */
  look(): void {
    const math = this.querySelector<HTMLElement>('.math');
    if (!math) return;
    if (math.scrollWidth > math.clientWidth) math.tabIndex = 0;
    else math.removeAttribute('tabindex');
  }

  private math() {
    const { name, near, formula } = this;
    if (!near) return html`<div class="math"></div>`;
    const { is, unit } = formula;
    try {
      return html`<div class="math" role="group" aria-label="Formula">${unsafeHTML(formulaMath(name, is, unit))}</div>`;
    } catch {
      return html`<p><code>${is}</code></p>`;
    }
  }

  private legend() {
    const { topic, formula } = this;
    return html`<ul class="small">${legendOf(topic, formula.is).map(
      (named) =>
        html`<li>${nameShown(topic, named.id)} <span class="soft">(<code>${named.id}</code>, ${named.kind}, ${named.unit})</span></li>`,
    )}</ul>
      <p class="small">As written in the rules: <code>${formula.is}</code></p>
      <p>${sourceShown(formula.source)}</p>`;
  }

  protected override render() {
    const { name, formula } = this;
    const { label, unit } = formula;
    return html`<div class="formula" role="group" id=${`formula-${name}`} tabindex="-1" aria-label=${label}>
      <h4>${label}${unit === '' || unit === '1' || unit === 'yes-no' ? nothing : html` <span class="unit">${unit}</span>`}</h4>
      ${this.math()}
      <details>
        <summary class="small">What stands in it, and by which source</summary>
        ${this.legend()}
      </details>
    </div>`;
  }
}

customElements.define('rules-formula', RulesFormula);
