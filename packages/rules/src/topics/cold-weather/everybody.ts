import type { ForEverybody } from '../../engine/define/shapes';

const freeze: ForEverybody = {
  rule: 'Drain or winterize tanks and lines before a frost. Leave water in only where a duct of the running furnace heats both.',
  because:
    'A warm trailer keeps people warm; what hangs below the floor stays as cold as the night.',
  look: ['water.state', 'trailer.use', 'tanks.place'],
  given: { 'outside.temperature': '25 °F', 'frost.hours': '10 h' },
  givenSays: 'for ten hours at {25 °F}, where not told',
  clauses: {
    'water.state': {
      'in-use': 'there is water in it',
      drained: 'it was only drained',
      winterized: 'it is winterized',
    },
    'trailer.use': {
      'lived-in': 'somebody lives in it with the furnace on',
      'stands-unused': 'it is not heated',
    },
    'tanks.place': {
      heated: 'a furnace duct goes to the tanks',
      enclosed: 'the belly is closed without a duct',
      exposed: 'the tanks hang in the open',
    },
  },
  otherwise: 'If you cannot look, have the trailer drained today; that is never wrong.',
};

/** What is said to all who ask of the cold and told next to nothing. */
export const everybody: Readonly<Record<string, ForEverybody>> = {
  stored: {
    rule: 'Keep a lead battery charged in the cold, for an empty one freezes. Never charge a lithium one while it is frozen.',
    because: 'Ice breaks the plates, and the battery with them.',
    look: [],
    otherwise: 'If you do not know, take the battery out, to a place without frost.',
  },
  warm: {
    rule: 'What the furnace gives must be more than what goes out through walls, floor and windows in the coldest hour.',
    because: 'Wind and thin panes take most of it.',
    look: [],
    otherwise: 'If you do not know, try one cold night near home.',
  },
  freeze,
  winterizing: {
    rule: 'Drain and bypass the water heater, its element off. Blow the lines out under {blowout.most}, or fill them with propylene glycol antifreeze for drinking water. Pour some into every trap.',
    because:
      'Draining leaves water in pump, valves and low bends, and an element that comes on dry burns out at once.',
    look: ['antifreeze.kind', 'heater.isolated'],
    given: {
      'outside.temperature': '10 °F',
      'water.state': 'winterized',
      'trailer.use': 'stands-unused',
      'battery.temperature': '55 °F',
    },
    givenSays: 'with the battery out in a frost-free place',
    clauses: {
      'antifreeze.kind': {
        none: 'only air went through the lines',
        'propylene-glycol': 'the jug says propylene glycol for drinking water',
        other: 'it was antifreeze for engines',
      },
      'heater.isolated': {
        yes: 'the water heater is drained, bypassed and off',
        no: 'the water heater is not',
      },
    },
    otherwise:
      'If you are not sure, have a shop winterize the trailer; a burst line under the floor costs more.',
  },
  gas: {
    rule: 'In the cold the gas goes by how much of the time the furnace burns. With water in the tanks it burns day and night.',
    because:
      'A small cylinder that is cold or nearly empty also boils off too little, however much is left in it.',
    look: ['cylinder.fill', 'trip.nights'],
    given: {
      'outside.temperature': '20 °F',
      'furnace.input': '30,000 Btu/h',
      'furnace.hours': '12 h',
      'furnace.duty': '60 %',
      'cylinder.filled': 'yes',
      'water.state': 'drained',
      'heat.portable': 'no',
      'power.hookup': 'yes',
    },
    givenSays:
      'for a common furnace in a hard frost, where not told, tanks drained, on shore power',
    worked: {
      says: 'A furnace of {furnace.input} that runs {furnace.runs} of {furnace.on} takes {furnace.gasNight} of propane.',
      given: {
        'furnace.input': '30,000 Btu/h',
        'furnace.hours': '12 h',
        'furnace.duty': '60 %',
      },
    },
    otherwise:
      'If you cannot weigh the cylinder, bring a second full one and look at the first every morning. Never turn the heat down to save gas while there is water in it.',
  },
  battery: {
    rule: 'The furnace needs its blower, and the blower runs on the battery: in the cold the battery often gives out before the gas.',
    because: 'Only part of a battery may be taken, and the cold takes some of that.',
    look: ['power.hookup', 'battery.recharged'],
    given: {
      'battery.chemistry': 'flooded',
      'battery.capacity': '100 Ah',
      'battery.temperature': '32 °F',
      'furnace.blowerCurrent': '7 A',
      'furnace.hours': '12 h',
      'furnace.duty': '40 %',
      'trip.nights': '2',
      'heat.portable': 'no',
    },
    givenSays: 'for one common lead battery and two nights, where not told',
    clauses: {
      'power.hookup': { yes: 'you stand on shore power', no: 'you stand without hookups' },
      'battery.recharged': {
        yes: 'the battery is charged full every day',
        no: 'nothing charges it in between',
      },
    },
    worked: {
      says: 'A blower of {furnace.blowerCurrent} takes {blower.ampHours} a night, of {battery.usable} that may be taken.',
      given: {
        'battery.chemistry': 'flooded',
        'battery.capacity': '100 Ah',
        'battery.temperature': '32 °F',
        'furnace.blowerCurrent': '7 A',
        'furnace.hours': '12 h',
        'furnace.duty': '40 %',
      },
    },
    otherwise:
      'If you do not know, take a site with shore power, or a generator that charges for some hours a day, outdoors.',
  },
  windows: {
    rule: 'Windows run with water when the panes are colder than the air inside can bear; it is no leak.',
    because:
      'People, pots and wet clothes give off water all night, and cold glass is where it lands.',
    look: ['windows.glazing'],
    worked: {
      says: 'At {inside.humidity} and {inside.temperature} the air gives off its water at {dew.point}.',
      given: {
        'inside.temperature': '65 °F',
        'inside.humidity': '60 %',
        'outside.temperature': '25 °F',
      },
    },
    otherwise:
      'Open a roof vent a hand wide, even in the cold, put lids on pots, and hang wet clothes elsewhere. Keep it warm; a colder room runs more.',
  },
};
