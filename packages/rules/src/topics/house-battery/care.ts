import type { Decision } from '../../engine/define/shapes';
import { findingOf, part } from '../../engine/define/topic';
import { freezingTable, lithiumCold, makersManual } from './sources';

const coldCharge: Decision = {
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

const equalising: Decision = {
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

const venting: Decision = {
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

const chargerSetting: Decision = {
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

/** What must not be done to a battery of this kind, whatever the sums say. */
export const care = part({
  facts: {
    'charge.equalise': {
      kind: 'yes-no',
      label: 'It is to be equalised',
      ask: 'Does the charger equalise, or do you mean to?',
      where: 'the charger’s settings',
    },
    'charge.equaliseAllowed': {
      kind: 'yes-no',
      label: 'Its maker allows equalising',
      ask: 'Does the battery’s maker say that it may be equalised?',
      where: 'the battery’s manual',
      silent: {
        value: 'no',
        says: 'Its maker has not said that it may be equalised.',
        source: makersManual,
        quiet: true,
      },
    },
    'battery.vented': {
      kind: 'yes-no',
      label: 'Its place is vented to the outside',
      ask: 'Does the battery box have a vent to the outside?',
      where: 'look for the hose or louver',
    },
    'charger.setFor': {
      kind: 'choice',
      label: 'Chemistry the charger is set for',
      options: ['flooded', 'agm', 'gel', 'lifepo4'],
      ask: 'For what kind of battery is the charger set?',
      where: 'switch or menu of the charger or converter',
    },
  },
  parameters: {
    'cells.freezing': {
      label: 'Temperature below which LiFePO₄ must not be charged',
      unit: '°F',
      values: [{ from: '2020-01-01', value: 32 }],
      source: lithiumCold,
    },
  },
  tables: {
    freezing: {
      label: 'Freezing point of battery acid',
      keyUnit: '%',
      valueUnit: '°F',
      rows: [
        [0, 20],
        [25, 5],
        [50, -10],
        [75, -35],
        [100, -75],
      ],
      source: freezingTable,
    },
  },
  formulas: {
    'cells.areFrozen': {
      label: 'The cells are below freezing',
      unit: 'yes-no',
      is: 'battery.temperature < cells.freezing',
      source: lithiumCold,
    },
    'charging.isMeant': {
      label: 'Something charges it',
      unit: 'yes-no',
      is: 'count(charging.spells) > 0 || solar.power > 0 || given(charger.current)',
      source: lithiumCold,
    },
    'freeze.stateOfCharge': {
      label: 'State of charge at its lowest',
      unit: '%',
      is: 'choose(bank.capacity > 0, max(0, day.lowest / battery.available), 0)',
      source: freezingTable,
    },
    'freeze.temperature': {
      label: 'Temperature at which the acid freezes',
      unit: '°F',
      is: 'lookup(freezing, choose(start.isRead, min(freeze.stateOfCharge, charge.read), freeze.stateOfCharge))',
      source: freezingTable,
    },
  },
  decisions: {
    'charging.cold': coldCharge,
    'charging.equalising': equalising,
    'battery.venting': venting,
    'charger.setting': chargerSetting,
  },
  findings: {
    'cold-charge': findingOf('charging.cold', coldCharge, {
      askedBy: ['battery.temperature'],
      unsure:
        'Find out the chemistry and how cold the cells are: LiFePO₄ must never be charged below freezing.',
    }),
    equalise: findingOf('charging.equalising', equalising, {
      askedBy: ['charge.equalise'],
      unsure: 'Find out the chemistry before anything equalises: AGM, gel and LiFePO₄ forbid it.',
    }),
    vent: findingOf('battery.venting', venting, {
      askedBy: ['battery.vented'],
      unsure: 'Find out whether its place is vented: a flooded battery gives off hydrogen.',
    }),
    'charger-setting': findingOf('charger.setting', chargerSetting, {
      askedBy: ['charger.setFor'],
      unsure: 'Find out for which chemistry the charger is set, before it charges.',
    }),
    freeze: {
      label: 'Frost',
      askedBy: ['battery.temperature'],
      stop: {
        when: {
          all: [
            { fact: 'battery.chemistry', operator: 'in', value: ['flooded', 'agm', 'gel'] },
            {
              fact: 'battery.temperature',
              operator: 'lessThan',
              value: { fact: 'freeze.temperature' },
            },
          ],
        },
        says: 'At this charge and temperature the acid freezes and splits the case: charge it before the cold, and never charge a frozen battery.',
      },
      otherwise: 'It does not freeze at this charge and temperature.',
      unsure: 'It may freeze: find out its charge, and keep it full in the cold.',
      source: freezingTable,
    },
  },
});
