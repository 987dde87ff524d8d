import { ruleSet } from '../../engine/define/looked-at';
import { gather } from '../../engine/define/topic';
import { bank } from '../../trade/battery/bank';
import { blower } from '../../trade/battery/blower';
import { charging } from '../../trade/battery/charging';
import { day } from '../../trade/battery/day';
import { freeze } from '../../trade/battery/freeze';
import { hours } from '../../trade/battery/hours';
import { loads } from '../../trade/battery/loads';
import { reading } from '../../trade/battery/reading';
import { stateOfCharge } from '../../trade/battery/state-of-charge';
import { usable } from '../../trade/battery/usable';
import { voltageTables } from '../../trade/battery/voltage-tables';
import { wire } from '../../trade/battery/wire';
import { lithiumCold, makersManual } from '../../trade/bibliography/battery';
import { custom } from '../../trade/bibliography/common';
import { furnace } from '../../trade/heat/furnace';
import { loss } from '../../trade/heat/loss';
import { shell } from '../../trade/heat/shell';
import { askings, called } from './asked';
import { assumed, assumptions } from './assumed';
import { blowerHours } from './blower-hours';
import { care } from './care';
import { changes } from './changes';
import { curve } from './curve';
import { deadCell } from './dead-cell';
import { everybody } from './everybody';
import { how } from './how';
import { lithium } from './lithium';
import { recharge } from './recharge';
import { steady } from './steady';
import { storage } from './storage';

/** In the order in which limits are listed. */
const parts = [
  bank,
  voltageTables,
  usable,
  reading,
  stateOfCharge,
  freeze,
  loads,
  shell,
  loss,
  furnace,
  blower,
  charging,
  hours,
  day,
  steady,
  blowerHours,
  recharge,
  wire,
  care,
  deadCell,
  lithium,
  storage,
  curve,
  assumed,
] as const;

/** How full is the battery, will it carry the day, and are charger, wire and fuse right for it? */
export const houseBattery = ruleSet({
  id: 'house-battery',
  version: '6.0.1',
  title: 'House battery',
  question:
    'How full is the house battery, will it carry the day, and are charger, wire and fuse right for it?',
  facts: gather('facts', parts),
  parameters: gather('parameters', parts),
  tables: gather('tables', parts),
  wordTables: gather('wordTables', parts),
  formulas: gather('formulas', parts),
  simulations: gather('simulations', parts),
  decisions: gather('decisions', parts),
  limits: gather('limits', parts),
  findings: gather('findings', parts),
  outcomes: {
    ok: { id: 'will-do', words: 'will do', sentence: 'The battery setup will do.' },
    if: { id: 'will-do-if', words: 'will do if', sentence: 'The battery setup will do' },
    care: {
      id: 'will-do-with-care',
      words: 'will do with care',
      sentence: 'The battery setup will do, with care.',
      plain: 'The battery setup will do',
    },
    stop: {
      id: 'will-not-do',
      words: 'will not do',
      sentence: 'The battery setup will not do as it is.',
    },
    unknown: { id: 'cannot-say', words: 'cannot say', sentence: 'That cannot be said yet.' },
  },
  apart: {},
  headline: [
    'battery.stateOfCharge',
    'bank.volts',
    'bank.capacity',
    'battery.available',
    'battery.usable',
    'battery.usableEnergy',
    'stop.voltage',
    'day.loadEnergy',
    'day.ampHours',
    'day.offered',
    'battery.days',
    'steady.current',
    'steady.hoursToEmpty',
    'steady.hoursToStop',
    'furnace.blowerHours',
    'furnace.clockHours',
    'recharge.hours',
    'wire.drop',
    'wire.longest',
    'monitor.voltage',
    'inverter.current',
    'storage.lasts',
  ],
  assumptions,
  renamed: {
    'charge.equalise': 'charge.equalize',
    'charge.equaliseAllowed': 'charge.equalizeAllowed',
  },
  changes,
  askings,
  everybody,
  how,
  called,
  cautions: [
    {
      says: 'Disconnect and fuse before work, minus first; a short circuit across a battery burns.',
      source: custom,
      fits: [
        'limit.wire',
        'limit.fuse',
        'finding.fuse-at-battery',
        'limit.interrupting',
        'finding.main-fuse',
        'finding.half-voltage',
      ],
    },
    {
      says: 'Flooded batteries give off hydrogen: vent them, no spark or flame, eyes and hands covered.',
      source: makersManual,
      fits: [
        'battery.chemistry!=lifepo4',
        'finding.vent',
        'limit.charge-voltage',
        'limit.recharge',
        'finding.dead-cell',
      ],
    },
    {
      says: 'Never equalize AGM or gel unless the maker says so.',
      source: makersManual,
      fits: ['finding.equalize', 'finding.charger-setting'],
    },
    {
      says: 'A discharged lead battery freezes and splits; never charge a frozen one.',
      source: custom,
      fits: ['finding.freeze', 'limit.storage'],
    },
    {
      says: 'Never charge LiFePO₄ with cells below freezing.',
      source: lithiumCold,
      fits: ['finding.cold-charge', 'finding.too-cold', 'finding.alternator'],
    },
    {
      says: '120 volts, inverter feeds and transfer switches are for a licensed electrician, by the local code.',
      source: custom,
      fits: [
        'limit.inverter',
        'limit.inverter-start',
        'limit.discharge-current',
        'finding.current-untold',
      ],
    },
    {
      says: 'What keeps somebody warm or well stays on; everything else goes off before it.',
      source: custom,
      fits: ['limit.day', 'limit.steady-run', 'finding.day-balance'],
    },
    {
      says: 'The manuals of that very battery, charger and inverter win; this is advice, not approval.',
      source: makersManual,
    },
  ],
});
