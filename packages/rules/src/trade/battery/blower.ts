import { part } from '../../engine/define/topic';
import { circuits } from '../bibliography/battery';
import { custom, house } from '../bibliography/common';

/** The furnace's fan: what heats with gas draws on the battery as well, all night. */
export const blower = part({
  facts: {
    'furnace.blowerCurrent': {
      kind: 'quantity',
      label: 'Current of the furnace blower',
      unit: 'A',
      least: 0,
      most: 40,
      ask: 'How many amperes does the furnace blower draw?',
      where: 'data plate of the furnace',
      silent: { value: 0, says: 'No furnace blower is counted.', source: custom, quiet: true },
    },
    'furnace.hours': {
      kind: 'quantity',
      label: 'Hours a night the furnace is set',
      unit: 'h',
      least: 0,
      most: 24,
      ask: 'For how many hours a night is the thermostat on?',
      where: 'told by the owner',
      silent: {
        value: 12,
        says: 'The furnace is set for twelve hours.',
        source: house,
        quiet: true,
      },
    },
    'furnace.duty': {
      kind: 'quantity',
      label: 'Share of that time the furnace runs',
      unit: '%',
      least: 0,
      most: 100,
      ask: 'What part of the time does the furnace run on such a night?',
      where: 'told by the owner, or reckoned from heat loss',
      silent: { value: 50, says: 'The furnace runs half the time.', source: house, quiet: true },
    },
  },
  formulas: {
    'blower.ampHours': {
      label: 'Furnace blower, a night',
      unit: 'Ah',
      is: 'furnace.blowerCurrent * furnace.hours * furnace.duty',
      source: circuits,
    },
  },
});
