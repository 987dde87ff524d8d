import type { ForEverybody } from '../../engine/define/shapes';

/** What is said to all who ask of shore power and told next to nothing. */
export const everybody: Readonly<Record<string, ForEverybody>> = {
  generator: {
    rule: 'Add up what runs at the same time, and read the start of the largest motor. Both must be within what the generator gives; heat and height take some of that.',
    because: 'An air conditioner takes several times its current while it starts.',
    look: [],
    otherwise:
      'If you do not know where its exhaust goes, leave the generator off. Start the air conditioner first, with all else off.',
  },
  danger: {
    rule: 'A tingle at the step, lights that brighten as others dim, a hot plug: breaker off at the site first, then unplug. Touch neither trailer nor cord until then.',
    because: 'Each of them means that current takes a way it should not, through a person next.',
    look: ['skin.tingles'],
    clauses: {
      'skin.tingles': { yes: 'it tingles at door or step', no: 'nothing tingles' },
    },
    otherwise: 'If you are not sure, stay unplugged until the outlet is tested.',
  },
  'plug-in': {
    rule: 'A 30-amp trailer wants 120 volts from an outlet made for trailers. An outlet for a dryer or welder looks alike, gives 240 volts, and destroys what is plugged in.',
    because: 'No adapter turns 240 volts into 120.',
    look: ['supply.outlet'],
    given: { 'trailer.inlet': '30', 'outlet.tester': 'correct' },
    givenSays: 'for a 30-amp trailer and an outlet that tested right, where not told',
    clauses: {
      'supply.outlet': {
        'household-15': 'it is a household outlet of 15 amps',
        'household-20': 'it is a household outlet of 20 amps',
        'trailer-30': 'it is an outlet of 30 amps made for trailers',
        'four-pin-50': 'it is one of 50 amps with four pins',
        generator: 'it is a generator',
        dryer: 'it was made for a dryer',
        welder: 'it was made for a welder',
        'no-label': 'it has no label',
      },
    },
    otherwise:
      'If you do not know what the outlet gives, stay unplugged until an electrician has measured and labeled it.',
  },
  cord: {
    rule: 'The cord must carry what its breaker lets through: 10 gauge behind 30 amps, 6 gauge behind 50. Use a listed thinner cord only behind 15 or 20 amps.',
    because: 'A thinner cord burns before the breaker trips, whatever runs now.',
    look: ['cord.gauge'],
    given: {
      'supply.outlet': 'trailer-30',
      'trailer.inlet': '30',
      'cord.length': '25 ft',
      'outlet.tester': 'correct',
      'shore.appliances': [{ power: '1,200 W' }],
    },
    givenSays: 'for 25 feet behind 30 amps, where not told',
    clauses: {
      'cord.gauge': {
        '16': 'it is 16 gauge',
        '14': 'it is 14 gauge',
        '12': 'it is 12 gauge',
        '10': 'it is 10 gauge',
        '8': 'it is 8 gauge',
        '6': 'it is 6 gauge',
      },
    },
    otherwise:
      'If you cannot read the gauge on a cord’s jacket, leave that cord, and park within reach of the trailer’s own.',
  },
  together: {
    rule: 'Watts divided by 120 are amperes. Hold what runs for three hours and more to {lasting.share} of the breaker, each half of the feed by itself.',
    because: 'A breaker and a plug that carry their full rating for hours get hot.',
    look: ['supply.outlet'],
    given: {
      'trailer.inlet': '30',
      'outlet.tester': 'correct',
      'shore.appliances': [{ power: '1,600 W' }],
    },
    givenSays: 'for a 30-amp trailer with one air conditioner and nothing else, where not told',
    clauses: {
      'supply.outlet': {
        'household-15': 'it is a household outlet of 15 amps',
        'household-20': 'it is a household outlet of 20 amps',
        'trailer-30': 'it is an outlet of 30 amps made for trailers',
        'four-pin-50': 'it is one of 50 amps with four pins',
        generator: 'it is a generator',
        dryer: 'it was made for a dryer',
        welder: 'it was made for a welder',
        'no-label': 'it has no label',
      },
    },
    otherwise:
      'If you do not know, run one large thing at a time: air conditioner, microwave, water heater or charger.',
  },
  voltage: {
    rule: 'Read the voltage with everything running: it is good from {voltage.low} to {voltage.highest}.',
    because: 'Low voltage burns compressors, and high voltage burns boards.',
    look: ['voltage.outlet'],
    given: { 'supply.outlet': 'trailer-30', 'trailer.inlet': '30', 'outlet.tester': 'correct' },
    givenSays:
      'at an outlet of 30 amps for a 30-amp trailer and an outlet that tested right, where not told',
    clauses: { 'voltage.outlet': 'the meter shows {value}' },
    otherwise:
      'If you have no meter, leave the air conditioner off while lights dim, and have the site look at the outlet.',
  },
};
