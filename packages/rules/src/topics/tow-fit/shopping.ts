import { part } from '../../engine/define/topic';
import { custom } from '../../trade/bibliography/common';
import { makersRating } from '../../trade/bibliography/rig';

const window = (share: string): string =>
  `choose(towPackage.isNoBar, min(vehicle.maxTrailerWeight * ${share}, shopping.cap), between(-unlimited, unlimited))`;

/**
 * The maximum weights of trailers that a specialist would look at, a share of the tow rating: its top
 * stands above the margin on purpose, since that is for the weight as loaded.
 *
 *     0 ───────── from ══════ to ── rating        none heavier than what fits
 */
export const shopping = part({
  parameters: {
    'shopping.fromShare': {
      label: 'Shopping window, lower end, of the tow rating',
      unit: '1',
      values: [{ from: '2020-01-01', value: 5 / 6 }],
      source: custom,
    },
    'shopping.toShare': {
      label: 'Shopping window, upper end, of the tow rating',
      unit: '1',
      values: [{ from: '2020-01-01', value: 11 / 12 }],
      source: custom,
    },
  },
  formulas: {
    'towPackage.isNoBar': {
      label: 'The vehicle itself may tow',
      unit: 'yes-no',
      is: "may(!(towPackage.isNeeded && vehicle.towPackage == 'no'))",
      source: makersRating,
    },
    'shopping.cap': {
      label: 'Nothing heavier than the largest trailer that fits',
      unit: 'lb',
      is: 'choose(known(largest.trailer) && may(largest.trailer > 0), max(0, largest.trailer), unlimited)',
      source: custom,
    },
    'shopping.from': {
      label: 'Shop from a maximum trailer weight of',
      noun: 'the lightest maximum to look at',
      unit: 'lb',
      is: window('shopping.fromShare'),
      source: custom,
    },
    'shopping.to': {
      label: 'Shop to a maximum trailer weight of',
      noun: 'the heaviest maximum to look at',
      unit: 'lb',
      is: window('shopping.toShare'),
      source: custom,
    },
  },
});
