import type { HowTo } from '../../engine/define/shapes';
import { manual } from '../../trade/bibliography/common';

/** How things around shore power are done. */
export const how: Readonly<Record<string, HowTo>> = {
  'plug-in': {
    label: 'Plug in at a site',
    steps: [
      'Breaker off. Look at the outlet: browned, loose or wet is another site.',
      'Put tester or protector into the outlet, breaker on, and read what it shows.',
      'Breaker off again, plug the cord in at the trailer, then at the outlet, uncoiled.',
      'Breaker on. Read the voltage with everything running.',
    ],
    caution: 'A tingle at skin or step: off at the breaker, touch nothing, call an electrician.',
    source: manual,
  },
  'choose-a-cord': {
    label: 'Choose an extension cord',
    steps: [
      'Read the breaker’s handle.',
      'Take a cord that carries as much: 10 AWG behind 30 A, 6 AWG behind 50 A.',
      'As short as will do, made for outdoors, with the plug of the trailer.',
      'Uncoil it whole, keep its ends dry, and feel both after a quarter of an hour. Is one hot, breaker off.',
    ],
    caution: 'No thinner cord behind a larger breaker, however little runs.',
    source: manual,
  },
  'ground-fault-trips': {
    label: 'Find what trips a ground-fault outlet',
    steps: [
      'Switch every breaker in the trailer off, and plug in.',
      'If it trips now, it is the cord, the inlet or the outlet: try a dry, short cord.',
      'Else switch on one breaker after the other; the water heater’s element is the usual one.',
      'What trips it stays off until an electrician has looked.',
    ],
    caution: 'Never plug around a ground-fault outlet.',
    source: manual,
  },
};
