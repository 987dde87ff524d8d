import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing, type TemplateResult } from 'lit';
import { keyed } from 'lit/directives/keyed.js';
import { PlainElement } from './elements/plain-element';
import { type Address, readAddress } from './state/address';
import { filedCase } from './state/filed';
import { keptCase } from './state/kept';
import './views/case-page';

const pages = {
  cases: 'Cases',
  class: 'Class',
  questions: 'Questions',
  yard: 'Yard',
  rules: 'Rules',
} as const;

/** What will stand on the pages that are not written yet. */
const later = {
  class:
    'Here a trainer will walk new staff through cases, one step at a time, each guessing before the working is shown.',
  questions:
    'Here will stand what people asked, how often, which case answers it, and what is still open.',
  yard: 'Here every vehicle of the catalogue will stand against every trailer.',
} as const;

type Found = { readonly filed: string | undefined; readonly kept: string | undefined };

/** The frame of every page: the head, the units, and the page that the address names. */
export class TarePage extends PlainElement {
  static override properties = {
    address: { state: true },
    found: { state: true },
    system: { state: true },
  };
  declare address: Address;
  declare found: Found | undefined;
  declare system: UnitSystem;
  private visit = 0;

  override connectedCallback(): void {
    super.connectedCallback();
    this.system = 'us';
    addEventListener('hashchange', this.arrive);
    this.arrive();
  }

  override disconnectedCallback(): void {
    removeEventListener('hashchange', this.arrive);
    super.disconnectedCallback();
  }

  private arrive = async (): Promise<void> => {
    const address = readAddress(location.hash);
    this.visit += 1;
    const visit = this.visit;
    this.found = undefined;
    this.address = address;
    if (address.page === 'case') {
      const { topic, name } = address;
      const filed = await filedCase(topic, name);
      // A device that refuses storage still shows what came with the page.
      const kept = await keptCase(topic, name).catch(() => undefined);
      if (visit === this.visit) this.found = { filed, kept: kept?.text };
    }
    if (address.page === 'cases') await import('./views/cases-page');
    if (address.page === 'rules' || address.page === 'topic') await import('./views/rules-page');
    document.title = `${this.heading()} · Tarebook`;
    if (visit > 1) this.querySelector('main')?.focus();
  };

  private heading(): string {
    const { address } = this;
    if (address.page === 'case') return address.name;
    return address.page === 'topic' ? 'Rules' : pages[address.page];
  }

  private body(): TemplateResult {
    const { address, found, system } = this;
    switch (address.page) {
      case 'cases':
        return html`<cases-page></cases-page>`;
      case 'rules':
        return html`<rules-page .topicId=${undefined} .system=${system}></rules-page>`;
      case 'topic':
        return html`<rules-page .topicId=${address.topic} .system=${system}></rules-page>`;
      case 'case': {
        if (!found) return html`<p class="soft">Reading the case …</p>`;
        if (found.filed === undefined && found.kept === undefined) {
          return html`<h1>No such case</h1>
            <p>There is no case “${address.name}” here. <a href="#/cases">All cases</a> are one page back.</p>`;
        }
        const key = `${address.topic}/${address.name}`;
        return html`${keyed(
          key,
          html`<case-page
            .topicId=${address.topic}
            .name=${address.name}
            .filed=${found.filed}
            .kept=${found.kept}
            .system=${system}
          ></case-page>`,
        )}`;
      }
      default:
        return html`<h1>${pages[address.page]}</h1>
          <p>${later[address.page]} It is not written yet; until then <a href="#/cases">the cases</a> serve.</p>`;
    }
  }

  protected override render() {
    const { address, system } = this;
    const here =
      address.page === 'case' ? 'cases' : address.page === 'topic' ? 'rules' : address.page;
    const other = system === 'us' ? 'metric' : 'us';
    return html`
      <a class="skip" href="#main" @click=${(event: Event) => {
        event.preventDefault();
        this.querySelector('main')?.focus();
      }}>To the page</a>
      <header class="masthead">
        <strong>Tarebook</strong>
        <nav aria-label="Pages">
          ${Object.entries(pages).map(
            ([id, title]) =>
              html`<a href="#/${id}" aria-current=${id === here ? 'page' : nothing}>${title}</a>`,
          )}
        </nav>
        <button class="units" @click=${() => {
          this.system = other;
        }}>${system === 'us' ? 'Show metric' : 'Show US units'}</button>
      </header>
      <main id="main" tabindex="-1">${this.body()}</main>
    `;
  }
}

customElements.define('tare-page', TarePage);
