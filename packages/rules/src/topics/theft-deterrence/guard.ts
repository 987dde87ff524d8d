import { findingOf, part } from '../../engine/define/topic';
import { layers } from '../../trade/bibliography/theft-deterrence';
import { holdTable, insurerTable, noticeTable } from './guard-tables';

const no = (fact: string) => ({ all: [{ fact, operator: 'equal', value: 'no' } as const] });

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
      ask: 'Look in at every window: is there anything to be seen that tempts? Are papers in it?',
      where: 'a walk around it',
    },
    'guard.held': {
      kind: 'choice',
      label: 'What holds it',
      options: ['nothing', 'coupler', 'coupler-and-wheel', 'anchored', 'hitched'],
      ask: 'What holds it: nothing, a coupler lock, that and a wheel lock, those and a chain to an anchor, or the vehicle with locked pins?',
      where: 'a walk around it',
    },
    'guard.noticed': {
      kind: 'choice',
      label: 'What would tell that it is gone',
      options: ['nothing', 'listed', 'listed-and-watched', 'tracked'],
      ask: 'Are numbers and photographs listed at home? Does someone look by? Is there a tracker?',
      where: 'told by the owner',
    },
    'policy.asks': {
      kind: 'choice',
      label: 'What the insurer asks for',
      options: ['nothing', 'coupler-lock', 'two-devices', 'tracker'],
      ask: 'What must be fitted, by the policy, for theft to be paid?',
      where: 'the policy, under theft or duties of care',
    },
  },
  decisions: { 'guard.hold': holdTable, 'guard.notice': noticeTable, 'policy.met': insurerTable },
  findings: {
    'locked-up': {
      label: 'Lock what opens',
      askedBy: ['guard.doors'],
      care: {
        when: no('guard.doors'),
        wrong: 'Something opens without a key.',
        do: 'Lock doors, windows, vents and compartments, and change a lock whose key fits many trailers.',
      },
      otherwise: 'All that opens is locked.',
      source: layers,
    },
    hidden: {
      label: 'Hide what tempts',
      askedBy: ['guard.hidden'],
      care: {
        when: no('guard.hidden'),
        wrong: 'Something tempts, or papers are in it.',
        do: 'Take it home, draw the blinds; title and registration never stay in it.',
      },
      otherwise: 'Nothing tempts.',
      source: layers,
    },
    held: findingOf('guard.hold', holdTable, {
      askedBy: ['place.kind', 'guard.held'],
      open: {
        wrong: 'Whether what holds it is enough was not told.',
        do: 'What is called for here stands in the list.',
      },
    }),
    noticed: findingOf('guard.notice', noticeTable, {
      askedBy: ['place.kind', 'guard.noticed'],
      open: {
        wrong: 'Whether it would be missed and found was not told.',
        do: 'What is called for here stands in the list.',
      },
    }),
    insurer: findingOf('policy.met', insurerTable, {
      askedBy: ['policy.asks'],
      open: { wrong: 'Read in the policy what it asks for, and hold it against what is there.' },
    }),
  },
});
