import type { Asking, Called } from '../../engine/define/shapes';

/** What people ask of shore power; a danger that is told of comes first. */
export const askings: Readonly<Record<string, Asking>> = {
  danger: {
    label: 'Something tingles, flickers, trips or is hot',
    results: [
      'finding.hot-skin',
      'finding.open-neutral',
      'finding.hot-plug',
      'finding.backfeed',
      'finding.breaker-trips',
      'finding.ground-fault',
    ],
    impliedBy: [
      'skin.tingles',
      'lights.brighten',
      'plug.hot',
      'house.fedBackwards',
      'breaker.trips',
      'groundFault.trips',
    ],
  },
  voltage: {
    label: 'Is the voltage right?',
    results: ['voltage.trailer', 'finding.low-voltage', 'finding.high-voltage'],
    impliedBy: ['voltage.outlet', 'voltage.secondLeg'],
    says: [
      {
        when: 'voltage.isRightThere',
        says: 'At the outlet there are {voltage.lowLeg}: that is right, between {voltage.low} and {voltage.highest}. Behind a cord it is less as soon as something runs.',
      },
      {
        when: 'voltage.isOutletsOwn',
        says: 'At the outlet there are {voltage.lowLeg}, and less behind a cord as soon as something runs.',
      },
      { says: 'At the trailer, behind its cord, there are {voltage.trailer}.' },
    ],
  },
  cord: {
    label: 'Is this cord good enough?',
    yesOrNo: true,
    results: ['finding.cord-breaker', 'cord.ampacity', 'cord.drop', 'limit.cord'],
    impliedBy: ['cord.gauge', 'cord.rating', 'cord.length'],
  },
  generator: {
    label: 'Will the generator run it?',
    yesOrNo: true,
    results: ['generator.available', 'limit.generator', 'limit.generator-start'],
    impliedBy: ['generator.power', 'generator.starting', 'motor.lockedRotor'],
    says: [
      {
        when: 'generator.isHalved',
        says: 'The generator can give {generator.available}, but only half of that to one 120-volt plug: {leg.rating}.',
      },
      {
        when: 'generator.isSplit',
        says: 'The generator can give {generator.available}, and to this trailer’s one 120-volt plug {leg.rating}.',
      },
      { says: 'Where it stands the generator can give {generator.available}.' },
    ],
  },
  together: {
    label: 'What may run at the same time?',
    results: ['leg.left', 'leg.fuller', 'limit.leg', 'limit.lasting-load'],
    impliedBy: ['shore.appliances', 'airConditioner.current'],
    says: [
      {
        when: 'leg.isOverdrawn',
        says: 'Too much is drawn, by {leg.tooMuch}.',
      },
      {
        when: 'supply.twoLegs',
        says: 'The feed has two halves; on the fuller one {leg.left} are left.',
      },
      { says: 'What was told to run may run together; {leg.left} are left for more.' },
      {
        says: 'What runs at the same time must stay below the outlet’s breaker. On the fuller half of the feed {leg.fuller} are drawn.',
      },
    ],
  },
  'plug-in': {
    label: 'May it be plugged in here?',
    usual: true,
    results: ['supply.connection', 'finding.outlet', 'finding.outlet-tester', 'leg.rating'],
    impliedBy: ['supply.outlet', 'trailer.inlet', 'plug.adapter', 'bonding.plug'],
  },
};

/** What people call things. */
export const called: Called = {
  topic: [
    'dryer outlet',
    'dogbone',
    'breaker keeps popping',
    'breaker trips',
    'generator for the AC',

    'hookup',
    'pedestal',
    'plug in',
    'plugged in at home',
    'extension cord',
    'dog bone',
    'adapter',
    'surge protector',
    'breaker keeps tripping',
    'GFCI',
    'generator',
    'air conditioner',
    'brownout',
    'thirty amp',
    'fifty amp',
    'driveway',
  ],
  facts: {
    'supply.outlet': ['pedestal', 'garage outlet', 'dryer plug', 'TT-30', '14-50'],
    'trailer.inlet': ['power cord', 'shore cord', 'thirty amp trailer', 'fifty amp trailer'],
    'supply.breaker': ['breaker size', 'fuse in the panel'],
    'cord.gauge': ['orange cord', 'gauge', '10/3', '12/3', 'heavy duty cord'],
    'cord.length': ['feet of cord'],
    'plug.adapter': ['dog bone', 'Y adapter', 'two plug adapter', 'puck'],
    'bonding.plug': ['bonding plug', 'neutral bond plug', 'ground neutral plug'],
    'house.fedBackwards': ['suicide cord', 'male to male', 'backfeed'],
    'outlet.tester': [
      'surge protector error',
      'open ground',
      'reverse polarity',
      'three light tester',
    ],
    'groundFault.trips': ['GFCI trips', 'GFI', 'RCD'],
    'breaker.trips': ['pops the breaker', 'keeps tripping'],
    'skin.tingles': ['shock', 'tingle', 'hot skin', 'zapped'],
    'lights.brighten': ['lights get brighter', 'flicker'],
    'plug.hot': ['melted plug', 'burnt plug', 'hot adapter'],
    'voltage.outlet': ['low voltage', 'volts on the display'],
    'generator.power': ['generator', 'running watts', 'inverter generator'],
    'generator.starting': ['surge watts', 'peak watts'],
    'motor.lockedRotor': ['LRA', 'soft start'],
    'generator.altitude': ['elevation', 'in the mountains'],
    'shore.appliances': ['run at once', 'AC and microwave'],
  },
  options: {
    'supply.outlet': {
      'household-15': ['wall outlet', 'regular plug', 'garage outlet'],
      'trailer-30': ['thirty amp pedestal', 'TT-30'],
      'four-pin-50': ['fifty amp pedestal', '14-50'],
      dryer: ['dryer outlet'],
      welder: ['welder outlet'],
    },
    'plug.adapter': { 'two-plug': ['two plugs into one', 'cheater'], single: ['dog bone'] },
  },
};
