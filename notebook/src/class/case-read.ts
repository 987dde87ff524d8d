import { type Block, type CaseDocument, liveValue } from '@tarebook/casebook';
import { numbersSaid } from '@tarebook/record';
import type { Answer, Topic } from '@tarebook/rules/engine';
import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing, type TemplateResult } from 'lit';
import type { Nodes } from 'mdast';
import { prose } from '../elements/prose';
import type { Asking } from '../practice/ask-next';
import { choiceSaid } from './choice-said';
import { askedUnit, foundWords, type Question, splitAtPredict, withinWords } from './predict';
import type { Walked } from './record';
import { verdictRead } from './verdict-read';

/** A figure stays with its unit, however narrow the column. */
const whole = (value: string): string => value.replace(/^([\d.,]+) (\S+)$/, '$1\u00a0$2');

const blank = html`<span class="soft">not said</span>`;

function factsRead(block: Block & { kind: 'facts' }, topic: Topic): TemplateResult {
  return html`<table>
    <thead><tr><th scope="col">What we know</th><th scope="col">Value</th><th scope="col">Read from</th></tr></thead>
    <tbody>${block.rows.map(
      ({ id, value, readFrom }) =>
        html`<tr><th scope="row">${topic.facts[id]?.label ?? id}</th><td class="num">${value ? whole(choiceSaid(topic.facts[id], value)) : blank}</td><td class="soft small">${readFrom}</td></tr>`,
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
        html`<tr><th scope="row">${label || blank}</th>${columns.map((column) => html`<td class="num">${whole(cells[column]?.text ?? '')}</td>`)}</tr>`,
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
export function questionRead(walked: Walked, system: UnitSystem) {
  const { doc, answer } = walked;
  const { before } = splitAtPredict(doc);
  return html`${blocksRead(before, doc, answer, system)}${questionAsked(walked, system)}`;
}

/** What is known, with where each figure was read. */
export function factsWhole({ doc, answer }: Walked, system: UnitSystem) {
  const { before } = splitAtPredict(doc);
  const known = before.filter(({ kind }) => kind === 'facts' || kind === 'list');
  return blocksRead(known, doc, answer, system);
}

/** What is to be predicted, and when a prediction counts as met. */
export function questionAsked({ doc, answer, question }: Walked, system: UnitSystem) {
  const { asked } = splitAtPredict(doc);
  return html`
    ${
      asked
        ? blocksRead([asked], doc, answer, system)
        : html`<div class="guess" role="note"><p>Before the working opens: what will the verdict be?</p></div>`
    }
    <p class="small soft">${metWhen(question, system)}</p>
  `;
}

/** Which figure, in which unit, and how near is near enough: what an author's question may leave out. */
function figureAsked(question: Question & { kind: 'number' }, system: UnitSystem): string {
  const unit = askedUnit(question, system);
  return `${question.label}${unit ? `, in ${unit}` : ''}; within ${withinWords(question, system)} is near enough`;
}

function metWhen(question: Question, system: UnitSystem): string {
  return question.kind === 'number'
    ? `Asked: ${question.label.toLowerCase()}. A prediction within ${withinWords(question, system)} of it is met.`
    : `Asked: ${question.label.toLowerCase()}.`;
}

/** The author's words before the place where the case asks for a prediction. */
export function proseBefore({ doc, answer }: Walked, system: UnitSystem) {
  const { before } = splitAtPredict(doc);
  return blocksRead(
    before.filter(({ kind }) => kind === 'prose'),
    doc,
    answer,
    system,
  );
}

function firstWords(node: Nodes): string {
  if ('value' in node) return node.value;
  const [first] = 'children' in node ? node.children : [];
  return first ? firstWords(first) : '';
}

/**
 * Of these words what the customer says, for whoever is to guess: where to read what, and what an author
 * thinks of it, would give it away.
 */
export function customerSays({ doc, answer }: Walked, system: UnitSystem) {
  const { before } = splitAtPredict(doc);
  const words = before.filter((block) => block.kind === 'prose');
  const said = words.filter(({ node }) => firstWords(node).startsWith('“'));
  return blocksRead(said.length > 0 ? said : words.slice(0, 1), doc, answer, system);
}

const wordsOf = (node: Nodes): string =>
  'value' in node ? node.value : 'children' in node ? node.children.map(wordsOf).join('') : '';

/** Figures of a text, in digits or in words; “two twenties” are a 2 and a 20. */
const figuresOf = (text: string): readonly number[] => [
  ...[...text.matchAll(/\d[\d,]*(?:\.\d+)?/g)].map(([figure]) =>
    Number(figure.replaceAll(',', '')),
  ),
  ...text
    .split(/\s+/)
    .map((word) => word.replace(/ties\b/, 'ty').replace(/hundreds\b/, 'hundred'))
    .flatMap((word) => numbersSaid(word).map(({ value }) => value)),
  ...numbersSaid(text).map(({ value }) => value),
];

/**
 * The customer's own words where facts are to be asked for, and else what the topic asks: nothing that
 * an author says, and no sentence with a figure in it that is hidden.
 */
export function customerAsks(
  { doc, answer }: Pick<Walked, 'doc' | 'answer'>,
  { hidden }: Asking,
  system: UnitSystem,
) {
  const kept = new Set(hidden.flatMap(({ value }) => figuresOf(value)));
  const tells = (text: string): boolean => figuresOf(text).some((figure) => kept.has(figure));
  const said = splitAtPredict(doc).before.flatMap((block) => {
    if (block.kind !== 'prose' || !firstWords(block.node).startsWith('“')) return [];
    const words = wordsOf(block.node);
    if (!tells(words)) return blocksRead([block], doc, answer, system);
    const sentences = words.replace(/[“”]/g, '').split(/(?<=[.?!])\s+/);
    const left = sentences.filter((each) => !tells(each)).join(' ');
    return left === '' ? [] : [html`<p>“${left}”</p>`];
  });
  return said.length > 0 ? html`${said}` : html`<p>${doc.topic?.question}</p>`;
}

/** What is to be predicted, in the author's words where there are any. */
export function promptRead({ doc, answer, question }: Walked, system: UnitSystem) {
  const { asked } = splitAtPredict(doc);
  const said = asked
    ? asked.children.map((child) => prose(child, (name) => liveValue(doc, answer, name, system)))
    : html`<p>What will the verdict be?</p>`;
  const choices =
    question.kind === 'word'
      ? html`<p class="choices-said">${question.words.join(' · ')}</p>`
      : question.kind === 'number'
        ? html`<p class="choices-said figure">${figureAsked(question, system)}.</p>`
        : nothing;
  return html`${said}${choices}`;
}

/** What is known, short enough for a wall: each thing with its value. */
export function factsBrief({ doc }: Walked) {
  const { topic } = doc;
  if (!topic) return nothing;
  const lines = splitAtPredict(doc).before.flatMap((block): (readonly [string, string])[] => {
    if (block.kind === 'facts') {
      return block.rows.map(({ id, value }) => [
        topic.facts[id]?.label ?? id,
        choiceSaid(topic.facts[id], value) || 'not said',
      ]);
    }
    if (block.kind !== 'list') return [];
    const declared = topic.facts[block.fact];
    const columns = block.columns.filter((column) => column !== '');
    // The first column is what the row is about; of any other its figure alone says nothing.
    const said = (cells: (typeof block.rows)[number]['cells'], column: string, i: number) => {
      const kind = declared?.kind === 'rows' ? declared.columns[column] : undefined;
      const text = whole(cells[column]?.text ?? '');
      if (text === '') return [];
      return i === 0 || !kind ? [text] : [`${kind.label.toLowerCase()} ${text}`];
    };
    return block.rows.map(({ label, cells }) => [
      label || (declared?.label ?? block.fact),
      columns.flatMap((column, i) => said(cells, column, i)).join(', '),
    ]);
  });
  return html`<dl>${lines.map(([name, value]) => html`<div><dt>${name}</dt><dd class=${value.includes(', ') ? 'num several' : 'num'}>${value}</dd></div>`)}</dl>`;
}

/** What the author wrote of why. */
export const blocksAfter = ({ doc, answer }: Walked, system: UnitSystem) =>
  blocksRead(splitAtPredict(doc).after, doc, answer, system);

/** What came out, and why: the verdict’s sentence, what the author wrote, and the cautions. */
export function answerRead(walked: Walked, system: UnitSystem) {
  const { answer, question } = walked;
  return html`
    <p class="came-out">${question.label}: <strong class="num">${foundWords(question, system)}</strong></p>
    ${verdictRead(walked)}
    <h3>Why</h3>
    ${blocksAfter(walked, system)}
    <h3>What to be careful about</h3>
    <ul class="small">${answer.cautions.map((each) => html`<li>${each}</li>`)}</ul>
  `;
}
