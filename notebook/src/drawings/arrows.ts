import { type SVGTemplateResult, svg } from 'lit';

const head = 7;

/** A load as an arrow: its tip at (x, y), pointing up or down, so many pixels long. */
export function arrowPath(x: number, y: number, length: number, up: boolean): string {
  const way = up ? 1 : -1;
  const tip = Math.min(head * 1.6, length);
  const wide = head * Math.min(1, tip / (head * 1.6)) * 1.1;
  const [neck, tail] = [y + way * tip, y + way * length];
  const shaft = wide * 0.45;
  return [
    `M${x} ${y}L${x + wide} ${neck}L${x + shaft} ${neck}L${x + shaft} ${tail}`,
    `L${x - shaft} ${tail}L${x - shaft} ${neck}L${x - wide} ${neck}Z`,
  ].join('');
}

/** A rating: the place the arrow may reach to, as a dashed cup around it. */
export function limitPath(x: number, y: number, length: number, up: boolean): string {
  const end = y + (up ? 1 : -1) * length;
  return `M${x - 11} ${y}L${x - 11} ${end}L${x + 11} ${end}L${x + 11} ${y}`;
}

/** The part of a load that is not certain, between its least and its most. */
export function unsureBar(x: number, from: number, to: number): SVGTemplateResult {
  return svg`<rect class="unsure" x=${x - 5} y=${Math.min(from, to)} width="10" height=${Math.abs(to - from)} />`;
}
