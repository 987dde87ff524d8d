import type { Asking, Called } from '../../engine/define/shapes';

const burning =
  'The furnace’s blower runs {furnace.blowerHours}, down to what must stay in the battery. Counted as burning {furnace.usual} of the time, that is {furnace.clockHours} by the clock.';

const blower =
  'The furnace’s blower runs {furnace.blowerHours}, down to what must stay in the battery. On and off, that is {furnace.clockHours} by the clock.';

/** What people ask of the battery; the first that is told of is answered first. */
export const askings: Readonly<Record<string, Asking>> = {
  'how-full': {
    label: 'How full is it?',
    results: ['battery.stateOfCharge', 'limit.state-of-charge'],
    impliedBy: ['battery.voltage', 'battery.reading', 'battery.rested'],
    says: [
      {
        when: 'monitor.isTold',
        says: 'The battery is {battery.stateOfCharge} full, if the panel counts what goes in and out. A panel that guesses from the voltage is right only after hours of rest.',
      },
      {
        when: 'rested.isPast',
        says: 'If nothing charged it or drew on it for {rest.needed}, it is {charge.rested} full. That is below the {stop.stateOfCharge} that must stay in it: charge it today.',
      },
      {
        when: 'rested.isAsked',
        says: 'If nothing charged it or drew on it for {rest.needed}, it is {charge.rested} full; {stop.stateOfCharge} must stay in it.',
      },
      {
        when: 'charge.isFlat',
        says: 'From {battery.voltage} the charge cannot be told: half full and full, lithium reads nearly alike. Charge it full before you count on it; a monitor that counts says how full it is.',
      },
      {
        when: 'charge.isVague',
        says: 'From {battery.voltage}, read like that, the charge cannot be told. Before you count on it, switch charger and everything else off for {rest.needed}, and read it again.',
      },
      {
        says: 'The battery is {battery.stateOfCharge} full; {stop.stateOfCharge} must stay in it.',
      },
      { says: 'The battery is {battery.stateOfCharge} full.' },
    ],
  },
  wire: {
    label: 'Which wire and which fuse?',
    results: ['wire.drop', 'wire.longest', 'wire.ampacity', 'limit.wire', 'limit.fuse'],
    impliedBy: ['wire.gauge', 'wire.length', 'wire.fuse', 'wire.current'],
    says: [
      {
        when: 'wire.isTold',
        says: 'The wire carries {wire.ampacity}, and no fuse on it may be larger than that. On the way {wire.drop} are lost.',
      },
      { says: 'The wire carries {wire.ampacity}, and no fuse on it may be larger than that.' },
    ],
  },
  charger: {
    label: 'Is the charger right, and how long does it take?',
    yesOrNo: true,
    results: [
      'recharge.hours',
      'limit.recharge',
      'limit.charge-current',
      'limit.charge-voltage',
      'finding.charger-too-low',
    ],
    impliedBy: ['charger.current', 'charger.volts', 'charger.hours'],
    says: 'To full it takes {recharge.hours}.',
  },
  'how-long': {
    label: 'How long does it run that?',
    results: ['steady.hoursToStop', 'steady.hoursToEmpty', 'limit.steady-run'],
    impliedBy: ['steady.power', 'steady.hours'],
    says: [
      { says: 'The battery runs that for {steady.hoursToStop}, down to what must stay in it.' },
      { says: blower },
    ],
  },
  stored: {
    label: 'How long may it stand?',
    results: ['storage.lasts', 'limit.storage'],
    impliedBy: ['storage.draw', 'storage.days'],
    says: 'Standing, the battery is down to what must stay in it after {storage.lasts}.',
  },
  day: {
    label: 'Does it carry a day, and is the sun enough?',
    yesOrNo: true,
    results: ['battery.days', 'day.deepest', 'day.ampHours', 'day.offered', 'limit.day'],
    impliedBy: ['loads.dc', 'loads.ac', 'solar.power'],
    says: [
      {
        when: 'day.isSunny',
        says: 'A day takes {day.ampHours}, and sun and chargers give {day.offered} back. So the battery lasts {battery.days}, down to what must stay in it.',
      },
      {
        when: 'day.isSunny',
        says: 'A day takes {day.ampHours}, and sun and chargers offer {day.offered}. At the lowest {day.deepest} are out of the battery, and {battery.usable} may be.',
      },
      {
        says: 'A day takes {day.ampHours}, so the battery lasts {battery.days}, down to what must stay in it.',
      },
      {
        says: 'A day takes {day.ampHours}; at the lowest {day.deepest} are out of the battery, and {battery.usable} may be.',
      },
      { says: 'A day takes {day.ampHours} from the battery.' },
    ],
  },
  furnace: {
    label: 'How long does it run the furnace?',
    results: ['furnace.blowerHours', 'furnace.clockHours', 'limit.day'],
    impliedBy: ['furnace.blowerCurrent'],
    says: [{ when: 'assumed.furnaceShare', says: burning }, { says: blower }],
  },
  inverter: {
    label: 'Is the inverter right for this battery?',
    yesOrNo: true,
    results: [
      'inverter.current',
      'limit.discharge-current',
      'limit.inverter',
      'limit.inverter-start',
    ],
    impliedBy: ['inverter.power', 'inverter.starting', 'battery.mostCurrent'],
    says: 'At its full rating the inverter draws {inverter.current} from the battery.',
  },
  setting: {
    label: 'How is the charger set, and is it equalized?',
    results: ['finding.charger-setting', 'finding.equalize', 'finding.alternator'],
    impliedBy: ['charger.setFor', 'charge.equalize', 'charge.fromVehicle'],
  },
  bank: {
    label: 'How much is in these batteries together?',
    results: ['bank.capacity', 'battery.usable', 'bank.volts', 'finding.bank-voltage'],
    impliedBy: ['bank.series', 'bank.parallel', 'battery.capacity', 'battery.energy'],
    says: [
      { says: 'Together {bank.capacity} at {bank.volts}, of which {battery.usable} may be taken.' },
      {
        when: 'assumed.single',
        says: 'One such battery holds {battery.capacity}. Side by side batteries add up; one behind the other they add volts instead.',
      },
    ],
  },
  cold: {
    label: 'Does the cold harm it?',
    results: ['finding.cold-charge', 'finding.freeze', 'finding.too-cold'],
    impliedBy: ['battery.temperature'],
  },
};

/** What people call things. */
export const called: Called = {
  topic: [
    'house battery',
    'leisure battery',
    'deep cycle',
    'amp hours',
    'battery dead',
    'how full is my battery',
    'battery gauge',
    'panel lights',
    'converter',
    'inverter',
    'solar',
    'boondock battery',
    'lithium',
    'golf cart batteries',
    '12 volt',
    'runs all night',
    'panel shows percent',
    'shows percent only',
    'only shows percent',
    'percent on the panel',
    'battery with the furnace',
    'furnace fan',
    'breathing machine',
  ],
  facts: {
    'battery.chemistry': ['what kind of battery', 'type of battery'],
    'battery.capacity': ['amp hours', 'Ah', 'group 24', 'group 27', 'group 31'],
    'battery.energy': ['watt-hours', 'Wh', 'kilowatt-hours'],
    'battery.voltage': ['meter says', 'reads twelve point', 'volts on the panel', 'voltmeter'],
    'battery.reading': ['plugged in when I read it', 'lights on', 'engine running'],
    'battery.rested': ['sat overnight', 'left alone', 'hours off the charger'],
    'battery.chargedBefore': ['fully charged before', 'charger said full'],
    'battery.temperature': ['cold battery', 'frozen battery'],
    'battery.mostCurrent': ['BMS limit', 'continuous discharge', 'how many amps can it give'],
    'battery.mostChargeCurrent': ['charge limit', 'max charge current'],
    'monitor.stateOfCharge': ['percent', 'shunt', 'battery monitor', 'app says'],
    'bank.series': ['in series', 'one behind the other'],
    'bank.parallel': ['in parallel', 'side by side', 'two batteries'],
    'furnace.blowerCurrent': ['furnace fan', 'blower amps', 'furnace draws'],
    'steady.power': ['watts', 'CPAP', 'coffee maker', 'microwave', 'heater'],
    'steady.hours': ['all night', 'eight hours', 'how long'],
    'steady.onInverter': ['plugs into the wall', 'on the inverter', 'household plug'],
    'inverter.power': ['inverter size', 'watt inverter'],
    'inverter.surge': ['surge', 'peak watts'],
    'inverter.starting': ['starting watts', 'startup', 'compressor kicks in'],
    'solar.power': ['panels', 'solar watts'],
    'solar.peakSunHours': ['sun hours', 'in the shade'],
    'charger.current': ['converter amps', 'charger amps'],
    'charger.volts': ['charging at fourteen', 'absorption voltage', 'float voltage'],
    'charger.hours': ['generator hours', 'run the generator'],
    'charger.setFor': ['lithium setting', 'AGM setting', 'charger profile'],
    'charge.equalize': ['equalize', 'desulfate', 'recondition'],
    'charge.fromVehicle': [
      'charge wire',
      'seven-pin charge',
      'alternator',
      'charges from the truck',
    ],
    'fuse.kind': ['class T', 'ANL', 'main fuse'],
    'storage.draw': ['parasitic draw', 'phantom load', 'drains while parked'],
    'storage.days': ['winter storage', 'sits for months', 'weeks between trips'],
    'wire.gauge': ['gauge', 'AWG', 'wire size', 'cable size'],
    'wire.fuse': ['fuse size', 'breaker for it'],
    'wire.length': ['run of wire', 'feet of wire'],
  },
  options: {
    'battery.chemistry': {
      flooded: ['lead acid', 'wet cell', 'with caps', 'flooded', 'golf cart'],
      agm: ['AGM', 'absorbed glass mat', 'sealed lead'],
      gel: ['gel', 'gel cell'],
      lifepo4: ['lithium', 'LiFePO4', 'LFP', 'lithium iron'],
    },
    'battery.reading': {
      'at-rest': ['nothing on', 'switched off', 'overnight'],
      charging: ['plugged in', 'on the charger', 'sun on the panels'],
      'under-load': ['with the lights on', 'furnace running', 'fridge running'],
    },
    'charge.fromVehicle': {
      'dc-dc': ['DC-DC', 'DC to DC', 'battery-to-battery charger'],
      direct: ['straight', 'through the plug', 'charge line'],
      not: ['not at all', 'no charge wire'],
    },
    'fuse.kind': {
      'class-t': ['class T'],
      other: ['blade', 'ANL', 'MRBF', 'breaker'],
    },
  },
};
