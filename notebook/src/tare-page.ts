import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { keyed } from 'lit/directives/keyed.js';
import { hearFiles } from './elements/file-events';
import { idle } from './elements/idle';
import { PlainElement } from './elements/plain-element';
import { partMissing } from './sections/once-shown';
import { type Address, caseAddress, partOf, readAddress } from './state/address';
import { filedCase } from './state/filed';
import { readHouses } from './state/house';
import { type Judged, judgeInSteps } from './state/judged';
import { type Elsewhere, hearElsewhere, keptCase } from './state/kept';
import { openReader, openReadersFor, openYaml } from './state/reading';
import type { Shared, SharedCase } from './state/shared';
import { openAllTopics, openTopic } from './state/topics';
import './views/case-page';
import { descriptions, menu, pages } from './views/page-words';

type Texts = { readonly filed: string | undefined; readonly kept: string | undefined };
/** A case as it came and as it was left here; the first of these, judged. */
type Found = Texts & {
  readonly judged: Judged | undefined;
  /** Whether it came with a link just now; whoever opens one is shown the reader's face. */
  readonly byLink: boolean;
};

/** What stands within a page of the menu, how it is called, and where it belongs. */
const withinNames = {
  ...{ case: 'Case', beside: 'Side by side', note: 'Note', rig: 'Whole rig', topic: 'Rules' },
} as const;
const menuOf = {
  ...{ case: 'cases', beside: 'cases', note: 'cases', rig: 'cases', topic: 'rules' },
} as const;
type Within = Extract<Address, { page: keyof typeof withinNames }>;
const isWithin = (address: Address): address is Within => Object.hasOwn(withinNames, address.page);

/** The frame of every page: the head, the units, and the page that the address names. */
export class TarePage extends PlainElement {
  static override properties = {
    address: { state: true },
    found: { state: true },
    system: { state: true },
    elsewhere: { state: true },
    unread: { state: true },
    broken: { state: true },
    over: { state: true },
    partial: { state: true },
  };
  declare address: Address;
  declare found: Found | undefined;
  declare system: UnitSystem;
  /** What another window did to the case on this page. */
  declare elsewhere: Elsewhere | undefined;
  /** Whether the part of the page that is wanted could not be had. */
  declare unread: boolean;
  /** Why the link that was opened leads to no case; '' while all is well. */
  declare broken: string;
  /** Whether files hang over the page just now. */
  declare over: boolean;
  /** Whether a part below could not be had; what stands there stands. */
  declare partial: boolean;
  private visit = 0;
  private stop = new AbortController();
  private unhear: (() => void) | undefined;

  /** The page's own drawing takes the place of what stood until now. */
  protected override createRenderRoot(): this {
    this.replaceChildren();
    return super.createRenderRoot();
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.system = 'us';
    this.unread = false;
    this.broken = '';
    this.over = false;
    this.partial = false;
    addEventListener('hashchange', this.arrive);
    this.stop = new AbortController();
    const hover = (over: boolean): void => {
      this.over = over;
    };
    document.addEventListener(
      partMissing,
      () => {
        this.partial = true;
      },
      { signal: this.stop.signal },
    );
    hearFiles({ hover, open: this.open }, this.stop.signal);
    this.unhear = hearElsewhere(this.hear);
    this.arrive().then(() => {
      // Whatever no case needs comes once the case stands.
      const rest = async (): Promise<void> => {
        await idle();
        import('./elements/drop-cases').catch(() => undefined);
        await idle();
        import('./offline/page-foot').catch(() => undefined);
      };
      if (document.readyState === 'complete') setTimeout(rest, 500);
      else addEventListener('load', () => setTimeout(rest, 500), { once: true });
    });
  }

  override disconnectedCallback(): void {
    removeEventListener('hashchange', this.arrive);
    this.stop.abort();
    this.unhear?.();
    super.disconnectedCallback();
  }

  private open = async (files: readonly File[]): Promise<void> => {
    try {
      const isSheet = files.some(({ name }) => /\.(csv|tsv|txt|xlsx?)$/i.test(name));
      if (this.address.page === 'yard' && isSheet) {
        const { YardPage } = await import('./views/yard-page');
        const yard = this.querySelector('yard-page');
        if (yard instanceof YardPage) await yard.take(files);
        return;
      }
      const { DropCases } = await import('./elements/drop-cases');
      const at = this.querySelector('drop-cases');
      if (at instanceof DropCases) await at.open(files);
    } catch {
      this.unread = true;
    }
  };

  private hear = (news: Elsewhere): void => {
    const { address, elsewhere } = this;
    if (address.page !== 'case' || elsewhere?.kind === 'apart') return;
    if (news.topic !== address.topic || news.name !== address.name) return;
    // From now on a reload opens what was typed here, not what was typed elsewhere.
    if (news.kind === 'apart') history.replaceState(null, '', caseAddress(news.topic, news.own));
    this.elsewhere = news;
  };

  private arrive = async (): Promise<void> => {
    const address = readAddress(location.hash);
    this.visit += 1;
    const visit = this.visit;
    this.found = undefined;
    this.elsewhere = undefined;
    this.partial = false;
    this.broken = '';
    this.address = address;
    // The page that was here goes first, and asks for what was typed on it to be kept.
    await this.updateComplete;
    try {
      await this.fetch(address, visit);
      this.unread = false;
    } catch {
      this.unread = true;
    }
    if (visit !== this.visit) return;
    await this.updateComplete;
    await this.describe();
    // A formula that the address names takes the focus itself.
    const named = address.page === 'topic' && partOf(location.hash) !== '';
    if (visit > 1 && !named) this.querySelector('main')?.focus();
  };

  /** Gets what an address needs and is not here yet. */
  private async fetch(address: Address, visit: number): Promise<void> {
    // The text travels beside the rule set, not after it.
    const own = address.page === 'case' && address.packed === undefined;
    const text = own ? filedCase(address.topic, address.name) : undefined;
    if (address.page === 'case') await Promise.all([readHouses(), openTopic(address.topic), text]);
    if (address.page === 'cases' || address.page === 'today') await readHouses();
    if (address.page === 'class') {
      await Promise.all([readHouses(), openAllTopics(), openReader(), openYaml()]);
    }
    if (address.page === 'case' && address.packed !== undefined) {
      const { openShared } = await import('./state/shared');
      const opened = await openShared(address.topic, address.name, address.packed);
      const shared = 'says' in opened ? opened : await this.triedFirst(address.topic, opened);
      if (!('says' in shared)) await openReadersFor([shared.filed, shared.kept]);
      const found = 'says' in shared ? undefined : await this.judgedFirst(shared, true);
      if (visit !== this.visit) return;
      if ('says' in shared) this.broken = shared.says;
      else {
        this.address = { page: 'case', topic: address.topic, name: shared.name };
        this.found = found;
      }
    } else if (address.page === 'case') {
      const { topic, name } = address;
      const filed = await text;
      // A device that refuses storage still shows what came with the page.
      const kept = await keptCase(topic, name).catch(() => undefined);
      await openReadersFor([filed, kept?.text]);
      const found = await this.judgedFirst({ filed, kept: kept?.text }, false);
      if (visit === this.visit) this.found = found;
    }
    if (address.page === 'today') await import('./views/today-page');
    if (address.page === 'cases') await import('./views/cases-page');
    if (address.page === 'class') await import('./views/class-page');
    if (address.page === 'questions') {
      await Promise.all([readHouses(), import('./views/questions-page')]);
    }
    if (address.page === 'yard') await import('./views/yard-page');
    if (address.page === 'beside') await import('./views/beside-page');
    if (address.page === 'note') await import('./views/note-page');
    if (address.page === 'rig') await Promise.all([readHouses(), import('./views/rig-page')]);
    if (address.page === 'rules' || address.page === 'topic') await import('./views/rules-page');
  }

  /** Whatever comes with a link is read and judged beside the page before it is here. */
  private async triedFirst(topic: string, shared: SharedCase): Promise<Shared> {
    const { whyTooMuch } = await import('./aside/first');
    const says = await whyTooMuch('This link', [{ topic, text: shared.filed }]);
    return says === undefined ? shared : { says };
  }

  private async judgedFirst(texts: Texts, byLink: boolean): Promise<Found> {
    const { system } = this;
    const text = texts.filed ?? texts.kept;
    const judged = text === undefined ? undefined : await judgeInSteps(text, system);
    return { ...texts, byLink, judged: system === this.system ? judged : undefined };
  }

  private async describe(): Promise<void> {
    const { address } = this;
    const page = this.querySelector('main > :not(h1, p, div)');
    if (page instanceof LitElement) await page.updateComplete;
    const first = this.querySelector('main h1')?.textContent?.trim();
    const name = isWithin(address) ? first : pages[address.page];
    document.title = `${name || 'Case'} · Tarebook`;
    document
      .querySelector('meta[name="description"]')
      ?.setAttribute('content', descriptions[address.page]);
  }

  private body(): TemplateResult {
    const { address, found, system } = this;
    if (this.unread) {
      return html`<h1>${isWithin(address) ? withinNames[address.page] : pages[address.page]}</h1>
        <p class="notice" role="alert">This part of the page could not be read: the network is away, or a newer page has taken its place.</p>
        <p><button @click=${() => location.reload()}>Reload</button></p>`;
    }
    switch (address.page) {
      case 'today':
        return html`<today-page .system=${system}></today-page>`;
      case 'cases':
        return html`<cases-page></cases-page>`;
      case 'rules':
        return html`<rules-page .topicId=${undefined} .system=${system}></rules-page>`;
      case 'topic':
        return html`<rules-page .topicId=${address.topic} .at=${partOf(location.hash)} .system=${system}></rules-page>`;
      case 'note':
        return html`${keyed(address.name, html`<note-page .name=${address.name}></note-page>`)}`;
      case 'beside':
        return html`<beside-page .system=${system}></beside-page>`;
      case 'questions':
        return html`<questions-page .view=${location.hash.split('/')[2] ?? ''}></questions-page>`;
      case 'rig':
        return html`${keyed(
          location.hash,
          html`<rig-page .name=${address.name} .packed=${address.packed}></rig-page>`,
        )}`;
      case 'yard':
        return html`<yard-page .system=${system}></yard-page>`;
      case 'class':
        return html`${keyed(
          location.hash,
          html`<class-page .view=${location.hash.split('/')[2] ?? ''} .system=${system}></class-page>`,
        )}`;
      case 'case': {
        if (this.broken) {
          return html`<h1>This link leads to no case</h1>
            <p class="notice" role="alert">${this.broken}</p>
            <p><a href="#/cases">All cases</a> are one page back.</p>`;
        }
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
            .first=${found.judged}
            .byLink=${found.byLink}
            .system=${system}
          ></case-page>`,
        )}`;
      }
    }
  }

  private news() {
    const { elsewhere, partial } = this;
    if (partial) {
      return html`<p class="notice">A part of this page could not be read: the network is away, or a newer page has
        taken its place. What you typed is kept. <button @click=${() => location.reload()}>Reload</button></p>`;
    }
    if (!elsewhere) return nothing;
    const { topic, name } = elsewhere;
    return elsewhere.kind === 'changed'
      ? html`<p class="notice">This case was changed in another window.
          <button @click=${this.arrive}>Show it as it is there</button></p>`
      : html`<p class="notice">Another window changed this case too. Both are kept: what you type here goes on as
          a case of its own, and <a href=${caseAddress(topic, name)}>the other one</a> stays where it was.</p>`;
  }

  protected override render() {
    const { address, system } = this;
    const here = isWithin(address) ? menuOf[address.page] : address.page;
    const other = system === 'us' ? 'metric' : 'us';
    return html`
      <a class="skip" href="#main" @click=${(event: Event) => {
        event.preventDefault();
        this.querySelector('main')?.focus();
      }}>To the page</a>
      <header class="masthead">
        <strong>Tarebook</strong>
        <nav aria-label="Pages">
          ${menu.map(
            (id) =>
              html`<a href="#/${id}" aria-current=${id === here ? 'page' : nothing}>${pages[id]}</a>`,
          )}
        </nav>
        <button class="units" @click=${() => {
          this.system = other;
        }}>${system === 'us' ? 'Show kg' : 'Show lb'}</button>
      </header>
      <main id="main" tabindex="-1"><div role="status">${this.news()}</div>${this.body()}</main>
      <page-foot></page-foot>
      <drop-cases .over=${this.over}></drop-cases>
    `;
  }
}

customElements.define('tare-page', TarePage);
