import { standingOn } from '../../engine/formula/standing-on';
import { asReckoned } from '../../trade/rig/as-reckoned';
import { emptyOver } from '../../trade/rig/empty-over';
import { rigTrade } from '../../trade/rig/index';

/** Weights of the rig and what may be towed and carried, asked and reckoned as for tow fit. */
export const rig = standingOn(
  rigTrade,
  'combined.gross',
  'trailer.loaded',
  'trailerWeight.limit',
  'tongue.loaded',
  'tongue.limit',
  'payload.used',
  'payload.available',
  'vehicle.curb',
  'tongue.isKnown',
  'tongue.mayBeMore',
  'trailerWeight.mayBeMore',
);

/**
 * The ratings hold whatever the battery says. Each is asked once its rating is mentioned; what is
 * not asked is named with the answer.
 */
export const towRatings = {
  facts: {
    'trailer.frontalArea': rigTrade.facts['trailer.frontalArea'],
    'trip.steepestGrade': rigTrade.facts['trip.steepestGrade'],
    'vehicle.engine': rigTrade.facts['vehicle.engine'],
  },
  parameters: {
    'margin.towRating': rigTrade.parameters['margin.towRating'],
    'margin.other': rigTrade.parameters['margin.other'],
    'margin.least': rigTrade.parameters['margin.least'],
    'tongue.none': rigTrade.parameters['tongue.none'],
  },
  limits: {
    'trailer-weight': {
      ...rigTrade.limits['trailer-weight'],
      askedBy: ['vehicle.maxTrailerWeight', 'vehicle.maxTrailerCarried'],
    },
    tongue: {
      ...asReckoned(rigTrade.limits.tongue),
      askedBy: ['vehicle.maxTongueCarried', 'vehicle.maxTongueDistributed'],
    },
    payload: {
      ...asReckoned(rigTrade.limits.payload),
      askedBy: ['vehicle.placardPayload', 'vehicle.gvwr'],
    },
  },
  findings: {
    'tongue-negative': rigTrade.findings['tongue-negative'],
    'empty-over': emptyOver,
  },
} as const;
