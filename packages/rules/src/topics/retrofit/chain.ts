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
      ask: 'What is the breaker of the circuit it goes on?',
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
      is: "choose(given(wire.current), wire.current, addon.power / (bank.volts * choose(addon.runsOn == 'inverter', inverter.efficiency, 1)))",
      source: circuits,
    },
    'chain.drop': {
      label: 'Voltage lost in its wire, there and back',
      noun: 'the voltage lost, there and back',
      unit: 'V',
      is: '2 * wire.length * wire.perFoot * chain.current',
      source: circuits,
    },
    'chain.onBattery': {
      label: 'It hangs on the battery',
      unit: 'yes-no',
      is: "work.twelveVolt || (addon.power > 0 && (addon.runsOn == 'twelve-volt' || addon.runsOn == 'inverter'))",
      source: circuits,
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
      askedBy: ['charger.suits'],
      stop: {
        when: { all: [{ fact: 'charger.suits', operator: 'equal', value: 'no' }] },
        wrong: 'What charges it is not made for that kind of battery.',
        do: 'It is never filled, or cooked. Change the charger with the battery, or choose a battery that suits the charger.',
      },
      otherwise: 'What charges it is made for that kind of battery.',
      open: {
        wrong:
          'Find out whether converter, regulator and tow vehicle suit the new battery before it is connected.',
      },
      source: custom,
    },
    chain: {
      label: 'The whole chain',
      care: {
        when: {
          all: [
            { fact: 'chain.onBattery', operator: 'equal', value: 'yes' },
            { fact: 'chain.walked', operator: 'equal', value: 'no' },
          ],
        },
        wrong: 'It hangs on the battery, and not all of the chain was told.',
        do: 'Walk it from battery and charger through wire and fuse before it is switched on.',
      },
      otherwise: 'It does not hang on the battery, or wire and fuse are told.',
      source: custom,
    },
  },
});
