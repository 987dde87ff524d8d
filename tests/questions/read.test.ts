import { readFileSync } from 'node:fs';
import { readMessages, urgentIn } from '@tarebook/record';
import { topics } from '@tarebook/rules';
import { expect, test } from 'vitest';
import { isEveryday } from '../../packages/record/src/danger/everyday';
import { isOver } from '../../packages/record/src/danger/over';
import { repeatsOver } from '../../packages/record/src/questions/repeats';
import { before, labeled, measure, type Share } from './measure';

/**
 * The open labeled messages, by several writers; the reader was made on them. What is held out is run
 * by hand, with TAREBOOK_HELD_OUT and its file, and nothing is made to suit it. What is held here is
 * what was reached, so that it does not fall, on messages that were also learned from. Of 180 messages by
 * a writer whom it never saw, read once on 2026-11-29, it heard 71 of 72 dangers and took 36 of 108 calm
 * ones for one; 97 of 113 topics were right, 14 of 72 forced, 160 of 187 facts right of 260 told, 9 of 9 repeats
 * of 27. They are learned from since. Of 60 by another, read once on 2026-11-30: 7 of 7 dangers, 17 of 53 false
 * alarms (25 by the reader of the day before), 51 of 62 topics, 0 of 6 forced, 94 of 154 facts right of 149 told,
 * 6 of 6 repeats of 6, 13 of 15 personal.
 * Wanted are 92 % of the topics, at most 5 % forced, 97 % of what is read right at 85 % of what is told, and 80 % of the repeats at 90 %.
 */
const found = measure();

const shown = ({ hits, of, lo, hi }: Share): string =>
  `${hits} of ${of} (${(lo * 100).toFixed(0)}–${(hi * 100).toFixed(0)} % at 95 %)`;

test('nothing urgent is missed, and few calm messages are taken for urgent', () => {
  expect(found.urgent.of).toBeGreaterThanOrEqual(107);
  expect(found.urgent.hits).toBe(found.urgent.of);
  // It has learned from these very messages; how a writer is read whom it never saw, left-out.test.ts says.
  expect(found.falseAlarms.share).toBeLessThanOrEqual(0.08);
});

const listOf = (name: string): readonly string[] =>
  JSON.parse(readFileSync(new URL(name, import.meta.url), 'utf8'));
/**
 * Dangers as people might tell them, a sentence each, by whoever made the signs. Of the 107 from “is it
 * ok that the wheel nuts” on, written before the signs were widened, 48 were found by those of before; of
 * the 70 from “prob just the new carpet” on 40, of the 48 from “Hi, we love
 * your show” on 45, and of the next 30 26, each before anything was made for them. The last twelve tell what
 * the reader had missed in messages that were held out (68 of 74 found), in other words.
 */
const dangers = listOf('dangers.json');
/** What people ask with the same words, and mean no danger. */
const calm = listOf('calm.json');

test('dangers in odd words are urgent', () => {
  expect(dangers.length).toBeGreaterThan(310);
  expect(dangers.filter((text) => urgentIn(text) === null)).toEqual([]);
});

const labeledDangers = [
  ...labeled(),
  ...labeled(new URL('train.json', import.meta.url)),
  ...labeled(new URL('once-held-out.json', import.meta.url)),
].flatMap(({ urgent: kind, text }) => (kind === null ? [] : [text]));

test('no danger is taken for one that is over, or for an everyday matter', () => {
  expect(labeledDangers.length).toBeGreaterThan(750);
  const told = [...labeledDangers, ...dangers];
  expect(told.filter((text) => isOver(text))).toEqual([]);
  expect(told.filter((text) => isEveryday(text))).toEqual([]);
});

test('of all labeled dangers none is missed', () => {
  expect(labeledDangers.filter((text) => urgentIn(text) === null)).toEqual([]);
});

test('of what only sounds like danger a fifth is taken for it at most', () => {
  expect(calm.length).toBeGreaterThan(90);
  const alarms = calm.filter((text) => urgentIn(text) !== null);
  expect(alarms.length / calm.length).toBeLessThanOrEqual(0.21);
});

test('no number is taken for a fact that it is not', () => {
  expect(found.factPrecision.share).toBeGreaterThanOrEqual(0.965);
  expect(found.factRecall.share).toBeGreaterThanOrEqual(0.835);
});

test('a topic is found, and not forced on what has none', () => {
  expect(found.topic.share).toBeGreaterThanOrEqual(0.95);
  expect(found.forced.share).toBeLessThanOrEqual(0.03);
  expect(found.split.share).toBeGreaterThanOrEqual(0.96);
});

test('what was asked before is recognized, and personal words are found', () => {
  expect(found.repeatPrecision.share).toBeGreaterThanOrEqual(0.9);
  expect(found.repeatRecall.share).toBeGreaterThanOrEqual(0.58);
  expect(found.personal.hits).toBe(found.personal.of);
  expect(found.masksTooMuch).toBe(0);
});

test('whoever asks again in other words is recognized by three writers who asked on', () => {
  const set = labeled(new URL('train.json', import.meta.url));
  const readers = new Map<string, ReturnType<typeof repeatsOver>>();
  const pairs = set.map(({ id, text, parts, sameAs }) => {
    const writer = id.replace(/\d.*$/, '');
    const same = readers.get(writer) ?? repeatsOver(before.map((each) => each.text));
    readers.set(writer, same);
    const told = parts.flatMap(({ facts }) => Object.entries(facts));
    const facts = told.map(([fact, value]) => `${fact} ${value.replaceAll(',', '')}`);
    const about = parts.map(({ topic }) => topic).join(' ');
    return { sameAs, got: same({ id, text, about, facts, danger: undefined }) };
  });
  const asked = pairs.filter(({ sameAs }) => sameAs !== null);
  const got = pairs.filter((each) => each.got !== null);
  const right = got.filter((each) => each.got === each.sameAs);
  expect(asked.length).toBeGreaterThan(150);
  expect(right.length / got.length).toBeGreaterThanOrEqual(0.94);
  expect(right.length / asked.length).toBeGreaterThanOrEqual(0.7);
});

test('the words of a fact are the very words of the message, and the same is read twice', () => {
  const messages = labeled().map(({ id, channel, text }) => ({
    ...{ id, channel, text },
    ...{ askedOn: '2026-11-01', asker: '' },
  }));
  const read = readMessages(messages, { topics });
  expect(readMessages(messages, { topics })).toEqual(read);
  const isCalm = read.map(({ urgent }) => urgent === null);
  expect(isCalm).toEqual(isCalm.toSorted((a, b) => Number(a) - Number(b)));
  const byId = new Map(messages.map(({ id, text }) => [id, text]));
  for (const { id, parts, firstReply, urgent } of read) {
    for (const { words, facts } of parts) {
      expect(Object.keys(words)).toEqual(Object.keys(facts));
      for (const said of Object.values(words)) expect(byId.get(id)).toContain(said);
    }
    expect(firstReply === null).toBe(urgent === null);
    if (firstReply !== null) expect(firstReply.split(/\s+/).length).toBeLessThanOrEqual(40);
  }
});

test('what nobody asks is read without harm, and five thousand messages in seconds', () => {
  const strange = [
    '',
    '\0',
    '?'.repeat(5_000),
    'a'.repeat(1_000_000),
    '=1+1',
    '1,'.repeat(50_000),
    '555-'.repeat(3_000),
  ];
  const many = Array.from(
    { length: 5_000 },
    (_, n) => `Number ${n}: can it pull ${n} lb, dry weight ${n} lb?`,
  );
  const messages = [...strange, ...many].map((text, n) => ({
    ...{ id: `${n}`, channel: 'mail', askedOn: '', asker: '', text },
  }));
  const before = process.cpuUsage();
  const read = readMessages(messages, { topics });
  const { user, system } = process.cpuUsage(before);
  expect(read).toHaveLength(messages.length);
  // Ten is what is wanted of it alone; whatever runs beside it on the same cores adds to that.
  expect((user + system) / 1e6).toBeLessThan(15);
});

// Not there at all unless asked for: a test that is skipped counts as one that did not pass.
const heldOut = process.env.TAREBOOK_HELD_OUT;
if (heldOut) {
  test('what is held out, by hand', () => {
    const held = measure(heldOut);
    for (const [name, value] of Object.entries(held)) {
      if (typeof value === 'object' && 'hits' in value) console.log(`${name}: ${shown(value)}`);
    }
    expect(held.urgent.hits).toBe(held.urgent.of);
  });
}
