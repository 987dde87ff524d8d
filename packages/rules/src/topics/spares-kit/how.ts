import type { HowTo } from '../../engine/define/shapes';
import { lifting, retorque } from '../../trade/bibliography/spares-kit';

/** How a wheel is changed and the kit is tried before it is needed. */
export const how = {
  'change-a-wheel-on-one-axle': {
    label: 'How a wheel is changed on a single axle',
    steps: [
      'Off the road, as far as it goes, on firm level ground; warning lights on, vest on, triangles out. Where the shoulder is narrow, soft or steep, call for help instead.',
      'Stay hitched, parking brake set, and chock the other wheel both ways. All get out.',
      'Break the nuts loose a quarter turn while the wheel stands on the road.',
      'Set the jack, on its board, at the point that the trailer’s manual names, lift until the wheel is just free, and put a stand under before anything is taken off.',
      'Change the wheel, nuts by hand, crosswise; let it down and tighten them crosswise with the torque wrench to the maker’s figure.',
      'Tighten again after {retorque.first}, {retorque.second} and {retorque.third}, and have the flat one seen to before you go on for long.',
    ],
    caution:
      'Never lift at an axle, a torsion tube or with corner stabilizers, and never reach below what only a jack holds.',
    source: lifting,
  },
  'change-a-wheel-on-two-axles': {
    label: 'How a wheel is changed on two axles',
    steps: [
      'As on one axle, chocks on the other side; the jack lifts both wheels of its side before one is free, so it needs a rating above the whole side.',
      'A ramp under the good wheel makes its tire carry the whole side: only where tire and trailer makers allow it and the tire is rated for that much.',
      'Look at the neighbor of the flat tire too: it has carried both loads since the air went.',
    ],
    caution: 'Stay hitched; a trailer on a jack that rolls a foot is a trailer on the ground.',
    source: lifting,
  },
  'try-it-at-home': {
    label: 'How the kit is tried before the trip',
    steps: [
      'In the yard, try the socket on every wheel nut, and the torque wrench on one.',
      'Let the air out of nothing: measure the gap below the jack point and take off what a flat tire sinks.',
      'Set the jack there and lift until a full tire would slip on; read its label against one side of the trailer.',
      'Find every fuse and bulb that is fitted, and lay one of each kind beside it.',
      'Read the spare’s date code and its pressure, cold.',
    ],
    caution: 'On level ground, hitched, chocked, and with no one inside or below.',
    source: retorque,
  },
} satisfies Record<string, HowTo>;
