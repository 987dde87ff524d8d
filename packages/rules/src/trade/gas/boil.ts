import { part } from '../../engine/define/topic';
import { boilRule, boilSpread } from '../bibliography/gas';

/**
 * What a cylinder as full as now boils off, from hard frost to mild weather: how cold may it get
 * before it starves what burns?
 *
 *     Btu/h │            ___╱ boil.most
 *           │      ___╱
 *           ├ ─ ─╱─ ─ ─ ─ ─ ─ ─ what burns
 *           │ ╱___________--- boil.least
 *           └──────────────── °F
 */
export const boil = part({
  parameters: {
    'boil.stride': {
      label: 'Degrees from one step to the next',
      unit: 'F°',
      values: [{ from: '2020-01-01', value: 5 }],
      source: boilRule,
    },
  },
  simulations: {
    boil: {
      label: 'Gas that boils off from frost to mild weather, as full as now',
      steps: 17,
      states: {},
      values: {
        'boil.temperature': {
          label: 'Temperature along which it is reckoned',
          unit: '°F',
          is: 'vapor.ends + boil.step * boil.stride',
          source: boilRule,
        },
        'boil.least': {
          label: 'Gas that boils off at that temperature, at the least',
          unit: 'Btu/h',
          is: 'vapor.perFactor * lookup(boilByCold, boil.temperature) / vapor.spread',
          source: boilSpread,
        },
        'boil.most': {
          label: 'Gas that boils off at that temperature, at the most',
          unit: 'Btu/h',
          is: 'vapor.perFactor * lookup(boilByCold, boil.temperature) * vapor.spread',
          source: boilSpread,
        },
      },
      source: boilRule,
    },
  },
});
