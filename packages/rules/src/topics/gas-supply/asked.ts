import type { Asking, Called } from '../../engine/define/shapes';
import { withFurnace } from '../../trade/battery/blower';

/** What people ask of the gas; the first that is told of is answered first. */
export const askings: Readonly<Record<string, Asking>> = {
  smell: {
    label: 'It smells of gas, or an alarm sounds',
    results: ['finding.smell', 'finding.alarm'],
    impliedBy: ['gas.smell', 'alarm.heard'],
    says: [
      {
        when: 'smell.isUntold',
        says: 'If it smells of gas: everybody out into fresh air, touch no switch, no flame, and call from well away.',
      },
    ],
  },
  connect: {
    label: 'May this appliance be connected here?',
    usual: true,
    results: ['gas.connection', 'finding.connection'],
    impliedBy: ['appliance.inlet', 'appliance.ownRegulator', 'supply.point', 'supply.adapter'],
  },
  'how-long': {
    label: 'How long does the gas last?',
    results: ['gas.days', 'gas.hours', 'limit.gas'],
    impliedBy: ['trip.nights', 'furnace.input', 'gas.appliances'],
    says: [
      {
        when: 'gas.isGone',
        says: 'Of gas {gas.aboard} are left: have a cylinder filled before anything burns.',
      },
      ...withFurnace('the gas lasts {gas.days}.'),
      {
        when: 'assumed.allDay',
        says: 'With what has no hours told burning all day, the gas lasts {gas.days}.',
      },
      { says: 'The gas lasts {gas.days}.' },
    ],
  },
  starves: {
    label: 'Does the cylinder keep up in the cold?',
    yesOrNo: true,
    results: ['finding.vaporization', 'vapor.rule'],
    says: [
      {
        when: 'cold.isCompared',
        says: 'By a rule of thumb one such cylinder gives {vapor.rule} in that cold; {demand.lasting} is drawn.',
      },
      {
        when: 'cold.gives',
        says: 'By a rule of thumb one such cylinder gives {vapor.rule} in that cold. All that burns for long at one time must take less.',
      },
    ],
    impliedBy: ['outside.temperature'],
  },
  left: {
    label: 'How much gas is left?',
    results: ['gas.left', 'finding.gas-left'],
    impliedBy: ['cylinder.scaleWeight', 'cylinder.tare', 'tank.gauge', 'cylinder.fill'],
    says: [
      {
        when: 'assumed.cylinderFull',
        says: 'Full there are {gas.aboard} of propane aboard; how much is left only a scale tells.',
      },
      { when: 'gas.isAboard', says: 'There are {gas.aboard} of propane aboard.' },
      {
        when: 'gas.isOpen',
        says: 'How much is left a scale tells: what the cylinder weighs, less the tare stamped on its collar after TW.',
      },
      { says: 'There are {gas.aboard} of propane aboard.' },
    ],
  },
  pipe: {
    label: 'Do pipe, hose and regulator carry it?',
    results: ['limit.pipe', 'limit.hose', 'limit.regulator', 'demand.atOnce'],
    impliedBy: ['pipe.size', 'regulator.capacity', 'hose.capacity'],
    says: 'Everything at once asks for {demand.atOnce}.',
  },
  dates: {
    label: 'Are cylinder, hose and alarms within their dates?',
    results: ['finding.cylinder-date', 'finding.hose', 'finding.regulator-age', 'finding.alarms'],
    impliedBy: [
      'cylinder.stampYear',
      'hose.age',
      'alarm.gasAge',
      'alarm.monoxideAge',
      'alarm.gasReplaceBy',
      'alarm.monoxideReplaceBy',
      'regulator.age',
      'cylinder.age',
    ],
  },
};

/** What people call things. */
export const called: Called = {
  topic: [
    'regulator',
    'starve the furnace',

    'propane',
    'LP gas',
    'LPG',
    'gas bottle',
    'tank of gas',
    'quick connect',
    'quick disconnect',
    'fire table',
    'fire pit',
    'griddle',
    'grill',
    'barbecue',
    'low pressure',
    'high pressure',
    'runs out of gas',
    'furnace keeps going out',
    'freezing regulator',
  ],
  facts: {
    'appliance.inlet': [
      'plate pressure',
      'inlet pressure',
      'water column',
      'WC inches',
      'psi rating',
    ],
    'appliance.ownRegulator': ['regulator on the hose', 'knob that screws on', 'hose regulator'],
    'supply.point': ['outlet by the hitch', 'gas outlet on the side', 'port on the frame', 'tee'],
    'supply.adapter': ['adapter', 'converter fitting', 'bypass hose', 'brass fitting off the web'],
    'appliance.usedAt': ['in the tent', 'under the awning', 'inside', 'on the patio'],
    'gas.smell': ['rotten eggs', 'smells of gas', 'propane alarm', 'hissing'],
    'alarm.gasReplaceBy': ['replace by on the gas alarm', 'gas alarm expired'],
    'alarm.monoxideReplaceBy': ['replace by on the CO alarm', 'CO alarm expired'],
    'alarm.heard': ['alarm beeps', 'alarm chirps', 'detector chirps', 'alarm goes off'],
    'cylinder.fill': [
      'twenty pounder',
      'thirty pounder',
      '20 lb tank',
      '30 lb tank',
      'bottle size',
    ],
    'cylinder.waterCapacity': ['WC on the collar'],
    'cylinder.tare': ['TW on the collar', 'empty weight'],
    'cylinder.scaleWeight': ['bathroom scale', 'weighed the bottle'],
    'cylinder.spare': ['second tank', 'dual tanks', 'two bottles'],
    'cylinder.age': ['date stamp', 'recertify', 'expired tank'],
    'furnace.input': ['furnace BTU', 'heater BTU'],
    'trip.nights': ['how many nights'],
    'outside.temperature': ['cold snap', 'overnight low', 'below zero'],
    'hose.sound': ['cracked hose', 'soap test', 'leak test'],
    'regulator.capacity': ['regulator', 'regulator is stamped', 'regulator BTU rating'],
    'pipe.size': ['gas line size', 'black pipe'],
    'tank.gauge': ['gauge on the tank', 'percent full'],
  },
  options: {
    'alarm.heard': {
      chirps: ['beeps now and then', 'chirps every minute', 'one beep'],
      sounds: ['going off', 'beeps nonstop', 'will not stop'],
    },
    'appliance.inlet': {
      '11-inwc': ['11 inches', 'low pressure', 'half a pound'],
      'cylinder-pressure': ['high pressure', 'tank pressure', '10 to 20 psi'],
      'other-gas': ['natural gas', 'made for the house', '7 inches'],
      unreadable: ['plate gone', 'no label', 'worn off'],
    },
    'supply.point': {
      'after-regulator': ['quick connect', 'low pressure port'],
      'trailer-cylinder': ['trailer tank', 'tee off the tank'],
      'separate-cylinder': ['own bottle', 'separate tank'],
    },
  },
};
