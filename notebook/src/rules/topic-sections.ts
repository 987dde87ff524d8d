import { type Fact, type Formula, rulingsInWords, type Topic } from '@tarebook/rules/engine';
import { show, type UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing } from 'lit';
import { cited, families, sourcesIn } from './names';
import { nameShown, sourceShown } from './names-shown';
import './rules-formula';
import { spaced } from './tex';

const headed = (family: string): string => {
  const words = spaced(family);
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
};

function givenAs(fact: Fact, system: UnitSystem): string {
  if (fact.kind === 'rows') {
    return `rows: ${Object.values(fact.columns)
      .map(({ label }) => label.toLowerCase())
      .join(', ')}`;
  }
  if (fact.kind === 'choice') return fact.options.map(spaced).join(', ');
  if (fact.kind === 'yes-no') return 'yes or no';
  const { least, most, unit } = fact;
  return show({ lo: least, hi: most }, unit, system);
}

/** What is asked, in groups: what it is, how it is given, where to read it, what silence means. */
export const factsSection = ({ facts }: Topic, system: UnitSystem) => html`
  <h2>What is asked</h2>
  ${families(facts).map(
    ([family, group]) => html`<h3>${headed(family)}</h3>
      <dl class="asked">${group.map(
        ([
          id,
          fact,
        ]) => html`<dt id=${`fact-${id}`}>${fact.label} <span class="num small soft">${givenAs(fact, system)}</span></dt>
          <dd>${fact.means ? html`${fact.means} ` : nothing}${fact.ask} <span class="soft">Read it from: ${fact.where}.</span>
          ${fact.silent && !fact.silent.quiet ? html`<br /><span class="small soft">Not mentioned: ${fact.silent.says}</span>` : nothing}</dd>`,
      )}</dl>`,
  )}`;

export const formulaShown = (topic: Topic, id: string, formula: Formula) =>
  html`<rules-formula .topic=${topic} .name=${id} .formula=${formula}></rules-formula>`;

/** How it reckons: every formula, by family. */
export const formulasSection = (topic: Topic) => html`
  <h2>How it reckons</h2>
  ${families(topic.formulas).map(
    ([family, group]) =>
      html`<h3>${headed(family)}</h3>${group.map(([id, formula]) => formulaShown(topic, id, formula))}`,
  )}`;

/** The limits: what is held against what, and with which margin. */
export const limitsSection = (topic: Topic) =>
  Object.keys(topic.limits).length === 0
    ? nothing
    : html`<h2>The limits</h2>
  <table>
    <thead><tr><th scope="col">Limit</th><th scope="col">What uses it</th><th scope="col">Held against</th><th scope="col">Margin kept</th></tr></thead>
    <tbody>${Object.values(topic.limits).map(
      ({ label, used, limit, margin }) => html`<tr>
        <th scope="row">${label}</th><td>${nameShown(topic, used)}</td><td>${nameShown(topic, limit)}</td>
        <td>${margin ? nameShown(topic, margin) : html`<span class="soft">none</span>`}</td></tr>`,
    )}</tbody>
  </table>`;

const levelWords = {
  stop: 'Stop',
  unknown: 'Cannot say',
  if: 'To be made sure of',
  care: 'With care',
} as const;

/** What it says beside the limits, with the sentences as they are said. */
export const findingsSection = (topic: Topic) =>
  Object.keys(topic.findings).length === 0
    ? nothing
    : html`<h2>What it says beside the limits</h2>
  ${Object.values(topic.findings).map(
    (finding) => html`<h3>${finding.label}</h3>
      <dl class="asked">
        ${rulingsInWords(finding).map(({ level, when, says }) => html`<dt>${levelWords[level]}</dt><dd>“${says}” <span class="small soft">When ${when}.</span></dd>`)}
        <dt>Otherwise</dt><dd>“${finding.otherwise}”</dd>
      </dl>
      <p>${sourceShown(finding.source)}</p>`,
  )}`;

/** The words it answers with. */
export const outcomesSection = ({ outcomes }: Topic) => html`
  <h2>What it answers</h2>
  <ul>${Object.entries(outcomes).map(
    ([level, { words, sentence }]) =>
      html`<li><strong>${words}</strong>: “${sentence}${level === 'if' ? ', if …' : ''}”</li>`,
  )}</ul>`;

const standing = ({ length }: readonly string[]): string =>
  `${length} ${length === 1 ? 'entry stands' : 'entries stand'}`;

export const sourcesSection = (topic: Topic) => html`
  <h2>Sources</h2>
  <ul>${sourcesIn(topic).map(
    ({ source, holds }) => html`<li>${sourceShown(source)}
      <details><summary class="small" aria-label="${standing(holds)} on it: ${cited(source)}">${standing(holds)} on it</summary>
      <p class="small soft">${holds.join('; ')}</p></details></li>`,
  )}</ul>`;

export const cautionsSection = ({ cautions }: Topic) => html`
  <h2>What to be careful about</h2>
  <ul>${cautions.map(({ says }) => html`<li>${says}</li>`)}</ul>`;
