import type { Asking } from '../../engine/define/shapes';

/** What people ask about models and options; what they told says which of it is answered first. */
export const askings = {
  rig: {
    label: 'What does the build do behind the vehicle?',
    results: ['trailer.loaded', 'tongue.loaded', 'limit.trailer-weight', 'limit.payload'],
    impliedBy: ['vehicle.maxTrailerWeight', 'vehicle.placardPayload', 'vehicle.maxTongueCarried'],
    says: 'The build weighs {trailer.loaded} as it is loaded, with {tongue.loaded} on the tongue.',
  },
  build: {
    label: 'Can it be ordered so, and what does it weigh?',
    results: ['build.ways', 'build.weight', 'trailer.room', 'build', 'against'],
    impliedBy: ['plan.name'],
    says: 'There are {build.ways} builds with all that is wanted; its options weigh {build.weight}.',
  },
  which: {
    label: 'Which floor plans have all of it?',
    usual: true,
    results: ['yard.plans', 'models', 'finding.wishes-offered'],
    says: 'Floor plans that can be ordered so: {yard.plans}.',
  },
  since: {
    label: 'Since when is it standard, and why?',
    results: ['standard', 'trailer.dryWeight', 'finding.comes-anyway'],
    impliedBy: ['plan.year'],
  },
  choices: {
    label: 'How many choices are there?',
    results: ['plan.choices', 'plan.builds'],
    says: '{plan.choices} options may be chosen or left, in {plan.builds} different builds.',
  },
} satisfies Record<string, Asking>;
