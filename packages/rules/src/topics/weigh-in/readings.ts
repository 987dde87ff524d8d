import { part } from '../../engine/define/topic';
import { house, intervals } from './sources';

/** A printed figure stands for half a step either way, and for what the scale may be off. */
const least = (name: string): string => `${name} * (1 - scale.tolerance) - scale.step / 2`;
const most = (name: string): string => `${name} * (1 + scale.tolerance) + scale.step / 2`;
const read = (label: string, name: string) =>
  ({
    label,
    noun: label.toLowerCase(),
    unit: 'lb',
    is: `between(${least(name)}, ${most(name)})`,
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
    'read.tightFront': read('Front axle, bars tight, as far as the scale tells', 'tight.front'),
    'read.tightRear': read('Rear axle, bars tight, as far as the scale tells', 'tight.rear'),
    'read.tightTrailer': read(
      'Trailer axles, bars tight, as far as the scale tells',
      'tight.trailer',
    ),
    'read.slackFront': read('Front axle, bars slack, as far as the scale tells', 'slack.front'),
    'read.slackRear': read('Rear axle, bars slack, as far as the scale tells', 'slack.rear'),
    'read.slackTrailer': read(
      'Trailer axles, bars slack, as far as the scale tells',
      'slack.trailer',
    ),
    'read.aloneFront': read('Front axle, vehicle alone, as far as the scale tells', 'alone.front'),
    'read.aloneRear': read('Rear axle, vehicle alone, as far as the scale tells', 'alone.rear'),
    'least.tightFront': end('Front axle, bars tight, at the least', least('tight.front')),
    'most.tightFront': end('Front axle, bars tight, at the most', most('tight.front')),
    'least.slackFront': end('Front axle, bars slack, at the least', least('slack.front')),
    'most.slackFront': end('Front axle, bars slack, at the most', most('slack.front')),
    'least.aloneFront': end('Front axle, vehicle alone, at the least', least('alone.front')),
    'most.aloneFront': end('Front axle, vehicle alone, at the most', most('alone.front')),
  },
});
