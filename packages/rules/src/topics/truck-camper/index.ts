import { ruleSet } from '../../engine/define/looked-at';
import { quietly } from '../../engine/define/quietly';
import { gather } from '../../engine/define/topic';
import { standingOn } from '../../engine/formula/standing-on';
import { custom, house, partsRating as makersRating } from '../../trade/bibliography/common';
import { passengerTires } from '../../trade/bibliography/tires';
import { camperLoading } from '../../trade/bibliography/truck-camper';
import { emptyOver } from '../../trade/rig/empty-over';
import { camperFacts } from '../../trade/rig/facts-camper';
import { meantTireFacts } from '../../trade/rig/facts-vehicle-tires';
import { rigTrade } from '../../trade/rig/index';
import { tongueFindings } from '../../trade/rig/tongue-findings';
import { askings } from './askings';
import { axles } from './axles';
import { behind } from './behind';
import { called } from './called';
import { changes } from './changes';
import { everybody } from './everybody';
import { truckFacts } from './facts';
import { fitting } from './fitting';
import { how } from './how';
import { camperLoad } from './load';
import { ratings } from './ratings';
import { zone } from './zone';

/** The truck and who and what is in it, asked and reckoned as for towing. */
const truck = standingOn(
  rigTrade,
  'payload.available',
  'vehicle.curb',
  'load.people',
  'load.things',
  'front.withoutCamper',
  'rear.withoutCamper',
  'tongue.loaded',
  'tongue.isKnown',
  'tongue.onFront',
  'tongue.onRear',
  'extension.isAsked',
  'camper.isTold',
  'camper.loads',
  'camper.loaded',
  'camper.moment',
  'camper.ownCenter',
  'camper.placeless',
  'camper.centerTold',
  'curb.front',
  'curb.rear',
  'tire.rearCount',
  'tire.rearCapacity',
  'tire.rearIsCounted',
  'tire.typeIsAssumed',
);

const borrowed = {
  facts: {
    'vehicle.gawrFront': rigTrade.facts['vehicle.gawrFront'],
    'vehicle.gawrRear': rigTrade.facts['vehicle.gawrRear'],
    'vehicle.tireCapacityRear': rigTrade.facts['vehicle.tireCapacityRear'],
    'trailer.dryWeight': rigTrade.facts['trailer.dryWeight'],
    'trailer.gvwr': rigTrade.facts['trailer.gvwr'],
    'hitch.extensionRating': rigTrade.facts['hitch.extensionRating'],
  },
  parameters: {
    'margin.other': rigTrade.parameters['margin.other'],
    'margin.least': rigTrade.parameters['margin.least'],
    'water.density': rigTrade.parameters['water.density'],
    'tongue.none': rigTrade.parameters['tongue.none'],
  },
  // A tongue that lifts takes weight off truck and rating alike, and is no room for more.
  findings: {
    'tongue-negative': tongueFindings.findings['tongue-negative'],
    'empty-over': emptyOver,
  },
};

const parts = [
  truck,
  borrowed,
  truckFacts,
  behind,
  camperLoad,
  ratings,
  zone,
  fitting,
  axles,
] as const;

/** May this truck carry this camper, loaded as it will be on the road? */
export const truckCamper = ruleSet({
  id: 'truck-camper',
  version: '6.1.0',
  title: 'Truck camper',
  question:
    'May this truck carry this camper, loaded as it will be on the road, and does its weight sit where the maker wants it?',
  // Here a camper is what is asked about, and what nobody told of it is spoken.
  facts: { ...gather('facts', parts), ...camperFacts.facts, ...quietly(meantTireFacts.facts) },
  parameters: gather('parameters', parts),
  tables: {},
  formulas: gather('formulas', parts),
  limits: gather('limits', parts),
  findings: gather('findings', parts),
  outcomes: {
    ok: { id: 'carries-it', words: 'carries it', sentence: 'The truck carries the camper.' },
    if: { id: 'carries-it-if', words: 'carries it if', sentence: 'The truck carries the camper' },
    care: {
      id: 'carries-it-with-care',
      words: 'carries it with care',
      sentence: 'The truck carries the camper, with care.',
      plain: 'The truck carries the camper',
    },
    stop: {
      id: 'does-not-carry-it',
      words: 'does not carry it',
      sentence: 'The truck does not carry the camper.',
    },
    unknown: { id: 'cannot-say', words: 'cannot say', sentence: 'That cannot be said yet.' },
  },
  apart: {},
  headline: [
    'camper.heaviest',
    'camper.loaded',
    'camper.centerLoaded',
    'bed.load',
    'payload.used',
    'payload.available',
    'vehicle.gross',
    'axle.front',
    'axle.rear',
  ],
  assumptions: [
    {
      when: 'tire.typeIsAssumed',
      says: 'The tires count as written, as on a passenger car: the type on the label was not told, and on a truck or multipurpose vehicle passenger tires count for less.',
      source: passengerTires,
    },
    {
      when: 'tire.rearIsCounted',
      says: 'Passenger tires on a truck or multipurpose vehicle count with their rating divided by {tire.passengerDivisor}.',
      source: passengerTires,
    },
    { when: 'trailer.isUntold', says: 'Nothing is towed behind the camper.', source: custom },
    {
      when: 'camper.placeless',
      says: 'What has no place in the camper rides anywhere from {camper.unplacedBehind} behind the rear axle to {camper.unplacedAhead} ahead of it.',
      source: house,
    },
  ],
  changes,
  askings,
  everybody,
  how,
  called,
  renamed: { 'camper.centre': 'camper.center', 'towed.tongue': 'trailer.measuredTongueWeight' },
  cautions: [
    {
      says: 'The labels and papers of that very truck and camper win over any brochure; weigh the loaded truck axle by axle.',
      source: makersRating,
    },
    {
      says: 'The cargo weight rating already leaves an allowance for each seat, the door label’s payload leaves nothing: never mix the two.',
      source: camperLoading,
    },
    {
      says: 'Tie it down at the points both makers name, and check the turnbuckles after the first ten miles.',
      source: custom,
    },
    {
      says: 'A camper stands high: slow down for bends, side wind and ramps. Springs or bags level the truck; they raise no rating.',
      source: custom,
    },
    {
      says: 'This is advice, not approval; the makers’ instructions and local rules decide, also on who may ride in a camper.',
      source: custom,
    },
  ],
});
