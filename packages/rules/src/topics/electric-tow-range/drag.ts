import { part } from '../../engine/define/topic';
import { house } from '../../trade/bibliography/common';
import {
  coldHabits,
  dragHabits,
  rollingLow,
  rollingTable,
  standardAir,
  standardGravity,
} from '../../trade/bibliography/electric-tow-range';

const from = '2020-01-01';
const one = (value: number) => [{ from, value }] as const;

/**
 * What holds the rig back on a level road: tires and air.
 *
 *     F = Crr·m·g + ½·ρ·CdA·v²
 */
export const drag = part({
  parameters: {
    'standard.gravity': {
      label: 'Weight of a pound',
      noun: 'standard gravity',
      unit: 'lbf/lb',
      values: one(1),
      source: standardGravity,
    },
    'air.seaLevel': {
      label: 'Density of standard air at sea level',
      noun: 'the air’s density at sea level',
      unit: 'kg/m³',
      values: one(1.225),
      source: standardAir,
    },
    'rolling.least': {
      label: 'Least usual rolling resistance coefficient',
      unit: '',
      values: one(0.009),
      source: rollingLow,
    },
    'rolling.most': {
      label: 'Largest usual rolling resistance coefficient',
      unit: '',
      values: one(0.015),
      source: rollingTable,
    },
    'mild.temperature': {
      label: 'Mild weather, taken where no temperature is told',
      unit: '°F',
      values: one(68),
      source: house,
    },
  },
  tables: {
    auxiliary: {
      label: 'Power for cabin and auxiliaries by outside temperature',
      keyUnit: '°F',
      valueUnit: 'W',
      rows: [
        [-20, 6000],
        [0, 5000],
        [32, 3000],
        [50, 1500],
        [68, 500],
        [80, 1000],
        [100, 2500],
      ],
      source: coldHabits,
    },
  },
  wordTables: {
    bodyLeast: {
      label: 'Least usual drag area by body',
      valueUnit: 'ft²',
      values: { sedan: 5.5, crossover: 7.5, pickup: 11, van: 10 },
      source: dragHabits,
    },
    bodyMost: {
      label: 'Largest usual drag area by body',
      valueUnit: 'ft²',
      values: { sedan: 7.5, crossover: 10, pickup: 15, van: 16 },
      source: dragHabits,
    },
    noseLeast: {
      label: 'Least share of its frontal area that a trailer adds as drag area',
      valueUnit: '1',
      values: { flat: 0.4, rounded: 0.28, low: 0.1 },
      source: dragHabits,
    },
    noseMost: {
      label: 'Largest share of its frontal area that a trailer adds as drag area',
      valueUnit: '1',
      values: { flat: 0.6, rounded: 0.45, low: 0.25 },
      source: dragHabits,
    },
  },
  formulas: {
    'rolling.coefficient': {
      label: 'Rolling resistance coefficient',
      noun: 'the rolling coefficient',
      unit: '',
      is: 'choose(given(rig.rolling), rig.rolling, between(rolling.least, rolling.most))',
      source: rollingTable,
    },
    'vehicle.drag': {
      label: 'Drag area of the vehicle',
      noun: 'the vehicle’s drag area',
      unit: 'ft²',
      is: 'choose(given(vehicle.dragArea), vehicle.dragArea, between(pick(bodyLeast, vehicle.body), pick(bodyMost, vehicle.body)))',
      source: dragHabits,
    },
    'trailer.drag': {
      label: 'Drag area that the trailer adds',
      noun: 'the trailer’s drag area',
      unit: 'ft²',
      is: 'choose(given(trailer.dragArea), trailer.dragArea, trailer.frontalArea * between(pick(noseLeast, trailer.nose), pick(noseMost, trailer.nose)))',
      source: dragHabits,
    },
    'auxiliary.mild': {
      label: 'Power for auxiliaries in mild weather',
      unit: 'W',
      is: 'choose(given(vehicle.auxiliaryPower), vehicle.auxiliaryPower, lookup(auxiliary, mild.temperature))',
      source: coldHabits,
    },
  },
});
