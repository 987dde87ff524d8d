import { part } from '../../engine/define/topic';
import { custom, grossRatings, statics, weights } from '../../trade/bibliography/common';
import { combinedRating } from '../../trade/bibliography/rig';
import { carrierHouse, chassisRating } from '../../trade/bibliography/towed-car';

const rated = {
  margin: 'margin.other',
  source: chassisRating,
} as const;

/**
 * What the combined rating leaves, and what each part may carry.
 *
 *     ├──────── motorhome as it rolls ────────┼─ car ─┼ dolly or trailer ┤
 *     ├────────────────────────── combined rating ──────────────────────────┤
 *
 * Not weighed, the motorhome may be anything up to its gross rating: what holds at that holds.
 * Weighed, it is held against that rating itself, with what a dolly or trailer puts on the ball.
 * Behind a long overhang a pound on the ball puts more than a pound on the rear axle.
 */
export const towedWeights = part({
  parameters: {
    'carrier.leastWeight': {
      label: 'Least that any dolly or trailer weighs',
      noun: 'the least that a dolly or trailer weighs',
      unit: 'lb',
      values: [{ from: '2020-01-01', value: 100 }],
      source: carrierHouse,
    },
  },
  formulas: {
    'towed.isFourDown': {
      label: 'It rolls on all four wheels',
      unit: 'yes-no',
      is: "towed.manner == 'four-down'",
      source: custom,
    },
    'towed.isCarried': {
      label: 'It rides on a dolly or trailer',
      unit: 'yes-no',
      is: "towed.manner != 'four-down'",
      source: custom,
    },
    'ball.isMeant': {
      label: 'Something rests on the ball: a dolly or trailer is meant, or a tongue was told of',
      unit: 'yes-no',
      is: 'carried.isMeant || (manner.isUntold && (given(towed.tongue) || towed.isCarried))',
      source: custom,
    },
    'motorhome.isUnweighed': {
      label: 'The motorhome was not weighed',
      unit: 'yes-no',
      is: '!given(motorhome.weighed) && given(vehicle.gvwr)',
      source: custom,
    },
    'motorhome.weight': {
      label: 'Motorhome as it rolls; not weighed, up to its gross rating',
      noun: 'the motorhome as it rolls',
      unit: 'lb',
      is: 'choose(given(motorhome.weighed), motorhome.weighed, between(0, vehicle.gvwr))',
      source: grossRatings,
    },
    'motorhome.gross': {
      label: 'Motorhome as weighed, with what rests on the ball',
      noun: 'the motorhome with what rests on the ball',
      unit: 'lb',
      is: 'motorhome.weighed + towed.onBall',
      source: weights,
    },
    'gross.isCompared': {
      label: 'The motorhome was weighed, and its gross rating is told',
      unit: 'yes-no',
      is: 'given(motorhome.weighed) && given(vehicle.gvwr)',
      source: grossRatings,
    },
    'gross.isOver': {
      label: 'The motorhome is over its own gross rating',
      unit: 'yes-no',
      is: 'gross.isCompared && motorhome.gross > vehicle.gvwr',
      source: grossRatings,
    },
    'gross.isOverAlone': {
      label: 'The motorhome by itself is over its own gross rating',
      unit: 'yes-no',
      is: 'gross.isCompared && motorhome.weighed > vehicle.gvwr',
      source: grossRatings,
    },
    'motorhome.fillsCombined': {
      label: 'The motorhome by itself is over the combined rating',
      unit: 'yes-no',
      is: 'known(motorhome.weighed, vehicle.gcwr) && motorhome.weighed > vehicle.gcwr',
      source: combinedRating,
    },
    'motorhome.rearIsOver': {
      label: 'The motorhome’s rear axle is over its rating with nothing on the hitch',
      unit: 'yes-no',
      is: 'known(motorhome.rearWeighed, vehicle.gawrRear) && motorhome.rearWeighed > vehicle.gawrRear',
      source: grossRatings,
    },
    'towed.most': {
      label: 'What may be towed, by the combined rating',
      noun: 'what may be towed',
      unit: 'lb',
      is: 'max(0, vehicle.gcwr - choose(given(motorhome.weighed), motorhome.weighed, vehicle.gvwr))',
      source: combinedRating,
    },
    'towed.isNone': {
      label: 'The motorhome takes up its whole combined rating',
      unit: 'yes-no',
      is: 'towed.most <= 0',
      source: combinedRating,
    },
    'towed.all': {
      label: 'All that is towed',
      unit: 'lb',
      is: 'towed.weight + choose(towed.isFourDown, 0, max(carrier.leastWeight, carrier.weight))',
      source: weights,
    },
    'towed.isOverIfFull': {
      label:
        'What is towed is over where the motorhome is at its gross rating, and nobody weighed it',
      unit: 'yes-no',
      is: '!given(motorhome.weighed) && towed.all > towed.most',
      source: combinedRating,
    },
    'motorhome.combined': {
      label: 'Motorhome and all that is towed',
      noun: 'the combined weight',
      unit: 'lb',
      is: 'motorhome.weight + towed.all',
      source: weights,
    },
    'combined.left': {
      label: 'What the combined rating leaves beside the motorhome',
      noun: 'what the combined rating leaves',
      unit: 'lb',
      is: 'max(0, vehicle.gcwr - motorhome.weight)',
      source: combinedRating,
    },
    'towed.onBall': {
      label: 'What rests on the ball; untold, up to a heavy share',
      noun: 'what rests on the ball',
      unit: 'lb',
      is: 'choose(ball.isMeant, choose(given(towed.tongue), towed.tongue, between(0, towed.all * tongue.mostShare)), 0)',
      source: custom,
    },
    'motorhome.rear': {
      label: 'Motorhome’s rear axle with what rests on the ball',
      noun: 'the rear axle',
      unit: 'lb',
      is: 'motorhome.rearWeighed + choose(ball.isMeant, towed.onBall * (1 + hitch.lever), 0)',
      source: statics,
    },
  },
  findings: {
    'motorhome-over': {
      label: 'Motorhome by itself',
      first: true,
      askedBy: ['motorhome.weighed', 'motorhome.rearWeighed'],
      stop: [
        {
          when: 'motorhome.fillsCombined',
          wrong:
            'The motorhome by itself was weighed at {motorhome.weighed}, over the combined rating of {vehicle.gcwr}.',
          because: 'Whatever hangs on it comes on top.',
          do: 'Tow nothing, and unload the motorhome.',
        },
        {
          when: 'motorhome.rearIsOver',
          wrong:
            'The motorhome’s rear axle was weighed at {motorhome.rearWeighed}, over its rating of {vehicle.gawrRear}, before anything hangs on it.',
          do: 'Take load out from behind that axle and weigh it again; do not drive it so.',
        },
      ],
      open: {
        wrong: 'The motorhome by itself may be over a rating.',
        do: 'Weigh it again, loaded as for the road.',
      },
      otherwise: 'By what was told, the motorhome by itself is within these ratings.',
      source: grossRatings,
    },
  },
  limits: {
    combined: {
      label: 'Combined weight',
      short: 'the combined rating',
      do: 'Tow a lighter car, or leave things and people out of the motorhome, and weigh it again.',
      near: 'Put nothing more into motorhome or car.',
      exceeded: true,
      // What the motorhome weighs stands on one side alone, so that a range of it is judged as tightly.
      used: 'towed.all',
      limit: 'combined.left',
      margin: 'margin.other',
      marginLeast: 'margin.least',
      source: combinedRating,
    },
    gross: {
      ...rated,
      label: 'Motorhome’s own gross rating',
      short: 'the motorhome’s gross rating',
      do: 'Unload the motorhome until it is within its gross rating, and weigh it again before anything is towed.',
      near: 'Take nothing more aboard, and weigh the motorhome again before the trip.',
      exceeded: true,
      used: 'motorhome.gross',
      limit: 'vehicle.gvwr',
      askedWhen: 'gross.isCompared',
      source: grossRatings,
    },
    'towed-weight': {
      ...rated,
      label: 'What the motorhome may pull',
      short: 'the motorhome’s tow rating',
      do: 'Tow a lighter car; no hitch raises that rating.',
      near: 'Put nothing more into the car.',
      exceeded: true,
      used: 'towed.all',
      limit: 'vehicle.maxTrailerWeight',
      askedBy: ['vehicle.maxTrailerWeight'],
    },
    receiver: {
      ...rated,
      label: 'Receiver',
      short: 'the receiver’s rating',
      do: 'Tow a lighter car: no bar or dolly raises the receiver’s rating.',
      near: 'Put nothing more into the car.',
      exceeded: true,
      used: 'towed.all',
      limit: 'hitch.receiverRating',
      askedBy: ['hitch.receiverRating'],
    },
    'receiver-tongue': {
      ...rated,
      label: 'Tongue weight on the receiver',
      short: 'the receiver’s tongue rating',
      do: 'Set the car a little farther back on its trailer, a tenth kept on the ball, and weigh the tongue.',
      near: 'Put nothing more into the nose of car or trailer, and weigh the tongue.',
      exceeded: true,
      used: 'towed.onBall',
      limit: 'hitch.receiverTongueRating',
      askedBy: ['hitch.receiverTongueRating'],
      askedWhen: 'ball.isMeant',
    },
    'rear-axle': {
      ...rated,
      label: 'Rear axle',
      short: 'the rear axle',
      do: 'Take load out from behind the motorhome’s rear axle, and weigh that axle again.',
      near: 'Put nothing more behind the motorhome’s rear axle.',
      used: 'motorhome.rear',
      limit: 'vehicle.gawrRear',
      askedBy: ['vehicle.gawrRear'],
    },
    'tow-bar': {
      ...rated,
      label: 'Tow bar and base plate',
      short: 'the tow bar’s rating',
      do: 'Fit a bar and a base plate that are both rated for the car, or tow a lighter one.',
      near: 'Put nothing more into the car.',
      exceeded: true,
      used: 'towed.weight',
      limit: 'towBar.rating',
      askedBy: ['towBar.rating'],
      askedWhen: 'bar.isMeant',
    },
    carrier: {
      ...rated,
      label: 'Dolly or trailer',
      short: 'what the dolly or trailer may carry',
      do: 'Take a dolly or trailer that is rated for the car.',
      near: 'Put nothing more into the car.',
      used: 'towed.weight',
      limit: 'carrier.rating',
      askedBy: ['carrier.rating'],
      askedWhen: 'towed.isCarried',
    },
  },
});
