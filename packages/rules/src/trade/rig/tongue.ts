import { part } from '../../engine/define/topic';
import { custom, house, statics, tongueBand } from '../bibliography/common';
import { fifthWheelBand, loadedAddOn, makersRating } from '../bibliography/rig';

/**
 * Tongue weight, loaded: measured, else by moments about the trailer's axles, else the dry tongue
 * and a tenth.
 *
 *      ball                    axle          dry tongue + Σ wᵢ·dᵢ ÷ L
 *       ├────────── L ───────────┤
 *              wᵢ ├───── dᵢ ─────┤           ahead +, behind −
 */
export const tongue = part({
  parameters: {
    'tongue.addOn': {
      label: 'Loaded add-on to the dry tongue weight',
      unit: '%',
      values: [{ from: '2020-01-01', value: 10 }],
      source: loadedAddOn,
    },
    'tongue.leastShare': {
      label: 'Least usual tongue share, ball',
      unit: '1',
      values: [{ from: '2020-01-01', value: 0.1 }],
      source: tongueBand,
    },
    'tongue.mostShare': {
      label: 'Most usual tongue share, ball',
      unit: '1',
      values: [{ from: '2020-01-01', value: 0.15 }],
      source: tongueBand,
    },
    'tongue.leastPinShare': {
      label: 'Least usual pin share, fifth-wheel',
      unit: '1',
      values: [{ from: '2020-01-01', value: 0.15 }],
      source: fifthWheelBand,
    },
    'tongue.mostPinShare': {
      label: 'Most usual pin share, fifth-wheel',
      unit: '1',
      values: [{ from: '2020-01-01', value: 0.25 }],
      source: fifthWheelBand,
    },
    'tongue.heavyBallShare': {
      label: 'A heavy but common tongue share, ball',
      unit: '1',
      values: [{ from: '2020-01-01', value: 0.13 }],
      source: house,
    },
    'tongue.heavyPinShare': {
      label: 'A heavy but common pin share, fifth-wheel',
      unit: '1',
      values: [{ from: '2020-01-01', value: 0.2 }],
      source: house,
    },
    'tongue.none': {
      label: 'No weight on the ball',
      noun: 'nothing',
      unit: 'lb',
      values: [{ from: '2020-01-01', value: 0 }],
      source: statics,
    },
    'propane.place': {
      label: 'Where propane not placed rides, as a share of the way from axle to ball',
      noun: 'its usual share of the way from axle to ball',
      unit: '1',
      values: [{ from: '2020-01-01', value: 0.8 }],
      source: custom,
    },
  },
  formulas: {
    'tongue.momentsKnown': {
      label: 'Everything loaded has a place',
      unit: 'yes-no',
      is: 'known(trailer.dryTongueWeight, trailer.ballToAxle) && count(trailer.options) + count(trailer.cargo) > 0 && known(trailer.options.ahead, trailer.cargo.ahead)',
      source: statics,
    },
    'tongue.placedMoment': {
      label: 'Moment of what has a place, about the axle',
      noun: 'the moment of what has a place',
      unit: 'lb·ft',
      is: 'sum(trailer.options.weight * trailer.options.ahead) + sum(trailer.cargo.weight * trailer.cargo.ahead) + choose(known(trailer.propaneAhead), trailer.propane * trailer.propaneAhead, 0) + choose(known(trailer.freshWaterAhead), trailer.freshWater * water.density * trailer.freshWaterAhead, 0)',
      source: statics,
    },
    'tongue.unplacedPropane': {
      label: 'Propane on the A-frame, its part on the ball',
      noun: 'the propane’s part on the ball',
      unit: 'lb',
      is: 'choose(known(trailer.propaneAhead), 0, trailer.propane * propane.place)',
      source: custom,
    },
    'tongue.byMoments': {
      label: 'Tongue weight by moments',
      unit: 'lb',
      is: 'needs(trailer.dryTongueWeight + tongue.placedMoment / trailer.ballToAxle + tongue.unplacedPropane, trailer.dryTongueWeight, trailer.ballToAxle, trailer.options.ahead, trailer.cargo.ahead)',
      source: statics,
    },
    'tongue.byTenth': {
      label: 'Dry tongue weight and a tenth',
      unit: 'lb',
      is: 'trailer.dryTongueWeight * (1 + tongue.addOn)',
      source: loadedAddOn,
    },
    'tongue.loaded': {
      label: 'Tongue weight, loaded',
      noun: 'the tongue',
      unit: 'lb',
      is: 'choose(known(trailer.measuredTongueWeight), trailer.measuredTongueWeight, choose(tongue.momentsKnown, tongue.byMoments, tongue.byTenth))',
      source: statics,
    },
    'tongue.share': {
      label: 'Tongue share of the loaded trailer',
      noun: 'the tongue’s share of the trailer',
      unit: '1',
      is: 'tongue.loaded / trailer.loaded',
      source: tongueBand,
    },
    'tongue.lowEdge': {
      label: 'Least usual share',
      noun: 'the least usual share',
      unit: '1',
      is: "choose(trailer.coupling == 'fifth-wheel', tongue.leastPinShare, tongue.leastShare)",
      source: tongueBand,
    },
    'tongue.highEdge': {
      label: 'Most usual share',
      noun: 'the most usual share',
      unit: '1',
      is: "choose(trailer.coupling == 'fifth-wheel', tongue.mostPinShare, tongue.mostShare)",
      source: tongueBand,
    },
    'tongue.isEstimate': {
      label: 'The tongue is only an estimate',
      unit: 'yes-no',
      is: '!known(trailer.measuredTongueWeight) && !tongue.momentsKnown && known(trailer.dryTongueWeight)',
      source: loadedAddOn,
    },
    'tongue.heavy': {
      label: 'Tongue weight at a heavy but common share',
      noun: 'a tongue of heavy but common share',
      unit: 'lb',
      is: "trailer.loaded * choose(trailer.coupling == 'fifth-wheel', tongue.heavyPinShare, tongue.heavyBallShare)",
      source: house,
    },
    'tongue.limit': {
      label: 'Tongue rating that counts',
      noun: 'the tongue rating',
      unit: 'lb',
      is: 'choose(distribution.inUse && known(vehicle.maxTongueDistributed), vehicle.maxTongueDistributed, vehicle.maxTongueCarried)',
      source: makersRating,
    },
    'tongue.limitKnown': {
      label: 'The tongue rating is known',
      unit: 'yes-no',
      is: 'known(tongue.limit)',
      source: makersRating,
    },
  },
  limits: {
    tongue: {
      label: 'Tongue weight',
      short: 'the tongue weight',
      used: 'tongue.loaded',
      limit: 'tongue.limit',
      margin: 'margin.other',
      source: makersRating,
    },
  },
  findings: {
    'tongue-share': {
      label: 'Tongue share',
      care: {
        when: {
          any: [
            { fact: 'tongue.share', operator: 'lessThan', value: { fact: 'tongue.lowEdge' } },
            { fact: 'tongue.share', operator: 'greaterThan', value: { fact: 'tongue.highEdge' } },
          ],
        },
        wrong: 'The tongue carries too small or too great a share of the trailer.',
        do: 'Too light and the trailer sways, too heavy and it overloads the rear. Shift load and weigh the tongue again before you tow.',
      },
      otherwise: 'The tongue’s share of the trailer is in the usual band.',
      source: tongueBand,
    },
    'tongue-estimate': {
      label: 'Tongue weight is an estimate',
      care: {
        when: {
          all: [
            { fact: 'tongue.isEstimate', operator: 'equal', value: 'yes' },
            {
              any: [
                {
                  all: [
                    { fact: 'tongue.limitKnown', operator: 'equal', value: 'yes' },
                    {
                      fact: 'tongue.heavy',
                      operator: 'greaterThan',
                      value: { fact: 'tongue.limit' },
                    },
                  ],
                },
                {
                  all: [
                    { fact: 'payload.availableKnown', operator: 'equal', value: 'yes' },
                    {
                      fact: 'payload.heavy',
                      operator: 'greaterThan',
                      value: { fact: 'payload.available' },
                    },
                  ],
                },
              ],
            },
          ],
        },
        wrong:
          'The tongue weight is an estimate, and a heavier one that is common would break a limit.',
        do: 'Weigh it: it may be heavier.',
      },
      otherwise:
        'A heavier tongue that is common would still be within its limits, or the tongue is better known than by estimate.',
      source: house,
    },
    'tongue-negative': {
      label: 'Tongue lifts',
      stop: {
        when: {
          all: [{ fact: 'tongue.loaded', operator: 'lessThan', value: { fact: 'tongue.none' } }],
        },
        wrong: 'The tongue lifts on the ball.',
        do: 'The trailer is loaded too far back and will sway. Do not tow it so; move load ahead of the axles.',
      },
      otherwise: 'The tongue presses down on the ball.',
      source: statics,
    },
  },
});
