import { html } from 'lit';
import { mark } from '../elements/marks';
import { PlainElement } from '../elements/plain-element';
import { filedCase } from '../state/filed';
import { houseOf } from '../state/house';
import { type Verdict, verdictFor } from './verdict';

/** How a case of a list came out; what is not in sight is not judged. */
export class CaseVerdict extends PlainElement {
  static override properties = {
    topic: { attribute: false },
    name: { attribute: false },
    text: { attribute: false },
    shipped: { attribute: false },
    verdict: { state: true },
  };
  declare topic: string;
  declare name: string;
  /** The case as it stands on this device; undefined for one as it came. */
  declare text: string | undefined;
  /** How a case as it came comes out by the rules as they came. */
  declare shipped: Verdict | undefined;
  declare verdict: Verdict | undefined;
  private seen = false;
  private sight: IntersectionObserver | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    this.sight = new IntersectionObserver((all) => {
      this.seen = all.at(-1)?.isIntersecting ?? false;
      if (this.seen) void this.judge();
    });
    this.sight.observe(this);
  }

  override disconnectedCallback(): void {
    this.sight?.disconnect();
    this.seen = false;
    super.disconnectedCallback();
  }

  protected override updated(changed: ReadonlyMap<PropertyKey, unknown>): void {
    if (changed.has('text') && this.seen) void this.judge();
  }

  private async judge(): Promise<void> {
    const { topic, name, text, shipped } = this;
    if (shipped && text === undefined && !houseOf(topic)) return;
    const whole = text ?? (await filedCase(topic, name).catch(() => undefined));
    if (whole === undefined) return;
    const verdict = await verdictFor(topic, whole, () => this.seen);
    if (text === this.text) this.verdict = verdict;
  }

  protected override render() {
    const { verdict, shipped, text, topic } = this;
    const asShipped = text === undefined && !houseOf(topic) ? shipped : undefined;
    const shown = asShipped ?? verdict;
    if (!shown) return html`<span class="word-of soft">…</span>`;
    const word = html`<span class="level-${shown.stands} word-of">${mark(shown.stands)}${shown.words}</span>`;
    return shown.asks ? html`${word}<span class="waits">waits for: ${shown.asks}</span>` : word;
  }
}

customElements.define('case-verdict', CaseVerdict);
