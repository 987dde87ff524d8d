import { part } from '../../engine/define/topic';
import { dateCode } from '../../trade/bibliography/tires';
import {
  looked,
  titles,
  walkHouse,
  walkRule,
  wetMeter,
} from '../../trade/bibliography/used-trailer';

const known = (label: string, fact: string) =>
  ({ label, unit: 'yes-no', is: `known(${fact})`, source: looked }) as const;

/**
 * When to walk away, and what only costs money.
 *
 *     frame cracked · soft in more than one zone · title not clean · gas leaks and the seller shrugs
 *                                   └──────────► walk away
 */
export const walk = part({
  parameters: {
    'soft.most': {
      label: 'Soft zones that are still mended',
      noun: 'the soft zones that are still mended',
      unit: '',
      values: [{ from: '2020-01-01', value: 1 }],
      source: walkRule,
    },
    'soft.none': {
      label: 'No zone',
      unit: '',
      values: [{ from: '2020-01-01', value: 0 }],
      source: looked,
    },
    'wet.above': {
      label: 'Moisture above which a spot is wet',
      noun: 'the moisture above which it is wet',
      unit: '%',
      values: [{ from: '2020-01-01', value: 20 }],
      source: wetMeter,
    },
  },
  formulas: {
    'frame.isKnown': known('It is known how the frame is', 'frame.state'),
    'soft.isKnown': known('It is known how many zones are soft', 'soft.zones'),
    'moves.isKnown': known('It is known whether the structure moves', 'structure.moves'),
    'title.isKnown': known('The title was seen', 'title.state'),
    'label.isKnown': known('The label was looked at', 'label.state'),
    'gas.isKnown': known('It was told whether the gas holds', 'gas.tested'),
    'mends.isKnown': known('It was told whether the seller mends it', 'gas.sellerMends'),
    'electrics.areKnown': known('It was told whether the electrics work', 'electrics.tested'),
    'brakes.wereTried': known('It was told whether the brakes work', 'brakes.tested'),
    'wear.isKnown': known('It is known how the tires are worn', 'axle.wear'),
    'cylinders.areKnown': known('The cylinders’ dates were read', 'cylinders.dates'),
    'wet.spots': {
      label: 'Spots that are wet by a meter',
      noun: 'the wet spots',
      unit: '',
      is: 'sum(choose(known(found.spots.moisture) && found.spots.moisture > wet.above, 1, 0))',
      source: wetMeter,
    },
    'spots.count': {
      label: 'Spots that were seen',
      noun: 'the spots that were seen',
      unit: '',
      is: 'count(found.spots)',
      source: looked,
    },
    'untested.gas': {
      label: 'The gas was not tested',
      unit: 'yes-no',
      is: "!gas.isKnown || gas.tested == 'untested'",
      source: looked,
    },
    'untested.rest': {
      label: 'Electrics or brakes were not tried',
      unit: 'yes-no',
      is: "!electrics.areKnown || electrics.tested == 'untested' || !brakes.wereTried || brakes.tested == 'untested'",
      source: looked,
    },
    'tires.areTold': {
      label: 'A tire’s date was read',
      unit: 'yes-no',
      is: "given(tire.codeYear) || (given(tire.codeDigits) && tire.codeDigits == 'three')",
      source: dateCode,
    },
    'tires.areDone': {
      label: 'The tires are past their years',
      unit: 'yes-no',
      is: 'tires.areTold && tire.age >= age.trailerReplace',
      source: dateCode,
    },
  },
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
    untested: {
      label: 'What nobody tested',
      if: [
        {
          when: 'untested.gas && untested.rest',
          wrong: 'Gas, electrics and brakes are not all tested.',
          do: 'A licensed shop tests them before the first trip; count with the upper price.',
          proviso: 'gas, electrics and brakes are tested by a shop before it is used',
        },
        {
          when: 'untested.gas',
          wrong: 'The gas was not tested.',
          do: 'A licensed shop tests it before anything is lit.',
          proviso: 'the gas holds a shop’s pressure test before anything is lit',
        },
        {
          when: 'untested.rest',
          wrong: 'Electrics or brakes were not tried.',
          do: 'Have them tried before it is towed home.',
          proviso: 'electrics and brakes are tried before it is towed home',
        },
      ],
      otherwise: 'Gas, electrics and brakes were tested.',
      source: looked,
    },
    faults: {
      label: 'Electrics and brakes',
      askedBy: ['electrics.tested', 'brakes.tested'],
      care: [
        {
          when: "brakes.wereTried && brakes.tested == 'faults'",
          wrong: 'The brakes have faults.',
          do: 'It does not roll home before they are mended; have it carried.',
        },
        {
          when: "electrics.areKnown && electrics.tested == 'faults'",
          wrong: 'The electrics have faults.',
          do: 'Leave cord and battery off until a shop has found them.',
        },
      ],
      open: { wrong: 'Electrics or brakes may have faults.', do: 'Have them tried.' },
      otherwise: 'No fault of electrics or brakes was told.',
      source: looked,
    },
    axle: {
      label: 'Axle',
      askedBy: ['axle.wear'],
      care: {
        when: "wear.isKnown && axle.wear == 'one-edge'",
        wrong: 'The tires are worn on one edge: an axle is bent or was overloaded.',
        do: 'Have it measured, and count with an axle.',
      },
      open: { wrong: 'An axle may be bent.', do: 'Feel across each tread.' },
      otherwise: 'The tires are worn evenly.',
      source: looked,
    },
    tires: {
      label: 'Tires’ age',
      askedBy: ['tire.codeYear', 'tire.codeDigits'],
      care: {
        when: 'tires.areDone',
        wrong: 'The tires are {tire.age} old, and a trailer’s are done at {age.trailerReplace}.',
        because: 'Old rubber comes apart on the way home, whatever its tread.',
        do: 'Replace them where it stands.',
      },
      open: {
        wrong: 'The tires may be past their years.',
        do: 'Read the code on every tire, the spare’s too.',
      },
      otherwise: 'The tires are young enough.',
      source: dateCode,
    },
    label: {
      label: 'Weight label',
      askedBy: ['label.state'],
      care: [
        {
          when: "label.isKnown && label.state == 'painted-over'",
          wrong: 'The weights on the label are painted over.',
          because: 'Somebody did not want them read.',
          do: 'Ask the maker by the identification number, and weigh it, before anybody tows it.',
        },
        {
          when: "label.isKnown && label.state == 'missing'",
          wrong: 'The weight label is missing.',
          because: 'What it may weigh is then nobody’s word.',
          do: 'Ask the maker by the identification number, and weigh it, before anybody tows it.',
        },
      ],
      open: { wrong: 'The weight label may be missing.', do: 'Look at the left front, outside.' },
      otherwise: 'The weight label can be read; it decides in weigh-in and tow fit.',
      source: looked,
    },
    dates: {
      label: 'Cylinders and alarms',
      askedBy: ['cylinders.dates', 'alarm.gasAge', 'alarm.monoxideAge'],
      care: {
        when: 'dates.arePast',
        wrong: 'Cylinders or alarms are past their dates.',
        do: 'Nobody sleeps in it and nothing is filled before they are replaced.',
      },
      open: { wrong: 'Cylinders or alarms may be past their dates.', do: 'Read each date.' },
      otherwise: 'No cylinder or alarm was told to be past its date.',
      source: looked,
    },
  },
});
