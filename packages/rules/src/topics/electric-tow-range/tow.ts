import { standingOn } from '../../engine/formula/standing-on';
import { towFit } from '../tow-fit/index';

/** Weights of the rig and what may be towed and carried, asked and reckoned as for tow fit. */
export const rig = standingOn(
  towFit,
  'combined.gross',
  'trailer.loaded',
  'trailerWeight.limit',
  'tongue.loaded',
  'tongue.limit',
  'payload.used',
  'payload.available',
);

/**
 * The ratings hold whatever the battery says. Each is asked once its rating is mentioned; what is
 * not asked is named with the answer.
 */
export const towRatings = {
  facts: {
    'trailer.frontalArea': towFit.facts['trailer.frontalArea'],
    'trip.steepestGrade': towFit.facts['trip.steepestGrade'],
  },
  parameters: {
    'margin.towRating': towFit.parameters['margin.towRating'],
    'margin.other': towFit.parameters['margin.other'],
    'tongue.none': towFit.parameters['tongue.none'],
  },
  limits: {
    'trailer-weight': {
      ...towFit.limits['trailer-weight'],
      askedBy: ['vehicle.maxTrailerWeight', 'vehicle.maxTrailerCarried'],
    },
    tongue: {
      ...towFit.limits.tongue,
      askedBy: ['vehicle.maxTongueCarried', 'vehicle.maxTongueDistributed'],
    },
    payload: {
      ...towFit.limits.payload,
      askedBy: ['vehicle.placardPayload', 'vehicle.gvwr'],
    },
  },
  findings: { 'tongue-negative': towFit.findings['tongue-negative'] },
} as const;
