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
      noun: 'what it hangs on',
      ask: 'What does the new part hang on or stand on?',
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
      ask: 'What is that holder rated to carry?',
      where: 'label on it, or the trailer’s maker in writing',
    },
    'addon.moves': {
      kind: 'yes-no',
      label: 'It hangs on an arm or moves with the road',
      noun: 'whether it hangs on an arm or moves with the road',
      ask: 'Does the new part hang out on an arm, or bounce and swing with the road?',
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
    'mount.isUnrated': {
      label: 'Nobody has rated what holds it',
      unit: 'yes-no',
      is: '!known(mount.rating)',
      source: makersRating,
    },
    'mount.isAsked': {
      label: 'What holds it is asked',
      unit: 'yes-no',
      is: "given(addon.heldBy) || addon.kind == 'bicycle-rack'",
      source: makersRating,
    },
    'mount.isBare': {
      label: 'It hangs on a bumper or ladder',
      unit: 'yes-no',
      is: "addon.heldBy == 'bumper' || addon.heldBy == 'ladder'",
      source: makersRating,
    },
    'mount.isFixed': {
      label: 'It is fixed to wall, roof, frame, A-frame or receiver',
      unit: 'yes-no',
      is: "(!given(addon.heldBy) && addon.kind == 'air-conditioner') || (given(addon.heldBy) && (addon.heldBy == 'wall' || addon.heldBy == 'roof' || addon.heldBy == 'frame' || addon.heldBy == 'a-frame' || addon.heldBy == 'receiver'))",
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
      do: 'Hang less there, or have a mount rated for more fitted to the frame.',
      near: 'Hang nothing more there.',
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
      stop: {
        when: 'mount.isAsked && mount.isBare && mount.isUnrated',
        wrong: 'A bumper or ladder carries nothing unless its maker has rated it for that.',
        because:
          'It was made to look complete or to climb on, every bump counts what hangs there more than once, and it lands in front of the next car.',
        do: 'Have a rated receiver fitted to the frame, or leave it.',
      },
      if: {
        when: 'mount.isFixed && mount.isUnrated',
        wrong: 'What may be carried at that place is not known yet.',
        because: 'Thin skin, a rafter or a tube that was never meant to carry lets go on the road.',
        do: 'Ask the trailer’s maker in writing before anything is fixed to it.',
        proviso: 'the trailer’s maker says in writing that it may be fitted there',
      },
      otherwise: 'The new part stands on the floor, or what holds it has a rating.',
      open: {
        wrong: 'What is to hold the addition is not known yet.',
        because:
          'A receiver on the frame may be rated for it; a bumper or ladder without a rating carries nothing.',
        do: 'Look what holds it, and read what that is rated to carry, before it is hung there.',
      },
      source: makersRating,
    },
  },
});
