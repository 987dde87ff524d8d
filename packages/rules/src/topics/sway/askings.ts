import type { Asking } from '../../engine/define/shapes';

const steps =
  'When the trailer sways: off the pedal; trailer brakes by their lever, if any; wheel straight; no vehicle brakes, no speeding up.';

/** What people ask about sway; what to do when it begins is said first, whatever was asked. */
export const askings = {
  when: {
    label: 'What do I do when it begins?',
    results: ['steps'],
  },
  will: {
    label: 'Will this rig sway?',
    results: ['tongue.share', 'finding.tongue-share', 'finding.far-ends'],
    impliedBy: [
      'trailer.measuredTongueWeight',
      'trailer.dryTongueWeight',
      'trailer.cargo',
      'trailer.freshWater',
    ],
    says: [
      {
        when: 'tongue.isLifting',
        says: `${steps} The tongue lifts, and nothing rests on the ball.`,
      },
      {
        when: 'ball.isPlainlyLight',
        says: `${steps} Only {tongue.share} of the trailer rests on the ball; {tongue.leastShare} to {tongue.mostShare} is usual.`,
      },
      {
        when: 'ball.isLight',
        says: `${steps} Only {tongue.share} rests on the ball.`,
      },
      {
        when: 'gross.isAllTold',
        says: `${steps} Loaded to its maximum of {trailer.gvwr}, the trailer has {share.atGross} on the ball. That tongue is {tongue.leastShare} of a trailer of {weight.forLeast}, and less of a heavier one.`,
      },
      {
        when: 'tongue.isWeighed',
        says: `${steps} As weighed, {tongue.share} of the trailer rests on the tongue.`,
      },
      {
        when: 'coupling.isBall',
        says: `${steps} Of the trailer {tongue.share} rests on the ball.`,
      },
      {
        when: 'coupling.isPin',
        says: `${steps} Of the trailer {tongue.share} rests on the pin.`,
      },
      { says: `${steps} What rests on the ball, loaded, decides: weigh it.` },
    ],
  },
  length: {
    label: 'Is the trailer too long for my vehicle?',
    results: ['length.carried', 'finding.length'],
    impliedBy: ['trailer.length', 'vehicle.wheelbase'],
    says: [
      {
        says: `${steps} A wheelbase of {vehicle.wheelbase} carries about {length.carried} of trailer, by the rule of thumb.`,
      },
      {
        says: `${steps} Measure the wheelbase: by a rule of thumb it says how long a trailer may be.`,
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
    says: `${steps} The faster, the longer a swing takes to die out.`,
    impliedBy: ['trip.speed', 'trip.gusts'],
  },
} satisfies Record<string, Asking>;
