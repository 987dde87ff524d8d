import { html, nothing } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import { PlainElement } from '../elements/plain-element';
import { saveAs } from '../state/files';
import type { Round, Spoken } from '../state/round';
import { arranged, moved } from './arrange';
import { easyWords, mostWords } from './as-spoken';
import type { Unanswered } from './round-left';
import {
  announced,
  chapters,
  clock,
  paceOf,
  roundAsCsv,
  roundAsMarkdown,
  timed,
  toldWhere,
} from './round-out';
import './round-left';
import type { Waiting } from './round-waiting';
import './round-waiting';
import type { Shortened } from './shorten-answer';
import './shorten-answer';

export class RoundChanged extends CustomEvent<Round> {
  constructor(round: Round) {
    super('round-changed', { detail: round, bubbles: true });
  }
}

/** The running sheet was printed. */
class RoundPrinted extends CustomEvent<undefined> {
  constructor() {
    super('round-printed', { bubbles: true });
  }
}

const typed = ({ target }: Event): string =>
  target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement ? target.value : '';

/** The very question of the very message. */
const keyOf = ({ message, question }: Spoken): string => `${message} ${question}`;

const wordCount = (text: string): number => text.trim().split(/\s+/).length;

/** The running sheet of a round: what is spoken, in which order, how long; it prints on paper. */
export class RoundView extends PlainElement {
  static override properties = {
    round: { attribute: false },
    waiting: { attribute: false },
    left: { attribute: false },
    shortening: { state: true },
    dragged: { state: true },
    said: { state: true },
  };
  declare round: Round;
  /** What cannot wait, is open, and is not in the round. */
  declare waiting: readonly Waiting[];
  /** What nothing answers, and so is not in the round. */
  declare left: readonly Unanswered[];
  /** The question whose answer is shortened just now; undefined: none. */
  declare shortening: string | undefined;
  /** The place of what is being dragged just now. */
  declare dragged: number | undefined;
  /** What a press of a button did, in words. */
  declare said: string;

  constructor() {
    super();
    this.said = '';
    this.left = [];
    this.waiting = [];
  }

  private change(change: Partial<Round>): void {
    this.dispatchEvent(new RoundChanged({ ...this.round, ...change }));
  }

  private set(place: number, change: Partial<Spoken>): void {
    const items = this.round.items.map((each, at) =>
      // In other words it does not stand in the record.
      at === place ? { ...each, ...change, isKept: false } : each,
    );
    this.change({ items });
  }

  private async move(from: number, to: number, button?: string): Promise<void> {
    this.change({ items: moved(this.round.items, from, to) });
    await this.updateComplete;
    const row = this.querySelectorAll('.round-item')[to];
    if (button) row?.querySelector<HTMLElement>(`[data-act="${button}"]`)?.focus();
  }

  private order(): void {
    const { items } = this.round;
    const now = arranged(items);
    const moves = now.filter((each, at) => each !== items[at]).length;
    this.said =
      moves === 0
        ? 'It is in that order already: what one message asks together, channels and topics by turns, no two warnings in a row where that can be.'
        : `Put in order: ${moves} of ${items.length} stand in another place now.`;
    if (moves > 0) this.change({ items: now });
  }

  private print(): void {
    print();
    this.dispatchEvent(new RoundPrinted());
  }

  /** Where what was spoken or printed stands now. */
  private kept() {
    const { length } = this.round.items.filter(({ isKept }) => isKept);
    if (length === 0) return nothing;
    const are = length === 1 ? '1 answer of it is' : `${length} answers of it are`;
    return html`<p class="small soft round-kept">${are} kept, as spoken or printed, in <a href="#/questions/record">What was answered</a>.</p>`;
  }

  private item(item: Spoken, place: number, from: number, seconds: number) {
    const { items } = this.round;
    const drop = (event: DragEvent): void => {
      event.preventDefault();
      if (this.dragged !== undefined) void this.move(this.dragged, place);
      this.dragged = undefined;
    };
    const over = wordCount(item.asks) > mostWords;
    const name = `question ${place + 1}`;
    const isShort = this.shortening === keyOf(item);
    return html`<li class="round-item" @dragover=${(event: Event) => event.preventDefault()} @drop=${drop}>
      <div class="round-time" draggable="true" title="Drag to another place" @dragstart=${() => {
        this.dragged = place;
      }}><span class="num">${clock(from)}</span> <span class="small soft">${seconds} s</span></div>
      <div class="round-words">
        <p class="small soft">${announced(item)}${item.isWarning ? ' A warning.' : nothing}</p>
        <label class="hidden" for="asks-${place}">Question ${place + 1}</label>
        <textarea id="asks-${place}" rows="1" .value=${item.asks} @change=${(event: Event) => this.set(place, { asks: typed(event) })}></textarea>
        ${over ? html`<p class="error">${wordCount(item.asks)} words; about ${easyWords} are easily followed.</p>` : nothing}
        <label class="hidden" for="answer-${place}">Answer ${place + 1}</label>
        <textarea id="answer-${place}" rows="2" .value=${item.answer} @change=${(event: Event) => this.set(place, { answer: typed(event) })}></textarea>
        ${
          isShort
            ? html`<shorten-answer .text=${item.answer} .cautions=${item.cautions ?? []} @answer-shortened=${({ detail }: Shortened) => this.set(place, { answer: detail })}></shorten-answer>`
            : nothing
        }
        <div class="acts">
          <button type="button" aria-expanded=${isShort ? 'true' : 'false'} aria-label="Shorten the answer: ${name}" @click=${() => {
            this.shortening = isShort ? undefined : keyOf(item);
          }}>Shorten</button>
          <button type="button" data-act="up" ?disabled=${place === 0} aria-label="Earlier: ${name}" @click=${() => this.move(place, place - 1, place === 1 ? 'down' : 'up')}>Earlier</button>
          <button type="button" data-act="down" ?disabled=${place === items.length - 1} aria-label="Later: ${name}" @click=${() => this.move(place, place + 1, place === items.length - 2 ? 'up' : 'down')}>Later</button>
          <button type="button" aria-label="Out of the round: ${name}" @click=${() => this.change({ items: items.filter((each) => each !== item) })}>Out of the round</button>
          <label>Name as spoken <input .value=${item.name} @change=${(event: Event) => this.set(place, { name: typed(event).slice(0, 40) })} /></label>
        </div>
      </div>
    </li>`;
  }

  private heard() {
    const { round } = this;
    const found = chapters(round);
    if (found.length === 0) return nothing;
    const pace = paceOf(round);
    return html`<section class="noprint"><h2>As it was spoken</h2>
      ${
        pace === undefined || pace === round.pace
          ? nothing
          : html`<p>You spoke ${pace} words a minute. <button @click=${() => this.change({ pace })}>Reckon with that</button></p>`
      }
      <ol class="round-chapters">${found.map(
        ({ at, asks }) =>
          html`<li><span class="num">${at}</span> ${asks}<br /><span class="small soft">To whoever asked: ${toldWhere(at)}</span></li>`,
      )}</ol></section>`;
  }

  /** What is on paper, and nothing else of the page. */
  private sheet() {
    const { round } = this;
    const { lines, total } = timed(round);
    return html`<section class="running-sheet" aria-hidden="true">
      <h1>Running sheet <span class="num">${clock(total)}</span></h1>
      <p>${round.opening}</p>
      <table><thead><tr><th>At</th><th>Question</th><th>Answer, as it is said</th><th>s</th></tr></thead>
      <tbody>${lines.map(
        ({ item, from, seconds }, place) => html`<tr>
          <td class="num">${clock(from)}</td>
          <td><strong>${place + 1}.</strong> ${announced(item)}<br />${item.asks}</td>
          <td>${item.answer}</td><td class="num">${seconds}</td></tr>`,
      )}</tbody></table>
      <p>${round.closing}</p>
      <p class="small">Every answer stands under the rules of its day. The maker’s manual, the labels on the rig and local codes come first.</p>
    </section>`;
  }

  private leftOut() {
    const { left } = this;
    const have = left.length === 1 ? 'One open question has' : `${left.length} open questions have`;
    return html`<round-waiting .waiting=${this.waiting}></round-waiting>${
      left.length > 0
        ? html`<p>${have} no answer yet, and so no place in the round. <button type="button" class="quiet" @click=${() =>
            this.querySelector<HTMLElement>(
              'round-left textarea',
            )?.focus()}>Write ${left.length === 1 ? 'it' : 'them'} below</button></p>`
        : nothing
    }`;
  }

  protected override render() {
    const { round } = this;
    const { lines, total } = timed(round);
    if (round.items.length === 0) {
      return html`<p>Nothing is in the round yet. Go to <a href="#/questions">the questions</a>, and press “Make a round of what has an answer”, or “Speak it” beside one.</p>`;
    }
    return html`<div class="round noprint">
      ${this.leftOut()}
      <p class="round-total">${round.items.length} ${round.items.length === 1 ? 'question' : 'questions'}, <strong class="num">${clock(total)}</strong> minutes at
        <label><input class="pace" type="number" min="60" max="300" .value=${String(round.pace)} @change=${(
          event: Event,
        ) => {
          const pace = Math.round(Number(typed(event)));
          if (pace >= 60 && pace <= 300) this.change({ pace });
          else this.requestUpdate();
        }} /> words a minute</label></p>
      <div class="acts">
        <button @click=${this.print}>Print the running sheet</button>
        <a class="as-button" href="#/questions/prompter">Speak from the screen</a>
        <button @click=${this.order}>Put in a good order</button>
        <button @click=${() => saveAs('round.md', roundAsMarkdown(round), 'text/markdown')}>Save as Markdown</button>
        <button @click=${() => saveAs('round.csv', roundAsCsv(round), 'text/csv')}>Save as CSV</button>
      </div>
      <p class="small" role="status">${this.said}</p>${this.kept()}
      <label for="opening">Opening</label>
      <textarea id="opening" rows="2" .value=${round.opening} @change=${(event: Event) => this.change({ opening: typed(event) })}></textarea>
      <ol class="round-items">${repeat(
        lines,
        ({ item }) => keyOf(item),
        ({ item, from, seconds }, place) => this.item(item, place, from, seconds),
      )}</ol>
      <label for="closing">Closing</label>
      <textarea id="closing" rows="2" .value=${round.closing} @change=${(event: Event) => this.change({ closing: typed(event) })}></textarea>
    </div><round-left .left=${this.left}></round-left>${this.heard()}${this.sheet()}`;
  }
}

customElements.define('round-view', RoundView);
