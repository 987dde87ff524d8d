import { html, nothing } from 'lit';
import './reader.css';
import '../drawings/case-figures';
import '../elements/change-list';
import { againstOf } from '@tarebook/rules/engine';
import { figuresOf } from '../drawings/all';
import { leftOf } from '../elements/figures';
import { limitBar } from '../elements/limit-bar';
import { mark, stateWords } from '../elements/marks';
import { PlainElement } from '../elements/plain-element';
import { printCase } from '../elements/print-asked';
import { pageAddress } from '../elements/share-case';
import { type AnsweredView, openOf } from '../sections/case-view';
import { limitRowsOf } from '../sections/limits';
import { partsOf } from '../sections/parts';
import { written } from '../sections/written';
import { barOf } from '../state/bar';
import { linkFor } from '../state/link';
import { ownName } from '../state/link-name';
import { nextSteps, type Reason, reasonsOf } from '../state/reasons';
import type { Ticket } from '../state/ticket';
import '../elements/known-said';
import './ask-back';
import './back-here';

/** The face that belongs to the counter is asked for. */
export class FaceTurned extends Event {
  constructor() {
    super('face-turned', { bubbles: true });
  }
}

/**
 * A case as somebody reads it who asked: the verdict, why in three reasons, one picture, what to do
 * next, and what was asked back.
 */
export class ReaderFace extends PlainElement {
  static override properties = {
    view: { attribute: false },
    said: { state: true },
    told: { state: true },
  };
  declare view: AnsweredView;
  declare said: string;
  /** What printing waits for. */
  declare told: string;

  constructor() {
    super();
    this.said = '';
    this.told = '';
  }

  private sendBack = async (event: Event): Promise<void> => {
    event.stopPropagation();
    const { doc, name } = this.view;
    const link = await linkFor(doc, ownName(name), pageAddress());
    if (!link) {
      this.said = 'This is too long for a link; print the page and send that.';
      return;
    }
    try {
      if (navigator.maxTouchPoints > 0 && navigator.share) {
        await navigator.share({ title: doc.front.title, url: link.href });
        this.said = 'Handed on.';
        return;
      }
      await navigator.clipboard.writeText(link.href);
      this.said = 'The link with your answers is copied: paste it into a message to whoever asked.';
    } catch {
      this.said = `Copy this link into a message to whoever asked: ${link.href}`;
    }
  };

  private tell = (says: string): void => {
    this.told = says;
  };

  private verdict(ticket: Ticket) {
    if (ticket.kind === 'unread') {
      const labels = ticket.refused.map(({ label }) => label).join(', ');
      return html`<section class="ticket reader-ticket level-unknown" aria-label="Verdict">
        <p class="word">${mark('unknown')}<span>Not read</span></p>
        <p class="one">${labels === '' ? 'Something in this case cannot be read.' : `${labels}: this cannot be read as it stands.`}</p>
      </section>`;
    }
    const { view } = this;
    const { level, word, figure, sentence } = ticket;
    return html`<section class="ticket reader-ticket level-${level}" aria-label="Verdict">
      <p class="word">${mark(level)}<span>${word}</span></p>
      ${
        figure && figure.of !== 'asked'
          ? html`<p class="big"><span class="num">${figure.number}</span><span class="unit">${figure.unit} ${figure.of}</span></p>`
          : nothing
      }
      ${level === 'unknown' && view.topic ? html`<known-said .of=${openOf(view.topic, view)}></known-said>` : nothing}
      <p class="one">${sentence}</p>
      ${this.first(sentence)}
    </section>`;
  }

  /** What to do first, where the sentence does not say it. */
  private first(sentence: string) {
    const [step] = nextSteps(this.view.answer);
    if (!step || sentence.includes(step.do)) return nothing;
    return html`<p class="first"><strong>First:</strong> ${step.do}</p>`;
  }

  private reason(reason: Reason) {
    const { view } = this;
    if (reason.kind === 'finding') {
      const { level, wrong, because, says } = reason.finding;
      return html`<li class="level-${level}"><p>${mark(level)}<strong>${wrong || says}</strong> ${because}</p></li>`;
    }
    const { limit } = reason;
    const row = limitRowsOf(view).find((each) => each.limit.id === limit.id);
    const against = againstOf(limit, view.system).says;
    return html`<li class="level-${limit.state}">
      <p>${mark(limit.state)}<span class="hidden">${stateWords[limit.state]}: </span><strong>${limit.label}: ${leftOf(limit, view.system)}.</strong>
        <span class="soft">${against}</span></p>
      ${limitBar(barOf(limit, row?.empty))}
    </li>`;
  }

  private next(ticket: Ticket) {
    const { answer, doc, current, system } = this.view;
    const steps = nextSteps(answer);
    const level = ticket.kind === 'verdict' ? ticket.level : 'unknown';
    const turns = level === 'stop' || level === 'care' || level === 'if';
    return html`<section aria-label="What to do next">
      <h2>What to do next</h2>
      ${steps.length > 0 ? html`<ul>${steps.map(({ label, do: what }) => html`<li><span class="soft">${label}:</span> ${what}</li>`)}</ul>` : nothing}
      ${
        turns
          ? html`<div class="would-change"><h3>What would change it</h3><change-list .doc=${current ? doc : undefined} .system=${system} .untried=${true}></change-list></div>`
          : nothing
      }
      ${
        steps.length === 0 && !turns
          ? html`<p>${level === 'unknown' ? 'Answer what is asked of you, or ask whoever sent this.' : 'Nothing has to be changed. Read the cautions below before you set out.'}</p>`
          : nothing
      }
    </section>`;
  }

  private values(): Readonly<Record<string, string>> {
    return Object.fromEntries(
      this.view.doc.blocks.flatMap((block) =>
        block.kind === 'facts' ? block.rows.map(({ id, value }) => [id, value]) : [],
      ),
    );
  }

  protected override render() {
    const { view, said } = this;
    const { doc, answer, topic, ticket, system, asFiled, name } = view;
    if (!ticket) return nothing;
    const { question, reason } = partsOf(doc.blocks);
    const level = ticket.kind === 'verdict' ? ticket.level : 'unknown';
    const asks = level === 'unknown' || level === 'if';
    return html`<div class="reader">
      <div class="reader-head">
        <p class="soft small">${topic.title} · as of ${answer.asOf}</p>
        <h1>${doc.front.title}</h1>
        ${question.length > 0 ? html`<div class="reader-asked">${written(view, question.slice(0, 1))}</div>` : nothing}
      </div>
      <div class="reader-said">
        ${this.verdict(ticket)}
        <section aria-label="Why">
          <h2>Why</h2>
          <ul class="reasons">${reasonsOf(answer).map((each) => this.reason(each))}</ul>
          ${
            asFiled && reason.length > 0
              ? html`<details><summary>In the words of whoever answered it</summary>${written(view, reason)}</details>`
              : nothing
          }
        </section>
      </div>
      <div class="reader-on">
        <back-here .doc=${doc} .name=${name}></back-here>
        <ask-back .topic=${topic} .missing=${asks ? answer.missing : []} .values=${this.values()} .system=${system}
          .said=${said} @sent-back=${this.sendBack}></ask-back>
        ${Object.hasOwn(figuresOf, topic.id) ? html`<section aria-label="The picture"><case-figures .drawn=${{ doc, answer }} .system=${system}></case-figures></section>` : nothing}
        ${this.next(ticket)}
        <section aria-label="Take care">
          <h2>Take care</h2>
          <ul>${answer.cautions.map((each) => html`<li>${each}</li>`)}</ul>
        </section>
        <p class="acts noprint">
          <button type="button" @click=${() => printCase(false, this.tell)}>Print</button>
          <button type="button" @click=${() => this.dispatchEvent(new FaceTurned())}>All figures and the working</button>
        </p>
        <p class="small noprint" role="status">${this.told}</p>
      </div>
    </div>`;
  }
}

customElements.define('reader-face', ReaderFace);
