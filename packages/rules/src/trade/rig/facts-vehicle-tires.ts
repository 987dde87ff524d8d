import { part } from '../../engine/define/topic';
import { custom } from '../bibliography/common';

const certification = 'certification label in the driver’s door';
const weight = { kind: 'quantity', unit: 'lb', least: 0, most: 60_000 } as const;

/** What is asked about the vehicle’s tires. */
export const vehicleTireFacts = part({
  facts: {
    'vehicle.tireCapacityFront': {
      ...weight,
      label: 'Capacity of one front tire',
      exact: true,
      ask: 'What load is one front tire rated for?',
      where: 'sidewall, or its load index',
    },
    'vehicle.tireCapacityRear': {
      ...weight,
      label: 'Capacity of one rear tire',
      exact: true,
      ask: 'What load is one rear tire rated for?',
      where: 'sidewall, or its load index; with dual wheels the dual figure',
    },
    'vehicle.tireKind': {
      kind: 'choice',
      options: ['passenger', 'light-truck'],
      label: 'Kind of the vehicle’s tires',
      noun: 'the kind of the vehicle’s tires',
      ask: 'Do the letters before the tire’s size say LT, or P or nothing?',
      where: 'sidewall',
      means: 'LT is a light-truck tire; P or no letters a passenger one.',
    },
    'vehicle.type': {
      kind: 'choice',
      options: ['passenger-car', 'multipurpose', 'truck'],
      label: 'Type of vehicle',
      noun: 'the type of vehicle',
      ask: 'What type does the certification label give: passenger car, multipurpose vehicle or truck?',
      where: certification,
    },
    'vehicle.dualRearWheels': {
      kind: 'yes-no',
      label: 'Dual rear wheels',
      noun: 'whether the rear axle has dual wheels',
      ask: 'Are there four tires on the rear axle?',
      where: 'a look at the vehicle',
      silent: { value: 'no', says: 'Two tires on the rear axle.', source: custom, quiet: true },
    },
  },
});

/** Which tires somebody speaks of, and their kind: of the trailer or the vehicle, as their place says. */
export const meantTireFacts = part({
  facts: {
    'tire.place': {
      kind: 'choice',
      options: ['trailer', 'front', 'rear'],
      label: 'Where the tires run',
      ask: 'Which tires are meant: the trailer’s, or the front or rear ones of the vehicle?',
      where: 'told by the owner',
      silent: { value: 'trailer', says: 'The trailer’s tires are meant.', source: custom },
    },
    'tire.kind': {
      kind: 'choice',
      options: ['special-trailer', 'light-truck', 'passenger'],
      label: 'Kind of tire',
      ask: 'Which letters stand before the size: ST, LT, P, or none?',
      where: 'the sidewall',
      means:
        'ST is a special-trailer tire, LT a light-truck tire; P or no letters a passenger one.',
    },
  },
});
