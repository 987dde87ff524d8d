import type { HowTo } from '../../engine/define/shapes';
import { manual } from '../../trade/bibliography/common';
import { weighing } from '../../trade/bibliography/gas';

/** How things around the gas are done. */
export const how: Readonly<Record<string, HowTo>> = {
  'weigh-a-cylinder': {
    label: 'Weigh what is left in a cylinder',
    steps: [
      'Shut the valve, take the hose off, and put the cylinder on a scale; or stand on a bathroom scale with it and without it.',
      'Read TW on the collar: what it weighs empty.',
      'Take TW off. What remains is propane, in pounds.',
      'A weight below TW is a misreading: weigh again.',
    ],
    caution: 'Outdoors, valve shut, no flame near.',
    source: weighing,
  },
  'change-a-cylinder': {
    label: 'Take a cylinder off and put one on',
    steps: [
      'Turn every appliance off and let no one smoke near.',
      'Shut the valve by hand, then loosen the fitting by hand; an old brass fitting has its thread the other way around and takes a wrench.',
      'Look at the seal and the hose end; replace what is cracked.',
      'Set the other cylinder upright, strap it, and tighten the fitting as it was.',
      'Open the valve slowly and brush every joint with leak solution. Bubbles that grow are a leak: shut it again.',
    ],
    caution: 'Smell of gas: everybody away, no switch, no flame, then call.',
    source: manual,
  },
  'connect-own-appliance': {
    label: 'Connect an appliance of your own',
    steps: [
      'Read the plate: does it ask for 11 inches of water column, or for cylinder pressure through its own regulator?',
      'For 11 inches: the outlet after the trailer’s regulator, by the hose the appliance’s maker sells for it.',
      'For cylinder pressure: a cylinder of its own, with the hose and regulator it was sold with.',
      'If the fitting does not go on, do not make it go on.',
      'In the open air, on firm ground, away from awning and door; then brush every joint with leak solution.',
    ],
    caution: 'No plate, no connection: have its maker or a licensed gas fitter identify it first.',
    source: manual,
  },
  'test-for-leaks': {
    label: 'Test for leaks',
    steps: [
      'Shut all appliances, open the cylinder.',
      'Brush leak solution on every joint and along the hose.',
      'Growing bubbles are a leak: shut the cylinder, tighten or replace, test again.',
    ],
    caution:
      'Never with a flame. A joint on the high-pressure side, other than the cylinder’s own fitting, is a licensed gas fitter’s.',
    source: manual,
  },
};
