import type { ForEverybody } from '../../engine/define/shapes';

/** What is said to all who ask about damage and told next to nothing. */
export const everybody: Readonly<Record<string, ForEverybody>> = {
  claim: {
    rule: 'Claim only what costs more than deductible and higher premiums together.',
    because:
      'A collision claim may add {raise.low} to {raise.high} to the premium for {years.low} to {years.high}, where the policy forgives none.',
    look: [],
    otherwise:
      'If you do not know, have a shop look and write an estimate first. Ask the agent in general, without naming a loss.',
  },
  any: {
    rule: 'Gas and power off where it was hit, photographs, a cover that sheds water, and a shop’s look behind it, in that order; sign nothing as settled before.',
    because: 'Only an opened wall tells what is behind a dent, and what is signed is settled.',
    look: [],
    otherwise:
      'If you do not know, leave the trailer standing until a shop has looked at frame, axles, coupler, gas and wiring.',
  },
};
