import type { Decision, Simulation, Topic } from '@tarebook/rules/engine';
import { html, nothing, type TemplateResult } from 'lit';
import { namedIn, numberIn } from './names';
import { sourceShown } from './names-shown';
import { spaced } from './tex';
import { formulaShown } from './topic-sections';

const labelOf = (topic: Topic, id: string): string =>
  topic.decisions?.[id]?.label ?? namedIn(topic, id)?.label ?? id;

const scrolled = (label: string, table: TemplateResult): TemplateResult =>
  html`<div class="wide" role="region" aria-label=${label} tabindex="0">${table}</div>`;

const entry = (words: string | readonly string[]): string =>
  words === '-' ? 'any' : (typeof words === 'string' ? [words] : words).map(spaced).join(' or ');

function decision(topic: Topic, { label, hit, on, rows, results, source }: Decision) {
  return html`<h3>${label}</h3>
    ${scrolled(
      label,
      html`<table>
        <thead><tr>${on.map((id) => html`<th scope="col">${labelOf(topic, id)}</th>`)}<th scope="col">Comes to</th></tr></thead>
        <tbody>${rows.map(
          ({ when, gives }) =>
            html`<tr>${when.map((words) => html`<td>${entry(words)}</td>`)}<td><strong>${results[gives]?.label ?? gives}</strong></td></tr>`,
        )}</tbody>
      </table>`,
    )}
    <p class="small soft">${hit === 'first' ? 'The topmost row that fits counts.' : 'One row fits.'}</p>
    <dl class="asked">${Object.values(results).map(
      ({ label: word, says }) => html`<dt>${word}</dt><dd>“${says}”</dd>`,
    )}</dl>
    <p>${sourceShown(source)}</p>`;
}

/** Decision tables, as tables. */
export const decisionsSection = (topic: Topic) =>
  Object.keys(topic.decisions ?? {}).length === 0
    ? nothing
    : html`<h2>How it decides</h2>${Object.values(topic.decisions ?? {}).map((each) => decision(topic, each))}`;

function simulation(topic: Topic, { label, steps, states, values, source }: Simulation) {
  return html`<h3>${label}</h3>
    <p class="soft small">${typeof steps === 'number' ? `${steps} steps` : `One step for each row of ${labelOf(topic, steps).toLowerCase()}`}; ${sourceShown(source)}</p>
    ${Object.entries(states).map(([name, { label: what, unit, start, next, source: from }]) => [
      formulaShown(topic, `${name}.start`, {
        label: `${what}, at the start`,
        unit,
        is: start,
        source: from,
      }),
      formulaShown(topic, `${name}.next`, {
        label: `${what}, after a step`,
        unit,
        is: next,
        source: from,
      }),
    ])}
    ${Object.entries(values).map(([name, { label: what, unit, is, source: from }]) =>
      formulaShown(topic, name, { label: what, unit, is, source: from }),
    )}`;
}

/** What is reckoned step by step. */
export const simulationsSection = (topic: Topic) =>
  Object.keys(topic.simulations ?? {}).length === 0
    ? nothing
    : html`<h2>Step by step</h2>${Object.values(topic.simulations ?? {}).map((each) => simulation(topic, each))}`;

/** Lists of things chosen, and results in an order of size. */
export const listsSection = (topic: Topic) => html`
  ${Object.values(topic.selections ?? {}).map(
    ({ label, items, source }) => html`<h2>${label}</h2>
      <ul>${Object.values(items).map(
        ({ label: what, when, because }) =>
          html`<li><strong>${what}</strong>${when ? html`, when: ${labelOf(topic, when).toLowerCase()}` : nothing}. ${because}</li>`,
      )}</ul><p>${sourceShown(source)}</p>`,
  )}
  ${Object.values(topic.rankings ?? {}).map(
    ({ label, first, of, source }) => html`<h2>${label}</h2>
      <p>The ${first} first, among:</p>
      <ul>${Object.values(of).map(({ by, says }) => html`<li>${says}, by ${labelOf(topic, by).toLowerCase()}</li>`)}</ul>
      <p>${sourceShown(source)}</p>`,
  )}`;

/** Tables that formulas look numbers up in. */
export const tablesSection = ({ tables, wordTables = {} }: Topic) => {
  const all = [
    ...Object.values(tables).map(({ label, keyUnit, valueUnit, rows, source }) => ({
      label,
      source,
      rows: rows.map(
        ([key, value]) => [numberIn(key, keyUnit), numberIn(value, valueUnit)] as const,
      ),
    })),
    ...Object.values(wordTables).map(({ label, valueUnit, values, source }) => ({
      label,
      source,
      rows: Object.entries(values).map(
        ([word, value]) => [spaced(word), numberIn(value, valueUnit)] as const,
      ),
    })),
  ];
  if (all.length === 0) return nothing;
  return html`<h2>Tables</h2>${all.map(
    ({ label, rows, source }) => html`<details><summary>${label}</summary>
      <table class="num"><tbody>${rows.map(([key, value]) => html`<tr><th scope="row">${key}</th><td>${value}</td></tr>`)}</tbody></table>
      <p>${sourceShown(source)}</p></details>`,
  )}`;
};
