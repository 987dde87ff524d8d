import { readdirSync, readFileSync } from 'node:fs';
import { judgeCaseNow, readCase } from '@tarebook/casebook';
import { expect, test } from 'vitest';
import { sheet } from './sheet';

const cases = new URL('../../../cases/', import.meta.url);
const names = readdirSync(cases)
  .filter((topic) => !['refused', 'note', 'rig'].includes(topic))
  .flatMap((topic) => readdirSync(new URL(`${topic}/`, cases)).map((file) => `${topic}/${file}`));

function judgedOf(name: string) {
  const doc = readCase(readFileSync(new URL(name, cases), 'utf8'));
  if (!doc.topic) throw new Error(`${name} has no topic.`);
  return { title: doc.front.title, topic: doc.topic, answer: judgeCaseNow(doc) };
}

const unsought = { outcome: '', remedies: [], noHelp: [] };

test('no row and no step of any case has a number that is none', () => {
  for (const name of names) {
    const { title, topic, answer } = judgedOf(name);
    const text = sheet(title, topic, answer, unsought, []);
    expect(text, name).not.toMatch(/∞|Infinity|NaN|undefined/);
    expect(text, name).not.toMatch(/(?<![\d.,–−])0( \S+)? +of +0\b/);
    for (const { value } of Object.values(answer.trace.steps))
      expect(value, name).not.toContain('∞');
  }
});

test('the order of the limits is explained where a smaller share stands first', () => {
  const { title, topic, answer } = judgedOf('spares-kit/no-spare-no-jack.md');
  const lines = sheet(title, topic, answer, unsought, []).split('\n');
  const at = lines.indexOf('Limits, the fullest first');
  expect(lines[at + 1]).toContain('room above empty');
  expect(lines[at + 2]).toMatch(/Payload .* 83\.3 %/);
  expect(lines[at + 3]).toMatch(/Trailer’s own rating .* 87\.1 %/);
  expect(lines[at + 4]).toMatch(/Lifting device +none asked +ok/);
});

test('people are told to get out before they are told a verdict', () => {
  const { title, topic, answer } = judgedOf('gas-supply/smell-in-the-galley.md');
  const [, told = ''] = sheet(title, topic, answer, unsought, []).split('\n');
  expect(told).toMatch(/^Everybody out into fresh air now/);
});

test('a finding from which another topic goes on names it', () => {
  const { title, topic, answer } = judgedOf('tow-fit/lifting-tongue.md');
  const text = sheet(title, topic, answer, unsought, []).replace(/\s+/g, ' ');
  expect(text).toContain('weigh the tongue again. What to do about sway: the topic sway.');
});
