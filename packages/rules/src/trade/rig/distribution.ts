import { part } from '../../engine/define/topic';
import { restoredBound, statics } from '../bibliography/common';
import { makersRating } from '../bibliography/rig';

/**
 * What the bars of a weight-distributing hitch move.
 *
 *     front      rear   ball               trailer axles
 *       ├─── w ───┤── b ──┤──────── L ────────┤
 *
 * Bars that restore a share r of what the tongue V took off the front axle give it back r·V·b/w,
 * put r·V·b/(L + b) on the trailer's axles, and take both off the rear. Their moment M is
 * r·V·b / (1 + b/L). They do nothing until the tongue presses.
 */
export const distribution = part({
  formulas: {
    'distribution.allowed': {
      label: 'Weight distribution is allowed',
      unit: 'yes-no',
      is: "!given(vehicle.distributionAllowed) || vehicle.distributionAllowed == 'yes'",
      source: makersRating,
    },
    'distribution.isUsed': {
      label: 'Weight distribution is used and allowed',
      unit: 'yes-no',
      is: "hitch.distribution == 'yes' && distribution.allowed",
      source: makersRating,
    },
    'distribution.inUse': {
      label: 'Weight distribution in use',
      unit: 'yes-no',
      is: 'coupling.isBall && distribution.isUsed',
      source: makersRating,
    },
    'distribution.mayBe': {
      label: 'There may be weight distribution',
      unit: 'yes-no',
      is: "coupling.isBall && !given(hitch.distribution) && !(known(vehicle.distributionAllowed) && vehicle.distributionAllowed == 'no')",
      source: makersRating,
    },
    'distribution.isTold': {
      label: 'Weight distribution is told to be used',
      unit: 'yes-no',
      is: "coupling.isBall && known(hitch.distribution) && hitch.distribution == 'yes'",
      source: makersRating,
    },
    'hitch.behind': {
      label: 'Rear axle to ball, with the extension',
      noun: 'the overhang to the ball',
      unit: 'in',
      is: 'vehicle.overhang + hitch.extension',
      source: statics,
    },
    'hitch.lever': {
      label: 'Overhang against the wheelbase',
      unit: '1',
      is: 'hitch.behind / vehicle.wheelbase',
      source: statics,
    },
    'tongue.pressing': {
      label: 'Tongue weight that presses',
      noun: 'the pressing tongue',
      unit: 'lb',
      is: 'max(0, tongue.loaded)',
      source: statics,
    },
    'tongue.lifting': {
      label: 'Tongue weight that lifts',
      noun: 'the lifting tongue',
      unit: 'lb',
      is: 'min(0, tongue.loaded)',
      source: statics,
    },
    'bars.restoredShare': {
      label: 'Share of the front axle’s loss that the bars restore',
      noun: 'the share restored',
      unit: '1',
      is: 'choose(known(hitch.restored), hitch.restored, between(0, 1))',
      source: restoredBound,
    },
    'bars.reach': {
      label: 'Overhang as a share of the way from rear axle to trailer axles',
      unit: '1',
      is: '1 - trailer.ballToAxle / (trailer.ballToAxle + hitch.behind)',
      source: statics,
    },
    'bars.active': {
      label: 'The bars carry',
      unit: 'yes-no',
      is: 'distribution.inUse && tongue.loaded > 0',
      source: statics,
    },
    'bars.areReckoned': {
      label: 'Bars are in use, and their levers are known',
      unit: 'yes-no',
      is: 'distribution.inUse && known(vehicle.overhang, trailer.ballToAxle)',
      source: statics,
    },
    'bars.areOpen': {
      label: 'Bars are in use, their levers unknown',
      unit: 'yes-no',
      is: 'bars.active && !known(vehicle.overhang, trailer.ballToAxle)',
      source: statics,
    },
    'bars.notKnown': {
      label: 'What bars move whose levers nobody knows',
      noun: 'what the bars move',
      unit: 'lb',
      is: 'choose(bars.areOpen, needs(tongue.pressing, vehicle.overhang, trailer.ballToAxle), 0)',
      source: statics,
    },
    'bars.moment': {
      label: 'Moment of the bars',
      noun: 'the moment of the bars',
      unit: 'lb·ft',
      is: 'choose(bars.areReckoned, bars.restoredShare * tongue.pressing * trailer.ballToAxle * bars.reach, choose(bars.areOpen, needs(tongue.pressing * trailer.ballToAxle, vehicle.overhang, trailer.ballToAxle), 0))',
      source: statics,
    },
    'bars.frontShare': {
      label: 'Part of the tongue that the bars give back to the front axle',
      unit: '1',
      is: 'choose(bars.areReckoned, bars.restoredShare * hitch.lever, 0)',
      source: statics,
    },
    'bars.trailerShare': {
      label: 'Part of the tongue that the bars put on the trailer’s axles',
      unit: '1',
      is: 'choose(bars.areReckoned, bars.restoredShare * bars.reach, 0)',
      source: statics,
    },
    'bars.frontLost': {
      label: 'Part of the front axle’s loss that stays lost',
      unit: '1',
      is: 'choose(bars.areReckoned, 1 - bars.restoredShare, 1)',
      source: statics,
    },
    'bars.ontoFront': {
      label: 'What the bars give back to the front axle',
      noun: 'what the bars give back to the front axle',
      unit: 'lb',
      is: 'tongue.pressing * bars.frontShare + bars.notKnown',
      source: statics,
    },
    'bars.ontoTrailer': {
      label: 'What the bars put on the trailer’s axles',
      noun: 'what the bars put on the trailer’s axles',
      unit: 'lb',
      is: 'tongue.pressing * bars.trailerShare + bars.notKnown',
      source: statics,
    },
  },
});
