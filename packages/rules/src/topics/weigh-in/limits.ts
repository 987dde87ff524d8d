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
});
