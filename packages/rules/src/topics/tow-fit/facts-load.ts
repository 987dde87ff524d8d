import { part } from '../../engine/define/topic';
import { custom, occupantMass } from './sources';

const weight = { kind: 'quantity', unit: 'lb', least: 0, most: 60_000 } as const;
const rows = {
  weight: { label: 'Weight', unit: 'lb', least: 0, most: 20_000, required: true },
  ahead: { label: 'Ahead of rear axle', unit: 'in', least: -300, most: 400, required: false },
} as const;
const scaleAtHome = 'a kitchen or bathroom scale';

/** What is asked about people and things in the vehicle, the hitch and the trip. */
export const loadFacts = part({
  facts: {
    'load.occupants': {
      kind: 'rows',
      columns: rows,
      label: 'People and animals aboard',
      noun: 'people and animals',
      ask: 'Who rides along, and what does each weigh?',
      where: 'told by the owner; 150 lb each where nobody says',
      silent: { value: 'none', says: 'Nobody counted in the vehicle.', source: occupantMass },
    },
    'load.cargo': {
      kind: 'rows',
      columns: rows,
      label: 'Cargo in the vehicle',
      ask: 'What is packed in the vehicle, and what does it weigh?',
      where: 'told by the owner',
      silent: { value: 'none', says: 'No cargo counted in the vehicle.', source: custom },
    },
    'hitch.hardwareWeight': {
      ...weight,
      label: 'Hitch hardware',
      noun: 'the hitch hardware',
      ask: 'What do ball mount, ball and bars weigh?',
      where: scaleAtHome,
      silent: { value: 0, says: 'No hitch hardware counted.', source: custom },
    },
    'hitch.distribution': {
      kind: 'yes-no',
      label: 'Weight distribution used',
      ask: 'Is a weight-distributing hitch used?',
      where: 'told by the owner',
      silent: { value: 'no', says: 'No weight distribution.', source: custom, quiet: true },
    },
    'hitch.restored': {
      kind: 'quantity',
      unit: '%',
      least: 0,
      most: 100,
      label: 'Front axle’s loss restored',
      noun: 'the share restored',
      ask: 'How much of the front axle’s loss do the bars restore?',
      where: 'hitch maker’s setting, or three passes over a scale',
    },
    'hitch.receiverRating': {
      ...weight,
      label: 'Receiver rating',
      ask: 'What trailer weight is the receiver rated for, with weight distribution if it says so?',
      where: 'label on the receiver',
    },
    'hitch.receiverCarried': {
      ...weight,
      label: 'Receiver rating, carried',
      ask: 'What trailer weight is the receiver rated for without weight distribution?',
      where: 'label on the receiver',
    },
    'hitch.receiverTongueRating': {
      ...weight,
      label: 'Receiver tongue rating',
      ask: 'What tongue weight is the receiver rated for, with weight distribution if it says so?',
      where: 'label on the receiver',
    },
    'hitch.receiverTongueCarried': {
      ...weight,
      label: 'Receiver tongue rating, carried',
      ask: 'What tongue weight is the receiver rated for without weight distribution?',
      where: 'label on the receiver',
    },
    'hitch.mountRating': {
      ...weight,
      label: 'Ball mount rating',
      noun: 'the ball mount’s rating',
      ask: 'What is the ball mount rated for?',
      where: 'stamp or label on the ball mount',
    },
    'hitch.ballRating': {
      ...weight,
      label: 'Ball rating',
      noun: 'the ball’s rating',
      ask: 'What is the ball rated for?',
      where: 'stamped on top of the ball',
    },
    'hitch.ballSize': {
      kind: 'quantity',
      unit: 'in',
      least: 0.5,
      most: 6,
      label: 'Ball size',
      noun: 'the ball’s size',
      ask: 'What size is the ball?',
      where: 'stamped on top of the ball',
    },
    'trip.altitude': {
      kind: 'quantity',
      unit: 'ft',
      least: -1_500,
      most: 25_000,
      label: 'Highest altitude of the trip',
      noun: 'the altitude',
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
      ask: 'How steep is the steepest grade?',
      where: 'road signs, or a map of the route',
    },
  },
});
