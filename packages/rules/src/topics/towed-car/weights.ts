import { part } from '../../engine/define/topic';
import { custom, grossRatings, statics, weights } from '../../trade/bibliography/common';
import { combinedRating } from '../../trade/bibliography/rig';
import {
  barLevel,
  barParts,
  carrierHouse,
  chassisRating,
} from '../../trade/bibliography/towed-car';

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
    'combined.isOverAlone': {
      label: 'The motorhome by itself is over the combined rating',
      unit: 'yes-no',
      is: 'known(motorhome.weighed, vehicle.gcwr) && motorhome.weighed > vehicle.gcwr',
      source: combinedRating,
    },
    'tongue.isOverAsTold': {
      label: 'The tongue as told is over the receiver’s tongue rating',
      unit: 'yes-no',
      is: 'known(towed.tongue, hitch.receiverTongueRating) && towed.tongue > hitch.receiverTongueRating',
      source: chassisRating,
    },
    'carrier.isOverAsTold': {
      label: 'The car as told is more than the dolly or trailer may carry',
      unit: 'yes-no',
      is: 'known(towed.weight, carrier.rating) && towed.weight > carrier.rating',
      source: chassisRating,
    },
    'bar.isOverAsTold': {
      label: 'The car as told is more than the tow bar is rated for',
      unit: 'yes-no',
      is: 'known(towed.weight, towBar.rating) && towed.weight > towBar.rating',
      source: barParts,
    },
    'bar.risesAsTold': {
      label: 'The tow bar was told to rise',
      unit: 'yes-no',
      is: 'known(towBar.rise) && towBar.rise > towBar.level',
      source: barLevel,
    },
    'bar.fallsAsTold': {
      label: 'The tow bar was told to fall too far',
      unit: 'yes-no',
      is: 'known(towBar.rise) && towBar.fall > towBar.mostDrop',
      source: barLevel,
    },
    'towed.most': {
      label: 'What may be towed, by the combined rating',
      noun: 'what may be towed',
      unit: 'lb',
      is: 'max(0, vehicle.gcwr - choose(given(motorhome.weighed), motorhome.weighed, vehicle.gvwr))',
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
      is: 'choose(towed.isFourDown, 0, choose(given(towed.tongue), towed.tongue, between(0, towed.all * tongue.mostShare)))',
      source: custom,
    },
    'motorhome.rear': {
      label: 'Motorhome’s rear axle with what rests on the ball',
      noun: 'the rear axle',
      unit: 'lb',
      // What rests on the ball only adds to it: as weighed is the least, whatever the lever.
      is: 'max(motorhome.rearWeighed, motorhome.rearWeighed + choose(towed.isFourDown, 0, towed.onBall * (1 + hitch.lever)))',
      source: statics,
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
      askedWhen: 'towed.isCarried',
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
      askedWhen: 'towed.isFourDown',
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
  findings: {
    'motorhome-over': {
      label: 'Motorhome against the combined rating',
      first: true,
      askedByKnown: ['motorhome.weighed', 'vehicle.gcwr'],
      stop: {
        when: 'combined.isOverAlone',
        wrong:
          'The motorhome alone weighs {motorhome.weighed}; the combined rating is {vehicle.gcwr}.',
        because: 'That rating holds motorhome and car together, and nothing is left for a car.',
        do: 'Tow nothing. Read the rating again, unload the motorhome and weigh it again.',
      },
      otherwise: 'The motorhome by itself is within the combined rating.',
      source: combinedRating,
    },
    'carried-over': {
      label: 'On a dolly or trailer, as told so far',
      first: true,
      askedWhen: 'manner.isUntold',
      unknown: [
        {
          when: 'tongue.isOverAsTold',
          wrong:
            'The tongue puts {towed.tongue} on the ball, and the receiver may carry {hitch.receiverTongueRating}.',
          because: 'That holds for a dolly and for a trailer.',
          do: 'Do not tow it so: take a dolly or trailer that is lighter on the ball.',
        },
        {
          when: 'carrier.isOverAsTold',
          wrong:
            'The car weighs {towed.weight}, and the dolly or trailer may carry {carrier.rating}.',
          do: 'Do not load it so: take one that is rated for the car.',
        },
      ],
      otherwise: 'Nothing told of dolly or trailer is over its rating.',
      source: chassisRating,
    },
    'bar-over': {
      label: 'With the tow bar, as told so far',
      first: true,
      askedWhen: 'manner.isUntold',
      unknown: [
        {
          when: 'bar.isOverAsTold',
          wrong: 'The car weighs {towed.weight}, and the tow bar is rated for {towBar.rating}.',
          do: 'Do not tow it with this bar: fit bar and base plate that are rated for the car.',
        },
        {
          when: 'bar.risesAsTold',
          wrong: 'The tow bar rises toward the motorhome, by {towBar.rise}.',
          because: 'In a hard stop the car climbs under it and lifts the rear axle.',
          do: 'Do not tow with it so: fit a drop receiver of the bar’s maker.',
        },
        {
          when: 'bar.fallsAsTold',
          wrong:
            'The tow bar falls toward the motorhome by {towBar.fall}, and {towBar.mostDrop} is the most.',
          because: 'In a hard stop the car is pushed upward at its front.',
          do: 'Do not tow with it so: fit a receiver of the bar’s maker that stands higher.',
        },
      ],
      otherwise: 'Nothing told of the tow bar speaks against it.',
      source: barParts,
    },
  },
});
