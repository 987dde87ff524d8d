import type { ForEverybody } from '../../engine/define/shapes';

const alone = 'the vehicle alone with the same people and fuel';
const twice = `Weigh twice, each axle by itself: hitched with the bars slack, and ${alone}.`;
const thrice = `Weigh three times, each axle by itself: hitched with the bars tight, hitched with them slack, and ${alone}.`;

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
      'Whoever has one ticket only takes the trailer’s axles for the least that it weighs, and a tongue scale for the rest.',
  },
  trailer: {
    rule: `${twice} The trailer is everything hitched, less the vehicle alone.`,
    because: 'What the trailer’s axles carry is not all of it: the tongue stands on the vehicle.',
    look: [],
    otherwise: 'Whoever has one ticket only knows that the trailer weighs more than its axles.',
  },
  bars: {
    rule: `${thrice} The bars are to bring {restored.least} to {restored.most} of the front axle’s loss back to it, or what the vehicle’s manual says.`,
    because: 'Too little leaves the steering light; more than was lost unloads the rear tires.',
    look: [],
    otherwise: 'Whoever is not sure has the bars set by a shop, and weighs again.',
  },
  payload: {
    rule: 'The vehicle with the tongue on it, weighed with slack bars, less its gross rating: what is left may still be loaded; and neither axle above its own rating.',
    because: 'The scale knows the options that no brochure counts.',
    look: [],
    otherwise:
      'Whoever has no ticket reads the door label and takes off everybody, the hitch and the tongue.',
  },
  sides: {
    rule: 'Each side carries half, and no more than {side.most} above it; the fullest wheel counts against its tire.',
    because: 'Kitchen, slide and batteries often stand on one side.',
    look: [],
    otherwise:
      'Whoever cannot weigh the sides packs heavy things low and in the middle, and leaves the tires room.',
  },
};
