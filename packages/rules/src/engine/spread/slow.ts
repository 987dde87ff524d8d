import { type Interval, point } from '../../quantity';
import type { Run } from '../formula/run';
import { type Lanes, type Numbers, newNumbers, newTruths, type Program } from '../value/lanes';
import type { Value } from '../value/values';

/**
 * Formulas with kinds that have no way over lanes: the whole case is reckoned once a draw, with
 * every drawn input held where it was drawn.
 */
export function slowWay(
  program: Program,
  drawn: ReadonlyMap<string, Numbers>,
  whole: Run,
  pinned: (pins: ReadonlyMap<string, Interval>) => Run,
) {
  let runs: Run[] = [];
  const runAt = (lane: number): Run => {
    const before = runs[lane];
    if (before) return before;
    const made = pinned(new Map([...drawn].map(([key, { lo }]) => [key, point(lo[lane] ?? 0)])));
    runs[lane] = made;
    return made;
  };
  const lanesOf = (name: string): Lanes => {
    const lanes = emptyLanes(program, whole.value(name).kind);
    program.steps.push((count) => {
      for (let i = 0; i < count; i += 1) put(lanes, i, runAt(i).value(name));
    });
    return lanes;
  };
  /** To be called before each block. */
  const begin = (): void => {
    runs = [];
  };
  return { lanesOf, begin };
}

function emptyLanes(program: Program, kind: Value['kind']): Lanes {
  switch (kind) {
    case 'number':
      return newNumbers(program, false);
    case 'truth':
      return newTruths(program);
    case 'among':
      return { kind: 'words', options: [] };
  }
}

function put(lanes: Lanes, lane: number, value: Value): void {
  if (lanes.kind === 'numbers' && value.kind === 'number') {
    lanes.lo[lane] = value.lo;
    lanes.hi[lane] = value.hi;
  } else if (lanes.kind === 'truths' && value.kind === 'truth') {
    lanes.yes[lane] = Number(value.yes);
    lanes.no[lane] = Number(value.no);
  } else if (lanes.kind === 'words' && value.kind === 'among') {
    lanes.options[lane] = value.options;
  } else throw new Error('A value changed its kind from draw to draw.');
}
