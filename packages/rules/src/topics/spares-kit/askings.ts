import type { Asking } from '../../engine/define/shapes';

/** What people ask about spares and tools; the list is the answer to most of it. */
export const askings = {
  list: {
    label: 'Which spares and tools should come along?',
    results: ['wheel', 'roadside', 'people', 'electrics', 'lashing', 'tools', 'kit.weight'],
    impliedBy: ['trip.days', 'trip.remoteness', 'kit.extent', 'trailer.axles'],
    says: [
      {
        when: 'axle.isSingle',
        says: 'On one axle no ramp helps. Bring a spare that holds air, a stand, chocks and a torque wrench. Bring a jack rated above one side of the loaded trailer.',
      },
    ],
  },
  lift: {
    label: 'With what, and where, do I lift it?',
    results: ['lift.way', 'side.load', 'limit.lift', 'limit.stand'],
    impliedBy: ['lift.kind', 'lift.rating', 'lift.point', 'stand.rating'],
    says: 'What is lifted is one side of the trailer, {side.load}. The way to lift it: {lift.way}.',
  },
  ramp: {
    label: 'May I drive one wheel up a ramp?',
    results: ['limit.ramp-tire', 'ramp.onTire', 'lift.way'],
    impliedBy: ['ramp.tireAllows', 'ramp.trailerAllows'],
    says: [
      {
        when: 'ramp.isForbidden',
        says: 'No: a ramp is only for two axles or more, and only where the makers of trailer and tire both allow it. Lift the trailer as its manual says.',
      },
      { says: 'On the ramp one tire carries {ramp.onTire}, the whole side of the trailer.' },
    ],
  },
  spare: {
    label: 'Is my spare good enough?',
    results: ['finding.spare-there', 'limit.spare', 'spare.load', 'spare.age', 'finding.spare-age'],
    impliedBy: ['spare.capacity', 'spare.codeYear', 'spare.present'],
    says: [
      { when: 'spare.isMissing', says: 'There is no spare wheel.' },
      {
        when: 'spare.isUnread',
        says: 'A spare will do if it holds air and is no older than a tire may be. It must carry what one wheel of the trailer carries.',
      },
      { says: 'As a spare that wheel must bear {spare.load}, and it is {spare.age} old.' },
    ],
  },
  weight: {
    label: 'Is there weight left for all that, and where does it ride?',
    results: ['kit.weight', 'kit.over', 'stowed.payload'],
    impliedBy: ['kit.place', 'kit.ahead', 'kit.added'],
    says: 'The kit weighs {kit.weight}.',
  },
  leave: {
    label: 'What can stay at home?',
    results: ['leave-first', 'leave.most'],
    says: 'A lean kit frees {leave.most}.',
  },
} satisfies Record<string, Asking>;
