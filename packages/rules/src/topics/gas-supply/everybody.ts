import type { ForEverybody } from '../../engine/define/shapes';

/** What is said to all who ask of the gas and told next to nothing. */
export const everybody: Readonly<Record<string, ForEverybody>> = {
  pipe: {
    rule: 'Pipe, hose and regulator must each carry all that burns at the same time, over their whole length.',
    because: 'Where one of them is too small, the last flame starves and may go out.',
    look: [],
    otherwise:
      'If you do not know, have a licensed person measure the pressure with everything lit.',
  },
  dates: {
    rule: 'Cylinder, hose and alarms each carry a date: past it the cylinder is tested anew, and hose or alarm is replaced.',
    because: 'A hose cracks with the years, and an alarm past its years stays silent.',
    look: [],
    otherwise:
      'If you cannot read a date, show the cylinder where it is filled, and replace hose or alarm.',
  },
  smell: {
    rule: 'At the smell of gas, or when an alarm sounds: everybody out, no switch, no flame. Shut the cylinder if it is on the way, and call from well away.',
    because: 'Propane lies on the floor like water, and a lamp’s switch is spark enough.',
    look: ['gas.smell'],
    clauses: {
      'gas.smell': {
        yes: 'it smells or an alarm sounds',
        no: 'nothing smells and no alarm sounds',
      },
    },
    otherwise: 'If you are not sure whether you smelled gas, act as if you had.',
  },
  connect: {
    rule: 'A hose that does not fit is a warning: never adapt it. The appliance’s plate decides. 11 inches of water column goes on the trailer’s outlet; cylinder pressure goes on a cylinder, with a regulator of its own.',
    because:
      'The outlet gives less than half a pound of pressure, a cylinder a hundred and more on a warm day.',
    look: ['appliance.inlet', 'appliance.ownRegulator', 'supply.point'],
    given: { 'supply.adapter': 'no', 'appliance.usedAt': 'open-air', 'hose.sound': 'yes' },
    givenSays: 'in the open air, with a sound hose and without any adapter',
    clauses: {
      'appliance.inlet': {
        '11-inwc': 'its plate says 11 inches',
        'cylinder-pressure': 'its plate asks for cylinder pressure',
        'other-gas': 'its plate asks for natural gas or another pressure',
        unreadable: 'the plate cannot be read',
      },
      'appliance.ownRegulator': {
        none: 'it has no regulator',
        trim: 'it has a small regulator inside',
        'high-pressure': 'it has one that screws onto a cylinder',
      },
      'supply.point': {
        'after-regulator': 'it goes on the trailer’s outlet',
        'trailer-cylinder': 'it goes on the trailer’s cylinder',
        'separate-cylinder': 'it goes on a cylinder of its own',
      },
    },
    otherwise:
      'If you are not sure, burn the appliance on a cylinder of its own. Use the regulator and hose it was sold with.',
  },
  'how-long': {
    rule: 'A twenty-pound cylinder holds twenty pounds of propane; divide its heat by what burns, times the hours it burns.',
    because: 'A furnace takes by far the most, and the colder it is the longer it burns.',
    look: ['cylinder.fill'],
    given: {
      'cylinder.filled': 'yes',
      'furnace.input': '25,000 Btu/h',
      'furnace.hours': '12 h',
      'furnace.duty': '50 %',
      'trip.nights': '3',
      'alarm.gasAge': '2 yr',
      'alarm.monoxideAge': '2 yr',
    },
    givenSays:
      'for a common furnace, half of the time on, three nights and good alarms, where not told',
    clauses: { 'cylinder.fill': 'the full cylinder takes {value}' },
    worked: {
      says: 'A furnace of {furnace.input} that runs {furnace.runs} of {furnace.on} takes {furnace.gasNight} a night.',
      given: {
        'furnace.input': '25,000 Btu/h',
        'furnace.hours': '12 h',
        'furnace.duty': '50 %',
      },
    },
    otherwise:
      'If you cannot weigh the cylinder, bring a second full one, and change over when the first is empty. Never turn the heat down to save gas.',
  },
  starves: {
    rule: 'A cylinder gives gas as fast as it boils, and it boils slower the smaller, the colder and the emptier it is.',
    because: 'The warmth to boil comes through the wall that the liquid wets.',
    look: ['outside.temperature'],
    given: {
      'cylinder.fill': '20 lb',
      'cylinder.filled': 'yes',
      'furnace.input': '25,000 Btu/h',
      'furnace.duty': '60 %',
      'furnace.hours': '12 h',
      'alarm.gasAge': '2 yr',
      'alarm.monoxideAge': '2 yr',
    },
    givenSays: 'for one full cylinder of twenty pounds and a common furnace, where not told',
    clauses: { 'outside.temperature': 'it is {value} outside' },
    otherwise:
      'If you are not sure, keep the cylinder full and have a second one open on a two-cylinder manifold. Never warm a cylinder with a flame, a heater or hot water.',
  },
  left: {
    rule: 'Weigh the cylinder and take off the tare stamped on its collar after TW: what remains is propane.',
    because: 'A gauge on the valve shows pressure, and that stays the same until the last drop.',
    look: ['cylinder.scaleWeight'],
    given: { 'cylinder.fill': '20 lb', 'cylinder.tare': '17 lb' },
    givenSays: 'for a cylinder of twenty pounds that weighs seventeen empty, where not told',
    clauses: { 'cylinder.scaleWeight': 'the scale shows {value}' },
    otherwise: 'If you have no scale, have the cylinder filled before the trip.',
  },
};
