import type { Answer, LimitAnswer } from '@tarebook/rules/engine';
import { shownUnit, type UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing } from 'lit';
import '../elements/limit-rows';
import { mark } from '../elements/marks';
import { PlainElement } from '../elements/plain-element';
import { sentenceBeneath } from '../state/beneath';
import { judge } from '../state/judged';
import { levelOf } from '../state/level';
import { readDocument } from '../state/reading';
import type { Shown } from './channel';
import { type Movable, movableIn } from './movable';
import { asMoved } from './moved-value';
import { foundWords, questionOf } from './predict';
import type { Walked } from './record';

export class FactMoved extends CustomEvent<Shown['moved']> {
  constructor(moved: Shown['moved']) {
    super('fact-moved', { detail: moved, bubbles: true });
  }
}

/** A fact or a row of an open case, moved: what comes out then. The case itself stays as it is. */
export class WhatIf extends PlainElement {
  static override properties = {
    walked: { attribute: false },
    system: { attribute: false },
    fact: { state: true },
    wrong: { state: true },
    outcome: { state: true },
  };
  declare walked: Walked;
  declare system: UnitSystem;
  declare fact: string;
  declare wrong: string;
  /** What comes out with the fact moved, and of which case that is. */
  declare outcome:
    | { readonly of: string; readonly says: string; readonly text: string }
    | undefined;

  constructor() {
    super();
    this.fact = '';
    this.wrong = '';
  }

  /** What was told and can be moved. */
  private get told(): readonly Movable[] {
    return movableIn(this.walked.doc);
  }

  private move(event: Event): void {
    event.preventDefault();
    const { doc } = this.walked;
    const fact = this.told.find(({ key }) => key === this.fact) ?? this.told[0];
    const value = this.querySelector<HTMLInputElement>('#moved-to')?.value.trim() ?? '';
    if (!fact) return;
    if (value === '') {
      this.wrong = `Nothing is written for ${fact.label}; write a value such as ${fact.value || 'the one on the label'}.`;
      return;
    }
    const unit = fact.unit === '' ? '' : shownUnit(fact.unit, this.system);
    const written = asMoved(value, unit);
    const text = fact.write(readDocument(doc.text), written);
    const { answer, current, doc: read } = judge(text, undefined, this.system);
    if (!answer || !current) {
      this.wrong = read.troubles[0]?.says ?? `“${value}” cannot be read for ${fact.label}.`;
      return;
    }
    this.wrong = '';
    const says = `What if ${fact.said} were ${written}?`;
    this.outcome = { of: doc.text, says, text };
    this.dispatchEvent(new FactMoved({ text, says }));
  }

  private back = (): void => {
    this.outcome = undefined;
    this.dispatchEvent(new FactMoved(undefined));
  };

  protected override render() {
    const { told, wrong, walked, system } = this;
    const first = told[0];
    if (!first) return nothing;
    const now = told.find(({ key }) => key === this.fact) ?? first;
    const then = this.outcome?.of === walked.doc.text ? this.outcome : undefined;
    return html`<h3 class="noprint">What if</h3>
      <form class="turn noprint" @submit=${this.move} novalidate>
        <label>Fact
          <select @change=${({ target }: Event) => {
            if (target instanceof HTMLSelectElement) this.fact = target.value;
          }}>${told.map(({ key, label }) => html`<option value=${key} ?selected=${key === now.key}>${label}</option>`)}</select>
        </label>
        <label>were, instead of ${now.value || 'nothing said'}
          <input id="moved-to" autocomplete="off" aria-invalid=${wrong ? 'true' : 'false'} />
        </label>
        <button>See</button>
        ${then ? html`<button type="button" @click=${this.back}>Back to the case</button>` : nothing}
        <p class="error" role="alert">${wrong}</p>
      </form>
      <div role="status">${then ? movedRead(then, walked, system) : nothing}</div>`;
  }
}

/** The limit that runs out first, as a bar; undefined where none does. */
export function firstLimit({ limits, binding }: Answer, system: UnitSystem, before?: LimitAnswer) {
  const limit = limits.find(({ id }) => id === binding);
  if (!limit) return undefined;
  const rows = [{ limit, ...(before && { before }) }];
  return html`<limit-rows .rows=${rows} .system=${system}></limit-rows>`;
}

/** What comes out with a fact moved, and what came out before, as both windows show it. */
export function movedRead(
  moved: NonNullable<Shown['moved']>,
  { answer: filed, question: asked }: Walked,
  system: UnitSystem,
) {
  const { doc, answer } = judge(moved.text, undefined, system);
  if (!answer) return nothing;
  const level = doc.topic ? levelOf(doc.topic.outcomes, answer.outcome) : 'unknown';
  const question = questionOf(doc, answer);
  return html`<p class="what-if">${moved.says}</p>
    <section class="verdict level-${level}">
      ${mark(level)}
      <p class="word">${answer.words.charAt(0).toUpperCase()}${answer.words.slice(1)}</p>
      <p>${sentenceBeneath(doc.topic, answer, system)}</p>
    </section>
    ${
      question.kind === 'number'
        ? html`<p>${question.label}: <strong class="num">${foundWords(question, system)}</strong>${
            asked.kind === 'number' && asked.result === question.result
              ? `, and before ${foundWords(asked, system)}`
              : ''
          }</p>`
        : nothing
    }
    ${
      firstLimit(
        answer,
        system,
        filed.limits.find(({ id, state }) => id === answer.binding && state !== 'not-asked'),
      ) ?? nothing
    }
    <p>Before: ${filed.words}.</p>`;
}

customElements.define('what-if', WhatIf);
