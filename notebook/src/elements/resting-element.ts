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
  private changed = 0;

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
    super.scheduleUpdate();
  }
}
