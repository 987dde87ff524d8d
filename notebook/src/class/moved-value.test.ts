import { readCase, setFact } from '@tarebook/casebook';
import { expect, test } from 'vitest';
import { asMoved, unitWritten } from './moved-value';

test('a figure moves to what was typed, to the digit', () => {
  expect(asMoved('1200', 'lb')).toBe('1,200 lb');
  expect(asMoved('1,200', 'lb')).toBe('1,200 lb');
  expect(asMoved('12,345,678.5', 'lb')).toBe('12,345,678.5 lb');
  expect(asMoved('0.0125', 'in')).toBe('0.0125 in');
  expect(asMoved('.5', 'in')).toBe('0.5 in');
  expect(asMoved('540 kg', 'lb')).toBe('540 kg');
  expect(asMoved('1200', '')).toBe('1200');
  expect(asMoved('-3', 'ft')).toBe('-3 ft');
  expect(asMoved('\u22121,200', 'lb')).toBe('-1,200 lb');
  expect(asMoved('+3', 'ft')).toBe('3 ft');
});

test('a bare number is in the unit in which the fact stands in the case', () => {
  expect(unitWritten({ value: '2 ft', unit: 'in' }, 'us')).toBe('ft');
  expect(unitWritten({ value: '-2 ft', unit: 'ft' }, 'metric')).toBe('ft');
  expect(unitWritten({ value: '', unit: 'lb' }, 'us')).toBe('lb');
  expect(unitWritten({ value: 'yes', unit: '' }, 'us')).toBe('');
});

test('what is no number in English is told, and never made another one', () => {
  const text =
    '---\ntopic: tow-fit\n---\n\n| Fact | Value | Read from |\n| --- | --- | --- |\n| `trailer.dryWeight` | 3900 lb | |\n';
  const troublesAt = (value: string) =>
    readCase(setFact(readCase(text), 'trailer.dryWeight', value)).troubles;
  expect(troublesAt(asMoved('1,200.5', 'lb'))).toEqual([]);
  for (const typed of ['0,5', '3,5', '12,5', '12,5 kg', ',', '1,2,3', '1 200']) {
    expect(asMoved(typed, 'lb')).toBe(typed);
    expect(troublesAt(typed), typed).not.toEqual([]);
  }
});
