import { ruleSet } from '../../engine/define/looked-at';
import { gather } from '../../engine/define/topic';
import { standingOn } from '../../engine/formula/standing-on';
import { custom } from '../../trade/bibliography/common';
import { makersRating } from '../../trade/bibliography/rig';
import { swayControl, whenItBegins } from '../../trade/bibliography/sway';
import { rigTrade } from '../../trade/rig/index';
import { askings } from './askings';
import { begins } from './begins';
import { called } from './called';
import { changes } from './changes';
import { everybody } from './everybody';
import { swayFacts } from './facts';
import { helps } from './helps';
import { hitch } from './hitch';
import { how } from './how';
import { road } from './road';
import { shape } from './shape';
import { tongueShare } from './share';
import { yaw } from './yaw';

/*
 * Facts, outcomes and thresholds, each with the class of its source.
 *
 * Facts: those of the rig (trailer.dryWeight, trailer.measuredTongueWeight, trailer.dryTongueWeight,
 * trailer.ballToAxle, trailer.cargo and tanks with their places, vehicle.wheelbase, vehicle.overhang,
 * hitch.extension, hitch.distribution, vehicle.curbWeight, load.occupants, trailer.tireKind), trip.speed; of its own:
 * sway.felt, trailer.length, trailer.rides, hitch.frontFender, hitch.swayControl, tires.pressures,
 * trip.gusts.
 *
 * C custom of the trade, H the house's choice, P published, M from memory; ≙ stands for.
 *
 *     sways now, has swayed by itself      stop     C   manuals, towing guidance; mended: care
 *     share under 7 % (pin 10 %)           stop     H   the very finding of tow fit
 *     share 10 to 15 % (pin 15 to 25 %)    band     C   outside it care
 *     tongue not told                      unknown      by estimate, or load not told: if
 *     load adds 30 % to yaw inertia        care     H   the inertia itself: mechanics, P; unplaced,
 *                                                      up to 0.6 of the body from the axles, H
 *     110 in ≙ 20 ft, 4 in a foot          care     C   rule of thumb, never a stop
 *     overhang over 0.45 of the wheelbase  care     H   the lever itself: statics, P
 *     vehicle lighter than the trailer     care     C   on a ball alone, as are bars and sway control
 *     front pressed beyond what it weighs  stop     C   as in weigh-in
 *     speed over 55, over 65 mph           care     M
 *     gusts from 25, from 45 mph           care, stop   H
 *     soft tires, nose high, slack control care     C   pressures not told: if
 *     no sway control, trailer over 2,000 lb care   H   lighter ones are towed without
 *
 * Outcomes: nothing points to it · steady if · may sway · likely to sway · cannot say.
 * As an engineer: no number predicts the speed at which a rig swings; so no limit, no promise.
 * As an owner: what to do when it begins comes before any figure.
 */

/** What rides where, and what rests on the ball, reckoned as for tow fit. */
const rig = standingOn(
  rigTrade,
  'tongue.share',
  'tongue.loaded',
  'tongue.isKnown',
  'tongue.lowEdge',
  'tongue.highEdge',
  'tongue.stopEdge',
  'tail.isUnreckoned',
  'trailer.loaded',
  'trailer.waterWeight',
  'vehicle.curb',
  'load.aboard',
  'hitch.lever',
  'coupling.isBall',
  'coupling.isPin',
);

const borrowed = {
  facts: {
    'trailer.tireKind': rigTrade.facts['trailer.tireKind'],
    'tire.kind': rigTrade.facts['tire.kind'],
    'tire.place': rigTrade.facts['tire.place'],
    'hitch.distribution': rigTrade.facts['hitch.distribution'],
  },
  formulas: { 'tire.trailerIsPassenger': rigTrade.formulas['tire.trailerIsPassenger'] },
  parameters: { 'tongue.none': rigTrade.parameters['tongue.none'] },
};

/** Of the two tongues the weighed one is asked first: where it is known, the dry one decides nothing. */
const weighedFirst = {
  facts: { 'trailer.measuredTongueWeight': rigTrade.facts['trailer.measuredTongueWeight'] },
};

const parts = [
  weighedFirst,
  rig,
  borrowed,
  swayFacts,
  begins,
  tongueShare,
  yaw,
  hitch,
  shape,
  road,
  helps,
] as const;

/** Will this rig sway, and what to do when it does? */
export const sway = ruleSet({
  id: 'sway',
  version: '7.0.0',
  title: 'Sway',
  question: 'Will this rig sway, and what to do when it does?',
  facts: gather('facts', parts),
  parameters: gather('parameters', parts),
  tables: {},
  formulas: gather('formulas', parts),
  selections: gather('selections', parts),
  limits: {},
  findings: gather('findings', parts),
  outcomes: {
    ok: {
      id: 'nothing-points-to-it',
      words: 'nothing points to it',
      sentence: 'Nothing that was told points to sway; that is no promise.',
    },
    if: { id: 'steady-if', words: 'steady if', sentence: 'The trailer may tow steadily' },
    care: {
      id: 'may-sway',
      words: 'may sway',
      sentence: 'The trailer may sway; take care.',
    },
    stop: {
      id: 'likely-to-sway',
      words: 'likely to sway',
      sentence: 'Do not tow the trailer so; it is likely to sway.',
    },
    unknown: { id: 'cannot-say', words: 'cannot say', sentence: 'That cannot be said yet.' },
  },
  apart: {},
  headline: [
    'tongue.share',
    'tongue.loaded',
    'trailer.loaded',
    'yaw.share',
    'length.carried',
    'hitch.lever',
  ],
  assumptions: [],
  changes,
  askings,
  everybody,
  how,
  called,
  renamed: {
    ...gather('renamed', parts),
    'hitch.frontFender': {
      to: 'hitch.frontFender',
      values: { higher: ['half-back', 'hardly-back'] },
    },
  },
  cautions: [
    {
      says: 'The manuals and labels of that very vehicle, hitch and trailer win; nothing here raises a rating.',
      source: makersRating,
    },
    {
      says: 'Weigh the tongue as it is loaded, tanks and racks too; a scale beats every rule of thumb.',
      source: custom,
      fits: ['finding.tongue-untold', 'finding.tongue-unweighed', 'finding.tongue-share'],
    },
    {
      says: 'Sway control hides a wrong load; it does not mend it.',
      source: swayControl,
      fits: ['finding.sway-control', 'finding.tongue-share'],
    },
    {
      says: 'What began once begins again: no mile further before the cause is found.',
      source: whenItBegins,
      fits: ['finding.sway-felt', 'finding.sway-now'],
    },
    {
      says: 'This is advice and no promise: no figure tells at what speed a rig begins to swing.',
      source: custom,
    },
  ],
});
