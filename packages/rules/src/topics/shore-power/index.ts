import { ruleSet } from '../../engine/define/looked-at';
import { gather } from '../../engine/define/topic';
import { custom, house, manual } from '../../trade/bibliography/common';
import { exhaust, lowVolts, neutralSigns, outlets } from '../../trade/bibliography/power';
import { loads } from '../../trade/power/loads';
import { supply } from '../../trade/power/supply';
import { askings, called } from './asked';
import { changes } from './changes';
import { cord } from './cord';
import { everybody } from './everybody';
import { generator } from './generator';
import { how } from './how';
import { signs } from './signs';
import { voltages } from './voltages';

const parts = [supply, loads, cord, generator, voltages, signs] as const;

/** What is seen and felt is told before what is reckoned. */
const told = [signs, ...parts] as const;

/** What may run together on this supply, and may it be plugged in at all? */
export const shorePower = ruleSet({
  id: 'shore-power',
  version: '4.1.1',
  title: 'Shore power',
  question: 'May the trailer be plugged in here, and what may run at the same time?',
  facts: gather('facts', parts),
  parameters: gather('parameters', parts),
  tables: {},
  wordTables: gather('wordTables', parts),
  formulas: gather('formulas', parts),
  decisions: gather('decisions', parts),
  limits: gather('limits', parts),
  findings: gather('findings', told),
  outcomes: {
    ok: { id: 'may-run', words: 'may run', sentence: 'You may run the trailer so.' },
    if: { id: 'may-run-if', words: 'may run if', sentence: 'You may run the trailer so' },
    care: {
      id: 'may-run-with-care',
      words: 'may run with care',
      sentence: 'You may run the trailer so, with care.',
      plain: 'You may run the trailer so',
    },
    stop: { id: 'must-not-run', words: 'must not run', sentence: 'Do not run the trailer so.' },
    unknown: { id: 'cannot-say', words: 'cannot say', sentence: 'That cannot be said yet.' },
  },
  apart: {},
  headline: [
    'leg.rating',
    'supply.power',
    'supply.lasting',
    'load.power',
    'legOne.current',
    'legTwo.current',
    'leg.fuller',
    'leg.counted',
    'leg.left',
    'airConditioner.most',
    'cord.drop',
    'voltage.trailer',
    'generator.available',
    'start.power',
  ],
  assumptions: [
    {
      when: 'assumed.lasting',
      says: 'What has no hours told runs three hours and more.',
      source: house,
    },
    {
      when: 'assumed.alone',
      says: 'Nothing else draws on that household circuit.',
      source: house,
    },
    {
      when: 'assumed.oneVoltage',
      says: 'The generator gives 120 V only, so all of its power on one leg.',
      source: house,
    },
    {
      when: 'assumed.seaLevel',
      says: 'The generator stands near sea level.',
      source: house,
    },
  ],
  changes,
  askings,
  everybody,
  how,
  called,
  renamed: { 'trip.altitude': 'generator.altitude' },
  cautions: [
    {
      says: 'A 30 A trailer inlet is 120 V. An outlet for a dryer looks alike, gives 240 V, and destroys what is plugged in.',
      source: outlets,
      fits: ['finding.outlet', 'supply.outlet'],
    },
    {
      says: 'A tingle at the door or the skin: keep everyone off, breaker off at the site first.',
      source: custom,
      fits: ['finding.hot-skin'],
    },
    {
      says: 'Lights that brighten as others dim mean an open neutral: unplug.',
      source: neutralSigns,
      fits: ['finding.open-neutral'],
    },
    {
      says: 'Low voltage burns compressors: read the voltage with everything running.',
      source: lowVolts,
      fits: [
        'skin.tingles!=yes',
        'lights.brighten!=yes',
        'finding.low-voltage',
        'voltage.outlet',
        'limit.cord-drop',
      ],
    },
    {
      says: 'Run a generator in the open air only, {20 ft} from any opening, and have a carbon monoxide alarm that works.',
      source: exhaust,
      fits: ['limit.generator', 'limit.generator-start', 'generator.power'],
    },
    {
      says: 'Never feed a house from a generator or a trailer through an outlet.',
      source: manual,
      fits: ['finding.backfeed'],
    },
    {
      says: 'Test the outlet before you plug in; breaker off while you plug; cords uncoiled, whole and dry.',
      source: manual,
      fits: [
        'finding.cord-breaker',
        'finding.outlet-tester',
        'limit.cord',
        'limit.cord-lasting',
        'finding.hot-plug',
        'limit.leg',
        'limit.lasting-load',
      ],
    },
    {
      says: 'Work on outlets, breakers and wiring is for a licensed electrician by the local code; data plates and manuals win; this is advice, not approval.',
      source: manual,
    },
  ],
});
