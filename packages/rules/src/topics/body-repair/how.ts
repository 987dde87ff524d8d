import type { HowTo } from '../../engine/define/shapes';
import { dampWood } from '../../trade/bibliography/body-repair';
import { custom, insurers } from '../../trade/bibliography/common';

/** How a panel is replaced and sealed, and what an owner does before that. */
export const how = {
  'replace-a-panel': {
    label: 'How a panel is replaced',
    steps: [
      'Measured, photographed and ordered by its number; the trim comes off first and is kept.',
      'Of a riveted body the rivets of that segment are drilled out and it is lifted off; a laminated wall is cut back to sound board or comes off whole.',
      'What is behind it is looked at, measured for moisture, dried and mended before anything is closed.',
      'The new one is fitted dry, then bedded in butyl or bonded, riveted or screwed by the maker’s pattern.',
      'Trim, lights and moldings go back with new sealant, and the whole seam is hosed from below upward for ten minutes with somebody inside.',
    ],
    caution:
      'Gas and wiring behind it are made safe first, by licensed people. It is a shop’s work on stands, not one for a ladder alone.',
    source: custom,
  },
  'seal-after-it': {
    label: 'How a seam is sealed afterward',
    steps: [
      'Old sealant off with a plastic scraper, the metal wiped clean and dry.',
      'Butyl tape under flanges and moldings, screwed until it squeezes out all along, then trimmed.',
      'The sealant that the maker names over edge and screw heads; on a roof the self-leveling kind, on walls the kind that stays.',
      'A look after the first rain, after a month, then twice a year.',
    ],
    caution: 'Household silicone keeps everything else from sticking there, forever.',
    source: custom,
  },
  'measure-damp': {
    label: 'How damp wood is measured',
    steps: [
      'A pin meter, set to wood, in several places: at the damage, a foot below it, at the floor’s edge, and at a dry wall for comparison.',
      'The wettest counts; write it down with its place and the day.',
      'Dry with moving air from inside, open below, and measure again in the same places.',
      'Closed only when the wettest is under {moisture.most}.',
    ],
    caution: 'Cord and battery off before pins go into a wall that has wires.',
    source: dampWood,
  },
  'photograph-it': {
    label: 'How damage is photographed',
    steps: [
      'All four sides from afar, then the damage with something for size, then close up.',
      'Inside behind it and below it, cupboards empty; the floor’s edge; underneath.',
      'Identification number, tires and odometer of the vehicle, the road or the tree.',
      'Before anything is moved, dried or thrown away; send them to yourself the same day.',
    ],
    caution: 'On the road: behind the rail first. Never lie under a trailer on a jack.',
    source: insurers,
  },
} satisfies Record<string, HowTo>;
