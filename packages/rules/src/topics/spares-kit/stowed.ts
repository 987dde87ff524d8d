import { part } from '../../engine/define/topic';
import { partsRating as makersRating, statics, tongueBand } from '../../trade/bibliography/common';

/**
 * The kit has a place, and its weight goes where that place puts it.
 *
 *      ball                    axles
 *       ├────────── L ───────────┤          in the trailer: kit · d ÷ L onto the ball,
 *               kit ├──── d ─────┤          the rest onto the axles
 *     in the vehicle: all of it is payload
 */
export const stowed = part({
  formulas: {
    'kit.inTrailer': {
      label: 'The kit rides in the trailer',
      unit: 'yes-no',
      is: "kit.place == 'trailer'",
      source: statics,
    },
    'kit.onBall': {
      label: 'What the kit puts on the ball',
      noun: 'the kit’s part on the ball',
      unit: 'lb',
      is: 'choose(kit.inTrailer, kit.weight * kit.ahead / trailer.ballToAxle, 0)',
      source: statics,
    },
    'kit.onAxles': {
      label: 'What the kit puts on the trailer’s axles',
      noun: 'the kit’s part on the axles',
      unit: 'lb',
      is: 'choose(kit.inTrailer, kit.weight * (1 - kit.ahead / trailer.ballToAxle), 0)',
      source: statics,
    },
    'stowed.payload': {
      label: 'Payload used, with the kit',
      noun: 'the payload used',
      unit: 'lb',
      is: 'payload.used + choose(kit.inTrailer, kit.onBall, kit.weight)',
      source: statics,
    },
    'stowed.trailer': {
      label: 'Trailer weight, with the kit',
      noun: 'the loaded trailer',
      unit: 'lb',
      is: 'trailer.loaded + choose(kit.inTrailer, kit.weight, 0)',
      source: statics,
    },
    'stowed.tongue': {
      label: 'Tongue weight, with the kit',
      noun: 'the tongue',
      unit: 'lb',
      is: 'tongue.loaded + kit.onBall',
      source: statics,
    },
    'stowed.share': {
      label: 'Tongue share, with the kit',
      noun: 'the tongue’s share of the trailer',
      unit: '1',
      is: 'stowed.tongue / stowed.trailer',
      source: statics,
    },
    'stowed.isUnrated': {
      label: 'No rating for payload or trailer was told',
      unit: 'yes-no',
      is: '!(given(vehicle.placardPayload) || given(vehicle.gvwr) || given(trailer.gvwr))',
      source: makersRating,
    },
    'stowed.mayBeOver': {
      label: 'More is loaded than may be',
      unit: 'yes-no',
      is: 'stowed.payload > payload.available || stowed.trailer > trailer.gvwr',
      source: makersRating,
    },
    'kit.over': {
      label: 'Too much on payload or trailer, whichever is more',
      noun: 'what is too much',
      unit: 'lb',
      is: 'max(0, stowed.payload - payload.available, stowed.trailer - trailer.gvwr)',
      source: statics,
    },
  },
  limits: {
    payload: {
      label: 'Payload',
      short: 'payload',
      do: 'Leave out what the road does not ask for, never jack, stands or what somebody’s health needs. Or carry it in the trailer if that has room.',
      near: 'Take nothing more into the vehicle.',
      used: 'stowed.payload',
      limit: 'payload.available',
      margin: 'margin.other',
      marginLeast: 'margin.least',
      askedBy: ['vehicle.placardPayload', 'vehicle.gvwr'],
      source: makersRating,
    },
    'trailer-gross': {
      label: 'Trailer’s own rating',
      short: 'the trailer’s own rating',
      do: 'Leave other load at home, or carry the kit in the vehicle if its payload has room.',
      near: 'Put nothing more into the trailer.',
      exceeded: true,
      used: 'stowed.trailer',
      limit: 'trailer.gvwr',
      empty: 'trailer.unloaded',
      margin: 'margin.other',
      marginLeast: 'margin.least',
      askedBy: ['trailer.gvwr'],
      source: makersRating,
    },
    tongue: {
      label: 'Tongue weight',
      short: 'the tongue weight',
      do: 'Carry the kit over the trailer’s axles, or in the vehicle if its payload has room.',
      near: 'Put nothing more into the trailer’s nose.',
      used: 'stowed.tongue',
      limit: 'tongue.limit',
      margin: 'margin.other',
      askedBy: ['vehicle.maxTongueCarried', 'vehicle.maxTongueDistributed'],
      source: makersRating,
    },
  },
  findings: {
    'weight-untold': {
      label: 'Weight left for the kit',
      if: {
        when: 'stowed.isUnrated && stowed.mayBeOver',
        wrong: 'What may still be loaded where the kit rides is not known yet.',
        do: 'Read the label in the vehicle’s door, or the trailer’s certification label.',
        proviso: 'there is weight left for it where it rides',
      },
      otherwise: 'The kit was set against a rating.',
      open: {
        wrong: 'What may still be loaded where the kit rides is not known yet.',
        do: 'Read the label in the vehicle’s door, or the trailer’s certification label.',
      },
      source: makersRating,
    },
    'tongue-share': {
      label: 'Tongue share with the kit',
      askedBy: ['kit.place'],
      care: {
        when: {
          any: [
            { fact: 'stowed.share', operator: 'lessThan', value: { fact: 'tongue.lowEdge' } },
            { fact: 'stowed.share', operator: 'greaterThan', value: { fact: 'tongue.highEdge' } },
          ],
        },
        wrong:
          'With the kit where it rides, the tongue’s share of the trailer is outside what is usual.',
        do: 'Too light and the trailer sways, too heavy and it overloads the rear. Find the kit another place.',
      },
      otherwise:
        'With the kit where it rides, the tongue’s share of the trailer is in the usual band.',
      source: tongueBand,
    },
  },
});
