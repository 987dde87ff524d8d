import type { Asking, Called } from '../../engine/define/shapes';
import { withFurnace } from '../../trade/battery/blower';

/** What people ask of the cold; the first that is told of is answered first. */
export const askings: Readonly<Record<string, Asking>> = {
  freeze: {
    label: 'Does it freeze, and what is to be done?',
    results: ['water.action', 'finding.heat-low', 'finding.water'],
    says: [
      {
        when: 'heat.isEnough',
        says: 'That is warm enough for heated tanks. Stay with the furnace on day and night, as long as it holds that.',
      },
    ],
    impliedBy: ['water.state', 'tanks.place', 'trailer.use', 'frost.hours'],
  },
  winterizing: {
    label: 'Is it winterized as it should be?',
    results: ['finding.antifreeze', 'finding.water-heater', 'limit.blow-out', 'water.action'],
    impliedBy: ['heater.isolated', 'antifreeze.kind', 'blowout.pressure'],
  },
  stored: {
    label: 'Does its battery freeze where it stands?',
    results: ['finding.battery-frost', 'stored.freezesAt'],
    impliedBy: ['monitor.stateOfCharge', 'battery.voltage'],
    says: 'A lead battery at that charge freezes at {stored.freezesAt}.',
  },
  gas: {
    label: 'How long does the gas last in the cold?',
    results: ['gas.days', 'furnace.gasNight', 'limit.gas', 'finding.vaporization'],
    impliedBy: ['trip.nights', 'cylinder.fill', 'cylinder.scaleWeight', 'cylinder.spare'],
    says: [
      ...withFurnace('the gas lasts {gas.days}. A day and night takes {furnace.gasNight}.'),
      {
        says: 'The gas lasts {gas.days}; a day and night takes {furnace.gasNight} for the furnace.',
      },
    ],
  },
  battery: {
    label: 'Does the battery turn the furnace’s blower through the night?',
    yesOrNo: true,
    results: ['battery.nights', 'blower.ampHours', 'limit.blower-night', 'finding.recharged'],
    impliedBy: ['furnace.blowerCurrent', 'battery.recharged', 'battery.capacity'],
    says: [
      ...withFurnace(
        'the battery turns the blower for {battery.nights}. A day and night takes {blower.ampHours}.',
      ),
      ...withFurnace(
        'the blower takes {blower.ampHours} a day and night. Of what a lead battery holds, {depth.lead} may be taken.',
      ),
      {
        says: 'The battery turns the blower for {battery.nights}; a day and night takes {blower.ampHours}.',
      },
    ],
  },
  windows: {
    label: 'Why do the windows run with water?',
    results: ['finding.condensation', 'dew.point', 'window.surface'],
    impliedBy: ['inside.humidity'],
    says: [
      {
        says: 'The air inside gives off its water at {dew.point}, and the panes are at {window.surface}.',
      },
      { says: 'The air inside gives off its water on all that is colder than {dew.point}.' },
    ],
  },
  warm: {
    label: 'Does the furnace keep it warm?',
    results: ['limit.furnace', 'heat.gas', 'heat.loss', 'furnace.runs'],
    impliedBy: ['body.length', 'body.insulation', 'furnace.ratedOutput', 'night.gas'],
    says: 'To stay warm the trailer takes {heat.gas} of gas. The furnace runs {furnace.runs} of the time.',
  },
};

/** What people call things. */
export const called: Called = {
  topic: [
    'winter camping',
    'cold snap',
    'freeze',
    'frozen pipes',
    'pipes burst',
    'winterize',
    'winterizing',
    'winterization',
    'de-winterize',
    'antifreeze',
    'pink stuff',
    'blow out the lines',
    'four season',
    'below freezing',
    'furnace keeps running',
    'condensation',
    'wet windows',
    'mold',
    'storage',
    'heated tanks',
    'tank heaters',
    'heat pads',
    'skirting',
  ],
  facts: {
    'outside.temperature': [
      'tonight',
      'in night',
      'in the night',
      'forecast says',
      'outside',
      'freezing at',
      'tonight’s low',
      'lows in the',
      'overnight low',
      'below zero',
      'degrees',
    ],
    'frost.hours': [
      'all night',
      'for an hour',
      'just before sunrise',
      'all day long',
      'cold spell',
    ],
    'inside.temperature': ['thermostat', 'set at', 'keep it at'],
    'inside.humidity': ['humidity', 'hygrometer', 'damp', 'dripping windows', 'moisture'],
    'water.state': ['water in the lines', 'tanks full', 'system drained'],
    'trailer.use': ['living in it', 'in the driveway', 'in the yard', 'stored for the winter'],
    'tanks.place': ['underbelly', 'belly', 'where the tanks hang'],
    'furnace.exhaustClear': ['snow on the vent', 'snow drift', 'furnace vent', 'exhaust blocked'],
    'heat.portable': [
      'camping heater',
      'space heater with propane',
      'stove for heat',
      'oven for heat',
    ],
    'heater.isolated': ['water heater bypass', 'drain plug', 'anode rod', 'heating element'],
    'antifreeze.kind': ['pink antifreeze', 'RV antifreeze', 'green antifreeze', 'the jug'],
    'blowout.pressure': ['compressor', 'pounds of air', 'air pressure'],
    'body.length': ['box length', 'foot trailer', 'footer'],
    'body.insulation': ['insulation', 'R-value', 'insulated'],
    'windows.glazing': ['dual pane', 'double pane', 'single pane', 'storm windows'],
    'furnace.input': ['furnace BTU', 'heater BTU'],
    'furnace.blowerCurrent': ['furnace fan', 'fan amps'],
    'night.gas': ['burned through', 'pounds a night', 'a tank a night'],
    'power.hookup': ['plugged in', 'hookups', 'electric site', 'pedestal'],
    'battery.recharged': ['solar tops it up', 'generator every day', 'charges while driving'],
    'trip.nights': ['how many nights', 'weekend', 'three-day'],
  },
  options: {
    'water.state': {
      'in-use': ['water on', 'full tanks', 'still has water'],
      drained: ['emptied', 'low-point drains open', 'drained it'],
      winterized: ['winterized', 'blown out', 'antifreeze in it', 'put to bed'],
    },
    'trailer.use': {
      'lived-in': ['camping in it', 'full-time', 'sleeping in it'],
      'stands-unused': ['stored', 'parked', 'sitting', 'in storage'],
    },
    'tanks.place': {
      heated: ['heated underbelly', 'ducted belly', 'furnace duct'],
      enclosed: ['enclosed underbelly', 'closed belly', 'coroplast'],
      exposed: ['hanging below', 'in the open', 'open belly'],
    },
    'body.insulation': {
      thin: ['pop-up', 'canvas', 'ultralight', 'tent sides'],
      usual: ['regular', 'standard'],
      'four-season': ['four season', 'arctic', 'winter package', 'extended season'],
    },
    'antifreeze.kind': {
      none: ['just air', 'blew it out'],
      'propylene-glycol': ['pink', 'RV antifreeze', 'non-toxic'],
      other: ['green', 'car antifreeze', 'ethylene glycol', 'radiator coolant'],
    },
    'windows.glazing': {
      'single-pane': ['single glass', 'one pane'],
      'double-pane': ['dual pane', 'thermal windows'],
    },
  },
};
