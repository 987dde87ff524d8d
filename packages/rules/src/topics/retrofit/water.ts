import { part } from '../../engine/define/topic';
import { custom } from '../../trade/bibliography/common';
import { balance } from '../../trade/bibliography/retrofit';

/** What it does to the days that the tanks last. */
export const water = part({
  facts: {
    'addon.waterDaily': {
      kind: 'quantity',
      unit: 'gal/d',
      least: 0,
      most: 100,
      label: 'Water it uses a day',
      noun: 'the water it uses',
      ask: 'How much water does it use in a day?',
      where: 'its papers, times how often it is used',
      silent: { value: 0, says: 'It uses no water.', source: custom, quiet: true },
    },
    'addon.drainsTo': {
      kind: 'choice',
      options: ['gray', 'black'],
      label: 'Tank it drains to',
      ask: 'Does its water go to the gray tank or to the black one?',
      where: 'follow the drain; a toilet’s is black',
    },
  },
  formulas: {
    'fresh.daysAfter': {
      label: 'Days of fresh water with it',
      noun: 'the fresh water with it',
      unit: 'd',
      is: 'choose(water.daily + addon.waterDaily > 0, fresh.start / (water.daily + addon.waterDaily), unlimited)',
      source: balance,
    },
    'gray.daysAfter': {
      label: 'Days until the gray tank is full with it',
      noun: 'the gray tank with it',
      unit: 'd',
      is: "choose(gray.daily + choose(addon.waterDaily > 0, choose(addon.drainsTo == 'gray', addon.waterDaily, 0), 0) > 0, gray.room / (gray.daily + choose(addon.waterDaily > 0, choose(addon.drainsTo == 'gray', addon.waterDaily, 0), 0)), unlimited)",
      source: balance,
    },
    'black.daysAfter': {
      label: 'Days until the black tank is full with it',
      noun: 'the black tank with it',
      unit: 'd',
      is: "choose(black.daily + choose(addon.waterDaily > 0, choose(addon.drainsTo == 'black', addon.waterDaily, 0), 0) > 0, black.room / (black.daily + choose(addon.waterDaily > 0, choose(addon.drainsTo == 'black', addon.waterDaily, 0), 0)), unlimited)",
      source: balance,
    },
  },
  findings: {
    water: {
      label: 'Water and tanks',
      askedBy: ['addon.waterDaily'],
      care: {
        when: {
          any: [
            { fact: 'fresh.daysAfter', operator: 'lessThan', value: { fact: 'stay.days' } },
            { fact: 'gray.daysAfter', operator: 'lessThan', value: { fact: 'stay.days' } },
            { fact: 'black.daysAfter', operator: 'lessThan', value: { fact: 'stay.days' } },
          ],
        },
        wrong: 'With it a tank may run out or fill before the stay is over.',
        do: 'See which, and plan a fill or a dump.',
      },
      otherwise: 'With it the tanks still last the stay.',
      source: balance,
    },
  },
});
