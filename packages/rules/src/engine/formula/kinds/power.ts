import { multiply } from '../../../quantity';
import { drawByDraw } from '../../value/lanes';
import { made } from '../../value/numbers';
import { asNumber } from '../../value/truth';
import { blend, type NumberValue, noSlopes } from '../../value/values';
import { type Draw, type Kind, none, type SortOf } from '../grammar/kind';
import { alike, plainNumber } from '../grammar/sorts';

/** An open end stays open; zero to no power is left to the arithmetic of the machine. */
const raised = (base: number, exponent: number): number => Math.max(0, base) ** exponent;

/**
 * It moves one way with the base and one way with the exponent, so its ends stand at corners of the
 * two ranges.
 */
export function powerOf(base: NumberValue, exponent: NumberValue): NumberValue {
  const corners = [base.lo, base.hi].flatMap((b) =>
    [exponent.lo, exponent.hi].map((e) => raised(b, e)),
  );
  const range = { lo: Math.min(...corners), hi: Math.max(...corners) };
  if (base.slopes.size === 0 && exponent.slopes.size === 0) return made(range, noSlopes);
  const below = [base.lo, base.hi].flatMap((b) =>
    [exponent.lo, exponent.hi].map((e) => (b <= 0 ? Infinity : b ** (e - 1))),
  );
  const inner = { lo: Math.min(...below), hi: Math.max(...below) };
  const byBase = base.lo <= 0 ? { lo: 0, hi: Infinity } : multiply(inner, exponent);
  const logs = { lo: Math.log(Math.max(0, base.lo)), hi: Math.log(Math.max(0, base.hi)) };
  return made(range, blend(base.slopes, byBase, exponent.slopes, multiply(range, logs)));
}

/** power(base, exponent): of a base that is never below zero. */
export const power: Kind<'power'> = {
  form: {
    by: 'call',
    names: ['power'],
    read: (call) => {
      call.wants(call.count === 2, 'power(base, exponent)');
      return { kind: 'power', base: call.node(0), exponent: call.node(1) };
    },
  },
  reckon: ({ base, exponent }, scope, reckon) =>
    powerOf(asNumber(reckon(base, scope)), asNumber(reckon(exponent, scope))),
  parts: ({ base, exponent }) => [base, exponent],
  mentions: none,
  asks: none,
  uses: ({ base, exponent }, at) => {
    at.part(base);
    at.part(exponent);
  },
};

/** The rule of its units. */
export const sortPower: SortOf<'power'> = ({ base, exponent }, at) => {
  alike(at.of(base), plainNumber, 'power');
  return alike(at.of(exponent), plainNumber, 'power');
};

export const drawPower: Draw<'power'> = drawByDraw;
