import { topics } from '@tarebook/rules';
import { describe, expect, test } from 'vitest';
import { amountsIn } from './amounts';
import { factsIn } from './facts';
import { masked, personalIn } from './personal';
import { partsOf } from './split';
import { urgentIn } from './urgent';

test.each([
  ['Can it pull 5,000 lb? And when do you close?', 2],
  ['1. Is it level? 2. What psi?', 2],
  ['First, how long does it last. Second, is it safe?', 2],
  ['The sticker says 1,412 pounds. Will that go?', 1],
  ['It tingles. Is that normal?', 1],
  ['call me', 1],
])('%s has %d questions', (text, count) => {
  expect(partsOf(text)).toHaveLength(count);
});

test.each([
  ['smells like propane in here', 'gas'],
  ['the CO alarm will not stop', 'alarm'],
  ['smoke from the left hub', 'smoke'],
  ['the plug is hot to the touch', 'heat'],
  ['I got shocked on the step', 'shock'],
  ['it will freeze tonight', 'frost'],
  ['two lug nuts are loose', 'wheel'],
  ['the brakes do not work', 'brakes'],
  ['it is swaying right now, what do I do', 'sway'],
  ['the hose of my fire table does not fit', null],
  ['do i need a fire extinguisher', null],
  ['the fire table set the awning on fire', 'smoke'],
  ['the trailer sways badly right now', 'sway'],
  ['does it sway when it is loaded', null],
  ['do i need sway control now that we are five', null],
  ['will a bar help against sway', null],
  ['which color does it come in', null],
])('%s: %s', (text, urgent) => {
  expect(urgentIn(text)).toBe(urgent);
});

test.each([
  [
    'Call 555-0142 or (555) 555-0177, or ask me at ann.b@example.org.',
    ['555-0142', '(555) 555-0177', 'ann.b@example.org'],
  ],
  ['I live at 14 Orchard Lane, and my plate is 7KQM204.', ['14 Orchard Lane', '7KQM204']],
  ['This is Ada Quill. Is it level? Thanks,\nAda Quill', ['Ada Quill', 'Ada Quill']],
  ['hi its brenda, ask Mr. Holt about order SO 7719', ['brenda', 'Mr. Holt', 'SO 7719']],
  ['This is Thursday. My name for it is Sway. I am Still here, Over and out', []],
  ['It weighs 5,150 lb and tows 7200 pounds at 65 mph, 12.1 volts.', []],
])('%s', (text, words) => {
  expect(personalIn(text)).toEqual(words);
  for (const each of words) expect(masked(text)).not.toContain(each);
});

test('amounts are read with their units, however people write them', () => {
  const read = (text: string) => amountsIn(text).map(({ value, unit }) => `${value} ${unit}`);
  expect(read('2 5/16 in, 37-5/8 inches, 3/4')).toEqual(['2.3125 in', '37.625 in', ...read('3/4')]);
  expect(read('1,412 pounds, 10.4k, $500, minus 8 °C, 12.1 v, 24.5 inches')).toEqual([
    '1412 lb',
    '10400 undefined',
    '500 USD',
    '-8 °C',
    '12.1 V',
    '24.5 in',
  ]);
});

test('what a ball measures across is never how high it stands', () => {
  const topic = topics['hitch-setup'];
  if (!topic) throw new Error('Hitch setup is gone.');
  const read = (text: string) => factsIn(topic, text).facts;
  expect(read('2 in ball, and my coupler says 2 5/16 in')).toEqual({
    'hitch.ballSize': '2 in',
    'trailer.couplerSize': '2.3125 in',
  });
  // It is measured from its platform to its crown; above the ground it is another height.
  expect(read('ball height is 3 in')).toEqual({ 'hitch.ballHeight': '3 in' });
  expect(read('ball height is 19 in')).toEqual({});
});

describe('a wrong weight is worse than none', () => {
  const read = (text: string) => {
    const topic = topics['tow-fit'];
    if (!topic) throw new Error('Tow fit is gone.');
    return factsIn(topic, text).facts;
  };

  test('a number is a fact by a word for it and its unit', () => {
    expect(read('max tow 7200, payload is 1,480 lb, dry 5150')).toEqual({
      'vehicle.maxTrailerWeight': '7200 lb',
      'vehicle.placardPayload': '1480 lb',
      'trailer.dryWeight': '5150 lb',
    });
  });

  test.each([
    'we drove 1,480 miles and love the payload talk',
    'payload? no idea. We have 4 kids and 2 dogs',
    'payload was the word of the day. 1,480 people came',
    'my payload of worries is 12 years old',
  ])('and otherwise none: %s', (text) => {
    expect(read(text)).toEqual({});
  });
});
