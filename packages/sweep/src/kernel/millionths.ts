import type { Ref, Step } from './graph';
import type { Special } from './specialize';

const comparing: readonly Step['op'][] = ['less', 'not-above', 'same'];

/** A constant that rounding leaves as it is. */
const isRounded = ({ op, sort, value }: Step): boolean =>
  op === 'constant' &&
  sort === 'number' &&
  (!Number.isFinite(value) || Math.round(value * 1e6) / 1e6 === value);

/**
 * Steps that round and are only held against others that are rounded too: these are compared as whole
 * millionths, and need not be divided again. Two that differ there differ as numbers as long as they are
 * below four thousand millions; no weight or length of a rig comes near it.
 */
export function inMillionths({ staged, rounded, outputs }: Special): ReadonlySet<Ref> {
  const { steps, stages } = staged;
  const own = stages.pairs.own;
  const whole = new Set(own.filter((ref) => steps[ref]?.op === 'round'));
  for (const ref of outputs) whole.delete(ref);
  const isWhole = (ref: Ref): boolean => {
    const step = steps[ref];
    return whole.has(ref) || rounded.has(ref) || (step !== undefined && isRounded(step));
  };
  for (let before = -1; before !== whole.size; ) {
    before = whole.size;
    for (const ref of own) {
      const step = steps[ref];
      if (!step || (comparing.includes(step.op) && step.args.every(isWhole))) continue;
      for (const arg of step.args) whole.delete(arg);
    }
  }
  return whole;
}
