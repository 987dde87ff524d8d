import { part } from '../../engine/define/topic';
import {
  looked,
  titles,
  walkHouse,
  walkRule,
  wetMeter,
} from '../../trade/bibliography/used-trailer';
import { leaking } from './seen';

/**
 * When to walk away.
 *
 *     frame cracked · soft in more than one zone · title branded, missing or another’s ·
 *     gas leaks and the seller shrugs
 *                                   └──────────► walk away
 *
 *     spring hanger cracked ── rail behind it: not looked at ─► cannot be said yet
 *                                              whole, by a shop ─► a price
 *                                              cracked ─► the frame is
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
          do: 'Thank the seller and go.',
        },
        {
          when: "hanger.isCracked && rail.isKnown && frame.railWhole == 'no'",
          wrong: 'The crack has run from the spring hanger into the rail: the frame is cracked.',
          because: 'It carries axles and coupler; what cracked once under load cracks on.',
          do: 'Thank the seller and go.',
        },
      ],
      unknown: {
        when: 'rail.isOpen',
        wrong:
          'A spring hanger is cracked, and whether the rail behind it is cracked too is not known yet.',
        because:
          'A hanger alone is a repair; a crack that has run into the rail is one of the frame.',
        do: 'Have a frame shop look before any money changes hands, and do not tow it until then.',
      },
      otherwise: 'The frame’s rails are not cracked.',
      source: walkRule,
    },
    hanger: {
      label: 'Spring hanger',
      askedBy: ['frame.state'],
      askedWhen: 'frame.isKnown',
      care: {
        when: 'hanger.isCracked',
        wrong:
          'A spring hanger is cracked: do not tow the trailer before a frame shop has welded or replaced it.',
        because: 'It holds the axle in its place.',
        do: 'Have the other hangers looked at too.',
      },
      otherwise: 'No spring hanger is told to be cracked by itself.',
      source: walkHouse,
    },
    'frame-rust': {
      label: 'Rust of the frame',
      askedBy: ['frame.state'],
      askedWhen: 'frame.isKnown',
      stop: {
        when: "frame.isKnown && frame.state == 'rust-through'",
        wrong: 'The frame is rusted through.',
        because: 'What is seen is the least of it, and it does not carry a coupler or a spring.',
        do: 'Thank the seller and go.',
      },
      care: {
        when: "frame.isKnown && frame.state == 'surface-rust'",
        wrong: 'The frame is rusty on its surface.',
        do: 'Try the worst spot with a screwdriver; brush and paint it before winter.',
      },
      otherwise: 'The frame is not rusty.',
      source: walkHouse,
    },
    'frame-untold': {
      label: 'Frame, not told',
      unknown: {
        when: '!frame.isKnown',
        wrong: 'How the frame is, spring hangers first, is not known yet.',
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
          wrong: 'The trailer is soft in {soft.zones} places.',
          because:
            'Water went from one to the other behind the skin, and what is not seen cannot be priced.',
          do: 'Thank the seller and go.',
        },
      ],
      unknown: {
        when: '!soft.isKnown',
        wrong: 'Whether floor and walls are soft is not known yet.',
        do: 'Foot and flat hand in every corner, under windows, around the door.',
      },
      care: {
        when: 'soft.isKnown && soft.zones > soft.none',
        wrong: 'The trailer is soft in one place.',
        because: 'Behind it is more than is seen.',
        do: 'Have it opened or measured before you name a price.',
      },
      open: {
        wrong: 'Floor or walls may be soft in more than one zone.',
        do: 'Press every corner.',
      },
      otherwise: 'Nothing soft was found in floor and walls.',
      source: walkRule,
    },
    'structure-moves': {
      label: 'Walls and corners, pushed',
      askedBy: ['structure.moves'],
      stop: {
        when: "moves.isKnown && structure.moves == 'yes'",
        wrong: 'A wall or corner moves when it is pushed.',
        because: 'What holds it together has rotted.',
        do: 'Thank the seller and go.',
      },
      unknown: {
        when: '!moves.isKnown',
        wrong: 'Whether a wall or corner moves when it is pushed is not known yet.',
        because: 'One that moves has rotted behind its skin.',
        do: 'Push each with both hands, inside and out.',
      },
      otherwise: 'No wall or corner moves when it is pushed.',
      source: walkHouse,
    },
    water: {
      label: 'Water',
      saidOpen: true,
      askedBy: ['found.spots'],
      care: [
        {
          when: 'wet.spots > soft.none',
          wrong: '{wet.spots} of the spots are wet, over {wet.above} by the meter.',
          because: 'Wood that wet decays, and the leak is still open.',
          do: 'Find where the water comes in before you name a price.',
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
          because: 'It may be stolen, or not the seller’s to sell.',
          do: 'Come back with a title in the seller’s name, or with the office’s word in writing that none is issued for such a trailer.',
        },
        {
          when: "title.isKnown && title.state == 'number-differs'",
          wrong: 'The number on the frame is not the one on the title.',
          because:
            'Nothing tells more plainly of a stolen trailer, or of a title that is not its own.',
          do: 'Pay nothing and go; the police or the state’s office look the number up.',
        },
        {
          when: "title.isKnown && title.state == 'other-name'",
          wrong: 'The title is in another’s name.',
          because: 'Only its owner can sell it.',
          do: 'Buy from the one who stands in it, or see the paper that lets him sell: a dealer’s reassignment, a court’s letter for an estate, a power of attorney.',
        },
        {
          when: "title.isKnown && title.state == 'branded'",
          wrong: 'The title is branded.',
          because:
            'It carries a brand, such as salvage, flood, rebuilt or buyback; many insurers and lenders turn it down.',
          do: 'Thank the seller and go.',
        },
      ],
      unknown: {
        when: '!title.isKnown',
        wrong: 'The title has not been seen yet.',
        do: 'Ask for it first: it costs no ladder.',
      },
      if: [
        {
          when: "title.isKnown && title.state == 'lien'",
          wrong: 'A lender still has a lien on it.',
          do: 'Get the payoff amount in writing from the lender. That money goes to the lender, the rest to the seller against the release, at the lender’s counter or through escrow.',
          proviso: 'the lender is paid first, the seller only against its release',
        },
        {
          when: "title.isKnown && title.state == 'other-name-with-paper'",
          wrong: 'The title is in another’s name, and the seller has a paper that lets him sell.',
          do: 'Have the state’s office confirm that paper before you pay.',
          proviso: 'the state’s office confirms the paper that lets him sell',
        },
        {
          when: "title.isKnown && title.state == 'state-issues-none'",
          wrong: 'It has no title, as its state is said to issue none for such a trailer.',
          because:
            'Several states title no light, small or old trailers; a stolen one is told of so too.',
          do: 'Ask the state’s office whether that is so and whether debt or theft is on the number; take registration and a bill of sale with that number.',
          proviso:
            'the state’s office confirms that it issues no title for it, and that no debt or theft is on its number',
        },
      ],
      otherwise: 'The title is clean.',
      source: titles,
    },
    gas: {
      label: 'Gas',
      first: true,
      askedBy: ['gas.tested'],
      stop: {
        when: "gas.isKnown && gas.tested == 'leaks' && mends.isKnown && gas.sellerMends == 'no'",
        wrong: 'The gas leaks, and the seller shrugs.',
        because: 'Who shrugs at that has shrugged at more.',
        do: 'Shut the cylinders, and go.',
      },
      unknown: {
        when: 'gas.isLeaking',
        wrong: leaking,
        because: 'One spark is enough.',
        do: 'Shut the cylinders, let nobody light or switch anything, and pay nothing before a licensed shop has written that it holds.',
      },
      care: {
        when: "gas.isKnown && gas.tested == 'leaks'",
        wrong: 'The gas leaks, and the seller has it mended.',
        do: 'Keep the cylinders shut until then, and pay once a licensed shop has written that it holds.',
      },
      open: { wrong: 'The gas may leak.', do: 'Shut the cylinders until it is tested.' },
      otherwise: 'No leak of gas was told.',
      source: walkRule,
    },
  },
});
