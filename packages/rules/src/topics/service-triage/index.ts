import { ruleSet } from '../../engine/define/looked-at';
import { gather } from '../../engine/define/topic';
import { custom, recalls, warrantyBooklet } from '../../trade/bibliography/service-triage';
import { paper } from '../../trade/papers/paper';
import { askings } from './askings';
import { called } from './called';
import { danger } from './danger';
import { everybody } from './everybody';
import { how } from './how';
import { hubs } from './hubs';
import { softTires } from './soft-tire';
import { telling } from './telling';
import { trouble } from './trouble';

const parts = [danger, trouble, hubs, softTires, paper, telling] as const;

/** Something is wrong with it: stop, nearest shop, dealer, or the owner’s own hands? */
export const serviceTriage = ruleSet({
  id: 'service-triage',
  version: '4.0.2',
  title: 'Service triage',
  question:
    'Something is wrong with it: stop now, drive carefully to the nearest shop, book with the dealer, or see to it yourself?',
  facts: gather('facts', parts),
  parameters: gather('parameters', parts),
  tables: {},
  formulas: gather('formulas', parts),
  decisions: gather('decisions', parts),
  selections: gather('selections', parts),
  simulations: gather('simulations', parts),
  limits: {},
  findings: gather('findings', parts),
  outcomes: {
    ok: {
      id: 'see-to-it-yourself',
      words: 'see to it yourself',
      sentence: 'You may see to it yourself, by the manual, with power and gas off.',
    },
    if: {
      id: 'need-not-stop-if',
      words: 'need not stop if',
      sentence: 'You need not stop for that',
    },
    care: {
      id: 'have-it-seen-to',
      words: 'have it seen to',
      sentence: 'Have it seen to by someone qualified.',
    },
    stop: { id: 'stop-now', words: 'stop now', sentence: 'Stop now.' },
    unknown: {
      id: 'cannot-say',
      words: 'cannot say',
      sentence: 'That cannot be said yet; what could hurt somebody is asked first.',
    },
  },
  apart: {},
  headline: [
    'triage.path',
    'alarm.means',
    'hub.apart',
    'hub.warmest',
    'tire.share',
    'warranty.left',
  ],
  assumptions: [],
  askings,
  everybody,
  how,
  called,
  cautions: [
    {
      says: 'Gas smelled or an alarm sounding: everybody out, no switch, no flame, then call.',
      source: custom,
      fits: ['finding.smell', 'finding.alarm', 'finding.danger-untold'],
    },
    {
      says: 'Anything smelled, hot or loose on the road is stop; a phone call costs less than a wheel.',
      source: custom,
      fits: ['finding.soft-tire'],
    },
    {
      says: 'Stop only where you stand safely: off the lane, warning lights on, everybody behind the rail.',
      source: custom,
      fits: ['finding.hubs', 'finding.hub-limit'],
    },
    {
      says: 'Gas, 120 volts, brakes, frame and coupling are for licensed or qualified people.',
      source: custom,
      fits: ['finding.trouble', 'finding.danger'],
    },
    {
      says: 'Go under a trailer only on stands on firm ground, with its wheels chocked, and hitched where the manual says so.',
      fits: ['hub.readings', 'hub.hottest', 'tire.softest'],
      source: custom,
    },
    {
      says: 'Look up open recalls by the identification number; they are mended free of charge.',
      source: recalls,
      fits: ['finding.recall', 'finding.warranty'],
    },
    {
      says: 'Told by phone, this is advice and no inspection; the maker’s manual and the mechanic on the spot win.',
      source: warrantyBooklet,
    },
  ],
});
