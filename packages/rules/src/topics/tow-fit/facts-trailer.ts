import { part } from '../../engine/define/topic';
import { custom } from './sources';

const weight = { kind: 'quantity', unit: 'lb', least: 0, most: 60_000 } as const;
const tank = { kind: 'quantity', unit: 'gal', least: 0, most: 1_000 } as const;
const place = { kind: 'quantity', unit: 'ft', least: -80, most: 80 } as const;
const rows = {
  weight: { label: 'Weight', unit: 'lb', least: 0, most: 20_000, required: true },
  ahead: { label: 'Ahead of axle', unit: 'ft', least: -80, most: 80, required: false },
} as const;
const plate = 'certification label on the trailer’s left front side';
const brochure = 'brochure, or the sticker of that very trailer';
const none = (what: string) => ({
  value: 0,
  says: `${what} taken as none.`,
  source: custom,
});

/** What is asked about the trailer. */
export const trailerFacts = part({
  facts: {
    'trailer.dryWeight': {
      ...weight,
      label: 'Dry weight',
      noun: 'the dry weight',
      ask: 'What does the trailer weigh empty?',
      where: brochure,
      means: 'As it left the factory: no water, no gas, nothing packed, often no options.',
    },
    'trailer.gvwr': {
      ...weight,
      label: 'Trailer GVWR',
      noun: 'the trailer’s GVWR',
      ask: 'What is the trailer’s gross rating?',
      where: plate,
      means: 'The most the trailer may weigh, loaded.',
    },
    'trailer.axles': {
      kind: 'quantity',
      unit: '',
      least: 1,
      most: 4,
      label: 'Axles',
      ask: 'How many axles does the trailer have?',
      where: 'a look at the trailer',
    },
    'trailer.gawr': {
      ...weight,
      label: 'Trailer GAWR, each axle',
      ask: 'What is each trailer axle rated for?',
      where: plate,
    },
    'trailer.dryTongueWeight': {
      ...weight,
      label: 'Dry tongue weight',
      noun: 'the dry tongue',
      ask: 'What does the tongue weigh empty?',
      where: brochure,
    },
    'trailer.measuredTongueWeight': {
      ...weight,
      least: -20_000,
      label: 'Measured tongue weight',
      noun: 'the tongue as weighed',
      ask: 'Has the loaded tongue been weighed?',
      where: 'a tongue scale, or passes over a public scale',
    },
    'trailer.options': {
      kind: 'rows',
      columns: rows,
      label: 'Factory options',
      noun: 'factory options',
      ask: 'Which options were built in, and what do they weigh?',
      where: 'sticker of that very trailer',
      silent: { value: 'none', says: 'No factory options counted.', source: custom },
    },
    'trailer.cargo': {
      kind: 'rows',
      columns: rows,
      label: 'Cargo in the trailer',
      ask: 'What is packed in the trailer, what does it weigh and where does it ride?',
      where: 'told by the owner',
      silent: { value: 'none', says: 'No cargo counted in the trailer.', source: custom },
    },
    'trailer.freshWater': {
      ...tank,
      label: 'Fresh water aboard',
      ask: 'How much fresh water is aboard on the road?',
      where: 'told by the owner; the tank’s size at the most',
      silent: none('Fresh water'),
    },
    'trailer.freshWaterAhead': {
      ...place,
      label: 'Fresh tank ahead of axle',
      ask: 'How far ahead of the axles is the fresh tank?',
      where: 'a tape measure',
    },
    'trailer.grayWater': {
      ...tank,
      label: 'Gray water aboard',
      ask: 'How much gray water is aboard on the road?',
      where: 'told by the owner',
      silent: none('Gray water'),
    },
    'trailer.blackWater': {
      ...tank,
      label: 'Black water aboard',
      ask: 'How much is in the black tank on the road?',
      where: 'told by the owner',
      silent: none('Black water'),
    },
    'trailer.propane': {
      ...weight,
      most: 2_000,
      label: 'Propane',
      ask: 'How many pounds of propane are aboard?',
      where: 'stamped on the cylinders',
      silent: none('Propane'),
    },
    'trailer.propaneAhead': {
      ...place,
      label: 'Propane ahead of axle',
      ask: 'How far ahead of the axles do the cylinders stand?',
      where: 'a tape measure',
    },
    'trailer.ballToAxle': {
      kind: 'quantity',
      unit: 'ft',
      least: 3,
      most: 80,
      label: 'Ball to axle centre',
      noun: 'the distance from ball to axle',
      ask: 'How far is it from the coupler to the middle of the axles?',
      where: 'a tape measure',
    },
    'trailer.coupling': {
      kind: 'choice',
      options: ['ball', 'fifth-wheel'],
      label: 'Coupling',
      ask: 'Does it ride on a ball or in a fifth-wheel hitch?',
      where: 'a look at the trailer',
      silent: { value: 'ball', says: 'A ball coupling.', source: custom, quiet: true },
    },
    'trailer.couplerSize': {
      kind: 'quantity',
      unit: 'in',
      least: 0.5,
      most: 6,
      label: 'Coupler size',
      noun: 'the coupler’s size',
      ask: 'What ball does the coupler take?',
      where: 'stamped on the coupler',
    },
    'trailer.couplerRating': {
      ...weight,
      label: 'Coupler rating',
      noun: 'the coupler’s rating',
      ask: 'What is the coupler rated for?',
      where: 'stamped on the coupler',
    },
    'trailer.tireCapacity': {
      ...weight,
      label: 'Capacity of one trailer tire',
      ask: 'What load is one trailer tire rated for?',
      where: 'sidewall, or its load index',
    },
    'trailer.electricBrakes': {
      kind: 'yes-no',
      label: 'Electric brakes',
      ask: 'Does the trailer have electric brakes?',
      where: brochure,
    },
    'trailer.frontalArea': {
      kind: 'quantity',
      unit: 'ft²',
      least: 0,
      most: 400,
      label: 'Frontal area',
      noun: 'the trailer’s frontal area',
      ask: 'What is the trailer’s frontal area?',
      where: 'width times height, from the brochure',
    },
  },
});
