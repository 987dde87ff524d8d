import { part } from '../../engine/define/topic';
import { statics } from '../../trade/bibliography/common';
import { geometry, springLaw } from '../../trade/bibliography/hitch-setup';

/**
 * How far the receiver sinks under people, cargo and tongue: as measured, else from the springs.
 *
 *     front              rear   receiver
 *       ├─────── w ────────┤── b ──┤        front up δf, rear down δr,
 *      δf ↑               δr ↓    sag ↓      sag = δr·(1 + b/w) + δf·b/w
 *
 * The body is stiff: what lies b behind the rear axle goes down by more than the axle does.
 */
export const sag = part({
  formulas: {
    'rear.added': {
      label: 'What the load adds to the rear axle',
      noun: 'the load on the rear axle',
      unit: 'lb',
      is: 'sum(load.occupants.weight * (1 - load.occupants.ahead / vehicle.wheelbase)) + sum(load.cargo.weight * (1 - load.cargo.ahead / vehicle.wheelbase)) + (hitch.hardwareWeight + tongue.loaded) * (1 + vehicle.overhang / vehicle.wheelbase) - bars.ontoTrailer - bars.ontoFront',
      source: statics,
    },
    'front.lost': {
      label: 'What the load takes off the front axle',
      noun: 'what the front axle loses',
      unit: 'lb',
      is: '(hitch.hardwareWeight + tongue.loaded) * vehicle.overhang / vehicle.wheelbase - bars.ontoFront - sum(load.occupants.weight * load.occupants.ahead) / vehicle.wheelbase - sum(load.cargo.weight * load.cargo.ahead) / vehicle.wheelbase',
      source: statics,
    },
    'sag.bySprings': {
      label: 'Sag at the receiver, from the springs',
      noun: 'the sag from the springs',
      unit: 'in',
      is: 'rear.added / vehicle.springRear * (1 + vehicle.overhang / vehicle.wheelbase) + front.lost / vehicle.springFront * vehicle.overhang / vehicle.wheelbase',
      source: springLaw,
    },
    'sag.fromSprings': {
      label: 'The loaded height is reckoned from the springs',
      unit: 'yes-no',
      is: '!known(hitch.receiverHeightLoaded) && known(hitch.receiverHeightEmpty, vehicle.springFront, vehicle.springRear)',
      source: springLaw,
    },
    'mount.fromEmpty': {
      label: 'Drop by the empty height',
      noun: 'the drop by the empty height',
      unit: 'in',
      is: 'hitch.receiverHeightEmpty + hitch.ballHeight - trailer.couplerHeight',
      source: geometry,
    },
    'mount.isFromEmpty': {
      label: 'Of the receiver only its empty height was told, and by that the mount drops',
      unit: 'yes-no',
      is: 'known(hitch.receiverHeightEmpty, hitch.ballHeight, trailer.couplerHeight) && !known(hitch.receiverHeightLoaded) && !sag.fromSprings && mount.fromEmpty > clear.none',
      source: geometry,
    },
    'receiver.sag': {
      label: 'Sag at the receiver',
      noun: 'the sag',
      unit: 'in',
      is: 'choose(sag.fromSprings, sag.bySprings, hitch.receiverHeightEmpty - hitch.receiverHeightLoaded)',
      source: geometry,
    },
    'receiver.height': {
      label: 'Receiver height that counts',
      noun: 'the loaded receiver',
      unit: 'in',
      is: 'choose(sag.fromSprings, hitch.receiverHeightEmpty - sag.bySprings, hitch.receiverHeightLoaded)',
      source: geometry,
    },
  },
});
