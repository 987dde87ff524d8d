import { ruleSet } from '../../engine/define/looked-at';
import { gather } from '../../engine/define/topic';
import { antifreezeCustom } from '../../trade/bibliography/cold-weather';
import { custom, manual } from '../../trade/bibliography/common';
import { alarms } from '../../trade/gas/alarms';
import { frost } from '../../trade/heat/frost';
import { askings, called } from './asked';
import { assumed, assumptions } from './assumed';
import { battery, gas, rulings } from './borrowed';
import { changes } from './changes';
import { everybody } from './everybody';
import { flames } from './flames';
import { how } from './how';
import { moisture } from './moisture';
import { night } from './night';
import { storage } from './storage';
import { winterizing } from './winterizing';

const parts = [
  flames,
  alarms,
  gas,
  battery,
  night,
  rulings,
  frost,
  winterizing,
  storage,
  moisture,
  assumed,
] as const;

/** May one stay in the cold: warmth, gas, battery and water? */
export const coldWeather = ruleSet({
  id: 'cold-weather',
  version: '7.0.2',
  title: 'Cold weather',
  question: 'May it stay in the cold so, and what gives out first: warmth, gas, battery or water?',
  facts: gather('facts', parts),
  parameters: gather('parameters', parts),
  tables: gather('tables', parts),
  wordTables: gather('wordTables', parts),
  formulas: gather('formulas', parts),
  decisions: gather('decisions', parts),
  selections: gather('selections', parts),
  simulations: gather('simulations', parts),
  limits: gather('limits', parts),
  findings: gather('findings', parts),
  outcomes: {
    ok: { id: 'may-stay', words: 'may stay', sentence: 'The trailer may stay.' },
    if: { id: 'may-stay-if', words: 'may stay if', sentence: 'The trailer may stay' },
    care: {
      id: 'may-stay-with-care',
      words: 'may stay with care',
      sentence: 'The trailer may stay, with care.',
      plain: 'The trailer may stay',
    },
    stop: {
      id: 'must-not-stay-so',
      words: 'must not stay so',
      sentence: 'The trailer must not stay so.',
    },
    unknown: { id: 'cannot-say', words: 'cannot say', sentence: 'That cannot be said yet.' },
  },
  apart: {},
  headline: [
    'heat.perDegree',
    'heat.loss',
    'furnace.runs',
    'furnace.on',
    'furnace.gasNight',
    'gas.days',
    'blower.ampHours',
    'battery.usable',
    'battery.nights',
    'vapor.least',
    'vapor.most',
    'window.surface',
    'dew.point',
    'stored.freezesAt',
  ],
  assumptions,
  renamed: { 'water.state': { to: 'water.state', values: { winterised: ['winterized'] } } },
  changes,
  askings,
  everybody,
  how,
  called,
  cautions: [
    {
      says: 'Never heat a sleeping space with a stove or a portable heater. Use only the built-in furnace, its exhaust and intake free of snow.',
      source: manual,
      fits: ['finding.portable-heat', 'finding.exhaust', 'limit.furnace', 'finding.warmth'],
    },
    {
      says: 'Have a carbon monoxide alarm and a gas alarm that work, within the dates on their backs. Smell of gas or an alarm: out, then call.',
      source: manual,
      fits: ['finding.alarms', 'limit.gas', 'finding.condensation'],
    },
    {
      says: 'Never warm a cold cylinder, line or tank with a flame.',
      source: custom,
      fits: ['finding.vaporization', 'finding.water'],
    },
    {
      says: 'Never charge LiFePO₄ with cells below freezing; a discharged lead battery freezes and splits.',
      source: custom,
      fits: ['finding.battery-frost', 'limit.blower-night', 'finding.recharged'],
    },
    {
      says: 'Only antifreeze of propylene glycol made for drinking water goes into the lines; the trailer’s manual says how it is winterized.',
      source: antifreezeCustom,
      fits: ['finding.antifreeze', 'finding.water-heater', 'limit.blow-out'],
    },
    {
      says: 'In frost the heat is never turned down to save; wind, damp and a night colder than the forecast count against every figure here.',
      source: custom,
    },
    {
      says: 'This is advice, not approval: the manuals of trailer, furnace and cylinder win over it.',
      source: manual,
    },
  ],
});
