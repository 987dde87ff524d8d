import { readFileSync } from 'node:fs';
import {
  coldWeather,
  gasSupply,
  hitchSetup,
  houseBattery,
  offGridStay,
  retrofit,
  truckCamper,
  usedTrailer,
  weighIn,
} from '@tarebook/rules';
import {
  answerTraced,
  type FactsGiven,
  type Topic,
  topicFromPublished,
} from '@tarebook/rules/engine';
import { describe, expect, test } from 'vitest';

/**
 * What random rigs found against the law of the untold, kept: what was told stays as grave as what it
 * proves, or what stands in for the untold is listed with the answer.
 */
const asOf = '2026-11-01';
const answerOf = (topic: Topic, facts: FactsGiven) => answerTraced(topic, { facts, asOf });

const levelOf = (topic: Topic, facts: FactsGiven, of: string): string | undefined => {
  const answer = answerOf(topic, facts);
  const limit = answer.limits.find(({ id }) => `limit.${id}` === of);
  return limit?.state ?? answer.findings.find(({ id }) => `finding.${id}` === of)?.level;
};

const assumedOf = (topic: Topic, facts: FactsGiven): string =>
  answerOf(topic, facts)
    .assumed.map(({ says }) => says)
    .join(' ');

type Kept = readonly [
  name: string,
  topic: Topic,
  /** The kept version in which one thing more made it clean. */
  before: string,
  of: string,
  facts: FactsGiven,
  more: FactsGiven,
  was: string,
];

function keptTopic(id: string, version: string): Topic {
  const file = new URL(`../../packages/rules/published/${id}/${version}.json`, import.meta.url);
  return topicFromPublished(JSON.parse(readFileSync(file, 'utf8')));
}

const slack = { 'slack.rear': '3,960 lb', 'vehicle.gawrRear': '3,800 lb' };
const weighed = {
  'cylinder.fill': '20 lb',
  'cylinder.tare': '17 lb',
  'cylinder.scaleWeight': '40 lb',
};
const frost = {
  'night.gas': '6 lb',
  'night.hours': '10 h',
  'night.inside': '65 °F',
  'night.outside': '30 °F',
  'outside.temperature': '10 °F',
  'furnace.input': '30,000 Btu/h',
  'furnace.hours': '11 h',
  'furnace.blowerCurrent': '7 A',
  'battery.chemistry': 'flooded',
  'battery.capacity': '100 Ah',
  'battery.temperature': '30 °F',
};
const camper = {
  'vehicle.cargoRating': '2,250 lb',
  'camper.weight': '2,300 lb',
  'load.occupants': [{ weight: '420 lb' }],
} satisfies FactsGiven;
const cable = { 'hitch.breakaway': 'no' };

const kept: readonly Kept[] = [
  [
    'a rear axle over its rating with slack bars, which tight ones may bring within',
    weighIn,
    '6.0.0',
    'limit.rear-axle',
    { ...slack, 'tight.front': '3,040 lb' },
    { 'tight.rear': '3,660 lb' },
    'unknown',
  ],
  [
    'a cylinder told by its pounds and by a water capacity that does not go with them',
    gasSupply,
    '4.0.0',
    'finding.cylinder-overfilled',
    weighed,
    { 'cylinder.waterCapacity': '356 lb' },
    'stop',
  ],
  [
    'a share of the night that keeps nobody as warm as the last one',
    coldWeather,
    '5.0.0',
    'limit.blower-night',
    frost,
    { 'furnace.duty': '34 %' },
    'stop',
  ],
];

describe.each(kept)('%s', (_, topic, before, of, facts, more, was) => {
  test(`${topic.id} ${before} had it so`, () => {
    const old = keptTopic(topic.id, before);
    expect(levelOf(old, facts, of)).toBe('stop');
    expect(['ok', 'care']).toContain(levelOf(old, { ...facts, ...more }, of));
  });

  test(`${topic.id}: ${of} is ${was}, and nothing clean with one thing more`, () => {
    expect(levelOf(topic, facts, of)).toBe(was);
    if (was === 'stop')
      expect(['stop', 'unknown']).toContain(levelOf(topic, { ...facts, ...more }, of));
  });
});

test('a rear axle read by one pass alone is driven so, and that is listed', () => {
  const topic: Topic = weighIn;
  expect(levelOf(topic, slack, 'limit.rear-axle')).toBe('stop');
  expect(assumedOf(topic, slack)).toContain('driven without bars');
  for (const told of [{ 'hitch.distribution': 'yes' }, { 'hitch.distribution': 'unknown' }]) {
    expect(levelOf(topic, { ...slack, ...told }, 'limit.rear-axle')).toBe('unknown');
  }
  expect(levelOf(topic, { ...slack, 'hitch.distribution': 'no' }, 'limit.rear-axle')).toBe('stop');
});

test('an axle that tight bars may load further is not within its rating by slack ones', () => {
  const topic: Topic = weighIn;
  const facts: FactsGiven = {
    'hitch.distribution': 'yes',
    'slack.front': '2,840 lb',
    'slack.rear': '3,960 lb',
    'slack.trailer': '4,760 lb',
    'alone.front': '3,100 lb',
    'alone.rear': '3,060 lb',
    'trailer.axles': '2',
    'trailer.gawr': '2,600 lb',
  };
  const front = (rating: string) =>
    levelOf(topic, { ...facts, 'vehicle.gawrFront': rating }, 'limit.front-axle');
  expect([front('3,000 lb'), front('3,400 lb')]).toEqual(['unknown', 'ok']);
  expect(levelOf(topic, facts, 'limit.trailer-axles')).toBe('unknown');
  const without = { ...facts, 'hitch.distribution': 'no' };
  expect(levelOf(topic, without, 'limit.trailer-axles')).toBe('ok');
});

test('a rear axle that carries too much without the trailer is over its rating with bars too', () => {
  const topic: Topic = weighIn;
  const facts: FactsGiven = {
    'hitch.distribution': 'yes',
    'slack.front': '3,000 lb',
    'slack.rear': '4,600 lb',
    'slack.trailer': '4,400 lb',
    'alone.front': '3,300 lb',
    'alone.rear': '4,000 lb',
  };
  const rear = (gawr: string) =>
    levelOf(topic, { ...facts, 'vehicle.gawrRear': gawr }, 'limit.rear-axle');
  expect([rear('3,900 lb'), rear('4,300 lb'), rear('6,000 lb')]).toEqual(['stop', 'unknown', 'ok']);
  expect(assumedOf(topic, { ...facts, 'vehicle.gawrRear': '3,900 lb' })).toContain('not weighed');
  const front = { ...facts, 'vehicle.gawrFront': '3,400 lb' };
  expect(assumedOf(topic, front)).toContain('no more than it lost');
  expect(assumedOf(topic, { ...front, 'tight.front': '3,200 lb' })).not.toContain('than it lost');
});

test('a pass with tight bars of which no figure is known is no pass without bars', () => {
  const topic: Topic = weighIn;
  const facts = { ...slack, 'tight.rear': 'unknown' } satisfies FactsGiven;
  expect(levelOf(topic, facts, 'limit.rear-axle')).toBe('unknown');
  expect(levelOf(topic, facts, 'finding.rear-axle-slack')).toBe('care');
});

test('two 6-volt batteries side by side are half of what a 12-volt trailer wants, told or not', () => {
  const topic: Topic = houseBattery;
  const facts = { 'battery.volts': '6 V', 'bank.parallel': '2' };
  const level = (system: FactsGiven) =>
    levelOf(topic, { ...facts, ...system }, 'finding.half-voltage');
  const volts = ['12 V', '24 V', 'unknown', '6 V'];
  expect(level({})).toBe('stop');
  expect(assumedOf(topic, facts)).toContain('wired for 12 V');
  expect(volts.map((each) => level({ 'system.volts': each }))).toEqual([
    ...['stop', 'stop', 'unknown', 'ok'],
  ]);
});

test('a breakaway cable that is off is a stop until it is known that the trailer has no brakes', () => {
  const topic: Topic = hitchSetup;
  const level = (told: FactsGiven) => levelOf(topic, { ...cable, ...told }, 'finding.breakaway');
  expect(level({})).toBe('stop');
  expect(level({ 'trailer.brakes': 'electric' })).toBe('stop');
  expect(level({ 'trailer.brakes': 'unknown' })).toBe('stop');
  expect(assumedOf(topic, { ...cable, 'trailer.brakes': 'unknown' })).toContain('brakes that its');
  expect(level({ 'trailer.brakes': 'none' })).toBe('not-asked');
});

test('a tongue that lifts behind a camper is a stop, and no room for more in the bed', () => {
  const topic: Topic = truckCamper;
  const lifting = { ...camper, 'trailer.measuredTongueWeight': '-700 lb' };
  expect(levelOf(topic, camper, 'limit.cargo-rating')).toBe('stop');
  expect(levelOf(topic, lifting, 'limit.cargo-rating')).toBe('stop');
  expect(levelOf(topic, lifting, 'finding.tongue-negative')).toBe('stop');
  expect(answerOf(topic, lifting).outcome).toBe('does-not-carry-it');
});

describe('what stands in for the untold is listed until it is told', () => {
  const wire = {
    'wire.gauge': '6',
    'wire.length': '10 ft',
    'wire.current': '130 A',
  } satisfies FactsGiven;
  const water = { 'water.freshTank': '50 gal', 'water.daily': '10 gal/d', 'stay.days': '3 d' };
  test.each<readonly [string, Topic, FactsGiven, string, FactsGiven]>([
    ['a wire’s rating', houseBattery, wire, 'maker’s rating', { 'wire.rating': '180 A' }],
    ['a wire’s sheet', retrofit, wire, 'data sheet', { 'wire.resistance': '0.4 mΩ/ft' }],
    [
      'a gas alarm’s date',
      gasSupply,
      { 'alarm.gasAge': '9 yr' },
      'gas alarm',
      { 'alarm.gasReplaceBy': 'ahead' },
    ],
    [
      'a monoxide alarm’s date',
      usedTrailer,
      { 'alarm.monoxideAge': '9 yr' },
      'monoxide alarm',
      { 'alarm.monoxideReplaceBy': 'ahead' },
    ],
    [
      'water on arrival',
      offGridStay,
      { ...water, 'trailer.freshWater': '5 gal' },
      'No drinking water',
      { 'water.onArrival': 'yes' },
    ],
  ])('%s', (_, topic, facts, says, more) => {
    expect(assumedOf(topic, facts)).toContain(says);
    expect(assumedOf(topic, { ...facts, ...more })).not.toContain(says);
  });
});
