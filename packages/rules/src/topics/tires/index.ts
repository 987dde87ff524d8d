import { ruleSet } from '../../engine/define/looked-at';
import { gather } from '../../engine/define/topic';
import { standingOn } from '../../engine/formula/standing-on';
import { custom } from '../../trade/bibliography/common';
import { makersRating, tireAge } from '../../trade/bibliography/tires';
import { rigTrade } from '../../trade/rig/index';
import { age } from '../../trade/tires/age';
import { tireFacts, upgradeFacts, wheelFacts } from '../../trade/tires/facts';
import { speed } from '../../trade/tires/speed';
import { askings } from './asked';
import { called } from './called';
import { capacity } from './capacity';
import { changes } from './changes';
import { everybody } from './everybody';
import { pressureFacts } from './facts-pressure';
import { how } from './how';
import { load } from './load';
import { pressure } from './pressure';
import { upgraded } from './upgrade';

/** The rig, asked and reckoned as for towing. */
const rig = standingOn(
  rigTrade,
  'axle.trailer',
  'axle.front',
  'axle.rear',
  'tire.trailerIsPassenger',
);

const borrowed = {
  facts: {
    'vehicle.dualRearWheels': rigTrade.facts['vehicle.dualRearWheels'],
    'vehicle.tireCapacityFront': rigTrade.facts['vehicle.tireCapacityFront'],
    'vehicle.tireCapacityRear': rigTrade.facts['vehicle.tireCapacityRear'],
    'vehicle.tireKind': rigTrade.facts['vehicle.tireKind'],
    'trailer.axles': rigTrade.facts['trailer.axles'],
    'trailer.tireCapacity': rigTrade.facts['trailer.tireCapacity'],
  },
  parameters: {
    'margin.other': rigTrade.parameters['margin.other'],
    'tire.imbalance': rigTrade.parameters['tire.imbalance'],
  },
};

const parts = [
  tireFacts,
  wheelFacts,
  pressureFacts,
  upgradeFacts,
  rig,
  borrowed,
  load,
  capacity,
  pressure,
  speed,
  age,
  upgraded,
] as const;

/** Are these tires up to what they carry, how fast, at what pressure, and how old are they? */
export const tires = ruleSet({
  id: 'tires',
  version: '6.0.2',
  title: 'Tires',
  question:
    'Are these tires up to the load, the speed and the pressure they run at, and are they young enough?',
  facts: gather('facts', parts),
  parameters: gather('parameters', parts),
  tables: gather('tables', parts),
  wordTables: gather('wordTables', parts),
  formulas: gather('formulas', parts),
  limits: gather('limits', parts),
  findings: gather('findings', parts),
  decisions: gather('decisions', parts),
  simulations: gather('simulations', parts),
  outcomes: {
    ok: { id: 'will-do', words: 'will do', sentence: 'The tires will do.' },
    if: { id: 'will-do-if', words: 'will do if', sentence: 'The tires will do' },
    care: {
      id: 'will-do-with-care',
      words: 'will do with care',
      sentence: 'The tires will do, with care.',
      plain: 'The tires will do',
    },
    stop: {
      id: 'will-not-do',
      words: 'will not do',
      sentence: 'The tires will not do; do not drive so.',
    },
    unknown: { id: 'cannot-say', words: 'cannot say', sentence: 'That cannot be said yet.' },
  },
  apart: {},
  tells: [{ of: 'pressure.needed', says: 'This load takes {of}, cold.' }],
  headline: [
    'tire.load',
    'tire.capacity',
    'tire.reserve',
    'pressure.needed',
    'pressure.allows',
    'speed.allowed',
    'tire.age',
    'upgrade.reserve',
    'upgrade.room',
  ],
  assumptions: [
    {
      when: 'pressure.takenAsCold',
      says: 'The pressure counts as read cold; that was not told.',
      source: custom,
    },
  ],
  changes,
  askings,
  everybody,
  how,
  called,
  cautions: [
    {
      says: 'Pressures are cold pressures; never let air out of a warm tire, and never fill over the sidewall or the wheel.',
      source: makersRating,
      fits: [
        'finding.under-inflated',
        'finding.pressure-over',
        'finding.pressure-warm',
        'limit.pressure-load',
      ],
    },
    {
      says: 'The slowest-rated tire of the rig, the spare included, sets the speed.',
      source: custom,
      fits: ['limit.speed', 'tire.slowestOther'],
    },
    {
      says: 'A cut, a bulge, cracks or cords to be seen end a tire, whatever these sums say.',
      source: tireAge,
      fits: ['finding.age', 'finding.date-code', 'tire.codeYear'],
    },
    {
      says: 'The label and the manual of that very vehicle or trailer, and the tire maker’s tables, decide; have tires fitted by a tire shop.',
      source: makersRating,
    },
    {
      says: 'Weigh the loaded rig, wheel by wheel if you can: a side may carry far more than its half.',
      source: custom,
      fits: ['limit.tire-load', 'finding.wheel-below'],
    },
  ],
});
