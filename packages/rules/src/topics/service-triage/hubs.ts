import { part } from '../../engine/define/topic';
import { comparison, hotHub, printedLimit } from '../../trade/bibliography/service-triage';

/** A hub told beside the rows counts with them; where it is not, it changes nothing. */
const told = (hub: string): string => `choose(given(${hub}), ${hub}, hub.mean)`;
const scalars = `${told('hub.hottest')}, ${told('hub.coolest')}`;

/** The warmest or coolest to begin with; a single hub leaves its mates open. */
const begin = (best: 'max' | 'min', other: string): string =>
  `choose(count(hub.readings) > 0, choose(hub.hasMates, ${best}(hub.mean, ${scalars}), ${best}(hub.mean, ${other})), ${best}(hub.hottest, hub.coolest))`;

/**
 * Hubs against their mates, and all of them against a plain number: comparison comes first, and all
 * hot is as grave as one hot.
 *
 *     150   155   150   228 °F   one over its mates         stop, though under any printed limit
 *     262   258   265   260      all of them hot            stop, though all alike
 *     214   120   208   210      one cold among warm ones   its brake does nothing
 */
export const hubs = part({
  facts: {
    'hub.readings': {
      kind: 'rows',
      columns: {
        temperature: { label: 'Reading', unit: '°F', least: -40, most: 800, required: true },
      },
      label: 'Hub by hub',
      noun: 'the reading of every hub',
      instead: 'Measure every hub again at once after the same stretch',
      ask: 'What does each hub read, left and right, front and rear?',
      where: 'touchless thermometer, at once after stopping, at the same spot of each hub',
      silent: {
        value: 'none',
        says: 'No hub was measured by itself.',
        source: comparison,
        quiet: true,
      },
    },
    'hub.hottest': {
      kind: 'quantity',
      unit: '°F',
      least: -40,
      most: 800,
      label: 'The hottest hub',
      noun: 'the hottest hub',
      instead: 'Measure every hub again at once after the same stretch',
      ask: 'What does the hottest hub read, measured at the same spot as the others?',
      where: 'touchless thermometer, at once after stopping, brakes used alike',
    },
    'hub.coolest': {
      kind: 'quantity',
      unit: '°F',
      least: -40,
      most: 800,
      label: 'The coolest of its mates',
      noun: 'the coolest of its mates',
      instead: 'Measure every hub again at once after the same stretch',
      ask: 'What does the coolest of the other hubs read?',
      where: 'touchless thermometer, at the same spot of each hub',
    },
    'hub.printedLimit': {
      kind: 'quantity',
      unit: '°F',
      least: 100,
      most: 800,
      exact: true,
      label: 'Limit that its maker prints',
      noun: 'the printed limit',
      ask: 'Does the axle’s manual print a temperature that a hub may reach?',
      where: 'manual of the axle; most print none',
    },
  },
  parameters: {
    'hub.stopFrom': {
      label: 'How far over its mates a hub is stop',
      noun: 'the most a hub may be over its mates',
      unit: 'F°',
      values: [{ from: '2020-01-01', value: 75 }],
      range: [40, 75],
      source: comparison,
    },
    'hub.careFrom': {
      label: 'How far over its mates a hub is watched',
      unit: 'F°',
      values: [{ from: '2020-01-01', value: 40 }],
      range: [20, 40],
      source: comparison,
    },
    'hub.hotStop': {
      label: 'How hot any hub may read',
      unit: '°F',
      values: [{ from: '2020-01-01', value: 250 }],
      range: [200, 250],
      source: hotHub,
    },
    'hub.hotCare': {
      label: 'From where on a hub is watched',
      unit: '°F',
      values: [{ from: '2020-01-01', value: 180 }],
      range: [140, 180],
      source: hotHub,
    },
  },
  formulas: {
    'hub.mean': {
      label: 'Mean of the hubs read one by one',
      unit: '°F',
      is: 'sum(hub.readings.temperature) / count(hub.readings)',
      source: comparison,
    },
    'hub.warmest': {
      label: 'The warmest hub there is',
      noun: 'the warmest hub',
      unit: '°F',
      is: 'lastOf(hubs, hubs.warmest)',
      source: comparison,
    },
    'hub.coldest': {
      label: 'The coolest hub there is',
      noun: 'the coolest hub',
      unit: '°F',
      is: 'lastOf(hubs, hubs.coldest)',
      source: comparison,
    },
    'hub.apart': {
      label: 'Warmest hub over the coolest',
      noun: 'the difference between the hubs',
      unit: 'F°',
      is: 'hub.warmest - hub.coldest',
      source: comparison,
    },
    'hub.othersMean': {
      label: 'Mean of all hubs but the coolest',
      unit: '°F',
      is: '(sum(hub.readings.temperature) - hub.coldest) / (count(hub.readings) - 1)',
      source: comparison,
    },
    'hub.isMeasured': {
      label: 'Hubs were measured',
      unit: 'yes-no',
      is: 'given(hub.hottest) || given(hub.coolest) || count(hub.readings) > 0',
      source: comparison,
    },
    'hub.hasMates': {
      label: 'More than one hub was measured',
      unit: 'yes-no',
      is: 'count(hub.readings) > 1 || given(hub.hottest) || given(hub.coolest)',
      source: comparison,
    },
    'hub.oneCold': {
      label: 'One hub is cold among warm ones',
      unit: 'yes-no',
      is: 'count(hub.readings) > 2 && hub.othersMean - hub.coldest >= hub.stopFrom && hub.warmest - hub.othersMean < hub.careFrom',
      source: comparison,
    },
    'hub.oneHot': {
      label: 'A hub is far over its mates',
      unit: 'yes-no',
      is: 'hub.isMeasured && hub.apart >= hub.stopFrom && !hub.oneCold',
      source: comparison,
    },
    'hub.overPrinted': {
      label: 'A hub is over the limit its maker prints',
      unit: 'yes-no',
      is: 'given(hub.printedLimit) && hub.warmest > hub.printedLimit',
      source: printedLimit,
    },
    'hub.runsHot': {
      label: 'A hub runs hot',
      unit: 'yes-no',
      is: 'hub.oneHot || (hub.isMeasured && hub.warmest >= hub.hotStop) || hub.overPrinted',
      source: comparison,
    },
    'hub.isWatched': {
      label: 'A hub is watched',
      unit: 'yes-no',
      is: 'hub.isMeasured && (hub.oneCold || hub.apart >= hub.careFrom || hub.warmest >= hub.hotCare)',
      source: comparison,
    },
  },
  simulations: {
    hubs: {
      label: 'Hub by hub',
      steps: 'hub.readings',
      states: {
        'hubs.warmest': {
          label: 'The warmest so far',
          unit: '°F',
          start: begin('max', 'hub.hottest'),
          next: 'max(hubs.warmest, hub.readings.temperature)',
          source: comparison,
        },
        'hubs.coldest': {
          label: 'The coolest so far',
          unit: '°F',
          start: begin('min', 'hub.coolest'),
          next: 'min(hubs.coldest, hub.readings.temperature)',
          source: comparison,
        },
      },
      values: {},
      source: comparison,
    },
  },
  findings: {
    hubs: {
      label: 'Hubs against each other',
      askedBy: ['hub.readings', 'hub.hottest', 'hub.coolest'],
      stop: [
        {
          when: 'hub.coldest >= hub.hotStop',
          wrong: 'Every hub is hot: even the coolest reads {hub.coldest}.',
          because:
            'All hot is as grave as one hot: brakes that drag, an axle overloaded or bearings run dry heat them alike, and grease runs out.',
          do: 'Stop where it is safe, and keep off the trailer’s brakes. Let the hubs cool by standing, and do not tow it on; someone comes to it.',
        },
        {
          when: 'hub.warmest >= hub.hotStop',
          wrong: 'A hub reads {hub.warmest}: from {hub.hotStop} on the trailer must not roll on.',
          because: 'A bearing or a brake is failing there; a wheel lost on the road kills others.',
          do: 'Stop where it is safe, let it cool by standing, and do not tow it.',
        },
        {
          when: 'hub.oneHot',
          wrong: 'One hub is {hub.apart} hotter than its mates.',
          because:
            'A bearing or a brake is failing there, whatever any printed limit allows; a wheel lost on the road kills others.',
          do: 'Stop where it is safe, let it cool by standing, and do not tow it.',
        },
      ],
      care: [
        {
          when: 'hub.oneCold',
          wrong: 'One hub stays cold among warm ones: its brake does nothing.',
          because:
            'The other brakes do its work, get hotter, and need a longer way to stop the rig.',
          do: 'Drive slowly to the nearest shop that does trailer brakes, leave twice the distance, and stay off long grades.',
        },
        {
          when: 'hub.coldest >= hub.hotCare',
          wrong: 'Every hub is warm: even the coolest reads {hub.coldest}.',
          because:
            'Hubs that are alike are not for that reason cool: brakes may drag on all of them, or the axles carry too much.',
          do: 'Let them cool where it is safe, then go slowly to the nearest shop that does brakes and bearings. Measure again after the first miles.',
        },
        {
          when: 'hub.warmest >= hub.hotCare',
          wrong: 'A hub reads {hub.warmest}, and from {hub.hotCare} on it is watched.',
          do: 'Let it cool where it is safe, then go slowly and measure it again after a few miles. Have its bearing and brake looked at before the next trip.',
        },
        {
          when: 'hub.apart >= hub.careFrom',
          wrong: 'One hub is {hub.apart} warmer than its mates.',
          do: 'Measure again after a few miles, and have bearing and brake of the warmer wheel looked at before the next trip.',
        },
      ],
      otherwise: 'The hubs are alike, and none is hot.',
      open: {
        wrong: 'Not every hub has been measured.',
        because: 'Only the comparison tells, and how hot they all are.',
        do: 'Measure every hub at the same spot, at once after stopping. Roll no farther before they are known to be alike.',
      },
      source: comparison,
    },
    'hub-limit': {
      label: 'Hub against its printed limit',
      askedBy: ['hub.printedLimit'],
      stop: {
        when: 'hub.warmest > hub.printedLimit',
        wrong: 'A hub reads {hub.warmest}, over the {hub.printedLimit} that its maker prints.',
        do: 'Stop where it is safe and do not tow on.',
      },
      otherwise: 'No hub is over the printed limit; that alone clears nothing.',
      open: {
        wrong: 'A hub may be over the limit that its maker prints.',
        do: 'Measure every hub, at once after stopping.',
      },
      source: printedLimit,
    },
  },
});
