import type { ForEverybody } from '../../engine/define/shapes';

/** What is said to all who ask a service desk and told next to nothing. */
export const everybody: Readonly<Record<string, ForEverybody>> = {
  alarm: {
    rule: 'An alarm that sounds without stopping is gas, smoke or carbon monoxide: everybody out, then call. A chirp once in a while is the alarm itself.',
    because: 'Carbon monoxide has no smell, and a headache may be all that tells of it.',
    look: ['alarm.heard'],
    given: { 'gas.smell': 'no', 'danger.sign': 'none' },
    givenSays: 'where no gas is smelled and all feel well',
    clauses: {
      'alarm.heard': {
        quiet: 'it is quiet',
        chirps: 'it chirps once in a while',
        sounds: 'it sounds without stopping',
      },
    },
    otherwise: 'If you are not sure, go out first, and listen from there.',
  },
  hubs: {
    rule: 'Compare the hubs with each other, right after a stop. {hub.stopFrom} apart is stop, and so is {hub.hotStop} on any of them.',
    because:
      'A bearing that runs dry shows in the heat long before it locks or the wheel comes off.',
    look: [],
    otherwise: 'If you have no thermometer and smell something hot, stop, and let a shop come.',
  },
  tires: {
    rule: 'At {tire.runFlat} of its mates’ pressure or less a tire counts as run flat. Take it off, and let a tire shop look inside before anybody fills it.',
    because:
      'A tire that ran soft is broken inside where it does not show, and comes apart at speed.',
    look: [],
    otherwise: 'If you have no gauge, drive nowhere on a tire that looks soft.',
  },
  recall: {
    rule: 'Look up the identification number, at the government’s recall site or with the maker. A dealer of that make mends a recall free of charge; where it says not to drive, the trailer stays where it is.',
    because: 'A recall belongs to that very number, and a like trailer may have none.',
    look: [],
    otherwise:
      'If you cannot find the number, read it off the label at the front left, or the title.',
  },
  warranty: {
    rule: 'Read in the booklet how long it runs, and from which day. Chassis, appliances and tires have makers and papers of their own. Call before anything is opened.',
    because: 'What was opened or mended elsewhere may not be paid.',
    look: [],
    otherwise:
      'If you have no booklet, ask the dealer with the identification number and the day of sale.',
  },
  any: {
    rule: 'Gas smelled, smoke, or an alarm that does not stop: everybody out, then call. A tingle: hands off. Anything hot or loose: stop where it is safe. Brakes, wheels and coupling that fail or get worse do not roll until somebody qualified has looked. A steady fault there goes slowly to the nearest shop.',
    because: 'All else can wait for a day; these cannot.',
    look: [],
    otherwise:
      'If you cannot tell what is wrong, leave the trailer where it stands safely. Call the shop, and say what you see, hear or miss.',
  },
};
