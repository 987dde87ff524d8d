import { topics } from '@tarebook/rules';
import { answerTraced, defineTopic, type FactsGiven, type Topic } from '@tarebook/rules/engine';
import { describe, expect, test } from 'vitest';

/*
 * Where somebody could be hurt, the last figure that will do and the first that will not stand here by
 * themselves, on both sides of the parameter, beside the filed cases. Sources stand with the parameters.
 */
type Edge = readonly [
  topic: string,
  parameter: string,
  of: string,
  facts: FactsGiven,
  fact: string,
  within: readonly [figure: string, level: string],
  beyond: readonly [figure: string, level: string],
];

const pin = {
  'trailer.coupling': 'fifth-wheel',
  'trailer.dryWeight': '6,000 lb',
  'vehicle.maxTrailerWeight': '9,000 lb',
};
const noBrakes = { 'trailer.brakes': 'none', 'vehicle.maxTrailerWeight': '6,000 lb' };
const axle = {
  'trailer.axles': '1',
  'trailer.gawr': '4,500 lb',
  'trailer.dryWeight': '4,000 lb',
  'trailer.measuredTongueWeight': '400 lb',
};
const onHand = { 'cylinder.fill': '20 lb', 'cylinder.tare': '17 lb' };
const lithium = { 'battery.chemistry': 'lifepo4', 'battery.capacity': '100 Ah' };
const rested = {
  'battery.chemistry': 'flooded',
  'battery.volts': '12 V',
  'battery.chargedBefore': 'yes',
  'battery.reading': 'at-rest',
  'battery.rested': '24 h',
};
const front = {
  'slack.front': '2,800 lb',
  'alone.front': '3,200 lb',
  'scale.step': '0 lb',
};
const night = { 'water.state': 'in-use', 'trailer.use': 'lived-in', 'tanks.place': 'enclosed' };

const edges: readonly Edge[] = [
  [
    'tow-fit',
    'unbraked.careAbove',
    'finding.unbraked',
    noBrakes,
    'trailer.dryWeight',
    ['1,000 lb', 'ok'],
    ['1,001 lb', 'care'],
  ],
  [
    'tow-fit',
    'unbraked.askAbove',
    'finding.unbraked',
    noBrakes,
    'trailer.dryWeight',
    ['1,500 lb', 'care'],
    ['1,501 lb', 'unknown'],
  ],
  [
    'tow-fit',
    'unbraked.stopAbove',
    'finding.unbraked',
    { ...noBrakes, 'vehicle.maxUnbraked': '5,000 lb' },
    'trailer.dryWeight',
    ['3,000 lb', 'care'],
    ['3,001 lb', 'stop'],
  ],
  [
    'tow-fit',
    'grade.launch',
    'finding.grade',
    {},
    'trip.steepestGrade',
    ['12 %', 'ok'],
    ['12.1 %', 'care'],
  ],
  [
    'tow-fit',
    'tongue.stopBelowPin',
    'finding.tongue-share',
    pin,
    'trailer.measuredTongueWeight',
    ['600 lb', 'care'],
    ['599 lb', 'stop'],
  ],
  [
    'tow-fit',
    'tongue.leastPinShare',
    'finding.tongue-share',
    pin,
    'trailer.measuredTongueWeight',
    ['900 lb', 'ok'],
    ['899 lb', 'care'],
  ],
  [
    'tow-fit',
    'tongue.mostPinShare',
    'finding.tongue-share',
    pin,
    'trailer.measuredTongueWeight',
    ['1,500 lb', 'ok'],
    ['1,501 lb', 'care'],
  ],
  [
    'tow-fit',
    'margin.trailerTires',
    'limit.trailer-tires',
    axle,
    'trailer.tireCapacity',
    ['2,000 lb', 'ok'],
    ['1,999 lb', 'care'],
  ],
  [
    'tow-fit',
    'tire.passengerDivisor',
    'limit.trailer-tires',
    { ...axle, 'trailer.tireKind': 'passenger' },
    'trailer.tireCapacity',
    ['1,980 lb', 'care'],
    ['1,979 lb', 'stop'],
  ],
  [
    'hitch-setup',
    'class.firstMost',
    'finding.ball-class',
    { 'hitch.ballSize': '1.875 in' },
    'trailer.gvwr',
    ['2,000 lb', 'ok'],
    ['2,001 lb', 'stop'],
  ],
  [
    'hitch-setup',
    'class.thirdMost',
    'finding.ball-class',
    { 'hitch.ballSize': '2 in', 'trailer.couplerSize': '2.3125 in' },
    'trailer.gvwr',
    ['5,000 lb', 'ok'],
    ['5,001 lb', 'stop'],
  ],
  [
    'weigh-in',
    'side.most',
    'finding.side-to-side',
    { 'trailer.rightWheels': '1,900 lb' },
    'trailer.leftWheels',
    ['2,100 lb', 'ok'],
    ['2,101 lb', 'care'],
  ],
  [
    'weigh-in',
    'restored.least',
    'finding.restored',
    { ...front },
    'tight.front',
    ['3,020 lb', 'ok'],
    ['2,980 lb', 'care'],
  ],
  [
    'house-battery',
    'cells.freezing',
    'finding.cold-charge',
    { ...lithium, 'charger.current': '20 A' },
    'battery.temperature',
    ['32 °F', 'ok'],
    ['31.9 °F', 'stop'],
  ],
  [
    'house-battery',
    'cells.coldest',
    'finding.too-cold',
    lithium,
    'battery.temperature',
    ['-4 °F', 'ok'],
    ['-4.1 °F', 'stop'],
  ],
  [
    'house-battery',
    'deadCell.most',
    'finding.dead-cell',
    rested,
    'battery.voltage',
    ['10.81 V', 'ok'],
    ['10.8 V', 'stop'],
  ],
  [
    'house-battery',
    'margin.fuse',
    'limit.fuse-current',
    { 'wire.gauge': '2', 'wire.current': '80 A' },
    'wire.fuse',
    ['100 A', 'ok'],
    ['99 A', 'care'],
  ],
  [
    'gas-supply',
    'alarm.gasLife',
    'finding.alarms',
    { 'alarm.monoxideAge': '1 yr' },
    'alarm.gasAge',
    ['5 yr', 'ok'],
    ['5.1 yr', 'stop'],
  ],
  [
    'gas-supply',
    'alarm.monoxideSure',
    'finding.alarms',
    { 'alarm.gasAge': '1 yr' },
    'alarm.monoxideAge',
    ['5 yr', 'ok'],
    ['5.1 yr', 'if'],
  ],
  [
    'gas-supply',
    'alarm.monoxideLife',
    'finding.alarms',
    { 'alarm.gasAge': '1 yr' },
    'alarm.monoxideAge',
    ['7 yr', 'if'],
    ['7.1 yr', 'stop'],
  ],
  [
    'gas-supply',
    'fill.tolerance',
    'finding.cylinder-overfilled',
    onHand,
    'cylinder.scaleWeight',
    ['38 lb', 'ok'],
    ['38.1 lb', 'stop'],
  ],
  [
    'gas-supply',
    'gas.least',
    'finding.gas-left',
    onHand,
    'cylinder.scaleWeight',
    ['17.5 lb', 'ok'],
    ['17.4 lb', 'stop'],
  ],
  [
    'gas-supply',
    'hose.life',
    'finding.hose',
    { 'hose.sound': 'yes' },
    'hose.age',
    ['10 yr', 'ok'],
    ['10.1 yr', 'care'],
  ],
  [
    'gas-supply',
    'cylinder.notice',
    'finding.cylinder-date',
    { 'cylinder.dateKind': 'made' },
    'cylinder.age',
    ['11 yr', 'ok'],
    ['11.1 yr', 'care'],
  ],
  [
    'gas-supply',
    'regulator.life',
    'finding.regulator-age',
    {},
    'regulator.age',
    ['10 yr', 'ok'],
    ['10.1 yr', 'care'],
  ],
  [
    'shore-power',
    'voltage.low',
    'finding.low-voltage',
    { 'supply.outlet': 'trailer-30' },
    'voltage.outlet',
    ['108 V', 'ok'],
    ['107 V', 'care'],
  ],
  [
    'service-triage',
    'tire.lookAt',
    'finding.soft-tire',
    { 'tire.mates': '80 psi' },
    'tire.softest',
    ['72.1 psi', 'ok'],
    ['72 psi', 'care'],
  ],
  [
    'service-triage',
    'hub.careFrom',
    'finding.hubs',
    { 'hub.coolest': '100 °F' },
    'hub.hottest',
    ['139 °F', 'ok'],
    ['140 °F', 'care'],
  ],
  [
    'cold-weather',
    'blowout.most',
    'limit.blow-out',
    {},
    'blowout.pressure',
    ['50 psi', 'ok'],
    ['51 psi', 'stop'],
  ],
  [
    'cold-weather',
    'frost.hard',
    'finding.water',
    { ...night, 'frost.hours': '10 h' },
    'outside.temperature',
    ['20 °F', 'care'],
    ['19 °F', 'stop'],
  ],
  [
    'cold-weather',
    'frost.brief',
    'finding.water',
    { ...night, 'tanks.place': 'exposed', 'outside.temperature': '28 °F' },
    'frost.hours',
    ['4 h', 'care'],
    ['4.1 h', 'stop'],
  ],
  [
    'body-repair',
    'moisture.care',
    'finding.damp',
    {},
    'wood.moisture',
    ['16 %', 'ok'],
    ['16.1 %', 'care'],
  ],
  [
    'body-repair',
    'moisture.most',
    'finding.damp',
    {},
    'wood.moisture',
    ['20 %', 'care'],
    ['20.1 %', 'stop'],
  ],
  [
    'sway',
    'speed.careAbove',
    'finding.speed',
    {},
    'trip.speed',
    ['55 mph', 'ok'],
    ['56 mph', 'care'],
  ],
];

const levelOf = (topic: Topic, facts: FactsGiven, of: string): string | undefined => {
  const answer = answerTraced(topic, { facts, asOf: '2026-11-01' });
  const limit = answer.limits.find(({ id }) => `limit.${id}` === of);
  return limit?.state ?? answer.findings.find(({ id }) => `finding.${id}` === of)?.level;
};

function topicNamed(id: string): Topic {
  const found = topics[id];
  if (!found) throw new Error(`There is no topic ${id}.`);
  return found;
}

/** Each topic with those parameters a tenth more; a rule set is looked through once, and not for each. */
const raised = new Map(
  [...new Set(edges.map(([id]) => id))].map((id) => {
    const topic = topicNamed(id);
    const of = new Set(edges.flatMap(([each, parameter]) => (each === id ? [parameter] : [])));
    const parameters = Object.entries(topic.parameters).map(([name, parameter]) => {
      // A tenth more may be more than a dealer may choose; here it is tried all the same.
      const { range: _, ...free } = parameter;
      const values = parameter.values.map((each) => ({ ...each, value: each.value * 1.1 }));
      return [name, of.has(name) ? { ...free, values } : parameter] as const;
    });
    return [id, defineTopic<Topic>({ ...topic, parameters: Object.fromEntries(parameters) })];
  }),
);

describe.each(edges)('%s: %s', (id, _, of, facts, fact, [last, will], [first, willNot]) => {
  const topic = topicNamed(id);
  const levels = (by: Topic) =>
    [last, first].map((figure) => levelOf(by, { ...facts, [fact]: figure }, of));

  test(`${of} at ${last} and ${first}`, () => {
    expect(levels(topic)).toEqual([will, willNot]);
  });

  test('a tenth more would be noticed', () => {
    const other = raised.get(id);
    expect(other && levels(other)).not.toEqual([will, willNot]);
    expect(other).toBeDefined();
  });
});
