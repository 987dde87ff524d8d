import { part } from '../../engine/define/topic';
import { custom, house, statics, tongueBand } from '../bibliography/common';
import { loadedAddOn } from '../bibliography/rig';

/** The part of a row’s weight that stands on the ball: by its place, or anywhere in the body. */
const onBall = (list: string): string =>
  `sum(${list}.weight * choose(known(${list}.ahead), ${list}.ahead / trailer.ballToAxle, place.inTrailer))`;
/** The same for what is in a tank. */
const ofTank = (water: string): string =>
  `${water} * water.density * choose(known(${water}Ahead), ${water}Ahead / trailer.ballToAxle, place.ofTank)`;
const tanks = ['trailer.freshWater', 'trailer.grayWater', 'trailer.blackWater'];
/** Whether something aboard has a place, or may be aboard and would have one. */
const placed = (what: string): string => `(known(${what}Ahead) && may(${what} > 0))`;

/**
 * Tongue weight, loaded: measured, else by moments about the trailer's axles as soon as something
 * aboard has a place, else the dry tongue and a tenth.
 *
 *      ball                    axle          dry tongue + Σ wᵢ·dᵢ ÷ L
 *       ├────────── L ───────────┤
 *              wᵢ ├───── dᵢ ─────┤           ahead +, behind −
 *
 * What has no place rides somewhere in the body: a range of its weight, not nothing.
 */
export const tongueWeight = part({
  parameters: {
    'tongue.addOn': {
      label: 'Loaded add-on to the dry tongue weight',
      unit: '%',
      values: [{ from: '2020-01-01', value: 10 }],
      source: loadedAddOn,
    },
    'unplaced.behind': {
      label: 'Share of what nobody placed that may lift the ball',
      unit: '%',
      values: [{ from: '2020-01-01', value: 15 }],
      range: [5, 60],
      source: house,
    },
    'unplaced.ahead': {
      label: 'Share of what nobody placed that may rest on the ball',
      unit: '%',
      values: [{ from: '2020-01-01', value: 50 }],
      range: [20, 80],
      source: house,
    },
    'tank.share': {
      label: 'Share of a tank nobody placed that may lift the ball or rest on it',
      unit: '%',
      values: [{ from: '2020-01-01', value: 35 }],
      range: [10, 60],
      source: house,
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
    'place.inTrailer': {
      label: 'Part of its weight on the ball, of what nobody placed',
      noun: 'the part of what nobody placed',
      unit: '1',
      is: 'between(-unplaced.behind, unplaced.ahead)',
      source: house,
    },
    'place.ofTank': {
      label: 'Part of its weight on the ball, of a tank nobody placed',
      noun: 'the part of a tank nobody placed',
      unit: '1',
      is: 'between(-tank.share, tank.share)',
      source: house,
    },
    'tongue.somethingPlaced': {
      label: 'Something aboard the trailer has a place',
      unit: 'yes-no',
      is: `sum(choose(known(trailer.options.ahead), 1, 0)) + sum(choose(known(trailer.cargo.ahead), 1, 0)) > 0 || ${[...tanks, 'trailer.propane'].map(placed).join(' || ')}`,
      source: statics,
    },
    'tongue.isByMoments': {
      label: 'The tongue follows from what is loaded where',
      unit: 'yes-no',
      is: '!known(trailer.measuredTongueWeight) && known(trailer.dryTongueWeight, trailer.ballToAxle) && tongue.somethingPlaced',
      source: statics,
    },
    'tongue.isEstimate': {
      label: 'The tongue is only an estimate',
      unit: 'yes-no',
      is: '!known(trailer.measuredTongueWeight) && known(trailer.dryTongueWeight) && !tongue.isByMoments',
      source: loadedAddOn,
    },
    'tail.isUnreckoned': {
      label: 'Load behind the axles',
      unit: 'yes-no',
      is: 'tongue.isEstimate && !known(trailer.ballToAxle) && sum(choose(known(trailer.options.ahead), min(0, trailer.options.weight * trailer.options.ahead), 0)) + sum(choose(known(trailer.cargo.ahead), min(0, trailer.cargo.weight * trailer.cargo.ahead), 0)) < 0',
      source: statics,
    },
    'tongue.isKnown': {
      label: 'The tongue’s weight is known, dry or measured',
      unit: 'yes-no',
      is: 'known(trailer.measuredTongueWeight) || known(trailer.dryTongueWeight)',
      source: statics,
    },
    'tongue.ofRows': {
      label: 'Options and cargo, their part on the ball',
      noun: 'the part of options and cargo on the ball',
      unit: 'lb',
      is: `${onBall('trailer.options')} + ${onBall('trailer.cargo')}`,
      source: statics,
    },
    'tongue.ofTanks': {
      label: 'Water, its part on the ball',
      noun: 'the water’s part on the ball',
      unit: 'lb',
      is: tanks.map(ofTank).join(' + '),
      source: statics,
    },
    'tongue.ofPropane': {
      label: 'Propane, its part on the ball',
      noun: 'the propane’s part on the ball',
      unit: 'lb',
      is: 'trailer.propane * choose(known(trailer.propaneAhead), trailer.propaneAhead / trailer.ballToAxle, propane.place)',
      // A place is told within 80 ft, and no axle is nearer to its ball than 3.
      within: [
        'choose(known(trailer.ballToAxle), -27 * trailer.propane, -unlimited)',
        'choose(known(trailer.ballToAxle), 27 * trailer.propane, unlimited)',
      ],
      source: custom,
    },
    'tongue.byMoments': {
      label: 'Tongue weight by moments',
      unit: 'lb',
      is: 'needs(trailer.dryTongueWeight + tongue.ofRows + tongue.ofTanks + tongue.ofPropane, trailer.dryTongueWeight, trailer.ballToAxle)',
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
      is: 'choose(known(trailer.measuredTongueWeight), trailer.measuredTongueWeight, choose(tongue.isByMoments, tongue.byMoments, tongue.byTenth))',
      source: statics,
    },
    // An estimate grew out of the dry tongue, so it is set against the dry trailer.
    'tongue.dryShare': {
      label: 'Tongue share, estimated',
      unit: '1',
      is: 'trailer.dryTongueWeight / trailer.dryWeight',
      source: tongueBand,
    },
    'tongue.share': {
      label: 'Tongue share of the loaded trailer',
      noun: 'the tongue’s share of the trailer',
      unit: '1',
      is: 'choose(tongue.isEstimate && known(trailer.dryWeight), tongue.dryShare, tongue.loaded / trailer.loaded)',
      within: ['choose(may(min(tongue.loaded, trailer.loaded) < 0), -unlimited, 0)', 'unlimited'],
      source: tongueBand,
    },
  },
});
