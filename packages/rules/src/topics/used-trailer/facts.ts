import type { ChoiceFact } from '../../engine/define/shapes';
import { part } from '../../engine/define/topic';
import { looked } from '../../trade/bibliography/used-trailer';

const choice = <const O extends readonly string[]>(
  options: O,
  label: string,
  noun: string,
  ask: string,
  where: string,
) => ({ kind: 'choice', options, label, noun, ask, where }) as const satisfies ChoiceFact;

const money = { kind: 'quantity', unit: 'USD', least: 0, most: 1_000_000 } as const;
const eyes = 'seen by whoever looks at it';

/** What is looked at on a used trailer, in order of walking round. */
export const usedFacts = part({
  facts: {
    'title.state': choice(
      [
        'clean',
        'lien',
        'branded',
        'other-name',
        'other-name-with-paper',
        'number-differs',
        'state-issues-none',
        'none',
      ],
      'Title',
      'the title',
      'Is the title clean and in the seller’s name, or has it a lien, a brand, another name?',
      'the title itself, its number held against the one on the frame; the state’s office tells of liens',
    ),
    'label.state': choice(
      ['readable', 'painted-over', 'missing'],
      'Weight label',
      'the weight label',
      'Is the certification label there, with weights that can be read?',
      'left front outside, and the cargo label by the door',
    ),
    'frame.state': {
      ...choice(
        ['sound', 'surface-rust', 'rust-through', 'hanger-cracked', 'cracked'],
        'Frame and spring hangers',
        'the frame',
        'Is the frame sound, a bit rusty, rusted through or cracked, or is just a spring hanger cracked?',
        'from beside it with a lamp: the two rails to the coupler, and both sides of each hanger',
      ),
      means:
        'A hanger holds the spring; it is a part that a frame shop welds or replaces. The rail it hangs on is the frame itself.',
    },
    'frame.railWhole': {
      kind: 'yes-no',
      label: 'Rail behind the cracked hanger found whole',
      noun: 'whether the rail behind the cracked hanger is whole',
      instead: 'Have a frame shop look at the rail behind the cracked hanger',
      ask: 'Has a frame shop found the rail behind the cracked hanger whole?',
      where: 'a frame shop, in writing, before any money',
    },
    'axle.wear': choice(
      ['even', 'one-edge'],
      'Wear of the tires',
      'how the tires are worn',
      'Are the tires worn evenly, or on one edge?',
      'across each tread with the flat hand',
    ),
    'soft.zones': {
      kind: 'quantity',
      unit: '',
      least: 0,
      most: 40,
      counted: true,
      exact: true,
      label: 'Zones of floor or wall that are soft',
      noun: 'how many zones are soft',
      ask: 'In how many zones do corners, walls or the floor give when pressed or trodden on?',
      where: 'foot and flat hand, corners, below windows, around the door, under the beds',
    },
    'soft.quoted': {
      kind: 'quantity',
      unit: '',
      least: 0,
      most: 40,
      counted: true,
      exact: true,
      label: 'Soft zones that are among the spots a shop has quoted',
      noun: 'how many soft zones a shop has quoted',
      ask: 'How many of the soft zones are among the spots that a shop has quoted?',
      where: 'the quote, held against the list of spots',
    },
    'structure.moves': {
      kind: 'yes-no',
      label: 'A wall or corner moves',
      noun: 'whether the structure moves',
      ask: 'Does a wall, a corner or the roof’s edge move when it is pushed?',
      where: 'both hands at each corner, inside and out',
    },
    'found.spots': {
      kind: 'rows',
      columns: {
        moisture: {
          label: 'Moisture',
          unit: '%',
          least: 0,
          most: 100,
          required: false,
          ask: 'What does a moisture meter show at each spot?',
          where:
            'a meter, without pins first: pins leave holes, and are the seller’s to allow; at stains, corners and below windows',
        },
        cost: {
          label: 'Quoted',
          unit: 'USD',
          least: 0,
          most: 100_000,
          required: false,
          ask: 'What does a shop ask for each?',
          where: 'a shop’s quote in writing',
        },
      },
      label: 'What was seen, and where',
      noun: 'what was seen, and where',
      ask: 'What was seen, stains and bubbles too, and where?',
      where: eyes,
      silent: { value: 'none', says: 'No stain, bubble or damage was told.', source: looked },
    },
    'gas.tested': choice(
      ['holds', 'leaks', 'untested'],
      'Gas system',
      'whether the gas holds',
      'Did the gas hold a pressure test, did it leak, or was it not tested?',
      'a licensed shop; smell alone clears nothing',
    ),
    'gas.sellerMends': {
      kind: 'yes-no',
      label: 'Seller has the leak mended',
      noun: 'whether the seller has it mended',
      ask: 'Does the seller have the leak mended and tested before it is sold?',
      where: 'the seller, in writing',
    },
    'electrics.tested': choice(
      ['works', 'faults', 'untested'],
      'Electrics',
      'whether the electrics work',
      'Were 12 volts and shore power tried: do they work, have they faults, or was neither tried?',
      'battery in, then a cord through a tested outlet',
    ),
    'brakes.tested': choice(
      ['work', 'faults', 'untested'],
      'Brakes',
      'whether the brakes work',
      'Were the brakes and the breakaway switch tried?',
      'with a controller, at walking pace; the pin of the breakaway pulled, standing still',
    ),
    'cylinders.dates': choice(
      ['in-date', 'past'],
      'Gas cylinders’ dates',
      'the cylinders’ dates',
      'Are the gas cylinders within their dates?',
      'stamped on the collar, month and year; a later mark tells of a renewed test, and a letter behind it how long that holds',
    ),
    'price.asked': {
      ...money,
      exact: true,
      label: 'Asking price',
      noun: 'the asking price',
      ask: 'What does the seller ask?',
      where: 'the offer',
    },
    'price.dry': {
      ...money,
      label: 'What a dry and sound one costs',
      noun: 'what a dry one costs',
      ask: 'What do like trailers of the same year cost that are dry and sound?',
      where: 'offers of like trailers, several of them',
    },
  },
});
