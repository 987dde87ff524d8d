import { part } from '../../engine/define/topic';
import { custom, house } from '../../trade/bibliography/common';
import {
  coldHabits,
  display,
  dragHabits,
  energyBalance,
  gallonEquivalent,
  makersManual,
  mechanics,
} from '../../trade/bibliography/electric-tow-range';

const from = '2020-01-01';

/**
 * What the route takes, how far a full battery goes on such roads, and whether it is enough.
 *
 *     ├────────── energy.deepest ──────────┤
 *     ├─────────────── energy.planned ──────────┼─ reserve ─┤   a full battery
 *
 * With an engine: a full battery and the fuel, less the reserve of fuel.
 */
export const route = part({
  parameters: {
    'range.reserve': {
      label: 'Reserve that is never planned on',
      noun: 'the reserve',
      unit: '%',
      values: [{ from, value: 15 }],
      range: [5, 40],
      source: house,
    },
    'margin.range': {
      label: 'Margin kept above the reserve',
      unit: '%',
      values: [{ from, value: 10 }],
      range: [0, 30],
      source: house,
    },
    'cold.line': {
      label: 'Cold enough to be worth a word',
      unit: '°F',
      values: [{ from, value: 32 }],
      range: [20, 50],
      source: house,
    },
    'spilled.little': {
      label: 'Energy without room that is not worth a word',
      noun: 'a little',
      unit: 'kWh',
      values: [{ from, value: 0.5 }],
      range: [0, 5],
      source: house,
    },
    'energy.none': {
      label: 'No energy',
      noun: 'nothing',
      unit: 'kWh',
      values: [{ from, value: 0 }],
      source: energyBalance,
    },
  },
  formulas: {
    'route.distance': {
      label: 'Length of the route',
      noun: 'the route',
      unit: 'mi',
      is: 'sum(route.legs.distance)',
      source: mechanics,
    },
    'route.time': {
      label: 'Time at the wheel',
      unit: 'h',
      is: 'totalOver(legs, legs.time)',
      source: mechanics,
    },
    'route.speed': {
      label: 'Speed on average',
      noun: 'the speed on average',
      unit: 'mph',
      is: 'route.distance / route.time',
      source: mechanics,
    },
    'route.energy': {
      label: 'Energy the route takes, what returns counted',
      noun: 'the energy for the route',
      unit: 'kWh',
      is: 'totalOver(legs, legs.net)',
      source: energyBalance,
    },
    'route.consumption': {
      label: 'Consumption on this route',
      noun: 'the consumption',
      unit: 'kWh/mi',
      is: 'route.energy / route.distance',
      source: energyBalance,
    },
    'route.perGallon': {
      label: 'Miles to the energy of a gallon of gasoline',
      unit: 'mpg',
      is: 'choose(!drive.hasEngine && route.energy > 0, gallon.energy / route.consumption, unlimited)',
      source: gallonEquivalent,
    },
    'route.lowest': {
      label: 'Least left on arrival that can be used (below zero: short)',
      noun: 'the least left on arrival',
      unit: 'kWh',
      is: 'leastOver(legs, legs.left)',
      source: energyBalance,
    },
    'route.coldest': {
      label: 'Coldest leg',
      unit: '°F',
      is: 'leastOver(legs, legs.warmth)',
      source: custom,
    },
    'route.spilled': {
      label: 'Energy that finds no room in a full battery',
      unit: 'kWh',
      is: 'totalOver(legs, legs.spilled)',
      source: energyBalance,
    },
    'engine.energy': {
      label: 'Energy that the engine gives',
      noun: 'what the engine gives',
      unit: 'kWh',
      is: 'totalOver(legs, legs.engine)',
      source: energyBalance,
    },
    'fuel.used': {
      label: 'Fuel used',
      unit: 'gal',
      is: 'needs(engine.energy / (gallon.energy * engine.share), trip.fuel)',
      source: gallonEquivalent,
    },
    'reach.distance': {
      label: 'Way on the battery until its reserve is touched',
      unit: 'mi',
      is: 'lastOf(legs, legs.reached)',
      source: energyBalance,
    },
    'range.towing': {
      label: 'Range of a full battery on such roads, reserve kept',
      unit: 'mi',
      is: 'choose(route.energy > 0, battery.full * (1 - range.reserve) / route.consumption, unlimited)',
      source: energyBalance,
    },
    'range.solo': {
      label: 'Range of a full battery without a trailer, reserve kept',
      unit: 'mi',
      is: 'needs(battery.full * (1 - range.reserve) / solo.consumption, solo.consumption)',
      source: display,
    },
    'energy.deepest': {
      label: 'Taken from a full battery and the fuel, at the most',
      noun: 'what is taken at the most',
      unit: 'kWh',
      is: 'battery.full - route.lowest + engine.energy',
      source: energyBalance,
    },
    'energy.planned': {
      label: 'What may be planned on',
      noun: 'what may be planned on',
      unit: 'kWh',
      is: 'choose(drive.hasEngine, battery.full + fuel.energy * (1 - range.reserve), battery.full * (1 - range.reserve))',
      source: house,
    },
  },
  limits: {
    energy: {
      label: 'Energy for the route',
      short: 'the energy for the route',
      used: 'energy.deepest',
      limit: 'energy.planned',
      margin: 'margin.range',
      source: energyBalance,
    },
  },
  findings: {
    estimate: {
      label: 'Drag is an estimate',
      care: {
        when: {
          all: [
            { fact: 'rig.isEstimated', operator: 'equal', value: 'yes' },
            {
              fact: 'energy.deepest',
              operator: 'greaterThan',
              value: { fact: 'energy.planned' },
            },
          ],
        },
        wrong: 'The drag is an estimate by body and front.',
        do: 'Drive some twenty miles with the trailer on, there and back at the speed of the trip, and put in what the display says: then it can be said much better.',
      },
      open: {
        wrong: 'The drag is an estimate by body and front, and by that it may get there or not.',
        do: 'Drive some twenty miles with the trailer on, there and back at the speed of the trip, and put in what the display says.',
      },
      otherwise: 'The drag is known from a drive or told, or it is enough by any usual drag.',
      source: dragHabits,
    },
    cold: {
      label: 'Cold',
      askedBy: ['route.legs'],
      care: {
        when: {
          all: [{ fact: 'route.coldest', operator: 'lessThan', value: { fact: 'cold.line' } }],
        },
        wrong:
          'Below freezing the battery gives less, charges slowly and the heater takes its part.',
        do: 'Warm battery and cabin at the plug before you leave, and plan the first stop early.',
      },
      open: {
        wrong: 'It may freeze on the way.',
        do: 'Look at the forecast before planning the stops.',
      },
      otherwise: 'No leg is below freezing.',
      source: coldHabits,
    },
    'full-battery': {
      label: 'Downhill on a full battery',
      askedBy: ['route.legs'],
      care: {
        when: {
          all: [
            { fact: 'route.spilled', operator: 'greaterThan', value: { fact: 'spilled.little' } },
          ],
        },
        wrong: 'The battery is full on a way down, and a full battery holds nothing back.',
        do: 'The brakes take it all. Leave the top uncharged by so much before a long descent.',
      },
      open: {
        wrong: 'The battery may be full on a way down, and a full battery holds nothing back.',
        do: 'Leave some room at the top.',
      },
      otherwise: 'The battery has room for what comes back downhill.',
      source: makersManual,
    },
    'engine-alone': {
      label: 'Battery spent on the way',
      care: {
        when: {
          all: [{ fact: 'engine.energy', operator: 'greaterThan', value: { fact: 'energy.none' } }],
        },
        wrong: 'The battery is spent on the way, and from there the engine pulls alone.',
        do: 'Ask what the maker rates it for then, and keep some charge for the grades.',
      },
      open: {
        wrong: 'The battery may be spent on the way, and from there the engine pulls alone.',
        do: 'Keep some charge for the grades.',
      },
      otherwise: 'The battery is not spent on the way, or there is no engine.',
      source: makersManual,
    },
  },
});
