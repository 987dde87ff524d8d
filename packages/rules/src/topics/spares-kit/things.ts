import { part } from '../../engine/define/topic';
import { kitWeights, retorque } from '../../trade/bibliography/spares-kit';

const thing = (label: string, value: number) =>
  ({
    label: `Weight: ${label}`,
    noun: label,
    unit: 'lb',
    values: [{ from: '2020-01-01', value }],
    range: [0, 3 * value],
    source: kitWeights,
  }) as const;
const after = (label: string, value: number) =>
  ({
    label: `Wheel nuts are tightened again, ${label}`,
    unit: 'mi',
    values: [{ from: '2020-01-01', value }],
    source: retorque,
  }) as const;

/** What each thing of the list weighs, and when wheel nuts are tightened again. */
export const thingWeights = part({
  parameters: {
    'weightOf.firstAid': thing('first-aid kit', 2),
    'weightOf.gloves': thing('work gloves', 0.5),
    'weightOf.vest': thing('safety vest', 0.5),
    'weightOf.lamp': thing('head lamp', 0.5),
    'weightOf.socket': thing('socket that fits the wheel nuts, and a bar', 4),
    'weightOf.torqueWrench': thing('torque wrench', 4),
    'weightOf.gauge': thing('tire gauge', 0.5),
    'weightOf.plugs': thing('tire plugs', 1),
    'weightOf.chocks': thing('wheel chocks', 6),
    'weightOf.board': thing('board to stand the jack on', 5),
    'weightOf.stands': thing('pair of jack stands', 12),
    'weightOf.fluid': thing('brake fluid of the kind stated', 2),
    'weightOf.compressor': thing('small compressor', 6),
    'weightOf.bearings': thing('wheel bearings and seals of your size', 4),
    'weightOf.grease': thing('grease and its gun', 5),
    'weightOf.hub': thing('hub made up with bearings', 18),
    'weightOf.triangles': thing('warning triangles', 3),
    'weightOf.extinguisher': thing('fire extinguisher', 5),
    'weightOf.fuses': thing('spare blade fuses of the sizes fitted', 0.5),
    'weightOf.bulbs': thing('spare bulbs', 0.5),
    'weightOf.splice': thing('splices and wire for the brakes', 1),
    'weightOf.straps': thing('ratchet straps', 5),
    'weightOf.tools': thing('hand tools for what its fasteners take', 12),
    'retorque.first': after('the first time', 10),
    'retorque.second': after('the second time', 25),
    'retorque.third': after('the third time', 50),
  },
});
