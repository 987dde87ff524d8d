import { anything, zeroUp } from '../../../quantity';
import { made } from '../../value/numbers';
import { asNumber } from '../../value/truth';
import { type Draw, type Kind, none, type SortOf } from '../grammar/kind';
import { numeric } from '../grammar/sorts';

/** needs(value, x, …): the value if each x is known, else anything from zero up. */
export const needs: Kind<'needs'> = {
  form: {
    by: 'call',
    names: ['needs'],
    read: (call) => {
      call.wants(call.count > 1, 'needs(value, name, …)');
      return { kind: 'needs', of: call.node(0), names: call.names(1) };
    },
  },
  reckon: ({ of, names }, scope, reckon) => {
    const missing = names.filter((name) => !scope.known(name));
    if (missing.length === 0) return asNumber(reckon(of, scope));
    return made(zeroUp, new Map(missing.map((name) => [name, anything])));
  },
  parts: ({ of }) => [of],
  mentions: ({ names }) => names,
  asks: none,
  uses: ({ of, names }, at) => {
    const missing = names.filter((name) => !at.scope.known(name));
    if (missing.length === 0) at.part(of);
    for (const name of missing) at.from(name);
    for (const name of names) if (!missing.includes(name)) at.decidedBy(name);
  },
};

/** The rule of its units. */
export const sortNeeds: SortOf<'needs'> = ({ of, names }, at) => {
  for (const name of names) at.unitOf(name);
  return numeric(at.of(of), 'needs');
};

/** Many draws at once. */
export const drawNeeds: Draw<'needs'> = ({ of }, at) => at.part(of);
