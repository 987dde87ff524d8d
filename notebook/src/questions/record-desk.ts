import type { Again } from '@tarebook/record';
import { html } from 'lit';
import { PlainElement } from '../elements/plain-element';
import { type Given, givenOf, isGiven, ledgerOf } from '../state/given';
import { allQuestionRecords, keepQuestions } from '../state/questions';
import { whyNotKept } from '../state/shelf';
import { askAgain, mergeWith } from './record-asking';
import type { LedgerOpened } from './record-view';
import { keepSpeaker, speakerNow } from './speaker';
import './record-view';

/** The record of this device: read, asked again, and put together with a colleague's. */
export class RecordDesk extends PlainElement {
  static override properties = {
    all: { state: true },
    again: { state: true },
    asking: { state: true },
    said: { state: true },
    wrong: { state: true },
  };
  declare all: readonly Given[];
  declare again: ReadonlyMap<string, Again> | undefined;
  declare asking: boolean;
  declare said: string;
  declare wrong: string;

  constructor() {
    super();
    this.all = [];
    this.asking = false;
    this.said = '';
    this.wrong = '';
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.look().catch((problem: unknown) => {
      this.wrong = whyNotKept(problem);
    });
  }

  private async look(): Promise<void> {
    const records = await allQuestionRecords();
    const given = records.filter(isGiven);
    this.all = given.toSorted((a, b) => b.day.localeCompare(a.day) || b.id.localeCompare(a.id));
  }

  private askAgain = async (): Promise<void> => {
    this.asking = true;
    this.wrong = '';
    try {
      this.again = await askAgain(ledgerOf(this.all));
    } catch {
      this.wrong = 'The answers could not be asked again: the network is away. They are kept.';
    }
    this.asking = false;
  };

  private takeIn = async ({ detail }: LedgerOpened): Promise<void> => {
    this.wrong = '';
    this.said = '';
    try {
      const merged = await mergeWith(ledgerOf(this.all), detail.text);
      if ('says' in merged) {
        this.wrong = `${detail.name}: ${merged.says}`;
        return;
      }
      const here = new Set(this.all.map(({ id }) => id));
      const fresh = merged.entries.filter(({ id }) => !here.has(id)).map(givenOf);
      await keepQuestions(fresh);
      this.again = undefined;
      await this.look();
      this.said = `${fresh.length} of your colleague’s answers were taken in, beside yours.`;
    } catch (problem) {
      this.wrong = whyNotKept(problem);
    }
  };

  protected override render() {
    return html`<div @again-wanted=${this.askAgain} @ledger-opened=${this.takeIn}>
      <p class="noprint"><label>Who answers here <input .value=${speakerNow()} @change=${({
        target,
      }: Event) => {
        if (!(target instanceof HTMLInputElement)) return;
        try {
          keepSpeaker(target.value);
        } catch {
          this.wrong = 'This device does not keep the name; write it again next time.';
        }
      }} /></label></p>
      <record-view .all=${this.all} .again=${this.again} .asking=${this.asking} .said=${this.said} .wrong=${this.wrong}></record-view>
    </div>`;
  }
}

customElements.define('record-desk', RecordDesk);
