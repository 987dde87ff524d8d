import { part } from '../../engine/define/topic';
import { custom } from '../bibliography/common';
import { occupantMass } from '../bibliography/rig';

const rows = {
  weight: { label: 'Weight', unit: 'lb', least: 0, most: 20_000, required: true },
  ahead: {
    label: 'Ahead of rear axle',
    unit: 'in',
    least: -300,
    most: 400,
    required: false,
    ask: 'How far ahead of the rear axle is each seat or thing, or how far behind it?',
    where: 'a tape from the rear axle; behind it is written with a minus',
  },
} as const;

/** What is asked about people and things in the vehicle, and about the trip. */
export const loadFacts = part({
  facts: {
    'load.occupants': {
      kind: 'rows',
      columns: rows,
      label: 'People and animals aboard',
      noun: 'people and animals',
      instead: 'Ask everybody’s weight',
      ask: 'Who rides along, and what does each weigh?',
      where: 'told by the owner',
      silent: {
        value: 'none',
        says: 'One driver counted at the weight of an occupant, and no one else.',
        source: occupantMass,
      },
    },
    'load.cargo': {
      kind: 'rows',
      columns: rows,
      label: 'Cargo in the vehicle',
      instead: 'Weigh what goes into the vehicle',
      ask: 'What is packed in the vehicle, and what does it weigh?',
      where: 'told by the owner',
      silent: { value: 'none', says: 'No cargo counted in the vehicle.', source: custom },
    },
    'trip.altitude': {
      kind: 'quantity',
      unit: 'ft',
      least: -1_500,
      most: 25_000,
      label: 'Highest altitude of the trip',
      noun: 'the altitude',
      instead: 'Look up how high the road goes',
      ask: 'How high does the road go?',
      where: 'a map of the route',
    },
    'trip.steepestGrade': {
      kind: 'quantity',
      unit: '%',
      least: 0,
      most: 100,
      label: 'Steepest grade of the trip',
      noun: 'the steepest grade',
      instead: 'Look up the steepest grade',
      ask: 'How steep is the steepest grade?',
      where: 'road signs, or a map of the route',
    },
  },
});
