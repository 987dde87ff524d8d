import type { ForEverybody } from '../../engine/define/shapes';

/** What is said to all who ask how to keep it and told next to nothing. */
export const everybody: Readonly<Record<string, ForEverybody>> = {
  gap: {
    rule: 'A policy that pays the value of the day leaves open whatever is owed beyond that, less the deductible. An agreed value pays what was agreed.',
    because: 'What is owed falls more slowly than what it is worth.',
    look: [],
    otherwise: 'If you do not know, read the declarations page, and ask the agent in writing.',
  },
  tracker: {
    rule: 'A tracker lasts what its battery holds, divided by what it takes a day. The more often it reports, the sooner it is empty.',
    because: 'An empty tracker tells nobody anything.',
    look: [],
    otherwise: 'If you do not know, look at its charge each time that you look at the trailer.',
  },
  insurer: {
    rule: 'Read in the policy what must be fitted for theft to be paid, and keep receipts and all keys.',
    because: 'An insurer may pay nothing where what it asks for is not there.',
    look: [],
    otherwise: 'If you do not find it, ask the agent in writing.',
  },
  any: {
    rule: 'Hold it at the coupler and at a wheel, keep its numbers, photographs and papers at home, and have somebody look by.',
    because: 'What takes long to free and is soon missed is the worse bargain.',
    look: ['guard.held'],
    given: {
      'place.kind': 'storage-lot',
      'parked.days': '30 d',
      'rig.value': '30,000 USD',
      'guard.noticed': 'listed-and-watched',
    },
    givenSays:
      'for a month on a storage lot and a trailer worth 30,000 dollars, listed and looked after, where not told',
    clauses: {
      'guard.held': {
        nothing: 'nothing holds it',
        coupler: 'a coupler lock holds it',
        'coupler-and-wheel': 'locks on coupler and wheel hold it',
        'coupler-and-both-wheels': 'locks on coupler and both sides hold it',
        anchored: 'it is chained to an anchor as well',
        hitched: 'it stays hitched with its pins locked',
      },
    },
    otherwise:
      'Begin with a coupler lock that fills the socket and a wheel lock, and write the numbers down today.',
  },
};
