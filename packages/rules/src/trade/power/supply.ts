import { findingOf, part } from '../../engine/define/topic';
import { custom, house, dataPlate as plate } from '../bibliography/common';
import { breakers, lastingLoads, outlets, siteSupply } from '../bibliography/power';
import { outletTable } from './outlet-table';

/**
 * What the supply gives, a leg.
 *
 *     breaker ─ outlet ─ adapter ─ cord ─ inlet ─ the trailer’s main breaker
 *     the least of them counts; only four pins into a 50 A inlet make two legs
 */
export const supply = part({
  facts: {
    'supply.outlet': {
      kind: 'choice',
      label: 'Outlet',
      noun: 'the outlet',
      options: [
        'household-15',
        'household-20',
        'trailer-30',
        'four-pin-50',
        'generator',
        'dryer',
        'welder',
        'no-label',
      ],
      ask: 'What outlet is the trailer to be plugged into, and what is printed on that outlet’s breaker?',
      where: 'outlet, its label and the breaker above it; without a label it counts as unlabeled',
      means:
        'Trailer 30 A: one slanted pair of blades and a round pin, 120 V. Four-pin 50 A: 120/240 V. A dryer’s or welder’s outlet looks much the same and gives 240 V.',
    },
    'trailer.inlet': {
      kind: 'choice',
      label: 'Inlet of the trailer',
      noun: 'the trailer’s inlet',
      options: ['30', '50'],
      ask: 'Has the trailer a 30 A or a 50 A inlet?',
      where: 'plug of its cord: three blades are 30 A, four are 50 A; main breaker',
    },
    'supply.breaker': {
      kind: 'quantity',
      label: 'Breaker of the outlet',
      unit: 'A',
      least: 5,
      most: 200,
      exact: true,
      ask: 'How many amperes is the outlet’s breaker?',
      where: 'printed on its handle',
    },
    'generator.legs': {
      kind: 'choice',
      label: 'Voltage of the generator',
      noun: 'the voltage of the generator',
      options: ['120', '120-240'],
      ask: 'Does the generator give 120 V only, or 120 and 240 V?',
      where: 'its data plate; one of 120/240 V gives each 120 V outlet half of its power',
      silent: {
        value: '120',
        says: 'The generator gives 120 V only, so all of its power on one leg.',
        source: custom,
        quiet: true,
      },
    },
    'supply.elsewhere': {
      kind: 'quantity',
      label: 'What else draws on that circuit',
      unit: 'A',
      least: 0,
      most: 200,
      ask: 'What else runs on the same circuit, in the garage or at the site?',
      where: 'switch the breaker off and see what goes dark',
      silent: {
        value: 0,
        says: 'Nothing else draws on that circuit.',
        source: custom,
        quiet: true,
      },
    },
  },
  parameters: {
    'volts.nominal': {
      label: 'Nominal voltage of a leg',
      unit: 'V',
      values: [{ from: '2020-01-01', value: 120 }],
      source: siteSupply,
    },
    'lasting.share': {
      label: 'Share of its rating a circuit carries for three hours and more',
      unit: '%',
      values: [{ from: '2020-01-01', value: 80 }],
      source: lastingLoads,
    },
  },
  wordTables: {
    outletAmps: {
      label: 'Amperes of an outlet; where it must not be used, of what it resembles',
      noun: 'the amperes of an outlet',
      valueUnit: 'A',
      values: {
        'household-15': 15,
        'household-20': 20,
        'trailer-30': 30,
        'four-pin-50': 50,
        generator: 30,
        dryer: 30,
        welder: 50,
        'no-label': 15,
      },
      source: outlets,
    },
    breakerAmps: {
      label: 'Largest breaker for an outlet; one of 15 A among several may have 20 A',
      noun: 'the largest breaker for an outlet',
      valueUnit: 'A',
      values: {
        'household-15': 20,
        'household-20': 20,
        'trailer-30': 30,
        'four-pin-50': 50,
        generator: 30,
        dryer: 30,
        welder: 50,
        'no-label': 20,
      },
      source: breakers,
    },
    inletAmps: {
      label: 'Amperes of the trailer’s inlet',
      valueUnit: 'A',
      values: { '30': 30, '50': 50 },
      source: plate,
    },
  },
  formulas: {
    'supply.twoLegs': {
      label: 'Two legs of 120 V',
      unit: 'yes-no',
      is: "trailer.inlet == '50' && (supply.outlet == 'four-pin-50' || supply.outlet == 'generator' && generator.legs == '120-240')",
      source: siteSupply,
    },
    'generator.isHalved': {
      label: 'Half of its power is what a generator of 120 and 240 V gives one plug of 120 V',
      unit: 'yes-no',
      is: 'generator.isSplit && generator.amps <= leg.breakers',
      source: plate,
    },
    'generator.isSplit': {
      label: 'A generator of 120 and 240 V gives one plug of 120 V no more than half of its power',
      unit: 'yes-no',
      is: "given(generator.power) && supply.outlet == 'generator' && generator.legs == '120-240' && trailer.inlet == '30'",
      source: plate,
    },
    'leg.breakers': {
      label: 'What breakers, outlet and inlet let through, a leg',
      noun: 'what breakers, outlet and inlet let through',
      unit: 'A',
      is: "min(choose(supply.outlet == 'generator', choose(given(generator.outlet), generator.outlet, unlimited), pick(outletAmps, supply.outlet)), pick(inletAmps, trailer.inlet), choose(given(supply.breaker), supply.breaker, unlimited))",
      source: plate,
    },
    'leg.rating': {
      label: 'What a leg gives',
      noun: 'what one 120-volt feed gives',
      unit: 'A',
      is: "min(leg.breakers, choose(supply.outlet == 'generator', generator.amps, unlimited))",
      source: plate,
    },
    'outlet.breaker': {
      label: 'Largest breaker for this outlet',
      unit: 'A',
      is: "choose(supply.outlet == 'generator' || supply.outlet == 'no-label', unlimited, pick(breakerAmps, supply.outlet))",
      source: breakers,
    },
    'supply.power': {
      label: 'What the supply gives in all',
      unit: 'W',
      is: 'leg.rating * volts.nominal * choose(supply.twoLegs, 2, 1)',
      source: siteSupply,
    },
    'supply.lasting': {
      label: 'What it gives for three hours and more',
      unit: 'W',
      is: 'min(leg.rating, leg.breakers * lasting.share) * volts.nominal * choose(supply.twoLegs, 2, 1)',
      source: lastingLoads,
    },
    'assumed.alone': {
      label: 'Nobody said what else is on the circuit',
      unit: 'yes-no',
      is: "given(supply.outlet) && !given(supply.elsewhere) && (supply.outlet == 'household-15' || supply.outlet == 'household-20')",
      source: house,
    },
  },
  decisions: { 'supply.connection': outletTable },
  findings: {
    outlet: {
      ...findingOf('supply.connection', outletTable, {
        askedBy: ['supply.outlet'],
      }),
      first: true,
    },
    'larger-breaker': {
      label: 'A larger breaker, or one bridged',
      askedBy: ['supply.breaker'],
      stop: {
        when: 'supply.breaker > outlet.breaker',
        wrong: 'The breaker is larger than the outlet and its wires.',
        because: 'They burn before it trips.',
        do: 'Do not use it; an electrician must put in the right one.',
      },
      otherwise: 'The breaker is no larger than the outlet.',
      open: {
        wrong: 'It may be larger than the outlet and its wires.',
        do: 'Find out which outlet it is.',
      },
      source: breakers,
    },
  },
});
