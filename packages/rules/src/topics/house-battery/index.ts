import { defineTopic, gather } from '../../engine/define/topic';
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
import { assumed, assumptions } from './assumed';
import { care } from './care';
import { changes } from './changes';
import { curve } from './curve';
import { recharge } from './recharge';
import { steady } from './steady';

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
  recharge,
  wire,
  care,
  curve,
  assumed,
] as const;

/** How full is the battery, will it carry the day, and are charger, wire and fuse right for it? */
export const houseBattery = defineTopic({
  id: 'house-battery',
  version: '2.0.0',
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
    ok: { id: 'will-do', words: 'will do', sentence: 'It will do.' },
    if: { id: 'will-do-if', words: 'will do if', sentence: 'It will do' },
    care: {
      id: 'will-do-with-care',
      words: 'will do with care',
      sentence: 'It will do, with care.',
    },
    stop: { id: 'will-not-do', words: 'will not do', sentence: 'It will not do.' },
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
    'recharge.hours',
    'wire.drop',
    'wire.longest',
    'monitor.voltage',
  ],
  assumptions,
  changes,
  cautions: [
    {
      says: 'The manuals of that very battery, charger and inverter win over this sheet; this is advice, not approval.',
      source: makersManual,
    },
    {
      says: 'Disconnect and fuse before work, minus first; a short circuit across a battery burns.',
      source: custom,
    },
    {
      says: 'Flooded batteries give off hydrogen: vent them, no spark or flame, eyes and hands covered.',
      source: makersManual,
    },
    {
      says: 'Never equalise AGM or gel unless the maker says so.',
      source: makersManual,
    },
    {
      says: 'A discharged lead battery freezes and splits; never charge a frozen one.',
      source: custom,
    },
    {
      says: 'Never charge LiFePO₄ with cells below freezing.',
      source: lithiumCold,
    },
    {
      says: 'Mains wiring, inverter feeds and transfer switches are for a licensed electrician, by the local code.',
      source: custom,
    },
  ],
});
