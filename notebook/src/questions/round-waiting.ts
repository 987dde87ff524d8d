import type { ReadMessage } from '@tarebook/record';
import { html, nothing, type PropertyValues } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import { PlainElement } from '../elements/plain-element';
import type { Asked } from '../state/questions';
import { urgentWords } from './words';

/** A message that cannot wait, as it was read. */
export type Waiting = { readonly asked: Asked; readonly read: ReadMessage };

/** More than these, and longer ones, are read where all stand. */
const mostShown = 10;
const mostLetters = 1_500;

/** Somebody looked at it, and it can wait for the round. */
export class UrgentLifted extends CustomEvent<Waiting> {
  constructor(of: Waiting) {
    super('urgent-lifted', { detail: of, bubbles: true });
  }
}

/** What is open, cannot wait, and so stands in no round; the gravest first. */
export function waitingIn(
  items: readonly { readonly message: string }[],
  messages: readonly Asked[],
  readings: ReadonlyMap<string, ReadMessage>,
): readonly Waiting[] {
  const isIn = (id: string): boolean => items.some(({ message }) => message === id);
  const gravity = Object.keys(urgentWords);
  const found = messages.flatMap((asked) => {
    const read = readings.get(asked.id);
    const isWaiting = asked.done === 0 && asked.urgent !== '' && !isIn(asked.id);
    return isWaiting && read ? [{ asked, read }] : [];
  });
  return found.toSorted(
    (a, b) => gravity.indexOf(a.asked.urgent) - gravity.indexOf(b.asked.urgent),
  );
}

/** What a round leaves out as it cannot wait, whole; whoever reads that it can puts it in. */
export class RoundWaiting extends PlainElement {
  static override properties = { waiting: { attribute: false } };
  declare waiting: readonly Waiting[];

  constructor() {
    super();
    this.waiting = [];
  }

  private lifted = false;

  /** Whoever lifted one goes on with the next, or with what is spoken first. */
  protected override updated(changed: PropertyValues<this>): void {
    const before = changed.get('waiting')?.length ?? 0;
    if (!this.lifted || this.waiting.length >= before) return;
    this.lifted = false;
    const next = this.querySelector('button');
    (next ?? this.closest('round-view')?.querySelector<HTMLElement>('#opening'))?.focus();
  }

  private one = (of: Waiting, at: number) => {
    const { asked, read } = of;
    const why = read.urgent ? urgentWords[read.urgent] : '';
    return html`<li><p><strong>Urgent: ${why}.</strong> ${asked.text.slice(0, mostLetters)}</p>
      <button type="button" class="quiet" aria-label="It is not urgent, into the round: number ${at + 1} of these" @click=${() => {
        this.lifted = true;
        this.dispatchEvent(new UrgentLifted(of));
      }}>It is not urgent: into the round</button></li>`;
  };

  protected override render() {
    const { waiting } = this;
    if (waiting.length === 0) return nothing;
    const are =
      waiting.length === 1 ? 'One urgent question is' : `${waiting.length} urgent questions are`;
    return html`<div class="notice"><p>${are} not in the round: what cannot wait is <a href="#/questions">answered at once</a>.</p>
      <ol class="round-waiting">${repeat(waiting.slice(0, mostShown), ({ asked }) => asked.id, this.one)}</ol></div>`;
  }
}

customElements.define('round-waiting', RoundWaiting);
