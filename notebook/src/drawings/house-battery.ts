import type { Ends } from '@tarebook/rules/engine';
import type { Interval } from '@tarebook/rules/quantity';
import type { CurveFigure, Drawn, FiguresOf } from './figure';
import { heightAt, isKnown, middle, stepsOf } from './series';

const shown = ({ unit }: Ends): string => (unit === '1' ? '%' : unit);

/** A share as percent, anything else as it is. */
function scaled({ lo, hi, unit }: Ends): Interval {
  const times = unit === '1' ? 100 : 1;
  return { lo: lo * times, hi: hi * times };
}

/** The resting voltage from full to empty, the stop line, and where this battery stands. */
function restingCurve(drawn: Drawn): readonly CurveFigure[] {
  const charge = stepsOf(drawn, 'curve', 'curve.stateOfCharge');
  const volts = stepsOf(drawn, 'curve', 'curve.volts');
  if (!charge || !volts) return [];
  const rising = charge
    .flatMap((at, i) => {
      const over = volts[i];
      return over ? [{ x: middle(scaled(at)), y: { lo: over.lo, hi: over.hi } }] : [];
    })
    .toSorted((a, b) => a.x - b.x);
  const stop = stepsOf(drawn, 'curve', 'curve.stopVolts')?.[0];
  const stands = drawn.answer.values['battery.stateOfCharge'];
  const x = stands && isKnown(stands) ? scaled(stands) : undefined;
  const y = x && heightAt(rising, middle(x));
  return [
    {
      kind: 'curve',
      title: 'Resting voltage from full to empty, the stop line, and where this battery stands',
      x: { label: 'State of charge', unit: '%' },
      y: { label: 'Volts at rest', unit: 'V' },
      lines: [{ label: 'Resting voltage', points: rising }],
      ...(stop && { stops: [{ label: 'stop line', along: 'y', at: middle(stop) }] }),
      ...(x && { here: { label: 'here', x, ...(y !== undefined && { y }) } }),
    },
  ];
}

/** What the battery holds hour by hour through the day, and where to stop. */
export function dayCurve(drawn: Drawn): readonly CurveFigure[] {
  const charge = stepsOf(drawn, 'hours', 'hours.charge');
  const [first] = charge ?? [];
  if (!charge || !first || charge.every((each) => middle(each) === middle(first))) return [];
  const stop = drawn.answer.values['stop.charge'];
  return [
    {
      kind: 'curve',
      title: 'What the battery holds, hour by hour through the day',
      x: { label: 'Hours', unit: 'h' },
      y: { label: 'Charge held', unit: shown(first), fromZero: true },
      lines: [
        { label: 'Charge held', points: charge.map((each, i) => ({ x: i, y: scaled(each) })) },
      ],
      ...(stop && isKnown(stop) && { stops: [{ label: 'stop', along: 'y', at: middle(stop) }] }),
    },
  ];
}

export const batteryFigures: FiguresOf = (drawn) => [...restingCurve(drawn), ...dayCurve(drawn)];
