import { part } from '../../engine/define/topic';
import { circuits, depthAllowed } from '../../trade/bibliography/battery';

/**
 * How long the battery turns the furnace's blower, from the charge as it is to the stop line; by the
 * clock longer, since the furnace stands still while it is warm.
 *
 *     ├ runs ┤ stands ├ runs ┤ stands …      clock hours = blower hours ÷ share of the time it runs
 */
export const blowerHours = part({
  formulas: {
    'furnace.blowerHours': {
      label: 'Hours of the furnace’s blower to the stop line',
      noun: 'the hours of the blower',
      unit: 'h',
      is: 'needs(max(0, start.charge - stop.charge) / furnace.blowerCurrent, furnace.blowerCurrent)',
      source: depthAllowed,
    },
    'furnace.clockHours': {
      label: 'By the clock, with the furnace on and off',
      noun: 'the hours by the clock',
      unit: 'h',
      is: 'needs(furnace.blowerHours / furnace.runs, furnace.blowerCurrent)',
      source: circuits,
    },
  },
});
