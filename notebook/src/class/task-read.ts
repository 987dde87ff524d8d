import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing, type TemplateResult } from 'lit';
import '../elements/limit-rows';
import './answers.css';
import { type Asking, type Hidden, standing } from '../practice/ask-next';
import { heardIn } from '../practice/say-aloud';
import type { WrongFigure } from '../practice/wrong-figure';
import { readDocument } from '../state/reading';
import {
  customerAsks,
  customerSays,
  factsBrief,
  factsWhole,
  promptRead,
  proseBefore,
  questionAsked,
  questionRead,
} from './case-read';
import { choiceSaid } from './choice-said';
import type { Walked } from './record';

/** How an exercise of questions stands, with the document that shows it. */
export function askingNow(asking: Asking, asked: readonly string[]) {
  const { text, settled, asked: told } = standing(asking, asked);
  return { settled, asked: told, doc: readDocument(text) };
}

/** What is answered to a question, as a person reads it. */
export const hiddenSaid = ({ topic }: Asking, { id, value }: Hidden): string =>
  choiceSaid(topic.facts[id], value);

const linesRead = ({ lines }: WrongFigure): TemplateResult =>
  html`<ol class="lines">${lines.map(
    ({ label, working, says }) =>
      html`<li><span>${label}: <span class="num">${working} = <strong>${says}</strong></span></span></li>`,
  )}</ol>`;

const asks = {
  ask: 'The verdict is open. What do you ask next? Ask for what settles it, with as few questions as you can.',
  spot: 'In one of these lines the result does not follow from the figures in it. Which?',
} as const;

/** What a sentence for this customer has to hold; of an open verdict there is nothing left to say. */
export function sayingOf({ doc, answer }: Pick<Walked, 'doc' | 'answer'>): string {
  const parts = heardIn('', doc, answer, 'us').map(({ label }) => label.toLowerCase());
  const [last, ...before] = [parts.at(-1) ?? '', ...parts.slice(0, -1)];
  return `Say it to the customer: ${before.length === 0 ? last : `${before.join(', ')}, and ${last}`}.`;
}

/** What came out, for whom has to say it. */
function outRead({ answer }: Walked, system: UnitSystem) {
  const { limits } = answer;
  return html`<h3>What came out: ${answer.words}</h3>
    ${limits.length === 0 ? nothing : html`<limit-rows .rows=${limits.map((limit) => ({ limit }))} .system=${system}></limit-rows>`}`;
}

/** What is asked of a learner, whole, as the trainer and a phone show it above the place to answer. */
export function taskRead(walked: Walked, system: UnitSystem) {
  const { task } = walked;
  switch (task.kind) {
    case 'spot':
      return html`<p>${asks.spot}</p>${linesRead(task.wrong)}`;
    case 'say':
      return html`${proseBefore(walked, system)}<div class="known">${factsBrief(walked)}</div>
        ${outRead(walked, system)}<p>${sayingOf(walked)}</p>`;
    case 'ask':
      return html`${customerAsks(walked, task.asking, system)}<p>${asks.ask}</p>`;
    default:
      return questionRead(walked, system);
  }
}

/**
 * The same on a screen: what is asked and whatever comes before it, above the place to answer; what is
 * known stands below it, so that nobody scrolls past it to answer. `told` is what is read of the case:
 * the trainer reads all that was written, a learner what the customer says.
 */
export function taskParts(
  walked: Walked,
  system: UnitSystem,
  told: typeof proseBefore = proseBefore,
): { readonly above: unknown; readonly below: unknown } {
  const { task } = walked;
  switch (task.kind) {
    case 'predict':
      return {
        above: html`${told(walked, system)}${questionAsked(walked, system)}`,
        below: html`<h3>What is known</h3>${factsWhole(walked, system)}`,
      };
    case 'say':
      return {
        above: html`${told(walked, system)}<p>${sayingOf(walked)}</p>${outRead(walked, system)}`,
        below: html`<h3>What is known</h3><div class="known">${factsBrief(walked)}</div>`,
      };
    default:
      return { above: taskRead(walked, system), below: nothing };
  }
}

/** The same for a learner's own phone. */
export const learnerParts = (walked: Walked, system: UnitSystem) =>
  taskParts(walked, system, customerSays);

/**
 * The same on paper, where nothing is pressed: of an exercise of questions also what is known, and what
 * may be asked; on the key with what is answered.
 */
export function onPaper(walked: Walked, system: UnitSystem, isKey = false) {
  const { task } = walked;
  if (task.kind !== 'ask') return taskRead(walked, system);
  const { doc } = isKey ? walked : askingNow(task.asking, []);
  return html`${taskRead(walked, system)}
    <div class="known">${factsBrief({ ...walked, doc })}</div>
    <ul>${task.asking.hidden.map(
      (each) =>
        html`<li>☐ ${each.ask}${isKey ? html` <strong class="num">${hiddenSaid(task.asking, each)}</strong>` : nothing}</li>`,
    )}</ul>`;
}

/** The same for a wall: what is told, what is asked in the middle, what is known. */
export function wallRead(
  walked: Walked,
  system: UnitSystem,
): { readonly told: unknown; readonly ask: unknown; readonly known: unknown } {
  const { task, answer } = walked;
  switch (task.kind) {
    case 'spot':
      return { told: nothing, ask: html`<p>${asks.spot}</p>`, known: linesRead(task.wrong) };
    case 'say': {
      const ask = html`<p>What came out: ${answer.words}</p><p class="choices-said">${sayingOf(walked)}</p>`;
      return { told: customerSays(walked, system), ask, known: factsBrief(walked) };
    }
    case 'ask': {
      const { hidden } = task.asking;
      const { doc: known } = askingNow(task.asking, []);
      const ask = html`<p>${asks.ask}</p><p class="choices-said">${hidden.map(({ label }) => label).join(' · ')}</p>`;
      return {
        told: customerAsks(walked, task.asking, system),
        ask,
        known: factsBrief({ ...walked, doc: known }),
      };
    }
    default: {
      const known = factsBrief(walked);
      return { told: customerSays(walked, system), ask: promptRead(walked, system), known };
    }
  }
}

/** Of a wrong figure, once it is open: what should have stood there. */
export function putRight({ task }: Walked) {
  if (task.kind !== 'spot') return nothing;
  const { lines, wrong, right } = task.wrong;
  const line = lines.find(({ id }) => id === wrong);
  return html`<p class="put-right">${line?.label}: <span class="num">${line?.working}</span> comes to <strong class="num">${right}</strong>, and ${line?.says} stood there.</p>`;
}

/** Of an exercise of questions, once it is open: what each of them would have been answered. */
export function answersTold({ task }: Walked) {
  if (task.kind !== 'ask') return nothing;
  const { asking } = task;
  return html`<dl class="answers">${asking.hidden.map(
    (each) => html`<div><dt>${each.ask}</dt><dd class="num">${hiddenSaid(asking, each)}</dd></div>`,
  )}</dl>`;
}
