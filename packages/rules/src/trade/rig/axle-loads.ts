import { part } from '../../engine/define/topic';
import { custom, house, statics } from '../bibliography/common';
import { occupantMass } from '../bibliography/rig';

/** What axle loads cannot be reckoned without. */
const ofVehicle = 'vehicle.curbFront, vehicle.curbRear, vehicle.wheelbase';
/** The overhang is not missed where nothing hangs on it. */
export const hanging = (withIt: string, without: string, nothing: string): string =>
  `choose(known(vehicle.overhang), needs(${withIt}, ${ofVehicle}), choose(${nothing}, needs(${without}, ${ofVehicle}), needs(${without}, vehicle.overhang, ${ofVehicle})))`;

/** Where a row of a list rides, as a share of the wheelbase ahead of the rear axle. */
const rides = (list: string, anywhere: string): string =>
  `choose(known(${list}.ahead), ${list}.ahead / vehicle.wheelbase, ${anywhere})`;
const people = rides('load.occupants', 'place.inSeats');
const things = rides('load.cargo', 'place.inVehicle');
const driverOn = (share: string): string =>
  `choose(given(load.occupants), 0, occupant.weight * ${share})`;

/**
 * The vehicle empty, and what people and things put on each axle.
 *
 *     front      rear   ball               trailer axles
 *       ├─── w ───┤── b ──┤──────── L ────────┤
 *       a ahead ──┤
 *
 * Who has no place told sits somewhere between the rear axle and the front seats, and a thing lies
 * anywhere up to the tailgate.
 */
export const vehicleLoads = part({
  parameters: {
    'place.foremost': {
      label: 'Farthest ahead of the rear axle that people and things ride, of the wheelbase',
      unit: '%',
      values: [{ from: '2020-01-01', value: 65 }],
      source: house,
    },
    'place.rearmost': {
      label: 'How far behind the rear axle things ride at the most, of the overhang',
      unit: '%',
      values: [{ from: '2020-01-01', value: 80 }],
      source: house,
    },
  },
  formulas: {
    'curb.scale': {
      label: 'Curb weight that counts, against the axles’ own',
      unit: '1',
      is: 'largestKnown(1, vehicle.curbWeight / (vehicle.curbFront + vehicle.curbRear), (vehicle.gvwr - vehicle.placardPayload) / (vehicle.curbFront + vehicle.curbRear))',
      source: custom,
    },
    'curb.front': {
      label: 'Front axle, empty',
      noun: 'the empty front axle',
      unit: 'lb',
      is: 'vehicle.curbFront * curb.scale',
      source: statics,
    },
    'curb.rear': {
      label: 'Rear axle, empty',
      noun: 'the empty rear axle',
      unit: 'lb',
      is: 'vehicle.curbRear * curb.scale',
      source: statics,
    },
    'place.inSeats': {
      label: 'Where somebody sits whom nobody placed, of the wheelbase',
      noun: 'anywhere in the seats',
      unit: '1',
      is: 'between(0, place.foremost)',
      source: house,
    },
    'place.inVehicle': {
      label: 'Where a thing lies that nobody placed, of the wheelbase',
      noun: 'anywhere in the vehicle',
      unit: '1',
      is: 'between(-place.rearmost * max(0, hitch.behind) / vehicle.wheelbase, place.foremost)',
      source: house,
    },
    'load.onFront': {
      label: 'People and cargo on the front axle',
      noun: 'what people and cargo put on the front axle',
      unit: 'lb',
      is: `${driverOn('place.inSeats')} + sum(load.occupants.weight * ${people}) + sum(load.cargo.weight * ${things})`,
      assumes: 'load.occupants',
      source: statics,
    },
    'load.onRear': {
      label: 'People and cargo on the rear axle',
      noun: 'what people and cargo put on the rear axle',
      unit: 'lb',
      is: `${driverOn('(1 - place.inSeats)')} + sum(load.occupants.weight * (1 - ${people})) + sum(load.cargo.weight * (1 - ${things}))`,
      assumes: 'load.occupants',
      source: occupantMass,
    },
    'hitch.hangsNothing': {
      label: 'No hitch hardware hangs on the vehicle',
      unit: 'yes-no',
      is: '!may(hitch.hardwareWeight > 0)',
      source: statics,
    },
    'front.withoutTongue': {
      label: 'Front axle with people, cargo, hitch and camper, no trailer',
      noun: 'the front axle without the trailer',
      unit: 'lb',
      is: 'front.withoutCamper + camper.onFront',
      source: statics,
    },
    'front.withoutCamper': {
      label: 'Front axle with people, cargo and hitch alone',
      noun: 'the front axle with neither trailer nor camper',
      unit: 'lb',
      is: hanging(
        'curb.front + load.onFront - hitch.hardwareWeight * hitch.lever',
        'curb.front + load.onFront',
        'hitch.hangsNothing',
      ),
      source: statics,
    },
    'rear.withoutTongue': {
      label: 'Rear axle with people, cargo, hitch and camper, no trailer',
      noun: 'the rear axle without the trailer',
      unit: 'lb',
      is: 'rear.withoutCamper + camper.onRear',
      source: statics,
    },
    'rear.withoutCamper': {
      label: 'Rear axle with people, cargo and hitch alone',
      noun: 'the rear axle with neither trailer nor camper',
      unit: 'lb',
      is: hanging(
        'curb.rear + load.onRear + hitch.hardwareWeight * (1 + hitch.lever)',
        'curb.rear + load.onRear',
        'hitch.hangsNothing',
      ),
      source: statics,
    },
  },
});
