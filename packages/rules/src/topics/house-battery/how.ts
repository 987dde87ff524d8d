import type { HowTo } from '../../engine/define/shapes';
import { ampacityTable, restHours } from '../../trade/bibliography/battery';
import { custom } from '../../trade/bibliography/common';

/** How things around the battery are done. */
export const how: Readonly<Record<string, HowTo>> = {
  'read-a-voltage': {
    label: 'How a voltage is read',
    steps: [
      'Charger, sun and engine off, everything that draws off; a cover over the panels.',
      'Leave it alone for as long as its kind asks: lead six hours, LiFePO₄ two.',
      'A multimeter on the posts themselves, red on plus, not the panel’s lights.',
      'Read it to a hundredth of a volt, and write down how warm the battery is.',
    ],
    caution: 'A ring or a wrench across the posts burns. Of LiFePO₄ a voltage says almost nothing.',
    source: restHours,
  },
  'read-a-percentage': {
    label: 'How a percentage is read',
    steps: [
      'Look what shows it: a monitor counts through a shunt in the minus cable; a panel with four lights only reads volts.',
      'See that its capacity is set to what the batteries hold, and that nothing goes around the shunt.',
      'Charge it full once a month and set it to a hundred.',
      'Compare it with a voltage at rest: where they disagree, the lower one counts.',
    ],
    caution: 'A percentage that was never set drifts by some points a week.',
    source: custom,
  },
  'size-a-wire': {
    label: 'How wire and fuse are chosen',
    steps: [
      'Amperes are watts divided by volts, and through an inverter a sixth more.',
      'Measure the way the wire takes, one way; both ways count.',
      'Take the gauge that carries the current and loses no more than {drop.most} of the voltage.',
      'The fuse: above the current with a fifth to spare, never above what the wire carries, within a hand’s breadth of the battery.',
    ],
    caution: 'Minus off first. 120 volts are for a licensed electrician.',
    source: ampacityTable,
  },
  'take-a-battery-off': {
    label: 'How a battery is taken off and put on',
    steps: [
      'Shore power unplugged, sun covered, battery switch off; a picture of every cable.',
      'Minus off first, wrapped in a cloth, then plus.',
      'Lift with both hands, upright; a flooded one on a tray.',
      'Put on: plus first, minus last; tight, greased, and no tool on top.',
    ],
    caution: 'Rings off, eyes covered. Acid on skin: much water, at once.',
    source: custom,
  },
  'charge-a-flat-one': {
    label: 'How a flat battery is brought back',
    steps: [
      'Look: a bulge, a crack or ice means that it is not charged at all.',
      'In the open or vented, charger set for its kind, and let it finish by itself: lead takes eight hours and more.',
      'Let it rest overnight and read it. About ten and a half volts after that is a dead cell.',
      'A shop tests what capacity is left.',
    ],
    caution: 'Never charge a frozen battery, nor LiFePO₄ with cells below freezing.',
    source: custom,
  },
  'put-it-away': {
    label: 'How it is put away for weeks',
    steps: [
      'Charge it full; lithium to about half where its maker says so.',
      'Battery switch off, or minus off: alarms, radio and boards draw day and night.',
      'In frost keep lead full or in a frost-free place.',
      'Look at it once a month.',
    ],
    caution: 'With the gas alarm off do not sleep inside before the alarm is on again and tested.',
    source: custom,
  },
};
