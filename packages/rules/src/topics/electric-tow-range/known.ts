import { part } from '../../engine/define/topic';
import {
  display,
  dragHabits,
  driveHabits,
  gallonEquivalent,
  mechanics,
  roadLoad,
} from '../../trade/bibliography/electric-tow-range';

const from = '2020-01-01';
const one = (value: number) => [{ from, value }] as const;
const airDrag = (area: string, speed: string): string =>
  `air.seaLevel * ${area} * ${speed} * ${speed} / 2`;

/**
 * What a drive whose consumption is known tells about this one.
 *
 *     known.perMile ├─ tires: s ─┼────── air: 1 − s ──────┤
 *     a level leg    s × m ÷ m known + (1 − s + what the trailer adds) × ρ·(v + w)² ÷ ρ₀·v² known
 *
 * Without a trailer it gives the efficiency as well: road load ÷ consumption less auxiliaries. A
 * trial drive with the trailer needs neither drag area nor efficiency, and goes before it. Where no
 * drive is known, road load over a usual efficiency is taken.
 */
export const known = part({
  parameters: {
    'efficiency.least': {
      label: 'Least usual efficiency from battery to wheels',
      unit: '%',
      values: one(80),
      source: driveHabits,
    },
    'efficiency.most': {
      label: 'Largest usual efficiency from battery to wheels',
      unit: '%',
      values: one(92),
      source: driveHabits,
    },
    'efficiency.lowEdge': {
      label: 'Efficiency below which figures hardly go together',
      unit: '1',
      values: one(0.6),
      source: driveHabits,
    },
    'efficiency.highEdge': {
      label: 'Largest efficiency that is reckoned with',
      unit: '1',
      values: one(0.95),
      source: driveHabits,
    },
    'efficiency.whole': {
      label: 'All of the energy; no drive gives more than it gets',
      noun: 'all of the energy',
      unit: '1',
      values: one(1),
      source: mechanics,
    },
    'engine.leastShare': {
      label: 'Least usual share of the fuel’s energy that drives',
      unit: '%',
      values: one(22),
      source: driveHabits,
    },
    'engine.mostShare': {
      label: 'Largest usual share of the fuel’s energy that drives',
      unit: '%',
      values: one(36),
      source: driveHabits,
    },
    'gallon.energy': {
      label: 'Energy of a gallon of gasoline',
      noun: 'the energy of a gallon',
      unit: 'kWh/gal',
      values: one(33.7),
      source: gallonEquivalent,
    },
  },
  formulas: {
    'solo.force': {
      label: 'Road load on the drive without a trailer',
      noun: 'the road load without a trailer',
      unit: 'lbf',
      is: `rolling.coefficient * (vehicle.curb + solo.load) * standard.gravity + ${airDrag('vehicle.drag', 'solo.speed')}`,
      source: roadLoad,
    },
    'drive.isCalibrated': {
      label: 'The consumption without a trailer is known',
      unit: 'yes-no',
      is: 'known(solo.consumption, solo.speed) && !known(vehicle.driveEfficiency)',
      source: display,
    },
    'drive.isChecked': {
      label: 'Weight, drag and consumption without a trailer can be held against one another',
      unit: 'yes-no',
      is: 'drive.isCalibrated && known(vehicle.dragArea)',
      source: display,
    },
    'drive.calibrated': {
      label: 'Efficiency by the known consumption without a trailer',
      noun: 'the efficiency by the known consumption',
      unit: '1',
      is: 'solo.force / (solo.consumption - auxiliary.mild / solo.speed)',
      source: display,
    },
    'drive.efficiency': {
      label: 'Efficiency from battery to wheels',
      noun: 'the drive’s efficiency',
      unit: '1',
      is: 'choose(given(vehicle.driveEfficiency), vehicle.driveEfficiency, choose(drive.isCalibrated, min(drive.calibrated, efficiency.highEdge), between(efficiency.least, efficiency.most)))',
      source: driveHabits,
    },
    'known.byTrial': {
      label: 'A trial drive with the trailer is known',
      unit: 'yes-no',
      is: 'known(trial.consumption, trial.speed)',
      source: display,
    },
    'known.drive': {
      label: 'The consumption on some drive is known',
      unit: 'yes-no',
      is: 'known.byTrial || drive.isCalibrated',
      source: display,
    },
    'known.speed': {
      label: 'Speed of the known drive',
      unit: 'mph',
      is: 'choose(known.byTrial, trial.speed, solo.speed)',
      source: display,
    },
    'known.weight': {
      label: 'Weight on the known drive',
      unit: 'lb',
      is: 'choose(known.byTrial, combined.gross, vehicle.curb + solo.load)',
      source: display,
    },
    'trial.perMile': {
      label: 'For a level mile on the trial drive',
      unit: 'kWh/mi',
      is: 'max(0, trial.consumption - auxiliary.mild / trial.speed)',
      source: display,
    },
    'solo.perMile': {
      label:
        'For a level mile without a trailer, no less than a good drive takes where its drag is known',
      unit: 'kWh/mi',
      is: 'choose(drive.isChecked, max(solo.consumption - auxiliary.mild / solo.speed, solo.force / efficiency.highEdge), max(0, solo.consumption - auxiliary.mild / solo.speed))',
      source: display,
    },
    'known.perMile': {
      label: 'For a level mile on the known drive',
      unit: 'kWh/mi',
      is: 'choose(known.byTrial, trial.perMile, solo.perMile)',
      source: display,
    },
    'known.rollingShare': {
      label: 'Share of it that the tires took',
      unit: '1',
      is: `choose(known.byTrial, min(1, rolling.coefficient * combined.gross * standard.gravity / (trial.perMile * drive.efficiency)), 1 / (1 + ${airDrag('vehicle.drag', 'solo.speed')} / (rolling.coefficient * (vehicle.curb + solo.load) * standard.gravity)))`,
      source: roadLoad,
    },
    'known.added': {
      label: 'Air drag that the trailer adds, against all of the known drive',
      unit: '1',
      is: `choose(known.byTrial, 0, ${airDrag('trailer.drag', 'solo.speed')} / solo.force)`,
      source: roadLoad,
    },
    'rig.dragByTrial': {
      label: 'Drag area of the rig by the trial drive',
      unit: 'ft²',
      is: 'max(0, (trial.perMile * drive.efficiency - rolling.coefficient * combined.gross * standard.gravity) / (air.seaLevel * trial.speed * trial.speed / 2))',
      source: display,
    },
    'rig.drag': {
      label: 'Drag area of the rig',
      noun: 'the rig’s drag area',
      unit: 'ft²',
      is: 'choose(known.byTrial, rig.dragByTrial, vehicle.drag + trailer.drag)',
      source: roadLoad,
    },
    'rig.isEstimated': {
      label: 'The rig’s drag is an estimate',
      unit: 'yes-no',
      is: '!known.byTrial && !(known(vehicle.dragArea) && known(trailer.dragArea))',
      source: dragHabits,
    },
    'drive.hasEngine': {
      label: 'There is an engine as well',
      unit: 'yes-no',
      is: "(given(vehicle.drive) && vehicle.drive != 'battery') || (!given(vehicle.drive) && (given(trip.fuel) || given(vehicle.fuelTank) || given(solo.fuelEconomy) || (given(vehicle.engine) && vehicle.engine != 'electric')))",
      source: driveHabits,
    },
    'drive.hasBattery': {
      label: 'There is a traction battery',
      unit: 'yes-no',
      is: "!(given(vehicle.drive) && vehicle.drive == 'engine')",
      source: driveHabits,
    },
    'drive.isPlugged': {
      label: 'It can be charged from a plug',
      unit: 'yes-no',
      is: "!drive.hasEngine || (given(vehicle.drive) && vehicle.drive == 'plug-in-hybrid')",
      source: driveHabits,
    },
    'engine.share': {
      label: 'Share of the fuel’s energy that drives',
      noun: 'the engine’s share',
      unit: '1',
      is: 'choose(known(solo.fuelEconomy, solo.speed) && known(solo.force), (solo.force / drive.efficiency + auxiliary.mild / solo.speed) * solo.fuelEconomy / gallon.energy, between(engine.leastShare, engine.mostShare))',
      source: gallonEquivalent,
    },
  },
  findings: {
    calibration: {
      label: 'Known consumption against weight and drag',
      askedBy: ['solo.consumption'],
      care: {
        when: 'drive.isChecked && (drive.calibrated < efficiency.lowEdge || drive.calibrated > efficiency.whole)',
        wrong:
          'The consumption told without a trailer does not go with that weight, drag and speed.',
        do: 'Read it again after a level drive at one steady speed.',
      },
      open: {
        wrong: 'The consumption told without a trailer may not go with weight and drag.',
        do: 'Find the vehicle’s own drag area; it would settle it.',
      },
      otherwise: 'The consumption told without a trailer goes with weight and drag.',
      source: driveHabits,
    },
  },
});
