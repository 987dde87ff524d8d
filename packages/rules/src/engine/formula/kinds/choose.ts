import { hull } from '../../../quantity';
import { chooseNumbers, chooseTruths } from '../../value/lane-truths';
import { asTruths } from '../../value/lanes';
import { made } from '../../value/numbers';
import { asTruth } from '../../value/truth';
import { eitherSlopes, joinOn, jumpSlopes, type TruthValue, type Value } from '../../value/values';
import { type Draw, type Kind, none, type SortOf } from '../grammar/kind';
import { alike, truthful } from '../grammar/sorts';

/** Of a choice that is open either branch may be meant, and which of them hangs on what opens it. */
function eitherOf(when: TruthValue, a: Value, b: Value): Value {
  if (a.kind === 'number' && b.kind === 'number') {
    return made(hull(a, b), jumpSlopes(eitherSlopes(a.slopes, b.slopes), when.on));
  }
  const [p, q] = [asTruth(a), asTruth(b)];
  return {
    kind: 'truth',
    yes: p.yes || q.yes,
    no: p.no || q.no,
    on: joinOn(when.on, joinOn(p.on, q.on)),
  };
}

/** choose(when, then, otherwise) */
export const choose: Kind<'choose'> = {
  form: {
    by: 'call',
    names: ['choose'],
    read: (call) => {
      call.wants(call.count === 3, 'choose(when, then, otherwise)');
      const [when, chosen, otherwise] = [call.node(0), call.node(1), call.node(2)];
      return { kind: 'choose', when, chosen, otherwise };
    },
  },
  reckon: ({ when, chosen, otherwise }, scope, reckon) => {
    const decision = asTruth(reckon(when, scope));
    if (!decision.no) return reckon(chosen, scope);
    if (!decision.yes) return reckon(otherwise, scope);
    return eitherOf(decision, reckon(chosen, scope), reckon(otherwise, scope));
  },
  parts: ({ when, chosen, otherwise }) => [when, chosen, otherwise],
  mentions: none,
  asks: none,
  uses: ({ when, chosen, otherwise }, at) => {
    const { yes, no } = asTruth(at.reckon(when, at.scope));
    if (yes) at.part(chosen);
    if (no) at.part(otherwise);
    if (yes && no) at.part(when);
    else at.decider(when);
  },
};

/** The rule of its units. */
export const sortChoose: SortOf<'choose'> = ({ when, chosen, otherwise }, at) => {
  truthful(at.of(when), 'choose');
  return alike(at.of(chosen), at.of(otherwise), 'choose');
};

/** Many draws at once. */
export const drawChoose: Draw<'choose'> = ({ when, chosen, otherwise }, at) => {
  const { yes, no, on } = asTruth(at.reckon(when, at.scope));
  if (!no) return at.part(chosen);
  if (!yes) return at.part(otherwise);
  const decision = at.truths(when);
  const [a, b] = [at.part(chosen), at.part(otherwise)];
  if (a.kind === 'numbers' && b.kind === 'numbers') {
    // Each lane is decided where all that the choice hangs on is drawn.
    const decided = [...on].every((key) => at.drawn.has(key));
    return chooseNumbers(at.program, decision, decided, a, b);
  }
  return chooseTruths(at.program, decision, asTruths(at.program, a), asTruths(at.program, b));
};
