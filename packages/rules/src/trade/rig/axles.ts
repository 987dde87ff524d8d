import { part } from '../../engine/define/topic';
import { custom, grossRatings, statics } from '../bibliography/common';
import { hanging } from './axle-loads';

export const vehicleAxles = part({
  parameters: {
    'front.mostTaken': {
      label: 'What a tongue without bars may take from the front axle unsaid',
      noun: 'a tenth of the front axle',
      unit: '%',
      values: [{ from: '2020-01-01', value: 10 }],
      source: custom,
    },
  },
  formulas: {
    'front.taken': {
      label: 'What the tongue takes from the front axle without bars',
      noun: 'what the tongue takes from the front axle',
      unit: 'lb',
      is: 'max(0, tongue.loaded) * hitch.lever',
      source: statics,
    },
    'front.takenShare': {
      label: 'What the tongue takes of the front axle without bars',
      noun: 'the part of the front axle that the tongue takes',
      unit: '1',
      is: 'front.taken / max(0, front.withoutTongue)',
      source: statics,
    },
    'front.takenEdge': {
      label: 'Part of the front axle from which a word is said',
      unit: '1',
      is: 'front.mostTaken',
      source: custom,
    },
    'tongue.hangsNothing': {
      label: 'Nothing hangs on the vehicle',
      unit: 'yes-no',
      is: 'hitch.hangsNothing && !may(tongue.loaded > 0 || tongue.loaded < 0)',
      source: statics,
    },
    'rear.perTongue': {
      label: 'What a pound of tongue puts on the rear axle',
      unit: '1',
      is: '1 + hitch.lever * bars.frontLost - bars.trailerShare',
      source: statics,
    },
    'tongue.onFront': {
      label: 'Tongue on the front axle, with the bars',
      noun: 'what the tongue does to the front axle',
      unit: 'lb',
      is: 'bars.notKnown - (tongue.pressing * bars.frontLost + tongue.lifting) * hitch.lever',
      source: statics,
    },
    'tongue.onRear': {
      label: 'Tongue on the rear axle, with the bars',
      noun: 'what the tongue puts on the rear axle',
      unit: 'lb',
      is: 'tongue.pressing * rear.perTongue + tongue.lifting * (1 + hitch.lever) - bars.notKnown',
      source: statics,
    },
    'axle.front': {
      label: 'Front axle',
      noun: 'the front axle',
      unit: 'lb',
      is: hanging(
        'front.withoutTongue - (tongue.pressing * bars.frontLost + tongue.lifting) * hitch.lever + bars.notKnown',
        'front.withoutTongue',
        'tongue.hangsNothing',
      ),
      source: statics,
    },
    'rear.withoutBars': {
      label: 'Rear axle before the bars are tightened',
      noun: 'the rear axle before the bars are tightened',
      unit: 'lb',
      is: hanging(
        'rear.withoutTongue + tongue.loaded * (1 + hitch.lever)',
        'rear.withoutTongue',
        'tongue.hangsNothing',
      ),
      source: statics,
    },
    'axle.rear': {
      label: 'Rear axle',
      noun: 'the rear axle',
      unit: 'lb',
      is: hanging(
        'rear.withoutTongue + tongue.pressing * rear.perTongue + tongue.lifting * (1 + hitch.lever) - bars.notKnown',
        'rear.withoutTongue',
        'tongue.hangsNothing',
      ),
      source: statics,
    },
  },
  limits: {
    'front-axle': {
      label: 'Front axle',
      short: 'the front axle',
      do: 'Load it farther back, and weigh each axle again.',
      used: 'axle.front',
      limit: 'vehicle.gawrFront',
      empty: 'curb.front',
      margin: 'margin.other',
      marginLeast: 'margin.least',
      askedBy: ['vehicle.gawrFront'],
      source: grossRatings,
    },
    'rear-axle': {
      label: 'Rear axle',
      short: 'the rear axle',
      do: 'Load farther forward, or over the trailer’s axles if its own rating has room, and weigh each axle.',
      used: 'axle.rear',
      limit: 'vehicle.gawrRear',
      empty: 'curb.rear',
      margin: 'margin.other',
      marginLeast: 'margin.least',
      askedBy: ['vehicle.gawrRear'],
      source: grossRatings,
    },
  },
  findings: {
    'front-axle-light': {
      label: 'Front axle without bars',
      askedByKnown: ['vehicle.curbFront', 'vehicle.wheelbase', 'vehicle.overhang'],
      askedWhen: 'tongue.isKnown',
      care: {
        when: '!distribution.inUse && front.takenShare > front.takenEdge',
        wrong:
          'Without bars the tongue takes {front.taken} from the front axle, which stands on {front.withoutTongue} without the trailer.',
        because: 'The front wheels steer and do most of the braking.',
        do: 'Ask whether the vehicle’s maker allows weight distribution, or load it farther forward.',
      },
      open: {
        wrong: 'Without bars the tongue may take more than a tenth from the front axle.',
        because: 'The front wheels steer and do most of the braking.',
        do: 'Weigh the front axle with and without the trailer.',
      },
      otherwise: 'No bars are wanted for the front axle’s sake.',
      source: custom,
    },
    'rear-axle-slack': {
      label: 'Rear axle before the bars are tightened',
      first: true,
      askedByKnown: ['vehicle.gawrRear'],
      care: {
        when: 'distribution.inUse && rear.withoutBars > vehicle.gawrRear',
        wrong:
          'Before the bars are tightened the rear axle carries {rear.withoutBars} of {vehicle.gawrRear}.',
        because:
          'Bars raise no rating, and some makers want the rear axle within its own before they are tightened.',
        do: 'Read the manual, and load less behind the vehicle’s rear axle. Take nothing off the trailer’s nose before the tongue’s share is known: too light a tongue sways.',
      },
      otherwise: 'No bars hide a rear axle that is over its rating.',
      source: grossRatings,
    },
  },
});

export const trailerAxles = part({
  formulas: {
    'axle.trailer': {
      label: 'Weight on the trailer’s axles',
      noun: 'the load on the trailer’s axles',
      unit: 'lb',
      is: 'trailer.loaded - tongue.pressing * (1 - bars.trailerShare) - tongue.lifting + bars.notKnown',
      source: statics,
    },
    'trailerAxles.limit': {
      label: 'Rating of all trailer axles',
      noun: 'the rating of the trailer’s axles',
      unit: 'lb',
      is: 'trailer.axles * trailer.gawr',
      source: grossRatings,
    },
  },
  limits: {
    'trailer-axles': {
      label: 'Trailer axles',
      short: 'the trailer’s axles',
      do: 'Take load out of the trailer, and weigh its axles again.',
      plural: true,
      used: 'axle.trailer',
      limit: 'trailerAxles.limit',
      margin: 'margin.other',
      marginLeast: 'margin.least',
      askedBy: ['trailer.gawr'],
      source: grossRatings,
    },
  },
});
