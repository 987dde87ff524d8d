import { part } from '../../engine/define/topic';
import { balance } from '../../trade/bibliography/off-grid-stay';

/**
 * Water and tanks over the stay.
 *
 *     fresh  ├──── needed ────────┤ start      gray  ├─ in it ─┼─ filled ───┤ tank
 */
export const water = part({
  formulas: {
    'fresh.needed': {
      label: 'Fresh water for the stay',
      noun: 'the water for the stay',
      unit: 'gal',
      is: 'water.daily * stay.counted',
      source: balance,
    },
    'gray.filled': {
      label: 'What the stay puts into the gray tank',
      noun: 'what goes into the gray tank',
      unit: 'gal',
      is: 'gray.daily * stay.counted',
      source: balance,
    },
    'black.filled': {
      label: 'What the stay puts into the black tank',
      noun: 'what goes into the black tank',
      unit: 'gal',
      is: 'black.daily * stay.counted',
      source: balance,
    },
    'gray.atEnd': {
      label: 'In the gray tank at the end of the stay',
      noun: 'what is in the gray tank at the end',
      unit: 'gal',
      is: 'trailer.grayWater + gray.filled',
      source: balance,
    },
    'black.atEnd': {
      label: 'In the black tank at the end of the stay',
      noun: 'what is in the black tank at the end',
      unit: 'gal',
      is: 'trailer.blackWater + black.filled',
      source: balance,
    },
    'gray.fillsFirst': {
      label: 'The gray tank is full before the fresh one is empty',
      unit: 'yes-no',
      is: 'gray.room < fresh.start * water.grayShare',
      source: balance,
    },
    'black.told': {
      label: 'A black tank is told of',
      unit: 'yes-no',
      is: 'given(water.blackTank) || given(black.daily)',
      source: balance,
    },
    'black.lasts': {
      label: 'Days until the black tank is full, where one is told of',
      noun: 'the black tank',
      unit: 'd',
      is: 'choose(black.told, black.days, unlimited)',
      source: balance,
    },
  },
  limits: {
    'fresh-water': {
      label: 'Fresh water',
      short: 'the fresh water',
      supply: true,
      do: 'Fill up on the way through the stay, or go home sooner.',
      near: 'Take a jug of drinking water more, and read the gauge each evening.',
      used: 'fresh.needed',
      limit: 'fresh.start',
      margin: 'margin.stay',
      source: balance,
    },
    'gray-tank': {
      label: 'Gray tank',
      short: 'the gray tank',
      do: 'Take a tote to the dump station before that, or wash dishes in a basin.',
      near: 'Read the gauge each evening, and wash dishes in a basin.',
      used: 'gray.atEnd',
      limit: 'water.grayTank',
      margin: 'margin.stay',
      source: balance,
    },
    'black-tank': {
      label: 'Black tank',
      short: 'the black tank',
      do: 'Empty it at a dump station before that.',
      near: 'Read the gauge each evening.',
      used: 'black.atEnd',
      limit: 'water.blackTank',
      margin: 'margin.stay',
      askedBy: ['water.blackTank', 'black.daily'],
      source: balance,
    },
  },
  findings: {
    'gray-before-fresh': {
      label: 'Gray before fresh',
      care: {
        when: 'gray.fillsFirst',
        wrong: 'The gray tank is full before the fresh one is empty.',
        because: 'The water that is left then has nowhere to go.',
        do: 'Reckon by the gray tank, not by the fresh one alone; wash dishes in a basin, or bring a tote.',
      },
      otherwise: 'The fresh water is gone before the gray tank is full.',
      open: {
        wrong: 'The gray tank may be full before the fresh one is empty.',
        do: 'Read both gauges over two days.',
      },
      source: balance,
    },
  },
});
