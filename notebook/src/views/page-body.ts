import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing, type TemplateResult } from 'lit';
import { keyed } from 'lit/directives/keyed.js';
import { type Address, partOf } from '../state/address';
import type { CaseAddress, Found, NotOpened } from './found-case';
import { pages } from './page-words';

/** What stands within a page of the menu, how it is called, and where it belongs. */
const withinNames = {
  ...{ case: 'Case', beside: 'Side by side', note: 'Note', rig: 'Whole rig', topic: 'Rules' },
} as const;
const menuOf = {
  ...{ case: 'cases', beside: 'cases', note: 'cases', rig: 'cases', topic: 'rules' },
} as const;
type Within = Extract<Address, { page: keyof typeof withinNames }>;

export const isWithin = (address: Address): address is Within =>
  Object.hasOwn(withinNames, address.page);

/** The page of the menu that an address belongs to. */
export const menuPage = (address: Address): string =>
  isWithin(address) ? menuOf[address.page] : address.page;

export const unreadPage = (address: Address): TemplateResult => html`
  <h1>${isWithin(address) ? withinNames[address.page] : pages[address.page]}</h1>
  <p class="notice" role="alert">This part of the page could not be read: the network is away, or a newer page has taken its place.</p>
  <p><button @click=${() => location.reload()}>Reload</button></p>`;

function notOpened({ says, text }: NotOpened, name: string): TemplateResult {
  const save = async (): Promise<void> => {
    const { saveAs } = await import('../state/files');
    saveAs(`${name}.md`, text ?? '', 'text/markdown');
  };
  return html`<h1>${text === undefined ? 'This link leads to no case' : 'This case is not opened'}</h1>
    <p class="notice" role="alert">${says}</p>
    ${text === undefined ? nothing : html`<p>It stays on this device as it is. <button @click=${save}>Save it as a file</button></p>`}
    <p><a href="#/cases">All cases</a> are one page back.</p>`;
}

function caseBody(
  { topic, name }: CaseAddress,
  found: Found | NotOpened | undefined,
  system: UnitSystem,
): TemplateResult {
  if (!found) return html`<p class="soft">Reading the case …</p>`;
  if ('says' in found) return notOpened(found, name);
  if (found.filed === undefined && found.kept === undefined) {
    return html`<h1>No such case</h1>
      <p>There is no case “${name}” here. <a href="#/cases">All cases</a> are one page back.</p>`;
  }
  return html`${keyed(
    `${topic}/${name}`,
    html`<case-page
      .topicId=${topic}
      .name=${name}
      .filed=${found.filed}
      .kept=${found.kept}
      .first=${found.judged}
      .byLink=${found.byLink}
      .system=${system}
    ></case-page>`,
  )}`;
}

/** The page that an address names, once its scripts are here. */
export function pageBody(
  address: Address,
  found: Found | NotOpened | undefined,
  system: UnitSystem,
): TemplateResult {
  const view = location.hash.split('/')[2] ?? '';
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
      return html`<questions-page .view=${view}></questions-page>`;
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
        html`<class-page .view=${view} .system=${system}></class-page>`,
      )}`;
    case 'case':
      return caseBody(address, found, system);
  }
}
