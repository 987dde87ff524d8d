import { part } from '../../engine/define/topic';
import { custom, house } from '../../trade/bibliography/common';
import { mechanics, roadLoad } from '../../trade/bibliography/electric-tow-range';

const from = '2020-01-01';
const sine = 'trip.steepestGrade / power(1 + trip.steepestGrade * trip.steepestGrade, 1 / 2)';
const cosine = '1 / power(1 + trip.steepestGrade * trip.steepestGrade, 1 / 2)';

/**
 * Power on the hardest climb, against what the drive can hold; and what the brakes turn to heat on
 * the way down.
 *
 *     F = Crr·m·g·cosθ + ½·ρ·CdA·v² + m·g·sinθ,   P = F·v
 */
export const power = part({
  parameters: {
    'margin.power': {
      label: 'Margin kept below the power it can hold',
      unit: '%',
      values: [{ from, value: 10 }],
      range: [0, 30],
      source: house,
    },
    'brakes.many': {
      label: 'Brake heat that is worth a word',
      noun: 'much brake heat',
      unit: 'kW',
      values: [{ from, value: 15 }],
      range: [5, 60],
      source: house,
    },
    'heater.power': {
      label: 'An electric room heater',
      noun: 'a room heater',
      unit: 'kW',
      values: [{ from, value: 1.5 }],
      source: custom,
    },
  },
  formulas: {
    'grade.force': {
      label: 'Force on the steepest grade',
      noun: 'the force on the grade',
      unit: 'lbf',
      is: `combined.gross * standard.gravity * (rolling.coefficient * ${cosine} + ${sine}) + air.seaLevel * rig.drag * trip.climbSpeed * trip.climbSpeed / 2`,
      source: roadLoad,
    },
    'grade.power': {
      label: 'Power on the steepest grade',
      unit: 'kW',
      is: 'grade.force * trip.climbSpeed',
      source: mechanics,
    },
    'power.most': {
      label: 'Most power at the wheels',
      noun: 'the most power at the wheels',
      unit: 'kW',
      is: 'choose(given(trip.steepestGrade), max(grade.power, mostOver(legs, legs.power)), mostOver(legs, legs.power))',
      source: mechanics,
    },
    'brakes.power': {
      label: 'Most that the brakes turn to heat, on the average of a leg',
      noun: 'the heat in the brakes',
      unit: 'kW',
      is: 'mostOver(legs, legs.brakes)',
      source: mechanics,
    },
    'brakes.heaters': {
      label: 'As many room heaters at full',
      unit: '',
      is: 'whole(brakes.power / heater.power + 1 / 2)',
      source: mechanics,
    },
  },
  limits: {
    power: {
      label: 'Power on the hardest climb',
      short: 'the power on the hardest climb',
      used: 'power.most',
      limit: 'vehicle.sustainedPower',
      margin: 'margin.power',
      askedBy: ['vehicle.sustainedPower'],
      source: mechanics,
    },
  },
  findings: {
    'brake-heat': {
      label: 'Heat in the brakes',
      askedBy: ['route.legs'],
      care: {
        when: {
          all: [{ fact: 'brakes.power', operator: 'greaterThan', value: { fact: 'brakes.many' } }],
        },
        wrong: 'On the way down the brakes must get rid of the heat of many room heaters at once.',
        do: 'Slow down before it begins, hold a low speed with the drive, brake firmly and briefly, and stop to let them cool.',
      },
      open: {
        wrong: 'On the way down the brakes may get very hot.',
        do: 'Slow down before it begins, and hold a low speed with the drive.',
      },
      otherwise: 'The brakes have little to do on the way down, on the average of each leg.',
      source: mechanics,
    },
  },
});
