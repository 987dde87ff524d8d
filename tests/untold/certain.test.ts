import { hitchSetup, weighIn } from '@tarebook/rules';
import { answerTraced, type FactsGiven, type Topic } from '@tarebook/rules/engine';
import { describe, expect, test } from 'vitest';

/**
 * What is certainly too much is a stop, whatever else nobody weighed: each of these was once hidden
 * behind something unknown. One step less, and it is none.
 */
const asOf = '2026-11-01';
const stopsOf = (topic: Topic, facts: FactsGiven): readonly string[] => {
  const { limits, findings } = answerTraced(topic, { facts, asOf });
  return [
    ...limits.flatMap(({ id, state }) => (state === 'stop' ? [id] : [])),
    ...findings.flatMap(({ id, level }) => (level === 'stop' ? [id] : [])),
  ];
};

const tight = { 'tight.front': '3,000 lb', 'tight.rear': '4,500 lb' };
const alone = { 'alone.front': '3,000 lb', 'alone.rear': '3,000 lb' };
const wheels = { 'trailer.leftWheels': '3,000 lb', 'trailer.rightWheels': '3,100 lb' };
const tongue = { 'trailer.measuredTongueWeight': '600 lb' };

const rows: readonly (readonly [
  name: string,
  facts: FactsGiven,
  rating: string,
  over: string,
  within: string,
  of: string,
])[] = [
  ['the vehicle alone, rear', alone, 'vehicle.gawrRear', '2,980 lb', '3,020 lb', 'alone-over'],
  ['the vehicle alone, front', alone, 'vehicle.gawrFront', '2,980 lb', '3,020 lb', 'alone-over'],
  ['the vehicle alone, gross', alone, 'vehicle.gvwr', '5,960 lb', '6,030 lb', 'alone-over'],
  [
    'the vehicle alone, payload',
    { ...alone, 'vehicle.curbWeight': '5,000 lb' },
    'vehicle.placardPayload',
    '960 lb',
    '1,030 lb',
    'alone-over',
  ],
  [
    'one axle of the vehicle alone, over the gross rating',
    { 'alone.rear': '4,000 lb' },
    'vehicle.gvwr',
    '3,950 lb',
    '4,050 lb',
    'alone-over',
  ],
  ['the vehicle with tight bars', tight, 'vehicle.gvwr', '7,400 lb', '7,500 lb', 'vehicle-gross'],
  [
    'the payload with tight bars',
    { ...tight, 'vehicle.curbWeight': '6,000 lb' },
    'vehicle.placardPayload',
    '1,400 lb',
    '1,500 lb',
    'payload',
  ],
  [
    'one axle hitched',
    { 'tight.rear': '4,500 lb' },
    'vehicle.gvwr',
    '4,400 lb',
    '4,500 lb',
    'vehicle-gross',
  ],
  ['both vehicle axles hitched', tight, 'vehicle.gcwr', '7,400 lb', '7,500 lb', 'combined'],
  ['the vehicle alone against both', alone, 'vehicle.gcwr', '5,900 lb', '6,000 lb', 'combined'],
  [
    'the vehicle alone and the trailer’s axles',
    { ...alone, 'slack.trailer': '5,000 lb' },
    'vehicle.gcwr',
    '10,900 lb',
    '11,000 lb',
    'combined',
  ],
  [
    'what tight bars leave of the tongue',
    { ...tight, ...alone },
    'vehicle.maxTongueCarried',
    '1,400 lb',
    '1,500 lb',
    'tongue',
  ],
  [
    'a tongue on a scale of its own',
    tongue,
    'vehicle.maxTongueCarried',
    '590 lb',
    '600 lb',
    'tongue',
  ],
  [
    'a tongue and the trailer’s axles',
    { ...tongue, 'slack.trailer': '4,400 lb' },
    'trailer.gvwr',
    '4,950 lb',
    '5,000 lb',
    'trailer-gross',
  ],
  [
    'a tongue and the vehicle alone',
    { ...tongue, ...alone },
    'vehicle.gvwr',
    '6,500 lb',
    '6,600 lb',
    'vehicle-gross',
  ],
  ['both sides wheel by wheel', wheels, 'trailer.gvwr', '6,000 lb', '6,100 lb', 'trailer-gross'],
  [
    'both sides against the axles',
    { ...wheels, 'trailer.axles': '2' },
    'trailer.gawr',
    '3,000 lb',
    '3,060 lb',
    'trailer-axles',
  ],
  [
    'axles that tight bars load more than slack ones',
    { 'tight.trailer': '4,000 lb', 'slack.trailer': '3,900 lb' },
    'trailer.gvwr',
    '3,950 lb',
    '4,000 lb',
    'trailer-gross',
  ],
];

describe('weigh-in: what is certainly over is a stop', () => {
  test.each(rows)('%s', (_, facts, rating, over, within, of) => {
    expect(stopsOf(weighIn, { ...facts, [rating]: over })).toContain(of);
    expect(stopsOf(weighIn, { ...facts, [rating]: within })).not.toContain(of);
  });

  test('also where the tongue was read in two ways, and only one of them is over', () => {
    const passes = {
      'slack.front': '2,860 lb',
      'slack.rear': '4,060 lb',
      'slack.trailer': '4,980 lb',
    };
    const facts = {
      ...{ ...passes, 'alone.front': '3,100 lb', 'alone.rear': '3,160 lb' },
      'vehicle.maxTongueCarried': '700 lb',
    };
    expect(stopsOf(weighIn, facts)).toEqual([]);
    const read = { ...facts, 'trailer.measuredTongueWeight': '900 lb' };
    const { limits } = answerTraced(weighIn as Topic, { facts: read, asOf });
    expect(limits.find(({ id }) => id === 'tongue')?.state).toBe('unknown');
  });
});

test.each([
  ['silent', {}],
  ['unknown', { 'trailer.brakes': 'unknown' }],
  ['told', { 'trailer.brakes': 'surge' }],
])('hitch-setup: a breakaway cable that is off is a stop, brakes %s', (_, brakes) => {
  expect(stopsOf(hitchSetup, { 'hitch.breakaway': 'no', ...brakes })).toEqual(['breakaway']);
});

test('hitch-setup: brakes behind a cable are assumed where nobody knows them, and that is listed', () => {
  const assumed = (brakes: FactsGiven): string =>
    answerTraced(hitchSetup as Topic, { facts: { 'hitch.breakaway': 'no', ...brakes }, asOf })
      .assumed.map(({ says }) => says)
      .join(' ');
  expect(assumed({})).toContain('brakes that its breakaway cable works');
  expect(assumed({ 'trailer.brakes': 'unknown' })).toContain(
    'brakes that its breakaway cable works',
  );
  expect(assumed({ 'trailer.brakes': 'surge' })).not.toContain('breakaway cable works');
});
