import type { Decision } from '../../engine/define/shapes';
import { findingOf, part } from '../../engine/define/topic';
import { custom, house } from '../../trade/bibliography/common';
import { loadIndices, makersRating, passengerTires } from '../../trade/bibliography/tires';
import { loadOfIndex } from './load-index';

/** Which kind of tire may run where. */
const service: Decision = {
  label: 'Kind of tire for its place',
  hit: 'unique',
  on: ['tire.kind', 'tire.place'],
  rows: [
    { when: ['special-trailer', 'trailer'], gives: 'made-for-it' },
    { when: ['special-trailer', ['front', 'rear']], gives: 'never' },
    { when: ['light-truck', '-'], gives: 'made-for-it' },
    { when: ['passenger', 'trailer'], gives: 'counts-for-less' },
    { when: ['passenger', ['front', 'rear']], gives: 'made-for-it' },
  ],
  results: {
    'made-for-it': {
      label: 'made for it',
      level: 'ok',
      says: 'A tire of this kind may run there, if the maker lists its size.',
    },
    'counts-for-less': {
      label: 'counts for less',
      level: 'care',
      says: 'A passenger-car tire on a trailer counts with its rating divided by {passenger.divisor}, and only where the trailer’s maker allows that.',
      because: 'Such a tire’s sidewalls are softer.',
      do: 'Ask the trailer’s maker first, or have trailer tires fitted.',
    },
    never: {
      label: 'never',
      level: 'stop',
      says: 'A special-trailer tire is for trailers only: never run it on a vehicle that carries people.',
      do: 'Fit tires of the kind and size on the vehicle’s door label.',
    },
  },
  source: passengerTires,
};

/**
 * What one tire may carry, by its index or its sidewall, whichever is less.
 *
 *     121 / 118 R         two tires at a wheel end: the second figure
 *      │     │
 *      ▼     ▼
 *     single dual ─► kg ─► ÷ 1.10 for a passenger tire off a passenger car
 */
export const capacity = part({
  tables: { loadOfIndex },
  parameters: {
    'index.last': {
      label: 'Last index of the list',
      unit: '',
      values: [{ from: '2020-01-01', value: 125 }],
      source: loadIndices,
    },
    'passenger.divisor': {
      label: 'Divisor for a passenger tire off a passenger car',
      unit: '',
      values: [{ from: '2020-01-01', value: 1.1 }],
      source: passengerTires,
    },
    'figures.apart': {
      label: 'How far index and sidewall may lie apart',
      unit: '%',
      values: [{ from: '2020-01-01', value: 1 }],
      range: [0.5, 5],
      source: house,
    },
  },
  formulas: {
    'tire.index': {
      label: 'Load index that counts',
      unit: '',
      is: 'choose(tire.isDual, tire.loadIndexDual, tire.loadIndex)',
      source: loadIndices,
    },
    'tire.indexCounts': {
      label: 'The index is known and stands in the list',
      unit: 'yes-no',
      is: 'known(tire.index) && tire.index <= index.last',
      source: loadIndices,
    },
    'tire.byIndex': {
      label: 'Load by the index',
      unit: 'lb',
      is: 'lookup(loadOfIndex, whole(tire.index))',
      source: loadIndices,
    },
    'tire.stated': {
      label: 'Load on the sidewall',
      unit: 'lb',
      is: "choose(tire.place == 'trailer', trailer.tireCapacity, choose(tire.place == 'front', vehicle.tireCapacityFront, vehicle.tireCapacityRear))",
      source: makersRating,
    },
    'tire.bothKnown': {
      label: 'Index and sidewall are both known',
      unit: 'yes-no',
      is: 'tire.indexCounts && known(tire.stated)',
      source: makersRating,
    },
    'tire.rated': {
      label: 'Tire’s own rating',
      noun: 'the tire’s own rating',
      unit: 'lb',
      is: 'choose(tire.indexCounts, choose(known(tire.stated), min(tire.byIndex, tire.stated), tire.byIndex), tire.stated)',
      source: makersRating,
    },
    'tire.isToldOf': {
      label: 'The kind of the tires that are meant was told',
      unit: 'yes-no',
      is: "given(tire.kind) || choose(tire.place == 'trailer', given(trailer.tireKind), given(vehicle.tireKind))",
      source: custom,
    },
    'vehicleTire.isPassenger': {
      label: 'The vehicle’s tires that are meant are passenger ones',
      unit: 'yes-no',
      is: "(given(tire.kind) && tire.kind == 'passenger') || (given(vehicle.tireKind) && vehicle.tireKind == 'passenger')",
      source: passengerTires,
    },
    'tire.countsForLess': {
      label: 'A passenger tire off a passenger car',
      unit: 'yes-no',
      // What was told of the rig's tires holds for those that are meant, too; where nobody told, it may be.
      is: "choose(tire.place == 'trailer', choose(tire.isToldOf, tire.trailerIsPassenger, tire.kind == 'passenger'), vehicle.type != 'passenger-car' && choose(tire.isToldOf, vehicleTire.isPassenger, tire.kind == 'passenger'))",
      source: passengerTires,
    },
    'tire.divisor': {
      label: 'What the rating is divided by',
      noun: 'the divisor for its kind',
      unit: '',
      is: 'choose(tire.countsForLess, passenger.divisor, 1)',
      source: passengerTires,
    },
    'tire.capacity': {
      label: 'What one tire may carry',
      noun: 'what one tire may carry',
      unit: 'lb',
      is: 'tire.rated / tire.divisor',
      source: passengerTires,
    },
    'figures.difference': {
      label: 'Between index and sidewall',
      unit: 'lb',
      is: 'max(tire.byIndex - tire.stated, tire.stated - tire.byIndex)',
      source: custom,
    },
    'figures.allowed': {
      label: 'What may lie between them',
      unit: 'lb',
      is: 'tire.byIndex * figures.apart',
      source: house,
    },
  },
  decisions: { 'tire.service': service },
  findings: {
    'tire-kind': findingOf('tire.service', service, {
      first: true,
      askedBy: ['tire.kind'],
      open: { wrong: 'Read the letters before the size, and say which tires are meant.' },
    }),
    figures: {
      label: 'Index against sidewall',
      askedBy: ['tire.loadIndex', 'tire.loadIndexDual'],
      care: {
        when: {
          all: [
            { fact: 'tire.bothKnown', operator: 'equal', value: 'yes' },
            {
              fact: 'figures.difference',
              operator: 'greaterThan',
              value: { fact: 'figures.allowed' },
            },
          ],
        },
        wrong: 'Load index and sidewall do not agree.',
        do: 'The smaller counts until both are read again, on the same tire, single and dual apart.',
      },
      otherwise: 'Load index and sidewall agree, or only one of them is known.',
      source: custom,
    },
  },
});
