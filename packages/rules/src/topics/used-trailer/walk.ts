import { part } from '../../engine/define/topic';
import {
  looked,
  titles,
  walkHouse,
  walkRule,
  wetMeter,
} from '../../trade/bibliography/used-trailer';

/**
 * When to walk away.
 *
 *     frame cracked · soft in more than one zone · title not clean · gas leaks and the seller shrugs
 *                                   └──────────► walk away
 */
export const walk = part({
  findings: {
    frame: {
      label: 'Frame',
      settles: true,
      askedBy: ['frame.state'],
      askedWhen: 'frame.isKnown',
      stop: [
        {
          when: "frame.isKnown && frame.state == 'cracked'",
          wrong: 'The frame is cracked.',
          because: 'It carries axles and coupler; what cracked once under load cracks on.',
          do: 'No price mends that.',
        },
        {
          when: "frame.isKnown && frame.state == 'rust-through'",
          wrong: 'The frame is rusted through.',
          because: 'What is seen is the least of it, and it does not carry a coupler or a spring.',
          do: 'Only a frame shop’s word in writing is worth a second look.',
        },
      ],
      care: {
        when: "frame.isKnown && frame.state == 'surface-rust'",
        wrong: 'The frame is rusty on its surface.',
        do: 'Try the worst spot with a screwdriver; brush and paint it before winter.',
      },
      otherwise: 'The frame is sound.',
      source: walkHouse,
    },
    'frame-untold': {
      label: 'Frame, not told',
      unknown: {
        when: '!frame.isKnown',
        wrong: 'Nobody told how the frame is, spring hangers first.',
        do: 'Look from beside it with a lamp; never under it on a jack.',
      },
      otherwise: 'The frame was looked at.',
      source: looked,
    },
    structure: {
      label: 'Floor and walls',
      stop: [
        {
          when: 'soft.isKnown && soft.zones > soft.most',
          wrong: 'It is soft in {soft.zones} zones.',
          because:
            'Water went from one to the other behind the skin, and nobody prices what nobody sees.',
          do: 'Thank the seller and go.',
        },
        {
          when: "moves.isKnown && structure.moves == 'yes'",
          wrong: 'A wall or corner moves when it is pushed.',
          because: 'What holds it together has rotted.',
          do: 'Thank the seller and go.',
        },
      ],
      unknown: {
        when: '!soft.isKnown',
        wrong: 'Nobody told whether floor and walls are soft.',
        do: 'Foot and flat hand in every corner, under windows, around the door.',
      },
      care: {
        when: 'soft.isKnown && soft.zones > soft.none',
        wrong: 'It is soft in one zone.',
        because: 'Behind it is more than is seen.',
        do: 'Have it opened or measured before you name a price.',
      },
      open: {
        wrong: 'Floor or walls may be soft in more than one zone.',
        do: 'Press every corner.',
      },
      otherwise: 'Floor and walls are firm.',
      source: walkRule,
    },
    water: {
      label: 'Water',
      askedBy: ['found.spots'],
      care: [
        {
          when: 'wet.spots > soft.none',
          wrong: '{wet.spots} of the spots are wet, over {wet.above} by the meter.',
          because: 'Wood that wet decays, and the leak is still open.',
          do: 'Find where it comes in before you name a price.',
        },
        {
          when: 'spots.count > soft.none',
          wrong: 'There are stains, bubbles or damage at {spots.count} spots.',
          because: 'A stain is where water was; a meter tells whether it still is.',
          do: 'Put a moisture meter on each of them.',
        },
      ],
      open: { wrong: 'Some of the spots may be wet.', do: 'Put a moisture meter on each.' },
      otherwise: 'No stain, bubble or damage was told.',
      source: wetMeter,
    },
    title: {
      label: 'Title',
      stop: [
        {
          when: "title.isKnown && title.state == 'none'",
          wrong: 'There is no title.',
          because: 'It may be stolen, or nobody’s to sell.',
          do: 'Come back when the state’s office has issued one in the seller’s name.',
        },
        {
          when: "title.isKnown && title.state == 'other-name'",
          wrong: 'The title is in another’s name.',
          because: 'Only its owner can sell it.',
          do: 'Buy only from the one who stands in it.',
        },
        {
          when: "title.isKnown && title.state == 'branded'",
          wrong: 'The title is branded.',
          because: 'It was a total loss once; insurers and lenders turn it down.',
          do: 'Thank the seller and go.',
        },
      ],
      unknown: {
        when: '!title.isKnown',
        wrong: 'Nobody has seen the title.',
        do: 'Ask for it first: it costs no ladder.',
      },
      if: {
        when: "title.isKnown && title.state == 'lien'",
        wrong: 'A lender still has a lien on it.',
        do: 'Pay the lender, not the seller, and no dollar before the release is in writing.',
        proviso: 'the lender’s release is in your hand before you pay',
      },
      otherwise: 'The title is clean.',
      source: titles,
    },
    gas: {
      label: 'Gas',
      askedBy: ['gas.tested'],
      stop: {
        when: "gas.isKnown && gas.tested == 'leaks' && mends.isKnown && gas.sellerMends == 'no'",
        wrong: 'The gas leaks, and the seller shrugs.',
        because: 'Who shrugs at that has shrugged at more.',
        do: 'Shut the cylinders, and go.',
      },
      unknown: {
        when: "gas.isKnown && gas.tested == 'leaks' && !mends.isKnown",
        wrong: 'The gas leaks, and nobody said who mends it.',
        do: 'Shut the cylinders; ask the seller to have it mended and tested first.',
      },
      care: {
        when: "gas.isKnown && gas.tested == 'leaks'",
        wrong: 'The gas leaks, and the seller has it mended.',
        do: 'Pay once a licensed shop has written that it holds.',
      },
      open: { wrong: 'The gas may leak.', do: 'Shut the cylinders until it is tested.' },
      otherwise: 'No leak of gas was told.',
      source: walkRule,
    },
  },
});
