import { ruleSet } from '../../engine/define/looked-at';
import { gather } from '../../engine/define/topic';
import { custom, insurers, manual } from '../../trade/bibliography/common';
import { chains, exposed, layers } from '../../trade/bibliography/theft-deterrence';
import { askings } from './askings';
import { called } from './called';
import { changes } from './changes';
import { dangers } from './dangers';
import { everybody } from './everybody';
import { exposure } from './exposure';
import { guard } from './guard';
import { how } from './how';
import { insured } from './insured';
import { measures } from './measures';
import { tracker } from './tracker';

const parts = [exposure, measures, guard, insured, tracker, dangers] as const;

/** How is it guarded where it stands, and what if it goes nevertheless? */
export const theftDeterrence = ruleSet({
  id: 'theft-deterrence',
  version: '5.0.0',
  title: 'Theft deterrence',
  question: 'How is the trailer guarded where it stands, and what is paid if it goes nevertheless?',
  facts: gather('facts', parts),
  parameters: gather('parameters', parts),
  tables: {},
  formulas: gather('formulas', parts),
  decisions: gather('decisions', parts),
  selections: gather('selections', parts),
  limits: {},
  findings: gather('findings', parts),
  outcomes: {
    ok: {
      id: 'well-guarded',
      words: 'well guarded',
      sentence: 'The trailer is guarded as it should be.',
    },
    if: { id: 'may-stand-so-if', words: 'may stand so if', sentence: 'The trailer may stand so' },
    care: {
      id: 'guard-it-better',
      words: 'guard it better',
      sentence: 'The trailer can be guarded better.',
    },
    stop: { id: 'not-so', words: 'not so', sentence: 'The trailer must not stand so.' },
    unknown: { id: 'cannot-say', words: 'cannot say', sentence: 'That cannot be said yet.' },
  },
  apart: {},
  tells: [
    {
      of: 'loan.gap',
      says: 'Stolen, {of} would still be owed after the policy has paid.',
      when: 'loan.hasGap',
    },
    {
      of: 'loan.overValue',
      says: 'More is owed than it is worth, by {of}; a policy that pays the value of the day leaves that.',
      when: 'loan.isOverValue',
    },
  ],
  headline: [
    'theft.exposure',
    'worth.all',
    'measures.cost',
    'policy.pays',
    'policy.shortfall',
    'loan.gap',
    'loan.overValue',
    'tracker.average',
    'tracker.lasts',
  ],
  assumptions: [
    {
      when: 'assumed.unhitched',
      says: 'It stands unhitched.',
      source: exposed,
    },
    {
      when: 'assumed.contents',
      says: 'Nothing of worth stays in it.',
      source: exposed,
    },
    {
      when: 'assumed.deductible',
      says: 'No deductible is counted; it would widen the gap.',
      source: insurers,
    },
  ],
  changes,
  askings,
  everybody,
  how,
  called,
  renamed: { 'stay.days': 'parked.days' },
  cautions: [
    {
      says: 'A lock only delays. Have a list of numbers, a policy of the trailer’s own, and someone who looks.',
      source: layers,
      fits: ['finding.held', 'finding.list-done'],
    },
    {
      says: 'Nothing may keep a door or an escape window from opening inside, nor shut the gas locker’s vents.',
      source: manual,
      fits: ['finding.exit-blocked', 'finding.gas-shut-in'],
    },
    {
      says: 'No lock replaces safety chains, latch pin or breakaway cable; every lock comes off before it moves.',
      source: chains,
      fits: ['finding.chains-replaced', 'finding.lock-on-the-road'],
    },
    {
      says: 'Do not stand in a thief’s way and do not follow: call the police, with the numbers.',
      source: custom,
      fits: ['finding.following', 'finding.trap'],
    },
    {
      says: 'Policy and insurer decide what is paid; this is advice, not law.',
      source: insurers,
      fits: ['finding.insurer', 'finding.agreed-short', 'finding.loan-gap', 'finding.not-insured'],
    },
  ],
});
