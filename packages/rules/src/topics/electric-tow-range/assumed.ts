import type { Assumption } from '../../engine/define/shapes';
import { part } from '../../engine/define/topic';
import { custom, house } from '../../trade/bibliography/common';
import {
  coldHabits,
  dragHabits,
  standardAir,
  towingRule,
} from '../../trade/bibliography/electric-tow-range';

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
      'Nobody said how fast the grade is climbed or driven down',
      'given(trip.steepestGrade) && !(given(trip.climbSpeed) && given(trip.descentSpeed))',
      house,
    ),
    'assumed.drag': when(
      'Drag is taken from what is usual',
      '!known(trial.consumption, trial.speed) && !known(trailer.dragArea) && given(trailer.frontalArea)',
      dragHabits,
    ),
    'assumed.drive': when(
      'Nobody said what it runs on',
      '!given(vehicle.drive) && !drive.hasEngine && (given(vehicle.usableBattery) || given(solo.consumption))',
      custom,
    ),
    'assumed.wholeWay': when(
      'The way was told as a whole',
      'given(trip.distance) && !route.isLegged',
      custom,
    ),
    'assumed.rule': when(
      'Too little was told to reckon what towing takes',
      '(given(solo.consumption) || given(solo.fuelEconomy)) && !level.isReckoned && !route.isLegged',
      towingRule,
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
    says: 'The known consumption without a trailer was with the driver alone.',
    source: house,
  },
  {
    when: 'assumed.climbSpeed',
    says: 'The steepest grade is climbed and driven down at the speed the house reckons with.',
    source: house,
  },
  {
    when: 'assumed.drag',
    says: 'What the trailer adds to the drag is taken from its front and its shape, as a range.',
    source: dragHabits,
  },
  { when: 'assumed.drive', says: 'It runs on its battery alone.', source: custom },
  {
    when: 'assumed.wholeWay',
    says: 'The way is level, in still and mild air, at one speed.',
    source: custom,
  },
  {
    when: 'assumed.rule',
    says: 'What towing takes is set against what it takes alone by a rule of thumb, as a wide range.',
    source: towingRule,
  },
  {
    when: 'assumed.auxiliary',
    says: 'Cabin and auxiliaries take what is usual at that temperature.',
    source: coldHabits,
  },
];
