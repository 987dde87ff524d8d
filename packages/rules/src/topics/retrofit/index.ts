import { ruleSet } from '../../engine/define/looked-at';
import { quietly } from '../../engine/define/quietly';
import { gather } from '../../engine/define/topic';
import { standingOn } from '../../engine/formula/standing-on';
import { batteryTrade } from '../../trade/battery/index';
import { wireAssumptions } from '../../trade/battery/wire';
import { custom, partsRating as makersRating } from '../../trade/bibliography/common';
import { drains } from '../../trade/bibliography/off-grid-stay';
import { trades, unplaced, warrantyBooklet } from '../../trade/bibliography/retrofit';
import { rigTrade } from '../../trade/rig/index';
import { stay, tanks } from '../../trade/water/tanks';
import { addon } from './addon';
import { askings } from './askings';
import { called } from './called';
import { chain } from './chain';
import { changes } from './changes';
import { energy } from './energy';
import { everybody } from './everybody';
import { fitting } from './fitting';
import { how } from './how';
import { mains } from './mains';
import { mount } from './mount';
import { paper } from './paper';
import { water } from './water';
import { weight } from './weight';

/** The rig as it stands, asked and reckoned as for towing. */
const rig = standingOn(
  rigTrade,
  'trailer.loaded',
  'tongue.loaded',
  'tongue.share',
  'tongue.lowEdge',
  'tongue.highEdge',
  'tongue.limit',
  'axle.trailer',
  'bars.active',
  'bars.ontoTrailer',
  'trailerAxles.limit',
  'payload.used',
  'payload.available',
);

/** The battery as it stands, asked and reckoned by itself. */
const battery = standingOn(
  batteryTrade,
  'bank.volts',
  'bank.blocks',
  'battery.usable',
  'battery.depth',
  'battery.temperatureFactor',
  'day.ampHours',
  'day.offered',
  'wire.perFoot',
  'wire.dropAllowed',
  'wire.ampacity',
  'assumed.wireCarries',
  'assumed.wireResists',
);

const borrowed = {
  facts: {
    'trailer.gvwr': rigTrade.facts['trailer.gvwr'],
    'wire.length': batteryTrade.facts['wire.length'],
  },
  parameters: {
    'margin.other': rigTrade.parameters['margin.other'],
    'margin.least': rigTrade.parameters['margin.least'],
    'propane.place': rigTrade.parameters['propane.place'],
    'time.day': batteryTrade.parameters['time.day'],
    'solar.derate': batteryTrade.parameters['solar.derate'],
    'solar.blockVolts': batteryTrade.parameters['solar.blockVolts'],
  },
  formulas: {
    'assumed.battery': {
      label: 'Not all was said of the battery',
      unit: 'yes-no',
      is: 'given(battery.capacity) && !given(battery.volts, bank.series, bank.parallel, battery.temperature, battery.health)',
      source: custom,
    },
    'assumed.load': {
      label: 'Weight is spoken of, and not all of the load',
      unit: 'yes-no',
      is: 'given(addon.weight) || given(addon.carries)',
      source: custom,
    },
    'assumed.place': {
      label: 'Its weight was told and not its place',
      unit: 'yes-no',
      is: '(given(addon.weight) || given(addon.carries)) && !given(addon.ahead)',
      source: unplaced,
    },
    'assumed.weekend': {
      label: 'Nobody said for how long they stay',
      unit: 'yes-no',
      is: 'given(addon.waterDaily) && !given(stay.days)',
      source: custom,
    },
    'assumed.drained': {
      label: 'Nobody said what part of the water goes down the sink',
      unit: 'yes-no',
      is: 'given(water.grayTank) && !given(water.grayShare)',
      source: custom,
    },
  },
} as const;

const parts = [
  rig,
  battery,
  borrowed,
  addon,
  fitting,
  mount,
  weight,
  energy,
  mains,
  chain,
  tanks,
  stay,
  water,
  paper,
] as const;

/** May this be added, who may fit it, and what does it do to weight, battery and tanks? */
export const retrofit = ruleSet({
  id: 'retrofit',
  version: '6.0.1',
  title: 'Add-ons and retrofits',
  question:
    'May this be added, who may fit it, and what does it do to tongue, axles, battery, circuit and tanks?',
  facts: { ...gather('facts', parts), ...quietly(rig.facts), ...quietly(tanks.facts) },
  parameters: gather('parameters', parts),
  tables: battery.tables ?? {},
  wordTables: battery.wordTables ?? {},
  formulas: gather('formulas', parts),
  decisions: gather('decisions', parts),
  simulations: battery.simulations ?? {},
  limits: gather('limits', parts),
  findings: gather('findings', parts),
  outcomes: {
    ok: { id: 'can-be-added', words: 'can be added', sentence: 'What you want can be added.' },
    if: { id: 'can-be-added-if', words: 'can be added if', sentence: 'What you want can be added' },
    care: {
      id: 'can-be-added-with-care',
      words: 'can be added with care',
      sentence: 'What you want can be added, with care.',
      plain: 'What you want can be added',
    },
    stop: {
      id: 'not-to-be-added-so',
      words: 'must not be added so',
      sentence: 'What you want must not be added so.',
    },
    unknown: { id: 'cannot-say', words: 'cannot say', sentence: 'That cannot be said yet.' },
  },
  apart: {},
  headline: [
    'fitting.needs',
    'added.weight',
    'added.tongue',
    'tongue.after',
    'share.after',
    'cargo.left',
    'mount.load',
    'added.ampHours',
    'energy.after',
    'usable.after',
    'energy.days',
    'chain.current',
    'circuit.load',
    'fresh.daysAfter',
    'gray.daysAfter',
    'black.daysAfter',
    'warranty.left',
  ],
  assumptions: [
    ...wireAssumptions,
    {
      when: 'assumed.battery',
      says: 'Where not told: one 12-volt battery at 80 °F that still has the capacity on its label.',
      source: custom,
    },
    {
      when: 'assumed.load',
      says: 'In trailer and tow vehicle nothing is counted but what was told.',
      source: custom,
    },
    {
      when: 'assumed.weekend',
      says: 'Where not told: a stay of two days.',
      source: custom,
    },
    {
      when: 'assumed.place',
      says: 'Where not told: what hangs behind hangs anywhere from the axles to as far behind them as the ball is ahead; anything else rides somewhere in the body.',
      source: unplaced,
    },
    {
      when: 'assumed.drained',
      says: 'Most of the water goes down sink and shower, as the house reckons.',
      source: drains,
    },
  ],
  changes,
  askings,
  everybody,
  how,
  called,
  cautions: [
    {
      says: 'Gas and 120 volts are for licensed trades, by the local code; structure only by the trailer maker’s drawing.',
      source: trades,
      fits: ['finding.fitting', 'finding.gas-connection', 'finding.outlet', 'limit.circuit'],
    },
    {
      says: 'The manuals of that very trailer and add-on win; this is advice, not approval.',
      source: makersRating,
    },
    {
      says: 'Weigh trailer and tongue once it is fitted and loaded; nothing that hangs behind goes unnoticed by the ball.',
      source: custom,
      fits: [
        'finding.tongue-lightened',
        'finding.tongue-untold',
        'limit.tongue',
        'limit.mount',
        'finding.unrated',
      ],
    },
    {
      says: 'Take the battery off, minus first, before you touch a wire. The fuse is no larger than the wire, and close to the battery.',
      source: custom,
      fits: [
        'finding.chain',
        'finding.fuse-at-battery',
        'limit.wire',
        'limit.fuse',
        'limit.voltage-drop',
        'limit.battery-day',
        'finding.day-balance',
      ],
    },
    {
      says: 'Every hole in roof or wall leaks one day: use the right sealant, and look twice a year.',
      source: custom,
      fits: ['finding.reversible', 'touches.roof'],
    },
    {
      says: 'Ask about the warranty in writing before the work, not after.',
      source: warrantyBooklet,
      fits: ['finding.warranty'],
    },
  ],
});
