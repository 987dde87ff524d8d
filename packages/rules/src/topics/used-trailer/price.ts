import type { Formula, Parameter } from '../../engine/define/shapes';
import { part } from '../../engine/define/topic';
import { alarmDates, datesFromMemory } from '../../trade/bibliography/gas';
import { looked, priceBook } from '../../trade/bibliography/used-trailer';

const price = (label: string, value: number): Parameter => ({
  label,
  unit: 'USD',
  values: [{ from: '2020-01-01', value }],
  range: [value / 4, value * 4],
  source: priceBook,
});
const span = (label: string, id: string, low: number, high: number) =>
  [
    [`${id}.low`, price(`${label}, at the least`, low)],
    [`${id}.high`, price(`${label}, at the most`, high)],
  ] as const;

/** What is always done first, and what is done where it was found. */
const book = [
  ...span('Bearings packed and brakes looked at', 'price.bearings', 150, 400),
  ...span('Seals of the roof gone over', 'price.seals', 150, 900),
  ...span('One tire, mounted', 'price.tire', 110, 220),
  ...span('One soft zone opened and rebuilt', 'price.zone', 600, 3500),
  ...span('One axle', 'price.axle', 400, 1800),
  ...span('Spring hanger welded or replaced, the others looked at', 'price.hanger', 150, 900),
  ...span('Gas tested and mended', 'price.gas', 100, 700),
  ...span('Electrics looked through', 'price.electrics', 100, 900),
  ...span('Brakes mended', 'price.brakes', 200, 900),
  ...span('Alarms and cylinders replaced', 'price.dates', 100, 350),
  ...span('Rust brushed and painted', 'price.rust', 80, 400),
];

const either = (when: string, id: string): string =>
  `choose(${when}, between(${id}.low, ${id}.high), 0)`;
/** Where nobody tested it, it may cost nothing and may cost all of it. */
const tested = (bad: string, open: string, id: string): string =>
  `choose(${bad}, between(${id}.low, ${id}.high), choose(${open}, between(0, ${id}.high), 0))`;
const cost = (label: string, noun: string, is: string): Formula => ({
  label,
  noun,
  unit: 'USD',
  is,
  source: priceBook,
});

/**
 * What must be done before the first trip, from the least to the most, against asking price and what
 * a dry and sound one costs.
 *
 *     ├──── asked ────┼── first, least ──┼──── to the most ────┤
 *     ├───────── a dry one ─────────┤
 */
export const firstCost = part({
  parameters: { ...Object.fromEntries(book) },
  facts: {},
  formulas: {
    'dates.arePast': {
      label: 'Cylinders or alarms are past their dates',
      unit: 'yes-no',
      is: 'cylinders.arePast || alarms.arePast',
      source: alarmDates,
    },
    'cylinders.arePast': {
      label: 'A cylinder is past its date',
      unit: 'yes-no',
      is: "(cylinders.areKnown && cylinders.dates == 'past') || cylinder.stampPast",
      source: datesFromMemory,
    },
    'alarms.arePast': {
      label: 'An alarm is past its date',
      unit: 'yes-no',
      is: 'alarm.gasPast || alarm.monoxidePast || alarm.gasTold > alarm.gasLife || alarm.monoxideTold > alarm.monoxideLife',
      source: alarmDates,
    },
    'cylinder.stampPast': {
      label: 'The date on the cylinder’s collar is past, by month and year',
      unit: 'yes-no',
      is: 'given(cylinder.stampYear) && cylinder.sinceStamp > cylinder.life',
      source: datesFromMemory,
    },
    'tires.count': {
      label: 'Tires with the spare',
      noun: 'how many tires there are',
      unit: '',
      is: 'choose(given(trailer.axles), trailer.axles * 2 + 1, between(3, 7))',
      source: looked,
    },
    'quoted.spots': {
      label: 'Spots that a shop has quoted',
      noun: 'the spots with a quote',
      unit: '',
      is: 'sum(choose(known(found.spots.cost), 1, 0))',
      source: looked,
    },
    'soft.unquoted': {
      label: 'Soft zones that no quote covers; one that is quoted counts once',
      noun: 'the soft zones without a quote',
      unit: '',
      is: 'choose(given(soft.zones), max(0, soft.zones - choose(given(soft.quoted), min(soft.quoted, soft.zones), between(0, min(soft.zones, quoted.spots)))), 0)',
      source: looked,
    },
    'cost.always': cost(
      'What is always done first: bearings, seals',
      'what is always done first',
      'between(price.bearings.low, price.bearings.high) + between(price.seals.low, price.seals.high)',
    ),
    'cost.running': cost(
      'Tires, axle, hanger, brakes, rust',
      'tires, axle, hanger and brakes',
      `choose(tires.areDone, tires.count * between(price.tire.low, price.tire.high), 0) + ${either("wear.isKnown && axle.wear == 'one-edge'", 'price.axle')} + ${tested("brakes.wereTried && brakes.tested == 'faults'", "!brakes.wereTried || brakes.tested == 'untested'", 'price.brakes')} + ${either("frame.isKnown && frame.state == 'surface-rust'", 'price.rust')} + ${either('hanger.isCracked', 'price.hanger')}`,
    ),
    'cost.inside': cost(
      'Soft zones, gas, electrics, dates',
      'soft zones, gas and electrics',
      `soft.unquoted * between(price.zone.low, price.zone.high) + ${tested("gas.isKnown && gas.tested == 'leaks'", 'untested.gas', 'price.gas')} + ${tested("electrics.areKnown && electrics.tested == 'faults'", "!electrics.areKnown || electrics.tested == 'untested'", 'price.electrics')} + ${either('dates.arePast', 'price.dates')}`,
    ),
    'cost.quoted': cost(
      'Quoted by a shop, spot by spot',
      'what was quoted',
      'sum(choose(known(found.spots.cost), found.spots.cost, 0))',
    ),
    'first.cost': cost(
      'What must be spent before the first trip',
      'what must be spent before the first trip',
      'cost.always + cost.running + cost.inside + cost.quoted',
    ),
    'deal.total': cost(
      'Asking price and what must be spent first',
      'price and first costs together',
      'price.asked + first.cost',
    ),
    'offer.most': cost(
      'What it is worth as it stands: a dry one less what must be spent',
      'what it is worth as it stands',
      'max(0, price.dry - first.cost)',
    ),
  },
  findings: {
    price: {
      label: 'Price',
      askedBy: ['price.dry'],
      care: {
        when: 'deal.total > price.dry',
        wrong: 'With what must be done first it costs {deal.total}, and a dry one {price.dry}.',
        because: 'A dry one is then the cheaper of the two, without the work.',
        do: 'Offer {offer.most}, or look at the dry one.',
      },
      open: {
        wrong:
          'With what must be done first it comes to {deal.total}, and a dry one costs {price.dry}.',
        do: 'Have the open things tested before you name a price.',
      },
      otherwise: 'With what must be done first it still costs no more than a dry one.',
      source: priceBook,
    },
  },
});
