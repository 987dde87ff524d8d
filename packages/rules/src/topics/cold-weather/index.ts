import { defineTopic, gather } from '../../engine/define/topic';
import { frostCustom } from '../../trade/bibliography/cold-weather';
import { custom, manual } from '../../trade/bibliography/common';
import { assumed, assumptions } from './assumed';
import { battery, gas, rulings } from './borrowed';
import { changes } from './changes';
import { flames } from './flames';
import { frost } from './frost';
import { heat } from './heat';
import { moisture } from './moisture';
import { shell } from './shell';

const parts = [flames, gas, battery, shell, heat, rulings, frost, moisture, assumed] as const;

/** May one stay in the cold: warmth, gas, battery and water? */
export const coldWeather = defineTopic({
  id: 'cold-weather',
  version: '1.0.0',
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
    ok: { id: 'may-stay', words: 'may stay', sentence: 'It may stay.' },
    if: { id: 'may-stay-if', words: 'may stay if', sentence: 'It may stay' },
    care: {
      id: 'may-stay-with-care',
      words: 'may stay with care',
      sentence: 'It may stay, with care.',
    },
    stop: {
      id: 'must-not-stay-so',
      words: 'must not stay so',
      sentence: 'It must not stay so.',
    },
    unknown: { id: 'cannot-say', words: 'cannot say', sentence: 'That cannot be said yet.' },
  },
  apart: {},
  headline: [
    'heat.perDegree',
    'heat.loss',
    'furnace.duty',
    'furnace.gasNight',
    'gas.days',
    'blower.ampHours',
    'battery.usable',
    'battery.nights',
    'vapour.least',
    'vapour.most',
    'window.surface',
    'dew.point',
  ],
  assumptions,
  changes,
  cautions: [
    {
      says: 'Never heat a sleeping space with a stove or a portable heater; only the built-in furnace, its flue and intake free of snow.',
      source: manual,
    },
    {
      says: 'A carbon monoxide alarm and a gas alarm that work, within the dates on their backs. Smell of gas or an alarm: out, then call.',
      source: manual,
    },
    {
      says: 'Never warm a cold cylinder, line or tank with a flame.',
      source: custom,
    },
    {
      says: 'Never charge LiFePO₄ with cells below freezing; a discharged lead battery freezes and splits.',
      source: custom,
    },
    {
      says: 'Only antifreeze made for drinking water goes into the lines; the trailer’s manual says how it is winterised.',
      source: frostCustom,
    },
    {
      says: 'Wind, damp and a night colder than the forecast count against every figure here; this is advice, not approval.',
      source: custom,
    },
  ],
});
