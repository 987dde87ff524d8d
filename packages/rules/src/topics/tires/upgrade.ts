import type { Decision } from '../../engine/define/shapes';
import { part } from '../../engine/define/topic';
import { custom, house } from '../../trade/bibliography/common';
import { makersRating } from '../../trade/bibliography/tires';

const upgrade: Decision = {
  label: 'A tire of a higher load range',
  hit: 'unique',
  on: ['upgrade.rimListed', 'upgrade.pressureFits', 'upgrade.clears'],
  rows: [
    { when: ['no', '-', '-'], gives: 'not-this-wheel' },
    { when: ['yes', 'no', '-'], gives: 'not-this-wheel' },
    { when: ['yes', 'yes', 'no'], gives: 'no-room' },
    { when: ['yes', 'yes', 'yes'], gives: 'possible' },
  ],
  results: {
    'not-this-wheel': {
      label: 'not on this wheel',
      says: 'Not on this wheel: the rim is not listed for that tire, or the wheel may not hold its pressure. Other wheels first.',
    },
    'no-room': {
      label: 'no room',
      says: 'There is no room for that tire when the axle comes up: it would rub, and a rubbed sidewall bursts.',
    },
    possible: {
      label: 'possible',
      says: 'Rim, pressure and room allow that tire. It adds reserve to the tires alone: axles, springs and wheels keep their ratings.',
    },
  },
  source: custom,
};

/**
 * A second answer: another tire that would not fit condemns none of the present ones.
 * Another tire that carries more: does the wheel take it, and is there room?
 *
 *     clearance now ─┬─ half of what the diameter grows ─► room left ≥ least room
 */
export const upgraded = part({
  parameters: {
    'clearance.least': {
      label: 'Least room around a tire',
      unit: 'in',
      values: [{ from: '2020-01-01', value: 1 }],
      range: [0.5, 3],
      source: house,
    },
  },
  formulas: {
    'upgrade.pressureFits': {
      label: 'The wheel may hold the pressure',
      unit: 'yes-no',
      is: 'upgrade.maxPressure <= wheel.maxPressure',
      source: makersRating,
    },
    'upgrade.room': {
      label: 'Room left around the other tire',
      unit: 'in',
      is: 'tire.clearance - (upgrade.diameter - tire.diameter) / 2',
      source: custom,
    },
    'upgrade.clears': {
      label: 'There is room for the other tire',
      unit: 'yes-no',
      is: 'upgrade.room >= clearance.least',
      source: house,
    },
    'upgrade.reserve': {
      label: 'Reserve with the other tire',
      unit: 'lb',
      is: 'upgrade.capacity / tire.divisor - tire.load',
      source: makersRating,
    },
  },
  decisions: { 'upgrade.result': upgrade },
});
