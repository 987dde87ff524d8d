import { topics } from '@tarebook/rules';
import type { Topic } from '@tarebook/rules/engine';
import { expect, test } from 'vitest';
import { factsIn } from './facts';
import { urgentIn } from './urgent';

function topicOf(id: string): Topic {
  const topic = topics[id];
  if (!topic) throw new Error(`no ${id}`);
  return topic;
}
const battery = topicOf('house-battery');
const cold = topicOf('cold-weather');

test.each([
  ['battery panel shows 12.1 volts this morning, was 12.7 last night', '12.1 V'],
  ['12.7 last night on the panel, battery low?', '12.7 V'],
  ['My battery was 12.7 V last night', '12.7 V'],
  ['the battery said 12.7 last night', '12.7 V'],
])('what a battery shows is no temperature: %s', (text, voltage) => {
  const { facts } = factsIn(battery, text);
  expect(facts['battery.voltage']).toBe(voltage);
  expect(facts).not.toHaveProperty(['outside.temperature']);
  expect(urgentIn(text)).toBeNull();
});

test.each([
  ['battery was flat and it was 12 degrees last night', '12 °F'],
  ['battery flat, low of 12.5 last night', '12.5 °F'],
  ['the battery sits in the trailer, it was 20F last night', '20 °F'],
])('a temperature is one still: %s', (text, temperature) => {
  expect(factsIn(battery, text).facts['outside.temperature']).toBe(temperature);
});

test('frost stays urgent, and what a battery shows beside it', () => {
  expect(urgentIn('battery at 12.7 and it hits 12 tonight, tanks full')).toBe('frost');
  expect(factsIn(cold, 'it gets down to 20F tonight').facts['outside.temperature']).toBe('20 °F');
});
