import { topics } from '@tarebook/rules';
import { describe, expect, test } from 'vitest';
import { sayings } from '../words/sayings/all';
import { factsIn } from './facts';
import { formOf, neededIn } from './saying-forms';

function told(id: string, text: string) {
  const topic = topics[id];
  if (!topic) throw new Error(id);
  return factsIn(topic, text);
}

/** A topic, what somebody writes, and what is told by it: no more and no less of these facts. */
const said: readonly (readonly [string, string, Readonly<Record<string, string>>])[] = [
  // The word stands before its number, behind it, or both do.
  ['tow-fit', 'the book lets me tow 6,100', { 'vehicle.maxTrailerWeight': '6100 lb' }],
  [
    'tow-fit',
    'max trailer 5,500, door label 1,210',
    { 'vehicle.maxTrailerWeight': '5500 lb', 'vehicle.placardPayload': '1210 lb' },
  ],
  ['tow-fit', 'trailer is 5,900 gross', { 'trailer.gvwr': '5900 lb' }],
  ['tow-fit', 'rated 3,000 without brakes', { 'vehicle.maxUnbraked': '3000 lb' }],
  ['tow-fit', 'tongue came out at 455 on the scale', { 'trailer.measuredTongueWeight': '455 lb' }],
  ['tow-fit', 'brochure hitch weight was 510', { 'trailer.dryTongueWeight': '510 lb' }],
  // In thousands, where a word says so of what weighs as much.
  ['tow-fit', 'the trailer is eight gross', { 'trailer.gvwr': '8000 lb' }],
  // One number of two.
  [
    'tow-fit',
    'the receiver is 8,000 / 800',
    { 'hitch.receiverRating': '8000 lb', 'hitch.receiverTongueRating': '800 lb' },
  ],
  [
    'hitch-setup',
    'coupler is eighteen and a quarter off the ground',
    { 'trailer.couplerHeight': '18.25 in' },
  ],
  [
    'hitch-setup',
    'a two inch ball under a two and five-sixteenths coupler',
    { 'hitch.ballSize': '2 in', 'trailer.couplerSize': '2.3125 in' },
  ],
  [
    'hitch-setup',
    'front fender 35 unhitched, 36 1/2 with the bars slack, 35 1/2 bars set',
    {
      'vehicle.fenderUnhitched': '35 in',
      'vehicle.fenderSlack': '36.5 in',
      'vehicle.fenderTight': '35.5 in',
    },
  ],
  ['hitch-setup', 'the latch will not go down on the ball', { 'hitch.latched': 'no' }],
  [
    'weigh-in',
    'front 2,850 slack, 3,010 tight',
    { 'slack.front': '2850 lb', 'tight.front': '3010 lb' },
  ],
  [
    'weigh-in',
    'steer 3,400, drive 4,100, trailer 5,800. Unhitched: 3,600 / 3,000',
    {
      'tight.front': '3400 lb',
      'tight.rear': '4100 lb',
      'tight.trailer': '5800 lb',
      'alone.front': '3600 lb',
      'alone.rear': '3000 lb',
    },
  ],
  // A gauge is no length, and running watts are watts.
  ['shore-power', '40 ft 12 gauge cord', { 'cord.length': '40 ft', 'cord.gauge': '12' }],
  ['shore-power', 'the genny gives 2,100 running watts', { 'generator.power': '2100 W' }],
  ['shore-power', 'the ac draws 12.6 a', { 'airConditioner.current': '12.6 A' }],
  ['shore-power', 'the step zaps my fingers', { 'skin.tingles': 'yes' }],
  [
    'house-battery',
    'two 90 Ah agm in parallel',
    { 'bank.parallel': '2', 'battery.capacity': '90 Ah', 'battery.chemistry': 'agm' },
  ],
  [
    'house-battery',
    '2x80ah lithium',
    { 'battery.capacity': '80 Ah', 'battery.chemistry': 'lifepo4' },
  ],
  [
    'house-battery',
    '12.4 volts at rest',
    { 'battery.voltage': '12.4 V', 'battery.reading': 'at-rest' },
  ],
  ['gas-supply', 'a 30-pounder, full', { 'cylinder.fill': '30 lb' }],
  [
    'gas-supply',
    'tw 18.2 and 33.1 on the fish scale',
    { 'cylinder.tare': '18.2 lb', 'cylinder.scaleWeight': '33.1 lb' },
  ],
  // A sign that is said.
  ['cold-weather', 'minus nine Celsius outside', { 'outside.temperature': '-9 °C' }],
  ['cold-weather', 'down to twelve below', { 'outside.temperature': '-12 °F' }],
  [
    'cold-weather',
    'lines are full and it is 16 out',
    { 'water.state': 'in-use', 'outside.temperature': '16 °F' },
  ],
  ['spares-kit', 'a 4 ton bottle jack', { 'lift.rating': '8000 lb', 'lift.kind': 'bottle-jack' }],
  ['body-repair', 'the shop gets $150 an hour', { 'shop.rate': '150 USD/h' }],
  [
    'sway',
    'it sways whenever a big truck passes, 25 footer',
    { 'sway.felt': 'with-trucks', 'trailer.length': '25 ft' },
  ],
  [
    'service-triage',
    'pulled over on the shoulder, two lug nuts are loose',
    { 'trailer.stands': 'on-the-road', 'trouble.in': 'wheel-or-hub', 'danger.sign': 'loose' },
  ],
];

test.each(said)('%s: %s', (id, text, facts) => {
  expect(told(id, text).facts).toMatchObject(facts);
});

/** What is said with the same words of something else. */
const notSaid: readonly (readonly [string, string, string])[] = [
  ['tow-fit', 'I have 450 lb of payload left', 'vehicle.placardPayload'],
  ['tow-fit', 'we have tonight eight guests', 'outside.temperature'],
  ['cold-weather', 'we have tonight eight guests', 'outside.temperature'],
  ['cold-weather', 'it is 2:14 am', 'outside.temperature'],
  ['tow-fit', 'a half ton with a one ton axle', 'vehicle.maxTrailerWeight'],
  ['house-battery', 'a 12 volt system', 'battery.voltage'],
  ['theft-deterrence', 'do I need a coupler lock', 'guard.held'],
  ['gas-supply', 'a 1 lb throwaway bottle', 'cylinder.fill'],
  // Who smells gas has no trouble with the stove.
  ['service-triage', 'it smells like propane by the stove', 'trouble.in'],
  // Told in two ways it is not told.
  ['house-battery', 'inverter 2,000 W or inverter 3,000 W', 'inverter.power'],
];

test.each(notSaid)('%s: %s: no %s', (id, text, fact) => {
  expect(told(id, text).facts).not.toHaveProperty([fact]);
});

test('each fact comes with the very words that say it', () => {
  const text = 'Door label 1,210, the latch WON’T close. Coupler’s 19 off the ground.';
  const { facts, words } = told('hitch-setup', text);
  expect(Object.keys(words).toSorted()).toEqual(Object.keys(facts).toSorted());
  for (const each of Object.values(words)) expect(text).toContain(each);
});

describe('a saying is looked for as it is written', () => {
  test.each([
    ['coupler # [in] high', 'the coupler is ## in high'.replace('##', '#\u0002')],
    ['(wont|cannot) .. close', 'it wont quite ever close'],
    ["don't hook", 'i dont hook it'],
    ['tie-downs', 'no tie downs'],
  ])('%s in %s', (saying, text) => {
    expect(text.match(formOf(saying))).not.toBeNull();
  });
  test('not over the end of a sentence, and not within a word', () => {
    expect('it wont. now close'.match(formOf('wont .. close'))).toBeNull();
    expect('the uncoupler'.match(formOf('coupler'))).toBeNull();
  });
  test('a text that holds it has one of each of its words', () => {
    expect(neededIn('(wont|cannot) .. close [the] door')).toEqual([
      ['wont', 'cannot'],
      ['close'],
      ['door'],
    ]);
  });
});

test('every saying is of a fact that some topic asks, and of a value it may have', () => {
  const all = Object.values(topics);
  const known = (fact: string) => all.flatMap((topic) => topic.facts[fact] ?? []);
  for (const fact of Object.keys(sayings.numbers)) expect(known(fact), fact).not.toEqual([]);
  for (const [fact, options] of Object.entries(sayings.values)) {
    const [declared] = known(fact);
    expect(declared, fact).toBeDefined();
    if (declared?.kind === 'choice')
      for (const option of Object.keys(options)) expect(declared.options).toContain(option);
    if (declared?.kind === 'yes-no')
      for (const option of Object.keys(options)) expect(['yes', 'no']).toContain(option);
  }
  for (const fact of [...Object.keys(sayings.only), ...Object.keys(sayings.unless)])
    expect(known(fact), fact).not.toEqual([]);
});
