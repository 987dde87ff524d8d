import { part } from '../../engine/define/topic';
import {
  grossRatings,
  partsRating as makersRating,
  tongueBandSeen as tongueBand,
} from '../../trade/bibliography/common';
import { lightened, statics, unplaced } from '../../trade/bibliography/retrofit';

/**
 * What it does to the trailer's weight, the ball and the axles.
 *
 *      ball              axle        add-on
 *       ├────── L ────────┤──── d ────┤        the ball loses w·d ÷ L
 *
 * With bars in use, what they put on the trailer's axles goes with the tongue.
 */
export const weight = part({
  parameters: {
    'tongue.blamed': {
      label: 'So much off the ball that the addition is blamed for it',
      noun: 'what counts as a lightened ball',
      unit: 'lb',
      values: [{ from: '2020-01-01', value: 25 }],
      range: [10, 50],
      source: lightened,
    },
    'share.ballStop': {
      label: 'Tongue share under which nobody tows, ball',
      unit: '1',
      values: [{ from: '2020-01-01', value: 0.07 }],
      range: [0.05, 0.09],
      source: lightened,
    },
    'share.pinStop': {
      label: 'Pin share under which nobody tows, fifth-wheel',
      unit: '1',
      values: [{ from: '2020-01-01', value: 0.1 }],
      range: [0.08, 0.15],
      source: lightened,
    },
    'unplaced.hung': {
      label: 'What hangs behind takes off the ball, of its weight, at the most',
      unit: '1',
      values: [{ from: '2020-01-01', value: 1 }],
      range: [0.8, 1.5],
      source: unplaced,
    },
    'unplaced.inBodyBehind': {
      label: 'What rides in the body takes off the ball, of its weight, at the most',
      unit: '1',
      values: [{ from: '2020-01-01', value: 0.15 }],
      range: [0.05, 0.6],
      source: unplaced,
    },
    'unplaced.inBodyAhead': {
      label: 'What rides in the body puts on the ball, of its weight, at the most',
      unit: '1',
      values: [{ from: '2020-01-01', value: 0.5 }],
      range: [0.2, 0.8],
      source: unplaced,
    },
  },
  formulas: {
    'added.weight': {
      label: 'Weight added',
      noun: 'the weight added',
      unit: 'lb',
      is: 'addon.weight + addon.carries - addon.replaces',
      source: statics,
    },
    'place.isBehind': {
      label: 'It hangs behind the trailer',
      unit: 'yes-no',
      is: "(given(addon.heldBy) && (addon.heldBy == 'receiver' || addon.heldBy == 'bumper' || addon.heldBy == 'ladder')) || (!given(addon.heldBy) && addon.kind == 'bicycle-rack')",
      source: unplaced,
    },
    'place.isOnFrame': {
      label: 'It hangs on the A-frame',
      unit: 'yes-no',
      is: "given(addon.heldBy) && addon.heldBy == 'a-frame'",
      source: unplaced,
    },
    'place.share': {
      label: 'Its place as a share of the way from axle to ball',
      noun: 'its place',
      unit: '1',
      is: 'choose(given(addon.ahead), addon.ahead / trailer.ballToAxle, choose(place.isBehind, between(-unplaced.hung, 0), choose(place.isOnFrame, between(propane.place, 1), between(-unplaced.inBodyBehind, unplaced.inBodyAhead))))',
      source: statics,
    },
    'added.tongue': {
      label: 'Change of the tongue weight',
      noun: 'the change of the tongue weight',
      unit: 'lb',
      is: 'added.weight * place.share',
      source: statics,
    },
    'tongue.isLightened': {
      label: 'It takes weight off the tongue',
      unit: 'yes-no',
      is: 'added.tongue < 0',
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
      is: 'tongue.share + (added.tongue - tongue.share * added.weight) / trailer.after',
      source: tongueBand,
    },
    'share.stopEdge': {
      label: 'Share under which nobody tows',
      noun: 'the share under which nobody tows',
      unit: '1',
      is: "choose(trailer.coupling == 'fifth-wheel', share.pinStop, share.ballStop)",
      source: lightened,
    },
    'tongue.taken': {
      label: 'What it takes off the ball',
      noun: 'what it takes off the ball',
      unit: 'lb',
      is: '-added.tongue',
      source: statics,
    },
    'tongue.isBroughtUnder': {
      label: 'The addition brings the share under an edge',
      unit: 'yes-no',
      is: 'tongue.taken >= tongue.blamed && ((tongue.share >= tongue.lowEdge && share.after < tongue.lowEdge) || (tongue.share >= share.stopEdge && share.after < share.stopEdge))',
      source: lightened,
    },
    'tongue.isUntold': {
      label: 'It hangs behind, and nobody told what weighs on the ball',
      unit: 'yes-no',
      is: 'place.isBehind && !given(addon.ahead) && !given(trailer.dryTongueWeight) && !given(trailer.measuredTongueWeight)',
      source: lightened,
    },
    'weight.isUntold': {
      label: 'It weighs something, and the trailer’s rating was not told',
      unit: 'yes-no',
      is: "!given(trailer.gvwr) && (given(addon.weight) || given(addon.carries) || addon.kind == 'bicycle-rack' || addon.kind == 'air-conditioner' || addon.kind == 'battery' || addon.kind == 'solar-panel' || addon.kind == 'gas-appliance')",
      source: grossRatings,
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
      do: 'Leave other load at home, or leave it off.',
      near: 'Put nothing more into the trailer.',
      exceeded: true,
      used: 'trailer.after',
      limit: 'trailer.gvwr',
      empty: 'trailer.unloaded',
      margin: 'margin.other',
      marginLeast: 'margin.least',
      askedBy: ['trailer.gvwr'],
      source: grossRatings,
    },
    'trailer-axles': {
      label: 'Trailer axles',
      short: 'the trailer’s axles',
      do: 'Leave other load at home, or leave it off.',
      near: 'Put nothing more into the trailer.',
      plural: true,
      used: 'axles.after',
      limit: 'trailerAxles.limit',
      margin: 'margin.other',
      marginLeast: 'margin.least',
      askedBy: ['trailer.gawr'],
      source: grossRatings,
    },
    tongue: {
      label: 'Tongue weight',
      short: 'the tongue weight',
      do: 'Put it over the axles, keep a tenth of the trailer on the ball, and weigh the tongue.',
      near: 'Put nothing more into the nose, and weigh the tongue.',
      used: 'tongue.after',
      limit: 'tongue.limit',
      margin: 'margin.other',
      askedBy: ['vehicle.maxTongueCarried', 'vehicle.maxTongueDistributed'],
      source: makersRating,
    },
    payload: {
      label: 'Payload',
      short: 'payload',
      do: 'Take load out of the vehicle, or put it over the trailer’s axles.',
      near: 'Take nothing more into the vehicle.',
      used: 'payload.after',
      limit: 'payload.available',
      margin: 'margin.other',
      marginLeast: 'margin.least',
      askedBy: ['vehicle.placardPayload'],
      source: makersRating,
    },
  },
  findings: {
    'tongue-lightened': {
      label: 'Tongue share against the usual band',
      askedBy: ['addon.ahead', 'trailer.dryTongueWeight', 'trailer.measuredTongueWeight'],
      stop: {
        when: 'tongue.isBroughtUnder',
        wrong:
          'The new part takes {tongue.taken} off the ball: {share.after} of the trailer stay on it instead of {tongue.share}.',
        because: 'A trailer so light in front sways.',
        do: 'Not there: put it ahead of the axles, or move load forward. Then weigh the tongue: {tongue.lowEdge} of the trailer belongs on it.',
      },
      care: [
        {
          when: 'tongue.share < tongue.lowEdge',
          wrong:
            'Already before it the ball carries only {tongue.share} of the trailer, under the usual {tongue.lowEdge}.',
          because: 'The addition does not bring that about, and such a trailer sways all the same.',
          do: 'Move load ahead of the axles and weigh the tongue before it is towed again.',
        },
        {
          when: 'tongue.share > tongue.highEdge',
          wrong:
            'Already before it the ball carries {tongue.share} of the trailer, over the usual {tongue.highEdge}.',
          because:
            'The addition does not bring that about; so heavy a tongue loads the rear of the tow vehicle.',
          do: 'Move load back toward the axles and weigh the tongue.',
        },
        {
          when: 'share.after < tongue.lowEdge',
          wrong:
            'With it the ball carries {share.after} of the trailer, just under the usual {tongue.lowEdge}.',
          do: 'Move a little load forward, and weigh the tongue before the first trip.',
        },
        {
          when: 'share.after > tongue.highEdge',
          wrong:
            'With it the ball carries {share.after} of the trailer, over the usual {tongue.highEdge}.',
          because: 'So heavy a tongue loads the rear of the tow vehicle.',
          do: 'Move load back toward the axles, and weigh the tongue before the first trip.',
        },
      ],
      otherwise: 'With it the ball carries {share.after} of the trailer, within the usual band.',
      open: {
        wrong: 'The new part may leave too little or too much on the ball.',
        do: 'Weigh the tongue, and measure from the axles to the ball and to its place, before it is fitted.',
      },
      source: tongueBand,
    },
    'tongue-untold': {
      label: 'What weighs on the ball was asked',
      if: {
        when: 'tongue.isUntold',
        wrong:
          'What hangs behind takes weight off the ball, and what weighs on the ball is not known yet.',
        because: 'A sound trailer turns into one that sways.',
        do: 'Weigh the tongue, and measure from the axles to the ball and to the rack.',
        proviso: 'the ball still carries {tongue.lowEdge} of the loaded trailer',
      },
      otherwise: 'It does not hang behind, or the ball’s weight is told.',
      source: lightened,
    },
    'weight-untold': {
      label: 'The trailer’s rating was asked',
      if: {
        when: 'weight.isUntold',
        wrong: 'What the trailer weighs loaded, and what it may weigh, is not known yet.',
        do: 'Read the label on the trailer, and weigh it loaded.',
        proviso: 'the loaded trailer still keeps its own rating with it',
      },
      otherwise: 'The trailer’s rating is told, or it weighs next to nothing.',
      source: grossRatings,
    },
  },
});
