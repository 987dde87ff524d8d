import { part } from '../../engine/define/topic';
import { conduction, frostCustom, ownNight } from '../../trade/bibliography/cold-weather';
import { custom, house } from '../../trade/bibliography/common';

/** Somebody lives in it through a frost, and there is water in tanks and lines. */
const wetInFrost =
  "outside.temperature <= frost.point && water.state == 'in-use' && trailer.use == 'lived-in'";

/**
 * Whether furnace and battery hold the warmth, for as many days and nights as it must last.
 *
 *     battery ├── blower, a day and night ──┼── a second one, unless charged in between ──┤
 */
export const night = part({
  facts: {
    'power.hookup': {
      kind: 'yes-no',
      label: 'It stands on shore power',
      noun: 'whether it stands on shore power',
      ask: 'Does the trailer stand on shore power, so that the converter keeps the battery full?',
      where: 'told by the owner',
    },
    'battery.recharged': {
      kind: 'yes-no',
      label: 'The battery is full again every evening',
      noun: 'whether the battery is full again every evening',
      ask: 'Is the battery charged full again before each night: by sun, generator or tow vehicle?',
      where: 'a battery monitor in the evening; winter sun brings little',
    },
  },
  parameters: {
    'inside.least': {
      label: 'Least warmth inside while there is water aboard in frost',
      unit: '°F',
      values: [{ from: '2020-01-01', value: 55 }],
      range: [45, 65],
      source: house,
    },
    'margin.furnace': {
      label: 'Share of the furnace kept for wind and opened doors',
      unit: '%',
      values: [{ from: '2020-01-01', value: 20 }],
      range: [5, 40],
      source: house,
    },
  },
  formulas: {
    'heat.isLow': {
      label: 'It is kept cooler than water aboard needs in frost',
      noun: 'whether there is water aboard',
      unit: 'yes-no',
      is: `${wetInFrost} && given(inside.temperature) && inside.temperature < inside.least`,
      source: frostCustom,
    },
    'heat.isPaused': {
      label: 'The furnace is off for a part of the frost, with water aboard',
      noun: 'whether there is water aboard',
      unit: 'yes-no',
      is: `${wetInFrost} && given(furnace.hours, frost.hours) && furnace.hours < frost.hours`,
      source: frostCustom,
    },
    'heat.isEnough': {
      label: 'The heat is enough for water in heated tanks, as long as it freezes',
      unit: 'yes-no',
      is: `${wetInFrost} && given(inside.temperature, tanks.place) && inside.temperature >= inside.least && tanks.place == 'heated' && !heat.isPaused && heat.holds`,
      source: frostCustom,
    },
    'heat.holds': {
      label: 'What was told of furnace, gas and battery holds the heat',
      unit: 'yes-no',
      is: '(!given(furnace.input) || heat.gas <= furnace.input) && (!given(trip.nights) || gas.neededPounds <= gas.counted) && (!given(battery.capacity) || blower.fromBattery <= battery.usable)',
      source: frostCustom,
    },
    'battery.nights': {
      label: 'Days and nights of the blower in the battery, full to the stop line',
      noun: 'how long the battery turns the blower',
      unit: 'd',
      is: 'choose(blower.ampHours > 0, battery.usable / blower.ampHours * time.day, unlimited)',
      source: ownNight,
    },
    'blower.isOnBattery': {
      label: 'The battery turns the blower',
      unit: 'yes-no',
      is: "!given(power.hookup) || power.hookup == 'no'",
      source: custom,
    },
    'blower.fromBattery': {
      label: 'What the blower takes before the battery is charged again',
      noun: 'what the blower takes',
      unit: 'Ah',
      is: "choose(blower.isOnBattery, choose(given(battery.recharged), choose(battery.recharged == 'yes', blower.ampHours, blower.ampHours * trip.counted), blower.ampHours), 0)",
      within: ['0', 'blower.ampHours * max(1, trip.counted)'],
      source: custom,
    },
    'blower.isUncharged': {
      label:
        'The battery does not turn the blower through all nights, and nobody said that it is charged',
      unit: 'yes-no',
      is: 'blower.isOnBattery && !given(battery.recharged) && blower.ampHours * trip.counted > battery.usable',
      source: custom,
    },
    'blower.isUntold': {
      label: 'A furnace is told of, and not what its blower draws',
      unit: 'yes-no',
      is: 'blower.isOnBattery && given(furnace.input) && !given(furnace.blowerCurrent)',
      source: custom,
    },
    'warmth.isUntold': {
      label: 'It is to be warm in the cold, and nobody said by what',
      unit: 'yes-no',
      is: "!given(furnace.input) && (!given(trailer.use) || trailer.use == 'lived-in') && heat.degrees > 0",
      source: conduction,
    },
  },
  limits: {
    furnace: {
      label: 'Furnace',
      short: 'the furnace',
      supply: true,
      do: 'Stay only in milder weather, or add heat from shore power; drain the water first.',
      near: 'Never turn it down, and drain the water where it is colder.',
      used: 'heat.gas',
      limit: 'furnace.input',
      margin: 'margin.furnace',
      askedBy: ['furnace.input'],
      source: conduction,
    },
    'blower-night': {
      label: 'Blower on the battery',
      short: 'the battery',
      supply: true,
      do: 'Take shore power, a second battery or generator hours outdoors; never turn the heat down.',
      near: 'Charge every day; never turn the heat down.',
      used: 'blower.fromBattery',
      limit: 'battery.usable',
      margin: 'margin.battery',
      askedBy: ['battery.capacity'],
      source: ownNight,
    },
  },
  findings: {
    'gas-in-cold': {
      label: 'Gas in such cold',
      first: true,
      askedByKnown: ['furnace.input', 'outside.temperature'],
      stop: {
        when: 'outside.temperature <= vapor.ends',
        wrong: 'The cold is too much for gas: from {vapor.ends} down no larger cylinder helps.',
        because: 'So cold, propane hardly boils, and the furnace goes out.',
        do: 'Heat from shore power, or leave for milder weather. Never warm a cylinder with a flame, a heater or hot water.',
      },
      otherwise: 'It is not too cold for gas.',
      open: {
        wrong: 'Whether it gets too cold for gas is not known.',
        do: 'Read the forecast’s low for the place.',
      },
      source: frostCustom,
    },
    'heat-low': {
      label: 'Heat turned down with water aboard',
      first: true,
      askedBy: ['inside.temperature', 'furnace.hours'],
      care: [
        {
          when: 'heat.isLow',
          wrong:
            'Turn the heat up: {inside.temperature} inside is too little for water aboard in frost.',
          because:
            'So low the furnace seldom runs, and only its air keeps tanks and lines from freezing.',
          do: 'At least {inside.least}, day and night, cabinet doors open; or drain the water first.',
        },
        {
          when: 'heat.isPaused',
          wrong:
            'Leave the heat on: the furnace is set for {furnace.hours}, and the frost lasts {frost.hours}.',
          because: 'Only its air keeps tanks and lines from freezing.',
          do: 'Day and night, cabinet doors open; or drain the water first.',
        },
      ],
      open: {
        wrong: 'If there is water aboard, so little heat lets it freeze.',
        do: 'At least {inside.least}, day and night; or drain the water first.',
      },
      otherwise:
        'No heat turned down was told of; water aboard wants {inside.least} or more, as long as it freezes.',
      source: frostCustom,
    },
    recharged: {
      label: 'Charging between the nights',
      askedByKnown: ['battery.capacity', 'furnace.blowerCurrent'],
      if: {
        when: 'blower.isUncharged',
        wrong: 'One charge does not turn the blower through all nights.',
        because: 'A furnace without its blower shuts itself off, however much gas there is.',
        do: 'Charge in between with a generator outdoors or from the tow vehicle. Or carry a second battery of the same kind, or take a site with shore power. Do not turn the heat down.',
        proviso: 'the battery is charged full again every day',
      },
      otherwise: 'The charge lasts as it is told.',
      source: custom,
    },
    'blower-untold': {
      label: 'What turns the blower',
      askedBy: ['furnace.input', 'trip.nights'],
      if: {
        when: 'blower.isUntold',
        wrong: 'What the furnace’s blower draws from the battery is not known yet.',
        because: 'In the cold the battery often gives out before the gas.',
        do: 'Read the blower’s amperes on the furnace’s plate, and the battery’s label.',
        proviso: 'the battery turns the furnace’s blower all night',
      },
      otherwise: 'It is told what the blower draws.',
      source: custom,
    },
    warmth: {
      label: 'What keeps it warm',
      askedBy: ['inside.temperature', 'trip.nights', 'body.length'],
      unknown: {
        when: 'warmth.isUntold',
        wrong: 'What keeps the trailer warm is not known yet.',
        do: 'Read the input on the furnace’s plate.',
      },
      otherwise: 'It is told what keeps it warm.',
      open: {
        wrong: 'What keeps it warm, and against what cold, is not told.',
        do: 'Read the input on the furnace’s plate, and the forecast’s low for the place.',
      },
      source: frostCustom,
    },
  },
});
