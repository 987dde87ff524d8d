import type { HowTo } from '../../engine/define/shapes';
import {
  antifreezeCustom,
  frostCustom,
  heaterCustom,
  ownNight,
} from '../../trade/bibliography/cold-weather';
import { manual } from '../../trade/bibliography/common';

/** How things are done in the cold. */
export const how: Readonly<Record<string, HowTo>> = {
  'drain-it': {
    label: 'How it is drained before a frost',
    steps: [
      'Water heater first: element and burner off, let it cool, open a hot faucet to take the pressure off, then pull its plug.',
      'Pump and city water off; open the fresh tank’s drain and the low-point drains.',
      'Open every faucet, hot and cold, the shower, the outlet outside, and flush the toilet until nothing comes.',
      'Run the pump for a few seconds to empty its head, and close nothing.',
      'Empty gray and black tanks at a dump station; leave the valves working with a little antifreeze in them.',
    ],
    caution:
      'A hot water heater under pressure scalds. Drained is not winterized: traps, pump and low bends stay wet.',
    source: frostCustom,
  },
  'winterize-it': {
    label: 'How it is winterized',
    steps: [
      'Drain it, and set the water heater’s bypass; without it the antifreeze fills the heater.',
      'By air: a regulator set below {blowout.most}, faucets opened one after another, the farthest first, until only air comes.',
      'Or by antifreeze: of propylene glycol, for drinking water, drawn in by the pump until every faucet, shower and toilet runs its color.',
      'A cup of it into each trap, and the rest into the gray and black tanks, for their valves’ seals.',
      'Do not forget the outlet outside, the washer, the ice maker and the filter housing, filter out.',
      'Tag the water heater’s switch: element off until it is full again.',
    ],
    caution:
      'Only antifreeze of propylene glycol made for drinking water. That for engines is poison.',
    source: antifreezeCustom,
  },
  'wake-it-up': {
    label: 'How it is woken in the spring',
    steps: [
      'Flush the lines with fresh water until no color and no foam comes.',
      'Plug in, bypass back, fill the water heater until water comes from a hot faucet, and only then element or burner on.',
      'Pump on and listen: one that starts again while nothing is open means a drip. Look under sinks, behind toilet and heater.',
      'Sanitize the fresh tank as its maker says, and flush it.',
    ],
    caution: 'An element that comes on in a dry heater burns out at once.',
    source: heaterCustom,
  },
  'a-night-of-your-own': {
    label: 'How a night of your own is measured',
    steps: [
      'In the evening weigh the cylinder in use; nothing but the furnace burns until morning.',
      'Write down the hours, the temperature inside, and that outside on average.',
      'In the morning weigh it again: the difference is the gas of that night.',
    ],
    caution: 'Valve shut and hose off to weigh; test the joint with leak solution afterwards.',
    source: ownNight,
  },
  'keep-the-furnace-safe': {
    label: 'How the furnace is kept safe in snow',
    steps: [
      'Clear snow and ice from its intake and its exhaust outside, and again after every fall or drift.',
      'Keep its return air free of clothes and boxes.',
      'Leave a roof vent a little open, even in the cold.',
      'Press the test buttons of both alarms every evening.',
    ],
    caution:
      'A blocked exhaust fills the trailer with carbon monoxide, which has no smell. Alarm: everybody out, then call.',
    source: manual,
  },
  'more-battery-in-the-cold': {
    label: 'How the battery gets through cold nights',
    steps: [
      'Take a site with shore power; the converter then turns the blower.',
      'Else charge every day: a generator for some hours, outdoors and downwind, or the tow vehicle.',
      'Else carry a second battery of the same kind, size and age, side by side.',
      'Everything else on the battery goes off before the heat does.',
    ],
    caution: 'Never charge LiFePO₄ with cells below freezing, nor a frozen lead battery.',
    source: frostCustom,
  },
};
