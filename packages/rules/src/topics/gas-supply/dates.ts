import { part } from '../../engine/define/topic';
import { house, manual } from '../../trade/bibliography/common';
import { datesFromMemory, regulatorLife } from '../../trade/bibliography/gas';

const age = (label: string, ask: string, where: string) =>
  ({ kind: 'quantity', label, unit: 'yr', least: 0, most: 60, ask, where }) as const;

/** Cylinders, regulators, hoses and alarms carry dates, and are only good for so long. */
export const dates = part({
  facts: {
    'cylinder.age': {
      ...age(
        'Years since the date on the cylinder’s collar',
        'How many years ago is the latest date stamped on the collar?',
        'stamped on the collar as month and year of make, or of the last requalification; tell both of them rather than round years',
      ),
      silent: {
        value: 0,
        says: 'No round years are counted beside month and year.',
        source: datesFromMemory,
        quiet: true,
      },
    },
    'hose.age': age(
      'Age of the hose',
      'How old is the hose?',
      'printed along the hose, or on the crimp',
    ),
    'regulator.age': age(
      'Age of the regulator',
      'How old is the regulator?',
      'date on its back or cover, mostly as a year and a week or month; else the trailer’s own year',
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
    'regulator.life': {
      label: 'Age at which a regulator is replaced',
      unit: 'yr',
      values: [{ from: '2020-01-01', value: 10 }],
      range: [10, 15],
      source: regulatorLife,
    },
    'hose.life': {
      label: 'Age at which a hose is replaced',
      unit: 'yr',
      values: [{ from: '2020-01-01', value: 10 }],
      range: [5, 15],
      source: house,
    },
  },
  findings: {
    'cylinder-date': {
      label: 'Date of the cylinder',
      askedBy: ['cylinder.age', 'cylinder.stampYear', 'cylinder.stampMonth', 'cylinder.dateKind'],
      stop: {
        when: 'cylinder.age > cylinder.life || cylinder.stampCounted > cylinder.life',
        wrong: 'The cylinder is past its date.',
        because: 'No filler may fill it.',
        do: 'Have it requalified, or hand it in.',
        proviso: 'the date on its collar is still good: read whether a letter follows it',
      },
      stopOpen: 'if',
      care: {
        when: 'cylinder.age > cylinder.lookAt || cylinder.stampCounted > cylinder.lookAt',
        wrong: 'The cylinder is about to pass its date.',
        do: 'Show the collar to the filler before the trip.',
      },
      otherwise: 'The cylinder’s date is good.',
      source: datesFromMemory,
    },
    'stamp-misread': {
      label: 'Date on the collar',
      askedBy: ['cylinder.stampYear'],
      unknown: {
        when: 'stamp.isMisread',
        wrong: 'The date on the collar lies in the future, so it was misread.',
        do: 'Read month and year again, with a lamp.',
      },
      otherwise: 'The date on the collar can be right.',
      source: datesFromMemory,
    },
    'regulator-age': {
      label: 'Regulator and its age',
      askedBy: ['regulator.age'],
      care: {
        when: 'regulator.age > regulator.life',
        wrong: 'The regulator is older than {regulator.life}.',
        because: 'Its diaphragm hardens, and then it leaks or lets too much pressure through.',
        do: 'Have a licensed shop replace it, and the pressure behind it measured.',
      },
      open: {
        wrong: 'The regulator may be past its years.',
        do: 'Read the date on its back or cover; without one, have a shop measure the pressure.',
      },
      otherwise: 'The regulator is not past its years.',
      source: regulatorLife,
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
    'cylinder.stampCounted': {
      label: 'Years since month and year; none where only round years are told',
      unit: 'yr',
      is: 'choose(given(cylinder.age) && !given(cylinder.stampYear), 0, cylinder.sinceStamp)',
      within: ['0', 'unlimited'],
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
