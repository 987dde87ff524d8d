import type { LimitAnswer, Topic } from '@tarebook/rules/engine';
import { againstOf } from '@tarebook/rules/engine';
import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing } from 'lit';
import { leftOf } from '../elements/figures';
import { limitBar } from '../elements/limit-bar';
import { mark, stateWords } from '../elements/marks';
import { barOf, drawnTo } from '../state/bar';
import type { Judged } from '../state/judged';
import { type Ticket, type TicketFigure, ticketOf } from '../state/ticket';
import { type FactLine, factLines, type LimitLine, limitLines, resultLines } from './differences';

/** Rigs as they are drawn: what each is called, and how it stands. */
export type Drawn = {
  readonly topic: Topic;
  readonly names: readonly string[];
  readonly all: readonly Judged[];
  readonly system: UnitSystem;
};

const figureWords: Readonly<Record<TicketFigure['of'], string>> = {
  left: 'left',
  over: 'over',
  asked: 'to be asked',
};

function verdict(ticket: Ticket & { kind: 'verdict' }) {
  const { figure: big, word, level, sentence, ask } = ticket;
  return html`<p class="word">${mark(level)}<span>${word}</span></p>
    ${
      big
        ? html`<p class="big"><span class="num">${big.number}</span><span class="unit">${big.unit} ${figureWords[big.of]}</span></p>`
        : nothing
    }
    <p class="one small">${ask ? html`${ask.ask} ${ask.says}` : sentence}</p>`;
}

function unread(ticket: (Ticket & { kind: 'unread' }) | undefined) {
  const labels = ticket?.refused.map(({ label }) => label).join(', ');
  return html`<p class="word">${mark('unknown')}<span>Not read</span></p>
    <p class="one small">${labels ? `${labels}: mend it in the case, and there is a verdict.` : 'Something in this case cannot be read; mend it there.'}</p>`;
}

/** The verdict of one rig, at a glance. */
export function besideTicket(judged: Judged, system: UnitSystem) {
  const ticket = ticketOf(judged, system);
  const level = ticket?.kind === 'verdict' ? ticket.level : 'unknown';
  return html`<div class="beside-ticket level-${level}">${
    ticket?.kind === 'verdict' ? verdict(ticket) : unread(ticket)
  }</div>`;
}

function emptyOf({ topic }: Drawn, { answer }: Judged, id: string) {
  const name = topic.limits[id]?.empty;
  const empty = name === undefined ? undefined : answer?.values[name];
  return empty && Number.isFinite(empty.lo) && Number.isFinite(empty.hi) ? empty : undefined;
}

function limitCell(drawn: Drawn, line: LimitLine, at: number) {
  const judged = drawn.all[at];
  const limit: LimitAnswer | undefined = line.limits[at];
  if (!judged || !limit) return html`<td class="soft small">not read</td>`;
  if (limit.state === 'not-asked') {
    return html`<td class="soft small">not asked, by what was told</td>`;
  }
  // A limit that nobody knows sets no scale, and stands as long as the longest.
  const size = line.most > 0 && Number.isFinite(limit.limit.hi) ? limit.limit.hi / line.most : 1;
  const bar = limitBar(barOf(limit, emptyOf(drawn, judged, line.id), drawnTo / (size || 1)), size);
  return html`<td class="level-${limit.state}">
    ${bar}
    <span class="word-of">${mark(limit.state)}<span class="hidden">${stateWords[limit.state]}: </span></span>
    <span class="beside-left">${leftOf(limit, drawn.system)}</span>
    <span class="beside-of small soft">${againstOf(limit, drawn.system).says}</span>
  </td>`;
}

const limitRow = (drawn: Drawn) => (line: LimitLine) =>
  html`<tr><th scope="row">${line.label}</th>${line.limits.map((_, at) => limitCell(drawn, line, at))}</tr>`;

const heads = ({ names }: Drawn, of: string) =>
  html`<thead class="hidden-heads"><tr><th scope="col">${of}</th>${names.map((name) => html`<th scope="col">${name}</th>`)}</tr></thead>`;

/** How close each comes to each limit, all bars of a line on one scale; what is alike is folded. */
export function limitsTable(drawn: Drawn) {
  const lines = limitLines(drawn.topic, drawn.all);
  const [apart, alike] = [
    lines.filter((each) => each.differs),
    lines.filter((each) => !each.differs),
  ];
  const table = (of: readonly LimitLine[]) =>
    html`<table class="beside-rows">${heads(drawn, 'Limit')}<tbody>${of.map(limitRow(drawn))}</tbody></table>`;
  return html`<section><h2>Limits that differ</h2>
      ${
        apart.length === 0
          ? html`<p class="soft">Every limit stands alike in all of them.</p>`
          : html`<p class="small soft">The bars of a line are drawn to one scale; the thick stroke is that rig’s limit, the lighter part is empty weight.</p>${table(apart)}`
      }
      ${
        alike.length === 0
          ? nothing
          : html`<details><summary>Alike in all: ${alike.length} ${alike.length === 1 ? 'limit' : 'limits'}</summary>${table(alike)}</details>`
      }</section>`;
}

const factRow = ({ label, cells }: FactLine) =>
  html`<tr><th scope="row">${label}</th>${cells.map(
    ({ words, differs, by }) =>
      html`<td class=${differs ? 'is-other' : ''}>${differs ? html`<span class="hidden">other: </span>` : nothing}<span class="num">${words}</span>${by ? html` <span class="beside-by">${by}</span>` : nothing}</td>`,
  )}</tr>`;

/** What is told differently, by how much, and what comes of it beside the limits. */
export function factsTable(drawn: Drawn) {
  const { topic, all, system } = drawn;
  const docs = all.map(({ doc }) => doc);
  const { lines, same } = factLines(topic, docs, system);
  const [inAll, inSome] = [lines.filter((each) => each.inAll), lines.filter((each) => !each.inAll)];
  const results = resultLines(topic, all, system);
  const table = (of: readonly FactLine[]) =>
    html`<table class="beside-rows">${heads(drawn, 'Fact')}<tbody>${of.map(factRow)}</tbody></table>`;
  return html`<section><h2>Facts that differ</h2>
    ${lines.length === 0 ? html`<p class="soft">Nothing that was told differs.</p>` : nothing}
    ${inAll.length === 0 ? nothing : table(inAll)}
    <p class="small soft">${same === 0 ? '' : `${same} ${same === 1 ? 'fact is' : 'facts are'} the same in all of them.`}</p>
    ${
      inSome.length === 0
        ? nothing
        : html`<details><summary>Not told of every rig: ${inSome.length}</summary>${table(inSome)}</details>`
    }
    ${
      results.length === 0
        ? nothing
        : html`<details><summary>What else comes of it</summary><table class="beside-rows">${heads(drawn, 'Result')}<tbody>${results.map(
            ({ label, values }) =>
              html`<tr><th scope="row">${label}</th>${values.map((each) => html`<td class="num">${each}</td>`)}</tr>`,
          )}</tbody></table></details>`
    }</section>`;
}
