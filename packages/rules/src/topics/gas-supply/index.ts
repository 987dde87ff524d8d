import { ruleSet } from '../../engine/define/looked-at';
import { gather } from '../../engine/define/topic';
import { blower, furnaceAssumptions } from '../../trade/battery/blower';
import { custom, house, manual } from '../../trade/bibliography/common';
import {
  alarmDates,
  connectionCustom,
  datesFromMemory,
  usualSizes,
} from '../../trade/bibliography/gas';
import { alarmHeard } from '../../trade/gas/alarm-heard';
import { alarmAssumptions, alarms } from '../../trade/gas/alarms';
import { boil } from '../../trade/gas/boil';
import { connection } from '../../trade/gas/connection';
import { cylinderStamp } from '../../trade/gas/cylinder-stamp';
import { cylinderFacts } from '../../trade/gas/cylinders';
import { demand } from '../../trade/gas/demand';
import { vapor } from '../../trade/gas/vapor';
import { furnace } from '../../trade/heat/furnace';
import { loss } from '../../trade/heat/loss';
import { shell } from '../../trade/heat/shell';
import { askings, called } from './asked';
import { changes } from './changes';
import { dates } from './dates';
import { everybody } from './everybody';
import { how } from './how';
import { pipes } from './pipes';

const assumed = {
  formulas: {
    'gas.isAboard': {
      label: 'There is gas aboard',
      unit: 'yes-no',
      is: 'gas.aboard > 0',
      source: custom,
    },
    'gas.left': {
      label: 'Propane that is left',
      noun: 'what is left',
      unit: 'lb',
      is: 'choose(assumed.cylinderFull, between(0, gas.aboard), gas.aboard)',
      source: custom,
    },
    'gas.isOpen': {
      label: 'Whether there is any gas aboard is open',
      unit: 'yes-no',
      is: 'may(gas.aboard > 0) && may(gas.aboard <= 0)',
      source: custom,
    },
    'cold.gives': {
      label: 'The cylinder gives gas in the cold',
      unit: 'yes-no',
      is: 'vapor.rule > 0',
      source: house,
    },
    'cold.isCompared': {
      label: 'What the cylinder gives in the cold can be held against what is drawn',
      unit: 'yes-no',
      is: 'vapor.rule > 0 && demand.lasting > 0',
      source: house,
    },
    'assumed.allDay': {
      label: 'An appliance has no hours told',
      unit: 'yes-no',
      is: 'sum(choose(given(gas.appliances.hours), 0, 1)) > 0',
      source: house,
    },
  },
} as const;

const parts = [
  connection,
  alarmHeard,
  cylinderFacts,
  shell,
  loss,
  furnace,
  blower,
  demand,
  pipes,
  vapor,
  boil,
  cylinderStamp,
  dates,
  alarms,
  assumed,
] as const;

/** Will the gas last and flow, and may this appliance be connected here? */
export const gasSupply = ruleSet({
  id: 'gas-supply',
  version: '6.2.0',
  title: 'Gas supply',
  question: 'Will the gas last and flow fast enough, and may this appliance be connected here?',
  facts: gather('facts', parts),
  parameters: gather('parameters', parts),
  tables: gather('tables', parts),
  wordTables: gather('wordTables', parts),
  formulas: gather('formulas', parts),
  decisions: gather('decisions', parts),
  simulations: gather('simulations', parts),
  limits: gather('limits', parts),
  findings: gather('findings', parts),
  outcomes: {
    ok: { id: 'may-go-ahead', words: 'may go ahead', sentence: 'You may use the gas so.' },
    if: { id: 'may-go-ahead-if', words: 'may go ahead if', sentence: 'You may use the gas so' },
    care: {
      id: 'may-go-ahead-with-care',
      words: 'may go ahead with care',
      sentence: 'You may use the gas so, with care.',
      plain: 'You may use the gas so',
    },
    stop: {
      id: 'must-not-go-ahead',
      words: 'must not go ahead',
      sentence: 'Do not use the gas like that.',
    },
    unknown: { id: 'cannot-say', words: 'cannot say', sentence: 'That cannot be said yet.' },
  },
  apart: {},
  headline: [
    'gas.aboard',
    'energy.aboard',
    'gas.daily',
    'gas.days',
    'gas.hours',
    'furnace.gasNight',
    'blower.night',
    'pipe.capacity',
    'vapor.least',
    'vapor.most',
    'vapor.pressure',
  ],
  assumptions: [
    ...alarmAssumptions,
    {
      when: 'assumed.noAdapter',
      says: 'Every fitting goes on as it was sold, without an adapter.',
      source: connectionCustom,
    },
    ...furnaceAssumptions,
    {
      when: 'assumed.allDay',
      says: 'An appliance without hours burns all day.',
      source: house,
    },
    {
      when: 'assumed.cylinderFull',
      says: 'The cylinder is full.',
      source: custom,
    },
    {
      when: 'assumed.size',
      says: 'Where not measured: the cylinder has the usual size for its pounds.',
      source: usualSizes,
    },
  ],
  changes,
  askings,
  everybody,
  how,
  called,
  cautions: [
    {
      says: 'Smell of gas, or an alarm that sounds: everybody out, no switch, no flame; shut the cylinder if it is on the way, then call.',
      source: custom,
      fits: ['finding.smell'],
    },
    {
      says: 'Portable gas appliances burn in the open air only, and never heat a sleeping space.',
      source: manual,
      fits: ['finding.burns-indoors', 'limit.gas', 'gas.appliances'],
    },
    {
      says: 'After every connection brush leak-test solution on it and look for bubbles; never test with a flame.',
      source: manual,
      fits: ['finding.connection', 'finding.adapter', 'finding.hose'],
    },
    {
      says: 'Have a gas alarm and a carbon monoxide alarm that work, within the dates on their backs.',
      source: alarmDates,
      fits: ['finding.alarms', 'furnace.input'],
    },
    {
      says: 'Heed the dates of cylinders and hoses; shut the cylinders for travel.',
      source: datesFromMemory,
      fits: [
        'finding.cylinder-date',
        'finding.cylinder-overfilled',
        'finding.gas-left',
        'finding.vaporization',
      ],
    },
    {
      says: 'Changing a cylinder is yours. Other work on the high-pressure side, and any change of pipe, is for a licensed gas fitter by the local code.',
      source: manual,
      fits: ['limit.pipe', 'limit.regulator', 'limit.hose', 'finding.pipe-material'],
    },
    {
      says: 'Data plate and manual of that very appliance win; this is advice, not approval.',
      source: manual,
    },
  ],
});
