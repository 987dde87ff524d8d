import {
  electricTowRange,
  hitchSetup,
  sway,
  topics,
  towedCar,
  towFit,
  truckCamper,
  weighIn,
} from '@tarebook/rules';
import { answerTraced, type FactsGiven, formsOf, type Topic } from '@tarebook/rules/engine';
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

const behind = {
  'trailer.dryWeight': '3,500 lb',
  'trailer.dryTongueWeight': '400 lb',
  'trailer.cargo': [{ weight: '300 lb', ahead: '-12 ft' }],
} satisfies FactsGiven;
const gross = { 'trailer.gvwr': '6,500 lb' };
const label = { 'tire.labelPressure': '65 psi' };

/** What two facts prove, and one of them a little otherwise does not. */
const proved: readonly (readonly [
  topic: Topic,
  of: string,
  facts: FactsGiven,
  level: string,
  other: FactsGiven,
  otherwise: string,
])[] = [
  [
    hitchSetup,
    'ball-gross',
    { ...gross, 'hitch.ballRating': '6,499 lb' },
    'stop',
    { ...gross, 'hitch.ballRating': '6,500 lb' },
    'ok',
  ],
  [
    hitchSetup,
    'mount-gross',
    { ...gross, 'hitch.mountRating': '6,499 lb' },
    'stop',
    { ...gross, 'hitch.mountRating': '6,500 lb' },
    'ok',
  ],
  [
    hitchSetup,
    'bar-setting',
    { 'vehicle.fenderUnhitched': '34 in', 'vehicle.fenderTight': '33.9 in' },
    'stop',
    { 'vehicle.fenderUnhitched': '34 in', 'vehicle.fenderTight': '34 in' },
    'unknown',
  ],
  [
    hitchSetup,
    'surge-bars',
    { 'hitch.distribution': 'yes', 'trailer.brakes': 'surge' },
    'if',
    { 'hitch.distribution': 'yes', 'trailer.brakes': 'electric' },
    'ok',
  ],
  [
    weighIn,
    'front-pressed',
    { 'tight.front': '3,140 lb', 'alone.front': '3,100 lb' },
    'stop',
    { 'tight.front': '3,120 lb', 'alone.front': '3,100 lb' },
    'ok',
  ],
  [
    weighIn,
    'front-light',
    { 'slack.front': '2,740 lb', 'alone.front': '3,100 lb' },
    'care',
    { 'slack.front': '2,800 lb', 'alone.front': '3,100 lb' },
    'ok',
  ],
  [
    hitchSetup,
    'chains',
    { 'trailer.coupling': 'fifth-wheel' },
    'not-asked',
    { 'trailer.coupling': 'ball' },
    'if',
  ],
  [
    weighIn,
    'tongue-share',
    { 'slack.trailer': '4,500 lb', 'trailer.measuredTongueWeight': '330 lb' },
    'stop',
    { 'slack.trailer': '4,500 lb', 'trailer.measuredTongueWeight': '345 lb' },
    'care',
  ],
  [
    weighIn,
    'tongue-negative',
    { 'slack.front': '3,300 lb' },
    'not-asked',
    { 'trailer.measuredTongueWeight': '-1 lb' },
    'stop',
  ],
  [
    towFit,
    'tail-unreckoned',
    behind,
    'unknown',
    { ...behind, 'trailer.ballToAxle': '16 ft' },
    'not-asked',
  ],
  [
    sway,
    'tail-unreckoned',
    behind,
    'unknown',
    { ...behind, 'trailer.measuredTongueWeight': '400 lb' },
    'not-asked',
  ],
  [sway, 'sway-felt', { 'sway.felt': 'now' }, 'not-asked', { 'sway.felt': 'never' }, 'ok'],
  [
    truckCamper,
    'empty-over',
    { 'vehicle.gvwr': '7,000 lb', 'vehicle.curbWeight': '7,001 lb' },
    'stop',
    { 'vehicle.gvwr': '7,000 lb', 'vehicle.curbWeight': '7,000 lb' },
    'ok',
  ],
  [
    electricTowRange,
    'empty-over',
    { 'vehicle.gvwr': '6,000 lb', 'vehicle.curbWeight': '6,001 lb' },
    'stop',
    { 'vehicle.gvwr': '6,000 lb', 'vehicle.curbWeight': '6,000 lb' },
    'ok',
  ],
  [
    electricTowRange,
    'start-charge',
    { 'trip.startCharge': '14 %' },
    'stop',
    { 'trip.startCharge': '15 %' },
    'ok',
  ],
  [
    truckCamper,
    'seat-belts',
    {
      'vehicle.seats': '2',
      'load.occupants': [{ weight: '200 lb' }, { weight: '90 lb' }, { weight: '80 lb' }],
    },
    'stop',
    {
      'vehicle.seats': '3',
      'load.occupants': [{ weight: '200 lb' }, { weight: '90 lb' }, { weight: '80 lb' }],
    },
    'ok',
  ],
  [
    towedCar,
    'motorhome-over',
    { 'vehicle.gcwr': '20,000 lb', 'motorhome.weighed': '20,001 lb' },
    'stop',
    { 'vehicle.gcwr': '20,000 lb', 'motorhome.weighed': '20,000 lb' },
    'ok',
  ],
  [
    towedCar,
    'motorhome-over',
    { 'vehicle.gawrRear': '9,600 lb', 'motorhome.rearWeighed': '9,601 lb' },
    'stop',
    { 'vehicle.gawrRear': '9,600 lb', 'motorhome.rearWeighed': '9,600 lb' },
    'ok',
  ],
  [
    towedCar,
    'steering',
    { 'towed.steeringFree': 'no' },
    'unknown',
    { 'towed.steeringFree': 'no', 'towed.manner': 'trailer' },
    'not-asked',
  ],
  [
    towedCar,
    'brake',
    { 'towed.brake': 'no', 'towed.weight': '3,001 lb' },
    'unknown',
    { 'towed.brake': 'no', 'towed.weight': '3,000 lb' },
    'if',
  ],
  [
    towedCar,
    'tow-bar',
    { 'towBar.rating': '5,000 lb', 'towed.weight': '5,001 lb' },
    'stop',
    { 'towBar.rating': '5,000 lb', 'towed.weight': '5,001 lb', 'towed.manner': 'trailer' },
    'not-asked',
  ],
  [
    towedCar,
    'receiver-tongue',
    { 'hitch.receiverTongueRating': '350 lb', 'towed.tongue': '351 lb' },
    'stop',
    {
      'hitch.receiverTongueRating': '350 lb',
      'towed.tongue': '351 lb',
      'towed.manner': 'four-down',
    },
    'not-asked',
  ],
  [
    towedCar,
    'cables',
    { 'towed.cables': 'unknown' },
    'not-asked',
    { 'towed.cables': 'no' },
    'stop',
  ],
];

describe('what two facts prove is said', () => {
  const levelOf = (topic: Topic, facts: FactsGiven, of: string): string | undefined => {
    const { limits, findings } = answerTraced(topic, { facts, asOf });
    return limits.find(({ id }) => id === of)?.state ?? findings.find(({ id }) => id === of)?.level;
  };

  test.each(proved.map(([topic, of, ...rest]) => [topic.id, of, topic, ...rest] as const))(
    '%s: %s',
    (_, of, topic, facts, level, other, otherwise) => {
      expect(levelOf(topic, facts, of)).toBe(level);
      expect(levelOf(topic, other, of)).toBe(otherwise);
    },
  );

  test.each([
    [{ ...label, 'wheel.maxPressure': '64 psi' }, /these are not the wheels that the label means/],
    [
      { 'wheel.rating': '1,500 lb', 'trailer.tireCapacity': '1,820 lb' },
      /The wheel is the limit: 1,500/,
    ],
    [
      { 'tire.pressure': '74 psi', 'tire.maxPressure': '65 psi', 'tire.readCold': 'no' },
      /are the most, read cold/,
    ],
  ])('tires: %j', (facts, said) => {
    expect(formsOf(topics.tires as Topic, { facts, asOf }).forms.spoken).toMatch(said);
  });
});

test('what may still be packed keeps to what is towed without brakes, and leaves the tongue its share', () => {
  const leftOf = (facts: FactsGiven): readonly (number | null | undefined)[] => {
    const { values } = answerTraced(towFit as Topic, { facts, asOf });
    return [values['trailerWeight.left']?.hi, values['tongue.left']?.hi];
  };
  const light = {
    'trailer.dryWeight': '1,300 lb',
    'trailer.gvwr': '2,000 lb',
    'trailer.dryTongueWeight': '150 lb',
    'vehicle.maxTrailerWeight': '7,000 lb',
    'vehicle.maxTongueCarried': '700 lb',
    'vehicle.placardPayload': '1,600 lb',
  };
  // Up to 1,500 lb nobody has to look up the manual's limit; 15 % of 1,500 lb less the 165 there are.
  expect(leftOf({ ...light, 'trailer.brakes': 'none' })).toEqual([200, 60]);
  expect(leftOf({ ...light, 'trailer.brakes': 'none', 'vehicle.maxUnbraked': '1,800 lb' })).toEqual(
    [500, 105],
  );
  expect(leftOf({ ...light, 'trailer.brakes': 'electric' })).toEqual([700, 135]);
});
