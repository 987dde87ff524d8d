import { type Block, type CaseDocument, liveValue } from '@tarebook/casebook';
import type { Answer, Topic } from '@tarebook/rules/engine';
import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing, type TemplateResult } from 'lit';
import { mark } from '../elements/marks';
import { prose } from '../elements/prose';
import { levelOf } from '../state/level';
import { foundWords, type Question, splitAtPredict, withinWords } from './predict';
import type { Walked } from './record';

const blank = html`<span class="soft">not said</span>`;

function factsRead(block: Block & { kind: 'facts' }, topic: Topic): TemplateResult {
  return html`<table>
    <thead><tr><th scope="col">What we know</th><th scope="col">Value</th><th scope="col">Read from</th></tr></thead>
    <tbody>${block.rows.map(
      ({ id, value, readFrom }) =>
        html`<tr><th scope="row">${topic.facts[id]?.label ?? id}</th><td class="num">${value || blank}</td><td class="soft small">${readFrom}</td></tr>`,
    )}</tbody>
  </table>`;
}

function listRead(block: Block & { kind: 'list' }, topic: Topic): TemplateResult | typeof nothing {
  const declared = topic.facts[block.fact];
  if (declared?.kind !== 'rows') return nothing;
  const columns = block.columns.filter((column) => column !== '');
  return html`<table>
    <thead><tr><th scope="col">${declared.label}</th>${columns.map((column) => html`<th scope="col">${declared.columns[column]?.label ?? column}</th>`)}</tr></thead>
    <tbody>${block.rows.map(
      ({ label, cells }) =>
        html`<tr><th scope="row">${label || blank}</th>${columns.map((column) => html`<td class="num">${cells[column]?.text ?? ''}</td>`)}</tr>`,
    )}</tbody>
  </table>`;
}

/** Blocks of a case to be read, with nothing in them to edit. */
function blocksRead(
  blocks: readonly Block[],
  doc: CaseDocument,
  answer: Answer,
  system: UnitSystem,
): readonly (TemplateResult | typeof nothing)[] {
  const { topic } = doc;
  const live = (name: string) => liveValue(doc, answer, name, system);
  return blocks.map((block) => {
    if (block.kind === 'prose') return html`${prose(block.node, live)}`;
    if (block.kind === 'predict')
      return html`<div class="guess" role="note">${block.children.map((child) => prose(child, live))}</div>`;
    if (block.kind === 'facts' && topic) return factsRead(block, topic);
    if (block.kind === 'list' && topic) return listRead(block, topic);
    return nothing;
  });
}

/** The question and what is known, up to the place where the case asks for a prediction. */
export function questionRead({ doc, answer, question }: Walked, system: UnitSystem) {
  const { before, asked } = splitAtPredict(doc);
  return html`
    ${blocksRead(before, doc, answer, system)}
    ${
      asked
        ? blocksRead([asked], doc, answer, system)
        : html`<div class="guess" role="note"><p>Before the working opens: what will the verdict be?</p></div>`
    }
    <p class="small soft">${metWhen(question, system)}</p>
  `;
}

function metWhen(question: Question, system: UnitSystem): string {
  return question.kind === 'word'
    ? `Asked: ${question.label.toLowerCase()}.`
    : `Asked: ${question.label.toLowerCase()}. A prediction within ${withinWords(question, system)} of it is met.`;
}

/** What came out, and why: the verdict’s sentence, what the author wrote, and the cautions. */
export function answerRead({ doc, answer, question }: Walked, system: UnitSystem) {
  const { after } = splitAtPredict(doc);
  const level = doc.topic ? levelOf(doc.topic.outcomes, answer.outcome) : 'unknown';
  return html`
    <p class="came-out">${question.label}: <strong class="num">${foundWords(question, system)}</strong></p>
    <section class="verdict level-${level}" aria-label="Verdict">
      ${mark(level)}
      <p class="word">${answer.words.charAt(0).toUpperCase()}${answer.words.slice(1)}</p>
      <p>${answer.sentence}</p>
    </section>
    <h3>Why</h3>
    ${blocksRead(after, doc, answer, system)}
    <h3>What to be careful about</h3>
    <ul class="small">${answer.cautions.map((each) => html`<li>${each}</li>`)}</ul>
  `;
}
