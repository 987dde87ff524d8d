import { findingOf, part } from '../../engine/define/topic';
import {
  freezingTable,
  lithiumCold,
  lithiumColdest,
  makersManual,
} from '../../trade/bibliography/battery';
import { chargerSetting, coldCharge, equalizing, venting } from './care-tables';

/** What must not be done to a battery of this kind, whatever the sums say. */
export const care = part({
  facts: {
    'charge.equalize': {
      kind: 'yes-no',
      label: 'It is to be equalized',
      noun: 'whether it is to be equalized',
      ask: 'Does the charger equalize, or do you mean to?',
      where: 'the charger’s settings',
    },
    'charge.equalizeAllowed': {
      kind: 'yes-no',
      label: 'Its maker allows equalizing',
      noun: 'whether its maker allows equalizing',
      ask: 'Does the battery’s maker say that it may be equalized?',
      where: 'the battery’s manual',
      silent: {
        value: 'no',
        says: 'Its maker has not said that it may be equalized.',
        source: makersManual,
        quiet: true,
      },
    },
    'battery.vented': {
      kind: 'yes-no',
      label: 'Its place is vented to the outside',
      noun: 'whether its place is vented to the outside',
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
    'cells.coldest': {
      label: 'Temperature below which LiFePO₄ neither charges nor discharges',
      unit: '°F',
      values: [{ from: '2020-01-01', value: -4 }],
      source: lithiumColdest,
    },
  },
  formulas: {
    'cells.areFrozen': {
      label: 'The cells are below freezing',
      unit: 'yes-no',
      is: 'battery.cells < cells.freezing',
      source: lithiumCold,
    },
    'charging.isMeant': {
      label: 'Something charges it',
      unit: 'yes-no',
      is: 'count(charging.spells) > 0 || solar.power > 0 || given(charger.current)',
      source: lithiumCold,
    },
    'frost.mayBe': {
      label: 'A lead battery as empty as this one may be would freeze',
      unit: 'yes-no',
      is: "(given(battery.temperature) || given(outside.temperature)) && may(battery.chemistry != 'lifepo4') && may(battery.cells < freeze.temperature)",
      source: freezingTable,
    },
    'freeze.stateOfCharge': {
      label: 'State of charge at its lowest',
      unit: '%',
      is: 'choose(bank.capacity > 0, max(0, day.lowest / battery.available), 0)',
      source: freezingTable,
    },
    'freeze.temperature': {
      label: 'Temperature at which the acid freezes',
      noun: 'the temperature at which the acid freezes',
      unit: '°F',
      is: 'lookup(freezing, choose(start.isRead, min(freeze.stateOfCharge, charge.read), freeze.stateOfCharge))',
      source: freezingTable,
    },
  },
  decisions: {
    'charging.cold': coldCharge,
    'charging.equalizing': equalizing,
    'battery.venting': venting,
    'charger.setting': chargerSetting,
  },
  findings: {
    // What does no harm is no answer to whether the battery is enough.
    'cold-charge': findingOf('charging.cold', coldCharge, {
      settles: [],
      askedBy: ['battery.temperature', 'outside.temperature'],
      open: {
        wrong: 'If the battery is LiFePO₄, find out how cold its cells are.',
        do: 'LiFePO₄ must never be charged below freezing.',
      },
    }),
    equalize: findingOf('charging.equalizing', equalizing, {
      settles: [],
      askedBy: ['charge.equalize'],
      open: {
        wrong: 'Find out the chemistry before anything equalizes.',
        do: 'AGM, gel and LiFePO₄ forbid it.',
      },
    }),
    vent: findingOf('battery.venting', venting, {
      settles: [],
      askedBy: ['battery.vented'],
      open: {
        wrong:
          'A flooded battery gives off hydrogen, and must not charge where that cannot get out.',
        do: 'Read the chemistry on its label, and look for a vent to the outside.',
      },
    }),
    'charger-setting': findingOf('charger.setting', chargerSetting, {
      askedBy: ['charger.setFor'],
      open: { wrong: 'Find out for which chemistry the charger is set, before it charges.' },
    }),
    'too-cold': {
      label: 'Cells too cold for anything',
      askedByKnown: ['battery.temperature', 'battery.chemistry'],
      stop: {
        when: "battery.chemistry == 'lifepo4' && battery.cells < cells.coldest",
        wrong: 'So cold, LiFePO₄ neither charges nor discharges.',
        because: 'Its makers end at {cells.coldest}; its electronics may switch it off.',
        do: 'Warm the cells first, in a heated place.',
      },
      otherwise: 'The cells are not too cold to be used.',
      open: {
        wrong: 'The cells may be too cold to be used.',
        do: 'Read a thermometer at the battery.',
      },
      source: lithiumColdest,
    },
    freeze: {
      label: 'Frost',
      askedBy: ['battery.temperature', 'outside.temperature'],
      stop: {
        when: "(battery.chemistry == 'flooded' || battery.chemistry == 'agm' || battery.chemistry == 'gel') && battery.cells < freeze.temperature",
        wrong: 'At this charge and temperature the acid freezes and splits the case.',
        because: 'It may be frozen already.',
        do: 'Never charge a frozen battery: let it thaw in the warm, and look for a crack or a bulge. Then charge it full, and keep it so in the cold.',
      },
      otherwise: 'The battery does not freeze at this charge and temperature.',
      open: { wrong: 'The battery may freeze: find out its charge, and keep it full in the cold.' },
      source: freezingTable,
    },
    'may-be-frozen': {
      label: 'A battery that may be frozen',
      first: true,
      askedBy: ['battery.temperature', 'outside.temperature'],
      unknown: {
        when: 'frost.mayBe',
        wrong: 'A lead battery that is not full may be frozen in such cold.',
        because: 'A frozen one that is charged may burst.',
        do: 'Do not charge it before it has thawed in a heated place and shows no crack or bulge.',
      },
      otherwise:
        'It is too warm for that, the battery is full enough, or it is not a lead battery.',
      source: freezingTable,
    },
  },
});
