import type { Asking } from '../../engine/define/shapes';

const steps = 'Should it sway: off both pedals, slide any trailer-brake lever, wheel straight.';

/** What people ask about sway; what to do when it begins is said after the answer, whatever was asked. */
export const askings = {
  when: {
    label: 'What do I do when it begins?',
    results: ['steps'],
  },
  will: {
    label: 'Will this rig sway?',
    yesOrNo: true,
    results: ['share.told', 'finding.tongue-share', 'finding.far-ends'],
    impliedBy: [
      'trailer.measuredTongueWeight',
      'trailer.dryTongueWeight',
      'trailer.cargo',
      'trailer.freshWater',
    ],
    says: [
      {
        when: 'tongue.isLifting',
        says: `The tongue lifts, and nothing rests on the ball. ${steps}`,
      },
      {
        when: 'tail.isUnreckoned',
        says: `What share of the loaded trailer rests on the ball decides: weigh both. ${steps}`,
      },
      {
        when: 'ball.isPlainlyLight',
        says: `Only {tongue.share} of the trailer rests on the ball; {tongue.leastShare} to {tongue.mostShare} is usual. ${steps}`,
      },
      {
        when: 'ball.isLight',
        says: `Only {tongue.share} of the trailer rests on the ball; {tongue.leastShare} to {tongue.mostShare} is usual. ${steps}`,
      },
      {
        when: 'gross.isAllTold',
        says: `Loaded to its maximum of {trailer.gvwr}, the trailer has {share.atGross} on the ball. That tongue is {tongue.leastShare} of a trailer of {weight.forLeast}, and less of a heavier one. ${steps}`,
      },
      {
        when: 'share.isOfEmpty',
        says: `Of the empty trailer {tongue.share} would rest on the ball, and of the packed one less; {tongue.leastShare} to {tongue.mostShare} is usual. ${steps}`,
      },
      {
        when: 'tongue.isWeighed',
        says: `As weighed, {tongue.share} of the trailer rests on the tongue; {tongue.lowEdge} to {tongue.highEdge} is usual. ${steps}`,
      },
      {
        when: 'coupling.isBall',
        says: `On the ball rests {tongue.share}; {tongue.leastShare} to {tongue.mostShare} is usual. ${steps}`,
      },
      {
        when: 'coupling.isPin',
        says: `Of the trailer {tongue.share} rests on the pin. ${steps}`,
      },
      { says: `What share of the loaded trailer rests on the ball decides: weigh both. ${steps}` },
    ],
  },
  length: {
    label: 'Is the trailer too long for my vehicle?',
    results: ['length.carried', 'finding.length'],
    impliedBy: ['trailer.length', 'vehicle.wheelbase'],
    says: [
      {
        when: 'trailer.isLong',
        says: `By a rule of thumb too long: a wheelbase of {vehicle.wheelbase} carries about {length.carried}, not {trailer.length}. ${steps}`,
      },
      {
        says: `A wheelbase of {vehicle.wheelbase} carries about {length.carried} of trailer, by the rule of thumb. ${steps}`,
      },
      {
        says: `Measure the wheelbase: by a rule of thumb it says how long a trailer may be. ${steps}`,
      },
    ],
  },
  pushes: {
    label: 'What pushes it which way?',
    results: ['pushes'],
    says: steps,
  },
  helps: {
    label: 'What helps most?',
    results: ['helps'],
    says: steps,
    impliedBy: ['hitch.swayControl', 'tires.pressures', 'trailer.rides'],
  },
  speed: {
    label: 'How fast may I go?',
    results: ['finding.speed', 'finding.gusts'],
    says: `The faster, the longer a swing takes to die out. ${steps}`,
    impliedBy: ['trip.speed', 'trip.gusts'],
  },
} satisfies Record<string, Asking>;
