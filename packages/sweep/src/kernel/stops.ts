import { levels } from '@tarebook/rules/engine';
import type { Ref, Step } from './graph';
import type { Special } from './specialize';
import { reached, stageOf } from './staged';

/** Steps in the order in which they are gone through, and what alone may stop once they are. */
export type StopGroup = {
  readonly own: readonly Ref[];
  /** A truth: wherever it holds, nothing else matters any more. Undefined for what comes last. */
  readonly stops: Ref | undefined;
};

const stop = levels.indexOf('stop');

/** All that are joined by “or”, down to what is reckoned some other way, or on one side alone. */
function alternatives(steps: readonly Step[], from: Ref): readonly Ref[] {
  const step = steps[from];
  if (step?.op !== 'or' || stageOf(step) !== 'pairs') return [from];
  return [...new Set(step.args.flatMap((arg) => alternatives(steps, arg)))];
}

/**
 * The steps of a pair so ordered that what may stop comes first, what takes least before what takes
 * more: most pairs of a yard are stopped, many by the first thing that is looked at.
 */
export function stopsFirst({ staged: { steps, stages }, outputs }: Special): readonly StopGroup[] {
  const { own } = stages.pairs;
  const whole = [{ own, stops: undefined }];
  const [least = -1, , ...room] = outputs;
  const verdict = steps[least];
  const [when = -1, then = -1] = verdict?.args ?? [];
  const isStop = steps[then]?.op === 'constant' && steps[then]?.value === stop;
  // Where it is also told what binds, all of it is wanted.
  if (verdict?.op !== 'choose' || !isStop || room.length > 0) return whole;
  const isOwn = new Set(own);
  const below = new Map(
    alternatives(steps, when).map((each) => [
      each,
      reached(steps, [each]).filter((ref) => isOwn.has(ref)),
    ]),
  );
  const done = new Set<Ref>();
  const groups: StopGroup[] = [];
  const left = new Set(below.keys());
  while (left.size > 0) {
    const lacks = [...left].map((each) => ({
      stops: each,
      own: (below.get(each) ?? []).filter((ref) => !done.has(ref)),
    }));
    const next = lacks.reduce((a, b) => (b.own.length < a.own.length ? b : a));
    groups.push(next);
    left.delete(next.stops);
    for (const ref of next.own) done.add(ref);
  }
  return [...groups, { own: own.filter((ref) => !done.has(ref)), stops: undefined }];
}
