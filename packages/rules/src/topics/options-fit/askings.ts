import type { Asking } from '../../engine/define/shapes';

/** What people ask about models and options; what they told says which of it is answered first. */
export const askings = {
  rig: {
    label: 'What does the build do behind the vehicle?',
    results: ['build.loaded', 'build.tongue', 'limit.trailer-weight', 'limit.payload'],
    impliedBy: [
      'vehicle.maxTrailerWeight',
      'vehicle.placardPayload',
      'vehicle.maxTongueCarried',
      'vehicle.maxFifthWheel',
    ],
    says: [
      {
        when: 'plan.isOpen',
        says: 'Name the floor plan: each is held by itself against what the vehicle may pull and carry.',
      },
      {
        when: 'plan.isFifthWheel',
        says: 'By a made-up sample list the build weighs {build.loaded} as it is loaded, with {build.tongue} on the pin.',
      },
      {
        says: 'By a made-up sample list the build weighs {build.loaded} as it is loaded, with {build.tongue} on the tongue.',
      },
    ],
  },
  build: {
    label: 'Can it be ordered so, and what does it weigh?',
    results: [
      'trailer.dryWeight',
      'build.weight',
      'trailer.room',
      'build.ways',
      'build',
      'against',
    ],
    impliedBy: ['plan.name'],
    says: [
      {
        says: 'Empty the trailer weighs {trailer.dryWeight} and its options {build.weight}. That leaves {trailer.room} for cargo and water.',
      },
      {
        says: 'Empty the trailer weighs {trailer.dryWeight}. With options and gas {trailer.room} are left for cargo and water.',
      },
    ],
  },
  which: {
    label: 'Which floor plans have all of it?',
    usual: true,
    results: ['models'],
    impliedBy: ['vehicle.maxTrailerWeight'],
  },
  since: {
    label: 'Since when is it standard, and why?',
    results: ['standard', 'trailer.dryWeight', 'finding.comes-anyway'],
    impliedBy: ['plan.year'],
    says: [
      {
        when: 'plan.isOpen',
        says: 'What is standard, and since when, goes by floor plan and model year: name the floor plan.',
      },
    ],
  },
  choices: {
    label: 'How many choices are there?',
    results: ['plan.choices', 'plan.builds'],
    says: [
      {
        when: 'plan.isOpen',
        says: 'How many choices there are goes by floor plan and model year: name the floor plan.',
      },
      { says: '{plan.choices} options may be chosen or left, in {plan.builds} different builds.' },
    ],
  },
} satisfies Record<string, Asking>;
