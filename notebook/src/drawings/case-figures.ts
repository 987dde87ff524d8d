import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing, type TemplateResult } from 'lit';
import { PlainElement } from '../elements/plain-element';
import { figuresOf } from './all';
import type { Drawn, Figure, FiguresOf } from './figure';

/** Each kind of drawing is read when the first of its kind is shown. */
const kinds: Readonly<Record<Figure['kind'], () => Promise<unknown>>> = {
  rig: () => import('./rig-drawing'),
  curve: () => import('./curve-drawing'),
  spread: () => import('./spread-drawing'),
};

/** The drawings of a case, whatever its topic; a topic without drawings leaves no gap. */
export class CaseFigures extends PlainElement {
  static override properties = {
    drawn: { attribute: false },
    system: { attribute: false },
    make: { state: true },
    failed: { state: true },
  };
  declare drawn: Drawn;
  declare system: UnitSystem;
  declare make: FiguresOf | undefined;
  declare failed: boolean;
  private topic: string | undefined;

  protected override willUpdate(): void {
    const { topic } = this.drawn.answer;
    if (topic === this.topic) return;
    this.topic = topic;
    this.make = undefined;
    const read = Object.hasOwn(figuresOf, topic) ? figuresOf[topic] : undefined;
    read?.().then(
      (make) => {
        if (topic === this.topic) this.make = make;
      },
      () => {
        this.failed = true;
      },
    );
  }

  private one(figure: Figure): TemplateResult {
    kinds[figure.kind]().catch(() => {
      this.failed = true;
    });
    switch (figure.kind) {
      case 'rig':
        return html`<rig-drawing .figure=${figure} .system=${this.system}></rig-drawing>`;
      case 'curve':
        return html`<curve-drawing .figure=${figure} .system=${this.system}></curve-drawing>`;
      case 'spread':
        return html`<spread-drawing .figure=${figure} .system=${this.system}></spread-drawing>`;
    }
  }

  protected override render() {
    if (this.failed) {
      return html`<p class="small soft">The drawing could not be read; the limits below say the same in figures.</p>`;
    }
    const figures = this.make?.(this.drawn) ?? [];
    return figures.length === 0 ? nothing : figures.map((figure) => this.one(figure));
  }
}

customElements.define('case-figures', CaseFigures);
