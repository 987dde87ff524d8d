import type { Assumption } from '../../engine/define/shapes';
import { part } from '../../engine/define/topic';
import { custom, house } from '../../trade/bibliography/common';
import { coldHabits, dragHabits, standardAir } from '../../trade/bibliography/electric-tow-range';

const untold = (column: string): string => `sum(choose(given(route.legs.${column}), 0, 1)) > 0`;
const when = (label: string, is: string, source: typeof custom) =>
  ({ label, unit: 'yes-no', is, source }) as const;

/** What is taken for granted, and only where the route has to do with it. */
export const assumed = part({
  formulas: {
    'assumed.level': when('A leg has no climb told', untold('climb'), custom),
    'assumed.still': when('A leg has no wind told', untold('headwind'), custom),
    'assumed.mild': when('A leg has no temperature told', untold('temperature'), standardAir),
    'assumed.soloLoad': when(
      'Nobody said who was aboard without the trailer',
      'given(solo.consumption) && !given(solo.load)',
      house,
    ),
    'assumed.climbSpeed': when(
      'Nobody said how fast the grade is climbed',
      'given(trip.steepestGrade) && !given(trip.climbSpeed)',
      house,
    ),
    'assumed.drag': when(
      'Drag is taken from what is usual',
      '!known(trial.consumption, trial.speed) && !known(trailer.dragArea) && given(trailer.frontalArea)',
      dragHabits,
    ),
    'assumed.auxiliary': when(
      'Nobody said what cabin and auxiliaries take',
      'count(route.legs) > 0 && !given(vehicle.auxiliaryPower)',
      coldHabits,
    ),
  },
});

export const assumptions: readonly Assumption[] = [
  { when: 'assumed.level', says: 'A leg without a climb is level.', source: custom },
  {
    when: 'assumed.still',
    says: 'A leg without a headwind is driven in still air.',
    source: custom,
  },
  {
    when: 'assumed.mild',
    says: 'A leg without a temperature is mild, and its air that of the standard atmosphere.',
    source: standardAir,
  },
  {
    when: 'assumed.soloLoad',
    says: 'The known consumption without a trailer was with the driver alone, 150 lb.',
    source: house,
  },
  {
    when: 'assumed.climbSpeed',
    says: 'The steepest grade is climbed at 45 mph.',
    source: house,
  },
  {
    when: 'assumed.drag',
    says: 'What the trailer adds to the drag is taken from its front and its shape, as a range.',
    source: dragHabits,
  },
  {
    when: 'assumed.auxiliary',
    says: 'Cabin and auxiliaries take what is usual at that temperature.',
    source: coldHabits,
  },
];
