import { topics } from '@tarebook/rules';
import { describe, expect, test } from 'vitest';
import { lineReader } from './line';
import { numbersSaid } from './number-words';

const read = lineReader(topics);

/** What a line tells, in short: `fact value`, `2 adult`, `value? a | b`. */
function told(text: string): readonly string[] {
  return read(text, 'tow-fit').marks.map((mark) => {
    if (mark.kind === 'fact') return `${mark.fact} ${mark.value}`;
    if (mark.kind === 'people') return `${mark.count} ${mark.who}`;
    return `${mark.value}? ${mark.among.join(' | ')}`.trim();
  });
}

const empty = 'trailer.dryWeight';
const most = 'trailer.gvwr';

describe('a line of the counter tells its facts, and what nobody said is asked', () => {
  test.each([
    [
      'crossover rated five thousand, trailer thirty-nine hundred, four of us and a dog',
      ['vehicle.maxTrailerWeight 5000 lb', `3900 lb? ${empty} | ${most}`, '4 adult', '1 dog'],
    ],
    [
      'half ton, pyld 1480, max tow 7200, TT dry 5150 gvwr 6800, 2 adults 2 kids',
      [
        ...['vehicle.placardPayload 1480 lb', 'vehicle.maxTrailerWeight 7200 lb'],
        ...[`${empty} 5150 lb`, `${most} 6800 lb`, '2 adult', '2 child'],
      ],
    ],
    [
      'SUV rated fifty-two hundred, trailer is thirty-eight fifty empty, me and my wife',
      ['vehicle.maxTrailerWeight 5200 lb', `${empty} 3850 lb`, '2 adult'],
    ],
    [
      'can my truck pull a camper that weighs 6200? door sticker says 1,412 pounds, family of five, three kids',
      [`6200 lb? ${empty} | ${most}`, 'vehicle.placardPayload 1412 lb', '2 adult', '3 child'],
    ],
    [
      'TW 410 dry, tow rtg 5k, pyld eleven hundred, just the two of us w/ dog',
      [
        ...['trailer.dryTongueWeight 410 lb', 'vehicle.maxTrailerWeight 5000 lb'],
        ...['vehicle.placardPayload 1100 lb', '2 adult', '1 dog'],
      ],
    ],
    [
      'payload is twelve hundred and sixty, tongue five thirty',
      [
        'vehicle.placardPayload 1260 lb',
        '530 lb? trailer.dryTongueWeight | trailer.measuredTongueWeight',
      ],
    ],
    [
      'trailer weighs 4,500 lbs loaded max, minivan tow rating thirty-five hundred',
      [`${most} 4500 lb`, 'vehicle.maxTrailerWeight 3500 lb'],
    ],
    [
      'gvwr 7,600 on the trailer, uvw five thousand eight hundred forty, gcwr 15100',
      [`${most} 7600 lb`, `${empty} 5840 lb`, 'vehicle.gcwr 15100 lb'],
    ],
    [
      'towing capacity six and a half thousand; yellow sticker thirteen oh five; two dogs',
      ['vehicle.maxTrailerWeight 6500 lb', 'vehicle.placardPayload 1305 lb', '2 dog'],
    ],
    [
      'wheelbase 145 inches, tows 9,000#, 5th wheel 8400, a family of four and the dog',
      [
        ...['vehicle.wheelbase 145 in', 'vehicle.maxTrailerWeight 9000 lb'],
        ...[`8400 lb? ${empty} | ${most}`, '4 adult', '1 dog'],
      ],
    ],
    [
      '2019 half ton, sticker thirteen hundred, pyld 1,500 w/ WD, call me at 555-0142',
      ['1300 lb? vehicle.placardPayload | trailer.cargoCapacity', 'vehicle.placardPayload 1500 lb'],
    ],
    ['we paid 3900 for it and drove 1,200 miles', ['3900 lb?', '1200 mi?']],
  ])('%s', (text, facts) => {
    expect(told(text)).toEqual(facts);
  });
});

test('marks stand over their very words, in order, and none over another', () => {
  const text = 'crossover rated five thousand, trailer thirty-nine hundred, four of us and a dog';
  const { marks, topic } = read(text);
  expect(topic).toBe('tow-fit');
  expect(marks.map(({ from, to }) => text.slice(from, to))).toEqual([
    'crossover rated five thousand',
    'trailer thirty-nine hundred',
    'four of us',
    'a dog',
  ]);
});

test('what is dangerous is said first, whatever else a line tells', () => {
  const { urgent, firstReply } = read('tow rating 5000 and it smells like propane in here');
  expect(urgent).toBe('gas');
  expect(firstReply).not.toBe('');
});

test('no topic is forced on a line that has none', () => {
  expect(read('what time do you close on Saturday').topic).toBeNull();
});

test.each([
  ['three hundred and twelve', [312]],
  ['fifty-two hundred', [5200]],
  ['thirty-eight fifty', [3850]],
  ['five thirty', [530]],
  ['five oh five', [505]],
  ['a hundred feet', [100]],
  ['seven thousand two hundred', [7200]],
  ['twenty one thousand five hundred', [21500]],
  ['two twenty-pound bottles', [2, 20]],
  ['one, two', [1, 2]],
  ['nobody at all', []],
])('%s', (text, values) => {
  expect(numbersSaid(text).map(({ value }) => value)).toEqual(values);
});

describe('which of the yard goes with a rated vehicle is asked of tow fit, whatever else is named', () => {
  test.each([
    'I have a hybrid rated 3,500, we are four: which, and what do I look up?',
    'hybrid rated 3,500, four of us: which trailers can we take?',
    'I have a truck rated 7,500: which ones?',
  ])('%s', (text) => {
    const { topic, likely, marks } = read(text);
    expect([topic, likely[0]]).toEqual(['tow-fit', 'tow-fit']);
    expect(marks).toContainEqual(
      expect.objectContaining({ kind: 'fact', fact: 'vehicle.maxTrailerWeight' }),
    );
  });

  test.each([
    ['my hybrid is rated 3,500, which charging stops do I need to the lake?', 'electric-tow-range'],
    ['motorhome rated to pull 3,500, which cars go four down behind it?', 'towed-car'],
  ])('%s: %s', (text, topic) => {
    expect(read(text).topic).toBe(topic);
  });
});
