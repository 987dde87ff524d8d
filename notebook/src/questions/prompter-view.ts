import { html } from 'lit';
import { PlainElement } from '../elements/plain-element';
import type { Round } from '../state/round';
import { announced, clock, secondsFor, secondsToSay, timed } from './round-out';
import { RoundChanged } from './round-view';

/** The prompter was left before its end. */
class RoundStopped extends CustomEvent<undefined> {
  constructor() {
    super('round-stopped', { bubbles: true });
  }
}

/** Of a screen that was read so much stays in sight, in lines. */
const linesKept = 1.5;

const onward = new Set(['ArrowRight', 'PageDown', ' ', 'Enter']);
const back = new Set(['ArrowLeft', 'PageUp', 'Backspace']);

/** One question at a time in large type, and nothing but what is spoken; by keys, touch or pace. */
export class PrompterView extends PlainElement {
  static override properties = {
    round: { attribute: false },
    at: { state: true },
    begun: { state: true },
    rolling: { state: true },
  };
  declare round: Round;
  /** -1 is the opening, the number of questions the closing. */
  declare at: number;
  /** When the first question was gone to, in milliseconds since 1970; 0 before that. */
  declare begun: number;
  /** Whether the text moves by itself at the speaker's pace. */
  declare rolling: boolean;
  private frame = 0;

  constructor() {
    super();
    this.at = -1;
    this.begun = 0;
    this.rolling = false;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    addEventListener('keydown', this.key);
    document.body.classList.add('prompting');
  }

  override disconnectedCallback(): void {
    removeEventListener('keydown', this.key);
    document.body.classList.remove('prompting');
    cancelAnimationFrame(this.frame);
    super.disconnectedCallback();
  }

  private key = (event: KeyboardEvent): void => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const onButton = event.target instanceof HTMLButtonElement;
    if (onButton && (event.key === ' ' || event.key === 'Enter')) return;
    if (onward.has(event.key)) this.turn(1);
    else if (back.has(event.key)) this.turn(-1);
    else if (event.key === 'Escape') this.leave();
    else if (event.key.toLowerCase() === 'r') this.roll();
    else return;
    event.preventDefault();
  };

  private leave = (): void => {
    this.dispatchEvent(new RoundStopped());
    location.hash = '#/questions/round';
  };

  /** A screen on or back; the next question comes where the text has been seen to its end. */
  private turn(way: 1 | -1): void {
    const text = this.querySelector('.prompter-text');
    if (!text) return;
    const { scrollTop, scrollHeight, clientHeight } = text;
    const left = way > 0 ? scrollHeight - clientHeight - scrollTop : scrollTop;
    if (left <= 2) {
      this.go(this.at + way);
      return;
    }
    const line = Number.parseFloat(getComputedStyle(text).lineHeight) || 0;
    text.scrollTop += way * Math.max(clientHeight - linesKept * line, clientHeight / 2);
  }

  private go(to: number): void {
    const { items } = this.round;
    if (to < -1 || to > items.length || to === this.at) return;
    const now = Date.now();
    if (this.at === -1 && this.begun === 0) this.begun = now;
    const onwards = to > this.at;
    this.at = to;
    this.querySelector('.prompter-text')?.scrollTo(0, 0);
    if (!onwards) return;
    const at = Math.round((now - this.begun) / 1000);
    const spoken = to === items.length ? now : this.round.spoken;
    const timedItems = items.map((each, place) => (place === to ? { ...each, at } : each));
    this.dispatchEvent(new RoundChanged({ ...this.round, items: timedItems, spoken }));
  }

  /** How long what is on the screen now takes to say, in seconds. */
  private get seconds(): number {
    const { round, at } = this;
    const item = round.items[at];
    return item
      ? secondsFor(item, round.pace)
      : secondsToSay(at < 0 ? round.opening : round.closing, round.pace);
  }

  /** The text moves at the speaker's pace, and where it has been said the next one comes. */
  private roll = (): void => {
    this.rolling = !this.rolling;
    cancelAnimationFrame(this.frame);
    let before = performance.now();
    let lines = 0;
    let shown = this.at;
    let spent = 0;
    const step = (now: number): void => {
      if (!this.rolling) return;
      const passed = (now - before) / 1000;
      before = now;
      if (this.at !== shown) [shown, spent, lines] = [this.at, 0, 0];
      spent += passed;
      const text = this.querySelector('.prompter-text');
      if (text) {
        const way = text.scrollHeight - text.clientHeight;
        lines += (way * passed) / this.seconds;
        text.scrollTop += Math.floor(lines);
        lines -= Math.floor(lines);
      }
      if (spent >= this.seconds) {
        if (this.at < this.round.items.length) this.go(this.at + 1);
        else this.rolling = false;
      }
      this.frame = requestAnimationFrame(step);
    };
    this.frame = requestAnimationFrame(step);
  };

  private words() {
    const { round, at } = this;
    if (at < 0) return html`<p>${round.opening}</p>`;
    const item = round.items[at];
    if (!item) return html`<p>${round.closing}</p>`;
    return html`<p class="prompter-asks">${announced(item)} ${item.asks}</p><p>${item.answer}</p>`;
  }

  protected override render() {
    const { round, at } = this;
    const { lines, total } = timed(round);
    const left = total - (lines[Math.max(at, 0)]?.from ?? total);
    const where =
      at < 0 ? 'Opening' : at >= lines.length ? 'Closing' : `${at + 1} of ${lines.length}`;
    return html`<div class="prompter" role="region" aria-label="What is spoken">
      <h1 class="hidden">To speak from</h1>
      <div class="prompter-text" tabindex="0" aria-live="polite">${this.words()}</div>
      <div class="prompter-foot">
        <button @click=${() => this.turn(-1)} ?disabled=${at < 0}>Back</button>
        <span class="num">${where} <span class="soft">${clock(at >= lines.length ? 0 : left)} left</span></span>
        <button aria-pressed=${this.rolling} @click=${this.roll}>${this.rolling ? 'Hold' : 'Move by itself'}</button>
        <button @click=${this.leave}>Leave</button>
        <button class="on" @click=${() => (at >= lines.length ? this.leave() : this.turn(1))}>${at >= lines.length ? 'End' : 'Next'}</button>
      </div>
    </div>`;
  }
}

customElements.define('prompter-view', PrompterView);
