import { askedOf } from '@tarebook/casebook';
import type { Topic } from '@tarebook/rules/engine';
import { html, nothing } from 'lit';
import { PlainElement } from '../elements/plain-element';
import { filedOf } from '../state/filed';
import { openReadersFor, readDocument } from '../state/reading';
import { openTopic } from '../state/topics';
import { saidOtherwise } from './otherwise';
import { released } from './versions';

type Otherwise = {
  readonly name: string;
  readonly title: string;
  readonly says: readonly string[];
};
type Found = { readonly asked: number; readonly otherwise: readonly Otherwise[] };

/** Lets the page be used between two cases. */
const breathe = () => new Promise((done) => setTimeout(done));

async function casesSince(topic: Topic, from: string): Promise<Found> {
  const [was, cases] = await Promise.all([
    released(topic.id, from),
    filedOf(topic.id),
    openTopic(topic.id),
  ]);
  if (!was) throw new Error(`${topic.id} ${from} is not kept.`);
  await openReadersFor(cases.map(({ text }) => text));
  const otherwise: Otherwise[] = [];
  for (const { name, text } of cases) {
    await breathe();
    const doc = readDocument(text);
    const says = saidOtherwise(was, topic, askedOf(doc).asked);
    if (says.length > 0) otherwise.push({ name, title: doc.front.title, says });
  }
  return { asked: cases.length, otherwise };
}

/** Which worked cases come out otherwise than by an earlier release; judged when it is opened. */
export class CasesSince extends PlainElement {
  static override properties = {
    topic: { attribute: false },
    from: { attribute: false },
    found: { state: true },
    wrong: { state: true },
  };
  declare topic: Topic;
  declare from: string;
  declare found: Found | undefined;
  declare wrong: boolean;
  private asked = false;

  constructor() {
    super();
    this.wrong = false;
  }

  private open({ currentTarget }: Event): void {
    const isOpen = currentTarget instanceof HTMLDetailsElement && currentTarget.open;
    if (this.asked || !isOpen) return;
    this.asked = true;
    casesSince(this.topic, this.from).then(
      (found) => {
        this.found = found;
      },
      () => {
        this.wrong = true;
      },
    );
  }

  private told({ asked, otherwise }: Found) {
    const [all, some] = [asked, otherwise.length];
    return html`<p>${
      some === 0
        ? `All ${all} worked cases come out as they did.`
        : `Of ${all} worked cases, ${some === 1 ? 'one comes' : `${some} come`} out otherwise.`
    }</p>
      <ul class="small">${otherwise.map(
        ({ name, title, says }) =>
          html`<li><a href="#/case/${this.topic.id}/${name}">${title}</a>: ${says.join(' ')}</li>`,
      )}</ul>`;
  }

  protected override render() {
    const { found, wrong } = this;
    return html`<details @toggle=${this.open}>
      <summary>Which worked cases come out otherwise than by ${this.from}</summary>
      <div role="status">${
        wrong
          ? html`<p>The cases could not be judged by ${this.from} here.</p>`
          : found
            ? this.told(found)
            : nothing
      }</div>
    </details>`;
  }
}

customElements.define('cases-since', CasesSince);
