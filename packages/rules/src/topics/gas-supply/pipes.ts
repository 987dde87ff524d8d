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
      ask: 'How many Btu an hour may pass the regulator?',
      where: 'label or data sheet of the regulator',
    },
    'hose.capacity': {
      kind: 'quantity',
      label: 'Hose capacity',
      unit: 'Btu/h',
      least: 1000,
      most: 2_000_000,
      exact: true,
      ask: 'How many Btu an hour may pass the hose?',
      where: 'data sheet of the hose',
    },
    'pipe.size': {
      kind: 'choice',
      label: 'Gas pipe',
      options: ['three-eighths-inch', 'half-inch', 'three-quarter-inch'],
      ask: 'Is the gas pipe three-eighths, half-inch or three-quarter-inch?',
      where: 'marking on pipe or fitting; the nominal size, not a tape’s',
    },
    'pipe.material': {
      kind: 'choice',
      label: 'What the gas pipe is made of',
      noun: 'what the pipe is made of',
      options: ['iron', 'copper', 'flexible'],
      ask: 'Is the gas line iron pipe, copper tube, or flexible tube?',
      where: 'a look at it: iron is threaded, copper is flared, flexible tube is ribbed',
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
    'pipe.tableLeast': {
      label: 'Shortest pipe that such tables print; a shorter one counts as this',
      unit: 'ft',
      values: [{ from: '2020-01-01', value: 10 }],
      source: pipeLaw,
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
      // Of three-eighths the table prints nothing: it carries less than half-inch, and so stands as its most.
      label:
        'Capacity of 60 ft of iron pipe at 11 inches of water column, with a drop of half an inch; of three-eighths, the most',
      valueUnit: 'Btu/h',
      values: {
        'three-eighths-inch': 103_000,
        'half-inch': 103_000,
        'three-quarter-inch': 217_000,
      },
      source: pipeTable,
    },
  },
  formulas: {
    'pipe.ifIron': {
      label: 'What an iron pipe of that size carries at that length',
      noun: 'what iron pipe carries',
      unit: 'Btu/h',
      is: 'pick(pipeAtSixty, pipe.size) * power(pipe.tableLength / max(pipe.length, pipe.tableLeast), pipe.exponent)',
      source: pipeLaw,
    },
    'pipe.capacity': {
      label: 'What the pipe carries at that length, with a drop of half an inch of water column',
      noun: 'what the pipe carries',
      unit: 'Btu/h',
      is: "choose(pipe.material == 'iron' && pipe.size != 'three-eighths-inch', pipe.ifIron, between(0, pipe.ifIron))",
      source: pipeLaw,
    },
  },
  findings: {
    'pipe-material': {
      label: 'Make of the pipe',
      askedBy: ['pipe.material'],
      unknown: {
        when: "pipe.material != 'iron'",
        wrong:
          'What tube of copper or flexible tube carries is not told here; it is less than iron pipe of that size.',
        do: 'Have a licensed gas fitter size it by the table of that very tube.',
      },
      otherwise: 'It is iron pipe, as the table has it.',
      source: pipeTable,
    },
    'pipe-size': {
      label: 'Size of the pipe',
      askedBy: ['pipe.size'],
      unknown: {
        when: "pipe.size == 'three-eighths-inch'",
        wrong:
          'What three-eighths pipe carries is not told here; it is less than half-inch of that length.',
        do: 'Have a licensed gas fitter size it by the table of that very tube.',
      },
      otherwise: 'It is a size that the table has.',
      source: pipeTable,
    },
  },
  limits: {
    regulator: {
      label: 'Regulator',
      short: 'the regulator’s capacity',
      do: 'Do not run all of it at once; a licensed gas fitter fits a larger regulator.',
      near: 'Do not run all of it at once.',
      exceeded: true,
      used: 'demand.atOnce',
      limit: 'regulator.capacity',
      askedBy: ['regulator.capacity'],
      source: dataPlate,
    },
    hose: {
      label: 'Hose',
      short: 'the hose’s capacity',
      do: 'Do not run all of it at once; a licensed gas fitter fits larger pipe, regulator and hose.',
      near: 'Do not run all of it at once.',
      exceeded: true,
      used: 'demand.atOnce',
      limit: 'hose.capacity',
      askedBy: ['hose.capacity'],
      source: dataPlate,
    },
    pipe: {
      label: 'Gas pipe',
      short: 'the pipe’s capacity',
      do: 'Do not run all of it at once; a licensed gas fitter fits larger pipe, regulator and hose.',
      near: 'Do not run all of it at once.',
      exceeded: true,
      used: 'demand.atOnce',
      limit: 'pipe.capacity',
      askedBy: ['pipe.size', 'pipe.length', 'pipe.material'],
      source: pipeLaw,
    },
  },
});
