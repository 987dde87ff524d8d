import type { Asking } from '../../engine/define/shapes';

/** What people ask about a car behind a motorhome. */
export const askings = {
  most: {
    label: 'How much may I tow behind the motorhome?',
    results: ['towed.most', 'limit.combined', 'limit.gross'],
    impliedBy: ['vehicle.gcwr', 'motorhome.weighed'],
    says: [
      {
        when: 'gross.isOverAlone',
        says: 'Nothing may be towed so: the motorhome weighs {motorhome.weighed}, and its own gross rating is {vehicle.gvwr}.',
      },
      {
        when: 'gross.isOver',
        says: 'Nothing may be towed so: the motorhome comes to {motorhome.gross}, and its own gross rating is {vehicle.gvwr}.',
      },
      {
        when: 'towed.isOverIfFull',
        says: 'Not before the motorhome is weighed. At its gross rating only {towed.most} may be towed, and yours comes to {towed.all}.',
      },
      {
        when: 'towed.isNone',
        says: 'Nothing may be towed: the motorhome takes up the whole combined rating of {vehicle.gcwr}.',
      },
      { says: 'By the combined rating {towed.most} may be towed, dolly or trailer with it.' },
      {
        says: 'Of the combined rating of {vehicle.gcwr} all that the motorhome weighs as it rolls comes off. The rest may be towed, as the car’s own manual says.',
      },
      {
        says: 'What may be towed is the combined rating less the motorhome as it rolls, and how it may roll says the car’s own manual.',
      },
    ],
  },
  manner: {
    label: 'May this car roll on all four wheels?',
    results: ['finding.four-down', 'finding.dolly'],
    impliedBy: ['towed.fourDown', 'towed.dollyAllowed', 'towed.manner'],
    says: [
      {
        when: 'manual.isUnread',
        says: 'Whether all four wheels may roll its own manual says, and no kind of gearbox. Until you have read it, tow the car nowhere.',
      },
    ],
  },
  brake: {
    label: 'Does the car need a brake?',
    results: ['finding.brake'],
    impliedBy: ['towed.brake', 'carrier.brakes'],
  },
  bar: {
    label: 'Is the tow bar right?',
    results: ['finding.bar-level', 'limit.tow-bar'],
    impliedBy: ['towBar.rise', 'towBar.rating'],
  },
  before: {
    label: 'What do I look at before it moves?',
    results: ['round', 'finding.bar-level'],
  },
} satisfies Record<string, Asking>;
