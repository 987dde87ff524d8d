import { part } from '../../engine/define/topic';
import { statics } from '../../trade/bibliography/common';
import { evenBody, yawHouse, yawInertia } from '../../trade/bibliography/sway';

/** A place, or anywhere in the trailer: the square of how far it is from the axles. */
const squared = (place: string): string =>
  `choose(known(${place}), ${place} * ${place}, yaw.unplaced)`;
const ofRows = (list: string): string => `sum(${list}.weight * ${squared(`${list}.ahead`)})`;
const ofTank = (water: string): string => `${water} * water.density * ${squared(`${water}Ahead`)}`;

/**
 * Weight at the ends: it counts with the square of its way from the axles, on whichever side.
 *
 *     rack                 axles                 box
 *      ├───── 12 ft ─────────┼─────── 12 ft ───────┤     two of 150 lb: the share stays right,
 *      150 · 12²                           150 · 12²     and the trailer swings like a dumbbell
 *
 * Set against the empty trailer’s own, taken as an even bar of its length without the A-frame. What
 * nobody placed may ride at the farther end: axles stand behind the middle of most bodies.
 */
export const yaw = part({
  parameters: {
    'yaw.frame': {
      label: 'Length of an A-frame',
      noun: 'the length of an A-frame',
      unit: 'ft',
      values: [{ from: '2020-01-01', value: 3.5 }],
      range: [2, 6],
      source: yawHouse,
    },
    'yaw.evenBar': {
      label: 'Divisor of an even bar’s moment of inertia',
      unit: '',
      values: [{ from: '2020-01-01', value: 12 }],
      source: evenBody,
    },
    'yaw.reachShare': {
      label: 'How far the farther end of a body lies from the axles, of its length, at the most',
      noun: 'how far the farther end lies from the axles',
      unit: '1',
      values: [{ from: '2020-01-01', value: 0.6 }],
      range: [0.6, 0.8],
      source: yawHouse,
    },
    'yaw.careAbove': {
      label: 'What load may add to the resistance to turning before it is a care',
      noun: 'what load may add',
      unit: '%',
      values: [{ from: '2020-01-01', value: 30 }],
      range: [15, 30],
      source: yawHouse,
    },
  },
  formulas: {
    'yaw.body': {
      label: 'Length of the trailer’s body',
      noun: 'the body’s length',
      unit: 'ft',
      is: 'max(0, trailer.length - yaw.frame)',
      source: yawHouse,
    },
    'yaw.unplaced': {
      label: 'Square of the way from the axles, of what nobody placed in the body',
      unit: 'ft²',
      is: 'between(0, yaw.reach * yaw.reach)',
      source: statics,
    },
    'yaw.reach': {
      label: 'From the axles to the farther end of the body; untold, a share of its length',
      noun: 'from the axles to the farther end of the body',
      unit: 'ft',
      is: 'choose(known(trailer.ballToAxle), max(0, trailer.ballToAxle - yaw.frame, trailer.length - trailer.ballToAxle), yaw.body * yaw.reachShare)',
      within: ['0', 'unlimited'],
      source: yawHouse,
    },
    'yaw.empty': {
      label: 'Resistance to turning, empty',
      noun: 'the empty trailer’s resistance to turning',
      unit: 'lb·ft²',
      is: 'trailer.unloaded * yaw.body * yaw.body / yaw.evenBar',
      source: evenBody,
    },
    'yaw.added': {
      label: 'Resistance to turning that the load adds',
      noun: 'what the load adds to it',
      unit: 'lb·ft²',
      is: `${ofRows('trailer.cargo')} + ${['trailer.freshWater', 'trailer.grayWater', 'trailer.blackWater'].map(ofTank).join(' + ')} + trailer.propane * ${squared('trailer.propaneAhead')}`,
      source: yawInertia,
    },
    'yaw.share': {
      label: 'What the load adds to the resistance to turning, of the empty trailer’s',
      noun: 'what the load adds to the empty trailer’s resistance to turning',
      unit: '%',
      is: 'yaw.added / yaw.empty',
      source: yawInertia,
    },
  },
  findings: {
    'far-ends': {
      label: 'Weight at the ends',
      askedByKnown: ['trailer.length', 'trailer.dryWeight'],
      care: {
        when: 'yaw.share > yaw.careAbove',
        wrong:
          'Weight at the ends adds {yaw.share} to the resistance to turning; care begins at {yaw.careAbove}.',
        because:
          'Once it swings it swings for longer, however right the tongue’s share is: a load in front balances one behind on the scale, not on the road.',
        do: 'Bring heavy things from both ends just ahead of the axles, and weigh the tongue again.',
      },
      open: {
        wrong: 'Weight may ride far from the axles.',
        because: 'It counts with the square of its distance, in front and behind alike.',
        do: 'Tell where the heavy things ride, racks and boxes first.',
      },
      otherwise: 'What is loaded rides near enough to the axles.',
      source: yawHouse,
    },
  },
});
