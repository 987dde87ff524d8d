import { standingOn } from '../../engine/formula/standing-on';
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

/** What comes out heavy is looked up by tow fit alone, and not reckoned here. */
const { cautious: _tongue, ...tongue } = rigTrade.limits.tongue;
const { cautious: _payload, ...payload } = rigTrade.limits.payload;

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
      ...tongue,
      askedBy: ['vehicle.maxTongueCarried', 'vehicle.maxTongueDistributed'],
    },
    payload: {
      ...payload,
      askedBy: ['vehicle.placardPayload', 'vehicle.gvwr'],
    },
  },
  findings: {
    'tongue-negative': rigTrade.findings['tongue-negative'],
    'empty-over': emptyOver,
  },
} as const;
