import { topics } from '@tarebook/rules';
import type { Fact, Source, Topic } from '@tarebook/rules/engine';
import { show, type UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing } from 'lit';
import { PlainElement } from '../elements/plain-element';
import { cited } from '../elements/cited';

const source = (each: Source) =>
  html`<span class="tag">${each.class.replace('-', ' ')}</span> <span class="small soft">${cited(each)}</span>`;

const kindOf = (fact: Fact): string => {
  if (fact.kind === 'rows')
    return Object.values(fact.columns)
      .map(({ label }) => label.toLowerCase())
      .join(', ');
  if (fact.kind === 'choice') return fact.options.join(', ');
  if (fact.kind === 'yes-no') return 'yes or no';
  return fact.unit === '' ? 'a count' : fact.unit;
};

/** A topic as a page a person reads: what it asks, how it reckons, what it says, by which source. */
export class RulesPage extends PlainElement {
  static override properties = { topicId: { attribute: false }, system: { attribute: false } };
  declare topicId: string | undefined;
  declare system: UnitSystem;

  private topic(topic: Topic) {
    const one = (value: number, unit: string) => show({ lo: value, hi: value }, unit, this.system);
    return html`
      <p class="soft small">Rules · ${topic.id} ${topic.version}</p>
      <h1>${topic.title}</h1>
      <p>${topic.question}</p>
      <h2>What is asked</h2>
      <table>
        <thead><tr><th scope="col">Fact</th><th scope="col">Given as</th><th scope="col">The question, and where to read it</th></tr></thead>
        <tbody>${Object.values(topic.facts).map(
          (fact) =>
            html`<tr><td>${fact.label}</td><td class="num small">${kindOf(fact)}</td><td>${fact.ask} <span class="soft small">${fact.where}</span></td></tr>`,
        )}</tbody>
      </table>
      <h2>Numbers of the trade</h2>
      <table>
        <thead><tr><th scope="col">Number</th><th scope="col">Value</th><th scope="col">Since</th><th scope="col">By which source</th></tr></thead>
        <tbody>${Object.values(topic.parameters).flatMap(
          ({ label, unit, values, range, source: from }) =>
            values.map(
              (entry) => html`<tr>
              <td>${label}${range ? html`<br /><span class="small soft">a dealer may choose ${show({ lo: range[0], hi: range[1] }, unit, this.system)}</span>` : nothing}</td>
              <td class="num">${one(entry.value, unit)}</td><td class="num small">${entry.from}</td><td>${source(from)}</td>
            </tr>`,
            ),
        )}</tbody>
      </table>
      <h2>How it reckons</h2>
      ${Object.values(topic.formulas).map(
        ({ label, is, source: from }) =>
          html`<h3>${label}</h3><p><code>${is}</code></p><p>${source(from)}</p>`,
      )}
      <h2>Limits</h2>
      <ul>${Object.values(topic.limits).map(
        ({ label, used, limit, margin }) =>
          html`<li>${label}: <code>${used}</code> against <code>${limit}</code>${margin ? html`, less <code>${margin}</code>` : nothing}</li>`,
      )}</ul>
      <h2>What it says beside the limits</h2>
      ${Object.values(topic.findings).map(
        ({ label, stop, care, source: from }) => html`<h3>${label}</h3>
          ${stop ? html`<p><strong>Stop:</strong> ${stop.says}</p>` : nothing}
          ${care ? html`<p><strong>Care:</strong> ${care.says}</p>` : nothing}
          <p>${source(from)}</p>`,
      )}
      <h2>What to be careful about</h2>
      <ul>${topic.cautions.map(({ says }) => html`<li>${says}</li>`)}</ul>
    `;
  }

  protected override render() {
    const wanted = this.topicId;
    const topic =
      wanted !== undefined && Object.hasOwn(topics, wanted) ? topics[wanted] : undefined;
    if (topic) return this.topic(topic);
    return html`
      <h1>Rules</h1>
      ${wanted === undefined ? nothing : html`<p role="status">There is no topic “${wanted}”; these are the topics there are.</p>`}
      <ul class="cases">${Object.values(topics).map(
        ({ id, title, version, question }) => html`<li>
          <a href="#/rules/${id}">${title}</a><span class="num small">${version}</span><span class="from">${question}</span>
        </li>`,
      )}</ul>
    `;
  }
}

customElements.define('rules-page', RulesPage);
