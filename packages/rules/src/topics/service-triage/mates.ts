import { part } from '../../engine/define/topic';
import {
  comparison,
  printedLimit,
  softHouse,
  softTire,
} from '../../trade/bibliography/service-triage';

/**
 * Hubs and tires against their mates: comparison beats absolute numbers.
 *
 *     150   155   150   228 °F        printed limit 250
 *     ├──── 78 F° over its mates ─┤   stop, though under the limit
 */
export const mates = part({
  facts: {
    'hub.hottest': {
      kind: 'quantity',
      unit: '°F',
      least: -40,
      most: 800,
      label: 'The hottest hub',
      noun: 'the hottest hub',
      instead: 'Measure every hub again at once after the same stretch',
      ask: 'What does the hottest hub read, measured at the same spot as the others?',
      where: 'touchless thermometer, at once after stopping, brakes used alike',
    },
    'hub.coolest': {
      kind: 'quantity',
      unit: '°F',
      least: -40,
      most: 800,
      label: 'The coolest of its mates',
      noun: 'the coolest of its mates',
      instead: 'Measure every hub again at once after the same stretch',
      ask: 'And what does the coolest of the other hubs read?',
      where: 'touchless thermometer, at the same spot of each hub',
    },
    'hub.printedLimit': {
      kind: 'quantity',
      unit: '°F',
      least: 100,
      most: 800,
      exact: true,
      label: 'Limit that its maker prints',
      noun: 'the printed limit',
      ask: 'Does the axle’s manual print a temperature that a hub may reach?',
      where: 'manual of the axle; most print none',
    },
    'tire.softest': {
      kind: 'quantity',
      unit: 'psi',
      least: 0,
      most: 150,
      label: 'Pressure of the softest tire',
      noun: 'the softest tire',
      ask: 'What pressure does the softest tire have?',
      where: 'tire gauge; all of them cold, or all of them warm',
    },
    'tire.mates': {
      kind: 'quantity',
      unit: 'psi',
      least: 5,
      most: 150,
      label: 'Pressure of its mates',
      noun: 'its mates',
      ask: 'And the other tires on the same axles, measured in the same minutes?',
      where: 'tire gauge',
    },
  },
  parameters: {
    'hub.stopFrom': {
      label: 'How far over its mates a hub is stop',
      noun: 'the most a hub may be over its mates',
      unit: 'F°',
      values: [{ from: '2020-01-01', value: 75 }],
      range: [40, 75],
      source: comparison,
    },
    'hub.careFrom': {
      label: 'How far over its mates a hub is watched',
      unit: 'F°',
      values: [{ from: '2020-01-01', value: 40 }],
      range: [20, 40],
      source: comparison,
    },
    'tire.runFlat': {
      label: 'Share of its mates’ pressure at which a tire counts as run flat',
      unit: '%',
      values: [{ from: '2020-01-01', value: 80 }],
      source: softTire,
    },
    'tire.lookAt': {
      label: 'Share of its mates’ pressure at which a tire is looked at',
      unit: '%',
      values: [{ from: '2020-01-01', value: 90 }],
      range: [85, 97],
      source: softHouse,
    },
  },
  formulas: {
    'hub.apart': {
      label: 'Hottest hub over its coolest mate',
      noun: 'the difference between the hubs',
      unit: 'F°',
      is: 'max(hub.hottest, hub.coolest) - min(hub.hottest, hub.coolest)',
      source: comparison,
    },
    'hub.runsHot': {
      label: 'A hub runs hot',
      unit: 'yes-no',
      is: '((given(hub.hottest) || given(hub.coolest)) && hub.apart >= hub.stopFrom) || (given(hub.printedLimit) && max(hub.hottest, hub.coolest) > hub.printedLimit)',
      source: comparison,
    },
    'hub.warmest': {
      label: 'The warmest hub there is',
      noun: 'the warmest hub',
      unit: '°F',
      is: 'max(hub.hottest, hub.coolest)',
      source: comparison,
    },
    'tire.share': {
      label: 'Softest tire against its mates',
      noun: 'the softest tire against its mates',
      unit: '%',
      is: 'min(tire.softest, tire.mates) / max(tire.softest, tire.mates)',
      source: softTire,
    },
    'tire.runsSoft': {
      label: 'A tire runs flat',
      unit: 'yes-no',
      is: '(given(tire.softest) || given(tire.mates)) && tire.share <= tire.runFlat',
      source: softTire,
    },
  },
  findings: {
    hubs: {
      label: 'Hubs against each other',
      askedBy: ['hub.hottest', 'hub.coolest'],
      stop: {
        when: {
          all: [
            {
              fact: 'hub.apart',
              operator: 'greaterThanInclusive',
              value: { fact: 'hub.stopFrom' },
            },
          ],
        },
        wrong: 'One hub is far hotter than its mates.',
        do: 'A bearing or a brake is failing there, whatever any printed limit allows. Stop where it is safe, let it cool, and do not tow it; a wheel lost on the road kills others.',
      },
      care: {
        when: {
          all: [
            {
              fact: 'hub.apart',
              operator: 'greaterThanInclusive',
              value: { fact: 'hub.careFrom' },
            },
          ],
        },
        wrong: 'One hub is clearly warmer than its mates.',
        do: 'Measure again after a few miles, and have bearing and brake of that wheel looked at before the next trip.',
      },
      otherwise: 'The hubs are about alike.',
      open: {
        wrong: 'Measure every hub, at the same spot, at once after stopping.',
        do: 'Only the comparison tells.',
      },
      source: comparison,
    },
    'hub-limit': {
      label: 'Hub against its printed limit',
      askedBy: ['hub.printedLimit'],
      stop: {
        when: {
          all: [
            { fact: 'hub.warmest', operator: 'greaterThan', value: { fact: 'hub.printedLimit' } },
          ],
        },
        wrong: 'A hub is over the temperature its maker prints.',
        do: 'Stop where it is safe and do not tow on.',
      },
      otherwise: 'No hub is over the printed limit; that alone clears nothing.',
      open: { wrong: 'A hub may be over the printed limit.', do: 'Measure the hubs.' },
      source: printedLimit,
    },
    'soft-tire': {
      label: 'Tires against each other',
      askedBy: ['tire.softest', 'tire.mates'],
      stop: {
        when: {
          all: [
            { fact: 'tire.share', operator: 'lessThanInclusive', value: { fact: 'tire.runFlat' } },
          ],
        },
        wrong: 'One tire is so much softer than its mates that it counts as run flat.',
        do: 'Do not roll on it and do not just fill it up; it has to come off and be looked at inside.',
      },
      care: {
        when: {
          all: [
            { fact: 'tire.share', operator: 'lessThanInclusive', value: { fact: 'tire.lookAt' } },
          ],
        },
        wrong: 'One tire is softer than its mates.',
        do: 'Fill it cold, look for the nail, and measure again tomorrow.',
      },
      otherwise: 'The tires are about alike.',
      open: { wrong: 'Measure every tire, all of them cold.' },
      source: softTire,
    },
  },
});
