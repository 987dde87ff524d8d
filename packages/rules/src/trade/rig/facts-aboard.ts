import { part } from '../../engine/define/topic';
import { custom } from '../bibliography/common';

const weight = { kind: 'quantity', unit: 'lb', least: 0, most: 60_000 } as const;
const tank = { kind: 'quantity', unit: 'gal', least: 0, most: 1_000 } as const;
const place = { kind: 'quantity', unit: 'ft', least: -80, most: 80 } as const;
const rows = {
  weight: { label: 'Weight', unit: 'lb', least: 0, most: 20_000, required: true },
  ahead: {
    label: 'Ahead of axle',
    unit: 'ft',
    least: -80,
    most: 80,
    required: false,
    ask: 'How far ahead of the trailer’s axles, or behind them, does each thing ride?',
    where: 'a tape from the middle of the axles',
  },
} as const;
const none = (what: string) => ({
  value: 0,
  says: `${what} taken as none.`,
  source: custom,
});

/** What is asked about all that rides in the trailer, and where. */
export const aboardFacts = part({
  facts: {
    'trailer.options': {
      kind: 'rows',
      columns: rows,
      label: 'Factory options',
      noun: 'factory options',
      instead: 'Ask what the options weigh',
      ask: 'Which options were built in, and what do they weigh?',
      where: 'sticker of that very trailer',
      silent: { value: 'none', says: 'No factory options counted.', source: custom },
    },
    'trailer.cargo': {
      kind: 'rows',
      columns: rows,
      label: 'Cargo in the trailer',
      instead: 'Weigh what goes into the trailer',
      ask: 'What is packed in the trailer, what does it weigh and where does it ride?',
      where: 'told by the owner',
      silent: { value: 'none', says: 'No cargo counted in the trailer.', source: custom },
    },
    'trailer.freshWater': {
      ...tank,
      label: 'Fresh water aboard',
      instead: 'Read the fresh water gauge',
      ask: 'How much fresh water is aboard on the road?',
      where: 'told by the owner; the tank’s size at the most',
      silent: none('Fresh water'),
    },
    'trailer.freshWaterAhead': {
      ...place,
      label: 'Fresh tank ahead of axle',
      instead: 'Measure where the fresh tank sits',
      ask: 'How far ahead of the axles is the fresh tank?',
      where: 'a tape measure',
    },
    'trailer.grayWater': {
      ...tank,
      label: 'Gray water aboard',
      instead: 'Read the gray water gauge',
      ask: 'How much gray water is aboard on the road?',
      where: 'told by the owner',
      silent: none('Gray water'),
    },
    'trailer.grayWaterAhead': {
      ...place,
      label: 'Gray tank ahead of axle',
      instead: 'Measure where the gray tank sits',
      ask: 'How far ahead of the axles is the gray tank?',
      where: 'a tape measure',
    },
    'trailer.blackWater': {
      ...tank,
      label: 'Black water aboard',
      instead: 'Read the black water gauge',
      ask: 'How much is in the black tank on the road?',
      where: 'told by the owner',
      silent: none('Black water'),
    },
    'trailer.blackWaterAhead': {
      ...place,
      label: 'Black tank ahead of axle',
      instead: 'Measure where the black tank sits',
      ask: 'How far ahead of the axles is the black tank?',
      where: 'a tape measure',
    },
    'trailer.propane': {
      ...weight,
      most: 2_000,
      label: 'Propane',
      instead: 'Weigh the cylinders',
      ask: 'How many pounds of propane are aboard?',
      where: 'stamped on the cylinders',
      silent: none('Propane'),
    },
    'trailer.propaneAhead': {
      ...place,
      label: 'Propane ahead of axle',
      instead: 'Measure where the cylinders stand',
      ask: 'How far ahead of the axles do the cylinders stand?',
      where: 'a tape measure',
    },
  },
});
