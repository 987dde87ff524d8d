import { part } from '../../engine/define/topic';
import { custom } from '../../trade/bibliography/common';
import { camperLoading } from '../../trade/bibliography/truck-camper';

const weight = { kind: 'quantity', unit: 'lb', least: 0, most: 20_000 } as const;
const place = { kind: 'quantity', unit: 'in', least: -200, most: 200 } as const;
const columns = {
  weight: { label: 'Weight', unit: 'lb', least: 0, most: 10_000, required: true },
  ahead: { label: 'Ahead of rear axle', unit: 'in', least: -300, most: 300, required: false },
} as const;
const sheet = 'the camper-loading sheet in the owner’s papers';
const tape = 'a tape measure along the bed';

/** What is asked about the truck as it carries a camper; the rest is asked as for towing. */
export const truckFacts = part({
  facts: {
    'vehicle.cargoRating': {
      ...weight,
      label: 'Cargo weight rating for a camper',
      noun: 'the cargo weight rating',
      exact: true,
      ask: 'What cargo weight rating do the truck’s camper papers state?',
      where: sheet,
      means:
        'What a camper and all cargo may weigh together. 150 lb for each seat is already taken off; the door label’s payload has nothing taken off.',
    },
    'vehicle.seats': {
      kind: 'quantity',
      unit: '',
      least: 1,
      most: 9,
      exact: true,
      label: 'Seats with a belt',
      noun: 'the number of seats with a belt',
      counted: true,
      ask: 'How many seating positions does the door label count?',
      where: 'tire-and-loading label in the driver’s door opening',
    },
    'vehicle.zoneFore': {
      ...place,
      exact: true,
      label: 'Front end of the camper zone, ahead of the rear axle',
      noun: 'the front end of the zone',
      ask: 'How far ahead of the rear axle does the maker’s zone for the centre of gravity begin?',
      where: `the drawing on ${sheet}`,
    },
    'vehicle.zoneAft': {
      ...place,
      exact: true,
      label: 'Rear end of the camper zone, ahead of the rear axle',
      noun: 'the rear end of the zone',
      ask: 'And how far ahead of the rear axle does it end?',
      where: `the drawing on ${sheet}`,
      means: 'Below zero when the zone reaches behind the axle; few do.',
    },
    'vehicle.bedLength': {
      kind: 'quantity',
      unit: 'in',
      least: 40,
      most: 120,
      label: 'Length of the bed, inside',
      noun: 'the bed',
      ask: 'How long is the bed inside, tailgate shut?',
      where: tape,
    },
    'hitch.extension': {
      kind: 'quantity',
      unit: 'in',
      least: 0,
      most: 72,
      label: 'Hitch extension',
      noun: 'the hitch extension',
      ask: 'How far does an extension carry the ball out behind the receiver?',
      where: 'a tape measure from the receiver’s pin to the ball',
      silent: { value: 0, says: 'No hitch extension.', source: custom, quiet: true },
    },
    'hitch.extensionRating': {
      ...weight,
      exact: true,
      label: 'Tongue rating with the extension',
      ask: 'What may rest on the ball with the extension in?',
      where: 'the label on the extension, or the receiver maker’s table for it',
    },
    'towed.tongue': {
      ...weight,
      label: 'Tongue weight of what is towed as well',
      noun: 'the tongue behind',
      instead: 'Weigh the tongue',
      ask: 'Is something towed behind the camper, and what does its tongue weigh, loaded?',
      where: 'a tongue scale',
      silent: { value: 0, says: 'Nothing is towed behind the camper.', source: custom },
    },
  },
});

/** What is asked about the camper itself. */
export const camperFacts = part({
  facts: {
    'camper.weight': {
      ...weight,
      label: 'Camper weight, as labelled',
      noun: 'the camper',
      instead: 'Weigh the camper',
      ask: 'What does the label on the camper give as its weight?',
      where: 'the label by the camper’s door; a scale is better',
    },
    'camper.centre': {
      ...place,
      label: 'Camper’s centre of gravity, ahead of the rear axle',
      noun: 'the camper’s own centre of gravity',
      instead: 'Measure where the camper’s mark stands over the truck',
      ask: 'How far ahead of the rear axle is the centre-of-gravity mark once the camper sits in the bed?',
      where: 'the mark on the camper’s side, and a tape down to the wheel centre',
      means: 'Above zero ahead of the axle, below zero behind it.',
    },
    'camper.options': {
      kind: 'rows',
      columns,
      label: 'Options on the camper',
      noun: 'the camper’s options',
      ask: 'What was added that its label does not count?',
      where: 'the dealer’s sheet',
      silent: { value: 'none', says: 'No options counted on the camper.', source: custom },
    },
    'camper.cargo': {
      kind: 'rows',
      columns,
      label: 'Cargo in the camper',
      noun: 'cargo in the camper',
      instead: 'Weigh what goes into the camper',
      ask: 'What is packed in the camper, and what does it weigh?',
      where: 'told by the owner',
      silent: { value: 'none', says: 'No cargo counted in the camper.', source: custom },
    },
    'camper.riders': {
      kind: 'rows',
      columns,
      label: 'People riding in the camper',
      noun: 'people in the camper',
      ask: 'Does anybody ride in the camper, and what does each weigh?',
      where: 'told by the owner; first ask whether the law there allows it',
      silent: { value: 'none', says: 'Nobody rides in the camper.', source: camperLoading },
    },
    'camper.freshWater': {
      kind: 'quantity',
      unit: 'gal',
      least: 0,
      most: 120,
      label: 'Fresh water aboard',
      noun: 'the fresh water',
      ask: 'How much fresh water is carried?',
      where: 'told by the owner; the tank’s size at the most',
      silent: { value: 0, says: 'No fresh water counted.', source: custom },
    },
    'camper.waterAhead': {
      ...place,
      label: 'Fresh water tank, ahead of the rear axle',
      noun: 'the place of the water',
      ask: 'How far ahead of the rear axle is the middle of the water tank?',
      where: tape,
    },
    'camper.propane': {
      ...weight,
      label: 'Propane',
      noun: 'the propane',
      ask: 'How many pounds of propane are carried?',
      where: 'stamped on the cylinders',
      silent: { value: 0, says: 'No propane counted.', source: custom },
    },
    'camper.propaneAhead': {
      ...place,
      label: 'Propane, ahead of the rear axle',
      noun: 'the place of the propane',
      ask: 'How far ahead of the rear axle are the cylinders?',
      where: tape,
    },
    'camper.floorLength': {
      kind: 'quantity',
      unit: 'in',
      least: 40,
      most: 160,
      exact: true,
      label: 'Length of the camper’s floor',
      noun: 'the camper’s floor',
      ask: 'How long is the part of the floor that sits in the bed?',
      where: 'the camper’s papers',
    },
    'camper.tieDowns': {
      kind: 'choice',
      options: ['frame', 'bed', 'none'],
      label: 'Tie-downs',
      ask: 'Where do the camper’s tie-downs hold: at the frame, at the bed, or are there none?',
      where: 'a look under the truck',
    },
  },
});
