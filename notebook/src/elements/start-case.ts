import { topics } from '@tarebook/rules';
import type { Topic } from '@tarebook/rules/engine';
import { html, nothing, type TemplateResult } from 'lit';
import { blankCase, type Started } from '../state/blank';
import {
  asksFor,
  bodyOf,
  catalogueFacts,
  type Entry,
  trailers,
  vehicles,
} from '../state/catalogue';
import { PlainElement } from './plain-element';

/** A case was put together, to be opened. */
export class CaseStarted extends CustomEvent<{ topic: string; text: string }> {
  constructor(topic: string, text: string) {
    super('case-started', { detail: { topic, text }, bubbles: true });
  }
}

const typedIn = ({ target }: Event): string =>
  target instanceof HTMLSelectElement ? target.value : '';

/** “Nov 28, 5:20 PM” */
const startedAt = (now: Date): string =>
  now.toLocaleString('en-US', {
    month: 'short',
    day: 'numeric',
    hour: 'numeric',
    minute: '2-digit',
  });

const called = (entry: Entry): string => `${entry.name} (${bodyOf(entry)})`;

/** Starts a case: blank for a topic, or with what the catalogue knows of a vehicle and a trailer. */
export class StartCase extends PlainElement {
  static override properties = {
    topicId: { state: true },
    vehicle: { state: true },
    trailer: { state: true },
  };
  declare topicId: string;
  /** Names in the catalogue; '' where none is chosen. */
  declare vehicle: string;
  declare trailer: string;

  constructor() {
    super();
    this.topicId = Object.keys(topics)[0] ?? '';
    this.vehicle = '';
    this.trailer = '';
  }

  private chosen(topic: Topic) {
    const pick = (what: 'vehicle' | 'trailer', all: readonly Entry[], name: string) => {
      const found = asksFor(topic, what) ? all.find((each) => each.name === name) : undefined;
      return found ? [{ what, entry: found }] : [];
    };
    return [...pick('vehicle', vehicles, this.vehicle), ...pick('trailer', trailers, this.trailer)];
  }

  private start(topic: Topic): void {
    const chosen = this.chosen(topic);
    const facts: readonly Started[] = chosen.flatMap(({ what, entry }) =>
      catalogueFacts(topic, what, entry),
    );
    const names = chosen.map(({ entry }) => called(entry));
    const title =
      names.length > 0 ? names.join(' and ') : `${topic.title}, ${startedAt(new Date())}`;
    this.dispatchEvent(new CaseStarted(topic.id, blankCase(topic, title, facts)));
  }

  private choice(
    label: string,
    now: string,
    options: readonly (readonly [value: string, words: string])[],
    set: (value: string) => void,
  ): TemplateResult {
    return html`<label>${label}<br /><select @change=${(event: Event) => set(typedIn(event))}>
      ${options.map(([value, words]) => html`<option value=${value} ?selected=${value === now}>${words}</option>`)}
    </select></label>`;
  }

  private fromCatalogue(topic: Topic, what: 'vehicle' | 'trailer') {
    if (!asksFor(topic, what)) return nothing;
    const [all, now] = what === 'vehicle' ? [vehicles, this.vehicle] : [trailers, this.trailer];
    const options = all.map((entry) => [entry.name, called(entry)] as const);
    const label = what === 'vehicle' ? 'Vehicle of the catalogue' : 'Trailer of the catalogue';
    return this.choice(label, now, [['', 'none of these'], ...options], (name) => {
      if (what === 'vehicle') this.vehicle = name;
      else this.trailer = name;
    });
  }

  protected override render() {
    const topic = topics[this.topicId];
    if (!topic) return nothing;
    const all = Object.values(topics).map(({ id, title }) => [id, title] as const);
    const blank = this.chosen(topic).length === 0;
    return html`<div class="start">
      ${this.choice('What it is about', this.topicId, all, (id) => {
        this.topicId = id;
      })}
      ${this.fromCatalogue(topic, 'vehicle')} ${this.fromCatalogue(topic, 'trailer')}
      <button @click=${() => this.start(topic)}>${blank ? 'Start a blank case' : 'Start with these'}</button>
    </div>
    ${
      blank
        ? nothing
        : html`<p class="small soft">The catalogue is invented. In earnest the labels and the manual of that very vehicle and trailer count.</p>`
    }`;
  }
}

customElements.define('start-case', StartCase);
