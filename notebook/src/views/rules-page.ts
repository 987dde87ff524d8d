import { topics } from '@tarebook/rules';
import type { Topic } from '@tarebook/rules/engine';
import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing } from 'lit';
import { keyed } from 'lit/directives/keyed.js';
import '../rules/rules.css';
import '../rules/house-form';
import { PlainElement } from '../elements/plain-element';
import {
  decisionsSection,
  listsSection,
  simulationsSection,
  tablesSection,
} from '../rules/beyond-sections';
import { catalogueSection } from '../rules/catalogue-section';
import {
  cautionsSection,
  factsSection,
  findingsSection,
  formulasSection,
  limitsSection,
  outcomesSection,
  sourcesSection,
} from '../rules/topic-sections';
import { type Changed, changedSince } from '../rules/versions';

/** A topic as a page a person reads: what it asks, how it reckons, what it says, by which source. */
export class RulesPage extends PlainElement {
  static override properties = {
    topicId: { attribute: false },
    at: { attribute: false },
    system: { attribute: false },
    changed: { state: true },
  };
  declare topicId: string | undefined;
  /** The formula that the address ends in. */
  declare at: string;
  declare system: UnitSystem;
  declare changed: { readonly topic: string; readonly since: readonly Changed[] } | undefined;
  private went = '';

  private get topic(): Topic | undefined {
    const { topicId } = this;
    return topicId !== undefined && Object.hasOwn(topics, topicId) ? topics[topicId] : undefined;
  }

  protected override updated(): void {
    const { topic, at } = this;
    if (topic && this.changed?.topic !== topic.id) {
      this.changed = { topic: topic.id, since: [] };
      changedSince(topic).then(
        (since) => {
          this.changed = { topic: topic.id, since };
        },
        () => undefined,
      );
    }
    // A formula too wide for the page can be scrolled, by keyboard too.
    for (const math of this.querySelectorAll<HTMLElement>('.math')) {
      if (math.scrollWidth > math.clientWidth) math.tabIndex = 0;
      else math.removeAttribute('tabindex');
    }
    if (at === this.went) return;
    this.went = at;
    // After the page's own focus on arrival.
    if (at) setTimeout(() => document.getElementById(`formula-${at}`)?.focus());
  }

  private versions(topic: Topic) {
    const since = this.changed?.topic === topic.id ? this.changed.since : [];
    if (since.length === 0) return nothing;
    return html`<h2>What changed</h2>
      ${since.map(
        ({ from, parts }) => html`<h3>Since ${from}</h3>
          ${parts.length === 0 ? html`<p>Nothing but the number.</p>` : nothing}
          ${parts.map(({ part, says }) => html`<p>${part}</p><ul class="small">${says.map((each) => html`<li>${each}</li>`)}</ul>`)}`,
      )}`;
  }

  private read(topic: Topic) {
    return html`
      <p class="soft small"><a href="#/rules">Rules</a> · ${topic.id} ${topic.version}</p>
      <h1>${topic.title}</h1>
      <p>${topic.question}</p>
      ${outcomesSection(topic)}
      ${limitsSection(topic)}
      ${keyed(topic.id, html`<house-form .topic=${topic} .system=${this.system}></house-form>`)}
      ${factsSection(topic, this.system)}
      ${tablesSection(topic)}
      ${formulasSection(topic)}
      ${simulationsSection(topic)}
      ${decisionsSection(topic)}
      ${findingsSection(topic)}
      ${catalogueSection(topic)}
      ${listsSection(topic)}
      ${cautionsSection(topic)}
      ${sourcesSection(topic)}
      ${this.versions(topic)}
    `;
  }

  protected override render() {
    const { topic, topicId } = this;
    if (topic) return this.read(topic);
    return html`
      <h1>Rules</h1>
      ${topicId === undefined ? nothing : html`<p role="status">There is no topic “${topicId}”; these are the topics there are.</p>`}
      <ul class="cases">${Object.values(topics).map(
        ({ id, title, version, question }) => html`<li>
          <a href="#/rules/${id}">${title}</a><span class="num small">${version}</span><span class="from">${question}</span>
        </li>`,
      )}</ul>
    `;
  }
}

customElements.define('rules-page', RulesPage);
