import { part } from '../../engine/define/topic';
import {
  airChange,
  airHeat,
  conduction,
  furnaceEfficiency,
  glassValues,
  inches,
  ownNight,
  shellValues,
} from '../bibliography/cold-weather';
import { cylinderFacts } from '../gas/cylinders';
import { vapor } from '../gas/vapor';

/**
 * What the trailer loses for each degree, from its size and make as a wide range, or from the gas of
 * an own night, which tells better.
 *
 *     described   walls × U + glass × U + air, over the furnace's efficiency ┐
 *     own night   gas × heat ÷ (hours × degrees)                             ├─► Btu of gas/h/°F
 */
export const loss = part({
  facts: { 'outside.temperature': vapor.facts['outside.temperature'] },
  parameters: {
    'propane.heat': cylinderFacts.parameters['propane.heat'],
    'air.least': {
      label: 'Changes of air an hour, at the least',
      unit: '1/h',
      values: [{ from: '2020-01-01', value: 0.5 }],
      range: [0.2, 1],
      source: airChange,
    },
    'air.most': {
      label: 'Changes of air an hour, at the most',
      unit: '1/h',
      values: [{ from: '2020-01-01', value: 1.5 }],
      range: [1, 4],
      source: airChange,
    },
    'air.heat': {
      label: 'Heat of air',
      unit: 'Btu/ft³/°F',
      values: [{ from: '2020-01-01', value: 0.018 }],
      source: airHeat,
    },
    'furnace.efficiencyLeast': {
      label: 'Efficiency of a furnace, at the least',
      unit: '%',
      values: [{ from: '2020-01-01', value: 72 }],
      source: furnaceEfficiency,
    },
    'furnace.efficiencyMost': {
      label: 'Efficiency of a furnace, at the most',
      unit: '%',
      values: [{ from: '2020-01-01', value: 82 }],
      source: furnaceEfficiency,
    },
  },
  wordTables: {
    wallLeast: {
      label: 'What walls, floor and roof lose at the least',
      valueUnit: 'Btu/h/ft²/°F',
      values: { thin: 0.15, usual: 0.1, 'four-season': 0.06 },
      source: shellValues,
    },
    wallMost: {
      label: 'What walls, floor and roof lose at the most',
      valueUnit: 'Btu/h/ft²/°F',
      values: { thin: 0.25, usual: 0.18, 'four-season': 0.1 },
      source: shellValues,
    },
    glass: {
      label: 'What windows lose',
      valueUnit: 'Btu/h/ft²/°F',
      values: { 'single-pane': 1.04, 'double-pane': 0.55 },
      source: glassValues,
    },
  },
  formulas: {
    'body.surface': {
      label: 'Walls, floor and roof, windows included',
      unit: 'ft²',
      is: '2 * (body.length * body.width + body.length * body.height + body.width * body.height)',
      source: inches,
    },
    'body.volume': {
      label: 'Air inside',
      unit: 'ft³',
      is: 'body.length * body.width * body.height',
      source: inches,
    },
    'loss.least': {
      label: 'Heat lost for each degree, at the least',
      unit: 'Btu/h/°F',
      is: 'max(0, body.surface - windows.area) * pick(wallLeast, body.insulation) + windows.area * pick(glass, windows.glazing) + body.volume * air.least * air.heat',
      source: conduction,
    },
    'loss.most': {
      label: 'Heat lost for each degree, at the most',
      unit: 'Btu/h/°F',
      is: 'max(0, body.surface - windows.area) * pick(wallMost, body.insulation) + windows.area * pick(glass, windows.glazing) + body.volume * air.most * air.heat',
      source: conduction,
    },
    'furnace.efficiency': {
      label: 'Efficiency of the furnace',
      unit: '%',
      is: 'choose(known(furnace.ratedOutput) && known(furnace.input), min(1, furnace.ratedOutput / furnace.input), between(furnace.efficiencyLeast, furnace.efficiencyMost))',
      source: furnaceEfficiency,
    },
    'night.isTold': {
      label: 'A night of your own is told, and told whole where the trailer is told too',
      unit: 'yes-no',
      is: 'given(night.gas) && (known(night.gas) && known(night.hours) && known(night.inside) && known(night.outside) || !given(body.length))',
      source: ownNight,
    },
    'heat.gasForDegree': {
      label: 'Gas that holds each degree',
      unit: 'Btu/h/°F',
      is: 'choose(night.isTold, max(0, night.gas * propane.heat / (night.hours * max(0, night.inside - night.outside))), between(loss.least, loss.most) / furnace.efficiency)',
      source: ownNight,
    },
    'heat.perDegree': {
      label: 'Heat lost for each degree',
      unit: 'Btu/h/°F',
      is: 'choose(night.isTold, heat.gasForDegree * furnace.efficiency, between(loss.least, loss.most))',
      source: conduction,
    },
    'heat.degrees': {
      label: 'Degrees to be held',
      unit: 'F°',
      is: 'max(0, inside.temperature - outside.temperature)',
      source: conduction,
    },
    'heat.loss': {
      label: 'Heat lost',
      unit: 'Btu/h',
      is: 'heat.perDegree * heat.degrees',
      source: conduction,
    },
    'heat.gas': {
      label: 'Gas that holds the warmth',
      unit: 'Btu/h',
      is: 'heat.gasForDegree * heat.degrees',
      source: conduction,
    },
  },
});
