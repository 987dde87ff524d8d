import { part } from '../../engine/define/topic';
import { custom } from '../../trade/bibliography/common';
import {
  coldHabits,
  driveHabits,
  energyBalance,
  mechanics,
} from '../../trade/bibliography/electric-tow-range';
import { resistance, told } from './resistance';

const from = '2020-01-01';
const one = (value: number) => [{ from, value }] as const;

/**
 * The route leg by leg.
 *
 *     at the wheels   (Crr·m·g·cosθ + ½·ρ·CdA·(v + w)·|v + w|)·d + m·g·climb
 *     at the battery  above zero ÷ efficiency, below zero × what returns; and the auxiliaries
 *
 *     full ├──────╲                 charge to ┌───╲
 *          │       ╲_____╱ downhill           │    ╲____ arrival
 *          │              ╲___________________┘
 *          ├ ─ ─ ─ reserve ─ ─ ─ ─ ─ ─ ─ ─ ─ ─ ─ ─ ─ ─
 *          ├──────── what the cold locks away
 *
 * Where there is an engine it takes over once the battery is spent. A battery alone that is asked for
 * more than it has goes below zero here: so much is short.
 */
export const legs = part({
  parameters: {
    'regeneration.least': {
      label: 'Least usual share that returns to the battery',
      unit: '%',
      values: one(40),
      source: driveHabits,
    },
    'regeneration.most': {
      label: 'Largest usual share that returns to the battery',
      unit: '%',
      values: one(65),
      source: driveHabits,
    },
  },
  tables: {
    coldShare: {
      label: 'Share of the usable battery that is there, by its temperature',
      keyUnit: '°F',
      valueUnit: '%',
      rows: [
        [-20, 60],
        [0, 70],
        [20, 82],
        [32, 88],
        [50, 95],
        [68, 100],
      ],
      source: coldHabits,
    },
  },
  formulas: {
    'battery.full': {
      label: 'Usable energy of a full battery',
      noun: 'a full battery',
      unit: 'kWh',
      is: 'choose(drive.hasBattery, vehicle.usableBattery * vehicle.batteryHealth, 0)',
      source: energyBalance,
    },
    'regeneration.share': {
      label: 'Share of what is held back that returns to the battery',
      noun: 'the share that returns',
      unit: '1',
      is: 'choose(drive.hasBattery, choose(given(vehicle.regeneration), vehicle.regeneration, between(regeneration.least, regeneration.most)), 0)',
      source: driveHabits,
    },
  },
  simulations: {
    legs: {
      label: 'The route leg by leg',
      steps: 'route.legs',
      states: {
        'legs.charge': {
          label: 'In the battery (below zero: so much is short)',
          unit: 'kWh',
          start: 'battery.full * trip.startCharge',
          next: 'choose(given(route.legs.chargeTo), max(legs.arrival, route.legs.chargeTo * battery.full), legs.arrival)',
          source: energyBalance,
        },
        'legs.way': {
          label: 'Way done',
          unit: 'mi',
          start: '0',
          next: 'legs.way + route.legs.distance',
          source: mechanics,
        },
        'legs.altitude': {
          label: 'Altitude',
          unit: 'ft',
          start: 'trip.startAltitude',
          next: 'legs.altitude + legs.climb',
          source: mechanics,
        },
        'legs.reached': {
          label: 'Way done before the battery’s reserve is touched',
          unit: 'mi',
          start: '0',
          next: 'legs.reached + choose(legs.shorts > 0, 0, legs.within)',
          source: energyBalance,
        },
        'legs.shorts': {
          label: 'Legs that end in the reserve or below',
          unit: '',
          start: '0',
          next: 'legs.shorts + choose(legs.left < battery.full * range.reserve, 1, 0)',
          source: energyBalance,
        },
      },
      values: {
        ...resistance,
        'legs.time': {
          label: 'Time',
          unit: 'h',
          is: 'route.legs.distance / route.legs.speed',
          source: mechanics,
        },
        'legs.auxiliary': {
          label: 'Cabin and auxiliaries',
          unit: 'kWh',
          is: 'choose(given(vehicle.auxiliaryPower), vehicle.auxiliaryPower, lookup(auxiliary, legs.warmth)) * legs.time',
          source: coldHabits,
        },
        'legs.net': {
          label: 'Out of the battery (below zero: into it)',
          unit: 'kWh',
          is: 'max(0, legs.levelEnergy + legs.lift / drive.efficiency) + min(0, legs.work) * regeneration.share + legs.auxiliary',
          source: energyBalance,
        },
        'legs.spilled': {
          label: 'Finds no room in a full battery',
          unit: 'kWh',
          is: 'min(max(0, legs.charge - legs.net - battery.full), max(0, -legs.net))',
          source: energyBalance,
        },
        'legs.locked': {
          label: 'Locked away by the cold',
          unit: 'kWh',
          is: 'battery.full * (1 - lookup(coldShare, legs.warmth))',
          source: coldHabits,
        },
        'legs.wouldBe': {
          label: 'Left by the battery alone',
          unit: 'kWh',
          is: 'min(battery.full, legs.charge - legs.net)',
          source: energyBalance,
        },
        'legs.arrival': {
          label: 'In the battery on arrival',
          unit: 'kWh',
          is: 'choose(drive.hasEngine, max(legs.locked, legs.wouldBe), legs.wouldBe)',
          source: energyBalance,
        },
        'legs.engine': {
          label: 'From the engine',
          unit: 'kWh',
          is: 'choose(drive.hasEngine, max(0, legs.locked - legs.wouldBe), 0)',
          source: energyBalance,
        },
        'legs.left': {
          label: 'Left on arrival that can be used',
          unit: 'kWh',
          is: 'legs.arrival - legs.locked',
          source: energyBalance,
        },
        'legs.charged': {
          label: 'Charged after it',
          unit: 'kWh',
          is: 'choose(given(route.legs.chargeTo), max(0, route.legs.chargeTo * battery.full - legs.arrival), 0)',
          source: energyBalance,
        },
        'legs.target': {
          label: 'Charged to',
          unit: '1',
          is: told('chargeTo', '0'),
          source: custom,
        },
        'legs.floor': {
          label: 'Never planned on: the reserve, and what the cold locks away',
          unit: 'kWh',
          is: 'legs.locked + battery.full * range.reserve',
          source: energyBalance,
        },
        'legs.within': {
          label: 'Way done on this leg before the reserve is touched',
          unit: 'mi',
          is: 'choose(legs.net > 0, route.legs.distance * max(0, min(1, (legs.charge - legs.floor) / legs.net)), route.legs.distance)',
          source: energyBalance,
        },
        'legs.power': {
          label: 'Power at the wheels',
          unit: 'kW',
          is: 'max(0, legs.work) / legs.time',
          source: mechanics,
        },
        'legs.brakes': {
          label: 'Power that the brakes turn to heat, at the most',
          unit: 'kW',
          is: '(max(0, -legs.work) * (1 - regeneration.share) + legs.spilled) / legs.time',
          source: mechanics,
        },
      },
      source: energyBalance,
    },
  },
});
