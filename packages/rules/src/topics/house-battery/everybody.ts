import type { ForEverybody } from '../../engine/define/shapes';

const howFull: ForEverybody = {
  rule: 'A lead battery is half full at about twelve and a quarter volts, read at rest, and below that it ages, so charge it the same day; of lithium a voltage says almost nothing, and only a monitor with a shunt tells.',
  because: 'On the charger it reads too high, with lamps on too low.',
  look: ['battery.voltage'],
  given: {
    'battery.chemistry': 'flooded',
    'battery.reading': 'at-rest',
    'battery.rested': '12 h',
  },
  givenSays: 'for a flooded battery of twelve volts, where not told, that had rested overnight',
  clauses: { 'battery.voltage': 'the meter shows {value}' },
  otherwise:
    'Whoever cannot read it charges it full before the trip, and lets the charger finish by itself.',
};

/** What is said to all who ask of the battery and told next to nothing. */
export const everybody: Readonly<Record<string, ForEverybody>> = {
  charger: {
    rule: 'The charger is set for the very kind of battery it charges, and gives no more amperes than the battery’s maker allows; missing ampere-hours divided by its amperes are the least hours.',
    because: 'A wrong voltage boils a lead battery dry and leaves a lithium one half full.',
    look: [],
    otherwise:
      'Whoever does not know the kind charges nothing until the label on the battery is read.',
  },
  stored: {
    rule: 'Charge it, then open the battery switch while nobody is in the trailer: what draws with everything off empties it in weeks.',
    because:
      'Alarms, radio and boards draw day and night, and an empty lead battery freezes and dies.',
    look: [],
    otherwise: 'Whoever cannot measure what draws opens the switch, and charges it every month.',
  },
  setting: {
    rule: 'The charger is set for that very kind of battery, by the voltages that its maker prints.',
    because: 'A wrong voltage boils a lead battery dry and leaves a lithium one half full.',
    look: [],
    otherwise: 'Whoever cannot find the setting asks the battery’s maker before it is charged.',
  },
  bank: {
    rule: 'Batteries of twelve volts stand side by side, plus to plus; two of six volts stand one behind the other; all of one kind, size and age.',
    because:
      'One unlike the others is charged too much or too little by them, and pulls them down.',
    look: [],
    otherwise:
      'Whoever is not sure draws the cables on paper, and has it looked at before the last one goes on.',
  },
  cold: {
    rule: 'No lithium battery is charged while its cells are below freezing; a lead one freezes the sooner the emptier it is, so keep it charged.',
    because: 'Charging frozen lithium cells ruins them where nobody sees it.',
    look: [],
    otherwise:
      'Whoever cannot measure the cells brings them to a heated place before they are charged.',
  },
  'how-full': howFull,
  day: {
    rule: 'Add up watts times hours, divide by twelve: that is what a day takes, and a lead battery gives {depth.lead} of its label, a lithium one {depth.lithium}.',
    because: 'What runs all night, and an inverter that was left on, take more than lamps do.',
    look: ['battery.capacity'],
    given: { 'battery.chemistry': 'agm' },
    givenSays: 'for an AGM battery, where not told',
    clauses: { 'battery.capacity': 'its label says {value}' },
    otherwise:
      'Whoever does not know plans one night, and charges in the morning. What keeps somebody warm or well stays on.',
  },
  'how-long': {
    rule: 'Watts divided by twelve are amperes; {depth.lead} of the ampere-hours on a lead label, divided by that, are hours, and at a heavy load less.',
    because: 'An inverter adds a sixth, and a lead battery gives less the harder it is drawn on.',
    look: ['battery.capacity'],
    given: { 'battery.chemistry': 'agm', 'steady.hours': '8 h' },
    givenSays: 'for an AGM battery and a night of eight hours, where not told',
    clauses: { 'battery.capacity': 'its label says {value}' },
    worked: {
      says: '{steady.power} run {steady.hoursToStop} on {battery.usable} that may be taken.',
      given: {
        'battery.chemistry': 'agm',
        'battery.capacity': '100 Ah',
        'steady.power': '50 W',
      },
    },
    otherwise:
      'Whoever needs it for somebody’s health has a second source: another battery, or shore power.',
  },
  furnace: {
    rule: 'What may be taken of the battery, divided by the amperes on the furnace’s plate, is hours of its blower: {depth.lead} of a lead label, {depth.lithium} of a lithium one.',
    because: 'On a cold night it runs half of the time and more.',
    look: ['battery.capacity'],
    given: {
      'battery.chemistry': 'agm',
      'furnace.blowerCurrent': '7 A',
      'furnace.hours': '12 h',
      'furnace.duty': '50 %',
    },
    givenSays:
      'for an AGM battery, a blower of seven amperes and half of a twelve-hour night, where not told',
    clauses: { 'battery.capacity': 'its label says {value}' },
    worked: {
      says: 'On a lead battery of {battery.capacity} a blower of {furnace.blowerCurrent} runs {furnace.blowerHours}; heating {furnace.duty} of the time, {furnace.clockHours} by the clock.',
      given: {
        'battery.chemistry': 'agm',
        'battery.capacity': '100 Ah',
        'furnace.blowerCurrent': '7 A',
        'furnace.duty': '50 %',
      },
    },
    otherwise:
      'Whoever does not know plans one night and charges in the morning; the heat is not what is saved.',
  },
  inverter: {
    rule: 'Watts divided by ten are about the amperes that an inverter takes from a twelve-volt battery; they must be within what the battery’s maker allows, and so must wire and fuse.',
    because:
      'Many lithium batteries of a hundred ampere-hours let a hundred amperes through and no more.',
    look: ['battery.mostCurrent'],
    given: {
      'inverter.power': '2,000 W',
      'battery.chemistry': 'lifepo4',
      'battery.capacity': '200 Ah',
      'fuse.kind': 'class-t',
      'inverter.starting': '0 W',
      'inverter.surge': '4,000 W',
    },
    givenSays: 'for two thousand watts on one lithium battery, where not told',
    clauses: { 'battery.mostCurrent': 'its maker allows {value}' },
    otherwise:
      'Whoever cannot find that figure takes an inverter of a thousand watts or less for each hundred amperes, and has it wired and fused by a shop.',
  },
  wire: {
    rule: 'The fuse protects the wire: it is never larger than what the wire carries, and it stands within a hand’s breadth of the battery.',
    because: 'A short in a wire without one burns it from end to end.',
    look: ['wire.gauge'],
    given: {
      'wire.current': '60 A',
      'wire.length': '6 ft',
      'wire.fuse': '80 A',
      'wire.fuseAtBattery': 'yes',
      'battery.chemistry': 'agm',
    },
    givenSays: 'for sixty amperes over six feet with a fuse of eighty, where not told',
    clauses: {
      'wire.gauge': {
        '16': 'it is 16 gauge',
        '14': 'it is 14 gauge',
        '12': 'it is 12 gauge',
        '10': 'it is 10 gauge',
        '8': 'it is 8 gauge',
        '6': 'it is 6 gauge',
        '4': 'it is 4 gauge',
        '2': 'it is 2 gauge',
        '1/0': 'it is one-aught',
        '2/0': 'it is two-aught',
        '4/0': 'it is four-aught',
      },
    },
    otherwise: 'Whoever cannot read the gauge takes the next thicker wire and the smaller fuse.',
  },
};
