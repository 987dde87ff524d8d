import { defineTopic, gather } from '../../engine/define/topic';
import { standingOn } from '../../engine/formula/standing-on';
import { towFit } from '../tow-fit/index';
import { ball } from './ball';
import { changes } from './changes';
import { clearance } from './clearance';
import { barFacts, heightFacts, mountFacts } from './facts';
import { mount } from './mount';
import { ready } from './ready';
import { sag } from './sag';
import { custom, makersRating } from './sources';
import { barSetting, springBars } from './spring-bars';

/** The rig, asked and reckoned as for towing. */
const rig = standingOn(
  towFit,
  'trailer.loaded',
  'tongue.loaded',
  'bars.ontoFront',
  'bars.ontoTrailer',
);

const borrowed = {
  facts: {
    'vehicle.wheelbase': towFit.facts['vehicle.wheelbase'],
    'load.occupants': towFit.facts['load.occupants'],
    'load.cargo': towFit.facts['load.cargo'],
    'hitch.hardwareWeight': towFit.facts['hitch.hardwareWeight'],
    'trailer.gvwr': towFit.facts['trailer.gvwr'],
    'trailer.coupling': towFit.facts['trailer.coupling'],
    'trailer.couplerSize': towFit.facts['trailer.couplerSize'],
    'hitch.ballSize': towFit.facts['hitch.ballSize'],
    'hitch.ballRating': towFit.facts['hitch.ballRating'],
    'hitch.mountRating': towFit.facts['hitch.mountRating'],
  },
  parameters: {
    'margin.other': towFit.parameters['margin.other'],
    'tongue.none': towFit.parameters['tongue.none'],
  },
  limits: { 'ball-mount': towFit.limits['ball-mount'], ball: towFit.limits.ball },
  findings: {
    'tongue-negative': {
      ...towFit.findings['tongue-negative'],
      askedBy: ['trailer.measuredTongueWeight', 'trailer.dryTongueWeight'],
    },
    'ball-size': towFit.findings['ball-size'],
    'distribution-allowed': towFit.findings['distribution-allowed'],
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
  ball,
  springBars,
  barSetting,
  clearance,
  ready,
] as const;

/** Which ball mount carries this trailer level behind this vehicle, and will the hitch do as it is set? */
export const hitchSetup = defineTopic({
  id: 'hitch-setup',
  version: '1.0.0',
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
    care: {
      id: 'will-do-with-care',
      words: 'will do with care',
      sentence: 'The hitch will do, with care.',
    },
    stop: { id: 'must-not-roll', words: 'must not roll', sentence: 'It must not roll as it is.' },
    unknown: { id: 'cannot-say', words: 'cannot say', sentence: 'That cannot be said yet.' },
  },
  apart: {},
  tells: [
    {
      of: 'mount.dropNeeded',
      when: 'mount.drops',
      says: 'Level takes a ball mount with {of} of drop.',
    },
    {
      of: 'mount.needed',
      when: 'mount.rises',
      says: 'Level takes a ball mount with {of} of rise.',
    },
  ],
  headline: [
    'mount.way',
    'mount.needed',
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
  assumptions: [],
  changes,
  cautions: [
    {
      says: 'Both makers’ manuals decide how the hitch is set and what it carries; bars raise no rating.',
      source: makersRating,
    },
    {
      says: 'Chains crossed and off the road, breakaway cable on a point of its own, coupler latched and pinned, receiver pin clipped: every time.',
      source: custom,
    },
    {
      says: 'Torque ball and head by the maker’s table, and again after the first 50 to 100 miles.',
      source: custom,
    },
    {
      says: 'Spring bars snap: keep feet and face clear of them, raise the tongue with the jack first, and never reach between vehicle and trailer while anything rolls.',
      source: makersRating,
    },
    {
      says: 'Measure loaded and on level ground, wheels chocked; then drive around the block and measure once more. This is advice, not approval.',
      source: custom,
    },
  ],
});
