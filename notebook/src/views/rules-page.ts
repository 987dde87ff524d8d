import { topics } from '@tarebook/rules';
import type { Topic } from '@tarebook/rules/engine';
import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing } from 'lit';
import { keyed } from 'lit/directives/keyed.js';
import '../rules/rules.css';
import '../rules/cases-since';
import '../rules/house-form';
import { PlainElement } from '../elements/plain-element';
import {
  decisionsSection,
  listsSection,
  simulationsSection,
  tablesSection,
} from '../rules/beyond-sections';
import { catalogueSection } from '../rules/catalogue-section';
import { findInRules, sectionId } from '../rules/search';
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

/** So many of what was found are drawn. */
const mostHits = 40;

/** A topic as a page a person reads: what it asks, how it reckons, what it says, by which source. */
export class RulesPage extends PlainElement {
  static override properties = {
    topicId: { attribute: false },
    at: { attribute: false },
    system: { attribute: false },
    changed: { state: true },
    sections: { state: true },
    search: { state: true },
  };
  declare topicId: string | undefined;
  /** The formula that the address ends in. */
  declare at: string;
  declare system: UnitSystem;
  declare changed: { readonly topic: string; readonly since: readonly Changed[] } | undefined;
  /** The sections of the topic as they are drawn, for its contents. */
  declare sections: readonly string[] | undefined;
  /** What is looked for over all topics. */
  declare search: string;
  private went = '';

  constructor() {
    super();
    this.search = '';
  }

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
    this.listSections();
    if (at === this.went) return;
    this.went = at;
    // After the page's own focus on arrival.
    if (at) setTimeout(() => this.goTo(at));
  }

  /** Each section has an address of its own, made of its heading. */
  private listSections(): void {
    const headings = [...this.querySelectorAll<HTMLElement>('h2')];
    for (const each of headings) {
      each.id = `section-${sectionId(each.textContent ?? '')}`;
      each.tabIndex = -1;
    }
    const words = headings.map(({ textContent }) => textContent?.trim() ?? '');
    if (words.join('\n') !== this.sections?.join('\n')) this.sections = words;
  }

  /** To a section, a formula or a fact of the topic. */
  private goTo(at: string): void {
    const found = ['section', 'formula', 'fact']
      .map((kind) => document.getElementById(`${kind}-${at}`))
      .find((each) => each !== null);
    if (!found) return;
    if (found.tabIndex < 0) found.tabIndex = -1;
    found.scrollIntoView({ block: 'start' });
    found.focus();
  }

  private contents(topic: Topic) {
    const { sections = [] } = this;
    return html`<nav class="contents" aria-label="On this page"><ul>${sections.map(
      (each) => html`<li><a href="#/rules/${topic.id}/${sectionId(each)}">${each}</a></li>`,
    )}</ul></nav>`;
  }

  private searched() {
    const { search } = this;
    const hits = search.trim() === '' ? [] : findInRules(search);
    return html`<div class="finder"><label class="wide-field">Find in the rules: a fact, a limit, a formula, a word people use<br />
        <input type="search" .value=${search} @input=${({ target }: Event) => {
          if (target instanceof HTMLInputElement) this.search = target.value;
        }} /></label></div>
      ${
        search.trim() === ''
          ? nothing
          : html`<p class="small soft" role="status">${hits.length === 0 ? 'Nothing in the rules has these words.' : `${hits.length === 1 ? '1 place' : `${hits.length} places`}, the nearest first.`}</p>
            <ul class="cases">${hits
              .slice(0, mostHits)
              .map(
                ({ href, title, of }) =>
                  html`<li><a href=${href}>${title}</a><span class="from">${of}</span></li>`,
              )}</ul>`
      }`;
  }

  private versions(topic: Topic) {
    const since = this.changed?.topic === topic.id ? this.changed.since : [];
    if (since.length === 0) return nothing;
    return html`<h2>What changed</h2>
      ${since.map(
        ({ from, parts }) => html`<h3>Since ${from}</h3>
          ${keyed(`${topic.id} ${from}`, html`<cases-since .topic=${topic} .from=${from}></cases-since>`)}
          ${parts.length === 0 ? html`<p>Nothing but the number.</p>` : nothing}
          ${parts.map(({ part, says }) => html`<p>${part}</p><ul class="small">${says.map((each) => html`<li>${each}</li>`)}</ul>`)}`,
      )}`;
  }

  private read(topic: Topic) {
    return html`
      <p class="soft small"><a href="#/rules">Rules</a> · ${topic.id} ${topic.version}</p>
      <h1>${topic.title}</h1>
      <p>${topic.question}</p>
      ${this.contents(topic)}
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
      ${this.searched()}
      <h2>Topics</h2>
      <ul class="cases">${Object.values(topics).map(
        ({ id, title, version, question }) => html`<li>
          <a href="#/rules/${id}">${title}</a><span class="num small">${version}</span><span class="from">${question}</span>
        </li>`,
      )}</ul>
    `;
  }
}

customElements.define('rules-page', RulesPage);
