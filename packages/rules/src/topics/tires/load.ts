import { part } from '../../engine/define/topic';
import { custom, house, statics } from '../../trade/bibliography/common';
import { makersRating, weighed } from '../../trade/bibliography/tires';

/**
 * What the most loaded tire carries: weighed where it was weighed, else the axles' share of it. Which
 * side is heavier, and by how much, is not told by what was told of the rig; so the mean holds for
 * sure, as it does in towing, and the usual imbalance may come on top.
 *
 *     axle loads ─► ÷ tires ─► × imbalance ─┐
 *     each wheel end ─► ÷ tires at it ──────┴─► the larger, unless every wheel end was weighed
 */
export const load = part({
  formulas: {
    'wheel.isLimit': {
      label: 'The wheel is rated below its tire',
      unit: 'yes-no',
      is: 'known(wheel.rating) && wheel.rating < tire.capacity',
      source: custom,
    },
    'tire.isDual': {
      label: 'Two tires share a wheel end',
      unit: 'yes-no',
      is: "tire.place == 'rear' && vehicle.dualRearWheels == 'yes'",
      source: makersRating,
    },
    'tire.atWheelEnd': {
      label: 'Tires at one wheel end',
      unit: '',
      is: 'choose(tire.isDual, 2, 1)',
      source: makersRating,
    },
    'tire.wheelEnds': {
      label: 'Number of wheel ends',
      unit: '',
      is: "choose(tire.place == 'trailer', 2 * trailer.axles, 2)",
      source: makersRating,
    },
    'tire.count': {
      label: 'Tires on these axles',
      unit: '',
      is: 'tire.wheelEnds * tire.atWheelEnd',
      source: makersRating,
    },
    'tire.onAxles': {
      label: 'On these axles',
      noun: 'the load on these axles',
      unit: 'lb',
      is: "choose(known(scale.onAxles), scale.onAxles, choose(tire.place == 'trailer', axle.trailer, choose(tire.place == 'front', axle.front, axle.rear)))",
      source: statics,
    },
    'tire.heavierSide': {
      label: 'The heavier side against the mean: up to the usual where only the rig was told',
      unit: '1',
      is: 'choose(known(scale.onAxles), tire.imbalance, between(1, tire.imbalance))',
      source: house,
    },
    'tire.byAxles': {
      label: 'One tire on the heavier side, by axle load',
      noun: 'one tire’s part of the axle load',
      unit: 'lb',
      is: 'tire.onAxles / tire.count * tire.heavierSide',
      source: house,
    },
    'tire.load': {
      label: 'Load on the fullest tire',
      noun: 'the fullest tire’s load',
      unit: 'lb',
      is: 'choose(count(scale.wheels) > 0, choose(count(scale.wheels) >= tire.wheelEnds, mostOver(pass, pass.each), max(mostOver(pass, pass.each), tire.byAxles)), tire.byAxles)',
      source: weighed,
    },
    'tire.reserve': {
      label: 'Reserve of the fullest tire',
      noun: 'the reserve',
      unit: 'lb',
      is: 'tire.capacity - tire.load',
      source: statics,
    },
  },
  simulations: {
    pass: {
      label: 'Wheel by wheel over the scale',
      steps: 'scale.wheels',
      states: {},
      values: {
        'pass.each': {
          label: 'One tire of this wheel end',
          unit: 'lb',
          is: 'scale.wheels.weight / tire.atWheelEnd',
          source: statics,
        },
      },
      source: weighed,
    },
  },
  limits: {
    'tire-load': {
      label: 'Tire load',
      short: 'the fullest tire',
      do: 'Take load off, or have a tire shop fit tires rated for more.',
      near: 'Add no more load, and weigh each wheel before a long trip.',
      used: 'tire.load',
      limit: 'tire.capacity',
      margin: 'margin.other',
      source: makersRating,
    },
    wheel: {
      label: 'Wheel rating',
      short: 'the wheel',
      do: 'Take load off, or have a tire shop fit wheels rated for more.',
      near: 'Add no more load, and weigh each wheel before a long trip.',
      used: 'tire.load',
      limit: 'wheel.rating',
      margin: 'margin.other',
      askedBy: ['wheel.rating'],
      source: makersRating,
    },
  },
  findings: {
    'wheel-below': {
      label: 'Wheel rated below the tire',
      askedBy: ['wheel.rating'],
      care: {
        when: {
          all: [{ fact: 'wheel.rating', operator: 'lessThan', value: { fact: 'tire.capacity' } }],
        },
        wrong: 'The wheel is rated below the tire: {wheel.rating} is the most.',
        do: 'The wheel is the limit, and a stronger tire changes nothing.',
      },
      otherwise: 'The wheel is rated for what the tire is.',
      source: custom,
    },
  },
});
