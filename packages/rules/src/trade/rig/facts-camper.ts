import { quietly } from '../../engine/define/quietly';
import { part } from '../../engine/define/topic';
import { custom } from '../bibliography/common';
import { camperLoading } from '../bibliography/truck-camper';

const weight = { kind: 'quantity', unit: 'lb', least: 0, most: 20_000 } as const;
const place = { kind: 'quantity', unit: 'in', least: -200, most: 200 } as const;
const columns = {
  weight: { label: 'Weight', unit: 'lb', least: 0, most: 10_000, required: true },
  ahead: { label: 'Ahead of rear axle', unit: 'in', least: -300, most: 300, required: false },
} as const;
const tape = 'a tape measure along the bed';

/**
 * What is asked about a camper in the bed: its label, what is in it, and where its weight sits. Its own
 * question says what it takes where nobody told; towing, which seldom has one, says so only where it has.
 */
export const camperFacts = part({
  facts: {
    'vehicle.headboardAhead': {
      kind: 'quantity',
      unit: 'in',
      least: 10,
      most: 110,
      label: 'Headboard of the bed, ahead of the rear axle',
      noun: 'the distance from headboard to rear axle',
      instead: 'Measure from the headboard to the rear axle',
      ask: 'How far ahead of the rear axle’s middle is the inside of the bed’s headboard?',
      where: tape,
    },
    'camper.weight': {
      ...weight,
      label: 'Camper weight, as labeled',
      noun: 'the camper’s weight',
      instead: 'Weigh the camper',
      ask: 'What weight does the label on the camper give, and what does that weight contain by the label?',
      where: 'the label by the camper’s door; a scale is better',
    },
    'camper.center': {
      ...place,
      label: 'Camper’s center of gravity, ahead of the rear axle',
      noun: 'the camper’s own center of gravity',
      instead: 'Measure where the camper’s mark stands over the truck',
      ask: 'How far ahead of the rear axle is the center-of-gravity mark once the camper sits in the bed?',
      where: 'the mark on the camper’s side, and a tape down to the wheel center',
      means: 'Above zero ahead of the axle, below zero behind it.',
    },
    'camper.centerBehindBoard': {
      kind: 'quantity',
      unit: 'in',
      least: 0,
      most: 160,
      label: 'Camper’s center of gravity, behind the headboard',
      noun: 'the mark behind the headboard',
      instead: 'Measure from the headboard to the camper’s mark',
      ask: 'How far behind the inside of the headboard does the mark of the center of gravity stand?',
      where: 'the mark on the camper’s side, and a tape forward to the headboard',
    },
    'camper.labelWater': {
      kind: 'quantity',
      unit: 'gal',
      least: 0,
      most: 120,
      exact: true,
      label: 'Fresh water that the label’s weight contains',
      noun: 'the water its label contains',
      ask: 'How much water does the weight on the camper’s label already contain?',
      where: 'the label by the camper’s door, below its weight',
      means:
        'The label names what its weight contains: water, gas, refrigerator. Only the rest is added.',
    },
    'camper.labelPropane': {
      ...weight,
      exact: true,
      label: 'Propane that the label’s weight contains',
      noun: 'the propane its label contains',
      ask: 'How much gas does the camper’s label already contain?',
      where: 'the label by the camper’s door, below its weight',
    },
    'camper.options': {
      kind: 'rows',
      columns,
      label: 'Options on the camper',
      noun: 'the camper’s options',
      ask: 'What was added that the camper’s label does not count, and what does each weigh?',
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
      silent: { value: 'none', says: 'No one rides in the camper.', source: camperLoading },
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

/** The same, its defaults unspoken: for towing, which says by an assumption what it took. */
export const quietCamperFacts = part({ facts: quietly(camperFacts.facts) });
