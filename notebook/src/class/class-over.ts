import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing } from 'lit';
import { PlainElement } from '../elements/plain-element';
import type { OwnPhone } from './own-phone';
import type { PassedOn } from './passed-on';
import { compared, foundWords } from './predict';
import { Walks, walking } from './walks';

/** What a phone shows once the class is over: what was said there, and what came out. */
export class ClassOver extends PlainElement {
  static override properties = {
    passed: { attribute: false },
    phone: { attribute: false },
    system: { attribute: false },
  };
  declare passed: PassedOn | undefined;
  declare phone: OwnPhone;
  declare system: UnitSystem;
  private readonly walks = new Walks(this);

  private one({ cases }: PassedOn, at: number) {
    const { system, phone } = this;
    const each = cases[at];
    const said = phone.said(at);
    if (!each || !said) return nothing;
    const walked = this.walks.of(each);
    if (walked === 'coming') return html`<li>${each.title}: ${walking}</li>`;
    if (!walked) return nothing;
    const { met, says } = compared(said.plain, walked.question, system);
    return html`<li><strong>${each.title}</strong><br />You said ${said.handed.said}. It came out: ${foundWords(walked.question, system)}. ${met ? 'Met' : 'Not met'}: ${says}.</li>`;
  }

  protected override render() {
    const { passed, phone } = this;
    const learner = passed?.learners[phone.me ?? -1];
    const given = passed?.cases.flatMap((_, at) => (phone.said(at) ? [at] : [])) ?? [];
    return html`<h1 tabindex="-1">The class is over</h1>
      <p role="status">${learner === undefined ? '' : `Thank you, ${learner}. `}How it went is in the trainer’s window. You can close this page.</p>
      ${
        passed && given.length > 0
          ? html`<h2>What you said here</h2><ol class="said-here">${given.map((at) => this.one(passed, at))}</ol>`
          : nothing
      }`;
  }
}

customElements.define('class-over', ClassOver);
