import { anything } from '../../../quantity';
import { drawByDraw } from '../../value/lanes';
import { arithmetic, extreme, made } from '../../value/numbers';
import { asNumber } from '../../value/truth';
import { exactly, type NumberValue, noSlopes } from '../../value/values';
import { type Draw, type Kind, none, type SortOf } from '../grammar/kind';
import type { NodeOf, Over } from '../grammar/nodes';
import type { Reckon, Scope } from '../grammar/scope';
import { clash, numeric } from '../grammar/sorts';

const written: Readonly<Record<string, Over>> = {
  leastOver: 'least',
  mostOver: 'most',
  totalOver: 'total',
  lastOf: 'last',
};

function overSteps(node: NodeOf<'over'>, scope: Scope, reckon: Reckon): NumberValue {
  const { steps, end, isState } = scope.simulation(node.simulation);
  if (node.how === 'last') return asNumber(reckon(node.of, end));
  const each = steps.map((step) => asNumber(reckon(node.of, step)));
  if (node.how === 'total') return each.reduce((a, b) => arithmetic('+', a, b), exactly(0));
  const how = node.how === 'least' ? 'min' : 'max';
  // A state is met at the start of each step; its last value stands only at the end.
  const isLast = node.of.kind === 'name' && isState(node.of.id);
  const last = isLast ? [asNumber(reckon(node.of, end))] : [];
  const all = [...each, ...last];
  // Of no steps there is neither a least nor a most: nothing is known.
  if (all.length === 0) return made(anything, noSlopes);
  return all.reduce((a, b) => extreme(how, a, b));
}

/** leastOver, mostOver, totalOver(simulation, x): over its steps; lastOf: once they are done. */
export const over: Kind<'over'> = {
  form: {
    by: 'call',
    names: Object.keys(written),
    read: (call) => {
      call.wants(call.count === 2, `${call.name}(simulation, value)`);
      const how = written[call.name] ?? clash(`there is no function ${call.name}`);
      return { kind: 'over', how, simulation: call.nameAt(0), of: call.node(1) };
    },
  },
  reckon: overSteps,
  parts: ({ of }) => [of],
  mentions: none,
  asks: ({ simulation }) => [simulation],
  uses: ({ simulation }, at) => at.from(simulation),
};

/** The rule of its units. */
export const sortOver: SortOf<'over'> = ({ how, simulation, of }, at) => {
  if (!at.topic.simulations?.[simulation])
    clash(`there is no simulation “${simulation}”`, 'not-a-simulation', { found: simulation });
  return numeric(at.of(of), how);
};

export const drawOver: Draw<'over'> = drawByDraw;
