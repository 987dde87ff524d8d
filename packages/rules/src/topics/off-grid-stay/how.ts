import type { HowTo } from '../../engine/define/shapes';
import { custom } from '../../trade/bibliography/common';
import { drains, manual, tankLabel } from '../../trade/bibliography/off-grid-stay';

/** How a stay without hookups is found out, stretched and ended. */
export const how: Readonly<Record<string, HowTo>> = {
  'measure-a-day': {
    label: 'How the water of a day is measured',
    steps: [
      'Fill the fresh tank, empty the gray one, and live a weekend as you would out there.',
      'Two evenings apart read both gauges, or count the gallons that fill the tank again.',
      'Half of that is a day. What the gray tank gained of it is the share that goes down the sink.',
    ],
    caution: 'Gauges show thirds and stick: the gallons at the filler are what counts.',
    source: drains,
  },
  'stretch-the-water': {
    label: 'How water is stretched',
    steps: [
      'Wash dishes once a day in a basin, and carry it to the dump.',
      'Wet, water off, soap, water on again; or the site’s showers.',
      'A jug of drinking water in the fridge, one more as the reserve for the last day.',
      'A tote of {stretch.tote} to the dump station keeps everybody where they are.',
    ],
    caution:
      'Never onto the ground, gray water included. Never less to drink, and never less for medical use.',
    source: custom,
  },
  'carry-a-tote': {
    label: 'How a tote is filled and emptied',
    steps: [
      'Set it lower than the valve, hose on and cap off so that air gets out.',
      'Open the valve a little, stay beside it, and shut it before the tote is full.',
      'Rinse hose and hands; tow it at walking pace, on its own wheels, only where the site allows it.',
    ],
    caution: 'Gloves, and no drinking-water hose. A full tote weighs as much as a grown person.',
    source: custom,
  },
  'keep-the-battery': {
    label: 'How the battery gets through the nights',
    steps: [
      'Park where the panels see the sun from nine to three, and wipe them.',
      'Inverter off while nothing runs on it; fridge on gas if it can.',
      'Generator or tow vehicle in the morning, when the battery takes the most, outdoors and downwind.',
      'Look at the monitor before sleeping: what is left above the stop line is the night’s.',
    ],
    caution:
      'Medical devices and the furnace’s blower stay on; everything else goes off before them.',
    source: custom,
  },
  'go-home-light': {
    label: 'How the tanks are left for the way home',
    steps: [
      'Dump black first, then gray, at the station nearest to the stay.',
      'Drain what fresh water is left, unless the road has none.',
      'Valves shut, caps on; then look at tongue and tires as for the way there.',
    ],
    caution:
      'A gray tank behind the axles takes weight off the ball: a trailer that came well may sway home.',
    source: manual,
  },
  'read-a-tank': {
    label: 'How a tank’s size is found',
    steps: [
      'Look at the label by the filler, the sticker in the cabinet, or the brochure of that very model.',
      'Of two gray tanks take the one that sink and shower really fill.',
      'In doubt fill it once with a meter on the hose.',
    ],
    caution: 'A tank filled to the brim on the road is a load: count it before you tow.',
    source: tankLabel,
  },
};
