import { part } from '../../engine/define/topic';
import { custom } from '../bibliography/common';
import {
  boilRule,
  boilSpread,
  fillingDensity,
  usualSizes,
  vaporPressure,
} from '../bibliography/gas';
import { rigTrade } from '../rig/index';

/**
 * Liquid must boil before it burns, and it boils by the warmth that comes through the wetted wall.
 * A small, cold or nearly empty cylinder starves the burners whatever its energy.
 *
 *     Btu/h = diameter × length × K(fill) × (1 at 0 °F, 2 at 20 °F, 0 at −20 °F and below)
 */
export const vapor = part({
  facts: {
    'outside.temperature': {
      kind: 'quantity',
      label: 'Outside temperature',
      noun: 'the outside temperature',
      unit: '°F',
      least: -60,
      most: 130,
      ask: 'How cold does the night get while the appliance must burn?',
      where: 'the forecast’s low for the place',
    },
    'cylinder.diameter': {
      kind: 'quantity',
      label: 'Diameter of the cylinder',
      unit: 'in',
      least: 4,
      most: 60,
      ask: 'How wide is the cylinder?',
      where: 'a tape around it, divided by 3.14',
    },
    'cylinder.length': {
      kind: 'quantity',
      label: 'Length of the cylinder’s shell',
      unit: 'in',
      least: 5,
      most: 240,
      ask: 'How long is its shell, without collar and foot ring?',
      where: 'a tape along it',
    },
    'cylinder.feeding': {
      kind: 'quantity',
      label: 'Cylinders open at once',
      noun: 'the number of cylinders open at once',
      unit: '',
      least: 1,
      most: 6,
      counted: true,
      ask: 'How many cylinders feed the regulator at the same time?',
      where: 'open valves; a changeover regulator draws from one',
      silent: { value: 1, says: 'One cylinder feeds at a time.', source: custom, quiet: true },
    },
  },
  parameters: {
    'water.density': rigTrade.parameters['water.density'],
    'vapor.ends': {
      label: 'Where the rule ends: below it no cylinder gives gas enough, however large',
      unit: '°F',
      values: [{ from: '2020-01-01', value: -20 }],
      source: boilRule,
    },
    'vapor.spread': {
      label: 'How many times the rule may be off, either way',
      unit: '',
      values: [{ from: '2020-01-01', value: 1.25 }],
      range: [1, 2],
      source: boilSpread,
    },
  },
  tables: {
    boilByFill: {
      label: 'Fill factor K, by how full the container’s volume is',
      noun: 'the fill factor K, by how full the container’s volume is',
      keyUnit: '%',
      valueUnit: 'Btu/h/in²',
      rows: [
        [0, 0],
        [10, 45],
        [20, 60],
        [30, 70],
        [40, 80],
        [50, 90],
        [60, 100],
      ],
      source: boilRule,
    },
    boilByCold: {
      label: 'Temperature factor of vaporization',
      keyUnit: '°F',
      valueUnit: '1',
      rows: [
        [-20, 0],
        [0, 1],
        [20, 2],
        [60, 4],
      ],
      source: boilRule,
    },
    usualDiameter: {
      label: 'Usual diameter by rated pounds',
      keyUnit: 'lb',
      valueUnit: 'in',
      rows: [
        [1, 4],
        [5, 8],
        [11, 12],
        [20, 12],
        [30, 12.5],
        [40, 14.5],
        [100, 15],
      ],
      source: usualSizes,
    },
    usualLength: {
      label: 'Usual length of the shell by rated pounds',
      keyUnit: 'lb',
      valueUnit: 'in',
      rows: [
        [1, 8],
        [5, 9],
        [11, 9],
        [19, 14],
        [20, 14],
        [30, 20],
        [40, 25],
        [100, 44],
      ],
      source: usualSizes,
    },
    pressureByTemperature: {
      label: 'Gauge pressure over pure liquid propane',
      keyUnit: '°F',
      valueUnit: 'psi',
      rows: [
        [-44, 0],
        [0, 23.7],
        [40, 63.9],
        [70, 110.2],
        [100, 173.9],
      ],
      source: vaporPressure,
    },
  },
  formulas: {
    'vapor.isAsked': {
      label: 'Something burns, or it is too cold for gas whatever burns',
      unit: 'yes-no',
      is: 'demand.atOnce > 0 || outside.temperature <= vapor.ends',
      source: boilRule,
    },
    'vapor.pressure': {
      label: 'Pressure in the cylinder, as of pure propane',
      unit: 'psi',
      is: 'needs(lookup(pressureByTemperature, outside.temperature), outside.temperature)',
      source: vaporPressure,
    },
    'cylinder.across': {
      label: 'Diameter reckoned with',
      noun: 'the diameter that counts',
      unit: 'in',
      is: 'choose(given(cylinder.diameter), cylinder.diameter, lookup(usualDiameter, cylinder.full))',
      source: usualSizes,
    },
    'cylinder.along': {
      label: 'Length reckoned with',
      noun: 'the length that counts',
      unit: 'in',
      is: 'choose(given(cylinder.length), cylinder.length, lookup(usualLength, cylinder.full))',
      source: usualSizes,
    },
    'cylinder.waterHeld': {
      label: 'Water it would hold',
      unit: 'lb',
      is: 'choose(known(cylinder.waterCapacity), cylinder.waterCapacity, cylinder.fill / fill.density)',
      source: fillingDensity,
    },
    'fill.share': {
      label: 'Fill, of its volume',
      unit: '%',
      is: 'min(1, gas.inUse / propane.density / (cylinder.waterHeld / water.density))',
      source: fillingDensity,
    },
    'vapor.perFactor': {
      label: 'Gas that boils off for each one of the temperature factor',
      unit: 'Btu/h',
      is: 'cylinder.across * cylinder.along * lookup(boilByFill, fill.share) * cylinder.feeding',
      source: boilRule,
    },
    'vapor.rule': {
      label: 'Gas that boils off, by the rule',
      unit: 'Btu/h',
      is: 'needs(vapor.perFactor * lookup(boilByCold, outside.temperature), outside.temperature)',
      source: boilRule,
    },
    'vapor.least': {
      label: 'Gas that boils off, at the least',
      unit: 'Btu/h',
      is: 'vapor.rule / vapor.spread',
      source: boilSpread,
    },
    'vapor.most': {
      label: 'Gas that boils off, at the most',
      unit: 'Btu/h',
      is: 'vapor.rule * vapor.spread',
      source: boilSpread,
    },
    'assumed.size': {
      label: 'The cylinder was not measured',
      unit: 'yes-no',
      is: 'given(outside.temperature) && cylinder.isTold && !given(cylinder.diameter, cylinder.length)',
      source: usualSizes,
    },
  },
  findings: {
    vaporization: {
      label: 'Vaporization',
      askedBy: ['outside.temperature'],
      // Where nothing was told to burn, nothing can be said to burn well.
      askedWhen: 'vapor.isAsked',
      stop: [
        {
          when: 'outside.temperature <= vapor.ends',
          wrong: 'The cold is too much for gas: from {vapor.ends} down no larger cylinder helps.',
          because: 'So cold, propane hardly boils, however much of it there is.',
          do: 'Heat from shore power, or leave for milder weather. Never warm a cylinder with a flame, a heater or hot water, and never bring one indoors.',
        },
        {
          when: 'demand.lasting > vapor.most',
          wrong: 'The cylinder will starve the burners.',
          because:
            'So small, cold or empty, it boils off {vapor.most} at the best, whatever is still in it, and {demand.lasting} is asked of it.',
          do: 'Take a larger or fuller cylinder, or have two open at once on a two-cylinder manifold. Never warm one with a flame, a heater or hot water.',
        },
      ],
      care: [
        {
          when: 'demand.lasting > vapor.least',
          wrong: 'The cylinder may starve the burners.',
          because: 'At that size, fill and temperature it is near what it can boil off.',
          do: 'Keep it full, and have a second one at hand.',
        },
        {
          when: 'demand.atOnce > vapor.rule',
          wrong: 'With everything burning at once the cylinder may starve the burners.',
          because: 'It boils off {vapor.rule} by the rule, and all together ask for more.',
          do: 'Do not run all of it at the same time; the furnace goes first.',
        },
      ],
      otherwise: 'The cylinder boils off enough, as far as the rule can tell.',
      open: {
        wrong: 'Whether it starves hangs on the cylinder’s size, how full it is, and the cold.',
        do: 'Weigh it and read its collar.',
      },
      source: boilRule,
    },
  },
});
