import { part } from '../../engine/define/topic';
import { voltsAt } from '../../trade/battery/voltage-tables';
import { chosenVoltages, depthAllowed, mathematics } from '../../trade/bibliography/battery';

/**
 * The discharge curve for the drawing: resting volts from full to empty, and the stop line.
 *
 *     V │──╲____
 *       │       ╲____╲ curve.volts
 *       ├ ─ ─ ─ ─ ─┼ ─ curve.stopVolts
 */
export const curve = part({
  parameters: {
    'curve.parts': {
      label: 'Parts into which the curve is cut',
      unit: '',
      values: [{ from: '2020-01-01', value: 20 }],
      source: mathematics,
    },
  },
  simulations: {
    curve: {
      label: 'Discharge curve at rest',
      steps: 21,
      states: {},
      values: {
        'curve.stateOfCharge': {
          label: 'State of charge',
          unit: '%',
          is: '1 - curve.step / curve.parts',
          source: mathematics,
        },
        'curve.volts': {
          label: 'Resting voltage',
          unit: 'V',
          is: `bank.blocks * ${voltsAt('curve.stateOfCharge')}`,
          source: chosenVoltages,
        },
        'curve.stopVolts': {
          label: 'Stop line',
          unit: 'V',
          is: 'stop.voltage',
          source: depthAllowed,
        },
      },
      source: chosenVoltages,
    },
  },
});
