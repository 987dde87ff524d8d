import { part } from '../../engine/define/topic';
import { house, statics } from '../bibliography/common';
import { makersRating } from '../bibliography/rig';

const each = { margin: 'margin.other', source: makersRating } as const;

/** Load of one tire: the axle's, shared over the tires on it. */
export const tires = part({
  parameters: {
    'tire.imbalance': {
      label: 'The heavier side of a trailer against the mean',
      unit: '1',
      values: [{ from: '2020-01-01', value: 1.05 }],
      range: [1, 1.2],
      source: house,
    },
  },
  formulas: {
    'tire.rearCount': {
      label: 'Tires on the rear axle',
      unit: '',
      is: "choose(vehicle.dualRearWheels == 'yes', 4, 2)",
      source: makersRating,
    },
    'tire.front': {
      label: 'One front tire',
      noun: 'one front tire',
      unit: 'lb',
      is: 'axle.front / 2',
      source: statics,
    },
    'tire.rear': {
      label: 'One rear tire',
      noun: 'one rear tire',
      unit: 'lb',
      is: 'axle.rear / tire.rearCount',
      source: statics,
    },
    'tire.trailer': {
      label: 'One trailer tire on the heavier side',
      noun: 'the fuller trailer tire',
      unit: 'lb',
      is: 'axle.trailer / (2 * trailer.axles) * tire.imbalance',
      source: house,
    },
    'tire.frontEmpty': {
      label: 'One front tire, empty',
      unit: 'lb',
      is: 'curb.front / 2',
      source: statics,
    },
    'tire.rearEmpty': {
      label: 'One rear tire, empty',
      unit: 'lb',
      is: 'curb.rear / tire.rearCount',
      source: statics,
    },
  },
  limits: {
    'vehicle-tires-front': {
      ...each,
      label: 'Front tires',
      short: 'the front tires',
      plural: true,
      used: 'tire.front',
      limit: 'vehicle.tireCapacityFront',
      empty: 'tire.frontEmpty',
      askedBy: ['vehicle.tireCapacityFront'],
    },
    'vehicle-tires-rear': {
      ...each,
      label: 'Rear tires',
      short: 'the rear tires',
      plural: true,
      used: 'tire.rear',
      limit: 'vehicle.tireCapacityRear',
      empty: 'tire.rearEmpty',
      askedBy: ['vehicle.tireCapacityRear'],
    },
    'trailer-tires': {
      ...each,
      label: 'Trailer tires',
      short: 'the trailer’s tires',
      plural: true,
      used: 'tire.trailer',
      limit: 'trailer.tireCapacity',
      askedBy: ['trailer.tireCapacity'],
    },
  },
});
