import { zeroUp } from '../../../quantity';
import { everywhere, extreme as overLanes } from '../../value/lanes';
import { extreme, made } from '../../value/numbers';
import { asNumber } from '../../value/truth';
import { eitherSlopes } from '../../value/values';
import { type Draw, type Kind, none, type SortOf } from '../grammar/kind';
import type { Node } from '../grammar/nodes';
import type { Reckon, Scope } from '../grammar/scope';
import { alike } from '../grammar/sorts';

const knownOf = (of: readonly Node[], scope: Scope, reckon: Reckon): readonly Node[] =>
  of.filter((each) => scope.partKnown(each, reckon(each, scope)));

/** largestKnown(a, b, …): the largest of those that rest on nothing unknown. */
export const largestKnown: Kind<'largestKnown'> = {
  form: {
    by: 'call',
    names: ['largestKnown'],
    read: (call) => {
      call.wants(call.count > 1, 'largestKnown(a, b, …)');
      return { kind: 'largestKnown', of: call.nodes() };
    },
  },
  reckon: ({ of }, scope, reckon) => {
    const parts = of.map((node) => ({ node, value: asNumber(reckon(node, scope)) }));
    const known = parts.filter(({ node, value }) => scope.partKnown(node, value));
    if (known.length > 0) return known.map((p) => p.value).reduce((a, b) => extreme('max', a, b));
    return made(zeroUp, parts.map((p) => p.value.slopes).reduce(eitherSlopes));
  },
  parts: ({ of }) => of,
  mentions: none,
  asks: none,
  uses: ({ of }, at) => {
    const known = knownOf(of, at.scope, at.reckon);
    for (const each of of) {
      if (known.includes(each)) at.part(each);
      else at.decider(each);
    }
  },
};

/** The rule of its units. */
export const sortLargestKnown: SortOf<'largestKnown'> = ({ of }, at) =>
  of.map(at.of).reduce((a, b) => alike(a, b, 'largestKnown'));

/** Many draws at once. */
export const drawLargestKnown: Draw<'largestKnown'> = ({ of }, at) => {
  const known = knownOf(of, at.scope, at.reckon);
  if (known.length === 0) return everywhere(at.program, at.whole);
  return known.map(at.numbers).reduce((a, b) => overLanes(at.program, 'max', a, b));
};
