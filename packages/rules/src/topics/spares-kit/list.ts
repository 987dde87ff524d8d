import { part } from '../../engine/define/topic';
import { baseList, kitWeights } from '../../trade/bibliography/spares-kit';

const thing = (label: string, value: number) =>
  ({
    label: `Weight: ${label}`,
    noun: label,
    unit: 'lb',
    values: [{ from: '2020-01-01', value }],
    range: [0, 3 * value],
    source: kitWeights,
  }) as const;

/** What each thing of the list weighs. */
export const thingWeights = part({
  parameters: {
    'weightOf.firstAid': thing('first-aid kit', 2),
    'weightOf.gloves': thing('work gloves', 0.5),
    'weightOf.tools': thing('basic mechanic’s tools', 12),
    'weightOf.fuses': thing('spare blade fuses of the sizes fitted', 0.5),
    'weightOf.straps': thing('ratchet straps', 5),
    'weightOf.socket': thing('socket that fits the wheel nuts, and a bar', 4),
    'weightOf.torqueWrench': thing('torque wrench', 4),
    'weightOf.gauge': thing('tire gauge', 0.5),
    'weightOf.chocks': thing('wheel chocks', 6),
    'weightOf.triangles': thing('warning triangles', 3),
    'weightOf.lamp': thing('head lamp', 0.5),
    'weightOf.board': thing('board to stand the jack on', 5),
    'weightOf.splice': thing('splices and wire for the brakes', 1),
    'weightOf.fluid': thing('brake fluid of the kind stated', 2),
    'weightOf.plugs': thing('tire plugs', 1),
    'weightOf.compressor': thing('small compressor', 6),
    'weightOf.bearings': thing('wheel bearings and seals of your size', 4),
    'weightOf.grease': thing('grease and its gun', 5),
    'weightOf.hub': thing('hub made up with bearings', 18),
  },
});

/** The packing list: each thing, when it comes along, and why. */
export const list = part({
  selections: {
    kit: {
      label: 'Spares and tools',
      amounts: { listed: 'lb' },
      items: {
        firstAid: {
          label: 'First-aid kit',
          amounts: { listed: 'weightOf.firstAid' },
          because: 'Hands get hurt on the roadside before the trailer does.',
          source: baseList,
        },
        gloves: {
          label: 'Work gloves',
          amounts: { listed: 'weightOf.gloves' },
          because: 'Hubs are hot and rims are sharp.',
          source: baseList,
        },
        tools: {
          label: 'Basic mechanic’s tools',
          amounts: { listed: 'weightOf.tools' },
          because: 'Loose screws, clamps and wires are the usual trouble.',
          source: baseList,
        },
        fuses: {
          label: 'Spare blade fuses of the sizes fitted',
          amounts: { listed: 'weightOf.fuses' },
          because: 'Lights and brakes hang on one each.',
          source: baseList,
        },
        straps: {
          label: 'Ratchet straps',
          amounts: { listed: 'weightOf.straps' },
          because: 'They hold a door, an awning or a tank cover until a shop does.',
          source: baseList,
        },
        socket: {
          label: 'Socket that fits the wheel nuts, and a bar',
          amounts: { listed: 'weightOf.socket' },
          because: 'The vehicle’s own is often another size.',
          source: baseList,
        },
        torqueWrench: {
          label: 'Torque wrench',
          amounts: { listed: 'weightOf.torqueWrench' },
          because: 'Wheel nuts are tightened to a figure, and again after 50 to 100 miles.',
          source: baseList,
        },
        gauge: {
          label: 'Tire gauge',
          amounts: { listed: 'weightOf.gauge' },
          because: 'Pressure is read cold, every morning.',
          source: baseList,
        },
        chocks: {
          label: 'Wheel chocks',
          amounts: { listed: 'weightOf.chocks' },
          because: 'Nothing is lifted before both ways are blocked.',
          source: baseList,
        },
        triangles: {
          label: 'Warning triangles',
          amounts: { listed: 'weightOf.triangles' },
          because: 'Be seen before you kneel down.',
          source: baseList,
        },
        lamp: {
          label: 'Head lamp',
          amounts: { listed: 'weightOf.lamp' },
          because: 'It happens at night.',
          source: baseList,
        },
        jack: {
          label: 'Lifting device',
          when: 'need.jack',
          amounts: { listed: 'lift.weight' },
          because: 'Changing a wheel begins with it.',
          source: baseList,
        },
        board: {
          label: 'Board to stand the jack on',
          when: 'need.board',
          amounts: { listed: 'weightOf.board' },
          because: 'A jack sinks into a soft shoulder.',
          source: baseList,
        },
        splice: {
          label: 'Splices and wire for the brakes',
          when: 'need.splice',
          amounts: { listed: 'weightOf.splice' },
          because: 'Electric brakes live on two thin wires below the floor.',
          source: baseList,
        },
        fluid: {
          label: 'Brake fluid of the kind stated',
          when: 'need.fluid',
          amounts: { listed: 'weightOf.fluid' },
          because: 'Hydraulic brakes lose fluid where a hose has rubbed.',
          source: baseList,
        },
        plugs: {
          label: 'Tire plugs',
          when: 'need.plugs',
          amounts: { listed: 'weightOf.plugs' },
          because: 'A nail hole far from help; a plug is to get out by, not to go on with.',
          source: baseList,
        },
        compressor: {
          label: 'Small compressor',
          when: 'need.compressor',
          amounts: { listed: 'weightOf.compressor' },
          because: 'Far from help air has to be your own.',
          source: baseList,
        },
        bearings: {
          label: 'Wheel bearings and seals of your size',
          when: 'need.bearings',
          amounts: { listed: 'weightOf.bearings' },
          because: 'Shops seldom have your size; they can fit what you bring.',
          source: baseList,
        },
        grease: {
          label: 'Grease and its gun',
          when: 'need.grease',
          amounts: { listed: 'weightOf.grease' },
          because: 'A long trip runs past the interval.',
          source: baseList,
        },
        hub: {
          label: 'Hub made up with bearings',
          when: 'need.hub',
          amounts: { listed: 'weightOf.hub' },
          because: 'A hub that has run dry ends a trip where no shop is near.',
          source: baseList,
        },
        secondSpare: {
          label: 'Second spare wheel',
          when: 'need.secondSpare',
          amounts: { listed: 'spare.weight' },
          because:
            'Trailer tires are not sold days from anywhere, and one nail seldom comes alone.',
          source: baseList,
        },
      },
      source: baseList,
    },
  },
});
