import { ruleSet } from '../../engine/define/looked-at';
import { gather } from '../../engine/define/topic';
import { standingOn } from '../../engine/formula/standing-on';
import { custom, partsRating as makersRating } from '../../trade/bibliography/common';
import { lifting, retorque } from '../../trade/bibliography/spares-kit';
import { rigTrade } from '../../trade/rig/index';
import { tireTrade } from '../../trade/tires/index';
import { askings } from './askings';
import { called } from './called';
import { changes } from './changes';
import { everybody } from './everybody';
import { liftFacts, spareFacts, tripFacts } from './facts';
import { how } from './how';
import { leave } from './leave';
import { lift } from './lifting';
import { list } from './list';
import { needs } from './needs';
import { spare } from './spare';
import { stowed } from './stowed';
import { thingWeights } from './things';

/** The rig, asked and reckoned as for towing: the kit stands on what that leaves. */
const rig = standingOn(
  rigTrade,
  'payload.used',
  'payload.available',
  'trailer.loaded',
  'tongue.loaded',
  'tongue.limit',
  'tongue.lowEdge',
  'tongue.highEdge',
  'axle.trailer',
);

const borrowed = {
  facts: {
    'trailer.axles': rigTrade.facts['trailer.axles'],
    'trailer.gvwr': rigTrade.facts['trailer.gvwr'],
    'trailer.tireCapacity': rigTrade.facts['trailer.tireCapacity'],
    'trailer.ballToAxle': rigTrade.facts['trailer.ballToAxle'],
    'tire.kind': tireTrade.facts['tire.kind'],
  },
  parameters: {
    'margin.other': rigTrade.parameters['margin.other'],
    'margin.least': rigTrade.parameters['margin.least'],
    'tire.imbalance': rigTrade.parameters['tire.imbalance'],
    'code.from': tireTrade.parameters['code.from'],
    'year.one': tireTrade.parameters['year.one'],
    'year.weeks': tireTrade.parameters['year.weeks'],
    'week.first': tireTrade.parameters['week.first'],
    'week.last': tireTrade.parameters['week.last'],
    'age.none': tireTrade.parameters['age.none'],
    'age.trailerCare': tireTrade.parameters['age.trailerCare'],
    'age.trailerReplace': tireTrade.parameters['age.trailerReplace'],
  },
};

const parts = [
  tripFacts,
  liftFacts,
  spareFacts,
  rig,
  borrowed,
  needs,
  thingWeights,
  list,
  stowed,
  lift,
  spare,
  leave,
] as const;

/** What should come along on this trip, is it strong enough, and is there weight left for it? */
export const sparesKit = ruleSet({
  id: 'spares-kit',
  version: '4.1.0',
  title: 'Spares and tools',
  question:
    'Which spares and tools should come along, will they lift this trailer, and is there weight left for them where they ride?',
  facts: gather('facts', parts),
  parameters: gather('parameters', parts),
  tables: {},
  formulas: gather('formulas', parts),
  limits: gather('limits', parts),
  findings: gather('findings', parts),
  decisions: gather('decisions', parts),
  selections: gather('selections', parts),
  rankings: gather('rankings', parts),
  outcomes: {
    ok: { id: 'can-come', words: 'can come', sentence: 'What you carry along will do.' },
    if: { id: 'can-come-if', words: 'can come if', sentence: 'What you carry along will do' },
    care: {
      id: 'can-come-with-care',
      words: 'can come with care',
      sentence: 'What you carry along will do, with care.',
      plain: 'What you carry along will do',
    },
    stop: {
      id: 'cannot-come-so',
      words: 'cannot come so',
      sentence: 'What you carry along will not do as it is.',
    },
    unknown: { id: 'cannot-say', words: 'cannot say', sentence: 'That cannot be said yet.' },
  },
  apart: {},
  tells: [{ of: 'kit.weight', says: 'The kit weighs {of}.' }],
  headline: [
    'kit.weight',
    'kit.onBall',
    'stowed.payload',
    'stowed.trailer',
    'stowed.tongue',
    'stowed.share',
    'side.load',
    'spare.load',
    'spare.age',
    'kit.over',
    'leave.most',
  ],
  assumptions: [],
  changes,
  askings,
  everybody,
  how,
  called,
  cautions: [
    {
      says: 'Stay hitched, chock the wheels on the other side both ways, and let no one stay inside or reach below. A jack lifts; a stand holds.',
      source: lifting,
      fits: ['limit.lift', 'limit.stand', 'limit.ramp-tire'],
    },
    {
      says: 'Lift only where the trailer’s maker allows, never at an axle or a torsion tube, and never with corner stabilizers.',
      source: lifting,
      fits: ['finding.lifting', 'limit.lift-height', 'limit.lift-under'],
    },
    {
      says: 'Tighten the wheel nuts to the maker’s figure, and again after {retorque.first}, {retorque.second} and {retorque.third}, or as the maker says.',
      source: retorque,
      fits: ['finding.socket', 'finding.spare-there', 'limit.spare', 'finding.spare-age'],
    },
    {
      says: 'Stand away from traffic, and call for help where the shoulder is narrow, soft or steep.',
      source: custom,
    },
    {
      says: 'The manuals of trailer, tires and jack decide; weigh the loaded rig.',
      source: makersRating,
      fits: ['limit.payload', 'limit.trailer-gross', 'limit.tongue', 'finding.tongue-share'],
    },
  ],
});
