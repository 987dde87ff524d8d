import { html } from 'lit';
import { RestingElement } from '../elements/resting-element';
import type { CaseView, Section } from './case-view';
import { whatWouldChange } from './change';
import { reason } from './reason';
import { sources, working } from './standing';

const parts = {
  reasoning: [reason, working, whatWouldChange],
  sources: [sources],
} as const satisfies Readonly<Record<string, readonly Section[]>>;

export type Part = keyof typeof parts;

/** The long sections below the limits: nobody watches them while typing, so they follow it. */
export class CaseRest extends RestingElement {
  static override properties = {
    view: { attribute: false },
    which: { attribute: false },
  };
  declare view: CaseView;
  declare which: Part;

  protected override render() {
    return html`${parts[this.which].map((section) => section(this.view))}`;
  }
}

customElements.define('case-rest', CaseRest);
