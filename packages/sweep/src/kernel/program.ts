import { type Compiled, compiledOf, type Topic } from '@tarebook/rules/engine';
import { graph } from './build';
import { reckoning } from './formulas';
import type { Graph, Ref, Sort, Step } from './graph';
import { type Sides, sideBits } from './sides';
import { openSource, type SumNode } from './source';
import { sideOfSum, sumsOf } from './sums';
import { NotHeld, type NumberSteps } from './values';
import { verdictSteps } from './verdict';

/** A topic's verdict as steps over whatever a case, its rows and its columns tell. */
export type Program = {
  readonly steps: readonly Step[];
  /** The level at the least and at the most. */
  readonly verdict: readonly Ref[];
  /** The binding limit, both ends of what is left of it, and whether the engine must be asked. */
  readonly room: readonly Ref[];
};

/** What comes in of a sum, by the end of its name. */
export const sumParts = [
  ['lo', 'number'],
  ['hi', 'number'],
  ['rises', 'bits'],
  ['risesEndless', 'bits'],
  ['falls', 'bits'],
  ['fallsEndless', 'bits'],
  ['open', 'truth'],
  ['loose', 'truth'],
] as const;

export const sumName = (at: number, part: string): string => `sum ${at} ${part}`;

/** A sum over a list of the case comes in ready; it is reckoned row by row before. */
function summedIn(g: Graph, compiled: Compiled, sides: Sides): (sum: SumNode) => NumberSteps {
  const places = new Map(sumsOf(compiled).map((sum, at) => [sum, at]));
  return (sum) => {
    const at = places.get(sum);
    if (at === undefined) throw new NotHeld('A sum stands in no formula.');
    const side = sideOfSum(compiled, sides, sum);
    if (side === sideBits.both) throw new NotHeld('A sum hangs on both sides.');
    const part = (name: string, sort: Sort): Ref =>
      g.input(sumName(at, name), sort, side, -Infinity, Infinity);
    return {
      ...{ kind: 'number', lo: part('lo', 'number'), hi: part('hi', 'number') },
      rises: { closed: part('rises', 'bits'), endless: part('risesEndless', 'bits') },
      falls: { closed: part('falls', 'bits'), endless: part('fallsEndless', 'bits') },
      ...{ open: part('open', 'truth'), loose: part('loose', 'truth') },
    };
  };
}

/**
 * The verdict of a topic as a program over rows and columns.
 *
 * @throws NotHeld naming what a kernel cannot hold.
 */
export function programOf(topic: Topic, sides: Sides): Program {
  const compiled = compiledOf(topic);
  const g = graph();
  const source = openSource(g, topic, sides, summedIn(g, compiled, sides));
  const noRow = (): never => {
    throw new NotHeld('A list is gone through in no sum.');
  };
  const of = reckoning(g, compiled, { ...source, rows: noRow, cell: noRow });
  const { least, most, binding, left, unsure } = verdictSteps(g, compiled, of);
  return { steps: g.steps, verdict: [least, most], room: [binding, left.lo, left.hi, unsure] };
}
