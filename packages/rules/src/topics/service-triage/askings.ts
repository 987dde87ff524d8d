import type { Asking } from '../../engine/define/shapes';

/** What people ask a service desk; what they told says which of it is answered first. */
export const askings = {
  alarm: {
    label: 'The alarm beeps: what does it mean?',
    results: ['alarm.means', 'finding.alarm'],
    impliedBy: ['alarm.heard'],
  },
  hubs: {
    label: 'How hot may a hub get?',
    results: ['hub.apart', 'hub.warmest', 'finding.hubs'],
    impliedBy: ['hub.readings', 'hub.hottest', 'hub.coolest'],
    says: 'The hubs lie {hub.apart} apart, and the warmest reads {hub.warmest}. Stop at {hub.stopFrom} apart, or at {hub.hotStop} on any hub.',
  },
  tires: {
    label: 'One tire is softer: may I fill it and go?',
    results: ['tire.share', 'finding.soft-tire'],
    impliedBy: ['tire.softest'],
    says: [
      {
        says: 'The tire has {tire.share} of its mates’ pressure. At {tire.runFlat} or less a tire counts as run flat.',
      },
      {
        says: 'At {tire.runFlat} of its mates’ pressure or less it counts as run flat: then it comes off, and nobody fills it. Softer by less, fill it cold.',
      },
    ],
  },
  way: {
    label: 'What do I do now?',
    usual: true,
    results: ['triage.path'],
    says: [
      {
        when: 'upkeep.isDue',
        says: 'You may leave for a short trip, as long as nothing is hot, loud or loose.',
      },
    ],
    impliedBy: ['trouble.in', 'trouble.degree', 'danger.sign', 'gas.smell'],
  },
  recall: {
    label: 'Is there a recall, and who mends it?',
    results: ['finding.recall'],
    impliedBy: ['recall.found'],
  },
  warranty: {
    label: 'Does the warranty pay?',
    results: ['warranty.left', 'finding.warranty'],
    impliedBy: ['warranty.length', 'trailer.owned'],
    says: 'Left of the warranty: {warranty.left}.',
  },
  phone: { label: 'What do I say on the phone?', results: ['phone'] },
  workshop: {
    label: 'We are far from home: what do I ask the workshop there?',
    results: ['workshop', 'evidence'],
  },
} satisfies Record<string, Asking>;
