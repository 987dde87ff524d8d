import { PlainElement } from './plain-element';

/** An element that is not what one watches while typing: it follows once the typing rests. */
export class RestingElement extends PlainElement {
  /** Milliseconds between what changed and its drawing. */
  protected rests = 150;

  protected override async scheduleUpdate(): Promise<void> {
    if (this.hasUpdated) await new Promise((done) => setTimeout(done, this.rests));
    super.scheduleUpdate();
  }
}
