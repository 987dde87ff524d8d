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
      label: 'do not charge it',
      level: 'stop',
      says: 'Never charge LiFePO₄ with cells below freezing.',
      because:
        'It ruins them and can make them dangerous, and the cells lag behind the air by hours.',
      do: 'Switch converter, sun and tow vehicle off, and warm the cells first.',
    },
    wait: {
      label: 'wait before charging',
      level: 'care',
      says: 'The cells are below freezing: drawing from them is allowed, charging is not.',
      because: 'Sun or tow vehicle may charge unasked.',
      do: 'Switch off whatever could charge until they are warm.',
    },
    fine: {
      label: 'charge it',
      level: 'ok',
      says: 'The cold does not forbid charging.',
    },
  },
  source: lithiumCold,
};

export const equalizing: Decision = {
  label: 'Equalizing',
  hit: 'unique',
  on: ['battery.chemistry', 'charge.equalize', 'charge.equalizeAllowed'],
  rows: [
    { when: ['-', 'no', '-'], gives: 'none' },
    { when: ['flooded', 'yes', '-'], gives: 'vent' },
    { when: [['agm', 'gel'], 'yes', 'yes'], gives: 'by-manual' },
    { when: [['agm', 'gel'], 'yes', 'no'], gives: 'never' },
    { when: ['lifepo4', 'yes', '-'], gives: 'never' },
  ],
  results: {
    none: { label: 'leave equalizing off', level: 'ok', says: 'It is not equalized.' },
    vent: {
      label: 'equalize it with the box vented',
      level: 'care',
      says: 'Equalizing makes much hydrogen.',
      do: 'Only by the maker’s manual, vented, without a spark near, eyes covered, and water topped up after.',
    },
    'by-manual': {
      label: 'equalize it by the maker’s manual alone',
      level: 'care',
      says: 'Equalize it only at the very voltage and time its maker states.',
      because: 'A sealed battery cannot be topped up.',
    },
    never: {
      label: 'do not equalize it',
      level: 'stop',
      says: 'Never equalize it.',
      because:
        'AGM and gel stand it only where their maker says so in writing, LiFePO₄ not at all.',
      do: 'Switch equalizing off.',
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
      label: 'a vent for a sealed battery',
      level: 'care',
      says: 'A sealed lead battery lets gas out when it is overcharged.',
      do: 'Give its place a vent to the outside.',
    },
    hydrogen: {
      label: 'no charging before it is vented',
      level: 'stop',
      says: 'A flooded battery in a closed space gathers hydrogen.',
      because: 'It explodes at a spark.',
      do: 'Do not charge it there before the box is vented to the outside.',
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
      label: 'leave the setting',
      level: 'ok',
      says: 'The charger is set for this chemistry.',
    },
    under: {
      label: 'set it for this chemistry',
      level: 'care',
      says: 'The charger is set for another chemistry.',
      because:
        'It leaves the battery short of full, or holds it at a voltage its maker does not want.',
      do: 'Set it by the battery’s manual.',
    },
    wrong: {
      label: 'no charging before it is set',
      level: 'stop',
      says: 'The charger is set for a chemistry whose voltages can harm this battery.',
      do: 'Do not charge with it before it is set by the battery’s manual.',
    },
  },
  source: makersManual,
};
