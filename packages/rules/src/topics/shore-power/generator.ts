import { part } from '../../engine/define/topic';
import { house, dataPlate as plate } from '../../trade/bibliography/common';
import { circuits, exhaust, thinAir } from '../../trade/bibliography/power';
import { rigTrade } from '../../trade/rig/index';

/**
 * A generator gives less the higher it stands, and a compressor asks for a multiple as it starts.
 *
 *     running watts  × (1 − 3.5 % per 1,000 ft)  ≥ everything
 *     starting watts × (1 − 3.5 % per 1,000 ft)  ≥ everything − the motor as it runs + as it starts
 */
export const generator = part({
  facts: {
    'generator.altitude': {
      ...rigTrade.facts['trip.altitude'],
      label: 'Altitude of the place',
      ask: 'How high is the place where the generator runs?',
      where: 'a map of the place',
      instead: 'Look up how high the place is',
    },
    'generator.power': {
      kind: 'quantity',
      label: 'Running watts of the generator',
      unit: 'W',
      least: 200,
      most: 50_000,
      exact: true,
      ask: 'How many running (rated) watts does the generator give?',
      where: 'its data plate; the larger figure on its side is for starting',
    },
    'generator.starting': {
      kind: 'quantity',
      label: 'Starting watts of the generator',
      unit: 'W',
      least: 200,
      most: 100_000,
      exact: true,
      ask: 'How many starting (peak) watts does the generator give?',
      where: 'its data plate or manual',
    },
    'generator.outlet': {
      kind: 'quantity',
      label: 'Outlet of the generator',
      unit: 'A',
      least: 5,
      most: 100,
      exact: true,
      ask: 'How many amperes is the outlet of the generator that is used?',
      where: 'printed at the outlet or its breaker',
    },
    'motor.lockedRotor': {
      kind: 'quantity',
      label: 'Starting current of the largest motor',
      unit: 'A',
      least: 0,
      most: 300,
      ask: 'What does the air conditioner’s compressor take as it starts?',
      where: 'LRA on its data plate, or what the maker of its soft starter says',
      means: 'LRA, locked rotor amperes: what a motor takes for a moment while it stands still.',
    },
    'motor.running': {
      kind: 'quantity',
      label: 'The same motor as it runs',
      unit: 'A',
      least: 0,
      most: 100,
      ask: 'What does the compressor of the air conditioner take as it runs?',
      where: 'RLA on its data plate; it is counted among what runs, too',
    },
    'generator.place': {
      kind: 'choice',
      label: 'Where the generator stands',
      options: ['open-air', 'near-openings', 'enclosed'],
      ask: 'Where does the generator stand: in the open 20 ft from any door, window or vent, nearer than that, or under a roof, in a shed or in a truck’s bed?',
      where: 'there and now; mind the neighbors’ windows too',
    },
  },
  parameters: {
    'generator.loss': {
      label: 'Power a generator loses with altitude',
      unit: '% per 1,000 ft',
      values: [{ from: '2020-01-01', value: 3.5 }],
      source: thinAir,
    },
    'margin.generator': {
      label: 'Part of a generator’s power kept free',
      unit: '%',
      values: [{ from: '2020-01-01', value: 10 }],
      range: [0, 30],
      source: house,
    },
  },
  formulas: {
    'generator.isNear': {
      label: 'It is told that the generator stands near an opening or enclosed',
      unit: 'yes-no',
      is: "given(generator.place) && (generator.place == 'near-openings' || generator.place == 'enclosed')",
      source: exhaust,
    },
    'generator.isTold': {
      label: 'A generator is told of',
      unit: 'yes-no',
      is: "given(generator.place) || given(generator.power) || given(generator.starting) || given(generator.outlet) || known(supply.outlet) && supply.outlet == 'generator'",
      source: exhaust,
    },
    'generator.placeUntold': {
      label: 'Nobody said where the generator stands',
      unit: 'yes-no',
      is: '!given(generator.place)',
      source: exhaust,
    },
    'assumed.oneVoltage': {
      label: 'Nobody said which voltages the generator gives',
      unit: 'yes-no',
      is: 'given(generator.power) && !given(generator.legs)',
      source: house,
    },
    'generator.share': {
      label: 'What is left of its power at that altitude',
      unit: '1',
      is: 'choose(given(generator.altitude), max(0, 1 - generator.loss * max(0, generator.altitude)), 1)',
      within: ['0', '1'],
      source: thinAir,
    },
    'generator.available': {
      label: 'What the generator gives up there',
      noun: 'what the generator gives there',
      unit: 'W',
      is: "choose(supply.outlet == 'generator', generator.power * generator.share, unlimited)",
      source: thinAir,
    },
    'generator.startingAvailable': {
      label: 'What it gives for a moment, up there',
      unit: 'W',
      is: "choose(supply.outlet == 'generator', generator.starting * generator.share, unlimited)",
      source: thinAir,
    },
    'generator.legShare': {
      label: 'Share of its power that one leg gives',
      unit: '1',
      is: "choose(generator.legs == '120-240', 1 / 2, 1)",
      source: circuits,
    },
    'generator.amps': {
      label: 'What a leg of the generator gives, in amperes',
      unit: 'A',
      is: 'min(generator.power * generator.share * generator.legShare / volts.nominal, choose(given(generator.outlet), generator.outlet, unlimited))',
      source: circuits,
    },
    'load.power': {
      label: 'Everything that runs',
      noun: 'everything that runs',
      unit: 'W',
      is: 'load.current * volts.nominal',
      source: circuits,
    },
    'start.power': {
      label: 'Everything, as the motor starts',
      noun: 'everything as the motor starts',
      unit: 'W',
      is: 'load.power + (motor.lockedRotor - choose(given(motor.running), motor.running, between(0, min(motor.lockedRotor, load.current)))) * volts.nominal',
      source: circuits,
    },
    'assumed.seaLevel': {
      label: 'Nobody said how high it is',
      unit: 'yes-no',
      is: 'given(generator.power) && !given(generator.altitude)',
      source: house,
    },
  },
  limits: {
    generator: {
      label: 'Generator, running',
      short: 'the generator’s power',
      supply: true,
      do: 'Run less, or take a larger generator.',
      near: 'Switch nothing more on.',
      used: 'load.power',
      limit: 'generator.available',
      margin: 'margin.generator',
      askedBy: ['generator.power'],
      source: plate,
    },
    'generator-start': {
      label: 'Generator, as the motor starts',
      short: 'the generator’s starting power',
      supply: true,
      do: 'Take a larger generator, or have an electrician fit a soft starter.',
      near: 'Start the largest motor first, with everything else off.',
      used: 'start.power',
      limit: 'generator.startingAvailable',
      askedBy: ['generator.starting', 'motor.lockedRotor'],
      source: plate,
    },
  },
  findings: {
    'generator-place': {
      label: 'Where the generator stands',
      first: true,
      askedWhen: 'generator.isTold',
      stop: {
        when: 'generator.isNear',
        wrong: 'Shut the generator off, its exhaust goes inside.',
        because: 'It carries carbon monoxide, which has no smell and kills sleepers.',
        do: 'Run the generator in the open air only, far from any door, window or vent, its exhaust pointing away from everyone.',
      },
      if: {
        when: 'generator.placeUntold',
        wrong: 'Where the generator stands is not known yet.',
        do: 'In the open air only, its exhaust pointing away from everyone.',
        proviso: 'the generator stands in the open air, {20 ft} from any door, window or vent',
      },
      otherwise: 'The generator stands in the open air, away from doors, windows and vents.',
      open: {
        wrong:
          'Do not run it before it is known that it stands in the open, {20 ft} from any opening.',
      },
      source: exhaust,
    },
  },
});
