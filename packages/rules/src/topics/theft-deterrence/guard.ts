import { findingOf, part } from '../../engine/define/topic';
import { layers } from '../../trade/bibliography/theft-deterrence';
import { holdTable, insurerTable, noticeTable } from './guard-tables';

/** What is there already, layer by layer, and whether it is enough. */
export const guard = part({
  facts: {
    'guard.doors': {
      kind: 'yes-no',
      label: 'All that opens is locked',
      noun: 'whether all that opens is locked',
      ask: 'Are doors, windows, vents and compartments locked, with keys of their own?',
      where: 'a walk around it',
    },
    'guard.hidden': {
      kind: 'yes-no',
      label: 'Nothing that tempts is seen, nor papers left in it',
      noun: 'whether nothing that tempts is seen',
      ask: 'Look in at every window: is there anything to be seen that tempts, papers too?',
      where: 'a walk around it',
    },
    'guard.held': {
      kind: 'choice',
      label: 'What holds it',
      options: [
        'nothing',
        'coupler',
        'coupler-and-wheel',
        'coupler-and-both-wheels',
        'anchored',
        'hitched',
      ],
      noun: 'what holds it',
      ask: 'What holds the trailer: nothing, a coupler lock, wheel locks too, a chain to an anchor, or the vehicle?',
      where: 'a walk around it',
    },
    'guard.noticed': {
      kind: 'choice',
      label: 'What would tell that it is gone',
      noun: 'what would tell that it is gone',
      options: ['nothing', 'listed', 'listed-and-watched', 'tracked'],
      ask: 'Are numbers and photographs listed at home? Does someone look by? Is there a tracker?',
      where: 'told by the owner',
    },
    'policy.asks': {
      kind: 'choice',
      label: 'What the insurer asks for',
      noun: 'what the insurer asks for',
      options: ['nothing', 'coupler-lock', 'two-devices', 'tracker'],
      ask: 'What must be fitted, by the policy, for theft to be paid?',
      where: 'the policy, under theft or duties of care',
    },
  },
  formulas: {
    'guard.isUntold': {
      label: 'Not all of what is there was told, and nothing of it is missing for certain',
      unit: 'yes-no',
      is: "!(given(guard.held) && given(guard.noticed)) && !(given(guard.held) && guard.held == 'nothing') && !(given(guard.noticed) && guard.noticed == 'nothing')",
      source: layers,
    },
  },
  decisions: { 'guard.hold': holdTable, 'guard.notice': noticeTable, 'policy.met': insurerTable },
  findings: {
    'locked-up': {
      label: 'Lock what opens',
      askedBy: ['guard.doors'],
      care: {
        when: "guard.doors == 'no'",
        wrong: 'Something opens without a key.',
        do: 'Lock doors, windows, vents and compartments, and change a lock whose key fits many trailers.',
      },
      otherwise: 'All that opens is locked.',
      open: { wrong: 'Whether all that opens is locked is not known.', do: 'Walk around it once.' },
      source: layers,
    },
    hidden: {
      label: 'Hide what tempts',
      askedBy: ['guard.hidden'],
      care: {
        when: "guard.hidden == 'no'",
        wrong: 'Something tempts, or papers are in it.',
        do: 'Take it home and draw the blinds; title and registration never stay in it.',
      },
      otherwise: 'Nothing tempts.',
      open: { wrong: 'Whether something tempts is not known.', do: 'Look in at every window.' },
      source: layers,
    },
    'list-done': {
      label: 'What is called for here',
      askedBy: [
        'place.kind',
        'loan.owed',
        'policy.basis',
        'policy.agreedValue',
        'policy.asks',
        'guard.held',
        'guard.noticed',
      ],
      settles: ['place.kind', 'loan.owed', 'policy.basis', 'policy.agreedValue'],
      if: {
        when: 'guard.isUntold',
        wrong: 'What is there already was not told.',
        do: 'Say what is there already, and hold it against the list for that place.',
        proviso: 'it is locked and watched as such a place calls for',
      },
      otherwise: 'What holds it and what would tell that it is gone were told.',
      source: layers,
    },
    held: findingOf('guard.hold', holdTable, {
      askedBy: ['guard.held'],
      open: {
        wrong:
          'Whether what holds it is enough hangs on where it stands, for how long, and what it is worth.',
        do: 'Say that, or hold it against the list.',
      },
    }),
    noticed: findingOf('guard.notice', noticeTable, {
      askedBy: ['guard.noticed'],
      open: {
        wrong:
          'Whether it would be missed and found hangs on where it stands, for how long, and what it is worth.',
        do: 'Say that, or hold it against the list.',
      },
    }),
    insurer: findingOf('policy.met', insurerTable, {
      askedBy: ['policy.asks'],
      open: {
        wrong: 'Whether what the insurer asks is there was not told.',
        do: 'Read in the policy what it asks for, and hold it against what is there.',
      },
    }),
  },
});
