import { part } from '../../engine/define/topic';
import { custom } from './sources';

const manual = 'owner’s manual, towing chapter';
const certification = 'certification label in the driver’s door opening';
const scale = 'a public scale, axle by axle';
const tape = 'a tape measure';

const weight = { kind: 'quantity', unit: 'lb', least: 0, most: 60_000 } as const;

/** What is asked about the vehicle. */
export const vehicleFacts = part({
  facts: {
    'vehicle.maxTrailerWeight': {
      ...weight,
      label: 'Maximum trailer weight',
      noun: 'the maximum trailer weight',
      ask: 'What does the manual give as the most this very vehicle may pull?',
      where: manual,
      means:
        'The tow rating for this engine, axle ratio and equipment; a brochure gives the best one.',
    },
    'vehicle.maxTrailerCarried': {
      ...weight,
      label: 'Maximum trailer weight without weight distribution',
      noun: 'the maximum without weight distribution',
      ask: 'Does the manual give a lower figure without a weight-distributing hitch?',
      where: manual,
    },
    'vehicle.maxTongueCarried': {
      ...weight,
      label: 'Maximum tongue weight, carried',
      noun: 'the tongue rating, carried',
      ask: 'How much may rest on the ball without a weight-distributing hitch?',
      where: `${manual}, or the label on the receiver`,
    },
    'vehicle.maxTongueDistributed': {
      ...weight,
      label: 'Maximum tongue weight, distributed',
      noun: 'the tongue rating, distributed',
      ask: 'How much may rest on the ball with a weight-distributing hitch?',
      where: manual,
    },
    'vehicle.distributionAllowed': {
      kind: 'yes-no',
      label: 'Weight distribution allowed',
      ask: 'Does the maker allow a weight-distributing hitch?',
      where: manual,
      means: 'Many unit-body vehicles are not made for one.',
    },
    'vehicle.distributionRequiredAbove': {
      ...weight,
      label: 'Weight distribution required above',
      ask: 'Above what trailer weight does the maker require weight distribution?',
      where: manual,
    },
    'vehicle.placardPayload': {
      ...weight,
      label: 'Payload on the door label',
      noun: 'the door label’s payload',
      ask: 'What does the label in the driver’s door say occupants and cargo may never exceed?',
      where: 'tire-and-loading label in the driver’s door opening',
      means: 'It is that very vehicle’s own figure, with the options it left the factory with.',
    },
    'vehicle.gvwr': {
      ...weight,
      label: 'GVWR',
      noun: 'the vehicle’s GVWR',
      ask: 'What is the gross vehicle weight rating?',
      where: certification,
      means: 'The most the vehicle may weigh, loaded, with the tongue on it.',
    },
    'vehicle.gcwr': {
      ...weight,
      most: 120_000,
      label: 'GCWR',
      noun: 'the GCWR',
      ask: 'What is the gross combined weight rating?',
      where: manual,
      means: 'The most that vehicle and trailer may weigh together.',
    },
    'vehicle.gawrFront': {
      ...weight,
      label: 'Front GAWR',
      noun: 'the front GAWR',
      ask: 'What is the front axle’s rating?',
      where: certification,
    },
    'vehicle.gawrRear': {
      ...weight,
      label: 'Rear GAWR',
      noun: 'the rear GAWR',
      ask: 'What is the rear axle’s rating?',
      where: certification,
    },
    'vehicle.curbWeight': {
      ...weight,
      label: 'Curb weight',
      noun: 'the curb weight',
      ask: 'What does the vehicle weigh empty, with full fuel?',
      where: `${scale}; a brochure’s figure misses options`,
    },
    'vehicle.curbFront': {
      ...weight,
      label: 'Curb weight on the front axle',
      noun: 'the front axle’s curb weight',
      ask: 'What does the front axle carry when the vehicle is empty?',
      where: scale,
    },
    'vehicle.curbRear': {
      ...weight,
      label: 'Curb weight on the rear axle',
      noun: 'the rear axle’s curb weight',
      ask: 'What does the rear axle carry when the vehicle is empty?',
      where: scale,
    },
    'vehicle.wheelbase': {
      kind: 'quantity',
      unit: 'in',
      least: 40,
      most: 400,
      label: 'Wheelbase',
      noun: 'the wheelbase',
      ask: 'How far is it from front to rear axle?',
      where: `${manual}, or ${tape}`,
    },
    'vehicle.overhang': {
      kind: 'quantity',
      unit: 'in',
      least: 0,
      most: 200,
      label: 'Rear axle to ball',
      noun: 'the overhang from rear axle to ball',
      ask: 'How far is it from the rear axle to the ball?',
      where: tape,
    },
    'vehicle.tireCapacityFront': {
      ...weight,
      label: 'Capacity of one front tire',
      ask: 'What load is one front tire rated for?',
      where: 'sidewall, or its load index',
    },
    'vehicle.tireCapacityRear': {
      ...weight,
      label: 'Capacity of one rear tire',
      ask: 'What load is one rear tire rated for?',
      where: 'sidewall, or its load index; with dual wheels the dual figure',
    },
    'vehicle.dualRearWheels': {
      kind: 'yes-no',
      label: 'Dual rear wheels',
      ask: 'Are there four tires on the rear axle?',
      where: 'a look at the vehicle',
      silent: { value: 'no', says: 'Two tires on the rear axle.', source: custom, quiet: true },
    },
    'vehicle.maxFrontalArea': {
      kind: 'quantity',
      unit: 'ft²',
      least: 0,
      most: 400,
      label: 'Maximum frontal area of a trailer',
      noun: 'the maximum frontal area',
      ask: 'Does the maker limit the frontal area of a trailer?',
      where: manual,
    },
    'vehicle.towPackageNeeded': {
      kind: 'yes-no',
      label: 'Rating needs the tow package',
      ask: 'Does the tow rating depend on a factory tow package?',
      where: manual,
    },
    'vehicle.towPackage': {
      kind: 'yes-no',
      label: 'Tow package fitted',
      ask: 'Does this vehicle have the factory tow package?',
      where: 'build sheet, or the dealer by its identification number',
    },
    'vehicle.sevenWay': {
      kind: 'yes-no',
      label: 'Seven-way connector',
      ask: 'Is there a seven-way connector at the bumper?',
      where: 'a look at the bumper',
    },
    'vehicle.brakeController': {
      kind: 'yes-no',
      label: 'Brake controller',
      ask: 'Is a trailer brake controller fitted?',
      where: 'below the dash, or in the vehicle’s menus',
    },
    'vehicle.engine': {
      kind: 'choice',
      options: ['naturally-aspirated', 'turbocharged', 'electric'],
      label: 'Engine',
      ask: 'Is the engine turbocharged, electric, or neither?',
      where: manual,
    },
  },
});
