import { part } from '../../engine/define/topic';
import { loads } from '../battery/loads';
import { conduction, freezing, frostCustom } from '../bibliography/cold-weather';
import { custom, house } from '../bibliography/common';
import { vapor } from '../gas/vapor';

/**
 * For how long the furnace is on, and what part of that time it burns: as told, else as the cold
 * asks for, else as is usual. Gas, blower and vaporization all stand on these two.
 *
 *     told share ──────────────────────────┐
 *     heat loss ÷ input ───────────────────┼─► furnace.runs ─┐
 *     neither: half the time, in frost up ─┘                 ├─► gas a day, blower, vaporization
 *     told hours, or all hours of frost ──────► furnace.on ──┘
 */
export const furnace = part({
  facts: {
    'outside.temperature': vapor.facts['outside.temperature'],
    'furnace.input': {
      kind: 'quantity',
      label: 'Furnace input',
      noun: 'the furnace’s input',
      unit: 'Btu/h',
      least: 0,
      most: 120_000,
      exact: true,
      ask: 'How many Btu an hour does the furnace take?',
      where: 'data plate of the furnace: input, not output',
      silent: { value: 0, says: 'No furnace is counted.', source: custom, quiet: true },
    },
    'furnace.hours': {
      kind: 'quantity',
      label: 'Hours a night the furnace is set',
      noun: 'the hours the furnace is set',
      unit: 'h',
      least: 0,
      most: 24,
      ask: 'For how many hours a night is the thermostat on?',
      where: 'told by the owner',
    },
    'furnace.duty': {
      kind: 'quantity',
      label: 'Share of that time the furnace runs',
      noun: 'the share of the time the furnace runs',
      unit: '%',
      least: 0,
      most: 100,
      ask: 'What part of the time does the furnace run on such a night?',
      where: 'a watch by the furnace; or it is reckoned from the size of the trailer',
    },
    'water.state': {
      kind: 'choice',
      label: 'Water system',
      noun: 'what is in tanks and lines',
      options: ['in-use', 'drained', 'winterized'],
      ask: 'Is there water in tanks and lines, were they drained, or is the trailer winterized?',
      where: 'told by the owner',
      means: 'Winterized: blown out or filled with antifreeze, traps and heater too.',
    },
    'trailer.use': {
      kind: 'choice',
      label: 'Lived in or standing',
      noun: 'how the trailer is used',
      options: ['lived-in', 'stands-unused'],
      ask: 'Does somebody live in the trailer and heat it, or does the trailer stand unused?',
      where: 'told by the owner',
    },
    'frost.hours': {
      kind: 'quantity',
      label: 'Hours of frost in a day and night',
      noun: 'how long the frost lasts',
      unit: 'h',
      least: 0,
      most: 24,
      ask: 'For how many hours of the day and night is it below freezing?',
      where: 'the hourly forecast for the place',
    },
  },
  parameters: {
    'time.day': loads.parameters['time.day'],
    'frost.point': {
      label: 'Freezing point of water',
      noun: 'freezing',
      unit: '°F',
      values: [{ from: '2020-01-01', value: 32 }],
      source: freezing,
    },
    'furnace.usualHours': {
      label: 'Hours a night a furnace is usually set',
      unit: 'h',
      values: [{ from: '2020-01-01', value: 12 }],
      range: [6, 24],
      source: house,
    },
    'furnace.usualShare': {
      label: 'Part of that time a furnace usually runs',
      unit: '%',
      values: [{ from: '2020-01-01', value: 50 }],
      range: [30, 100],
      source: house,
    },
  },
  formulas: {
    'heat.isTold': {
      label: 'Furnace and trailer are told, or a night of your own',
      unit: 'yes-no',
      is: 'given(furnace.input) && (given(night.gas) || given(body.length) || given(body.insulation))',
      source: conduction,
    },
    'furnace.reckoned': {
      label: 'Share of the time the furnace runs, by the heat lost',
      noun: 'the share of the time the furnace runs',
      unit: '%',
      is: 'choose(furnace.input > 0, min(1, heat.gas / furnace.input), 0)',
      source: conduction,
    },
    'furnace.usual': {
      label: 'Share of the time a furnace usually runs; in frost up to all of it',
      unit: '%',
      is: 'choose(given(outside.temperature), choose(outside.temperature <= frost.point, between(furnace.usualShare, 1), furnace.usualShare), furnace.usualShare)',
      within: ['furnace.usualShare', '1'],
      source: house,
    },
    'furnace.runs': {
      label: 'Share of the time the furnace runs',
      noun: 'the share of the time the furnace runs',
      unit: '%',
      // A share that was watched counts, unless the heat lost asks for more at the least: then up to that.
      is: 'choose(known(furnace.duty), choose(heat.isTold && !may(furnace.reckoned <= furnace.duty), between(furnace.duty, furnace.reckoned), furnace.duty), choose(heat.isTold, furnace.reckoned, choose(given(furnace.duty), furnace.duty, furnace.usual)))',
      source: conduction,
    },
    'furnace.keepsWater': {
      label: 'The furnace has to keep water from freezing',
      unit: 'yes-no',
      is: "given(water.state) && water.state == 'in-use' && (!given(trailer.use) || trailer.use == 'lived-in') && outside.temperature <= frost.point",
      source: frostCustom,
    },
    'furnace.set': {
      label: 'Hours a day the furnace is set',
      unit: 'h',
      is: 'choose(given(furnace.hours), furnace.hours, furnace.usualHours)',
      source: house,
    },
    'furnace.on': {
      label: 'Hours a day the furnace has to be on',
      noun: 'how long the furnace has to be on',
      unit: 'h',
      is: 'choose(furnace.keepsWater, choose(given(frost.hours), max(furnace.set, frost.hours), between(furnace.set, time.day)), furnace.set)',
      source: frostCustom,
    },
  },
});
