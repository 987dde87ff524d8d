import type { Ends } from '@tarebook/rules/engine';
import type { CurveFigure, Drawn, FiguresOf } from './figure';

type Line = CurveFigure['lines'][number];

const known = ({ lo, hi }: Ends): boolean => Number.isFinite(lo) && Number.isFinite(hi);
const middle = ({ lo, hi }: Ends): number => (lo + hi) / 2;
const shown = ({ unit }: Ends): string => (unit === '1' ? '%' : unit);

/** A share as percent, anything else as it is. */
const scaled = (ends: Ends): number => middle(ends) * (ends.unit === '1' ? 100 : 1);

/** Values of one step after another; undefined as soon as one of them is not known. */
function valuesOf({ answer }: Drawn, series: string, name: string): readonly Ends[] | undefined {
  const all = answer.series[series]?.lines[name]?.ends;
  return all && all.length > 1 && all.every(known) ? all : undefined;
}

/** The height of a line above x, by straight lines between its points, lowest x first. */
function heightAt(points: Line['points'], x: number): number | undefined {
  const i = points.findIndex(([at]) => at >= x);
  const [before, after] = [points[Math.max(0, i - 1)], points[i]];
  if (!before || !after) return undefined;
  const long = after[0] - before[0];
  return long === 0 ? after[1] : before[1] + ((x - before[0]) / long) * (after[1] - before[1]);
}

/** The resting voltage from full to empty, the stop line, and where this battery stands. */
function restingCurve(drawn: Drawn): readonly CurveFigure[] {
  const charge = valuesOf(drawn, 'curve', 'curve.stateOfCharge');
  const volts = valuesOf(drawn, 'curve', 'curve.volts');
  if (!charge || !volts) return [];
  const points = charge.flatMap((at, i): Line['points'] => {
    const over = volts[i];
    return over ? [[scaled(at), middle(over)]] : [];
  });
  const rising = points.toSorted(([a], [b]) => a - b);
  const stop = valuesOf(drawn, 'curve', 'curve.stopVolts')?.[0];
  const stands = drawn.answer.values['battery.stateOfCharge'];
  const share = stands && known(stands) ? (stands.unit === '1' ? 100 : 1) : undefined;
  const y = stands && share && heightAt(rising, middle(stands) * share);
  return [
    {
      kind: 'curve',
      title: 'Resting voltage from full to empty, the stop line, and where this battery stands',
      x: { label: 'State of charge', unit: '%' },
      y: { label: 'Volts at rest', unit: 'V' },
      lines: [{ label: 'Resting voltage', points: rising }],
      ...(stop && { stop: { label: 'stop line', along: 'y', at: middle(stop) } }),
      ...(stands &&
        share && {
          here: {
            label: 'here',
            x: { lo: stands.lo * share, hi: stands.hi * share },
            ...(y !== undefined && { y }),
          },
        }),
    },
  ];
}

/** What the battery holds hour by hour through the day, and where to stop. */
function dayCurve(drawn: Drawn): readonly CurveFigure[] {
  const charge = valuesOf(drawn, 'hours', 'hours.charge');
  const [first] = charge ?? [];
  if (!charge || !first || charge.every((each) => middle(each) === middle(first))) return [];
  const stop = drawn.answer.values['stop.charge'];
  return [
    {
      kind: 'curve',
      title: 'What the battery holds, hour by hour through the day',
      x: { label: 'Hours', unit: 'h' },
      y: { label: 'Charge held', unit: shown(first) },
      lines: [{ label: 'Charge held', points: charge.map((each, i) => [i, scaled(each)]) }],
      ...(stop && known(stop) && { stop: { label: 'stop', along: 'y', at: middle(stop) } }),
    },
  ];
}

export const batteryFigures: FiguresOf = (drawn) => [...restingCurve(drawn), ...dayCurve(drawn)];
