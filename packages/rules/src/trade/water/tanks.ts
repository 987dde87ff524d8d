import { part } from '../../engine/define/topic';
import { house } from '../bibliography/common';
import { balance, drains, tankLabel } from '../bibliography/off-grid-stay';
import { rigTrade } from '../rig/index';

const tank = { kind: 'quantity', unit: 'gal', least: 0, most: 500, exact: true } as const;

/**
 * Water that runs out, and tanks that fill.
 *
 *     fresh ──use──┬──► gray   what goes down sink and shower
 *                  └──► gone   drunk, boiled off, thrown out
 *     toilet ──────────► black
 *
 * A tank that fills counts like one that empties: its room is what is used up.
 */
export const tanks = part({
  facts: {
    'trailer.freshWater': rigTrade.facts['trailer.freshWater'],
    'trailer.grayWater': rigTrade.facts['trailer.grayWater'],
    'trailer.blackWater': rigTrade.facts['trailer.blackWater'],
    'water.freshTank': {
      ...tank,
      label: 'Fresh water tank',
      noun: 'the fresh tank',
      ask: 'How many gallons does the fresh water tank hold?',
      where: 'brochure, or the label by the filler',
    },
    'water.grayTank': {
      ...tank,
      label: 'Gray water tank',
      noun: 'the gray tank',
      ask: 'How many gallons does the gray tank hold, all that the sink drains to?',
      where: 'brochure; with two of them, the one that sink and shower really fill',
    },
    'water.blackTank': {
      ...tank,
      label: 'Black water tank or cassette',
      noun: 'the black tank',
      ask: 'How many gallons does the black tank or the cassette hold?',
      where: 'brochure, or the label on the cassette',
    },
    'water.daily': {
      kind: 'quantity',
      unit: 'gal/d',
      least: 0.1,
      most: 300,
      label: 'Water used a day, all people together',
      noun: 'the water used a day',
      ask: 'How many gallons do you use in a day, all together?',
      where: 'the fresh gauge over two days; careful people need 2 to 3 a head, at ease 6 to 10',
    },
    'water.grayShare': {
      kind: 'quantity',
      unit: '%',
      least: 0,
      most: 100,
      label: 'Share of it that goes down the sink',
      noun: 'the share that goes down the sink',
      ask: 'What part of the water used goes down sink and shower?',
      where: 'gray gauge against fresh gauge over two days',
      silent: { value: 85, says: '85 % of the water goes down sink and shower.', source: drains },
    },
    'black.daily': {
      kind: 'quantity',
      unit: 'gal/d',
      least: 0,
      most: 60,
      label: 'What fills the black tank a day',
      noun: 'what fills the black tank a day',
      ask: 'How many gallons a day go into the black tank, flush water included?',
      where: 'its gauge over two days; about a gallon a head where one is careful',
    },
  },
  formulas: {
    'fresh.start': {
      label: 'Fresh water at the start',
      noun: 'the fresh water at the start',
      unit: 'gal',
      is: 'choose(given(trailer.freshWater), min(trailer.freshWater, water.freshTank), water.freshTank)',
      source: tankLabel,
    },
    'gray.room': {
      label: 'Room in the gray tank',
      noun: 'the room in the gray tank',
      unit: 'gal',
      is: 'max(0, water.grayTank - trailer.grayWater)',
      source: tankLabel,
    },
    'black.room': {
      label: 'Room in the black tank',
      noun: 'the room in the black tank',
      unit: 'gal',
      is: 'max(0, water.blackTank - trailer.blackWater)',
      source: tankLabel,
    },
    'gray.daily': {
      label: 'What fills the gray tank a day',
      noun: 'what fills the gray tank a day',
      unit: 'gal/d',
      is: 'water.daily * water.grayShare',
      source: drains,
    },
    'fresh.days': {
      label: 'Days until the fresh water runs out',
      noun: 'the fresh water',
      unit: 'd',
      is: 'fresh.start / water.daily',
      source: balance,
    },
    'gray.days': {
      label: 'Days until the gray tank is full',
      noun: 'the gray tank',
      unit: 'd',
      is: 'choose(gray.daily > 0, gray.room / gray.daily, unlimited)',
      source: balance,
    },
    'black.days': {
      label: 'Days until the black tank is full',
      noun: 'the black tank',
      unit: 'd',
      is: 'choose(black.daily > 0, black.room / black.daily, unlimited)',
      source: balance,
    },
  },
});

/** What is asked of a stay, wherever one is spoken of. */
export const stay = part({
  facts: {
    'stay.days': {
      kind: 'quantity',
      unit: 'd',
      least: 0,
      most: 365,
      label: 'Days you want to stay',
      noun: 'the stay',
      ask: 'How many days do you want to stay without hookups?',
      where: 'told by the owner',
      silent: { value: 2, says: 'A weekend of two days.', source: house, quiet: true },
    },
  },
});
