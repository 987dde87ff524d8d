import { part } from '../../engine/define/topic';
import { dataPlate } from '../../trade/bibliography/common';
import { pipeLaw, pipeTable } from '../../trade/bibliography/gas';

/**
 * What the gas must pass on its way, held against everything burning at once.
 *
 *     cylinder ─► regulator ─► pipe ─► hose ─► appliances        demand.atOnce
 */
export const pipes = part({
  facts: {
    'regulator.capacity': {
      kind: 'quantity',
      label: 'Regulator capacity',
      noun: 'the regulator’s capacity',
      unit: 'Btu/h',
      least: 1000,
      most: 2_000_000,
      exact: true,
      ask: 'How many Btu/h may pass the regulator?',
      where: 'label or data sheet of the regulator',
    },
    'hose.capacity': {
      kind: 'quantity',
      label: 'Hose capacity',
      unit: 'Btu/h',
      least: 1000,
      most: 2_000_000,
      exact: true,
      ask: 'How many Btu/h may pass the hose?',
      where: 'data sheet of the hose',
    },
    'pipe.size': {
      kind: 'choice',
      label: 'Gas pipe',
      options: ['half-inch', 'three-quarter-inch'],
      ask: 'Is the iron gas pipe half-inch or three-quarter-inch?',
      where: 'marking on pipe or fitting; the nominal size, not a tape’s',
    },
    'pipe.length': {
      kind: 'quantity',
      label: 'Length of the gas pipe to the farthest appliance',
      unit: 'ft',
      least: 5,
      most: 300,
      ask: 'How far is it from the regulator to the farthest appliance?',
      where: 'a tape along the pipe',
    },
  },
  parameters: {
    'pipe.tableLength': {
      label: 'Length the pipe table is read at',
      unit: 'ft',
      values: [{ from: '2020-01-01', value: 60 }],
      source: pipeTable,
    },
    'pipe.exponent': {
      label: 'Power with which a longer pipe carries less',
      unit: '',
      values: [{ from: '2020-01-01', value: 0.5407 }],
      source: pipeLaw,
    },
  },
  wordTables: {
    pipeAtSixty: {
      label: 'Capacity of 60 ft of pipe at 11 inWC',
      valueUnit: 'Btu/h',
      values: { 'half-inch': 103_000, 'three-quarter-inch': 217_000 },
      source: pipeTable,
    },
  },
  formulas: {
    'pipe.capacity': {
      label: 'What the pipe carries at that length',
      unit: 'Btu/h',
      is: 'pick(pipeAtSixty, pipe.size) * power(pipe.tableLength / pipe.length, pipe.exponent)',
      source: pipeLaw,
    },
  },
  limits: {
    regulator: {
      label: 'Regulator',
      short: 'the regulator’s capacity',
      used: 'demand.atOnce',
      limit: 'regulator.capacity',
      askedBy: ['regulator.capacity'],
      source: dataPlate,
    },
    hose: {
      label: 'Hose',
      short: 'the hose’s capacity',
      used: 'demand.atOnce',
      limit: 'hose.capacity',
      askedBy: ['hose.capacity'],
      source: dataPlate,
    },
    pipe: {
      label: 'Gas pipe',
      short: 'the pipe’s capacity',
      used: 'demand.atOnce',
      limit: 'pipe.capacity',
      askedBy: ['pipe.size', 'pipe.length'],
      source: pipeTable,
    },
  },
});
