import { html, nothing, type PropertyValues } from 'lit';
import type { Open } from '../elements/known-said';
import { mark } from '../elements/marks';
import { PlainElement } from '../elements/plain-element';
import { isComing, type Ticket, type TicketFigure } from '../state/ticket';
import { standAtTheFoot } from './at-the-foot';

/** Who listens is told once the verdict has settled, not at every key. */
const settled = 800;

export type Act = 'say' | 'copy' | 'send';

/** One of the three ways out of a ticket was chosen. */
export class TicketActed extends CustomEvent<{ act: Act }> {
  constructor(act: Act) {
    super('ticket-acted', { detail: { act }, bubbles: true });
  }
}

/** A field that cannot be read is to be shown. */
export class MendAsked extends CustomEvent<{ place: string }> {
  constructor(place: string) {
    super('mend-asked', { detail: { place }, bubbles: true });
  }
}

const acts: readonly (readonly [Act, string])[] = [
  ['say', 'Say'],
  ['copy', 'Copy'],
  ['send', 'Send'],
];

const figureWords: Readonly<Record<TicketFigure['of'], string>> = {
  left: 'left',
  over: 'over',
  asked: '?',
};

/** The answer at a glance: a word with its shape, one large figure, one sentence, and how it leaves. */
export class CaseTicket extends PlainElement {
  static override properties = {
    ticket: { attribute: false },
    of: { attribute: false },
    about: { attribute: false },
    counted: { attribute: false },
    house: { attribute: false },
    said: { attribute: false },
    spoken: { state: true },
  };
  declare ticket: Ticket;
  /** The text it is of. */
  declare of: Open;
  /** What it is about, and as of which day. */
  declare about: string;
  /** Loads that were taken by name, as they are said. */
  declare counted: string;
  /** By whose own numbers it was reckoned. */
  declare house: string;
  /** What was last done with it. */
  declare said: string;
  declare spoken: string;
  private timer: ReturnType<typeof setTimeout> | undefined;
  private leaveFoot: (() => void) | undefined;

  private inWords(): string {
    const { ticket } = this;
    if (ticket.kind === 'verdict') return `${ticket.word}. ${ticket.sentence}`;
    return `Not read: ${ticket.refused.map(({ label }) => label).join(', ')}.`;
  }

  protected override firstUpdated(): void {
    const ticket = this.querySelector('.ticket');
    if (ticket) this.leaveFoot = standAtTheFoot(ticket);
  }

  protected override updated(changed: PropertyValues<this>): void {
    if (!changed.has('ticket')) return;
    // Only what cannot be said needs it; it draws what was handed to it before it came.
    if (this.ticket.kind === 'verdict' && this.ticket.ask) {
      void import('../elements/known-said').catch(() => undefined);
    }
    const says = this.inWords();
    clearTimeout(this.timer);
    if (says === this.spoken || isComing(this.ticket)) return;
    this.timer = setTimeout(() => {
      this.spoken = says;
    }, settled);
  }

  override disconnectedCallback(): void {
    clearTimeout(this.timer);
    this.leaveFoot?.();
    super.disconnectedCallback();
  }

  private figure({ number, unit, of }: TicketFigure) {
    const after = of === 'asked' ? nothing : html` ${figureWords[of]}`;
    return html`<p class="big"><span class="num">${number}</span><span class="unit">${unit}${after}</span>${
      of === 'asked' ? html`<span class="num">?</span>` : nothing
    }</p>`;
  }

  private verdict(ticket: Ticket & { kind: 'verdict' }) {
    const { ask, figure, level, word, sentence } = ticket;
    return html`
      <p class="word">${mark(level)}<span>${word}</span></p>
      ${figure ? this.figure(figure) : nothing}
      ${ask ? html`<known-said .of=${this.of}></known-said>` : nothing}
      <p class="one">${ask ? html`${ask.ask} <span class="soft">${ask.says}</span>` : sentence}</p>
      <div class="ticket-acts noprint">
        ${acts.map(
          ([act, words]) =>
            html`<button type="button" @click=${() => this.dispatchEvent(new TicketActed(act))}>${words}</button>`,
        )}
      </div>
      <p class="acted small soft">${this.said}</p>`;
  }

  private unread(ticket: Ticket & { kind: 'unread' }) {
    const { refused } = ticket;
    return html`
      <p class="word">${mark('unknown')}<span>Not read</span></p>
      ${
        refused.length === 0
          ? html`<p class="one">The case holds something that cannot be read; it is told above.</p>`
          : html`<ul class="one">${refused.map(
              ({ label, says, fact, row, column }) => html`<li>
                <button type="button" class="quiet" @click=${() =>
                  this.dispatchEvent(
                    new MendAsked(row === undefined ? fact : `${fact}.${row}.${column ?? ''}`),
                  )}>${label}</button>
                <span class="soft">${says}</span></li>`,
            )}</ul>`
      }`;
  }

  protected override render() {
    const { ticket, about, counted, house, spoken } = this;
    const level = ticket.kind === 'verdict' ? ticket.level : 'unknown';
    return html`
      <section class="ticket level-${level} ${isComing(ticket) ? 'is-coming' : ''}" aria-label="Verdict" tabindex="-1">
        <p class="about small soft"><span>${about}</span></p>
        ${ticket.kind === 'verdict' ? this.verdict(ticket) : this.unread(ticket)}
        ${counted && ticket.kind === 'verdict' ? html`<p class="counted small">Counted in: ${counted}.</p>` : nothing}
        ${house && ticket.kind === 'verdict' ? html`<p class="rests small soft">${house}</p>` : nothing}
      </section>
      <p class="hidden" aria-live="polite">${spoken ?? ''}</p>
    `;
  }
}

customElements.define('case-ticket', CaseTicket);
