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
    'water.onArrival': {
      kind: 'yes-no',
      label: 'Drinking water is to be had on arrival',
      noun: 'whether drinking water is to be had on arrival',
      ask: 'Can the fresh tank be filled where you stay, or close by?',
      where: 'the site’s own page, or a call',
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
      is: "choose(given(water.onArrival) && water.onArrival == 'yes', water.freshTank, fresh.carried)",
      within: ['0', 'water.freshTank'],
      source: tankLabel,
    },
    'fresh.carried': {
      label: 'Fresh water on the way there',
      noun: 'the fresh water on the way there',
      unit: 'gal',
      is: "choose(given(trailer.freshWater), choose(fresh.isMisread, between(0, water.freshTank), min(trailer.freshWater, water.freshTank)), choose(given(water.onArrival) && water.onArrival == 'yes', between(0, water.freshTank), water.freshTank))",
      within: ['0', 'water.freshTank'],
      source: tankLabel,
    },
    'fresh.isMisread': {
      label: 'More fresh water is told than the tank holds',
      unit: 'yes-no',
      is: 'known(trailer.freshWater) && known(water.freshTank) && trailer.freshWater > water.freshTank',
      source: tankLabel,
    },
    'gray.isMisread': {
      label: 'More gray water is told than the tank holds',
      unit: 'yes-no',
      is: 'known(trailer.grayWater) && known(water.grayTank) && trailer.grayWater > water.grayTank',
      source: tankLabel,
    },
    'black.isMisread': {
      label: 'More black water is told than the tank holds',
      unit: 'yes-no',
      is: 'known(trailer.blackWater) && known(water.blackTank) && trailer.blackWater > water.blackTank',
      source: tankLabel,
    },
    'gray.room': {
      label: 'Room in the gray tank',
      noun: 'the room in the gray tank',
      unit: 'gal',
      is: 'choose(gray.isMisread, between(0, water.grayTank), max(0, water.grayTank - trailer.grayWater))',
      source: tankLabel,
    },
    'black.room': {
      label: 'Room in the black tank',
      noun: 'the room in the black tank',
      unit: 'gal',
      is: 'choose(black.isMisread, between(0, water.blackTank), max(0, water.blackTank - trailer.blackWater))',
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
  findings: {
    'tank-misread': {
      label: 'Readings of the tanks',
      askedBy: ['trailer.freshWater', 'trailer.grayWater', 'trailer.blackWater'],
      unknown: [
        {
          when: 'fresh.isMisread',
          wrong:
            'More fresh water is told than the tank holds: {trailer.freshWater} of {water.freshTank}.',
          because: 'One of the two is misread, so neither counts.',
          do: 'Read the tank’s size by its filler, and the gauge once more.',
        },
        {
          when: 'gray.isMisread',
          wrong:
            'More gray water is told than the tank holds: {trailer.grayWater} of {water.grayTank}.',
          because: 'One of the two is misread, so neither counts.',
          do: 'Read the tank’s size in the brochure, and the gauge once more.',
        },
        {
          when: 'black.isMisread',
          wrong:
            'More black water is told than the tank holds: {trailer.blackWater} of {water.blackTank}.',
          because: 'One of the two is misread, so neither counts.',
          do: 'Read the tank’s size in the brochure, and the gauge once more.',
        },
      ],
      otherwise: 'No tank is told to hold more than it can.',
      source: tankLabel,
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
