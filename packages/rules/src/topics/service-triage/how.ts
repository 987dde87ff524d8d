import type { HowTo } from '../../engine/define/shapes';
import { alarms, custom, signs } from '../../trade/bibliography/service-triage';

/** How the things are done that a service desk tells people to do. */
export const how = {
  'read-hubs': {
    label: 'How hubs are read',
    steps: [
      'After a stretch of steady driving stop without leaning on the brakes, off the road.',
      'At once point the thermometer at the same spot of every hub, from a hand’s width away.',
      'Write each down with its wheel: left front, right front, left rear, right rear.',
      'Look at the difference first: {hub.stopFrom} between two of them is stop; so is {hub.hotStop} on any.',
    ],
    caution:
      'Do not touch a hub with the hand: what sizzles burns. Kneel on the side away from traffic.',
    source: custom,
  },
  'quiet-an-alarm': {
    label: 'How a chirping alarm is quieted',
    steps: [
      'Make sure that it only chirps, once in a while; one that sounds without stopping means out, then call.',
      'Put in a fresh battery of the kind printed inside; an alarm on the trailer’s 12 volts wants that battery charged.',
      'Hold its test button until it sounds.',
      'Read the date on its back: past it the whole alarm is replaced, however well it tests.',
    ],
    caution:
      'Never sleep in it with an alarm taken down. A headache that goes away outdoors is carbon monoxide.',
    source: alarms,
  },
  'shut-off-the-site': {
    label: 'How the power at a site is shut off',
    steps: [
      'Everybody keeps off the trailer, steps and tongue included.',
      'With dry shoes on dry ground and one dry hand, switch off the breaker at the post; if the post is wet, have the park do it.',
      'Then unplug the cord at the post.',
      'Leave it unplugged and tell the park not to plug it in for you.',
    ],
    caution: 'Anyone who cannot let go is not touched: breaker first, then the emergency number.',
    source: signs,
  },
  'look-for-a-recall': {
    label: 'How a recall is looked up',
    steps: [
      'Read the identification number from the label at the left front of the trailer.',
      'Type it into the government’s recall site, then look at the makers of axles, tires, refrigerator and furnace too.',
      'Print or photograph what it says with its number and date.',
    ],
    caution: 'A recall that says not to drive or not to use is obeyed before anything else.',
    source: custom,
  },
} satisfies Record<string, HowTo>;
