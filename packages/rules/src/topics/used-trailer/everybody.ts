import type { ForEverybody } from '../../engine/define/shapes';

/** What is said to all who ask about a used trailer and told next to nothing. */
export const everybody: Readonly<Record<string, ForEverybody>> = {
  cost: {
    rule: 'Before the first trip have bearings, brakes and the seals of the roof looked after on any used trailer. Tires past their years, a dead battery and all that is found come on top.',
    because: 'What the last owner left undone is paid for by the next.',
    look: [],
    fromTold: [
      {
        says: 'Whether {price.asked} is right waits: frame, floor and title are looked at first, then what must be spent before the first trip.',
      },
    ],
    otherwise:
      'If you do not know, have a shop look before you pay, and take its estimate off the price.',
  },
  dates: {
    rule: 'Read three dates: on the collar of each cylinder, and on the labels of gas alarm and carbon monoxide alarm. A cylinder past its date is tested anew before it is filled; an alarm is replaced.',
    because: 'An alarm past its years may stay silent, though its lamp is lit.',
    look: [],
    otherwise: 'If you cannot read a date, count it as past.',
  },
  any: {
    rule: 'Walk away from a cracked frame, from more than one soft zone, and from a title that is branded, missing or another’s. Walk away from gas that leaks while the seller shrugs.',
    because: 'All else has a price that a shop can name; these have none that holds.',
    look: ['frame.state'],
    given: {
      'soft.zones': '0',
      'title.state': 'clean',
      'gas.tested': 'holds',
      'electrics.tested': 'works',
      'brakes.tested': 'work',
    },
    givenSays:
      'for firm floors and walls, a clean title, and gas, electrics and brakes tested, where not told',
    clauses: {
      'frame.state': {
        sound: 'the frame is sound',
        'surface-rust': 'it is rusty on its surface',
        'rust-through': 'it is rusted through',
        'hanger-cracked': 'a spring hanger is cracked',
        cracked: 'it is cracked',
      },
    },
    fromTold: [
      {
        says: 'Whether {price.asked} is right waits: frame, floor and title are looked at first, then what must be spent before the first trip.',
      },
    ],
    otherwise:
      'If you are not sure, leave the money at home, and come again with a moisture meter and somebody who knows.',
  },
};
