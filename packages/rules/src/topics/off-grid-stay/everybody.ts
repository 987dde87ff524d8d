import type { ForEverybody } from '../../engine/define/shapes';

const days: ForEverybody = {
  rule: 'Divide the fresh tank by what a day takes, then the gray tank by what goes down the sink a day. The smaller number of days is the stay. Most stays end with the gray tank.',
  because: 'Water that ran through the sink is still aboard, and has to go somewhere.',
  look: ['water.daily'],
  given: {
    'water.freshTank': '40 gal',
    'water.grayTank': '36 gal',
    'stay.days': '3 d',
  },
  givenSays: 'for tanks of middle size, where they were not told, and three days',
  clauses: { 'water.daily': 'you use {value}' },
  worked: {
    says: 'At {water.daily} a fresh tank of {water.freshTank} lasts {fresh.days}. A gray tank of {water.grayTank} is full after {gray.days}.',
    given: {
      'water.freshTank': '40 gal',
      'water.grayTank': '30 gal',
      'water.daily': '8 gal/d',
    },
  },
  fromTold: [
    {
      says: 'Say you use {water.daily}: your fresh tank of {water.freshTank} lasts {fresh.days}.',
      given: { 'water.daily': '8 gal/d' },
    },
    {
      says: 'Say you use {water.daily}: your gray tank of {water.grayTank} is full after {gray.days}.',
      given: { 'water.daily': '8 gal/d' },
    },
    {
      says: 'Say you use {water.daily}: {stay.days} take {fresh.needed} of fresh water and put {gray.filled} into the gray tank.',
      given: { 'water.daily': '8 gal/d' },
    },
    {
      says: 'At {water.daily} a fresh tank of {water.freshTank}, for example, lasts {fresh.days}.',
      given: { 'water.freshTank': '40 gal' },
    },
  ],
  otherwise:
    'If you have not measured a day, plan two days, and read both gauges on both evenings. Half of the change is a day.',
};

/** What is said to all who ask of a stay and told next to nothing. */
export const everybody: Readonly<Record<string, ForEverybody>> = {
  gas: {
    rule: 'What is in the cylinders, divided by what a day and night take, is the days; the furnace takes by far the most.',
    because: 'The colder it is, the longer the furnace burns.',
    look: [],
    otherwise:
      'If you do not know, weigh a cylinder on two evenings, and have both filled before the trip.',
  },
  stretch: {
    rule: 'Look first at what ends the stay, fresh, gray or black tank, battery or gas: only more of that one stretches it.',
    because: 'More of all the others changes nothing.',
    look: ['water.daily'],
    otherwise:
      'If you do not know, read all gauges on two evenings, and see which one moves fastest.',
  },
  road: {
    rule: 'What is in the tanks rides along. Ahead of the axles it presses on the ball, behind them it takes weight off. Dump gray and black before the road.',
    because: 'Water is among the heaviest things aboard, and a light tongue sways.',
    look: [],
    otherwise:
      'If you do not know where the tanks are, dump first, and weigh the tongue before the road.',
  },
  days,
  battery: {
    rule: 'The battery lasts what may be taken of it, divided by what a day takes more than the sun brings back.',
    because: 'Panels bring nothing at night, little in winter, and next to nothing under trees.',
    look: ['battery.dayDrawn'],
    given: {
      'battery.chemistry': 'agm',
      'battery.capacity': '100 Ah',
      'water.freshTank': '80 gal',
      'water.grayTank': '80 gal',
      'water.daily': '5 gal/d',
      'stay.days': '3 d',
    },
    givenSays:
      'for one AGM battery of middle size, where it was not told, three days, and water enough',
    clauses: { 'battery.dayDrawn': 'a day takes {value}' },
    worked: {
      says: 'At {battery.dayDrawn} a day a battery that gives {battery.spare} lasts {battery.lasts}.',
      given: {
        'battery.chemistry': 'agm',
        'battery.capacity': '100 Ah',
        'battery.dayDrawn': '35 Ah',
      },
    },
    otherwise:
      'If you have no monitor, count on one day, and charge each morning. Medical devices and the furnace’s blower stay on.',
  },
};
