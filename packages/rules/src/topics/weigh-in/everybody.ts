import type { ForEverybody } from '../../engine/define/shapes';

const alone = 'the vehicle alone with the same people and fuel';
const twice = `Weigh twice, each axle by itself: hitched with the bars slack, and ${alone}.`;
const thrice = `Weigh three times, each axle by itself. First hitched with tight bars, then hitched with slack bars, then ${alone}.`;

/** What is said to all who ask how a rig is weighed and told next to nothing. */
export const everybody: Readonly<Record<string, ForEverybody>> = {
  tongue: {
    rule: `${twice} The tongue is what the vehicle’s axles carry with slack bars, less what they carry alone.`,
    because: 'Tight bars hide a part of the tongue on the trailer’s own axles.',
    look: [],
    worked: {
      says: 'Axles of {slack.front} and {slack.rear} hitched, {alone.front} and {alone.rear} alone: the tongue weighs {tongue.weighed}.',
      given: {
        'slack.front': '2,860 lb',
        'slack.rear': '4,060 lb',
        'slack.trailer': '4,980 lb',
        'alone.front': '3,100 lb',
        'alone.rear': '3,160 lb',
        'alone.sameLoad': 'yes',
        'scale.step': '20 lb',
      },
    },
    otherwise:
      'If you have one ticket only, count the trailer’s axles as the least it weighs. Weigh the tongue on a tongue scale.',
  },
  trailer: {
    rule: `${twice} The trailer is everything hitched, less the vehicle alone.`,
    because: 'What the trailer’s axles carry is not all of it: the tongue stands on the vehicle.',
    look: [],
    otherwise:
      'If you have one ticket only, the trailer weighs more than the ticket shows on its axles.',
  },
  bars: {
    rule: `${thrice} The bars are to bring back {restored.least} to {restored.most} of the front axle’s loss, or what the manual says.`,
    because: 'Too little leaves the steering light; more than was lost unloads the rear tires.',
    look: [],
    otherwise: 'If you are not sure, have a shop set the bars, and weigh again.',
  },
  payload: {
    rule: 'Weigh the vehicle hitched, with slack bars, and take that from its gross rating: the rest may still be loaded. Neither axle may go above its own rating.',
    because: 'The scale knows the options that no brochure counts.',
    look: [],
    otherwise:
      'If you have no ticket, read the door label and take off everybody, the hitch and the tongue.',
  },
  sides: {
    rule: 'Each side carries half, and no more than {side.most} above it; the fullest wheel counts against its tire.',
    because: 'Kitchen, slide and batteries often stand on one side.',
    look: [],
    otherwise:
      'If you cannot weigh the sides, pack heavy things low and in the middle, and stay well below what the tires carry.',
  },
};
