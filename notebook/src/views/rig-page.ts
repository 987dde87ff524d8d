import { html, nothing, type TemplateResult } from 'lit';
import { rigAside } from '../aside/first';
import { mark } from '../elements/marks';
import { PlainElement } from '../elements/plain-element';
import { filedCase } from '../state/filed';
import { housesNow } from '../state/house';
import { keptCase } from '../state/kept';
import { unpack } from '../state/link';
import type { RigPart, RigTold } from '../state/rig';

const begun = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** A whole rig: the one verdict, what came up in each topic, each moment, and the way into each topic. */
export class RigPage extends PlainElement {
  static override properties = {
    name: { attribute: false },
    packed: { attribute: false },
    rig: { state: true },
    missing: { state: true },
  };
  declare name: string;
  /** The whole rig, packed into the address; undefined where it is filed or kept. */
  declare packed: string | undefined;
  declare rig: RigTold | undefined;
  /** Why there is no rig, in a sentence. */
  declare missing: string | undefined;
  private opening: Promise<void> = Promise.resolve();
  private left = new AbortController();

  /** Not before: what was set on it before it was defined is there only now. */
  protected override firstUpdated(): void {
    this.opening = this.open().catch((problem: unknown) => {
      const says = problem instanceof Error ? problem.message : '';
      this.missing = says || 'This part of the page could not be read; reload it.';
    });
  }

  override disconnectedCallback(): void {
    this.left.abort();
    super.disconnectedCallback();
  }

  /** The rig is there, or it is said why not. */
  protected override async getUpdateComplete(): Promise<boolean> {
    await super.getUpdateComplete();
    await this.opening;
    return super.getUpdateComplete();
  }

  /** Every topic is asked beside the page, which takes its time; nothing waits for that but this. */
  private async open(): Promise<void> {
    const { name, packed } = this;
    const text =
      packed === undefined
        ? ((await filedCase('rig', name)) ??
          (await keptCase('rig', name).catch(() => undefined))?.text)
        : await unpack(packed);
    if (text === undefined) {
      this.missing = `There is no rig “${name}” here.`;
      return;
    }
    const told = await rigAside(name, text, housesNow(), this.left.signal);
    if ('says' in told) this.missing = told.says;
    else this.rig = told;
  }

  private topicSection({ title, moment, sentence, fired, href }: RigPart): TemplateResult {
    return html`<section>
      <h2>${title}</h2>
      <p>${moment === null ? nothing : html`<strong>${begun(moment)}:</strong> `}${sentence}</p>
      ${
        fired.length === 0
          ? nothing
          : html`<details>
              <summary>What came up: ${title.toLowerCase()}</summary>
              <ul>${fired.map((each) => html`<li>${each}</li>`)}</ul>
            </details>`
      }
      <p><a href=${href}>${title} with these facts</a></p>
    </section>`;
  }

  /** How each topic stands at each moment. */
  private momentsTable({ moments, byMoment }: RigTold): TemplateResult | typeof nothing {
    if (moments.length === 0) return nothing;
    return html`<section>
      <h2>Moment by moment</h2>
      <div class="scrolls">
        <table>
          <thead>
            <tr><th scope="col">Topic</th>${moments.map((at) => html`<th scope="col">${begun(at)}</th>`)}</tr>
          </thead>
          <tbody>
            ${byMoment.map(
              ({ title, words }) => html`<tr>
                <th scope="row">${title}</th>
                ${words.map((each) => html`<td>${each}</td>`)}
              </tr>`,
            )}
          </tbody>
        </table>
      </div>
    </section>`;
  }

  private wantingSection({ wanting }: RigTold): TemplateResult | typeof nothing {
    if (wanting.length === 0) return nothing;
    return html`<details>
      <summary>What ${wanting.length} other topics would want</summary>
      <ul>${wanting.map(({ title, labels }) => html`<li>${title}: ${labels.join(', ')}</li>`)}</ul>
    </details>`;
  }

  private verdict(worst: RigPart | undefined): TemplateResult {
    if (!worst) return html`<p>Nothing told decides anything yet.</p>`;
    const { level, words, title, moment, beneath } = worst;
    return html`<section class="verdict level-${level}" aria-label="Verdict">
      ${mark(level)}
      <p class="word">${begun(words)}</p>
      <p>By ${title.toLowerCase()}${moment === null ? '' : `, ${moment}`}: ${beneath}</p>
    </section>`;
  }

  private shown(rig: RigTold): TemplateResult {
    const { title, parts } = rig;
    const cautions = new Set(parts.slice(0, 3).flatMap((each) => each.cautions.slice(0, 1)));
    return html`<h1>${title}</h1>
      ${this.verdict(parts[0])}
      ${this.momentsTable(rig)}
      ${parts.map((each) => this.topicSection(each))}
      ${
        cautions.size === 0
          ? nothing
          : html`<section>
              <h2>Be careful</h2>
              <ul>${[...cautions].map((each) => html`<li>${each}</li>`)}</ul>
            </section>`
      }
      ${this.wantingSection(rig)}`;
  }

  protected override render() {
    if (this.missing !== undefined) {
      return html`<h1>Whole rig</h1><p>${this.missing} <a href="#/cases">All cases</a> are one page back.</p>`;
    }
    return this.rig
      ? this.shown(this.rig)
      : html`<p class="soft" role="status">Asking every topic; this takes a few seconds …</p>`;
  }
}

customElements.define('rig-page', RigPage);
