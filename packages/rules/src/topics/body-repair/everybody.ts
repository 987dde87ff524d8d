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
  writeOff: {
    rule: 'Above {writeOff.share} of what it is worth, or above that less what the wreck brings, insurers seldom repair. The insurer decides, by your state’s rule.',
    because: 'A total loss is paid by what the policy says of one, less the deductible.',
    look: [],
    otherwise:
      'If you do not know, ask the insurer how it reckons a total loss before you sign anything.',
  },
  damp: {
    rule: 'Nothing is closed up before the wood behind it is dry, by a moisture meter, in several places.',
    because: 'Shut in, wet wood rots, and what is screwed into it lets go.',
    look: [],
    otherwise: 'If you cannot measure, leave it open and aired, covered against rain.',
  },
  sign: {
    rule: 'Sign nothing as settled before a shop has opened it and looked behind the damage.',
    because: 'What is signed is settled, and what is found later is paid by whoever signed.',
    look: [],
    otherwise: 'If someone presses you, take the paper home, and ask your insurer first.',
  },
  cost: {
    rule: 'Go by a shop’s written estimate, made after it has looked behind the damage. Panels, paint, seals and hours make it up.',
    because: 'Only an opened wall tells what is behind a dent.',
    look: [],
    otherwise: 'If you need a figure today, take any from outside as the least.',
  },
  any: {
    rule: 'Gas and power off where it was hit, photographs, a cover that sheds water, and a shop’s look behind it, in that order; sign nothing as settled before.',
    because: 'Only an opened wall tells what is behind a dent, and what is signed is settled.',
    look: [],
    otherwise:
      'If you do not know, leave the trailer standing until a shop has looked at frame, axles, coupler, gas and wiring.',
  },
};
