import type { Assumption } from '../../engine/define/shapes';
import { part } from '../../engine/define/topic';
import { circuits } from '../bibliography/battery';
import { custom, house } from '../bibliography/common';

/** The furnace's fan: what heats with gas draws on the battery as well, as long as it runs. */
export const blower = part({
  facts: {
    'furnace.blowerCurrent': {
      kind: 'quantity',
      label: 'Current of the furnace blower',
      noun: 'the current of the furnace blower',
      unit: 'A',
      least: 0,
      most: 40,
      ask: 'How many amperes does the furnace blower draw?',
      where: 'data plate of the furnace',
      silent: { value: 0, says: 'No furnace blower is counted.', source: custom, quiet: true },
    },
  },
  formulas: {
    'blower.ampHours': {
      label: 'Furnace blower, a day and night',
      noun: 'what the blower takes a day',
      unit: 'Ah',
      is: 'furnace.blowerCurrent * furnace.on * furnace.runs',
      source: circuits,
    },
    'assumed.furnaceShare': {
      label: 'Nobody said how much of the time the furnace runs, nor what trailer it heats',
      unit: 'yes-no',
      is: '(given(furnace.input) || given(furnace.blowerCurrent)) && !given(furnace.duty) && !heat.isTold',
      source: house,
    },
    'assumed.furnaceBoth': {
      label: 'Nobody said for how long the furnace is set, nor how much of that it runs',
      unit: 'yes-no',
      is: 'assumed.furnaceHours && assumed.furnaceShare',
      source: house,
    },
    'assumed.furnaceHours': {
      label: 'Nobody said for how long the furnace is set',
      unit: 'yes-no',
      is: '(given(furnace.input) || given(furnace.blowerCurrent)) && !given(furnace.hours)',
      source: house,
    },
  },
});

/** A figure that hangs on the furnace, said with what was taken for the hours and share nobody told. */
export const withFurnace = (says: string) =>
  [
    {
      when: 'assumed.furnaceBoth',
      says: `Say the furnace is set for {furnace.usualHours} a night, burning {furnace.usual} of that. Then ${says}`,
    },
    {
      when: 'assumed.furnaceHours',
      says: `With the furnace set for {furnace.usualHours} a night, ${says}`,
    },
    {
      when: 'assumed.furnaceShare',
      says: `With the furnace burning {furnace.usual} of the time it is set, ${says}`,
    },
  ] as const;

/** What is taken of a furnace of which not all was told. */
export const furnaceAssumptions: readonly Assumption[] = [
  {
    when: 'assumed.furnaceHours',
    says: 'Where not told: the furnace is set for {furnace.usualHours} a night.',
    source: house,
  },
  {
    when: 'assumed.furnaceShare',
    says: 'Where not told: while it is set, the furnace runs {furnace.usual} of the time.',
    source: house,
  },
];
