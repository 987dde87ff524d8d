import type { Assumption } from '../../engine/define/shapes';
import { part } from '../../engine/define/topic';
import { furnaceAssumptions } from '../../trade/battery/blower';
import { custom, house } from '../../trade/bibliography/common';
import { usualSizes } from '../../trade/bibliography/gas';
import { alarmAssumptions } from '../../trade/gas/alarms';

const when = (label: string, is: string) => ({ label, unit: 'yes-no', is, source: house }) as const;

/** What is taken for granted, and only where the question has to do with it. */
export const assumed = part({
  formulas: {
    'assumed.warmth': when(
      'Nobody said how warm it is to be',
      '(given(furnace.input) || given(inside.humidity)) && !given(inside.temperature)',
    ),
    'assumed.box': when(
      'Width or height is not told',
      'given(body.length) && !night.isTold && !given(body.width, body.height)',
    ),
    'assumed.full': when(
      'The battery is told, and how full it is is not reckoned',
      'given(battery.capacity) && given(furnace.blowerCurrent)',
    ),
    'assumed.recharged': when(
      'Nobody said whether the battery is charged between the nights',
      'given(battery.capacity) && given(furnace.blowerCurrent) && blower.isOnBattery && !given(battery.recharged) && trip.counted > 1',
    ),
    'assumed.cells': when(
      'The battery is told, and not how cold it is',
      'given(battery.capacity) && !given(battery.temperature)',
    ),
  },
});

export const assumptions: readonly Assumption[] = [
  { when: 'assumed.warmth', says: 'It is kept at {inside.temperature} inside.', source: custom },
  {
    when: 'assumed.box',
    says: 'Where not told: it is {body.width} wide and {body.height} high inside.',
    source: house,
  },
  ...furnaceAssumptions,
  ...alarmAssumptions,
  {
    when: 'assumed.full',
    says: 'The battery is full in the evening, and the blower is all that draws on it.',
    source: custom,
  },
  {
    when: 'assumed.recharged',
    says: 'Where not told: the battery is full again before each night; what the blower takes is that of one.',
    source: custom,
  },
  {
    when: 'assumed.cells',
    says: 'The battery’s cells are at {battery.cells}.',
    source: custom,
  },
  {
    when: 'assumed.cylinderFull',
    says: 'The cylinder is full.',
    source: custom,
  },
  {
    when: 'assumed.size',
    says: 'Where not measured: the cylinder has the usual size for its pounds.',
    source: usualSizes,
  },
];
