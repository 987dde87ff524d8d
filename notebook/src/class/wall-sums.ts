import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing, type TemplateResult } from 'lit';
import { judge } from '../state/judged';
import { limitRead } from './shown-limit';
import { type Sum, sumsOf } from './sums';
import type { Walked } from './walked';

/** The words of an answer are in the units that it was asked for in. */
function inUnits(walked: Walked, system: UnitSystem): Walked {
  const { answer } =
    walked.answer.trace.units === system ? walked : judge(walked.doc.text, undefined, system);
  return answer ? { ...walked, answer } : walked;
}

export const hasSums = (walked: Walked): boolean => sumsOf(walked).length > 0;

const linesRead = (lines: readonly Sum[]): TemplateResult =>
  html`<ol>${lines.map(
    ({ label, working, says }) =>
      html`<li><span class="name">${label}</span> <span class="num">${working === '' ? nothing : html`${working} = `}<strong>${says}</strong></span></li>`,
  )}</ol>`;

/** The working on a wall: the few lines that lead to the limit, and below them that limit. */
export function sumsRead(walked: Walked, system: UnitSystem): TemplateResult {
  const own = inUnits(walked, system);
  const lines = sumsOf(own);
  if (lines.length === 0) return html`<p class="step sums">Nothing is reckoned in this case.</p>`;
  return html`<div class="step sums">${linesRead(lines)}
    ${limitRead(own.doc.topic, own.answer, system) ?? nothing}
  </div>`;
}

/** The same lines on a key, where there are any. */
export function sumsOnKey(walked: Walked, system: UnitSystem) {
  const lines = sumsOf(inUnits(walked, system));
  return lines.length === 0
    ? nothing
    : html`<h3>The working</h3><div class="sums small">${linesRead(lines)}</div>`;
}
