import type { Simulation } from '../../engine/define/shapes';
import { part } from '../../engine/define/topic';
import { custom, house } from '../../trade/bibliography/common';
import { mechanics, roadLoad, standardAir } from '../../trade/bibliography/electric-tow-range';

const from = '2020-01-01';
const one = (value: number) => [{ from, value }] as const;

/** The cell of the leg's row where it is filled, else what stands for it. */
export const told = (column: string, otherwise: string): string =>
  `choose(given(route.legs.${column}), route.legs.${column}, ${otherwise})`;

/** The standard atmosphere. */
export const atmosphere = part({
  parameters: {
    'air.lapse': {
      label: 'Cooling of standard air with altitude',
      noun: 'the cooling with altitude',
      unit: '°C/m',
      values: one(0.0065),
      source: standardAir,
    },
    'air.standard': {
      label: 'Standard air at sea level, above absolute zero (288.15 K)',
      noun: 'standard air at sea level above absolute zero',
      unit: '°F',
      values: one(518.67),
      source: standardAir,
    },
    'air.zero': {
      label: 'Zero of the Fahrenheit scale, above absolute zero (459.67 °F)',
      noun: 'the zero of the scale above absolute zero',
      unit: '°F',
      values: one(459.67),
      source: standardAir,
    },
    'air.exponent': {
      label: 'Exponent of pressure with altitude, g ÷ (R·lapse)',
      unit: '',
      values: one(5.25588),
      source: standardAir,
    },
  },
});

/**
 * What a leg takes at the wheels.
 *
 *     (Crr·m·g·cosθ + ½·ρ·CdA·(v + w)·|v + w|)·d + m·g·climb
 *
 *     ρ = ρ₀ · (1 − lapse·h ÷ T₀)^exponent · T₀ ÷ T
 */
export const resistance = {
  'legs.climb': {
    label: 'Climb',
    unit: 'ft',
    is: told('climb', '0'),
    source: custom,
  },
  'legs.warmth': {
    label: 'Temperature of battery and cabin’s surroundings',
    unit: '°F',
    is: told('temperature', 'mild.temperature'),
    source: house,
  },
  'legs.middle': {
    label: 'Altitude at the middle',
    unit: 'ft',
    is: 'legs.altitude + legs.climb / 2',
    source: mechanics,
  },
  'legs.coolness': {
    label: 'Standard air at that altitude against sea level',
    unit: '1',
    is: '1 - air.lapse * legs.middle / air.standard',
    source: standardAir,
  },
  'legs.warmthRatio': {
    label: 'Air’s temperature against standard air at sea level',
    unit: '1',
    is: 'choose(given(route.legs.temperature), (route.legs.temperature + air.zero) / air.standard, legs.coolness)',
    within: ['0', 'unlimited'],
    source: standardAir,
  },
  'legs.density': {
    label: 'Density of the air',
    unit: 'kg/m³',
    is: 'air.seaLevel * power(legs.coolness, air.exponent) / legs.warmthRatio',
    source: standardAir,
  },
  'legs.wind': {
    label: 'Speed against the air',
    unit: 'mph',
    is: `route.legs.speed + ${told('headwind', '0')}`,
    source: roadLoad,
  },
  'legs.grade': {
    label: 'Grade on average',
    unit: '1',
    is: 'legs.climb / route.legs.distance',
    source: mechanics,
  },
  'legs.cosine': {
    label: 'Share of the weight that presses on a road of that grade',
    unit: '1',
    is: 'power(1 - legs.grade * legs.grade, 1 / 2)',
    source: mechanics,
  },
  'legs.rolling': {
    label: 'Rolling resistance',
    unit: 'lbf',
    is: 'rolling.coefficient * combined.gross * standard.gravity * legs.cosine',
    source: roadLoad,
  },
  'legs.drag': {
    label: 'Air drag',
    unit: 'lbf',
    is: 'legs.density * rig.drag * legs.wind * max(legs.wind, -legs.wind) / 2',
    source: roadLoad,
  },
  'legs.airRatio': {
    label: 'Air’s pressure against that on the known drive',
    unit: '1',
    is: 'legs.density / air.seaLevel * legs.wind * max(legs.wind, -legs.wind) / (known.speed * known.speed)',
    source: roadLoad,
  },
  'legs.asKnown': {
    label: 'A level mile of it against one of the known drive',
    unit: '1',
    // Written so that the tires' share, of which least is known, stands once.
    is: 'legs.airRatio * (1 + known.added) + known.rollingShare * (combined.gross / known.weight * legs.cosine - legs.airRatio)',
    source: roadLoad,
  },
  'legs.levelEnergy': {
    label: 'Tires and air, at the battery',
    unit: 'kWh',
    is: 'choose(known.drive, known.perMile * route.legs.distance * legs.asKnown, (legs.rolling + legs.drag) * route.legs.distance / drive.efficiency)',
    source: roadLoad,
  },
  'legs.levelWork': {
    label: 'Tires and air, at the wheels',
    unit: 'kWh',
    is: 'choose(known.byTrial, legs.levelEnergy * drive.efficiency, (legs.rolling + legs.drag) * route.legs.distance)',
    source: roadLoad,
  },
  'legs.lift': {
    label: 'Lifting the rig (below zero: let down)',
    unit: 'kWh',
    is: 'combined.gross * standard.gravity * legs.climb',
    source: mechanics,
  },
  'legs.work': {
    label: 'Work at the wheels (below zero: held back)',
    unit: 'kWh',
    is: 'legs.levelWork + legs.lift',
    source: roadLoad,
  },
} as const satisfies Simulation['values'];
