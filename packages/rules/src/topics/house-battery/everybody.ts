import type { ForEverybody } from '../../engine/define/shapes';

const howFull: ForEverybody = {
  rule: 'At rest a lead battery is half full at about twelve and a quarter volts; below that charge it the same day. Read lithium on a monitor that counts what goes in and out: its voltage says almost nothing.',
  because: 'On the charger it reads too high, with lamps on too low.',
  look: ['battery.voltage'],
  given: {
    'battery.chemistry': 'flooded',
    'battery.reading': 'at-rest',
    'battery.rested': '12 h',
  },
  givenSays: 'for a flooded battery of twelve volts, where not told, that had rested overnight',
  clauses: { 'battery.voltage': 'the meter shows {value}' },
  fromTold: [
    {
      says: 'If nothing charged it or drew on it overnight, a flooded lead battery at {battery.voltage} has about {battery.stateOfCharge} left. While it charges, the voltage says nothing; on lithium it says almost nothing.',
      given: {
        'battery.chemistry': 'flooded',
        'battery.reading': 'at-rest',
        'battery.rested': '12 h',
      },
    },
    {
      says: 'From {battery.voltage} nobody can tell how full the battery is: two tenths of a volt are a quarter of the charge. Read it on a meter, to the hundredth, after a night with nothing on.',
    },
  ],
  otherwise:
    'If you cannot read the battery, charge it full before the trip, in a place above freezing, and let the charger finish by itself.',
};

/** What is said to all who ask of the battery and told next to nothing. */
export const everybody: Readonly<Record<string, ForEverybody>> = {
  charger: {
    rule: 'Set the charger for the very kind of battery, with no more amperes than the battery’s maker allows. Missing ampere-hours divided by the charger’s amperes are the least hours.',
    because: 'A wrong voltage boils a lead battery dry and leaves a lithium one half full.',
    look: [],
    otherwise:
      'If you do not know the kind, charge nothing until you have read the label on the battery.',
  },
  stored: {
    rule: 'Charge it, then open the battery switch while the trailer stands empty: what draws with everything off empties it in weeks.',
    because:
      'Alarms, radio and boards draw day and night, and an empty lead battery freezes and dies.',
    look: [],
    otherwise:
      'If you cannot measure what draws, open the battery switch, and charge the battery every month.',
  },
  setting: {
    rule: 'The charger is set for that very kind of battery, by the voltages that its maker prints.',
    because: 'A wrong voltage boils a lead battery dry and leaves a lithium one half full.',
    look: [],
    otherwise: 'If you cannot find the setting, ask the battery’s maker before you charge.',
  },
  bank: {
    rule: 'Join batteries of twelve volts side by side, plus to plus, and two of six volts one behind the other. All must be of one kind, size and age.',
    because:
      'One unlike the others is charged too much or too little by them, and pulls them down.',
    look: [],
    otherwise:
      'If you are not sure, draw the cables on paper, and have the drawing checked before the last cable goes on.',
  },
  cold: {
    rule: 'Never charge a lithium battery while its cells are below freezing. A lead battery freezes sooner the emptier it is, so keep it charged.',
    because: 'Charging frozen lithium cells ruins them where it does not show.',
    look: [],
    otherwise:
      'If you cannot measure the cells, bring the battery to a heated place before you charge it.',
  },
  'how-full': howFull,
  day: {
    rule: 'Add up watts times hours, divide by twelve: that many ampere-hours a day takes. A lead battery gives {depth.lead} of its label, a lithium one {depth.lithium}.',
    because: 'What runs all night, and an inverter that was left on, take more than lamps do.',
    look: ['battery.capacity'],
    given: { 'battery.chemistry': 'agm' },
    givenSays: 'for an AGM battery, where not told',
    clauses: { 'battery.capacity': 'its label says {value}' },
    otherwise:
      'If you do not know, plan one night, and charge in the morning. What keeps somebody warm or well stays on.',
  },
  'how-long': {
    rule: 'Watts divided by twelve are amperes. Divide {depth.lead} of the ampere-hours on a lead label by that: so many hours, and fewer at a heavy load.',
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
      'If somebody’s health needs the power, have a second source: another battery, or shore power.',
  },
  furnace: {
    rule: 'Take {depth.lead} of a lead label, or {depth.lithium} of a lithium one. Divide that by the amperes on the furnace’s plate: so many hours its blower runs.',
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
      says: 'On a lead battery of {battery.capacity} a blower of {furnace.blowerCurrent} runs {furnace.blowerHours}. Heating {furnace.duty} of the time, that is {furnace.clockHours} by the clock.',
      given: {
        'battery.chemistry': 'agm',
        'battery.capacity': '100 Ah',
        'furnace.blowerCurrent': '7 A',
        'furnace.duty': '50 %',
      },
    },
    otherwise:
      'If you do not know, plan one night and charge in the morning; never turn the heat down to save power.',
  },
  inverter: {
    rule: 'Divide the inverter’s watts by ten: about so many amperes leave a twelve-volt battery. The battery’s maker must allow that, and wire and fuse must carry it.',
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
      'If you cannot find that figure, take an inverter of a thousand watts or less for each hundred amperes. Have a shop wire and fuse the inverter.',
  },
  wire: {
    rule: 'The fuse protects the wire. Take a fuse no larger than what the wire carries, within a hand’s breadth of the battery.',
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
    otherwise:
      'If you cannot read the gauge, fuse it as the thinnest it may be, or have it measured in a shop.',
  },
};
