import type { Step, Topic, Trace } from '@tarebook/rules/engine';
import { show, type UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing, type TemplateResult } from 'lit';
import { sourceNote } from './cited';
import { PlainElement } from './plain-element';

/** The working, opened step by step down to facts and numbers of the trade. */
export class WorkingSteps extends PlainElement {
  static override properties = {
    trace: { attribute: false },
    topic: { attribute: false },
    system: { attribute: false },
    open: { state: true },
  };
  declare trace: Trace;
  declare topic: Topic;
  declare system: UnitSystem;
  /** Paths of the steps that are open; only those are drawn. */
  declare open: ReadonlySet<string>;

  constructor() {
    super();
    this.open = new Set();
  }

  private toggled(path: string, event: Event): void {
    if (!(event.target instanceof HTMLDetailsElement)) return;
    const next = new Set(this.open);
    if (event.target.open) next.add(path);
    else next.delete(path);
    this.open = next;
  }

  private below(step: Step, path: string): TemplateResult {
    const through = this.through(step);
    const last = through.at(-1) ?? step;
    const inner = last.from.filter((name) => this.trace.steps[name]);
    const deciders = (last.decidedBy ?? []).filter((name) => this.trace.steps[name]);
    return html`
      ${step.source ? html`<p>${sourceNote(step.source)}</p>` : nothing}
      ${through.map(({ label, source }) => html`<p><span class="soft">by</span> ${label} ${source ? sourceNote(source) : nothing}</p>`)}
      ${inner.length === 0 ? nothing : html`<ul>${inner.map((name) => this.step(name, path))}</ul>`}
      ${
        deciders.length === 0
          ? nothing
          : html`<p class="soft small">Which way it is reckoned is decided by</p>
            <ul>${deciders.map((name) => this.step(name, `${path}/by`))}</ul>`
      }
    `;
  }

  /** The formulas a step came down to: each has the working of the one before it. */
  private through(step: Step): readonly Step[] {
    const [name, ...others] = step.from;
    const only = name === undefined || others.length > 0 ? undefined : this.trace.steps[name];
    if (only?.kind !== 'formula' || only.working !== step.working) return [];
    return [only, ...this.through(only)];
  }

  /** A number in the reader's units; anything else as the trace says it. */
  private shown({ ends, value }: Step): string {
    const known = ends && Number.isFinite(ends.lo) && Number.isFinite(ends.hi);
    return this.system === 'metric' && known ? show(ends, ends.unit, 'metric') : value;
  }

  private step(name: string, above: string): TemplateResult | typeof nothing {
    const step = this.trace.steps[name];
    if (!step) return nothing;
    const path = `${above}/${name}`;
    const value = this.shown(step);
    const line = html`${step.label}: <strong class="num">${value}</strong>${
      step.working && step.working !== step.value
        ? html`<br /><span class="soft num small">= ${step.working}</span>`
        : nothing
    }`;
    const leaf = step.from.length === 0 && (step.decidedBy ?? []).length === 0;
    if (leaf) {
      return html`<li>
        ${line}
        ${step.readFrom ? html`<span class="soft small">read from: ${step.readFrom}</span>` : nothing}
        ${step.source ? sourceNote(step.source) : nothing}
      </li>`;
    }
    return html`<li>
      <details @toggle=${(event: Event) => this.toggled(path, event)}>
        <summary>${line}</summary>
        ${this.open.has(path) ? this.below(step, path) : nothing}
      </details>
    </li>`;
  }

  /** The results a reader looks for; where the question has none, what was asked of the rules. */
  private tops(): readonly string[] {
    const { steps } = this.trace;
    const known = this.topic.headline.filter((name) => {
      const ends = steps[name]?.ends;
      return steps[name] && (!ends || (Number.isFinite(ends.lo) && Number.isFinite(ends.hi)));
    });
    return known.length > 0 ? known : (steps.verdict?.from ?? []);
  }

  protected override render() {
    return html`<ul class="steps">${this.tops().map((name) => this.step(name, ''))}</ul>`;
  }
}

customElements.define('working-steps', WorkingSteps);
