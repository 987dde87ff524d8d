import { defineTopic, gather } from '../../engine/define/topic';
import { custom, insurers, manual } from '../../trade/bibliography/common';
import { chains, exposed, layers } from '../../trade/bibliography/theft-deterrence';
import { changes } from './changes';
import { dangers } from './dangers';
import { exposure } from './exposure';
import { guard } from './guard';
import { insured } from './insured';
import { measures } from './measures';
import { tracker } from './tracker';

const parts = [exposure, measures, guard, insured, tracker, dangers] as const;

/** How is it guarded where it stands, and what if it goes nevertheless? */
export const theftDeterrence = defineTopic({
  id: 'theft-deterrence',
  version: '1.0.0',
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
    ok: { id: 'well-guarded', words: 'well guarded', sentence: 'It is guarded as it should be.' },
    if: {
      id: 'well-guarded-if',
      words: 'well guarded if',
      sentence: 'It is guarded as it should be',
    },
    care: {
      id: 'guard-it-better',
      words: 'guard it better',
      sentence: 'It can be guarded better.',
    },
    stop: { id: 'not-so', words: 'not so', sentence: 'Not so.' },
    unknown: { id: 'cannot-say', words: 'cannot say', sentence: 'That cannot be said yet.' },
  },
  apart: {},
  headline: [
    'worth.all',
    'measures.cost',
    'policy.pays',
    'policy.shortfall',
    'loan.gap',
    'tracker.average',
    'tracker.lasts',
  ],
  assumptions: [
    {
      when: 'assumed.unhitched',
      says: 'It stands unhitched.',
      source: exposed,
    },
  ],
  changes,
  cautions: [
    {
      says: 'A lock only delays; who wants it badly enough takes it. So the list, the policy, and someone who looks.',
      source: layers,
    },
    {
      says: 'Nothing may keep a door or an escape window from opening inside, nor shut the gas locker’s vents.',
      source: manual,
    },
    {
      says: 'No lock replaces safety chains, latch pin or breakaway cable; every lock comes off before it moves.',
      source: chains,
    },
    {
      says: 'Stand in nobody’s way and follow nobody: police, with the numbers.',
      source: custom,
    },
    {
      says: 'Policy and insurer decide what is paid; this sheet is advice, not law.',
      source: insurers,
    },
  ],
});
