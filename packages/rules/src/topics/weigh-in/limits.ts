import { part } from '../../engine/define/topic';
import {
  grossRatings,
  partsRating as makersRating,
  payloadLabel,
} from '../../trade/bibliography/common';

const rated = { margin: 'margin.other', source: grossRatings } as const;

/** What was weighed against every rating that was told. */
export const limits = part({
  limits: {
    'trailer-weight': {
      label: 'Trailer weight',
      short: 'the tow rating',
      exceeded: true,
      used: 'trailer.weighed',
      limit: 'trailerWeight.limit',
      margin: 'margin.towRating',
      askedBy: ['vehicle.maxTrailerWeight'],
      source: makersRating,
    },
    tongue: {
      label: 'Tongue weight',
      short: 'the tongue weight',
      used: 'tongue.weighed',
      limit: 'tongue.limit',
      margin: 'margin.other',
      askedBy: ['vehicle.maxTongueCarried', 'vehicle.maxTongueDistributed'],
      source: makersRating,
    },
    payload: {
      label: 'Payload',
      short: 'payload',
      used: 'payload.usedWeighed',
      limit: 'vehicle.placardPayload',
      margin: 'margin.other',
      marginLeast: 'margin.least',
      askedBy: ['vehicle.placardPayload'],
      source: payloadLabel,
    },
    'vehicle-gross': {
      ...rated,
      label: 'Vehicle gross weight',
      short: 'the vehicle’s gross rating',
      exceeded: true,
      used: 'vehicle.weighed',
      limit: 'vehicle.gvwr',
      askedBy: ['vehicle.gvwr'],
    },
    'front-axle': {
      ...rated,
      label: 'Front axle',
      short: 'the front axle',
      used: 'axle.frontWeighed',
      limit: 'vehicle.gawrFront',
      askedBy: ['vehicle.gawrFront'],
    },
    'rear-axle': {
      ...rated,
      label: 'Rear axle',
      short: 'the rear axle',
      used: 'axle.rearWeighed',
      limit: 'vehicle.gawrRear',
      askedBy: ['vehicle.gawrRear'],
    },
    combined: {
      ...rated,
      label: 'Combined weight',
      short: 'the combined rating',
      exceeded: true,
      used: 'combined.weighed',
      limit: 'combined.limit',
      askedBy: ['vehicle.gcwr'],
    },
    'trailer-gross': {
      ...rated,
      label: 'Trailer’s own rating',
      short: 'the trailer’s own rating',
      exceeded: true,
      used: 'trailer.weighed',
      limit: 'trailer.gvwr',
      askedBy: ['trailer.gvwr'],
    },
    'trailer-axles': {
      ...rated,
      label: 'Trailer axles',
      short: 'the trailer’s axles',
      plural: true,
      used: 'axle.trailerWeighed',
      limit: 'trailerAxles.limit',
      askedBy: ['trailer.gawr'],
    },
  },
  formulas: {
    'axle.rearSlack': {
      label: 'Rear axle, bars slack, as weighed',
      noun: 'the rear axle with slack bars',
      unit: 'lb',
      is: 'read.slackRear',
      source: grossRatings,
    },
  },
  findings: {
    'rear-axle-slack': {
      label: 'Rear axle with slack bars',
      first: true,
      askedByKnown: ['slack.rear', 'vehicle.gawrRear'],
      care: {
        when: 'axle.rearSlack > vehicle.gawrRear',
        wrong:
          'With slack bars the rear axle carries {axle.rearSlack}, over its rating of {vehicle.gawrRear}.',
        because:
          'Bars raise no rating: some makers want the axle within it before they are tightened, and one that breaks gives it all back.',
        do: 'Move or leave load until the axle is within its rating with the bars slack.',
      },
      open: {
        wrong: 'With slack bars the rear axle may be over its rating.',
        do: 'The scale cannot tell closer: move load until it is clearly within.',
      },
      otherwise: 'The rear axle is within its rating with the bars slack.',
      source: grossRatings,
    },
  },
});
