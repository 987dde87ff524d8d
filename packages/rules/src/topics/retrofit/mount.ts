import { part } from '../../engine/define/topic';
import { custom, partsRating as makersRating } from '../../trade/bibliography/common';
import { movingLoad } from '../../trade/bibliography/retrofit';

/** What holds it: a bumper without a rating carries nothing, and what moves counts more. */
export const mount = part({
  facts: {
    'addon.heldBy': {
      kind: 'choice',
      options: ['floor', 'wall', 'roof', 'frame', 'a-frame', 'receiver', 'bumper', 'ladder'],
      label: 'What holds it',
      ask: 'What does it hang on or stand on?',
      where: 'a look at the place',
      means:
        'A receiver is one that the trailer’s maker fitted to the frame; a tube on a bumper is a bumper.',
    },
    'mount.rating': {
      kind: 'quantity',
      unit: 'lb',
      least: 0,
      most: 5_000,
      exact: true,
      label: 'Rating of what holds it',
      noun: 'the rating of what holds it',
      ask: 'What is that rated to carry there?',
      where: 'label on it, or the trailer’s maker in writing',
    },
    'addon.moves': {
      kind: 'yes-no',
      label: 'It hangs on an arm or moves with the road',
      noun: 'whether it hangs on an arm or moves with the road',
      ask: 'Does it hang out on an arm, or bounce and swing with the road?',
      where: 'a look at it',
      silent: {
        value: 'no',
        says: 'It stands still on what holds it.',
        source: custom,
        quiet: true,
      },
    },
  },
  parameters: {
    'mount.moving': {
      label: 'How much more a moving load counts than a standing one',
      unit: '',
      values: [{ from: '2020-01-01', value: 1.5 }],
      range: [1.2, 3],
      source: movingLoad,
    },
  },
  formulas: {
    'mount.isRated': {
      label: 'What holds it has a rating',
      unit: 'yes-no',
      is: 'known(mount.rating)',
      source: makersRating,
    },
    'mount.moves': {
      label: 'It counts as a moving load',
      unit: 'yes-no',
      is: "addon.moves == 'yes' || addon.heldBy == 'receiver' || addon.heldBy == 'bumper' || addon.heldBy == 'ladder'",
      source: movingLoad,
    },
    'mount.load': {
      label: 'Load on what holds it',
      noun: 'the load on what holds it',
      unit: 'lb',
      is: '(addon.weight + addon.carries) * choose(mount.moves, mount.moving, 1)',
      source: movingLoad,
    },
  },
  limits: {
    mount: {
      label: 'What holds it',
      short: 'what holds it',
      used: 'mount.load',
      limit: 'mount.rating',
      margin: 'margin.other',
      askedBy: ['mount.rating'],
      source: makersRating,
    },
  },
  findings: {
    unrated: {
      label: 'Rating of what holds it',
      askedBy: ['addon.heldBy'],
      stop: {
        when: {
          all: [
            { fact: 'addon.heldBy', operator: 'in', value: ['bumper', 'ladder'] },
            { fact: 'mount.isRated', operator: 'equal', value: 'no' },
          ],
        },
        wrong: 'A bumper or ladder without a rating carries nothing.',
        do: 'It was made to look complete or to climb on, and what hangs there lands on the road. Have a rated receiver fitted to the frame, or leave it.',
      },
      care: {
        when: {
          all: [
            {
              fact: 'addon.heldBy',
              operator: 'in',
              value: ['wall', 'roof', 'frame', 'a-frame', 'receiver'],
            },
            { fact: 'mount.isRated', operator: 'equal', value: 'no' },
          ],
        },
        wrong: 'Nobody has said what it may carry there.',
        do: 'Ask the trailer’s maker in writing before anything is fixed to it.',
      },
      otherwise: 'It stands on the floor, or what holds it has a rating.',
      open: {
        wrong: 'Look what holds it, and what that is rated to carry, before it is hung there.',
      },
      source: makersRating,
    },
  },
});
