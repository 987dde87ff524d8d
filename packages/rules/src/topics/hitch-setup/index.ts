import { ruleSet } from '../../engine/define/looked-at';
import { gather } from '../../engine/define/topic';
import { standingOn } from '../../engine/formula/standing-on';
import { custom, partsRating as makersRating } from '../../trade/bibliography/common';
import { rigTrade } from '../../trade/rig/index';
import { askings } from './asked';
import { ball } from './ball';
import { called } from './called';
import { changes } from './changes';
import { clearance } from './clearance';
import { everybody } from './everybody';
import { barFacts, heightFacts, mountFacts } from './facts';
import { how } from './how';
import { mount } from './mount';
import { ready } from './ready';
import { sag } from './sag';
import { barSetting, springBars } from './spring-bars';
import { toBuy } from './to-buy';

/** The rig, asked and reckoned as for towing. */
const rig = standingOn(
  rigTrade,
  'trailer.loaded',
  'tongue.loaded',
  'bars.ontoFront',
  'bars.ontoTrailer',
  'tongue.isKnown',
  'ballSize.isAsked',
  'ballSize.isKnown',
  'distribution.isTold',
  'permission.isKnown',
  'extension.isAsked',
  'extension.isRated',
  'extension.isMentioned',
  'coupling.isBall',
  'brakes.areKnown',
  'brakes.areNone',
  'brakes.areSurge',
);

const borrowed = {
  facts: {
    'vehicle.wheelbase': rigTrade.facts['vehicle.wheelbase'],
    'load.occupants': rigTrade.facts['load.occupants'],
    'load.cargo': rigTrade.facts['load.cargo'],
    'hitch.hardwareWeight': rigTrade.facts['hitch.hardwareWeight'],
    'trailer.gvwr': rigTrade.facts['trailer.gvwr'],
    'trailer.coupling': rigTrade.facts['trailer.coupling'],
    'trailer.couplerSize': rigTrade.facts['trailer.couplerSize'],
    'hitch.ballSize': rigTrade.facts['hitch.ballSize'],
    'hitch.ballRating': rigTrade.facts['hitch.ballRating'],
    'hitch.mountRating': rigTrade.facts['hitch.mountRating'],
    'hitch.extension': rigTrade.facts['hitch.extension'],
    'hitch.extensionRating': rigTrade.facts['hitch.extensionRating'],
  },
  parameters: {
    'margin.other': rigTrade.parameters['margin.other'],
    'tongue.none': rigTrade.parameters['tongue.none'],
  },
  limits: {
    'ball-mount': rigTrade.limits['ball-mount'],
    ball: rigTrade.limits.ball,
    extension: rigTrade.limits.extension,
  },
  findings: {
    'tongue-negative': {
      ...rigTrade.findings['tongue-negative'],
      askedBy: ['trailer.measuredTongueWeight', 'trailer.dryTongueWeight'],
    },
    'extension-rating': rigTrade.findings['extension-rating'],
    'ball-size': rigTrade.findings['ball-size'],
    'distribution-allowed': rigTrade.findings['distribution-allowed'],
    'surge-bars': rigTrade.findings['surge-bars'],
  },
};

const parts = [
  rig,
  heightFacts,
  mountFacts,
  barFacts,
  borrowed,
  sag,
  mount,
  toBuy,
  ball,
  springBars,
  barSetting,
  clearance,
  ready,
] as const;

/** Which ball mount carries this trailer level behind this vehicle, and will the hitch do as it is set? */
export const hitchSetup = ruleSet({
  id: 'hitch-setup',
  version: '6.0.3',
  title: 'Hitch setup',
  question:
    'Which ball mount carries this trailer level behind this vehicle, loaded for the road, and will the hitch do as it is set?',
  facts: gather('facts', parts),
  parameters: gather('parameters', parts),
  tables: {},
  formulas: gather('formulas', parts),
  decisions: gather('decisions', parts),
  limits: gather('limits', parts),
  findings: gather('findings', parts),
  outcomes: {
    ok: { id: 'will-do', words: 'will do', sentence: 'As told, the hitch will do.' },
    if: { id: 'will-do-if', words: 'will do if', sentence: 'As told, the hitch will do' },
    care: {
      id: 'will-do-with-care',
      words: 'will do with care',
      sentence: 'The hitch will do, with care.',
      plain: 'The hitch will do',
    },
    stop: {
      id: 'must-not-roll',
      words: 'must not roll',
      sentence: 'The rig must not roll as it is.',
    },
    unknown: { id: 'cannot-say', words: 'cannot say', sentence: 'That cannot be said yet.' },
  },
  apart: {},
  tells: [
    {
      of: 'mount.madeDrop',
      when: 'mount.dropsLow',
      says: 'A ball mount with {of} of drop leaves the nose {nose.madeLow} low; level takes {mount.dropNeeded}.',
    },
    {
      of: 'mount.madeDrop',
      when: 'mount.dropsHigh',
      says: 'A ball mount with {of} of drop leaves the nose {nose.madeHigh} high; level takes {mount.dropNeeded}.',
    },
    {
      of: 'mount.madeRise',
      when: 'mount.risesLow',
      says: 'A ball mount with {of} of rise leaves the nose {nose.madeLow} low; level takes {mount.needed}.',
    },
    {
      of: 'mount.madeRise',
      when: 'mount.risesHigh',
      says: 'A ball mount with {of} of rise leaves the nose {nose.madeHigh} high; level takes {mount.needed}.',
    },
  ],
  headline: [
    'mount.way',
    'mount.needed',
    'mount.made',
    'nose.onMade',
    'mount.least',
    'nose.height',
    'receiver.height',
    'receiver.sag',
    'tongue.loaded',
    'bars.wanted',
    'bars.restored',
    'fender.highest',
    'ball.least',
    'turn.room',
    'tailgate.room',
  ],
  assumptions: [
    {
      when: 'brakes.areAssumed',
      says: 'The trailer has brakes that its breakaway cable works.',
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
      says: 'Both makers’ manuals decide how the hitch is set and what it carries; bars raise no rating.',
      source: makersRating,
      fits: ['limit.spring-bars', 'limit.ball', 'limit.ball-mount', 'finding.distribution-allowed'],
    },
    {
      says: 'Every time cross the chains, hook the breakaway cable to its own point, latch and pin the coupler, clip the receiver pin.',
      source: custom,
      fits: [
        'finding.latch',
        'finding.chains',
        'finding.breakaway',
        'finding.ball-size',
        'finding.ball-class',
        'finding.coupler-class',
        'finding.size-unknown',
      ],
    },
    {
      says: 'Torque ball and head by the maker’s table, and again after the first 50 to 100 miles.',
      source: custom,
      fits: ['finding.torque'],
    },
    {
      says: 'Spring bars snap: keep feet and face clear, and raise the tongue with the jack first. Never reach between vehicle and trailer while anything rolls.',
      source: makersRating,
      fits: ['finding.bar-setting', 'finding.bars-strong'],
    },
    {
      says: 'Measure loaded and on level ground, wheels chocked; then drive around the block and measure once more. This is advice, not approval.',
      source: custom,
      fits: [
        'finding.mount-reach',
        'finding.nose-high',
        'finding.nose-low',
        'finding.coupler-height',
        'finding.turning',
        'finding.tailgate',
      ],
    },
  ],
});
