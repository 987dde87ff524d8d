import { part } from '../../engine/define/topic';
import {
  grossRatings,
  partsRating as makersRating,
  tongueBandSeen as tongueBand,
} from '../../trade/bibliography/common';
import { statics } from '../../trade/bibliography/retrofit';

/**
 * What it does to the trailer's weight, the ball and the axles.
 *
 *      ball              axle        add-on
 *       ├────── L ────────┤──── d ────┤        the ball loses w·d ÷ L
 *
 * With bars in use, what they put on the trailer's axles goes with the tongue.
 */
export const weight = part({
  formulas: {
    'added.weight': {
      label: 'Weight added',
      noun: 'the weight added',
      unit: 'lb',
      is: 'addon.weight + addon.carries - addon.replaces',
      source: statics,
    },
    'added.tongue': {
      label: 'Change of the tongue weight',
      noun: 'the change of the tongue weight',
      unit: 'lb',
      is: 'added.weight * addon.ahead / trailer.ballToAxle',
      source: statics,
    },
    'trailer.after': {
      label: 'Trailer weight with it, loaded',
      noun: 'the loaded trailer with it',
      unit: 'lb',
      is: 'trailer.loaded + added.weight',
      source: statics,
    },
    'tongue.after': {
      label: 'Tongue weight with it',
      noun: 'the tongue with it',
      unit: 'lb',
      is: 'tongue.loaded + added.tongue',
      source: statics,
    },
    'share.after': {
      label: 'Tongue share with it',
      noun: 'the tongue’s share with it',
      unit: '1',
      is: 'tongue.after / trailer.after',
      source: tongueBand,
    },
    'bars.more': {
      label: 'What the bars put on the trailer’s axles beside before',
      unit: 'lb',
      is: 'choose(bars.active, bars.ontoTrailer * added.tongue / tongue.loaded, 0)',
      source: statics,
    },
    'axles.after': {
      label: 'Trailer axles with it',
      noun: 'the load on the trailer’s axles with it',
      unit: 'lb',
      is: 'axle.trailer + added.weight - added.tongue + bars.more',
      source: statics,
    },
    'payload.after': {
      label: 'Payload used with it',
      noun: 'the payload used with it',
      unit: 'lb',
      is: 'payload.used + added.tongue',
      source: statics,
    },
    'cargo.left': {
      label: 'Cargo capacity of the trailer left',
      noun: 'the cargo capacity left',
      unit: 'lb',
      is: 'trailer.gvwr - trailer.after',
      source: grossRatings,
    },
  },
  limits: {
    'trailer-gross': {
      label: 'Trailer’s own rating',
      short: 'the trailer’s own rating',
      exceeded: true,
      used: 'trailer.after',
      limit: 'trailer.gvwr',
      empty: 'trailer.dryWeight',
      margin: 'margin.other',
      askedBy: ['addon.weight', 'addon.carries', 'trailer.gvwr'],
      source: grossRatings,
    },
    'trailer-axles': {
      label: 'Trailer axles',
      short: 'the trailer’s axles',
      plural: true,
      used: 'axles.after',
      limit: 'trailerAxles.limit',
      margin: 'margin.other',
      askedBy: ['trailer.gawr'],
      source: grossRatings,
    },
    tongue: {
      label: 'Tongue weight',
      short: 'the tongue weight',
      used: 'tongue.after',
      limit: 'tongue.limit',
      margin: 'margin.other',
      askedBy: ['vehicle.maxTongueCarried', 'vehicle.maxTongueDistributed'],
      source: makersRating,
    },
    payload: {
      label: 'Payload',
      short: 'payload',
      used: 'payload.after',
      limit: 'payload.available',
      margin: 'margin.other',
      askedBy: ['vehicle.placardPayload'],
      source: makersRating,
    },
  },
  findings: {
    'tongue-lightened': {
      label: 'Tongue share against the usual band',
      askedBy: ['addon.ahead', 'trailer.dryTongueWeight', 'trailer.measuredTongueWeight'],
      stop: {
        when: {
          all: [
            { fact: 'share.after', operator: 'lessThan', value: { fact: 'tongue.lowEdge' } },
            { fact: 'added.tongue', operator: 'lessThan', value: { fact: 'tongue.none' } },
          ],
        },
        wrong:
          'It takes so much off the ball that the tongue’s share falls under the usual band, and such a trailer sways.',
        do: 'Not at that place. Put it ahead of the axles, or move load forward and weigh the tongue.',
      },
      care: {
        when: {
          any: [
            { fact: 'share.after', operator: 'lessThan', value: { fact: 'tongue.lowEdge' } },
            { fact: 'share.after', operator: 'greaterThan', value: { fact: 'tongue.highEdge' } },
          ],
        },
        wrong: 'With it the tongue’s share is outside the usual band.',
        do: 'Shift load, and weigh the tongue before the first trip.',
      },
      otherwise: 'With it the tongue’s share stays in the usual band.',
      open: {
        wrong: 'It may take the tongue’s share under the usual band.',
        do: 'Weigh the tongue, and measure the ball’s and its own distance from the axles, before it is fitted.',
      },
      source: tongueBand,
    },
  },
});
