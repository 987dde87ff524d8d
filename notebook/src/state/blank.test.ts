import { judgeCaseNow, readCase } from '@tarebook/casebook';
import { topics } from '@tarebook/rules';
import { answerNow } from '@tarebook/rules/engine';
import { describe, expect, test } from 'vitest';
import { alwaysAsked } from './always-asked';
import { blankCase } from './blank';
import { catalogueFacts, vehicles } from './catalogue';

describe.each(Object.values(topics))('$id', (topic) => {
  test('a blank case can be read, and asks before it answers', () => {
    const doc = readCase(blankCase(topic, 'A case of my own', alwaysAsked(topic)));
    expect(doc.troubles).toEqual([]);
    expect(Object.keys(doc.facts)).toEqual(alwaysAsked(topic));
    expect(() => judgeCaseNow(doc)).not.toThrow();
  });

  test('a blank case asks for nothing that could be left out', () => {
    const asked = alwaysAsked(topic);
    expect(new Set(asked).size).toBe(asked.length);
    for (const id of asked) expect(topic.facts[id]?.kind).not.toBe('rows');
  });
});

test('tow fit starts with the six numbers that no verdict can do without', () => {
  const topic = topics['tow-fit'];
  expect(topic && alwaysAsked(topic).toSorted()).toEqual([
    'trailer.dryTongueWeight',
    'trailer.dryWeight',
    'trailer.gvwr',
    'vehicle.maxTongueCarried',
    'vehicle.maxTrailerWeight',
    'vehicle.placardPayload',
  ]);
});

test('a title that YAML would read as something else comes back as it was', () => {
  const topic = topics['tow-fit'];
  if (!topic) throw new Error('There is no tow-fit.');
  for (const title of [
    'Tow fit, Nov 28, 5:20 PM',
    'He said: it fits',
    '- a list',
    '# no',
    'yes',
    '"quoted"',
    '{a: 1}',
    'ends in a colon:',
  ]) {
    expect(readCase(blankCase(topic, title, [])).front.title).toBe(title);
  }
});

test('what a catalogue entry gives is read as facts without any trouble', () => {
  const topic = topics['tow-fit'];
  if (!topic) throw new Error('There is no tow-fit.');
  for (const entry of vehicles) {
    const facts = catalogueFacts(topic, 'vehicle', entry);
    const doc = readCase(blankCase(topic, entry.name, [], facts));
    expect(doc.troubles, entry.name).toEqual([]);
    expect(answerNow(topic, { facts: doc.facts }).rules).toBe(topic.version);
  }
});
