import type { Asking } from '../../engine/define/shapes';

const list = ['holding', 'noticing', 'locks', 'hiding'];

/** What people ask about theft; the measures are the answer wherever it stands. */
export const askings = {
  gap: {
    label: 'What is paid, and what would still be owed?',
    results: ['finding.loan-gap', 'loan.gap', 'policy.shortfall', 'policy.pays'],
    impliedBy: ['loan.owed', 'policy.basis', 'policy.agreedValue'],
    says: [
      {
        when: 'policy.coversLoan',
        says: 'The policy would pay {policy.pays}, and nothing would still be owed.',
      },
      {
        when: 'policy.paysSome',
        says: 'The policy would pay {policy.pays}, and {loan.gap} would still be owed.',
      },
      { when: 'policy.paysSome', says: 'The policy would pay {policy.pays}.' },
      { when: 'policy.isNothing', says: 'For theft the policy pays nothing.' },
    ],
  },
  tracker: {
    label: 'How long does a tracker last?',
    results: ['tracker.lasts', 'tracker.average', 'finding.tracker-lasts'],
    impliedBy: ['tracker.battery', 'tracker.reports'],
    says: 'The tracker lasts {tracker.lasts}.',
  },
  insurer: {
    label: 'Is what the insurer asks there?',
    results: ['finding.insurer', 'policy.met'],
    impliedBy: ['policy.asks'],
  },
  enough: {
    label: 'Is what holds it enough?',
    yesOrNo: true,
    results: ['guard.hold', 'guard.notice', ...list],
    impliedBy: ['guard.held', 'guard.noticed'],
  },
  measures: {
    label: 'How do I keep it from being stolen?',
    usual: true,
    results: [...list, 'measures.cost', 'theft.exposure'],
    impliedBy: ['place.kind', 'parked.days'],
  },
} satisfies Record<string, Asking>;
