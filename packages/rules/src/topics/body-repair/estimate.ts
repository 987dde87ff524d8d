import { part } from '../../engine/define/topic';
import { hiddenShare, money, shopBook } from '../../trade/bibliography/body-repair';
import { custom, house } from '../../trade/bibliography/common';

/**
 * What the repair comes to, from a least to a most.
 *
 *     (segments × how it is built + refinish + seal) × rate + parts
 *     ├──────────────── or what a shop has quoted ────────────────┤ × (1 + hidden)
 */
export const estimate = part({
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
    'quote.isAll': {
      label: 'A shop’s quote is all that there is to price',
      unit: 'yes-no',
      is: 'known(shop.quote) && !book.isTold',
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
        wrong: 'Whether water got inside is not known yet.',
        do: 'Look behind and below the damage before you believe any price.',
      },
      source: custom,
    },
  },
});
