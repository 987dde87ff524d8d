import { part } from '../../engine/define/topic';
import { house, statics } from '../bibliography/common';
import { makersRating } from '../bibliography/rig';
import { passengerTires } from '../bibliography/tires';

const each = { margin: 'margin.other', source: makersRating } as const;

/** Told of the vehicle’s tires, or of those that are meant and run there; the type must be told. */
const onTruck = (place: 'front' | 'rear'): string =>
  `given(vehicle.type) && vehicle.type != 'passenger-car' && ((given(vehicle.tireKind) && vehicle.tireKind == 'passenger') || (given(tire.kind) && tire.place == '${place}' && tire.kind == 'passenger'))`;

/**
 * Load of one tire: the axle's, shared over the tires on it; and what its stamp counts for. On a
 * trailer a side may be heavier than the other, and nobody weighs the wheels: the margin is for that.
 */
export const tires = part({
  parameters: {
    'tire.passengerDivisor': {
      label:
        'What a passenger tire’s rating is divided by, on a trailer, truck or multipurpose vehicle',
      unit: '',
      values: [{ from: '2020-01-01', value: 1.1 }],
      source: passengerTires,
    },
    'margin.trailerTires': {
      label: 'Margin kept below the capacity of the trailer’s tires',
      unit: '%',
      values: [{ from: '2020-01-01', value: 10 }],
      range: [5, 20],
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
    'tire.trailerIsPassenger': {
      label: 'The trailer runs on passenger tires',
      unit: 'yes-no',
      is: "(given(trailer.tireKind) && trailer.tireKind == 'passenger') || (given(tire.kind) && tire.place == 'trailer' && tire.kind == 'passenger')",
      source: passengerTires,
    },
    'tire.frontIsLess': {
      label: 'Passenger tires in front of a truck or multipurpose vehicle',
      unit: 'yes-no',
      is: onTruck('front'),
      source: passengerTires,
    },
    'tire.rearIsLess': {
      label: 'Passenger tires behind on a truck or multipurpose vehicle',
      unit: 'yes-no',
      is: onTruck('rear'),
      source: passengerTires,
    },
    'tire.rearIsCounted': {
      label: 'The rear tires count for less than their sidewall says',
      unit: 'yes-no',
      is: 'given(vehicle.tireCapacityRear) && tire.rearIsLess',
      source: passengerTires,
    },
    'tire.vehicleIsCounted': {
      label: 'Tires of the vehicle count for less than their sidewall says',
      unit: 'yes-no',
      is: 'tire.rearIsCounted || (given(vehicle.tireCapacityFront) && tire.frontIsLess)',
      source: passengerTires,
    },
    'tire.typeIsAssumed': {
      label: 'Passenger tires, and the vehicle’s type untold',
      unit: 'yes-no',
      is: "known(vehicle.tireKind) && vehicle.tireKind == 'passenger' && !given(vehicle.type) && (given(vehicle.tireCapacityRear) || given(vehicle.tireCapacityFront))",
      source: passengerTires,
    },
    'tire.trailerIsCounted': {
      label: 'The trailer’s tires count for less than their sidewall says',
      unit: 'yes-no',
      is: 'given(trailer.tireCapacity) && tire.trailerIsPassenger',
      source: passengerTires,
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
      label: 'One trailer tire',
      noun: 'one trailer tire',
      unit: 'lb',
      is: 'axle.trailer / (2 * trailer.axles)',
      source: statics,
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
    'tire.frontCapacity': {
      label: 'What one front tire may carry',
      noun: 'what one front tire may carry',
      unit: 'lb',
      is: 'vehicle.tireCapacityFront / choose(tire.frontIsLess, tire.passengerDivisor, 1)',
      source: passengerTires,
    },
    'tire.rearCapacity': {
      label: 'What one rear tire may carry',
      noun: 'what one rear tire may carry',
      unit: 'lb',
      is: 'vehicle.tireCapacityRear / choose(tire.rearIsLess, tire.passengerDivisor, 1)',
      source: passengerTires,
    },
    'tire.trailerCapacity': {
      label: 'What one trailer tire may carry',
      noun: 'what one trailer tire may carry',
      unit: 'lb',
      is: 'trailer.tireCapacity / choose(tire.trailerIsPassenger, tire.passengerDivisor, 1)',
      source: passengerTires,
    },
  },
  limits: {
    'vehicle-tires-front': {
      ...each,
      label: 'Front tires',
      short: 'the front tires',
      do: 'Take load off, or have a tire shop fit tires rated for more.',
      plural: true,
      used: 'tire.front',
      limit: 'tire.frontCapacity',
      empty: 'tire.frontEmpty',
      askedBy: ['vehicle.tireCapacityFront'],
    },
    'vehicle-tires-rear': {
      ...each,
      label: 'Rear tires',
      short: 'the rear tires',
      do: 'Take load off, or have a tire shop fit tires rated for more.',
      plural: true,
      used: 'tire.rear',
      limit: 'tire.rearCapacity',
      empty: 'tire.rearEmpty',
      askedBy: ['vehicle.tireCapacityRear'],
    },
    'trailer-tires': {
      ...each,
      label: 'Trailer tires',
      short: 'the trailer’s tires',
      do: 'Take load out, or have a tire shop fit tires rated for more.',
      plural: true,
      margin: 'margin.trailerTires',
      used: 'tire.trailer',
      limit: 'tire.trailerCapacity',
      askedBy: ['trailer.tireCapacity'],
    },
  },
});

/** For questions that weigh one wheel against the mean of its axle. */
export const imbalance = part({
  parameters: {
    'tire.imbalance': {
      label: 'The heavier side of a trailer against the mean',
      unit: '1',
      values: [{ from: '2020-01-01', value: 1.05 }],
      range: [1, 1.2],
      source: house,
    },
  },
});
