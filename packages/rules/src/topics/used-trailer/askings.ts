import type { Asking } from '../../engine/define/shapes';
import { leaking } from './seen';

const ended = 'No price makes up for what was found.';
const railFirst =
  'Neither pay nor tow it before a frame shop has found the rail behind the cracked spring hanger whole.';
/** What people ask about a used trailer. */
export const askings = {
  look: {
    label: 'What do I look at, and in which order?',
    results: ['round'],
    says: 'Then corners, roof, soft floors, gas by a shop, electrics, brakes, dates, and the scale.',
  },
  cost: {
    label: 'What must be spent before the first trip?',
    results: ['first.cost', 'offer.most', 'finding.price'],
    impliedBy: ['price.asked', 'price.dry'],
    says: [
      { when: 'walk.isOn', says: ended },
      { when: 'gas.isLeaking', says: leaking },
      { when: 'rail.isOpen', says: railFirst },
      {
        says: 'Before the first trip count {first.cost}: for bearings, brakes, the seals of the roof, and what was found.',
      },
      {
        says: 'As it stands it is worth {offer.most}: a dry and sound one, less bearings, brakes, roof seals and what was found.',
      },
    ],
  },
  walk: {
    label: 'Do I walk away?',
    results: ['verdict'],
    impliedBy: ['frame.state', 'soft.zones', 'structure.moves', 'title.state', 'gas.tested'],
    says: [
      { when: 'walk.isOn', says: ended },
      { when: 'gas.isLeaking', says: leaking },
      {
        when: 'walk.isOff',
        says: 'You need not walk away: nothing found in frame, floor, walls or title ends it; the rest is a price.',
      },
      { when: 'rail.isOpen', says: railFirst },
      {
        says: 'Walk away from a cracked frame, soft zones, a title branded, missing or another’s, and leaking gas that the seller shrugs at.',
      },
    ],
  },
  dates: {
    label: 'Are cylinders and alarms within their dates?',
    results: ['finding.dates'],
    impliedBy: [
      'cylinder.stampYear',
      'cylinders.dates',
      'alarm.gasAge',
      'alarm.monoxideAge',
      'alarm.gasReplaceBy',
      'alarm.monoxideReplaceBy',
    ],
  },
} satisfies Record<string, Asking>;
