import { convert, showNumber, shownUnit, type UnitSystem, unitOf } from '@tarebook/rules/quantity';
import type { ScaleLinear } from 'd3-scale';
import { type SVGTemplateResult, svg } from 'lit';
import type { Axis } from './figure';

export type Frame = {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
};

/** From the unit of an axis to the one the reader sees. */
export function shownIn({ unit }: Axis, system: UnitSystem): (value: number) => number {
  const symbol = unit === '' ? '1' : unit;
  if (unit === '') return (value) => value;
  const [from, to] = [unitOf(symbol), unitOf(shownUnit(symbol, system))];
  return (value) => convert(value, from, to);
}

export const axisTitle = ({ label, unit }: Axis, system: UnitSystem): string =>
  unit === '' ? label : `${label}, ${shownUnit(unit, system)}`;

type Scale = ScaleLinear<number, number>;

const places = (scale: Scale, count: number): number => {
  const [first = 0, second = 1] = scale.ticks(count);
  return Math.max(0, Math.ceil(-Math.log10(Math.abs(second - first) || 1)));
};

/** Ticks and numbers along the bottom, with what they mean. */
export function bottomAxis(scale: Scale, frame: Frame, title: string): SVGTemplateResult {
  const count = Math.max(2, Math.floor((frame.right - frame.left) / 80));
  const decimals = places(scale, count);
  return svg`<g class="axis">
    <line x1=${frame.left} x2=${frame.right} y1=${frame.bottom} y2=${frame.bottom} />
    ${scale.ticks(count).map(
      (
        tick,
      ) => svg`<line x1=${scale(tick)} x2=${scale(tick)} y1=${frame.bottom} y2=${frame.bottom + 5} />
        <text x=${scale(tick)} y=${frame.bottom + 18}>${showNumber(tick, decimals)}</text>`,
    )}
    <text class="title" x=${frame.right} y=${frame.bottom + 36}>${title}</text>
  </g>`;
}

/** Numbers up the left side with faint lines across. */
export function leftAxis(scale: Scale, frame: Frame, title: string): SVGTemplateResult {
  const decimals = places(scale, 4);
  return svg`<g class="axis left">
    ${scale.ticks(4).map(
      (
        tick,
      ) => svg`<line class="across" x1=${frame.left} x2=${frame.right} y1=${scale(tick)} y2=${scale(tick)} />
        <text x=${frame.left - 6} y=${scale(tick) + 4}>${showNumber(tick, decimals)}</text>`,
    )}
    <text class="title first" x="0" y=${frame.top - 12}>${title}</text>
  </g>`;
}
