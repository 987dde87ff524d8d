import { drawByDraw } from '../../value/lanes';
import { made, one } from '../../value/numbers';
import { asNumber } from '../../value/truth';
import { blend, type NumberValue, noSlopes } from '../../value/values';
import { type Draw, type Kind, none, type SortOf } from '../grammar/kind';
import { alike, plainNumber } from '../grammar/sorts';

/** A count that arithmetic left a hair under a whole number is that number. */
const down = (value: number): number => Math.floor(value + 1e-9);

/** Within one step it is flat, and from step to step it may jump. */
export function wholeOf(of: NumberValue): NumberValue {
  const range = { lo: down(of.lo), hi: down(of.hi) };
  if (range.lo === range.hi) return made(range, noSlopes);
  return made(range, blend(of.slopes, { lo: 0, hi: Infinity }, noSlopes, one));
}

/** whole(x): the largest whole number not above x. */
export const whole: Kind<'whole'> = {
  form: {
    by: 'call',
    names: ['whole'],
    read: (call) => {
      call.wants(call.count === 1, 'whole(value)');
      return { kind: 'whole', of: call.node(0) };
    },
  },
  reckon: ({ of }, scope, reckon) => wholeOf(asNumber(reckon(of, scope))),
  parts: ({ of }) => [of],
  mentions: none,
  asks: none,
  uses: ({ of }, at) => at.part(of),
};

/** The rule of its units. */
export const sortWhole: SortOf<'whole'> = ({ of }, at) => alike(at.of(of), plainNumber, 'whole');

export const drawWhole: Draw<'whole'> = drawByDraw;
