import type { CaseDocument } from '@tarebook/casebook';
import type { UnitSystem } from '@tarebook/rules/quantity';
import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { partMissing } from '../sections/once-shown';
import { canEdit, openEditing } from '../state/editing';
import { begin, change, current, type History } from '../state/history';
import { type Judged, judge, readNow } from '../state/judged';
import { forget, keep } from '../state/kept';
import { whyNotKept } from '../state/shelf';
import { isComing, type Ticket, ticketOf, wordAlone } from '../state/ticket';

const savedAfter = 200;
/** What takes longer than this, in milliseconds, is not found between two keys. */
const atOnce = 4;

type Edit = {
  readonly write: (doc: CaseDocument) => string;
  readonly field: string;
};

/** A case as it is handed to whoever works on it. */
export type Handed = {
  readonly topicId: string;
  readonly name: string;
  /** The text as it came with the page; undefined for a case of one's own. */
  readonly filed: string | undefined;
  /** The text as it was left on this device. */
  readonly kept: string | undefined;
  /** The filed text judged, or the kept one where there is no other; undefined: still to be judged. */
  readonly first: Judged | undefined;
  readonly system: UnitSystem;
};

/** The text of a case under somebody's hands: its history, what it is judged as, and that it is kept. */
export class CaseWork implements ReactiveController {
  history: History = begin('');
  judged: Judged = judge('');
  asFiled: Judged | undefined;
  ticket: Ticket | undefined;
  /** Why nothing is kept just now; '' while all is well. */
  notice = '';
  private readonly host: ReactiveControllerHost & Handed;
  /** What was typed and is not in the text yet, the first first. */
  private edits: Edit[] = [];
  /** So long it took last to find what to ask, in milliseconds. */
  private took = Number.POSITIVE_INFINITY;
  private system: UnitSystem = 'us';
  private saving: ReturnType<typeof setTimeout> | undefined;

  constructor(host: ReactiveControllerHost & Handed) {
    this.host = host;
    host.addController(this);
  }

  hostConnected(): void {
    const { filed, kept, first, system } = this.host;
    const text = filed ?? kept ?? '';
    this.system = system;
    this.judged = first ?? judge(text, undefined, system);
    this.asFiled = filed === undefined ? undefined : this.judged;
    this.history = begin(text);
    if (kept !== undefined && kept !== text) {
      this.history = change(this.history, kept, 'kept', 0);
      this.judged = judge(kept, this.judged, system);
    }
    this.finish();
    // It was found before this, and says nothing of how long that takes.
    this.took = Number.POSITIVE_INFINITY;
    this.notice = '';
    addEventListener('pagehide', this.save);
  }

  hostDisconnected(): void {
    removeEventListener('pagehide', this.save);
    if (this.saving) void this.save();
  }

  /** Judges what was typed since; the words of an answer are in the reader's units. Whether anything changed. */
  follow(): boolean {
    const { filed, system } = this.host;
    const text = current(this.history);
    const turned = system !== this.system;
    if (!turned && text === this.judged.doc.text) return false;
    this.system = system;
    if (turned) this.asFiled = filed === undefined ? undefined : judge(filed, this.asFiled, system);
    this.judged = judge(text, this.judged, system);
    const word = this.took > atOnce ? wordAlone(this.judged, this.ticket) : undefined;
    if (word) this.ticket = word;
    else this.finish();
    return true;
  }

  /** Whether the ticket has but its word yet. */
  get isComing(): boolean {
    return isComing(this.ticket);
  }

  /** Finds all that the ticket says. */
  finish(): void {
    const begun = performance.now();
    this.ticket = ticketOf(this.judged, this.system);
    const isOpen = this.ticket?.kind === 'verdict' && this.ticket.ask !== undefined;
    if (isOpen) this.took = performance.now() - begun;
  }

  go(to: (history: History) => History): void {
    this.history = to(this.history);
    clearTimeout(this.saving);
    this.saving = setTimeout(this.save, savedAfter);
    this.host.requestUpdate();
  }

  edit(write: (doc: CaseDocument) => string, field: string): void {
    this.edits.push({ write, field });
    if (canEdit()) this.writeEdits();
    else if (this.edits.length === 1) void this.editOnceRead();
  }

  /** A case as it came needs no reader of Markdown; what somebody types does. */
  private async editOnceRead(): Promise<void> {
    try {
      await openEditing();
    } catch {
      document.dispatchEvent(new Event(partMissing));
    }
    if (canEdit()) this.writeEdits();
    else this.edits = [];
  }

  private writeEdits(): void {
    const { edits: all } = this;
    this.edits = [];
    for (const { write, field } of all) {
      const text = write(readNow(current(this.history), this.judged));
      this.go((history) => change(history, text, field, Date.now()));
    }
  }

  private save = async (): Promise<void> => {
    clearTimeout(this.saving);
    this.saving = undefined;
    const { topicId: topic, name, filed } = this.host;
    const text = current(this.history);
    const before = this.notice;
    try {
      if (text === filed) await forget(topic, name);
      else await keep({ topic, name, text, at: Date.now() });
      this.notice = '';
    } catch (problem) {
      this.notice = `${whyNotKept(problem)} Save it as a file.`;
    }
    if (this.notice !== before) this.host.requestUpdate();
  };
}
