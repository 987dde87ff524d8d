import { ruleSet } from '../../engine/define/looked-at';
import { gather } from '../../engine/define/topic';
import {
  dampWood,
  premiumEffect,
  shopBook,
  usualPremium,
} from '../../trade/bibliography/body-repair';
import { custom, house, manual, insurers as policyWording } from '../../trade/bibliography/common';
import { askings } from './askings';
import { called } from './called';
import { changes } from './changes';
import { claim } from './claim';
import { estimate } from './estimate';
import { everybody } from './everybody';
import { first } from './first';
import { how } from './how';
import { rates } from './rates';
import { writeOff } from './write-off';
import { byZone } from './zones';

const parts = [byZone, rates, estimate, claim, writeOff, first] as const;

/** What may the repair cost, is it to be claimed or paid for, and what comes first? */
export const bodyRepair = ruleSet({
  id: 'body-repair',
  version: '2.4.0',
  title: 'Body repair',
  question: 'What may the repair cost, is it cheaper claimed or paid for, and what comes first?',
  facts: gather('facts', parts),
  parameters: gather('parameters', parts),
  tables: {},
  wordTables: gather('wordTables', parts),
  formulas: gather('formulas', parts),
  decisions: gather('decisions', parts),
  selections: gather('selections', parts),
  limits: {},
  findings: gather('findings', parts),
  outcomes: {
    ok: {
      id: 'may-go-to-a-shop',
      words: 'may go to a shop',
      sentence: 'The trailer may go to a shop.',
    },
    if: {
      id: 'may-go-to-a-shop-if',
      words: 'may go to a shop if',
      sentence: 'The trailer may go to a shop',
    },
    care: {
      id: 'may-go-with-care',
      words: 'may go with care',
      sentence: 'The trailer may go to a shop, with care.',
      plain: 'The trailer may go to a shop',
    },
    stop: { id: 'not-yet', words: 'not yet', sentence: 'The trailer must not go on the road yet.' },
    unknown: { id: 'cannot-say', words: 'cannot say', sentence: 'That cannot be said yet.' },
  },
  apart: {},
  tells: [
    { of: 'cost.range', says: 'The repair may come to {of}; only a shop that has looked can say.' },
  ],
  headline: [
    'repair.hoursLow',
    'repair.hoursHigh',
    'repair.low',
    'repair.high',
    'cost.range',
    'claim.advice',
    'breakEven.range',
    'claim.gain',
    'writeOff.at',
    'writeOff.paid',
  ],
  assumptions: [
    {
      when: 'assumed.zones',
      says: 'Only the segments, areas and seams that were told are counted.',
      source: custom,
    },
    {
      when: 'assumed.rate',
      says: 'Where not told: a shop asks what shops hereabouts ask.',
      source: shopBook,
    },
    {
      when: 'assumed.premium',
      says: 'Where not told: the premium lies anywhere in the range that the house reckons with.',
      source: usualPremium,
    },
    {
      when: 'assumed.raise',
      says: 'Where not told: a claim is felt as the house reckons with it.',
      source: premiumEffect,
    },
  ],
  changes,
  askings,
  everybody,
  how,
  called,
  cautions: [
    {
      says: 'Never a promise: a shop must look, and only an opened wall tells what is behind it.',
      source: custom,
      fits: ['finding.claim', 'finding.quote-apart', 'finding.hidden-damage'],
    },
    {
      says: 'Photograph before anything is moved; keep what was taken off.',
      source: policyWording,
      fits: ['finding.photographs', 'finding.estimate'],
    },
    {
      says: 'Dry first: nothing is closed over damp wood.',
      source: dampWood,
      fits: ['finding.damp', 'finding.cover'],
    },
    {
      says: 'Frame, coupler, axle, brakes, gas and wiring come before any panel, each by its licensed or qualified trade; do not tow what is bent.',
      source: manual,
      fits: ['finding.services', 'finding.structure'],
    },
    {
      says: 'Up on a roof or below a raised trailer is no place to look alone; use stands, not the jack.',
      source: manual,
      fits: ['segments.roof', 'finding.structure'],
    },
    {
      says: 'Policy and insurer decide what is paid; this is advice on money, not on law.',
      source: policyWording,
      fits: ['finding.write-off', 'finding.release', 'finding.claims-before'],
    },
    {
      says: 'Hours, rates and shares here are the house’s own or invented; a written estimate wins.',
      source: house,
    },
  ],
});
