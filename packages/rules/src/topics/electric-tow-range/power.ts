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
    'drive.isEngineAlone': {
      label: 'It runs on an engine alone',
      unit: 'yes-no',
      is: "given(vehicle.drive) && vehicle.drive == 'engine'",
      source: mechanics,
    },
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
      is: 'choose(route.isLegged, choose(given(trip.steepestGrade), max(grade.power, mostOver(legs, legs.power)), mostOver(legs, legs.power)), grade.power)',
      source: mechanics,
    },
    'grade.held': {
      label: 'Power to be held back down the steepest grade',
      noun: 'what is held back down the grade',
      unit: 'kW',
      is: `max(0, combined.gross * standard.gravity * (${sine} - rolling.coefficient * ${cosine}) - air.seaLevel * rig.drag * trip.descentSpeed * trip.descentSpeed / 2) * trip.descentSpeed`,
      source: roadLoad,
    },
    'grade.brakes': {
      label: 'Of it, what brakes and gear turn to heat; all of it with a full battery',
      unit: 'kW',
      is: 'choose(given(trip.steepestGrade), grade.held * choose(route.isLegged, choose(route.spilled > spilled.little, 1, 1 - regeneration.share), between(1, 1 - regeneration.share)), 0)',
      within: ['0', 'unlimited'],
      source: mechanics,
    },
    'brakes.power': {
      label: 'Most that brakes and gear turn to heat on the way down',
      noun: 'the heat on the way down',
      unit: 'kW',
      is: 'choose(route.isLegged, max(grade.brakes, mostOver(legs, legs.brakes)), grade.brakes)',
      source: mechanics,
    },
    'brakes.areSpared': {
      label: 'The drive holds it on the way down',
      unit: 'yes-no',
      is: '(route.isLegged || given(trip.steepestGrade)) && brakes.power <= 0',
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
      supply: true,
      do: 'Take the climb slower, or plan another road.',
      near: 'Take the climb slower.',
      used: 'power.most',
      limit: 'vehicle.sustainedPower',
      margin: 'margin.power',
      askedBy: ['vehicle.sustainedPower'],
      source: mechanics,
    },
  },
  findings: {
    'brake-heat': {
      label: 'Heat on the way down',
      first: true,
      askedBy: ['route.legs', 'trip.steepestGrade'],
      care: [
        {
          when: 'drive.isEngineAlone && brakes.power > brakes.many',
          wrong:
            'Do not ride the brakes: on the way down they take up {brakes.power}, the heat of {brakes.heaters} room heaters.',
          because: 'Brakes that take it alone fade, and then there are none.',
          do: 'Shift down before the top: the gear that climbs it is the gear that goes down it. Brake firmly and briefly, never lightly all the way, and stop to let them cool.',
        },
        {
          when: 'drive.hasEngine && brakes.power > brakes.many',
          wrong:
            'Do not ride the brakes: on the way down they take up {brakes.power}, the heat of {brakes.heaters} room heaters.',
          because: 'A hybrid’s battery is soon full, and brakes that take it alone fade.',
          do: 'Choose the low or holding gear before the top, so that the engine holds it back. Brake firmly and briefly, never lightly all the way, and stop to let them cool.',
        },
        {
          when: 'brakes.power > brakes.many',
          wrong:
            'Do not ride the brakes: on the way down they take up {brakes.power}, the heat of {brakes.heaters} room heaters.',
          because:
            'What the battery cannot take they take alone, and brakes that get too hot fade.',
          do: 'Set the strongest holding back before the top, leave room in the battery, go down slowly, brake briefly, and stop to let them cool.',
        },
      ],
      open: {
        wrong: 'On the way down the brakes may get very hot.',
        because: 'Brakes that get too hot fade, and then there are none.',
        do: 'Shift down or set the strongest holding back before the top, go down slowly, and brake firmly and briefly.',
      },
      otherwise: 'The brakes have little to do on the way down.',
      source: mechanics,
    },
  },
});
