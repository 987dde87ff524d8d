import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing, type PropertyValues } from 'lit';
import { PlainElement } from './plain-element';

/** The text of a case whose verdict cannot be said. */
export type Open = {
  readonly topic: string;
  readonly text: string;
  readonly system: UnitSystem;
};

/** Somebody in the middle of a number is not told what half of it comes to. */
const restsFor = 250;

const isSame = (a: Open | undefined, b: Open | undefined): boolean =>
  a?.topic === b?.topic && a?.text === b?.text && a?.system === b?.system;

/** What can be said though the verdict cannot: it comes once nobody types, and is never of another text. */
export class KnownSaid extends PlainElement {
  static override properties = {
    of: { attribute: false, hasChanged: (a?: Open, b?: Open) => !isSame(a, b) },
    known: { state: true },
    isBefore: { state: true },
  };
  declare of: Open | undefined;
  declare known: string;
  /** Of a text before; its place waits for what comes. */
  declare isBefore: boolean;
  private timer: ReturnType<typeof setTimeout> | undefined;

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('of')) return;
    this.isBefore = true;
    clearTimeout(this.timer);
    if (this.of) this.timer = setTimeout(this.look, restsFor);
  }

  override disconnectedCallback(): void {
    clearTimeout(this.timer);
    super.disconnectedCallback();
  }

  private look = async (): Promise<void> => {
    const { of } = this;
    const isWanted = (): boolean => of === this.of && this.isConnected;
    if (!of) return;
    try {
      const { knownFor } = await import('../aside/known');
      const known = await knownFor(of, isWanted);
      if (!isWanted()) return;
      this.known = known;
      this.isBefore = false;
    } catch {
      // Without the network the question that is asked stands alone.
      this.known = '';
    }
  };

  protected override render() {
    return this.known
      ? html`<p class="so-far ${this.isBefore ? 'is-before' : ''}">${this.known}</p>`
      : nothing;
  }
}

customElements.define('known-said', KnownSaid);
