import { part } from '../../engine/define/topic';
import { house } from '../../trade/bibliography/common';
import { intervals } from '../../trade/bibliography/weigh-in';

const least = (name: string): string => `max(0, ${name} * (1 - scale.tolerance) - scale.step / 2)`;
const most = (name: string): string => `${name} * (1 + scale.tolerance) + scale.step / 2`;
const read = (axle: string, pass: string, name: string) =>
  ({
    label: `${axle}, ${pass}, as far as the scale tells`,
    noun: `the ${axle.toLowerCase()}, ${pass}`,
    unit: 'lb',
    // No axle lifts the scale.
    is: `max(0, ${name} * scale.band + scale.rounding)`,
    source: intervals,
  }) as const;
const end = (label: string, is: string) => ({ label, unit: 'lb', is, source: intervals }) as const;

/**
 * What each printed figure says about the true weight.
 *
 *     true weight   ├──── ½ step ────┼──── ½ step ────┤   and the tolerance on top
 *                                 printed
 */
export const readings = part({
  parameters: {
    'scale.tolerance': {
      label: 'How far the scale may be off',
      noun: 'the scale’s tolerance',
      unit: '%',
      values: [{ from: '2020-01-01', value: 0.1 }],
      range: [0, 1],
      source: house,
    },
  },
  formulas: {
    'scale.band': {
      label: 'What the scale may make of a pound',
      noun: 'the scale’s tolerance either way',
      unit: '1',
      is: 'between(1 - scale.tolerance, 1 + scale.tolerance)',
      source: house,
    },
    'scale.rounding': {
      label: 'What rounding may hide; anything at all where the tickets cannot be right',
      noun: 'half a step either way',
      unit: 'lb',
      is: 'choose(tickets.impossible, between(-unlimited, unlimited), between(-scale.step / 2, scale.step / 2))',
      source: intervals,
    },
    'read.tightFront': read('Front axle', 'bars tight', 'tight.front'),
    'read.tightRear': read('Rear axle', 'bars tight', 'tight.rear'),
    'read.tightTrailer': read('Trailer axles', 'bars tight', 'tight.trailer'),
    'read.slackFront': read('Front axle', 'bars slack', 'slack.front'),
    'read.slackRear': read('Rear axle', 'bars slack', 'slack.rear'),
    'read.slackTrailer': read('Trailer axles', 'bars slack', 'slack.trailer'),
    'read.aloneFront': read('Front axle', 'vehicle alone', 'alone.front'),
    'read.aloneRear': read('Rear axle', 'vehicle alone', 'alone.rear'),
    'read.leftWheels': read('Left wheels', 'by themselves', 'trailer.leftWheels'),
    'read.rightWheels': read('Right wheels', 'by themselves', 'trailer.rightWheels'),
    'least.tightFront': end('Front axle, bars tight, at the least', least('tight.front')),
    'most.tightFront': end('Front axle, bars tight, at the most', most('tight.front')),
    'least.slackFront': end('Front axle, bars slack, at the least', least('slack.front')),
    'most.slackFront': end('Front axle, bars slack, at the most', most('slack.front')),
    'least.aloneFront': end('Front axle, vehicle alone, at the least', least('alone.front')),
    'most.aloneFront': end('Front axle, vehicle alone, at the most', most('alone.front')),
  },
});
