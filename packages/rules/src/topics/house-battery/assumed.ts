import type { Assumption } from '../../engine/define/shapes';
import { part } from '../../engine/define/topic';
import { furnaceAssumptions } from '../../trade/battery/blower';
import { wireAssumptions } from '../../trade/battery/wire';
import { custom, house } from '../../trade/bibliography/common';

/** A row whose hours nobody said. */
const untimed = (list: string): string =>
  `sum(choose(given(${list}.from, ${list}.to) || given(${list}.hours), 0, 1))`;

const when = (label: string, is: string, source: typeof custom) =>
  ({ label, unit: 'yes-no', is, source }) as const;

/** What is taken for granted, and only where the question has to do with it. */
export const assumed = part({
  formulas: {
    'assumed.volts': when('Nobody said of what voltage', '!given(battery.volts)', custom),
    'assumed.system': when(
      'Nobody said for what voltage the trailer is wired, and the bank has half',
      'bank.isHalf && !given(system.volts)',
      custom,
    ),
    'assumed.single': when(
      'Nobody said how the batteries are cabled',
      'given(battery.capacity) && !given(bank.series) && !given(bank.parallel)',
      custom,
    ),
    'assumed.health': when(
      'Nobody said how worn it is',
      'given(battery.capacity) && !given(battery.health)',
      custom,
    ),
    'assumed.warm': when(
      'Nobody said how cold it is',
      '(given(battery.capacity) || given(battery.voltage)) && !given(battery.temperature)',
      custom,
    ),
    'assumed.ratedHours': when(
      'Nobody said over how many hours it is rated',
      '(day.isAsked || given(steady.power)) && !given(battery.ratedHours)',
      custom,
    ),
    'assumed.inverter': when(
      'Not all was said of an inverter in use',
      "(count(loads.ac) > 0 && !given(inverter.efficiency, inverter.idle, inverter.hours)) || (steady.onInverter == 'yes' && !given(inverter.efficiency))",
      house,
    ),
    'assumed.latitude': when(
      'Nobody said how far north it stands',
      'solar.power > 0 && !given(place.latitude)',
      house,
    ),
    'assumed.full': when(
      'Nobody read how full it is',
      '!start.isRead && (day.isAsked || given(steady.hours))',
      custom,
    ),
    'assumed.fromStop': when(
      'Nobody read how empty it is, and it is to be charged',
      '!start.isRead && given(charger.current)',
      custom,
    ),
    'assumed.noSpell': when(
      'A charger has no hours told',
      `${untimed('charging.spells')} > 0`,
      house,
    ),
    'assumed.allDay': when(
      'A load has no hours told',
      `${untimed('loads.dc')} + ${untimed('loads.ac')} > 0`,
      house,
    ),
  },
});

export const assumptions: readonly Assumption[] = [
  { when: 'assumed.volts', says: 'Each battery is a 12-volt one.', source: custom },
  { when: 'assumed.system', says: 'The trailer is wired for {block.volts}.', source: custom },
  { when: 'assumed.single', says: 'It is one battery, none beside it.', source: custom },
  {
    when: 'assumed.health',
    says: 'The battery still has the capacity on its label.',
    source: custom,
  },
  { when: 'assumed.warm', says: 'The cells are at {battery.cells}.', source: custom },
  {
    when: 'assumed.ratedHours',
    says: 'The capacity is rated over 20 hours.',
    source: custom,
  },
  {
    when: 'assumed.inverter',
    says: 'Where not told: the inverter is 85 % efficient, draws 15 W by itself, and is on all day.',
    source: house,
  },
  ...furnaceAssumptions,
  ...wireAssumptions,
  { when: 'assumed.latitude', says: 'The place lies at 40° north.', source: house },
  {
    when: 'assumed.full',
    says: 'The battery is full to begin with, in the evening where it is about a day; it was not read.',
    source: custom,
  },
  {
    when: 'assumed.fromStop',
    says: 'It is charged from the stop line; how full it is was not read.',
    source: custom,
  },
  {
    when: 'assumed.noSpell',
    says: 'A charger without hours is not counted.',
    source: house,
  },
  {
    when: 'assumed.allDay',
    says: 'A load without hours runs all day.',
    source: house,
  },
];
