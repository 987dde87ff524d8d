import type { Assumption } from '../../engine/define/shapes';
import { part } from '../../engine/define/topic';
import { custom, house, restoredBound, statics } from '../../trade/bibliography/common';
import { altitudeLoss, makersRating } from '../../trade/bibliography/rig';
import { passengerTires } from '../../trade/bibliography/tires';

const tanks = ['trailer.freshWater', 'trailer.grayWater', 'trailer.blackWater'];
const unplacedTank = (tank: string): string => `(!known(${tank}Ahead) && may(${tank} > 0))`;
const unplacedRows = (list: string): string => `sum(choose(known(${list}.ahead), 0, 1)) > 0`;

/** When something is taken for granted because a place or a permission was not told. */
export const assumed = part({
  formulas: {
    'assumed.propanePlace': {
      label: 'Propane has no place told',
      unit: 'yes-no',
      is: 'tongue.isByMoments && !known(trailer.propaneAhead) && may(trailer.propane > 0)',
      source: custom,
    },
    'assumed.tankPlace': {
      label: 'A tank with water has no place told',
      unit: 'yes-no',
      is: `tongue.isByMoments && (${tanks.map(unplacedTank).join(' || ')})`,
      source: house,
    },
    'assumed.trailerPlace': {
      label: 'Something in the trailer has no place told',
      unit: 'yes-no',
      is: `tongue.isByMoments && (${unplacedRows('trailer.options')} || ${unplacedRows('trailer.cargo')})`,
      source: house,
    },
    'assumed.seats': {
      label: 'Somebody has no seat told',
      unit: 'yes-no',
      is: `vehicle.isLevered && (!given(load.occupants) || ${unplacedRows('load.occupants')})`,
      source: house,
    },
    'assumed.vehiclePlace': {
      label: 'Something in the vehicle has no place told',
      unit: 'yes-no',
      is: `vehicle.isLevered && ${unplacedRows('load.cargo')}`,
      source: house,
    },
    'vehicle.isLevered': {
      label: 'Axle loads can be reckoned',
      unit: 'yes-no',
      is: 'known(vehicle.curbFront, vehicle.curbRear, vehicle.wheelbase)',
      source: statics,
    },
    'assumed.camperEmpty': {
      label: 'What is packed in the camper is not told',
      unit: 'yes-no',
      is: 'camper.isTold && !given(camper.cargo)',
      source: custom,
    },
    'assumed.camperPlace': {
      label: 'Something in the camper has no place told',
      unit: 'yes-no',
      is: 'camper.isTold && vehicle.isLevered && camper.placeless',
      source: house,
    },
    'assumed.restored': {
      label: 'Bars are in use, and nobody said what they restore',
      unit: 'yes-no',
      is: 'bars.areReckoned && !known(hitch.restored)',
      source: restoredBound,
    },
    'assumed.distributionAllowed': {
      label: 'Weight distribution is used; whether it is allowed is not told',
      unit: 'yes-no',
      is: 'distribution.isTold && !given(vehicle.distributionAllowed)',
      source: makersRating,
    },
  },
});

export const assumptions: readonly Assumption[] = [
  {
    when: 'engine.isUntold',
    says: 'The engine counts as one without a turbocharger, which loses {altitude.loss} of its pull.',
    source: altitudeLoss,
  },
  {
    when: 'tire.vehicleIsCounted',
    says: 'Passenger tires on a truck or multipurpose vehicle count with their rating divided by {tire.passengerDivisor}.',
    source: passengerTires,
  },
  {
    when: 'tire.typeIsAssumed',
    says: 'The vehicle’s tires count as written: its type was not told, and on a truck passenger tires count for less.',
    source: passengerTires,
  },
  {
    when: 'tire.trailerIsCounted',
    says: 'Passenger tires on a trailer count with their rating divided by {tire.passengerDivisor}.',
    source: passengerTires,
  },
  {
    when: 'assumed.propanePlace',
    says: 'Propane rides on the A-frame, at {propane.place} of the way from axle to ball.',
    source: custom,
  },
  {
    when: 'assumed.trailerPlace',
    says: 'What has no place told in the trailer rides anywhere in it: from {unplaced.behind} of its weight lifting the ball to {unplaced.ahead} of it resting there.',
    source: house,
  },
  {
    when: 'assumed.tankPlace',
    says: 'A tank whose place is not told sits anywhere from {tank.share} of its weight lifting the ball to {tank.share} of it resting there.',
    source: house,
  },
  {
    when: 'assumed.seats',
    says: 'Who has no seat told sits anywhere from over the rear axle to {place.foremost} of the wheelbase ahead of it.',
    source: house,
  },
  {
    when: 'assumed.vehiclePlace',
    says: 'What has no place told in the vehicle lies anywhere from {place.rearmost} of the overhang behind the rear axle to {place.foremost} of the wheelbase ahead of it.',
    source: house,
  },
  {
    when: 'assumed.camperEmpty',
    says: 'No cargo counted in the camper.',
    source: custom,
  },
  {
    when: 'assumed.camperPlace',
    says: 'What has no place in the camper rides anywhere from {camper.unplacedBehind} behind the rear axle to {camper.unplacedAhead} ahead of it.',
    source: house,
  },
  {
    when: 'assumed.restored',
    says: 'The bars restore anything from nothing to all of the front axle’s loss.',
    source: restoredBound,
  },
  {
    when: 'assumed.distributionAllowed',
    says: 'The maker is taken to allow weight distribution; that was not told.',
    source: makersRating,
  },
];
