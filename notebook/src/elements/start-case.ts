import type { Topic } from '@tarebook/rules/engine';
import { html, nothing, type TemplateResult } from 'lit';
import { topicsListed } from '../cases/topics';
import type { Entries, Entry } from '../state/catalogue';
import { openTopic } from '../state/topics';
import { PlainElement } from './plain-element';

/** A case was put together, to be opened. */
export class CaseStarted extends CustomEvent<{ topic: string; text: string }> {
  constructor(topic: string, text: string) {
    super('case-started', { detail: { topic, text }, bubbles: true });
  }
}

/** What the catalogue is asked, with what is in it. */
type Catalogue = Pick<typeof import('../state/catalogue'), 'asksFor' | 'catalogueFacts'> &
  Entries & { readonly isOwn: boolean };

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

/** Starts a case: blank for a topic, or with what the catalogue knows of a vehicle and a trailer. */
export class StartCase extends PlainElement {
  static override properties = {
    topicId: { state: true },
    vehicle: { state: true },
    trailer: { state: true },
    topic: { state: true },
    catalogue: { state: true },
    unread: { state: true },
  };
  declare topicId: string;
  /** Names in the catalogue; '' where none is chosen. */
  declare vehicle: string;
  declare trailer: string;
  /** The rule set and the catalogue, once somebody wants to start with what is in it. */
  declare topic: Topic | undefined;
  declare catalogue: Catalogue | undefined;
  declare unread: boolean;

  constructor() {
    super();
    this.topicId = topicsListed[0]?.id ?? '';
    this.vehicle = '';
    this.trailer = '';
    this.unread = false;
  }

  private chosen(): readonly { readonly what: 'vehicle' | 'trailer'; readonly entry: Entry }[] {
    const { topic, catalogue } = this;
    if (!topic || !catalogue) return [];
    const { asksFor, vehicles, trailers } = catalogue;
    const pick = (what: 'vehicle' | 'trailer', all: readonly Entry[], name: string) => {
      const found = asksFor(topic, what) ? all.find((each) => each.name === name) : undefined;
      return found ? [{ what, entry: found }] : [];
    };
    return [...pick('vehicle', vehicles, this.vehicle), ...pick('trailer', trailers, this.trailer)];
  }

  private called = ({ name, body }: Entry): string => `${name} (${body})`;

  private async start(): Promise<void> {
    try {
      const [topic, { blankCase }] = await Promise.all([
        openTopic(this.topicId),
        import('../state/blank'),
      ]);
      if (!topic) return;
      const chosen = this.chosen();
      const facts = chosen.flatMap(
        ({ what, entry }) => this.catalogue?.catalogueFacts(topic, what, entry) ?? [],
      );
      const names = chosen.map(({ entry }) => this.called(entry));
      const title =
        names.length > 0 ? names.join(' and ') : `${topic.title}, ${startedAt(new Date())}`;
      const asked = topicsListed.find(({ id }) => id === topic.id)?.asks ?? [];
      this.dispatchEvent(new CaseStarted(topic.id, blankCase(topic, title, asked, facts)));
    } catch {
      this.unread = true;
    }
  }

  private openCatalogue = async (): Promise<void> => {
    const wanted = this.topicId;
    try {
      const [topic, catalogue] = await Promise.all([
        openTopic(wanted),
        import('../state/catalogue'),
      ]);
      if (wanted !== this.topicId) return;
      const { asksFor, catalogueFacts, openCatalogue } = catalogue;
      const opened = await openCatalogue();
      if (wanted !== this.topicId) return;
      this.topic = topic;
      this.catalogue = { asksFor, catalogueFacts, ...opened };
    } catch {
      this.unread = true;
    }
  };

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

  private fromCatalogue(what: 'vehicle' | 'trailer') {
    const { topic, catalogue } = this;
    if (!topic || !catalogue?.asksFor(topic, what)) return nothing;
    const { vehicles, trailers } = catalogue;
    const [all, now] = what === 'vehicle' ? [vehicles, this.vehicle] : [trailers, this.trailer];
    const options = all.map((entry) => [entry.name, this.called(entry)] as const);
    const label = what === 'vehicle' ? 'Vehicle of the catalogue' : 'Trailer of the catalogue';
    return this.choice(label, now, [['', 'none of these'], ...options], (name) => {
      if (what === 'vehicle') this.vehicle = name;
      else this.trailer = name;
    });
  }

  private withCatalogue() {
    const { topic, catalogue } = this;
    if (!catalogue || !topic) {
      return html`<button type="button" class="quiet" @click=${this.openCatalogue}>With a vehicle or a trailer of the catalogue</button>`;
    }
    const none = !catalogue.asksFor(topic, 'vehicle') && !catalogue.asksFor(topic, 'trailer');
    return none
      ? html`<p class="small soft">The catalogue knows nothing that ${topic.title} asks for.</p>`
      : html`${this.fromCatalogue('vehicle')} ${this.fromCatalogue('trailer')}`;
  }

  protected override render() {
    const all = topicsListed.map(({ id, title }) => [id, title] as const);
    const blank = this.chosen().length === 0;
    return html`<div class="start">
      ${this.choice('What it is about', this.topicId, all, (id) => {
        this.topicId = id;
        this.topic = undefined;
        if (this.catalogue) void this.openCatalogue();
      })}
      ${this.withCatalogue()}
      <button @click=${this.start}>${blank ? 'Start a blank case' : 'Start with these'}</button>
    </div>
    ${
      this.unread
        ? html`<p class="error" role="alert">No case could be started: the network is away. Try it again once it is back.</p>`
        : nothing
    }
    ${
      blank
        ? nothing
        : this.catalogue?.isOwn
          ? html`<p class="small soft">The labels and the manual of that very vehicle and trailer count before the catalogue.</p>`
          : html`<p class="small soft">The catalogue is invented. In earnest the labels and the manual of that very vehicle and trailer count.</p>`
    }`;
  }
}

customElements.define('start-case', StartCase);
