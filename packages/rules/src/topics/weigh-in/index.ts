import { ruleSet } from '../../engine/define/looked-at';
import { gather } from '../../engine/define/topic';
import { standingOn } from '../../engine/formula/standing-on';
import { custom, partsRating as makersRating, statics } from '../../trade/bibliography/common';
import { rigTrade } from '../../trade/rig/index';
import { againstEstimate } from './against-estimate';
import { aloneOver } from './alone-over';
import { askings } from './asked';
import { barsWeighed } from './bars';
import { called } from './called';
import { changes } from './changes';
import { everybody } from './everybody';
import { otherFacts, ticketFacts } from './facts';
import { how } from './how';
import { limits } from './limits';
import { readings } from './readings';
import { sides } from './sides';
import { tickets } from './tickets';
import { weighed } from './weights';

/** The rig as it was estimated for towing, and the ratings that count. */
const rig = standingOn(
  rigTrade,
  'trailer.loaded',
  'tongue.loaded',
  'vehicle.curb',
  'load.aboard',
  'axle.front',
  'axle.rear',
  'tongue.limit',
  'tongue.lowEdge',
  'tongue.stopEdge',
  'tongue.highEdge',
  'trailerWeight.limit',
  'combined.limit',
  'trailerAxles.limit',
);

const borrowed = {
  facts: {
    'vehicle.gvwr': rigTrade.facts['vehicle.gvwr'],
    'vehicle.gawrFront': rigTrade.facts['vehicle.gawrFront'],
    'vehicle.gawrRear': rigTrade.facts['vehicle.gawrRear'],
    'trailer.gvwr': rigTrade.facts['trailer.gvwr'],
  },
  parameters: {
    'margin.other': rigTrade.parameters['margin.other'],
    'margin.least': rigTrade.parameters['margin.least'],
    'margin.towRating': rigTrade.parameters['margin.towRating'],
    'tongue.none': rigTrade.parameters['tongue.none'],
    'front.mostTaken': rigTrade.parameters['front.mostTaken'],
  },
};

const parts = [
  ticketFacts,
  otherFacts,
  rig,
  borrowed,
  readings,
  tickets,
  weighed,
  limits,
  aloneOver,
  barsWeighed,
  againstEstimate,
  sides,
] as const;

/** What do the scale's tickets say of this rig, and which estimate was off? */
export const weighIn = ruleSet({
  id: 'weigh-in',
  version: '7.0.1',
  title: 'Weigh-in',
  question:
    'What do the scale’s tickets say of trailer, tongue and axles, is the rig within its ratings, and which estimate was off?',
  facts: gather('facts', parts),
  parameters: gather('parameters', parts),
  tables: {},
  formulas: gather('formulas', parts),
  limits: gather('limits', parts),
  findings: gather('findings', parts),
  outcomes: {
    ok: { id: 'weighs-in', words: 'weighs in', sentence: 'The rig weighs in.' },
    if: { id: 'weighs-in-if', words: 'weighs in if', sentence: 'The rig weighs in' },
    care: {
      id: 'weighs-in-with-care',
      words: 'weighs in with care',
      sentence: 'The rig weighs in, with care.',
      plain: 'The rig weighs in',
    },
    stop: {
      id: 'does-not-weigh-in',
      words: 'does not weigh in',
      sentence: 'The rig does not weigh in; do not set out so.',
    },
    unknown: { id: 'cannot-say', words: 'cannot say', sentence: 'That cannot be said yet.' },
  },
  apart: {},
  tells: [{ of: 'tongue.weighed', says: 'The tongue weighs {of}.' }],
  headline: [
    'trailer.weighed',
    'tongue.weighed',
    'tongue.apparent',
    'tongue.shareWeighed',
    'axle.frontWeighed',
    'axle.rearWeighed',
    'axle.trailerWeighed',
    'bars.restoredWeighed',
    'bars.momentWeighed',
    'payload.remaining',
    'off.trailer',
    'off.tongue',
    'off.vehicle',
    'off.front',
    'off.rear',
    'side.imbalance',
  ],
  assumptions: [
    {
      when: 'assumed.asDriven',
      says: 'It is driven without bars, as in the one hitched pass that was told.',
      source: statics,
    },
    {
      when: 'assumed.barsRestore',
      says: 'The bars bring back to the front axle no more than it lost; that was not weighed.',
      source: statics,
    },
    {
      when: 'assumed.barsLeave',
      says: 'The bars leave on the rear axle no less than it carries alone; that was not weighed.',
      source: statics,
    },
    {
      when: 'assumed.byDistances',
      says: 'What the bars do is reckoned from two passes and the distances; a pass with slack bars, weighed whole, would show it.',
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
      says: 'Bars come slack only on the scale and at walking pace; set them again before the road.',
      source: makersRating,
      fits: ['finding.restored', 'finding.rear-axle-slack', 'slack.front'],
    },
    {
      says: 'Unhitch on level ground only, the trailer’s wheels chocked before the coupler opens, and no one between vehicle and trailer.',
      source: custom,
      fits: ['finding.ticket-parts'],
    },
    {
      says: 'The hitch stays on the vehicle when it is weighed alone, with the same people and the same fuel.',
      source: custom,
      fits: ['finding.same-load', 'finding.ticket-drift', 'finding.ticket-swapped'],
    },
    {
      says: 'A tongue weight is the difference of two sums of rounded figures: it is rarely known to better than 40 lb either way.',
      source: custom,
      fits: ['finding.tongue-share'],
    },
    {
      says: 'Labels and manuals of that very vehicle and trailer set the limits. This is advice, not approval.',
      source: makersRating,
      fits: [
        'limit.tongue',
        'limit.payload',
        'limit.vehicle-gross',
        'limit.trailer-gross',
        'limit.rear-axle',
      ],
    },
  ],
});
