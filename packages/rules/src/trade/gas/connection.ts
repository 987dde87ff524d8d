import { findingOf, part } from '../../engine/define/topic';
import { custom, manual } from '../bibliography/common';
import { connectionCustom } from '../bibliography/gas';
import { connectionTable } from './connection-table';

/** May this appliance be connected here? Decided by the inlet pressure on its plate. */
export const connection = part({
  facts: {
    'appliance.inlet': {
      kind: 'choice',
      label: 'What the data plate asks for at the inlet',
      noun: 'the inlet pressure on the plate',
      options: ['11-inwc', 'cylinder-pressure', 'other-gas', 'unreadable'],
      ask: 'What does the appliance’s data plate state: propane at 11 inches, propane at cylinder pressure, or another gas or pressure?',
      where: 'data plate of the appliance, at its inlet',
      means: '11 inches of water column is less than half a pound to the square inch.',
    },
    'appliance.ownRegulator': {
      kind: 'choice',
      label: 'The appliance’s own regulator',
      noun: 'the appliance’s own regulator',
      options: ['none', 'trim', 'high-pressure'],
      ask: 'Has the appliance a regulator of its own: none, a small trim regulator, or one that screws onto a cylinder?',
      where: 'on its hose or at its inlet',
      means:
        'A trim regulator evens out 11 inches of water column; a high-pressure one takes cylinder pressure.',
    },
    'supply.point': {
      kind: 'choice',
      label: 'Where the gas is to be taken',
      noun: 'where the gas is to be taken',
      options: ['after-regulator', 'trailer-cylinder', 'separate-cylinder'],
      ask: 'Where is the appliance to be connected: after the trailer’s regulator, at its cylinder, or at another cylinder?',
      where: 'follow the hose',
    },
    'supply.adapter': {
      kind: 'yes-no',
      label: 'An adapter that defeats a regulator or a fitting’s keying',
      noun: 'whether an adapter defeats a regulator or a fitting’s keying',
      ask: 'Is there an adapter between, so that a fitting goes on which otherwise would not?',
      where: 'along the hose',
      silent: {
        value: 'no',
        says: 'Every fitting goes on as it was sold, without an adapter.',
        source: connectionCustom,
        quiet: true,
      },
    },
    'appliance.usedAt': {
      kind: 'choice',
      label: 'Where it burns',
      noun: 'where it burns',
      options: ['open-air', 'built-in', 'indoors'],
      ask: 'Does the appliance burn in the open air, is it built in with a flue of its own, or is it carried indoors?',
      where: 'told by the owner',
    },
    'gas.smell': {
      kind: 'yes-no',
      label: 'Gas is smelled, or an alarm sounds',
      noun: 'whether gas is smelled or an alarm sounds',
      ask: 'Do you smell gas, or does the gas or carbon monoxide alarm sound?',
      where: 'there and now',
    },
  },
  formulas: {
    'smell.isUntold': {
      label: 'Nobody said whether gas is smelled',
      unit: 'yes-no',
      is: '!given(gas.smell)',
      source: connectionCustom,
    },
    'connection.isAsked': {
      label: 'It is asked where an appliance is to be connected',
      unit: 'yes-no',
      is: 'given(appliance.inlet) || given(appliance.ownRegulator) || given(supply.point)',
      source: connectionCustom,
    },
    'assumed.noAdapter': {
      label: 'Nobody spoke of an adapter',
      unit: 'yes-no',
      is: 'connection.isAsked && !given(supply.adapter)',
      source: connectionCustom,
    },
    'appliance.isIndoors': {
      label: 'It is told that it burns indoors',
      unit: 'yes-no',
      is: "given(appliance.usedAt) && appliance.usedAt == 'indoors'",
      source: manual,
    },
    'appliance.isLowUnseen': {
      label: 'It asks for 11 inches, hangs at a cylinder, and nobody told its regulator',
      unit: 'yes-no',
      is: "given(appliance.inlet) && appliance.inlet == '11-inwc' && given(supply.point) && supply.point != 'after-regulator' && !known(appliance.ownRegulator)",
      source: connectionCustom,
    },
    'appliance.placeUntold': {
      label: 'Nobody said where it burns',
      unit: 'yes-no',
      is: '!given(appliance.usedAt)',
      source: manual,
    },
  },
  decisions: { 'gas.connection': connectionTable },
  findings: {
    smell: {
      label: 'Smell of gas',
      first: true,
      askedBy: ['gas.smell'],
      stop: {
        when: 'gas.smell',
        wrong: 'Everybody out into fresh air now, touch no switch, no flame.',
        do: 'Shut the cylinder if it is on your way. From well away call the emergency number, and say so if anyone has a headache or feels sick. Do not go back in before a professional has found the cause.',
      },
      otherwise: 'No gas is smelled.',
      open: {
        wrong: 'Make sure first that no gas is smelled and no alarm sounds.',
        do: 'If either is so: everybody out, no switch, no flame, then call.',
      },
      source: custom,
    },
    connection: findingOf('gas.connection', connectionTable, {
      askedBy: ['appliance.inlet', 'appliance.ownRegulator', 'supply.point', 'supply.adapter'],
    }),
    adapter: {
      label: 'Adapter',
      askedBy: ['appliance.inlet', 'appliance.ownRegulator', 'supply.point', 'supply.adapter'],
      if: {
        when: 'assumed.noAdapter',
        wrong: 'Whether an adapter stands between is not known yet.',
        do: 'Do not force a fitting that does not go on as it was sold, and put no adapter between.',
        proviso: 'every fitting goes on as it was sold, without an adapter',
      },
      otherwise: 'It is told whether there is an adapter.',
      source: connectionCustom,
    },
    'low-at-cylinder': {
      label: 'A low-pressure burner at a cylinder',
      first: true,
      askedBy: ['appliance.ownRegulator', 'appliance.inlet'],
      askedWhen: 'appliance.isLowUnseen',
      unknown: {
        when: 'appliance.isLowUnseen',
        wrong:
          'At a cylinder a burner for 11 inches is safe only behind a regulator that screws onto the cylinder.',
        because: 'Without it the burner gets a hundred pounds to the square inch and more.',
        do: 'Shut that cylinder until you have seen the regulator.',
      },
      otherwise: 'What stands between burner and cylinder was told.',
      source: connectionCustom,
    },
    'burns-indoors': {
      label: 'Where it burns',
      first: true,
      askedBy: ['appliance.usedAt', 'appliance.inlet', 'appliance.ownRegulator', 'supply.point'],
      stop: {
        when: 'appliance.isIndoors',
        wrong: 'A portable gas appliance burns in the open air only.',
        because: 'Indoors it gives off carbon monoxide, which has no smell and kills sleepers.',
        do: 'Never heat a sleeping space with it.',
      },
      if: {
        when: 'appliance.placeUntold',
        wrong: 'Where the appliance burns is not known yet.',
        do: 'A portable appliance only in the open air.',
        proviso: 'the appliance burns in the open air or has a flue of its own',
      },
      otherwise: 'It burns in the open air, or is built in with its own flue.',
      open: {
        wrong: 'It may be that it is to burn indoors.',
        do: 'A portable appliance burns in the open air only: find out where it stands.',
      },
      source: manual,
    },
  },
});
