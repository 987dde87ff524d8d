import { part } from '../../engine/define/topic';
import { dateCode } from '../../trade/bibliography/tires';
import { looked, walkRule, wetMeter } from '../../trade/bibliography/used-trailer';

const known = (label: string, fact: string) =>
  ({ label, unit: 'yes-no', is: `known(${fact})`, source: looked }) as const;

/** What is said of gas that leaks, as the finding and as the answer to whatever was asked. */
export const leaking = 'The gas leaks, and who mends that is not known yet.';

/** What was seen and what nobody looked at, and from which figures on it counts. */
export const seen = part({
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
    'hanger.isCracked': {
      label: 'A spring hanger is cracked',
      unit: 'yes-no',
      is: "frame.isKnown && frame.state == 'hanger-cracked'",
      source: looked,
    },
    'rail.isKnown': known('A frame shop has looked at the rail behind it', 'frame.railWhole'),
    'rail.isOpen': {
      label: 'A spring hanger is cracked, and nobody has looked at the rail behind it',
      unit: 'yes-no',
      is: 'hanger.isCracked && !rail.isKnown',
      source: looked,
    },
    'soft.isKnown': known('It is known how many zones are soft', 'soft.zones'),
    'moves.isKnown': known('It is known whether the structure moves', 'structure.moves'),
    'title.isKnown': known('The title was seen', 'title.state'),
    'label.isKnown': known('The label was looked at', 'label.state'),
    'gas.isKnown': known('It was told whether the gas holds', 'gas.tested'),
    'mends.isKnown': known('It was told whether the seller mends it', 'gas.sellerMends'),
    'gas.isLeaking': {
      label: 'The gas leaks, and nobody said who mends it',
      unit: 'yes-no',
      is: "gas.isKnown && gas.tested == 'leaks' && !mends.isKnown",
      source: walkRule,
    },
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
});
