import { part } from '../../engine/define/topic';
import { custom, house, statics } from '../bibliography/common';
import { camperLabel, camperLoading, zoneDrawing } from '../bibliography/truck-camper';

/** What is carried beyond what the label counts; a label that nobody read may count all or none. */
const beyond = (carried: string, labeled: string): string =>
  `choose(${carried} > 0, max(0, ${carried} - ${labeled}), 0)`;

const unplaced = (label: string, value: number, range: readonly [number, number]) =>
  ({ label, unit: 'in', values: [{ from: '2020-01-01', value }], range, source: house }) as const;

/** The place as told; where nobody told it, anywhere in the camper. */
const placed = (place: string): string =>
  `choose(known(${place}), ${place}, max(-camper.unplacedBehind, min(${place}, camper.unplacedAhead)))`;
const moment = (list: string): string => `sum(${list}.weight * ${placed(`${list}.ahead`)})`;

/** A camper is in the bed as soon as anybody told anything of it. */
const told = [
  'weight',
  'center',
  'centerBehindBoard',
  'options',
  'cargo',
  'riders',
  'freshWater',
  'propane',
  'labelWater',
  'labelPropane',
  'floorLength',
  'tieDowns',
]
  .map((of) => `given(camper.${of})`)
  .join(' || ');

/**
 * What a camper in the bed weighs on the road, and what it puts on each axle: in its own question and
 * as load in the vehicle wherever something is towed.
 *
 *     ├─ camper, as labeled ─┼ options ┼ cargo ┼ more water, gas ┼ riders ┤     camper.loaded
 *
 * No word of a camper, no camper; one of which the weight was not told weighs anything.
 */
export const camper = part({
  parameters: {
    'camper.unplacedBehind': unplaced(
      'How far behind the rear axle what has no place may ride',
      60,
      [20, 120],
    ),
    'camper.unplacedAhead': unplaced(
      'How far ahead of the rear axle what has no place may ride',
      90,
      [40, 130],
    ),
  },
  formulas: {
    'camper.isTold': {
      label: 'A camper sits in the bed',
      unit: 'yes-no',
      is: told,
      source: custom,
    },
    'camper.waterAdded': {
      label: 'Fresh water that the label does not count',
      noun: 'water beyond the label',
      unit: 'lb',
      is: `${beyond('camper.freshWater', 'camper.labelWater')} * water.density`,
      source: camperLabel,
    },
    'camper.propaneAdded': {
      label: 'Propane that the label does not count',
      noun: 'propane beyond the label',
      unit: 'lb',
      is: beyond('camper.propane', 'camper.labelPropane'),
      source: camperLabel,
    },
    'camper.loads': {
      label: 'What the camper carries beyond its label',
      noun: 'what is in it beyond its label',
      unit: 'lb',
      is: 'sum(camper.options.weight) + sum(camper.cargo.weight) + sum(camper.riders.weight) + camper.waterAdded + camper.propaneAdded',
      source: statics,
    },
    'camper.loaded': {
      label: 'Camper, loaded',
      noun: 'the loaded camper',
      unit: 'lb',
      is: 'camper.weight + camper.loads',
      source: camperLoading,
    },
    'camper.placeless': {
      label: 'Something aboard has no place',
      unit: 'yes-no',
      is: 'camper.centerTold && (!known(camper.options.ahead, camper.cargo.ahead, camper.riders.ahead) || (camper.waterAdded > 0 && !known(camper.waterAhead)) || (camper.propaneAdded > 0 && !known(camper.propaneAhead)))',
      source: house,
    },
    'camper.centerTold': {
      label: 'The camper’s center of gravity was told',
      unit: 'yes-no',
      is: 'given(camper.center) || given(camper.centerBehindBoard)',
      source: camperLoading,
    },
    'camper.ownCenter': {
      label: 'Camper’s own center of gravity, ahead of the rear axle',
      noun: 'the camper’s own center of gravity',
      unit: 'in',
      is: 'choose(given(camper.center), camper.center, vehicle.headboardAhead - camper.centerBehindBoard)',
      source: zoneDrawing,
    },
    'camper.moment': {
      label: 'Moment of the loaded camper about the rear axle',
      noun: 'its moment about the rear axle',
      unit: 'lb·in',
      is: `camper.weight * camper.ownCenter + ${moment('camper.options')} + ${moment('camper.cargo')} + ${moment('camper.riders')} + camper.waterMoment + camper.propaneMoment`,
      source: statics,
    },
    'camper.waterMoment': {
      label: 'Moment of water beyond the label',
      noun: 'the moment of the water',
      unit: 'lb·in',
      is: `choose(camper.waterAdded > 0, camper.waterAdded * ${placed('camper.waterAhead')}, 0)`,
      source: statics,
    },
    'camper.propaneMoment': {
      label: 'Moment of propane beyond the label',
      noun: 'the moment of the propane',
      unit: 'lb·in',
      is: `choose(camper.propaneAdded > 0, camper.propaneAdded * ${placed('camper.propaneAhead')}, 0)`,
      source: statics,
    },
    'camper.aboard': {
      label: 'Camper in the bed, loaded',
      noun: 'the camper in the bed',
      unit: 'lb',
      is: 'choose(camper.isTold, camper.loaded, 0)',
      source: camperLoading,
    },
    'camper.onFront': {
      label: 'Camper on the front axle',
      noun: 'what the camper puts on the front axle',
      unit: 'lb',
      is: 'choose(camper.isTold, camper.moment / vehicle.wheelbase, 0)',
      source: statics,
    },
    'camper.onRear': {
      label: 'Camper on the rear axle',
      noun: 'what the camper puts on the rear axle',
      unit: 'lb',
      is: 'choose(camper.isTold, camper.loaded - camper.moment / vehicle.wheelbase, 0)',
      source: statics,
    },
  },
});
