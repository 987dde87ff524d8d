import { part } from '../../engine/define/topic';
import { house, manual } from '../../trade/bibliography/common';
import { datesFromMemory } from '../../trade/bibliography/gas';

const age = (label: string, ask: string, where: string) =>
  ({ kind: 'quantity', label, unit: 'yr', least: 0, most: 60, ask, where }) as const;

/** Cylinders, hoses and alarms carry dates, and are only good for so long. */
export const dates = part({
  facts: {
    'cylinder.age': age(
      'Years since the date on the cylinder’s collar',
      'How many years ago is the latest date stamped on the collar?',
      'stamped on the collar: month and year of make, or of the last requalification',
    ),
    'cylinder.dateKind': {
      kind: 'choice',
      label: 'What that date is',
      noun: 'what the latest date on the collar is',
      options: ['made', 'requalified', 'requalified-s', 'requalified-e'],
      ask: 'What date is on the collar, of making or of a requalification, and does an S or an E follow?',
      where:
        'the letter behind the latest date on the collar: S after a proof-pressure test, E after a look from outside only; none after a full test, nor on one never requalified',
    },
    'hose.age': age(
      'Age of the hose',
      'How old is the hose?',
      'printed along the hose, or on the crimp',
    ),
    'hose.sound': {
      kind: 'yes-no',
      label: 'Hose sound, and tight in the leak test',
      noun: 'whether the hose is sound and tight in the leak test',
      ask: 'Is the hose without cracks, and tight when brushed with leak solution?',
      where: 'look, bend it, brush it with solution; never test with a flame',
    },
  },
  parameters: {
    'cylinder.notice': {
      label: 'How long before its end a cylinder’s date is looked into',
      unit: 'yr',
      values: [{ from: '2020-01-01', value: 1 }],
      range: [0, 3],
      source: house,
    },
    'hose.life': {
      label: 'Age at which a hose is replaced',
      unit: 'yr',
      values: [{ from: '2020-01-01', value: 10 }],
      range: [5, 15],
      source: house,
    },
  },
  wordTables: {
    cylinderLife: {
      label: 'Years a cylinder may be filled after the latest date on its collar',
      valueUnit: 'yr',
      values: { made: 12, requalified: 12, 'requalified-s': 7, 'requalified-e': 5 },
      source: datesFromMemory,
    },
  },
  findings: {
    'cylinder-date': {
      label: 'Date of the cylinder',
      askedBy: ['cylinder.age', 'cylinder.dateKind'],
      stop: {
        when: 'cylinder.age > cylinder.life',
        wrong: 'The cylinder is past its date.',
        because: 'No filler may fill it.',
        do: 'Have it requalified, or hand it in.',
        proviso: 'the date on its collar is still good: read whether a letter follows it',
      },
      stopOpen: 'if',
      care: {
        when: 'cylinder.age > cylinder.lookAt',
        wrong: 'The cylinder is about to pass its date.',
        do: 'Show the collar to the filler before the trip.',
      },
      otherwise: 'The cylinder’s date is good.',
      source: datesFromMemory,
    },
    hose: {
      label: 'Hose and its date',
      askedBy: [
        'hose.age',
        'hose.sound',
        'appliance.inlet',
        'appliance.ownRegulator',
        'supply.point',
      ],
      stop: {
        when: 'hose.isUnsound',
        wrong: 'Shut the gas and replace the hose.',
        because: 'Cracked or leaking, it is not used again, nor taped.',
      },
      if: {
        when: 'hose.isUntold',
        wrong: 'The hose is not looked at yet.',
        do: 'Bend it and look for cracks; brush every joint with leak solution, never test with a flame.',
        proviso: 'the hose is sound and every joint is tight in the leak test',
      },
      care: {
        when: 'hose.ageTold > hose.life',
        wrong: 'The hose is older than {hose.life}.',
        do: 'Replace it, though it may still look well.',
      },
      otherwise: 'The hose is sound and not too old, as far as it is told.',
      open: { wrong: 'Look at the hose and brush it with leak solution before the gas is opened.' },
      source: manual,
    },
  },
  formulas: {
    'cylinder.life': {
      label: 'Years it may be filled after that date',
      noun: 'how long its date is good',
      unit: 'yr',
      is: 'pick(cylinderLife, cylinder.dateKind)',
      source: datesFromMemory,
    },
    'cylinder.lookAt': {
      label: 'Age from which the collar is shown to the filler',
      unit: 'yr',
      is: 'cylinder.life - cylinder.notice',
      source: house,
    },
    'hose.isUnsound': {
      label: 'It is told that the hose is not sound',
      unit: 'yes-no',
      is: "given(hose.sound) && hose.sound == 'no'",
      source: manual,
    },
    'hose.isUntold': {
      label: 'Nobody said whether the hose is sound',
      unit: 'yes-no',
      is: '!given(hose.sound)',
      source: manual,
    },
    'hose.ageTold': {
      label: 'Age of the hose, where it is told',
      unit: 'yr',
      is: 'choose(given(hose.age), hose.age, 0)',
      source: manual,
    },
  },
});
