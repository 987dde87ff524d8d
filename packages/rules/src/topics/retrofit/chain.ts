import { part } from '../../engine/define/topic';
import { batteryTrade } from '../../trade/battery/index';
import { wire } from '../../trade/battery/wire';
import { custom } from '../../trade/bibliography/common';
import { circuits } from '../../trade/bibliography/retrofit';
import { powerTrade } from '../../trade/power/index';

/**
 * The whole chain of an electrical add-on: battery, charger, wire, fuse; or breaker and circuit.
 *
 *     charger ─► battery ─[fuse]── wire ──► add-on
 */
export const chain = part({
  facts: {
    'wire.current': wire.facts['wire.current'],
    'wire.fuse': wire.facts['wire.fuse'],
    'wire.fuseAtBattery': wire.facts['wire.fuseAtBattery'],
    'charger.suits': {
      kind: 'yes-no',
      label: 'Converter and chargers are made for the new battery’s kind',
      noun: 'whether converter and chargers are made for the new battery’s kind',
      ask: 'Are converter, solar regulator and tow vehicle’s charging made or set for the new battery’s kind?',
      where: 'the switch or setting on each of them, and the battery’s manual',
    },
    'circuit.breaker': {
      kind: 'quantity',
      unit: 'A',
      least: 5,
      most: 100,
      exact: true,
      label: 'Breaker of its 120-volt circuit',
      noun: 'the breaker',
      ask: 'What is the breaker of the circuit that the new part goes on?',
      where: 'printed on the breaker’s lever',
    },
    'circuit.alreadyOn': {
      kind: 'quantity',
      unit: 'W',
      least: 0,
      most: 12_000,
      label: 'What already runs on that circuit at the same time',
      noun: 'what already runs on it',
      ask: 'What else runs on that circuit at the same time, and with how many watts?',
      where: 'data plates; turn the breaker off and see what stops',
    },
  },
  parameters: {
    'margin.fuse': batteryTrade.parameters['margin.fuse'],
    'margin.battery': batteryTrade.parameters['margin.battery'],
    'volts.nominal': powerTrade.parameters['volts.nominal'],
    'lasting.from': powerTrade.parameters['lasting.from'],
    'lasting.share': powerTrade.parameters['lasting.share'],
  },
  formulas: {
    'chain.current': {
      label: 'Current in its 12-volt wire',
      noun: 'the current in its wire',
      unit: 'A',
      is: 'choose(given(wire.current), wire.current, choose(chain.isLoad, addon.watts / (bank.volts * choose(chain.throughInverter, inverter.efficiency, 1)), 0))',
      source: circuits,
    },
    'chain.drop': {
      label: 'Voltage lost in its wire, there and back',
      noun: 'the voltage lost, there and back',
      unit: 'V',
      is: '2 * wire.length * wire.perFoot * chain.current',
      source: circuits,
    },
    'chain.throughInverter': {
      label: 'It is fed through an inverter',
      unit: 'yes-no',
      is: "addon.kind == 'inverter' || addon.runsOn == 'inverter'",
      source: circuits,
    },
    'chain.isLoad': {
      label: 'It draws on the battery while it runs',
      unit: 'yes-no',
      is: "addon.watts > 0 && (addon.kind == 'inverter' || (!mains.byPower && (addon.runsOn == 'twelve-volt' || addon.runsOn == 'inverter')))",
      source: circuits,
    },
    'chain.onBattery': {
      label: 'It hangs on the battery',
      unit: 'yes-no',
      is: 'work.twelveVolt || chain.isLoad',
      source: circuits,
    },
    'charger.isAsked': {
      label: 'Whether the chargers suit it is asked',
      unit: 'yes-no',
      is: "given(charger.suits) || addon.kind == 'battery'",
      source: custom,
    },
    'charger.isToldOpen': {
      label: 'Somebody was asked about the chargers and does not know',
      unit: 'yes-no',
      is: 'given(charger.suits) && !known(charger.suits)',
      source: custom,
    },
    'chain.walked': {
      label: 'Wire, fuse and its place are told',
      unit: 'yes-no',
      is: '(given(wire.gauge) || given(wire.rating)) && given(wire.length) && given(wire.fuse) && given(wire.fuseAtBattery)',
      source: custom,
    },
  },
  limits: {
    'voltage-drop': {
      ...wire.limits['voltage-drop'],
      used: 'chain.drop',
    },
    wire: {
      ...wire.limits.wire,
      used: 'chain.current',
      askedBy: ['wire.gauge', 'wire.rating'],
    },
    fuse: wire.limits.fuse,
    'fuse-current': { ...wire.limits['fuse-current'], used: 'chain.current' },
  },
  findings: {
    'fuse-at-battery': wire.findings['fuse-at-battery'],
    charger: {
      label: 'Charger and battery',
      stop: {
        when: "charger.isAsked && charger.suits == 'no'",
        wrong: 'What charges it is not made for that kind of battery.',
        because: 'Such a battery is never filled, or it is cooked until it vents or burns.',
        do: 'Change the charger with the battery, or choose a battery that suits the charger.',
        proviso: 'converter, solar regulator and the tow vehicle’s charging are made for its kind',
      },
      stopOpen: 'if',
      unknown: {
        when: "charger.isToldOpen && charger.suits == 'no'",
        wrong: 'Whether the charger suits the kind of battery is not known.',
      },
      otherwise: 'What charges it is made for that kind of battery, or no battery is added.',
      open: {
        wrong: 'Whether the charger suits the new battery’s kind is not known yet.',
        do: 'Find out for converter, solar regulator and tow vehicle before it is connected.',
      },
      source: custom,
    },
    chain: {
      label: 'The whole chain',
      if: {
        when: 'chain.onBattery && !chain.walked',
        wrong: 'The new part hangs on the battery, and not all of its wire and fuse was told.',
        because:
          'The fuse protects the wire and not the thing; a wire without one burns from end to end.',
        do: 'Walk it from battery and charger through fuse and wire before it is switched on.',
        proviso: 'wire and fuse carry it and the fuse sits at the battery',
      },
      otherwise: 'It does not hang on the battery, or wire and fuse are told.',
      source: custom,
    },
  },
});
