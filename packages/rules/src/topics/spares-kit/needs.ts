import { part } from '../../engine/define/topic';
import { house, statics } from '../../trade/bibliography/common';
import { baseList } from '../../trade/bibliography/spares-kit';

const need = (label: string, is: string) =>
  ({ label, unit: 'yes-no', is, source: baseList }) as const;

/**
 * When each thing beyond the base list comes along.
 *
 *     near help ──────► base list, by the lifting device and the brakes
 *     a long trip ────► + bearings, grease
 *     hours from help ► + compressor, bearings; on one axle a hub
 *     days from help ─► + a hub, and with trailer tires a second spare
 */
export const needs = part({
  parameters: {
    'trip.long': {
      label: 'A long trip begins at',
      unit: 'd',
      values: [{ from: '2020-01-01', value: 7 }],
      range: [3, 21],
      source: house,
    },
  },
  formulas: {
    'kit.isFull': need('The full list is packed', "kit.extent == 'full'"),
    'trip.isLong': need('The trip is long', 'trip.days >= trip.long'),
    'trip.isFar': need('Help is hours away or more', "trip.remoteness != 'near-help'"),
    'trip.isBeyond': need('Help is days away', "trip.remoteness == 'days-from-help'"),
    'need.jack': need(
      'A lifting device is packed',
      "lift.kind != 'none' && lift.kind != 'vehicle-jack'",
    ),
    'need.board': need('A board is packed', "lift.kind != 'none' && lift.kind != 'drive-up-ramp'"),
    'need.stands': need('Stands are packed', "lift.kind != 'none' && lift.kind != 'drive-up-ramp'"),
    'need.splice': need('The brakes are electric', "trailer.brakeKind == 'electric'"),
    'need.fluid': need('The brakes are hydraulic', "trailer.brakeKind == 'hydraulic'"),

    'axle.isSingle': need('It has one axle', 'given(trailer.axles) && trailer.axles < 2'),
    'need.compressor': need('A compressor is packed', 'kit.isFull && trip.isFar'),
    'need.bearings': need('Bearings are packed', 'kit.isFull && (trip.isLong || trip.isFar)'),
    'need.grease': need('Grease is packed', 'kit.isFull && trip.isLong'),
    'need.hub': need(
      'A hub is packed',
      'kit.isFull && (trip.isBeyond || (trip.isFar && trailer.axles < 2))',
    ),
    'need.secondSpare': need(
      'A second spare is packed',
      "kit.isFull && trip.isBeyond && tire.kind == 'special-trailer'",
    ),
    'kit.weight': {
      label: 'Weight of the kit',
      noun: 'the kit',
      unit: 'lb',
      is: 'people.weight + wheel.weight + roadside.weight + electrics.weight + lashing.weight + tools.weight + sum(kit.added.weight)',
      source: statics,
    },
  },
});
