import { yard } from 'virtual:yard';
import { part } from '../../engine/define/topic';
import { catalogueOfTheYard, orderSheet, propositions } from '../../trade/bibliography/options-fit';

// Not taken apart: what a pattern reads, a bundler must take for something that may have an effect.
const firstPlan = Object.keys(yard.models)[0] ?? '';

/**
 * Whether the buyer's wishes can be ordered on that floor plan in that model year.
 *
 *     wishes ─► each offered? ─► all together? ─► what comes along ─► builds left
 */
export const offers = part({
  formulas: {
    'plan.sold': {
      label: 'The floor plan is sold in that model year',
      unit: 'yes-no',
      is: 'sold(yard)',
      source: catalogueOfTheYard,
    },
    'plan.isOpen': {
      label: 'No one floor plan is meant',
      unit: 'yes-no',
      is: '!known(plan.name)',
      source: catalogueOfTheYard,
    },
    'wishes.count': {
      label: 'Options wanted',
      unit: '',
      is: 'wishes(yard)',
      source: orderSheet,
    },
    'wishes.met': {
      label: 'Of them offered on that floor plan in that year',
      noun: 'the wishes that are offered',
      unit: '',
      is: 'wishesMet(yard)',
      source: catalogueOfTheYard,
    },
    'wishes.missing': {
      label: 'Of them not offered there and then',
      noun: 'the wishes that are not offered',
      unit: '',
      is: 'wishesMissing(yard)',
      source: catalogueOfTheYard,
    },
    'wishes.allOffered': {
      label: 'Everything wanted is offered, each by itself',
      unit: 'yes-no',
      is: 'wishes.missing == 0',
      source: catalogueOfTheYard,
    },
    'wishes.imposed': {
      label: 'Options wanted left out that come with it',
      unit: '',
      is: 'imposed(yard)',
      source: catalogueOfTheYard,
    },
    'wishes.imposedAny': {
      label: 'Something wanted left out comes with it',
      unit: 'yes-no',
      is: 'wishes.imposed > 0',
      source: catalogueOfTheYard,
    },
    'wishes.clash': {
      label: 'Everything is offered, and not together',
      unit: 'yes-no',
      is: 'clash(yard)',
      source: propositions,
    },
    'build.brought': {
      label: 'Options that what is wanted brings along, at the least',
      unit: '',
      is: 'brought(yard)',
      source: propositions,
    },
    'build.bringsMore': {
      label: 'What is wanted brings other options along',
      unit: 'yes-no',
      is: 'build.brought > 0',
      source: propositions,
    },
    'plan.choices': {
      label: 'Options that may be chosen or left',
      noun: 'the options to choose from',
      unit: '',
      is: 'choices(yard)',
      source: catalogueOfTheYard,
    },
    'plan.builds': {
      label: 'Different builds of that floor plan and year',
      noun: 'all builds',
      unit: '',
      is: 'buildsInAll(yard)',
      source: propositions,
    },
    'build.ways': {
      label: 'Builds that have all that is wanted',
      noun: 'the builds with all that is wanted',
      unit: '',
      is: 'builds(yard)',
      source: propositions,
    },
    'yard.plans': {
      label: 'Floor plans that can be ordered so in that year',
      unit: '',
      is: 'modelsOrderable(yard)',
      source: propositions,
    },
    'yard.isEmpty': {
      label: 'No floor plan at all can be ordered so',
      unit: 'yes-no',
      is: 'plan.isOpen && yard.plans <= 0',
      source: propositions,
    },
  },
  findings: {
    'none-orderable': {
      label: 'Any floor plan at all',
      first: true,
      stop: {
        when: 'yard.isEmpty',
        wrong: 'No floor plan can be ordered with all of it.',
        because: 'One of the wishes, or something it needs, rules another out.',
        do: 'Give up one of them, or ask of another model year.',
      },
      stopOpen: 'care',
      open: {
        wrong: 'Perhaps no floor plan can be ordered with all of it.',
        do: 'Read the list of floor plans.',
      },
      otherwise: 'Some floor plan can be ordered so, or one was named.',
      source: propositions,
    },
    'plan-chosen': {
      label: 'One floor plan is meant',
      unknown: {
        when: `plan.isOpen && plan.name != '${firstPlan}'`,
        wrong: 'Which floor plan is meant was not told.',
      },
      otherwise: 'One floor plan is meant.',
      open: {
        wrong: 'Which floor plan is meant was not told; {yard.plans} of them can be ordered so.',
        do: 'The list names them; each is reckoned by itself.',
      },
      source: catalogueOfTheYard,
    },
    'plan-sold': {
      label: 'Floor plan and model year',
      stop: {
        when: '!plan.sold',
        wrong: 'That floor plan is not sold in that model year.',
        do: 'Look at another year, or at another floor plan.',
      },
      open: {
        wrong: 'Whether it is sold at all hangs on floor plan and model year.',
        do: 'Read both from the order sheet.',
      },
      otherwise: 'The floor plan is sold in that model year.',
      source: catalogueOfTheYard,
    },
    'wishes-offered': {
      label: 'Each wish is offered',
      stop: {
        when: '!wishes.allOffered',
        wrong: 'Not offered on that floor plan in that model year: {against}.',
        do: 'Give it up, or take a floor plan or a year that has it; the lists say which.',
      },
      open: {
        wrong: 'Whether everything wanted is offered hangs on floor plan and model year.',
        do: 'The list of floor plans says which of them have it all.',
      },
      otherwise: 'Everything wanted is offered, each by itself.',
      source: catalogueOfTheYard,
    },
    'wishes-together': {
      label: 'The wishes go together',
      stop: {
        when: 'wishes.clash',
        wrong: 'Each is offered, but not together: {against}.',
        because: 'One of them, or something it needs, rules another out.',
        do: 'Give up one of them.',
      },
      open: {
        wrong: 'Whether the wishes go together hangs on floor plan and model year.',
        do: 'The list of floor plans says on which of them they do.',
      },
      otherwise: 'No wish rules another out.',
      source: propositions,
    },
    'brought-along': {
      label: 'What comes along',
      care: {
        when: 'build.bringsMore',
        wrong: 'What is wanted, or the floor plan itself, needs options that were not asked for.',
        because: 'They are in the list and in the weight.',
        do: 'Tell the buyer before ordering.',
      },
      otherwise: 'Nothing has to be ordered beside what is wanted.',
      open: {
        wrong: 'Something may come along that was not asked for.',
        do: 'Read on the order sheet what comes along, before you order.',
      },
      source: propositions,
    },
    'comes-anyway': {
      label: 'Standard, wanted or not',
      care: {
        when: 'wishes.imposedAny',
        wrong: 'Something the buyer wants left out is standard in that model year.',
        because: 'It comes with it, and is in the dry weight.',
        do: 'Tell the buyer, and take nothing off the weight.',
      },
      otherwise: 'Nothing comes with it that was wanted left out.',
      open: { wrong: 'Something wanted left out may come with it.' },
      source: catalogueOfTheYard,
    },
  },
});
