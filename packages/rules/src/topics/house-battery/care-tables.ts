import type { Decision } from '../../engine/define/shapes';
import { lithiumCold, makersManual } from '../../trade/bibliography/battery';

export const coldCharge: Decision = {
  label: 'Charging in the cold',
  hit: 'unique',
  on: ['battery.chemistry', 'cells.areFrozen', 'charging.isMeant'],
  rows: [
    { when: ['lifepo4', 'yes', 'yes'], gives: 'never' },
    { when: ['lifepo4', 'yes', 'no'], gives: 'wait' },
    { when: ['lifepo4', 'no', '-'], gives: 'fine' },
    { when: [['flooded', 'agm', 'gel'], '-', '-'], gives: 'fine' },
  ],
  results: {
    never: {
      label: 'never',
      level: 'stop',
      says: 'Never charge LiFePO₄ with cells below freezing: it ruins them and can make them dangerous. Warm the cells first, whatever the air has done since; solar and the tow vehicle charge too, so switch them off.',
    },
    wait: {
      label: 'wait before charging',
      level: 'care',
      says: 'The cells are below freezing: drawing from them is allowed, charging is not, and sun or tow vehicle may do it unasked.',
    },
    fine: {
      label: 'cold does not forbid charging',
      level: 'ok',
      says: 'The cold does not forbid charging.',
    },
  },
  source: lithiumCold,
};

export const equalising: Decision = {
  label: 'Equalising',
  hit: 'unique',
  on: ['battery.chemistry', 'charge.equalise', 'charge.equaliseAllowed'],
  rows: [
    { when: ['-', 'no', '-'], gives: 'none' },
    { when: ['flooded', 'yes', '-'], gives: 'vent' },
    { when: [['agm', 'gel'], 'yes', 'yes'], gives: 'by-manual' },
    { when: [['agm', 'gel'], 'yes', 'no'], gives: 'never' },
    { when: ['lifepo4', 'yes', '-'], gives: 'never' },
  ],
  results: {
    none: { label: 'none', level: 'ok', says: 'It is not equalised.' },
    vent: {
      label: 'with the box vented',
      level: 'care',
      says: 'Equalising makes much hydrogen: only by the maker’s manual, vented, without a spark near, eyes covered, and water topped up after.',
    },
    'by-manual': {
      label: 'by the maker’s manual alone',
      level: 'care',
      says: 'Equalise it only at the very voltage and time its maker states: a sealed battery cannot be topped up.',
    },
    never: {
      label: 'never',
      level: 'stop',
      says: 'Never equalise it: AGM and gel only where their maker says so in writing, LiFePO₄ not at all.',
    },
  },
  source: makersManual,
};

export const venting: Decision = {
  label: 'Vent',
  hit: 'unique',
  on: ['battery.chemistry', 'battery.vented'],
  rows: [
    { when: ['-', 'yes'], gives: 'vented' },
    { when: ['flooded', 'no'], gives: 'hydrogen' },
    { when: [['agm', 'gel'], 'no'], gives: 'sealed' },
    { when: ['lifepo4', 'no'], gives: 'vented' },
  ],
  results: {
    vented: {
      label: 'vented, or none needed',
      level: 'ok',
      says: 'Its place is vented, or its chemistry asks for no vent of its own.',
    },
    sealed: {
      label: 'sealed, and yet',
      level: 'care',
      says: 'A sealed lead battery lets gas out when it is overcharged: give its place a vent to the outside.',
    },
    hydrogen: {
      label: 'hydrogen',
      level: 'stop',
      says: 'A flooded battery in a closed space gathers hydrogen, which explodes at a spark: do not charge it there before the box is vented to the outside.',
    },
  },
  source: makersManual,
};

export const chargerSetting: Decision = {
  label: 'Setting of the charger',
  hit: 'first',
  on: ['battery.chemistry', 'charger.setFor'],
  rows: [
    { when: ['flooded', 'flooded'], gives: 'right' },
    { when: ['agm', 'agm'], gives: 'right' },
    { when: ['gel', 'gel'], gives: 'right' },
    { when: ['lifepo4', 'lifepo4'], gives: 'right' },
    { when: ['gel', '-'], gives: 'wrong' },
    { when: ['-', 'lifepo4'], gives: 'wrong' },
    { when: ['agm', 'flooded'], gives: 'wrong' },
    { when: ['-', '-'], gives: 'under' },
  ],
  results: {
    right: {
      label: 'right',
      level: 'ok',
      says: 'The charger is set for this chemistry.',
    },
    under: {
      label: 'not for this chemistry',
      level: 'care',
      says: 'The charger is set for another chemistry and will leave the battery short of full, or hold it at a voltage its maker does not want: set it by the battery’s manual.',
    },
    wrong: {
      label: 'wrong',
      level: 'stop',
      says: 'The charger is set for a chemistry whose voltages can harm this battery: do not charge with it before it is set by the battery’s manual.',
    },
  },
  source: makersManual,
};
