import type { RigTopic, State, Topic } from '@tarebook/rules/engine';
import { html, nothing, type TemplateResult } from 'lit';
import { mark } from '../elements/marks';
import { PlainElement } from '../elements/plain-element';
import { filedCase } from '../state/filed';
import { keptCase } from '../state/kept';
import { levelOf } from '../state/level';
import { unpack } from '../state/link';
import { openYaml } from '../state/reading';
import { type RigHere, rigHere } from '../state/rig';
import { loadedTopics } from '../state/topics';

type Rig = Exclude<RigHere, { readonly says: string }>;

const begun = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

const limitWords: Partial<Record<State, string>> = {
  stop: 'over',
  care: 'close',
  unknown: 'not known',
};

/** What came up in a topic: limits that do not simply hold, and findings that object. */
function firedIn({ topic, answer }: RigTopic): readonly TemplateResult[] {
  const limits = answer.limits.flatMap(({ id, label, state }) => {
    const word = limitWords[state];
    return word === undefined
      ? []
      : [html`<li>${begun(topic.limits[id]?.short ?? label)}: ${word}</li>`];
  });
  const findings = answer.findings
    .filter(({ level }) => level !== 'ok' && level !== 'not-asked')
    .map(({ says }) => html`<li>${says}</li>`);
  return [...limits, ...findings];
}

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
  declare rig: Rig | undefined;
  /** Why there is no rig, in a sentence. */
  declare missing: string | undefined;
  private opening: Promise<void> = Promise.resolve();

  /** Not before: what was set on it before it was defined is there only now. */
  protected override firstUpdated(): void {
    this.opening = this.open().catch((problem: unknown) => {
      const says = problem instanceof Error ? problem.message : '';
      this.missing = says || 'This part of the page could not be read; reload it.';
    });
  }

  /** The rig is there, or it is said why not. */
  protected override async getUpdateComplete(): Promise<boolean> {
    await super.getUpdateComplete();
    await this.opening;
    return super.getUpdateComplete();
  }

  private async open(): Promise<void> {
    const { name, packed } = this;
    await openYaml();
    const text =
      packed === undefined
        ? ((await filedCase('rig', name)) ??
          (await keptCase('rig', name).catch(() => undefined))?.text)
        : await unpack(packed);
    const here: RigHere =
      text === undefined ? { says: `There is no rig “${name}” here.` } : await rigHere(name, text);
    if ('says' in here) this.missing = here.says;
    else this.rig = here;
  }

  private topicSection(rig: Rig, each: RigTopic): TemplateResult {
    const { topic, answer, moment } = each;
    const fired = firedIn(each);
    return html`<section>
      <h2>${topic.title}</h2>
      <p>${moment === null ? nothing : html`<strong>${begun(moment)}:</strong> `}${answer.sentence}</p>
      ${
        fired.length === 0
          ? nothing
          : html`<details>
              <summary>What came up</summary>
              <ul>${fired}</ul>
            </details>`
      }
      <p><a href=${rig.cases.get(topic.id) ?? '#/cases'}>${topic.title} with these facts</a></p>
    </section>`;
  }

  /** How each topic stands at each moment. */
  private momentsTable({ doc, found }: Rig): TemplateResult | typeof nothing {
    if (doc.at.length === 0) return nothing;
    const wordsAt = (topic: Topic, moment: string): string =>
      found.moments[moment]?.find((each) => each.topic.id === topic.id)?.answer.words ?? '';
    return html`<section>
      <h2>Moment by moment</h2>
      <div class="scrolls">
        <table>
          <thead>
            <tr><th scope="col">Topic</th>${doc.at.map((at) => html`<th scope="col">${begun(at)}</th>`)}</tr>
          </thead>
          <tbody>
            ${found.answers.map(
              ({ topic }) => html`<tr>
                <th scope="row">${topic.title}</th>
                ${doc.at.map((at) => html`<td>${begun(wordsAt(topic, at))}</td>`)}
              </tr>`,
            )}
          </tbody>
        </table>
      </div>
    </section>`;
  }

  private needsSection({ found }: Rig): TemplateResult | typeof nothing {
    const wanting = Object.entries(found.needs).flatMap(([id, facts]) => {
      const topic = loadedTopics[id];
      const labels = facts.slice(0, 3).map((fact) => topic?.facts[fact]?.label ?? fact);
      return topic ? [{ topic, labels }] : [];
    });
    if (wanting.length === 0) return nothing;
    return html`<details>
      <summary>What ${wanting.length} other topics would want</summary>
      <ul>${wanting.map(({ topic, labels }) => html`<li>${topic.title}: ${labels.join(', ')}</li>`)}</ul>
    </details>`;
  }

  private shown(rig: Rig): TemplateResult {
    const { doc, found } = rig;
    const [worst] = found.answers;
    const cautions = new Set(
      found.answers.slice(0, 3).flatMap(({ answer }) => answer.cautions.slice(0, 1)),
    );
    return html`<h1>${doc.front.title}</h1>
      ${
        worst
          ? html`<section class="verdict level-${levelOf(worst.topic.outcomes, worst.answer.outcome)}" aria-label="Verdict">
              ${mark(levelOf(worst.topic.outcomes, worst.answer.outcome))}
              <p class="word">${begun(worst.answer.words)}</p>
              <p>By ${worst.topic.title.toLowerCase()}${
                worst.moment === null ? '' : `, ${worst.moment}`
              }: ${worst.answer.sentence}</p>
            </section>`
          : html`<p>Nothing told decides anything yet.</p>`
      }
      ${this.momentsTable(rig)}
      ${found.answers.map((each) => this.topicSection(rig, each))}
      ${
        cautions.size === 0
          ? nothing
          : html`<section>
              <h2>Be careful</h2>
              <ul>${[...cautions].map((each) => html`<li>${each}</li>`)}</ul>
            </section>`
      }
      ${this.needsSection(rig)}`;
  }

  protected override render() {
    if (this.missing !== undefined) {
      return html`<h1>Whole rig</h1><p>${this.missing} <a href="#/cases">All cases</a> are one page back.</p>`;
    }
    return this.rig ? this.shown(this.rig) : html`<p class="soft">Asking every topic …</p>`;
  }
}

customElements.define('rig-page', RigPage);
