import { part } from '../../engine/define/topic';
import {
  custom,
  house,
  partsRating as makersRating,
  restoredBound,
} from '../../trade/bibliography/common';
import { geometry } from '../../trade/bibliography/hitch-setup';

/**
 * Spring bars carry the tongue and what rides behind the rear axle; bars much too strong jar
 * receiver and A-frame and hardly bend.
 *
 *     0 ───── too strong ─────┤ bars.least ── right ── hitch.barsMost ├── too weak ──
 */
export const springBars = part({
  parameters: {
    'bars.leastShare': {
      label: 'Least share of the bars’ rating, where their maker states none',
      unit: '%',
      values: [{ from: '2020-01-01', value: 50 }],
      range: [30, 80],
      source: house,
    },
  },
  formulas: {
    'cargo.behind': {
      label: 'Cargo behind the vehicle’s rear axle',
      noun: 'cargo behind the rear axle',
      unit: 'lb',
      is: 'sum(choose(load.cargo.ahead < 0, load.cargo.weight, 0))',
      source: custom,
    },
    'bars.wanted': {
      label: 'What the bars have to deal with',
      noun: 'what the bars deal with',
      unit: 'lb',
      is: 'tongue.loaded + cargo.behind',
      source: custom,
    },
    'bars.least': {
      label: 'Least that these bars are for',
      noun: 'the least these bars are for',
      unit: 'lb',
      is: 'choose(known(hitch.barsLeast), hitch.barsLeast, hitch.barsMost * bars.leastShare)',
      source: makersRating,
    },
  },
  limits: {
    'spring-bars': {
      label: 'Spring bars',
      short: 'the spring bars',
      do: 'Fit bars rated for this tongue and the load behind the axle.',
      near: 'Put nothing more into the trailer’s nose or behind the axle.',
      plural: true,
      used: 'bars.wanted',
      limit: 'hitch.barsMost',
      margin: 'margin.other',
      askedBy: ['hitch.barsMost'],
      source: makersRating,
    },
  },
  findings: {
    'bars-strong': {
      label: 'Bars too strong',
      askedBy: ['hitch.barsMost', 'hitch.barsLeast'],
      care: {
        when: {
          all: [{ fact: 'bars.wanted', operator: 'lessThan', value: { fact: 'bars.least' } }],
        },
        wrong: 'These bars are too strong for this tongue.',
        do: 'They hardly bend, and jar receiver and frame. First get weaker bars: their label must have {bars.wanted} within its range.',
      },
      open: {
        wrong: 'Whether these bars are too strong for this tongue is not known yet.',
        do: 'Weigh the tongue.',
      },
      otherwise: 'The bars are not too strong for this tongue.',
      source: makersRating,
    },
  },
});

/**
 * Setting the bars by the front fender: hitching lifts it, the bars bring it down again.
 *
 *     slack ┬           restored = (slack − set) ÷ (slack − unhitched)
 *           │  set ┬
 *     unhitched ───┴
 */
export const barSetting = part({
  parameters: {
    'setting.least': {
      label: 'Least share of the front’s lift to be taken back',
      noun: 'the least share to be taken back',
      unit: '1',
      values: [{ from: '2020-01-01', value: 0.5 }],
      range: [0, 1],
      source: house,
    },
    'setting.most': {
      label: 'Most share of the front’s lift to be taken back',
      noun: 'all of the front’s lift',
      unit: '1',
      values: [{ from: '2020-01-01', value: 1 }],
      source: restoredBound,
    },
  },
  formulas: {
    'fender.lift': {
      label: 'How far hitching lifts the front',
      noun: 'the front’s lift',
      unit: 'in',
      is: 'vehicle.fenderSlack - vehicle.fenderUnhitched',
      source: geometry,
    },
    'fender.highest': {
      label: 'Front fender, the highest that will do with the bars set',
      noun: 'the highest fender that will do',
      unit: 'in',
      is: 'vehicle.fenderSlack - setting.least * fender.lift',
      source: house,
    },
    'bars.restored': {
      label: 'Share of the front’s lift that the bars take back',
      noun: 'the share restored',
      unit: '1',
      is: '(vehicle.fenderSlack - vehicle.fenderTight) / fender.lift',
      source: geometry,
    },
  },
  findings: {
    'bar-setting': {
      label: 'Setting of the bars',
      askedBy: ['vehicle.fenderTight'],
      stop: {
        // A tongue that presses lifts the front, however much: lower than unhitched is more than all.
        when: 'bars.restored > setting.most || vehicle.fenderTight < vehicle.fenderUnhitched',
        wrong: 'The bars press the front lower than it stood before hitching.',
        do: 'That unloads the rear tires and strains hitch and frame. Slacken the bars a step, as the hitch’s maker says, and measure again.',
      },
      care: {
        when: {
          all: [{ fact: 'bars.restored', operator: 'lessThan', value: { fact: 'setting.least' } }],
        },
        wrong: 'The bars press the front down again by less than is wanted.',
        do: 'With the right bars on, set them a step tighter, as the hitch’s maker says, and measure again.',
      },
      open: {
        wrong: 'How much the bars take back is not known well enough.',
        do: 'Measure the fender three times, on level ground.',
      },
      otherwise: 'The bars take back a sound share of the front’s lift.',
      source: restoredBound,
    },
  },
});
