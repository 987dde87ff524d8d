import { readdirSync, readFileSync } from 'node:fs';
import { askedOf, readCase } from '@tarebook/casebook';
import { answerTraced, remedies } from '@tarebook/rules/engine';
import { show } from '@tarebook/rules/quantity';
import { describe, expect, test } from 'vitest';
import { replyKinds, replyOf, type Told, verdictKey } from './reply';
import { leavingReply, wordedReply, wordingPlace } from './worded';
import { markOf } from './wording';

const cases = new URL('../../../cases/', import.meta.url);
const topics = readdirSync(cases).filter((name) => !['refused', 'note', 'rig'].includes(name));
const systems = ['us', 'metric'] as const;

function docOf(name: string) {
  const doc = readCase(readFileSync(new URL(`${name}.md`, cases), 'utf8'));
  const { topic } = doc;
  if (!topic) throw new Error(`${name} has no topic.`);
  return { doc, topic };
}

function toldOf(name: string, system: Told['system'] = 'us'): Told {
  const { doc } = docOf(name);
  const { topic, asked } = askedOf(doc);
  const answer = answerTraced(topic, { ...asked, units: system });
  return { title: doc.front.title, topic, answer, system };
}

function withRemedies(name: string, system: Told['system'] = 'us') {
  const { doc } = docOf(name);
  const { topic, asked } = askedOf(doc);
  const found = remedies(topic, { ...asked, units: system });
  return { ...toldOf(name, system), remedies: found.remedies };
}

describe.each(topics)('%s: whoever reads the mail has the real answer', (topic) => {
  const names = readdirSync(new URL(`${topic}/`, cases)).map(
    (file) => `${topic}/${file.slice(0, -'.md'.length)}`,
  );
  const told = Object.fromEntries(
    systems.map((system) => [system, names.map((name) => toldOf(name, system))]),
  );

  test('everything chosen and ranked stands in the letter, with its reason and its size', () => {
    for (const system of systems) {
      for (const one of told[system] ?? []) {
        const { answer } = one;
        const { text } = replyOf('letter', one);
        for (const { items } of answer.selections) {
          for (const { label, chosen, because, amounts } of items) {
            if (chosen === 'no') continue;
            expect(text).toContain(label);
            expect(text).toContain(because);
            for (const ends of Object.values(amounts)) {
              expect(text).toContain(show(ends, ends.unit, system));
            }
          }
        }
        for (const { entries, rest } of answer.rankings) {
          const inOrder = entries.filter(({ out }) => !out);
          if (inOrder.length > 0) expect(text).toContain(rest);
          inOrder.forEach(({ says, value }, i) => {
            const size = show(value, value.unit, system);
            expect(text).toContain(`${i + 1}. ${says}: ${size}`);
          });
        }
      }
    }
  });

  test('every decision stands in it, decided or open', () => {
    for (const us of told.us ?? []) {
      const { text } = replyOf('letter', us);
      const said = us.answer.findings.flatMap(({ id, level }) =>
        level === 'ok' ? [] : [us.topic.findings[id]?.decision],
      );
      for (const [name, { labels, among }] of Object.entries(us.answer.choices)) {
        if (among.length === 0 || said.includes(name)) continue;
        expect(text).toContain(labels.join(' or '));
      }
    }
  });

  test('every reply has its cautions, and no sign of a number that is none', () => {
    for (const system of systems) {
      for (const one of told[system] ?? []) {
        for (const kind of replyKinds) {
          const { text, cautions } = replyOf(kind, one);
          expect(cautions.length).toBeGreaterThan(0);
          for (const each of cautions) expect(text).toContain(each);
          expect(text).not.toMatch(/undefined|NaN|Infinity|∞|\[object/);
        }
      }
    }
  });
});

describe('what would change the verdict', () => {
  const name = 'tow-fit/two-too-many';

  test.each(systems)('the post says the first change and what comes of it, in %s', (system) => {
    const told = withRemedies(name, system);
    const [first] = told.remedies;
    if (!first) throw new Error('Nothing would change it.');
    expect(first.outcome).not.toBe(told.answer.outcome);
    const { text, cautions } = replyOf('post', told);
    expect(text).toContain(`What would change it: ${first.says}`);
    expect(first.says).toContain(`Then: ${first.words}.`);
    expect(text).not.toMatch(system === 'metric' ? /\d lb/ : /\d kg/);
    for (const each of cautions) expect(text).toContain(each);
    expect(replyOf('letter', told).text).toContain(`What would change it\n– ${first.says}`);
  });

  test('nothing is said of it before it is found, and that there is none only after', () => {
    const told = toldOf(name);
    for (const kind of replyKinds) expect(replyOf(kind, told).text).not.toContain('change it');
    const { text } = replyOf('letter', { ...told, remedies: [] });
    expect(text).toContain('What would change it\n– No single change');
    expect(replyOf('post', { ...told, remedies: [] }).text).not.toContain('change it');
  });

  test('a person’s own words stand when it arrives', () => {
    const [before, after] = [toldOf(name), withRemedies(name)];
    expect(verdictKey(after)).toBe(verdictKey(before));
    const own = { text: 'Not with that one.', writtenFor: markOf(verdictKey(before)) };
    const wordings = { [wordingPlace('post', before)]: own };
    expect(wordedReply('post', after, wordings)).toEqual({ text: own.text, own, isOwn: true });
    const left = leavingReply('post', after, wordings);
    expect(left.startsWith(own.text)).toBe(true);
    for (const each of replyOf('post', after).cautions) expect(left).toContain(each);
    const elsewhere = { ...after, title: 'Another case' };
    expect(wordedReply('post', elsewhere, wordings).text).toBe(replyOf('post', elsewhere).text);
  });
});

test('a change that leads to a verdict is said before one that leads to a question', () => {
  const told = toldOf('tow-fit/two-too-many');
  const { ok, unknown } = told.topic.outcomes;
  const remedies = [
    { says: 'Leave one out.', outcome: unknown.id },
    { says: 'Leave two out.', outcome: ok.id },
  ];
  expect(replyOf('post', { ...told, remedies }).text).toContain('change it: Leave two out.');
  const [only] = remedies;
  if (!only) throw new Error('There is no change.');
  expect(replyOf('post', { ...told, remedies: [only] }).text).toContain(
    'change it: Leave one out.',
  );
});

test('what a post touches it tells in full there, and nothing twice', () => {
  const { text } = replyOf('post', toldOf('spares-kit/no-spare-no-jack'));
  const halves = text.split('There is nothing to lift the trailer with');
  expect(halves.length).toBe(2);
  expect(halves[1]).toMatch(/^\. A flat tire means waiting for help:/);
});

test('what cannot be said says in the post where it tips', () => {
  const told = toldOf('body-repair/what-was-it-worth');
  expect(replyOf('post', told).text).toContain('below 3,686 USD the answer is “not yet”');
});

test('people get out before they hear a verdict or a figure', () => {
  const told = toldOf('gas-supply/smell-in-the-galley');
  for (const kind of ['spoken', 'post'] as const) {
    const { text } = replyOf(kind, told);
    expect(text.startsWith('Everybody out into fresh air now')).toBe(true);
    expect(text).not.toContain('Nearest its limit');
    expect(replyOf(kind, { ...told, remedies: [] }).text).toBe(text);
  }
});
