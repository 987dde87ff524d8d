import type { HowTo } from '../../engine/define/shapes';
import { custom, payloadLabel, tongueBand } from '../../trade/bibliography/common';
import { cargoLabel, makersRating } from '../../trade/bibliography/rig';

/** How the figures are found that decide. */
export const how: Readonly<Record<string, HowTo>> = {
  'read-a-door-label': {
    label: 'How a door label is read',
    steps: [
      'Open the driver’s door. The tire-and-loading label says what occupants and cargo should never exceed: that is the payload.',
      'Beside it the certification label gives the gross rating and one for each axle.',
      'Take off everybody, what is packed, the hitch and the whole loaded tongue.',
      'What was fitted after the factory comes off too; a label pasted over it says how much.',
    ],
    caution: 'A brochure’s payload is that of the barest vehicle: only the label counts.',
    source: payloadLabel,
  },
  'read-a-trailer-label': {
    label: 'How a trailer’s label is read',
    steps: [
      'The certification label at the left front gives the gross rating, that of each axle, and tires with their pressure.',
      'The cargo label by the entrance door says how much may be loaded into that very trailer.',
      'Gross rating less cargo is what it weighed as it left the factory, with its options.',
      'What the dealer or an owner added, a second battery or a rack, comes off the cargo.',
    ],
    caution:
      'Whether propane is counted differs from label to label: ask, and weigh it where it is close.',
    source: cargoLabel,
  },
  'read-a-hitch': {
    label: 'How receiver, ball mount and ball are read',
    steps: [
      'The receiver’s label has two lines: weight carried, and weight distributed with a hitch for that.',
      'Each line gives a trailer weight and a tongue weight; both count.',
      'The ball mount is stamped with both too; the ball with its size and its rating.',
      'The coupler is stamped with the size it takes. The lowest of all these rules.',
    ],
    caution: 'What cannot be read counts as not rated: replace it.',
    source: makersRating,
  },
  'weigh-a-tongue': {
    label: 'How a tongue is weighed',
    steps: [
      'Load the trailer as for the road, water and gas too, on level ground, wheels chocked.',
      'Set the coupler on a tongue scale at the height that it tows at, the jack off the ground.',
      'Divide it by what the loaded trailer weighs: from {tongue.leastShare} to {tongue.mostShare} is usual.',
      'Too little: move load ahead of the axles. Too much: less in front, never more behind.',
    ],
    caution: 'Do not go between or under while it stands on a jack.',
    source: tongueBand,
  },
  'look-at-it-before-buying': {
    label: 'How a vehicle is looked at before it is bought to tow',
    steps: [
      'Read the payload in the door and the tongue weight at the receiver; reckon with everybody aboard.',
      'In the manual: the tow rating for this engine and axle, whether weight distribution is allowed, and what it needs the tow package for.',
      'Have the tow package looked up by the identification number.',
      'See the seven-way connector and the brake controller, or ask what they cost fitted.',
    ],
    caution: 'A hitch, springs or tires fitted later raise no rating.',
    source: custom,
  },
};
