import { ruleSet } from '../../engine/define/looked-at';
import { quietly } from '../../engine/define/quietly';
import { gather } from '../../engine/define/topic';
import { standingOn } from '../../engine/formula/standing-on';
import { furnaceAssumptions } from '../../trade/battery/blower';
import { batteryTrade } from '../../trade/battery/index';
import { custom, house } from '../../trade/bibliography/common';
import { drains, manual, statics } from '../../trade/bibliography/off-grid-stay';
import { alarmAssumptions, alarms } from '../../trade/gas/alarms';
import { gasTrade } from '../../trade/gas/index';
import { heatTrade } from '../../trade/heat/index';
import { rigTrade } from '../../trade/rig/index';
import { stay, tanks } from '../../trade/water/tanks';
import { askings, called } from './asked';
import { changes } from './changes';
import { energy } from './energy';
import { everybody } from './everybody';
import { first } from './first';
import { frost } from './frost';
import { how } from './how';
import { load } from './load';
import { water } from './water';

/** The trailer on the road, asked and reckoned as for towing. */
const rig = standingOn(rigTrade, 'trailer.loaded', 'tongue.lowEdge', 'tongue.stopEdge');

/** The battery over a day, hour by hour. */
const battery = standingOn(
  batteryTrade,
  'assumed.furnaceHours',
  'assumed.furnaceShare',
  'assumed.furnaceBoth',
  'battery.cells',
  'day.offered',
  'day.loss',
  'day.tolerance',
  'day.deepest',
  'battery.usable',
  'start.charge',
  'stop.charge',
);

/** What gas is on board, and what burns. */
const gas = standingOn(
  gasTrade,
  'gas.daily',
  'gas.counted',
  'gas.neededPounds',
  'demand.isListed',
  'cylinder.full',
  'cylinder.isTold',
  'tank.isTold',
  'assumed.cylinderFull',
);

/** What freezes below the floor while it is cold. */
const cold = standingOn(heatTrade, 'freezes.tanks', 'freezes.outside');

const borrowed = {
  facts: { 'trailer.gvwr': rigTrade.facts['trailer.gvwr'] },
  parameters: {
    'margin.other': rigTrade.parameters['margin.other'],
    'margin.least': rigTrade.parameters['margin.least'],
    'margin.battery': batteryTrade.parameters['margin.battery'],
    'margin.gas': gasTrade.parameters['margin.gas'],
  },
  formulas: {
    'assumed.weekend': {
      label: 'Nobody said for how long they stay',
      unit: 'yes-no',
      is: '!given(stay.days) && !given(trip.nights)',
      source: house,
    },
    'assumed.tanks': {
      label: 'Nobody said how full the tanks are',
      unit: 'yes-no',
      is: '!given(trailer.freshWater, trailer.grayWater, trailer.blackWater)',
      source: custom,
    },
    'assumed.noneThere': {
      label: 'Nobody said whether water is to be had on arrival',
      unit: 'yes-no',
      is: 'given(water.daily) && given(trailer.freshWater) && !given(water.onArrival)',
      source: custom,
    },
    'assumed.battery': {
      label: 'Not all was said of the battery',
      unit: 'yes-no',
      is: 'given(battery.capacity) && !given(battery.volts, bank.series, bank.parallel, battery.temperature, battery.health)',
      source: custom,
    },
    'assumed.load': {
      label: 'The trailer’s weight is spoken of',
      unit: 'yes-no',
      is: 'given(trailer.dryWeight)',
      source: statics,
    },
  },
} as const;

const parts = [
  rig,
  battery,
  gas,
  alarms,
  borrowed,
  tanks,
  stay,
  water,
  energy,
  cold,
  frost,
  first,
  load,
] as const;

/** How many days without hookups, what ends them, and what stretches them? */
export const offGridStay = ruleSet({
  id: 'off-grid-stay',
  version: '7.0.2',
  title: 'Off-grid stay',
  question:
    'How many days without hookups, what runs out or is full first, and what stretches it most?',
  facts: { ...gather('facts', parts), ...quietly(rig.facts) },
  parameters: gather('parameters', parts),
  tables: { ...battery.tables, ...gas.tables },
  wordTables: { ...battery.wordTables, ...gas.wordTables },
  formulas: gather('formulas', parts),
  simulations: battery.simulations ?? {},
  rankings: gather('rankings', parts),
  limits: gather('limits', parts),
  findings: gather('findings', parts),
  outcomes: {
    ok: {
      id: 'lasts-the-stay',
      words: 'lasts the stay',
      sentence: 'Supplies and tanks last the stay.',
    },
    if: {
      id: 'lasts-the-stay-if',
      words: 'lasts the stay if',
      sentence: 'Supplies and tanks last the stay',
    },
    care: {
      id: 'lasts-with-care',
      words: 'lasts with care',
      sentence: 'Supplies and tanks last the stay, with care.',
      plain: 'Supplies and tanks last the stay',
    },
    stop: {
      id: 'does-not-last',
      words: 'does not last',
      sentence: 'The stay does not work so.',
    },
    unknown: { id: 'cannot-say', words: 'cannot say', sentence: 'That cannot be said yet.' },
  },
  apart: {},
  headline: [
    'stay.longest',
    'fresh.days',
    'gray.days',
    'black.lasts',
    'battery.lasts',
    'battery.loss',
    'gas.lasts',
    'trailer.arriving',
    'trailer.leaving',
    'tongue.leaving',
  ],
  assumptions: [
    ...alarmAssumptions,
    { when: 'assumed.weekend', says: 'Where not told: a stay of {stay.counted}.', source: house },
    {
      when: 'assumed.tanks',
      says: 'Where not told: the fresh tank starts full, gray and black start empty.',
      source: custom,
    },
    {
      when: 'assumed.noneThere',
      says: 'No drinking water is to be had where you stay: what is carried there is all there is.',
      source: custom,
    },
    {
      when: 'assumed.battery',
      says: 'Where not told: one battery of {battery.volts}, its cells at {battery.cells}, full, with the capacity on its label.',
      source: custom,
    },
    ...furnaceAssumptions,
    {
      when: 'assumed.load',
      says: 'In the trailer nothing is counted but what was told.',
      source: statics,
    },
  ],
  changes,
  askings,
  everybody,
  how,
  called,
  cautions: [
    {
      says: 'Keep drinking water apart for the last day; a gauge on a tank shows thirds.',
      source: drains,
      fits: ['limit.fresh-water', 'water.daily', 'water.freshTank'],
    },
    {
      says: 'Gray and black water go to a dump station, never onto the ground, whatever others do.',
      source: manual,
      fits: ['limit.gray-tank', 'limit.black-tank', 'finding.gray-before-fresh'],
    },
    {
      says: 'Tanks are loads: full there and full home, they go into the trailer’s weight and onto its tongue.',
      source: statics,
      fits: ['limit.arriving', 'limit.leaving', 'finding.tongue-home'],
    },
    {
      says: 'A lead battery below half is aged for good; leave the furnace a reserve on a cold night.',
      source: custom,
      fits: ['limit.battery', 'limit.night', 'finding.blower-untold'],
    },
    {
      says: 'Run a generator well away and downwind, and have carbon monoxide and gas alarms that work; gas burners never heat a sleeping space.',
      source: manual,
      fits: ['limit.gas', 'finding.alarms', 'charging.spells'],
    },
    {
      says: 'In frost the furnace stays on while there is water aboard; what is saved is never the heat.',
      source: custom,
      fits: ['finding.frost-aboard'],
    },
    {
      says: 'This is advice, not approval: gauges, scale and the makers’ manuals win.',
      source: manual,
    },
  ],
});
