import { describe, expect, test } from 'vitest';
import { message } from './message';
import { say, sayer } from './say';
import type { Voice } from './speaker';
import { type Quantity, text } from './value';

const spoken: Voice = { medium: 'spoken' };
const of = (lo: number, hi: number, unit: string): Quantity => ({ lo, hi, unit });
const at = (value: number, unit: string): Quantity => of(value, value, unit);

describe('a quantity is said aloud as people say it', () => {
  test.each([
    [at(20, 'lb'), '20 pounds'],
    [at(1, 'lb'), '1 pound'],
    [at(1, 'inWC'), '1 inch of water column'],
    [at(11, 'inWC'), '11 inches of water column'],
    [at(0.62, '1'), '62 percent'],
    [of(16, 38, 'lb'), '16 to 38 pounds'],
    [of(620, Infinity, 'lb'), '620 pounds or more'],
    [of(-Infinity, Infinity, 'lb'), 'not known'],
    [at(Infinity, 'h'), 'no end in sight'],
    [at(1.875, 'in'), '1 and seven eighths inches'],
    [at(2.5, 'in'), '2 and a half inches'],
    [at(0.5, 'in'), 'half an inch'],
    [at(0.3125, 'in'), 'five sixteenths of an inch'],
    [of(0.25, 2, 'in'), 'a quarter of an inch to 2 inches'],
    [at(-4, 'in'), 'minus 4 inches'],
    [at(9, 'F°'), '9 degrees Fahrenheit'],
    [at(40, '°F'), '40 degrees Fahrenheit'],
    [at(1200, 'lb·ft'), '1,200 pound-feet'],
    [at(8.34, 'lb/gal'), '8.34 pounds a gallon'],
    [at(6300, 'USD'), '6,300 dollars'],
    [at(3, ''), '3'],
    [{ ...at(2016, ''), style: 'year' } as const, '2016'],
  ])('%j is “%s”', (value, wanted) => {
    expect(say(value, spoken)).toBe(wanted);
  });

  test('in metric units in their own words', () => {
    expect(say(at(1000, 'lb'), { ...spoken, units: 'metric' })).toBe('454 kilograms');
    expect(say(of(10, 20, 'ft'), { ...spoken, units: 'metric' })).toBe('3.05 to 6.1 meters');
  });
});

describe('the same message in every medium', () => {
  const first = message('runs-out', {
    short: text('the front tires'),
    several: true,
    left: { ...at(52, 'lb'), style: 'margin' },
    of: at(1400, 'lb'),
  });

  test.each([
    [{}, 'The front tires run out first: 52 lb left of 1,400 lb.'],
    [{ units: 'metric' }, 'The front tires run out first: 24 kg left of 635 kg.'],
    [spoken, 'The front tires run out first: 52 pounds left of 1,400 pounds.'],
    [{ medium: 'print' }, 'The front tires run out first: 52\u00a0lb left of 1,400\u00a0lb.'],
  ] as const)('%j', (voice, wanted) => {
    expect(say(first, voice)).toBe(wanted);
  });
});

describe('a text of a rule set', () => {
  test('is filled with its values, and with figures of its own, in the units asked for', () => {
    const words = text('At {tongue.share} keep {20 ft} from any “opening”.', {
      'tongue.share': at(0.125, '1'),
    });
    expect(say(words)).toBe('At 12.5 % keep 20 ft from any “opening”.');
    expect(say(words, { medium: 'spoken', units: 'metric' })).toBe(
      'At 12.5 percent keep 6.1 meters from any opening.',
    );
  });

  test('with a hole that nothing fills is a mistake, never a gap', () => {
    expect(() => say(text('Keep {room} free.'))).toThrow('Nothing fills “room”');
  });
});

test('a code that a language lacks is a mistake', () => {
  expect(() => sayer()({ code: 'no-such-code', values: {} })).toThrow('“en-US” has no words');
});
