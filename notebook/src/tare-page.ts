import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, LitElement, nothing } from 'lit';
import { hearFiles } from './elements/file-events';
import { idle } from './elements/idle';
import { PlainElement } from './elements/plain-element';
import { partMissing } from './sections/once-shown';
import { type Address, caseAddress, partOf, readAddress } from './state/address';
import { readHouses } from './state/house';
import { type Elsewhere, hearElsewhere } from './state/kept';
import './views/case-page';
import { type Found, foundCase, type NotOpened } from './views/found-case';
import { isWithin, menuPage, pageBody, unreadPage } from './views/page-body';
import { menu, pages } from './views/page-words';

/** The frame of every page: the head, the units, and the page that the address names. */
export class TarePage extends PlainElement {
  static override properties = {
    address: { state: true },
    found: { state: true },
    system: { state: true },
    elsewhere: { state: true },
    unread: { state: true },
    over: { state: true },
    partial: { state: true },
  };
  declare address: Address;
  /** The case that the address names; undefined while it is fetched. */
  declare found: Found | NotOpened | undefined;
  declare system: UnitSystem;
  /** What another window did to the case on this page. */
  declare elsewhere: Elsewhere | undefined;
  /** Whether the part of the page that is wanted could not be had. */
  declare unread: boolean;
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
      const { openFiles } = await import('./elements/open-files');
      await openFiles(this, files);
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
    if (address.page === 'cases' || address.page === 'today') await readHouses();
    if (address.page === 'case') {
      const { system } = this;
      const found = await foundCase(address, system);
      if (visit !== this.visit) return;
      if ('says' in found) this.found = found;
      else {
        this.address = { page: 'case', topic: address.topic, name: found.name };
        // In another system's words it is judged once more where it is shown.
        this.found = system === this.system ? found : { ...found, judged: undefined };
      }
    }
    if (address.page === 'today') await import('./views/today-page');
    if (address.page === 'cases') await import('./views/cases-page');
    if (address.page === 'class') await (await import('./views/open-class')).openClass();
    if (address.page === 'questions') {
      await Promise.all([readHouses(), import('./views/questions-page')]);
    }
    if (address.page === 'yard') await import('./views/yard-page');
    if (address.page === 'beside') await import('./views/beside-page');
    if (address.page === 'note') await import('./views/note-page');
    if (address.page === 'rig') await Promise.all([readHouses(), import('./views/rig-page')]);
    if (address.page === 'rules' || address.page === 'topic') await import('./views/rules-page');
  }

  private async describe(): Promise<void> {
    const { address } = this;
    const page = this.querySelector('main > :not(h1, p, div)');
    if (page instanceof LitElement) await page.updateComplete;
    const first = this.querySelector('main h1')?.textContent?.trim();
    const name = isWithin(address) ? first : pages[address.page];
    document.title = `${name || 'Case'} · Tarebook`;
    // Said to whoever looks from outside; a page without a network does without.
    import('./views/page-descriptions')
      .then(({ describePage }) => address === this.address && describePage(address.page))
      .catch(() => undefined);
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
    const here = menuPage(address);
    const [other, unit] = system === 'us' ? (['metric', 'kg'] as const) : (['us', 'lb'] as const);
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
        <button class="units" aria-label="Show ${unit}" @click=${() => {
          this.system = other;
        }}><span>Show </span>${unit}</button>
      </header>
      <main id="main" tabindex="-1"><div role="status">${this.news()}</div>${this.unread ? unreadPage(address) : pageBody(address, this.found, system)}</main>
      <page-foot></page-foot>
      <drop-cases .over=${this.over}></drop-cases>
    `;
  }
}

customElements.define('tare-page', TarePage);
