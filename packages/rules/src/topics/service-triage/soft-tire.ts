import { part } from '../../engine/define/topic';
import { softHouse, softTire } from '../../trade/bibliography/service-triage';

/** Tires against their mates: one that ran soft is hurt inside, and air hides it. */
export const softTires = part({
  facts: {
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
      ask: 'What pressure have the other tires on the same axles, measured in the same minutes?',
      where: 'tire gauge',
    },
  },
  parameters: {
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
    'tire.share': {
      label: 'Softest tire against its mates',
      noun: 'the softest tire against its mates',
      unit: '%',
      is: 'min(tire.softest, tire.mates) / max(tire.softest, tire.mates)',
      source: softTire,
    },
    'tire.isMeasured': {
      label: 'Tires were measured',
      unit: 'yes-no',
      is: 'given(tire.softest) || given(tire.mates)',
      source: softTire,
    },
    'tire.runsSoft': {
      label: 'A tire ran flat',
      unit: 'yes-no',
      is: 'tire.isMeasured && tire.share <= tire.runFlat',
      source: softTire,
    },
    'tire.isWatched': {
      label: 'A tire is softer than its mates',
      unit: 'yes-no',
      is: 'tire.isMeasured && tire.share <= tire.lookAt',
      source: softHouse,
    },
  },
  findings: {
    'soft-tire': {
      label: 'Tires against each other',
      askedBy: ['tire.softest', 'tire.mates'],
      stop: {
        when: 'tire.share <= tire.runFlat',
        wrong: 'One tire has {tire.share} of its mates’ pressure: it counts as run flat.',
        because:
          'Its cords were bent with every turn, which does not show from outside, and air hides it.',
        do: 'Do not roll on it and do not just fill it up; it comes off and is looked at inside.',
      },
      care: {
        when: 'tire.share <= tire.lookAt',
        wrong: 'One tire has {tire.share} of its mates’ pressure.',
        do: 'Fill it cold to the pressure on the label, look for the nail, and measure again tomorrow.',
      },
      otherwise: 'The tires are about alike.',
      open: {
        wrong: 'Not every tire has been measured.',
        do: 'Measure all of them cold, before it rolls.',
      },
      source: softTire,
    },
  },
});
