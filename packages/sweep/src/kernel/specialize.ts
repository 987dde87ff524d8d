import { graph } from './build';
import type { Ref, Step } from './graph';
import { joining } from './joining';
import type { Mark } from './marks';
import { type Staged, staged, stageOf } from './staged';

/** A program for places of which so much is the same. */
export type Special = {
  readonly staged: Staged;
  /** Where its inputs come from: steps of the program for all places. */
  readonly inputs: ReadonlyMap<Ref, Ref>;
  /** Inputs that are rounded already. */
  readonly rounded: ReadonlySet<Ref>;
  readonly outputs: readonly Ref[];
};

/**
 * The steps of all pairs once more, from what is wanted down, with whatever is the same folded away;
 * of a choice that is settled only what was chosen.
 */
export function specialize(
  { steps }: Staged,
  outputs: readonly Ref[],
  marks: (ref: Ref) => Mark | undefined,
): Special {
  const g = graph();
  const made = new Map<Ref, Ref>();
  const inputs = new Map<Ref, Ref>();
  const rounded = new Set<Ref>();
  const isSettled = (ref: Ref, value: number): boolean => g.isConstant(ref, value);

  const { any, choice, compared, round } = joining(g);

  const constantOf = ({ sort }: Step, value: number): Ref => {
    if (sort === 'number') return g.constant(value);
    return sort === 'bits' ? g.bits(value) : g.truth(value === 1);
  };

  const leaf = (ref: Ref, step: Step): Ref => {
    const mark = marks(ref);
    if (!mark) throw new Error(`There is nothing for step ${ref}.`);
    if (mark.fixed !== undefined) return constantOf(step, mark.fixed);
    if (mark.twin !== undefined) return at(mark.twin);
    const { least, most, mayBeNone } = mark;
    const input = g.input(`${ref}`, step.sort, step.side, least, most, mayBeNone);
    inputs.set(input, ref);
    if (step.op === 'round') rounded.add(input);
    return input;
  };

  const again = ({ op, value, args }: Step): Ref => {
    const [first = 0, second = 0, third = 0] = args;
    const a = at(first);
    switch (op) {
      case 'choose':
        if (isSettled(a, 1)) return at(second);
        return isSettled(a, 0) ? at(third) : choice(a, at(second), at(third));
      case 'and':
        return isSettled(a, 0) ? a : g.and(a, at(second));
      case 'or':
        return isSettled(a, 1) ? a : any([a, at(second)]);
      case 'number-or':
        return g.numberOr(a, value);
      case 'bits-are':
        return g.bitsAre(a, value);
      case 'less':
      case 'not-above':
        return compared(op, a, at(second));
      case 'bits-or':
        return g.bitsOr(a, at(second));
      case 'bits-and':
        return g.bitsAnd(a, at(second));
      case 'round':
        return round(a);
      case 'neg':
      case 'not':
        return g[op](a);
      case 'above':
      case 'from':
      case 'from-times':
      case 'from-over':
      case 'constant':
      case 'input':
        throw new Error(`A ${op} is not reckoned.`);
      default:
        return g[op](a, at(second));
    }
  };

  const at = (ref: Ref): Ref => {
    const before = made.get(ref);
    if (before !== undefined) return before;
    const step = steps[ref];
    if (!step) throw new Error(`There is no step ${ref}.`);
    const isOwn = step.op !== 'constant' && stageOf(step) === 'pairs';
    const found =
      step.op === 'constant' ? constantOf(step, step.value) : isOwn ? again(step) : leaf(ref, step);
    made.set(ref, found);
    return found;
  };

  const ends = outputs.map(at);
  return { staged: staged(g.steps, ends), inputs, rounded, outputs: ends };
}
