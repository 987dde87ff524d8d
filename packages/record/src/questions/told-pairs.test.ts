import { topics } from '@tarebook/rules';
import { describe, expect, test } from 'vitest';
import { factsIn } from './facts';
import { reader } from './read';

const read = reader({ topics });
const partOf = (text: string) =>
  read({ id: '1', channel: 'forum', askedOn: '2026-12-01', asker: '', text }).parts[0];
function told(id: string, text: string) {
  const topic = topics[id];
  if (!topic) throw new Error(id);
  const { facts, open } = factsIn(topic, text);
  return { facts, open: open.map(({ amount }) => amount.value) };
}

describe('a tongue and the trailer it was weighed with', () => {
  test.each([
    ['sway', '560 of 6150 on the tongue, is that enough? it sways'],
    ['weigh-in', 'tongue 560, trailer 6150 on the scale, is that ok?'],
    ['weigh-in', 'Scale says 560 out of 6,150 lb on the tongue, enough?'],
    ['sway', 'tongue is 560 of 6150 loaded, still sways'],
  ])('%s: %s', (id, text) => {
    const { facts, open } = told(id, text);
    expect(facts['trailer.measuredTongueWeight']).toBe('560 lb');
    expect(facts).not.toHaveProperty(['trailer.dryWeight']);
    expect(facts).not.toHaveProperty(['trailer.gvwr']);
    expect(open).toEqual([]);
  });
  test.each([
    ['sway', 'the brochure has a dry tongue of 560 of 6150'],
    ['tow-fit', '2 of 4 tires on the tongue side are new'],
    ['tow-fit', 'used 560 of 6150 miles, tongue creaks'],
  ])('nothing was weighed: %s: %s', (id, text) => {
    expect(told(id, text).facts).not.toHaveProperty(['trailer.measuredTongueWeight']);
  });
});

describe('a receiver’s two ratings, without and with weight distribution', () => {
  const both = {
    'hitch.receiverTongueCarried': '500 lb',
    'hitch.receiverCarried': '5000 lb',
    'hitch.receiverTongueRating': '650 lb',
    'hitch.receiverRating': '6500 lb',
  };
  test.each([
    'receiver 500/5000, with weight distribution 650/6500',
    'the receiver sticker says 500/5000 without and 650/6500 with',
    'hitch label: 5000/500 weight carrying, 6500/650 weight distributing',
    'receiver says 5,000 lb / 500 lb WC and 6,500 lb / 650 lb WD',
  ])('%s', (text) => {
    const { facts, open } = told('tow-fit', text);
    expect(facts).toMatchObject(both);
    expect(open).toEqual([]);
    // What a label allows tells nothing of bars that are there.
    expect(facts).not.toHaveProperty(['hitch.distribution']);
  });
  test('one pair is of the kind that is named', () => {
    expect(told('tow-fit', 'receiver is 500/5000 without wd').facts).toEqual({
      'hitch.receiverTongueCarried': '500 lb',
      'hitch.receiverCarried': '5000 lb',
    });
    expect(told('tow-fit', 'receiver 500/5000').facts).toEqual({
      'hitch.receiverTongueRating': '500 lb',
      'hitch.receiverRating': '5000 lb',
    });
  });
  test('pairs that contradict each other, and what is no receiver’s, are none', () => {
    const { facts } = told('tow-fit', 'receiver 650/6500 without and 500/5000 with');
    expect(facts).not.toHaveProperty(['hitch.receiverRating']);
    expect(told('tow-fit', 'my jack is 500/5000 and 650/6500').facts).toEqual({});
  });
});

describe('pressures and codes of tires', () => {
  const all = { 'tire.labelPressure': '65 psi', 'tire.maxPressure': '80 psi' };
  test.each([
    'What psi should i run, sidewall says 80 max cold, sticker on the trailer says 65. Guy at tire place put 50 in so it rides softer',
    '65 on the sticker, 80 on the sidewall, the shop put 50 in. which is right',
    'sidewall 80, label 65, they aired them to 50',
  ])('%s', (text) => {
    const part = partOf(text);
    expect(part?.topic).toBe('tires');
    expect(part?.facts).toMatchObject({ ...all, 'tire.pressure': '50 psi' });
  });
  test('inches stay inches', () => {
    expect(told('hitch-setup', 'the receiver is 22 in high, coupler 19 in').facts).toMatchObject({
      'trailer.couplerHeight': '19 in',
    });
    expect(told('tires', 'put 2 in of foam under it').facts).toEqual({});
  });
  test('a code is no weight', () => {
    expect(told('tires', 'date code 2018 on the tires, too old?').facts).toEqual({
      'tire.codeWeek': '20',
      'tire.codeYear': '18',
    });
  });
});

describe('how long the furnace is set for', () => {
  test.each([
    'We plan to dry camp two nights in October with one 100 amp-hour lead acid battery. Furnace blower draws 7 amps and I guess it would run about half of the time overnight, 10 hours. Will the battery make it through the night?',
    'furnace fan 7 amps, 10 hours, 100 Ah lead battery, enough?',
    'furnace fan is 7 amps, 10 hours a night, 100 Ah lead battery, enough?',
    'blower pulls 7A for 10 hrs overnight on one 100ah lead battery, furnace on 68',
  ])('%s', (text) => {
    const { facts } = told('house-battery', text);
    expect(facts).toMatchObject({
      ...{ 'furnace.hours': expect.stringMatching(/^10 h/), 'furnace.blowerCurrent': '7 A' },
      ...{ 'battery.capacity': '100 Ah', 'battery.chemistry': 'flooded' },
    });
    expect(facts).not.toHaveProperty(['battery.reading']);
  });
});

describe('words that are misspelled, and the same thing told in other words', () => {
  test.each([
    [
      'tow-fit',
      'dryweight 4300 cargo capcity 1450',
      { 'trailer.dryWeight': '4300 lb', 'trailer.cargoCapacity': '1450 lb' },
    ],
    ['tow-fit', 'tounge weighed 640 lb', { 'trailer.measuredTongueWeight': '640 lb' }],
    ['tow-fit', 'paylod sticker says 1480', { 'vehicle.placardPayload': '1480 lb' }],
    [
      'hitch-setup',
      'Receiver height is 21 inches and coupler on the trailer 18',
      { 'hitch.receiverHeightEmpty': '21 in', 'trailer.couplerHeight': '18 in' },
    ],
    ['tires', '70 psi in the tires cold', { 'tire.pressure': '70 psi' }],
    ['tires', 'tires were made in 2017, are they too old', { 'tire.codeYear': '17' }],
    [
      'house-battery',
      'i put 2 new batteries 6v 225ah each in series',
      { 'bank.series': '2', 'battery.volts': '6 V', 'battery.capacity': '225 Ah' },
    ],
  ])('%s: %s', (id, text, facts) => {
    expect(told(id, text).facts).toMatchObject(facts);
  });
  test.each([
    // A receiver's rating is not the vehicle's, however it is spelled.
    ['tow-fit', 'reciever is rated 5000', 'vehicle.maxTrailerWeight'],
    ['tires', 'should i put 80 psi in the tires', 'tire.pressure'],
    ['tires', 'is 70 psi in my tires ok', 'tire.pressure'],
    ['tires', 'the trailer is from 2017, tires look fine', 'tire.codeYear'],
    ['tires', 'the tires from 2017 and the tires from 2019', 'tire.codeYear'],
  ])('%s: “%s” does not tell %s', (id, text, fact) => {
    expect(told(id, text).facts).not.toHaveProperty([fact]);
  });
  test('a pin is of the papers or of a scale, and asked', () => {
    expect(told('tow-fit', '5th wheel pin 1,700 lb, payload 2010').open).toEqual([1700]);
  });
});
