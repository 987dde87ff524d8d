import type { Interval } from '@tarebook/rules/quantity';
import { html, nothing, type TemplateResult } from 'lit';
import type { CurveFigure, Line } from './figure';

type Shows = (range: Interval, unit: string) => string;

function lineTable({ label, points }: Line, { x, y }: CurveFigure, shows: Shows): TemplateResult {
  const named = points.some(({ name }) => name);
  return html`<table>
    <caption>${label}</caption>
    <thead><tr>
      ${named ? html`<th scope="col">Where</th>` : nothing}
      <th scope="col">${x.label}</th><th scope="col">${y.label}</th>
    </tr></thead>
    <tbody>${points.map(
      (point) =>
        html`<tr>
          ${named ? html`<td>${point.name ?? ''}</td>` : nothing}
          <td class="num">${shows({ lo: point.x, hi: point.x }, x.unit)}</td>
          <td class="num">${shows(point.y, y.unit)}</td>
        </tr>`,
    )}</tbody>
  </table>`;
}

/** The lines of a curve as tables, one each. */
export const curveTable = (figure: CurveFigure, shows: Shows): TemplateResult =>
  html`<details class="small">
    <summary>The same as a table</summary>
    ${figure.lines.map((each) => lineTable(each, figure, shows))}
  </details>`;
