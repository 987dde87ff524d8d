import type { Called } from '../../engine/define/shapes';

/** What people call these things when they write or phone. */
export const called: Called = {
  topic: [
    'used trailer',
    'used camper',
    'a used',
    'second hand',
    'secondhand',
    'pre-owned',
    'private seller',
    'before I buy',
    'look at before buying',
    'walk away',
    'inspect a trailer',
  ],
  facts: {
    'title.state': ['no title', 'lien', 'salvage title', 'bill of sale only', 'branded title'],
    'label.state': ['sticker missing', 'label painted over', 'no weight sticker'],
    'frame.state': ['frame rust', 'cracked frame', 'rusted frame', 'spring hanger'],
    'axle.wear': ['worn on one side', 'inside edge worn', 'bent axle'],
    'soft.zones': ['soft floor', 'soft spot', 'spongy', 'soft wall', 'floor gives'],
    'structure.moves': ['wall moves', 'corner moves'],
    'found.spots': ['water stain', 'bubbles', 'delamination', 'delam', 'bubbling'],
    'gas.tested': ['gas leak test', 'propane tested'],
    'electrics.tested': ['electrics untested', 'never plugged in'],
    'price.asked': ['wants for it', 'listed at', 'asking price'],
    'price.dry': ['others go for', 'like ones cost', 'comparable ones'],
  },
  options: {
    'title.state': {
      clean: ['clean title', 'title in hand'],
      lien: ['lien', 'still owes on it', 'loan on it'],
      branded: ['salvage title', 'branded title', 'rebuilt title'],
      'other-name': ['title in another name', 'not in his name'],
      'other-name-with-paper': ['power of attorney', 'dealer reassignment', 'estate sale'],
      'number-differs': ['number does not match', 'VIN does not match', 'different VIN'],
      'state-issues-none': ['state does not title', 'no titles here', 'too old for a title'],
      none: ['no title', 'lost title', 'bill of sale only'],
    },
    'frame.state': {
      sound: ['frame is solid', 'no rust'],
      'surface-rust': ['surface rust', 'light rust'],
      'rust-through': ['rusted through', 'holes in the frame'],
      cracked: ['cracked frame', 'crack in the frame'],
    },
    'gas.tested': {
      holds: ['holds pressure', 'passed the leak test'],
      leaks: ['leaks gas', 'failed the leak test'],
      untested: ['not tested', 'never tried the gas'],
    },
  },
};
