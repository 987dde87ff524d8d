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
      ask: 'How much water does the new part use in a day?',
      where: 'its papers, times how often it is used',
      silent: { value: 0, says: 'It uses no water.', source: custom, quiet: true },
    },
    'addon.drainsTo': {
      kind: 'choice',
      options: ['gray', 'black'],
      label: 'Tank it drains to',
      ask: 'Does the new part’s water go to the gray tank or to the black one?',
      where: 'follow the drain; a toilet’s is black',
    },
  },
  formulas: {
    'added.toGray': {
      label: 'Of its water, into the gray tank a day',
      unit: 'gal/d',
      is: "choose(addon.waterDaily > 0, choose(!given(addon.drainsTo) && addon.kind == 'bidet-seat', 0, choose(addon.drainsTo == 'gray', addon.waterDaily, 0)), 0)",
      within: ['0', 'addon.waterDaily'],
      source: balance,
    },
    'added.toBlack': {
      label: 'Of its water, into the black tank a day',
      unit: 'gal/d',
      is: 'addon.waterDaily - added.toGray',
      source: balance,
    },
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
      is: 'choose(gray.daily + added.toGray > 0, gray.room / (gray.daily + added.toGray), unlimited)',
      source: balance,
    },
    'black.daysAfter': {
      label: 'Days until the black tank is full with it',
      noun: 'the black tank with it',
      unit: 'd',
      is: 'choose(black.daily + added.toBlack > 0, black.room / (black.daily + added.toBlack), unlimited)',
      source: balance,
    },
  },
  findings: {
    water: {
      label: 'Water and tanks',
      askedBy: ['addon.waterDaily'],
      care: {
        when: 'fresh.daysAfter < stay.days || gray.daysAfter < stay.days || black.daysAfter < stay.days',
        wrong:
          'The stay is {stay.days}: fresh water lasts {fresh.daysAfter}, the gray tank fills in {gray.daysAfter}, the black one in {black.daysAfter}.',
        do: 'Plan a fill or a dump for that day, or bring a jug.',
      },
      otherwise: 'With it the tanks still last the stay.',
      open: {
        wrong: 'Whether the tanks still last the stay is not told.',
        do: 'Read the tanks’ sizes from the brochure and a day’s use from the gauge.',
      },
      source: balance,
    },
  },
});
