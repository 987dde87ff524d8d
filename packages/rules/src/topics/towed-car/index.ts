import { ruleSet } from '../../engine/define/looked-at';
import { gather } from '../../engine/define/topic';
import { standingOn } from '../../engine/formula/standing-on';
import { custom } from '../../trade/bibliography/common';
import { barParts, carsManual, chassisRating } from '../../trade/bibliography/towed-car';
import { rigTrade } from '../../trade/rig/index';
import { askings } from './askings';
import { called } from './called';
import { changes } from './changes';
import { everybody } from './everybody';
import { towedFacts } from './facts';
import { how } from './how';
import { joined } from './joined';
import { manner } from './manner';
import { round } from './round';
import { towedWeights } from './weights';

/*
 * Facts, outcomes and thresholds, each with the class of its source.
 *
 * Facts of the rig, the motorhome being the vehicle: vehicle.gcwr, gvwr, gawrRear, maxTrailerWeight,
 * maxUnbraked, wheelbase, overhang, hitch.extension, receiverRating, receiverTongueRating. Its own:
 * motorhome.weighed, motorhome.rearWeighed, towed.*, carrier.* (dolly or trailer), towBar.*.
 *
 *     motorhome + all towed over the combined rating  stop     C   not weighed: 0 up to GVWR
 *     weighed, with the ball, over its own rating     stop     P   49 CFR 567.4, from the label
 *     any part over its rating                        stop     C   margin 5 %, H
 *     rear axle by moments behind the overhang        stop     C   the moments: statics, P
 *     tongue of dolly or trailer untold               range    C   up to 15 % of it
 *     manual forbids four down, or a dolly            stop     C   not read: if; no fact is a gearbox
 *     no brake over 3,000 lb                          stop     P for commerce (49 CFR 393.42), else C
 *     no brake, or untold, over 1,000 lb              if       M   state and both makers
 *     bar up toward the motorhome, or 3 in down       stop     C
 *     no cables, lights, breakaway; steering locked   stop     C   not told: if; no breakaway up to
 *                                                                  1,000 lb: care
 *     battery not kept up                             care     C
 *
 * Outcomes: may be towed · may be towed if · with care · not towed so · cannot say.
 * As an engineer: an unweighed motorhome is a range, and a stop on its gross rating alone is none.
 * As an owner: what may be towed comes first, and the worst case is the one said.
 */

const rig = standingOn(rigTrade, 'hitch.lever');

const { facts, parameters } = rigTrade;
const borrowed = {
  facts: {
    'vehicle.gcwr': facts['vehicle.gcwr'],
    'vehicle.gvwr': facts['vehicle.gvwr'],
    'vehicle.gawrRear': facts['vehicle.gawrRear'],
    'vehicle.maxTrailerWeight': facts['vehicle.maxTrailerWeight'],
    'vehicle.maxUnbraked': facts['vehicle.maxUnbraked'],
    'hitch.receiverRating': facts['hitch.receiverRating'],
    'hitch.receiverTongueRating': facts['hitch.receiverTongueRating'],
  },
  parameters: {
    'margin.other': parameters['margin.other'],
    'margin.least': parameters['margin.least'],
    'tongue.mostShare': parameters['tongue.mostShare'],
  },
};

const parts = [rig, borrowed, towedFacts, towedWeights, manner, joined, round] as const;

/** May this car be towed behind this motorhome, and how? */
export const towedCar = ruleSet({
  id: 'towed-car',
  version: '4.1.0',
  title: 'A car behind a motorhome',
  question: 'May this car be towed behind this motorhome, how, and how much may it weigh?',
  facts: gather('facts', parts),
  parameters: gather('parameters', parts),
  tables: {},
  formulas: gather('formulas', parts),
  selections: gather('selections', parts),
  limits: gather('limits', parts),
  findings: gather('findings', parts),
  outcomes: {
    ok: { id: 'may-be-towed', words: 'may be towed', sentence: 'The car may be towed.' },
    if: { id: 'may-be-towed-if', words: 'may be towed if', sentence: 'The car may be towed' },
    care: {
      id: 'may-be-towed-with-care',
      words: 'may be towed with care',
      sentence: 'The car may be towed, with care.',
      plain: 'The car may be towed',
    },
    stop: { id: 'not-towed-so', words: 'not towed so', sentence: 'Do not tow the car so.' },
    unknown: { id: 'cannot-say', words: 'cannot say', sentence: 'That cannot be said yet.' },
  },
  apart: {},
  headline: [
    'towed.most',
    'towed.all',
    'motorhome.combined',
    'motorhome.gross',
    'motorhome.rear',
    'towed.onBall',
  ],
  assumptions: [
    {
      when: 'motorhome.isUnweighed',
      says: 'The motorhome is counted at its gross rating for what may be towed; a scale may leave more.',
      source: chassisRating,
    },
    {
      when: 'assumed.carried',
      says: 'The car rides on a dolly or trailer, as a tongue weight was told of.',
      source: carsManual,
    },
    {
      when: 'assumed.bar',
      says: 'The car rolls on its own wheels, as a tow bar was told of.',
      source: carsManual,
    },
  ],
  changes,
  askings,
  everybody,
  how,
  called,
  cautions: [
    {
      says: 'Never reverse with a tow bar or a dolly: unhitch first.',
      source: barParts,
      fits: ['finding.bar-level'],
    },
    {
      says: 'The manual of that very car decides how it may roll; the kind of gearbox tells nothing.',
      source: carsManual,
      fits: ['finding.four-down', 'finding.dolly', 'finding.manner-untold'],
    },
    {
      says: 'Unlock the steering, let the parking brake off and keep the battery up; look again at every stop.',
      source: carsManual,
      fits: ['finding.four-down', 'finding.dolly', 'finding.steering', 'towed.steeringFree'],
    },
    {
      says: 'The lowest-rated part counts: chassis, receiver, bar, base plate, dolly. Nothing fitted later raises a rating.',
      source: chassisRating,
      fits: ['limit.combined', 'limit.receiver', 'limit.tow-bar'],
    },
    {
      says: 'This is advice, not approval; makers’ manuals and the laws of each state on the way decide.',
      source: custom,
    },
  ],
});
