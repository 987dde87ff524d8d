import { part } from '../../engine/define/topic';
import { construction, hiddenShare, money, shopBook } from '../../trade/bibliography/body-repair';
import { custom, house } from '../../trade/bibliography/common';

/**
 * What the repair comes to, from a least to a most.
 *
 *     (segments × how it is built + refinish + seal) × rate + parts
 *     ├──────────────── or what a shop has quoted ────────────────┤ × (1 + hidden)
 */
export const estimate = part({
  facts: {
    'wall.built': {
      kind: 'choice',
      label: 'How the body is built',
      noun: 'how the body is built',
      options: ['riveted-segments', 'laminated-wall', 'molded-shell'],
      ask: 'Is the skin of riveted segments, a laminated wall in one piece, or a molded shell?',
      where: 'seams and rivets on the outside; the maker’s book',
    },
    'shop.rate': {
      kind: 'quantity',
      label: 'Rate of the shop',
      unit: 'USD/h',
      least: 20,
      most: 500,
      ask: 'What does the shop ask an hour?',
      where: 'posted in the shop; a phone call',
    },
    'shop.quote': {
      kind: 'quantity',
      label: 'What a shop has quoted',
      noun: 'what a shop has quoted',
      unit: 'USD',
      least: 0,
      most: 500_000,
      ask: 'Has a shop that saw it quoted a price?',
      where: 'its written estimate, without what is found later',
    },
    'refinish.area': {
      kind: 'quantity',
      label: 'Area to be refinished',
      unit: 'ft²',
      least: 0,
      most: 1500,
      ask: 'How much must be painted or refinished, blended edges with it?',
      where: 'tape, height times width',
      silent: { value: 0, says: 'Nothing is refinished.', source: custom, quiet: true },
    },
    'seal.length': {
      kind: 'quantity',
      label: 'Seams to be sealed anew',
      unit: 'ft',
      least: 0,
      most: 500,
      ask: 'How many feet of seam must be sealed anew?',
      where: 'tape along the seams that were opened or moved',
      silent: { value: 0, says: 'No seam is sealed anew.', source: custom, quiet: true },
    },
    'water.signs': {
      kind: 'choice',
      label: 'Signs of water inside',
      noun: 'whether water has been inside',
      options: ['none-seen', 'stains', 'soft'],
      ask: 'Inside, behind the damage and below it: nothing to be seen, stains, or anything soft?',
      where: 'cupboards, corners and floor edges; press with a thumb',
    },
  },
  parameters: {
    'money.none': {
      label: 'No money',
      noun: 'nothing',
      unit: 'USD',
      values: [{ from: '2020-01-01', value: 0 }],
      source: money,
    },
    'rate.low': {
      label: 'Rate of a shop where none is told, least',
      unit: 'USD/h',
      values: [{ from: '2020-01-01', value: 110 }],
      range: [40, 300],
      source: shopBook,
    },
    'rate.high': {
      label: 'Rate of a shop where none is told, most',
      unit: 'USD/h',
      values: [{ from: '2020-01-01', value: 190 }],
      range: [40, 300],
      source: shopBook,
    },
    'refinish.hoursLow': {
      label: 'Refinishing, least',
      unit: 'h/ft²',
      values: [{ from: '2020-01-01', value: 0.2 }],
      range: [0.05, 1],
      source: shopBook,
    },
    'refinish.hoursHigh': {
      label: 'Refinishing, most',
      unit: 'h/ft²',
      values: [{ from: '2020-01-01', value: 0.4 }],
      range: [0.05, 2],
      source: shopBook,
    },
    'refinish.partsLow': {
      label: 'Paint and paper, least',
      unit: 'USD/ft²',
      values: [{ from: '2020-01-01', value: 4 }],
      range: [1, 30],
      source: shopBook,
    },
    'refinish.partsHigh': {
      label: 'Paint and paper, most',
      unit: 'USD/ft²',
      values: [{ from: '2020-01-01', value: 9 }],
      range: [1, 60],
      source: shopBook,
    },
    'seal.hoursLow': {
      label: 'Sealing, least',
      unit: 'h/ft',
      values: [{ from: '2020-01-01', value: 0.1 }],
      range: [0.02, 1],
      source: shopBook,
    },
    'seal.hoursHigh': {
      label: 'Sealing, most',
      unit: 'h/ft',
      values: [{ from: '2020-01-01', value: 0.2 }],
      range: [0.02, 1],
      source: shopBook,
    },
    'seal.partsLow': {
      label: 'Sealant, least',
      unit: 'USD/ft',
      values: [{ from: '2020-01-01', value: 1.5 }],
      range: [0.2, 20],
      source: shopBook,
    },
    'seal.partsHigh': {
      label: 'Sealant, most',
      unit: 'USD/ft',
      values: [{ from: '2020-01-01', value: 3 }],
      range: [0.2, 20],
      source: shopBook,
    },
  },
  wordTables: {
    builtFactor: {
      label: 'How many times the hours of a riveted segment',
      valueUnit: '',
      values: { 'riveted-segments': 1, 'laminated-wall': 1.5, 'molded-shell': 1.25 },
      source: construction,
    },
    hiddenLow: {
      label: 'Hidden behind it, least',
      valueUnit: '%',
      values: { 'none-seen': 0, stains: 10, soft: 40 },
      source: hiddenShare,
    },
    hiddenHigh: {
      label: 'Hidden behind it, most',
      valueUnit: '%',
      values: { 'none-seen': 10, stains: 60, soft: 200 },
      source: hiddenShare,
    },
  },
  formulas: {
    'book.isTold': {
      label: 'Something to be repaired was told',
      unit: 'yes-no',
      is: 'given(segments.front) || given(segments.side) || given(segments.rear) || given(segments.roof) || given(segments.corner) || given(refinish.area) || given(seal.length)',
      source: custom,
    },
    'estimate.isTold': {
      label: 'There is something to price',
      unit: 'yes-no',
      is: 'book.isTold || given(shop.quote)',
      source: custom,
    },
    'estimate.isMissing': {
      label: 'There is nothing to price',
      unit: 'yes-no',
      is: '!estimate.isTold && shop.quote >= money.none',
      source: custom,
    },
    'seen.low': {
      label: 'Quoted, or by the book at the least',
      noun: 'what is seen, at the least',
      unit: 'USD',
      is: 'choose(known(shop.quote) || !book.isTold, shop.quote, choose(given(shop.quote), max(repair.low, shop.quote), repair.low))',
      source: shopBook,
    },
    'seen.high': {
      label: 'Quoted, or by the book at the most',
      noun: 'what is seen, at the most',
      unit: 'USD',
      is: 'choose(known(shop.quote) || !book.isTold, shop.quote, choose(given(shop.quote), max(repair.high, shop.quote), repair.high))',
      source: shopBook,
    },
    'repair.hoursLow': {
      label: 'Hours in the shop, at the least',
      unit: 'h',
      is: 'segments.hoursLow * pick(builtFactor, wall.built) + refinish.area * refinish.hoursLow + seal.length * seal.hoursLow',
      source: shopBook,
    },
    'repair.hoursHigh': {
      label: 'Hours in the shop, at the most',
      unit: 'h',
      is: 'segments.hoursHigh * pick(builtFactor, wall.built) + refinish.area * refinish.hoursHigh + seal.length * seal.hoursHigh',
      source: shopBook,
    },
    'repair.low': {
      label: 'What is seen, at the least',
      noun: 'the least for what is seen',
      unit: 'USD',
      is: 'repair.hoursLow * choose(given(shop.rate), shop.rate, rate.low) + segments.partsLow + refinish.area * refinish.partsLow + seal.length * seal.partsLow',
      source: shopBook,
    },
    'repair.high': {
      label: 'What is seen, at the most',
      noun: 'the most for what is seen',
      unit: 'USD',
      is: 'repair.hoursHigh * choose(given(shop.rate), shop.rate, rate.high) + segments.partsHigh + refinish.area * refinish.partsHigh + seal.length * seal.partsHigh',
      source: shopBook,
    },
    'cost.low': {
      label: 'Repair with what is hidden, at the least',
      noun: 'the least it may cost',
      unit: 'USD',
      is: 'seen.low * (1 + pick(hiddenLow, water.signs))',
      source: hiddenShare,
    },
    'cost.high': {
      label: 'Repair with what is hidden, at the most',
      noun: 'the most it may cost',
      unit: 'USD',
      is: 'seen.high * (1 + pick(hiddenHigh, water.signs))',
      source: hiddenShare,
    },
    'cost.range': {
      label: 'What the repair may cost',
      unit: 'USD',
      is: 'between(cost.low, cost.high)',
      source: money,
    },
    'assumed.zones': {
      label: 'Some segments were told',
      unit: 'yes-no',
      is: 'book.isTold && !known(shop.quote)',
      source: custom,
    },
    'assumed.rate': {
      label: 'No rate was told',
      unit: 'yes-no',
      is: 'book.isTold && !known(shop.quote) && !given(shop.rate)',
      source: house,
    },
  },
  findings: {
    estimate: {
      label: 'Something to price',
      unknown: {
        when: 'estimate.isMissing',
        wrong: 'Nothing to price was told: neither what is torn or creased, nor a quote.',
        do: 'Count the segments from seam to seam, or have a shop look and write it down.',
      },
      otherwise: 'There is something to price.',
      source: custom,
    },
    priced: {
      label: 'What it may cost',
      askedBy: [
        'segments.front',
        'segments.side',
        'segments.rear',
        'segments.roof',
        'segments.corner',
        'refinish.area',
        'seal.length',
        'shop.quote',
      ],
      settles: true,
      otherwise: 'The repair may come to {cost.range}; only a shop that has looked can say.',
      source: shopBook,
    },
    'quote-apart': {
      label: 'The quote against the book',
      askedBy: ['shop.quote'],
      care: [
        {
          when: 'book.isTold && shop.quote < repair.low',
          wrong:
            'The quote of {shop.quote} lies under the {repair.low} that the book expects at the least.',
          because: 'Something may have been left out.',
          do: 'Ask for it line by line.',
        },
        {
          when: 'book.isTold && shop.quote > repair.high',
          wrong:
            'The quote of {shop.quote} lies over the {repair.high} that the book expects at the most.',
          because: 'The shop may have seen more than was told here.',
          do: 'Ask for it line by line.',
        },
      ],
      otherwise:
        'The quote lies within what the book expects, or there is nothing to hold it against.',
      open: {
        wrong: 'The quote may lie outside what the book expects.',
        do: 'Ask for it line by line.',
      },
      source: shopBook,
    },
    'hidden-damage': {
      label: 'Hidden water damage',
      askedBy: ['water.signs'],
      care: {
        when: "water.signs == 'stains' || water.signs == 'soft'",
        wrong: 'Water has been inside.',
        because: 'What is seen is the smaller part.',
        do: 'Have the wall opened before anybody names a price, and tell the insurer that more may be found.',
      },
      otherwise: 'No water is seen inside, which is not yet none.',
      open: {
        wrong: 'Nobody has looked for water inside.',
        do: 'Look behind and below the damage before you believe any price.',
      },
      source: custom,
    },
  },
});
