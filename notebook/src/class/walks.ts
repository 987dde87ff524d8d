import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { html } from 'lit';
import { isWalked, type ToWalk, type Walked, walkedCase } from './record';
import { walker } from './walk-aside';

/** What stands where a case is still being worked out. */
export const walking = html`<p class="soft" role="status">Working out which questions settle this case …</p>`;

/** Readings of cases for an element, which is drawn again once one that takes long is there. */
export class Walks implements ReactiveController {
  private aside = walker();
  private coming = new Set<string>();

  constructor(private readonly host: ReactiveControllerHost) {
    host.addController(this);
  }

  hostDisconnected(): void {
    this.aside.end();
    this.aside = walker();
    this.coming.clear();
  }

  /** undefined: it has nothing for its exercise, or cannot be judged. */
  of(each: ToWalk): Walked | 'coming' | undefined {
    if (isWalked(each)) return walkedCase(each);
    const key = `${each.exercise} ${each.text}`;
    if (!this.coming.has(key)) {
      this.coming.add(key);
      void this.aside.walk(each).then(() => {
        this.coming.delete(key);
        this.host.requestUpdate();
      });
    }
    return 'coming';
  }
}
