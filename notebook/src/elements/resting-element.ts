import type { PropertyValues } from 'lit';
import { idle } from './idle';
import { PlainElement } from './plain-element';

const wait = (time: number): Promise<void> => new Promise((done) => setTimeout(done, time));

/**
 * An element that is not what one watches while typing: it follows once the typing rests, in a moment
 * of its own, so that no key has to wait for it.
 */
export class RestingElement extends PlainElement {
  /** Milliseconds between what changed last and its drawing. */
  protected rests = 150;
  /** What its drawing stands on and takes long, each found in an idle moment of its own before that. */
  protected ahead: readonly (() => unknown)[] = [];
  private changed = 0;
  private isTaking = false;
  private isItsOwn = false;

  override requestUpdate(...change: Parameters<PlainElement['requestUpdate']>): void {
    this.changed = performance.now();
    super.requestUpdate(...change);
  }

  protected override async scheduleUpdate(): Promise<void> {
    const left = () => this.changed + this.rests - performance.now();
    if (this.hasUpdated) {
      while (left() > 0) await wait(left());
    }
    await idle();
    if (!this.isItsOwn && this.ahead.length > 0) {
      this.takeOver();
      return;
    }
    for (const find of this.ahead) {
      // Whoever could not wait has it drawn already.
      if (!this.isUpdatePending) return;
      find();
      await idle();
    }
    super.scheduleUpdate();
  }

  /** What was handed over before the script came is an element's own only with its first update. */
  private takeOver(): void {
    this.isTaking = true;
    this.performUpdate();
    this.isTaking = false;
    this.isItsOwn = true;
    if (!this.hasUpdated) this.requestUpdate();
  }

  protected override shouldUpdate(changed: PropertyValues<this>): boolean {
    return !this.isTaking && super.shouldUpdate(changed);
  }
}
