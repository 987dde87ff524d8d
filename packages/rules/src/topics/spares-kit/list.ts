import { part } from '../../engine/define/topic';
import { baseList } from '../../trade/bibliography/spares-kit';

/** The packing list by purpose: each thing, when it comes along, and why. */
export const list = part({
  selections: {
    people: {
      label: 'People',
      amounts: { weight: 'lb' },
      items: {
        firstAid: {
          label: 'First-aid kit',
          amounts: { weight: 'weightOf.firstAid' },
          because: 'Hands get hurt on the roadside before the trailer does.',
          source: baseList,
        },
        gloves: {
          label: 'Work gloves',
          amounts: { weight: 'weightOf.gloves' },
          because: 'Hubs are hot and rims are sharp.',
          source: baseList,
        },
        vest: {
          label: 'Safety vest',
          amounts: { weight: 'weightOf.vest' },
          because: 'A driver sees the vest before the person in it.',
          source: baseList,
        },
        lamp: {
          label: 'Head lamp',
          amounts: { weight: 'weightOf.lamp' },
          because: 'It happens at night, and both hands are needed.',
          source: baseList,
        },
      },
      source: baseList,
    },
    wheel: {
      label: 'Wheel and brakes',
      amounts: { weight: 'lb' },
      items: {
        secondSpare: {
          label: 'Second spare wheel',
          when: 'need.secondSpare',
          amounts: { weight: 'spare.weight' },
          because:
            'Trailer tires are not sold days from anywhere, and one nail seldom comes alone.',
          source: baseList,
        },
        jack: {
          label: 'Lifting device',
          when: 'need.jack',
          amounts: { weight: 'lift.weight' },
          because: 'Changing a wheel begins with it.',
          source: baseList,
        },
        stands: {
          label: 'Pair of jack stands',
          when: 'need.stands',
          amounts: { weight: 'weightOf.stands' },
          because: 'A jack lifts, a stand holds.',
          source: baseList,
        },
        torqueWrench: {
          label: 'Torque wrench',
          amounts: { weight: 'weightOf.torqueWrench' },
          because:
            'Wheel nuts are tightened to a figure, and again after {retorque.first}, {retorque.second} and {retorque.third}.',
          source: baseList,
        },
        socket: {
          label: 'Socket that fits the wheel nuts, and a bar',
          amounts: { weight: 'weightOf.socket' },
          because: 'The vehicle’s own is often another size.',
          source: baseList,
        },
        gauge: {
          label: 'Tire gauge',
          amounts: { weight: 'weightOf.gauge' },
          because: 'Pressure is read cold, every morning.',
          source: baseList,
        },
        plugs: {
          label: 'Tire plugs',
          amounts: { weight: 'weightOf.plugs' },
          because: 'A plug is to get off the road by, not to go on with.',
          source: baseList,
        },
        chocks: {
          label: 'Wheel chocks',
          amounts: { weight: 'weightOf.chocks' },
          because: 'Nothing is lifted before both ways are blocked.',
          source: baseList,
        },
        board: {
          label: 'Board to stand the jack on',
          when: 'need.board',
          amounts: { weight: 'weightOf.board' },
          because: 'A jack sinks into a soft shoulder.',
          source: baseList,
        },
        fluid: {
          label: 'Brake fluid of the kind stated',
          when: 'need.fluid',
          amounts: { weight: 'weightOf.fluid' },
          because: 'Hydraulic brakes lose fluid where a hose has rubbed.',
          source: baseList,
        },
        compressor: {
          label: 'Small compressor',
          when: 'need.compressor',
          amounts: { weight: 'weightOf.compressor' },
          because: 'Far from help air has to be your own.',
          source: baseList,
        },
        bearings: {
          label: 'Wheel bearings and seals of your size',
          when: 'need.bearings',
          amounts: { weight: 'weightOf.bearings' },
          because: 'Shops seldom have your size; they can fit what you bring.',
          source: baseList,
        },
        grease: {
          label: 'Grease and its gun',
          when: 'need.grease',
          amounts: { weight: 'weightOf.grease' },
          because: 'A long trip runs past the interval.',
          source: baseList,
        },
        hub: {
          label: 'Hub made up with bearings',
          when: 'need.hub',
          amounts: { weight: 'weightOf.hub' },
          because: 'A hub that has run dry ends a trip where no shop is near.',
          source: baseList,
        },
      },
      source: baseList,
    },
    roadside: {
      label: 'Road-side safety',
      amounts: { weight: 'lb' },
      items: {
        triangles: {
          label: 'Warning triangles',
          amounts: { weight: 'weightOf.triangles' },
          because: 'Be seen before you kneel down.',
          source: baseList,
        },
        extinguisher: {
          label: 'Fire extinguisher',
          amounts: { weight: 'weightOf.extinguisher' },
          because: 'A dragging brake or a short circuit burns before help is there.',
          source: baseList,
        },
      },
      source: baseList,
    },
    electrics: {
      label: 'Electrics',
      amounts: { weight: 'lb' },
      items: {
        fuses: {
          label: 'Spare blade fuses of the sizes fitted',
          amounts: { weight: 'weightOf.fuses' },
          because: 'Lights and brakes hang on one each.',
          source: baseList,
        },
        bulbs: {
          label: 'Spare bulbs',
          amounts: { weight: 'weightOf.bulbs' },
          because: 'A dark brake light is a collision behind you, and a ticket.',
          source: baseList,
        },
        splice: {
          label: 'Splices and wire for the brakes',
          when: 'need.splice',
          amounts: { weight: 'weightOf.splice' },
          because: 'Electric brakes live on two thin wires below the floor.',
          source: baseList,
        },
      },
      source: baseList,
    },
    lashing: {
      label: 'Lashing',
      amounts: { weight: 'lb' },
      items: {
        straps: {
          label: 'Ratchet straps',
          amounts: { weight: 'weightOf.straps' },
          because: 'They hold a door, an awning or a tank cover until a shop does.',
          source: baseList,
        },
      },
      source: baseList,
    },
    tools: {
      label: 'Hand tools',
      amounts: { weight: 'lb' },
      items: {
        tools: {
          label: 'Hand tools for what its fasteners take',
          amounts: { weight: 'weightOf.tools' },
          because:
            'Loose screws, clamps and wires are the usual trouble; look which heads it has before you buy.',
          source: baseList,
        },
      },
      source: baseList,
    },
  },
  findings: {
    list: {
      label: 'The list',
      askedBy: ['trailer.axles', 'trip.days', 'trip.remoteness'],
      settles: true,
      otherwise: 'The list stands by what was told of axles and trip.',
      source: baseList,
    },
  },
});
