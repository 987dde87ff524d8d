import { part } from '../../engine/define/topic';
import { custom } from '../../trade/bibliography/common';
import { largeLoad, protectedOutlets } from '../../trade/bibliography/retrofit';

/**
 * What runs on 120 volts touches mains, whether anybody says so or its power does.
 *
 *     runs on shore power or inverter ─┐
 *     takes more than 12 volts carry ──┼─► a protected outlet within reach of its cord, and its circuit
 *     an appliance nobody asked about ─┘
 */
export const mains = part({
  facts: {
    'outlet.protected': {
      kind: 'yes-no',
      label: 'A ground-fault protected outlet within reach of its cord',
      noun: 'whether a ground-fault protected outlet is within reach of its cord',
      ask: 'Is there an outlet within reach of its own cord that trips when its test button is pressed, or stands behind one that does?',
      where: 'test and reset buttons on the outlet, or on another one of the same circuit',
      means: 'Within reach of its own cord: no extension cord, none through a cabinet or a wall.',
    },
  },
  parameters: {
    'mains.from': {
      label: 'Power from which a thing runs on 120 volts',
      unit: 'W',
      values: [{ from: '2020-01-01', value: 500 }],
      range: [200, 1_000],
      source: largeLoad,
    },
  },
  formulas: {
    'mains.byPower': {
      label: 'By its kind or its power it runs on 120 volts',
      unit: 'yes-no',
      is: "!given(addon.runsOn) && addon.kind != 'inverter' && (addon.kind == 'air-conditioner' || (given(addon.power) && addon.power >= mains.from))",
      source: largeLoad,
    },
    'mains.mayRun': {
      label: 'What it runs on is asked',
      unit: 'yes-no',
      is: "given(addon.runsOn) || (addon.mayTakePower && !(given(touches.mains) && touches.mains == 'no'))",
      source: custom,
    },
    'mains.runs': {
      label: 'It runs on 120 volts',
      unit: 'yes-no',
      is: "mains.byPower || (mains.mayRun && (addon.runsOn == 'shore-power' || addon.runsOn == 'inverter'))",
      source: largeLoad,
    },
    'mains.isPlugged': {
      label: 'It is plugged into an outlet',
      unit: 'yes-no',
      is: "mains.runs && addon.kind != 'air-conditioner' && addon.kind != 'inverter' && !(given(touches.mains) && touches.mains == 'yes')",
      source: custom,
    },
    'outlet.isOpen': {
      label: 'Nobody knows of a protected outlet',
      unit: 'yes-no',
      is: "outlet.protected == 'no' && !known(outlet.protected)",
      source: protectedOutlets,
    },
    'circuit.isUntold': {
      label: 'Its circuit was not told',
      unit: 'yes-no',
      is: "mains.runs && !given(circuit.breaker) && !(given(addon.runsOn) && addon.runsOn == 'inverter')",
      source: custom,
    },
    'inverter.isUntold': {
      label: 'The inverter it runs on was not told',
      unit: 'yes-no',
      is: "mains.runs && !given(circuit.breaker) && given(addon.runsOn) && addon.runsOn == 'inverter'",
      source: custom,
    },
  },
  findings: {
    outlet: {
      label: 'Outlet for it',
      unknown: {
        when: 'mains.isPlugged && outlet.isOpen',
        wrong: 'Whether a protected outlet is within its cord’s reach comes first.',
      },
      if: {
        when: "mains.isPlugged && outlet.protected == 'no'",
        wrong: 'No ground-fault protected outlet is within reach of its cord.',
        because:
          'Beside water a fault on an unprotected outlet kills, and an extension cord in a wall burns.',
        do: 'A licensed electrician sets one there first.',
        proviso:
          'a licensed electrician sets a ground-fault protected outlet within reach of its cord',
      },
      otherwise: 'It needs no outlet, or a protected one is within reach of its cord.',
      open: {
        wrong: 'The new part runs or may run on 120 volts, and no protected outlet was told of.',
        because: 'Beside water a fault on an unprotected outlet kills.',
        do: 'Look for an outlet with a test button within reach of its own cord; without one it is not plugged in.',
      },
      source: protectedOutlets,
    },
    'circuit-untold': {
      label: 'Its 120-volt circuit was asked',
      if: [
        {
          when: 'circuit.isUntold',
          wrong: 'On which 120-volt circuit it would run is not known yet.',
          do: 'Read the breaker, and what else runs behind it at the same time.',
          proviso: 'the breaker of its circuit carries it beside what already runs there',
        },
        {
          when: 'inverter.isUntold',
          wrong: 'How many watts the inverter carries is not known yet.',
          do: 'Read on the inverter’s plate what it gives for long and at the start, and on the new part’s what that takes.',
          proviso: 'the inverter carries it, its start included',
        },
      ],
      open: {
        wrong: 'On which circuit the new part runs, if on any, is not known yet.',
        do: 'Read the breaker, and what else runs behind it at the same time.',
      },
      otherwise: 'Its circuit is told, or it runs on none.',
      source: custom,
    },
  },
});
