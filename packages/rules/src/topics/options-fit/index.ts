import { yard } from 'virtual:yard';
import { bringingCatalogues } from '../../engine/answer/bringing-catalogues';
import { ruleSet } from '../../engine/define/looked-at';
import { gather } from '../../engine/define/topic';
import { custom } from '../../trade/bibliography/common';
import {
  catalogueOfTheYard,
  dryWeightMeans,
  orderSheet,
} from '../../trade/bibliography/options-fit';
import { askings } from './askings';
import { called } from './called';
import { changes } from './changes';
import { everybody } from './everybody';
import { orderFacts } from './facts';
import { how } from './how';
import { offers } from './offers';
import { listedTrailer, rig, rigLimits } from './rig';

const parts = [orderFacts, rig, offers, listedTrailer, rigLimits] as const;

/** Can this floor plan be ordered as the buyer wants it, and what does that do to the rig? */
export const optionsFit = ruleSet({
  id: 'options-fit',
  version: '6.0.0',
  title: 'Models and options',
  question:
    'Can this floor plan be ordered as the buyer wants it, what comes along, and what does the build weigh behind the vehicle?',
  facts: gather('facts', parts),
  parameters: gather('parameters', parts),
  tables: {},
  formulas: gather('formulas', parts),
  limits: gather('limits', parts),
  findings: gather('findings', parts),
  decisions: gather('decisions', parts),
  catalogues: bringingCatalogues({ yard }),
  outcomes: {
    ok: {
      id: 'can-be-ordered',
      words: 'can be ordered',
      sentence: 'The build can be ordered as wanted.',
    },
    if: {
      id: 'can-be-ordered-if',
      words: 'can be ordered if',
      sentence: 'The build can be ordered as wanted',
    },
    care: {
      id: 'can-be-ordered-with-care',
      words: 'can be ordered with care',
      sentence: 'The build can be ordered as wanted, with care.',
      plain: 'The build can be ordered as wanted',
    },
    stop: {
      id: 'not-as-wanted',
      words: 'not as wanted',
      sentence: 'The build does not work as wanted.',
    },
    unknown: { id: 'cannot-say', words: 'cannot say', sentence: 'That cannot be said yet.' },
  },
  apart: {},
  headline: [
    'wishes.count',
    'wishes.met',
    'yard.plans',
    'plan.choices',
    'plan.builds',
    'build.ways',
    'build.brought',
    'build.weight',
    'trailer.dryWeight',
    'trailer.loaded',
    'trailer.room',
    'tongue.loaded',
    'payload.used',
    'payload.available',
  ],
  assumptions: [],
  changes,
  askings,
  everybody,
  how,
  called,
  cautions: [
    {
      says: 'These weights are from a made-up sample list. Before you order, the dealer’s order sheet of that very model year decides.',
      source: catalogueOfTheYard,
    },
    {
      says: 'Order before you promise: options end with a model year, and what is on the lot may be last year’s.',
      source: orderSheet,
      fits: ['finding.plan-sold'],
    },
    {
      says: 'The dry weight counts standard equipment and no options; the label of that very trailer, and a scale, win over this sum.',
      source: dryWeightMeans,
      fits: ['finding.comes-anyway'],
    },
    {
      says: 'Never exceed the lowest-rated part of vehicle, hitch and trailer. Read the vehicle’s own labels before you order.',
      source: custom,
      fits: [
        'limit.trailer-weight',
        'limit.tongue',
        'limit.payload',
        'limit.combined',
        'finding.tongue-share',
        'finding.tongue-negative',
      ],
    },
    {
      says: 'Gas and electrical options are fitted by the factory or by licensed hands; this is advice, not approval.',
      source: custom,
    },
  ],
});
