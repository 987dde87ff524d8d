import type { HowTo } from '../../engine/define/shapes';
import { custom, partsRating } from '../../trade/bibliography/common';
import { camperLabel, zoneDrawing } from '../../trade/bibliography/truck-camper';

/** How the things are done that decide whether a camper belongs on a truck. */
export const how = {
  'read-the-labels': {
    label: 'How the truck’s and the camper’s labels are read',
    steps: [
      'In the driver’s door: what occupants and cargo together may never exceed, and the ratings of the axles.',
      'In the truck’s camper papers: the cargo weight rating, which already leaves {seat.allowance} for each belted seat, and the drawing of the zone.',
      'By the camper’s door: its weight, and below it the water, gas and refrigerator that this weight contains.',
      'Add to it only what the label does not contain: options, cargo, more water, more gas.',
    ],
    caution:
      'A label belongs to that very truck or camper; a brochure’s figure and a neighbor’s label do not.',
    source: camperLabel,
  },
  'find-the-center': {
    label: 'How the center of gravity is found over the truck',
    steps: [
      'Find the mark on both sides of the camper; its papers say where it is when it has been painted over.',
      'Set the camper down in the empty bed, wheels chocked, and drop a plumb line from the mark.',
      'Measure to the middle of the rear wheel, ahead or behind, or forward to the inside of the headboard: the sheet draws its zone from there.',
      'Do the same sum for everything heavy that rides in it: weight times distance.',
    ],
    caution: 'Never reach or lie under a camper that hangs on its jacks.',
    source: zoneDrawing,
  },
  'load-it': {
    label: 'How a camper is loaded and tied down',
    steps: [
      'Jacks on firm level ground, evenly, as its manual says; back the truck in slowly with someone watching both sides. Stop as soon as a jack leans or sinks.',
      'Lower it onto the mat until the jacks hang free, then draw the tie-downs by the maker’s figure, crosswise.',
      'Plug in, try every light, and lock the doors and vents.',
      'After the first ten miles draw the tie-downs again; weigh both axles at the first public scale.',
    ],
    caution:
      'Stand clear of the gap between truck and camper, with no one inside while it is lifted or lowered.',
    source: partsRating,
  },
  'drive-it': {
    label: 'How a truck with a camper is driven',
    steps: [
      'Know its height, write it on the dash, and add what stands on the roof.',
      'Brake early, take bends and ramps slowly, and slow down in side wind.',
      'Tires at the pressure for this load, cold; look at them at every stop.',
    ],
    caution: 'Springs, bags and bars level the truck; they raise no rating.',
    source: custom,
  },
} satisfies Record<string, HowTo>;
