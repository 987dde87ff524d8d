import { part } from '../../engine/define/topic';

/** What a day draws, where somebody has read it off or added it up before. */
export const dayDrawn = part({
  facts: {
    'battery.dayDrawn': {
      kind: 'quantity',
      unit: 'Ah',
      least: 0,
      most: 3_000,
      label: 'Ampere-hours a day takes without it',
      noun: 'what a day takes now',
      ask: 'How many ampere-hours does a day take now, or what runs on the battery and how long?',
      where: 'the monitor over a day; or a list of loads with watts and hours',
    },
  },
});
