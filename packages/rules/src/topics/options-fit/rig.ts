import type { Fact, Finding } from '../../engine/define/shapes';
import { part } from '../../engine/define/topic';
import { standingOn } from '../../engine/formula/standing-on';
import { custom, weights } from '../../trade/bibliography/common';
import { catalogueOfTheYard, dryWeightMeans } from '../../trade/bibliography/options-fit';
import { asReckoned } from '../../trade/rig/as-reckoned';
import { emptyOver } from '../../trade/rig/empty-over';
import { rigTrade } from '../../trade/rig/index';

/** The rig, asked and reckoned as for towing; what the catalogue knows of the trailer is not asked. */
const towing = standingOn(
  rigTrade,
  'trailer.loaded',
  'trailerWeight.limit',
  'tongue.loaded',
  'tongue.share',
  'tongue.lowEdge',
  'tongue.highEdge',
  'tongue.limit',
  'payload.used',
  'payload.available',
  'combined.gross',
  'combined.limit',
  'combined.empty',
  'tongue.stopEdge',
  'tongue.isKnown',
  'tongue.mayBeMore',
  'trailerWeight.mayBeMore',
  'vehicle.curb',
  'permission.isKnown',
  'distribution.isTold',
);

const listed = [
  'trailer.dryWeight',
  'trailer.gvwr',
  'trailer.dryTongueWeight',
  'trailer.ballToAxle',
  'trailer.propane',
  'trailer.coupling',
] as const;

/** The same facts without some; which are left the compiler knows. */
function without<F extends object, Id extends keyof F>(facts: F, ids: readonly Id[]): Omit<F, Id>;
function without(facts: object, ids: readonly PropertyKey[]): object {
  return Object.fromEntries(Object.entries(facts).filter(([id]) => !ids.includes(id)));
}

const asked = without(towing.facts, listed);

/** The rows that are typed in stand beside those of the order, and must not repeat them. */
const beyondTheOrder: Fact = {
  ...rigTrade.facts['trailer.options'],
  label: 'Added beyond the order sheet',
  noun: 'the options of the build',
  ask: 'What did dealer or owner add that is on no order sheet, with its weight and place?',
  where: 'told by the buyer; what is wished for above is counted already',
  silent: { value: 'none', says: 'Nothing added beyond the order sheet.', source: custom },
};

const facts = { ...asked, 'trailer.options': beyondTheOrder };

export const rig = {
  ...towing,
  facts,
  parameters: {
    ...towing.parameters,
    'tongue.none': rigTrade.parameters['tongue.none'],
    'margin.towRating': rigTrade.parameters['margin.towRating'],
    'margin.other': rigTrade.parameters['margin.other'],
    'margin.least': rigTrade.parameters['margin.least'],
  },
};

const figure = (label: string, noun: string, unit: string, name: string) => ({
  label,
  noun,
  unit,
  is: `figure(yard, ${name})`,
  source: catalogueOfTheYard,
});

/**
 * What the catalogue says of the trailer, under the names by which towing asks for it; the options
 * of the build are rows of `trailer.options`, after those that somebody typed in.
 *
 *     dry weight of that year ─┼─ options of the build ─┼─ cargo, water, gas ─►  trailer.loaded
 */
export const listedTrailer = part({
  formulas: {
    'trailer.dryWeight': figure('Dry weight', 'the dry weight', 'lb', 'dryWeight'),
    'trailer.dryTongueWeight': figure(
      'Dry tongue weight',
      'the dry tongue',
      'lb',
      'dryTongueWeight',
    ),
    'trailer.gvwr': figure('Trailer GVWR', 'the trailer’s GVWR', 'lb', 'gvwr'),
    'trailer.ballToAxle': figure(
      'Ball to axle center',
      'the distance from ball to axle',
      'ft',
      'ballToAxle',
    ),
    'trailer.propane': figure('Propane, cylinders full', 'the propane', 'lb', 'propane'),
    'plan.isFifthWheel': {
      label: 'It rides in a fifth-wheel hitch',
      unit: 'yes-no',
      is: 'figure(yard, fifthWheel) > 0',
      source: catalogueOfTheYard,
    },
    'onPin.someOver': {
      label: 'No one floor plan is meant, and some are over the pin’s tow rating empty',
      unit: 'yes-no',
      is: 'plan.isOpen && known(vehicle.maxFifthWheel) && may(trailer.dryWeight > vehicle.maxFifthWheel)',
      source: catalogueOfTheYard,
    },
    'onBall.someOver': {
      label: 'No one floor plan is meant, and some are over the tow rating empty',
      unit: 'yes-no',
      is: 'plan.isOpen && known(vehicle.maxTrailerWeight) && may(trailer.dryWeight > vehicle.maxTrailerWeight)',
      source: catalogueOfTheYard,
    },
    'build.loaded': {
      label: 'The build, loaded; where no one floor plan is meant, no figure',
      noun: 'the loaded trailer',
      unit: 'lb',
      is: 'choose(plan.isOpen, between(0, unlimited), trailer.loaded)',
      source: weights,
    },
    'build.tongue': {
      label: 'Its tongue, loaded; where no one floor plan is meant, no figure',
      noun: 'the tongue',
      unit: 'lb',
      is: 'choose(plan.isOpen, between(-unlimited, unlimited), tongue.loaded)',
      source: weights,
    },
    'build.weight': {
      label: 'Weight of the build’s options',
      noun: 'the options of the build',
      unit: 'lb',
      is: 'sum(trailer.options.weight)',
      source: dryWeightMeans,
    },
    'trailer.room': {
      label: 'Left for cargo and water once options and gas are aboard',
      noun: 'what is left for cargo and water',
      unit: 'lb',
      is: 'trailer.gvwr - trailer.dryWeight - build.weight - trailer.propane',
      source: weights,
    },
  },
  decisions: {
    'trailer.coupling': {
      label: 'Coupling',
      hit: 'unique',
      on: ['plan.isFifthWheel'],
      rows: [
        { when: ['yes'], gives: 'fifth-wheel' },
        { when: ['no'], gives: 'ball' },
      ],
      results: {
        ball: { label: 'ball', says: 'It rides on a ball.' },
        'fifth-wheel': { label: 'fifth-wheel', says: 'It rides in a fifth-wheel hitch.' },
      },
      source: catalogueOfTheYard,
    },
  },
});

/** Once a tow vehicle is spoken of, none of its limits may be left out. */
const spokenOf = [
  'vehicle.maxTrailerWeight',
  'vehicle.maxFifthWheel',
  'vehicle.maxTongueCarried',
  'vehicle.placardPayload',
  'vehicle.gcwr',
];

/** The catalogue knows the dry tongue, so that nobody's telling it asks. */
const always = ({ askedBy: _, ...finding }: Finding): Finding => finding;

/** Nothing is loaded yet: what is too heavy is ordered otherwise. */
const lighter = {
  do: 'Leave out options or load, or choose a lighter floor plan.',
  near: 'Leave out what you can do without: little is left.',
} as const;

/** What the build does to the rig. */
export const rigLimits = part({
  formulas: {
    'bars.areForbidden': {
      label: 'Bars are meant, and the vehicle’s maker does not allow them',
      unit: 'yes-no',
      is: "known(hitch.distribution, vehicle.distributionAllowed) && hitch.distribution == 'yes' && vehicle.distributionAllowed == 'no'",
      source: custom,
    },
  },
  limits: {
    'trailer-gross': { ...rigTrade.limits['trailer-gross'], ...lighter },
    'trailer-weight': { ...rigTrade.limits['trailer-weight'], ...lighter, askedBy: spokenOf },
    tongue: { ...asReckoned(rigTrade.limits.tongue), ...lighter, askedBy: spokenOf },
    payload: { ...asReckoned(rigTrade.limits.payload), ...lighter, askedBy: spokenOf },
    combined: { ...rigTrade.limits.combined, ...lighter },
  },
  findings: {
    'empty-over': emptyOver,
    'distribution-allowed': {
      ...rigTrade.findings['distribution-allowed'],
      first: true,
      // On a pin there would be no bars; which coupling it is hangs on the floor plan.
      unknown: {
        when: 'bars.areForbidden',
        wrong: 'The vehicle’s maker does not allow a weight-distributing hitch, and one is meant.',
        because: 'Its body is not made for the moment that the bars put into it.',
        do: 'Leave the bars off, and order only what it may tow without them.',
      },
    },
    'rating-open': {
      label: 'Each floor plan against what may be pulled',
      first: true,
      unknown: [
        {
          when: 'onPin.someOver',
          wrong:
            'Some floor plans weigh more, empty, than the {vehicle.maxFifthWheel} it may pull on a pin.',
          do: 'Order none by this list alone: name one, and it is held against that rating.',
        },
        {
          when: 'onBall.someOver',
          wrong:
            'Some floor plans weigh more, empty, than the {vehicle.maxTrailerWeight} it may pull.',
          do: 'Order none by this list alone: name one, and it is held against that rating.',
        },
      ],
      otherwise: 'One floor plan is meant, or none is too heavy empty.',
      source: catalogueOfTheYard,
    },
    'tongue-share': always(rigTrade.findings['tongue-share']),
    'tongue-negative': always(rigTrade.findings['tongue-negative']),
  },
});
