import { compareRig, judgedRig, judgeRig, readRig } from '@tarebook/casebook';
import { answerNow, answerRig, InputError, topics } from '@tarebook/rules';
import type { FactsGiven } from '@tarebook/rules/engine';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { anyFacts } from '../properties/any-facts';
import { markdownBelow, rigFolder } from './files';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);
const rigs = markdownBelow(rigFolder).map(({ name, text }) => [name, text] as const);

test('there are rigs, with and without moments', () => {
  expect(rigs.length).toBeGreaterThanOrEqual(4);
  expect(new Set(rigs.map(([, text]) => readRig(text).at.length > 0)).size).toBe(2);
});

test.each(rigs)('%s reads, expects something, and holds', (_, text) => {
  const doc = readRig(text);
  expect(doc.troubles).toEqual([]);
  expect(doc.expectations.length).toBeGreaterThan(0);
  expect(compareRig(doc, judgeRig(doc, topics))).toEqual([]);
});

test.each(rigs)('%s: what it expects can fail', (_, text) => {
  const wrong = text.replace(
    /(?<=\| `([a-z-]+)(?:@[^`/]+)?\/verdict` \| )[^|]+(?= \|\n)/,
    (words, topic: string) => {
      const { ok, unknown } = topics[topic]?.outcomes ?? {};
      return (words === unknown?.words ? ok : unknown)?.words ?? '';
    },
  );
  const doc = readRig(wrong);
  expect(doc.troubles).toEqual([]);
  expect(compareRig(doc, judgeRig(doc, topics)).length).toBe(1);
});

const tow: FactsGiven = {
  'vehicle.maxTrailerWeight': '5,000 lb',
  'trailer.dryWeight': '4,000 lb',
  'trailer.gvwr': '5,400 lb',
};

describe('the worst moment is the verdict', () => {
  const found = answerRig(topics, {
    facts: tow,
    asOf: '2026-11-01',
    moments: { leaving: {}, home: { 'trailer.cargo': [{ label: 'Stones', weight: '1,200 lb' }] } },
  });
  const of = (all: typeof found.answers) => all.find(({ topic }) => topic.id === 'tow-fit');

  test('it is named, and every moment is there', () => {
    expect(of(found.answers)?.moment).toBe('home');
    expect(of(found.answers)?.level).toBe('stop');
    expect(of(found.moments.leaving ?? [])?.level).not.toBe('stop');
    expect(Object.keys(found.moments)).toEqual(['leaving', 'home']);
  });

  test('every topic either answers or says what it would want', () => {
    const answered = found.answers.map(({ topic }) => topic.id);
    const all = Object.values(topics).map(({ id }) => id);
    expect([...answered, ...Object.keys(found.needs)].toSorted()).toEqual(all.toSorted());
    for (const facts of Object.values(found.needs)) expect(facts.length).toBeGreaterThan(0);
  });
});

test('a topic in which nothing told decides is not answered', () => {
  const { answers, needs } = answerRig(topics, { facts: tow, asOf: '2026-11-01' });
  expect(answers.map(({ topic }) => topic.id)).not.toContain('gas-supply');
  expect(Object.keys(needs)).toContain('body-repair');
  expect(answerRig(topics, { facts: {} }).answers).toEqual([]);
});

test('an id that no topic has is told with the nearest of all', () => {
  const asked = () => answerRig(topics, { facts: { 'trailer.gvw': '5,000 lb' } });
  expect(asked).toThrow(InputError);
  expect(asked).toThrow('`trailer.gvw` is not a fact of any topic. Did you mean `trailer.gvwr`?');
});

// An old id of one topic that is a present one of another means what it means today.
test('the days of a stay are no days parked', () => {
  const { answers } = answerRig(topics, {
    facts: { 'stay.days': '3 d', 'water.freshTank': '40 gal', 'water.daily': '20 gal/d' },
  });
  const theft = answers.find(({ topic }) => topic.id === 'theft-deterrence');
  expect(theft?.facts['parked.days']).toBeUndefined();
  expect(answers.map(({ topic }) => topic.id)).toContain('off-grid-stay');
});

test('a rig judged whole equals its topics judged alone', () => {
  const some = [topics['tow-fit'], topics.tires, topics['off-grid-stay'], topics['gas-supply']];
  const told = fc
    .tuple(...some.flatMap((topic) => (topic ? [anyFacts(topic)] : [])))
    .map((all) => Object.assign({}, ...all));
  fc.assert(
    fc.property(told, (facts: FactsGiven) => {
      const { answers, needs } = answerRig(topics, { facts, asOf: '2026-11-01' });
      for (const { topic, answer } of answers) {
        const ids = Object.keys(topic.facts).filter((id) => Object.hasOwn(facts, id));
        const own = Object.fromEntries(ids.map((id) => [id, facts[id] ?? 'unknown']));
        const alone = answerNow(topic, { facts: own, asOf: '2026-11-01' });
        expect([topic.id, alone.outcome, alone.sentence]).toEqual([
          topic.id,
          answer.outcome,
          answer.sentence,
        ]);
      }
      expect(answers.length + Object.keys(needs).length).toBe(Object.keys(topics).length);
    }),
    { numRuns: 6, seed },
  );
});

describe('what is wrong with a rig is told with its place', () => {
  const rig = (body: string, front = 'at: [leaving, home]'): readonly string[] =>
    readRig(`---\ntitle: A rig\ntopic: rig\n${front}\n---\n\n${body}`).troubles.map(
      ({ line, column, says }) => `${line}:${column}: ${says}`,
    );
  const table = (rows: string) => `| Fact | Value |\n| --- | --- |\n${rows}\n`;

  test.each<readonly [string, readonly string[]]>([
    [
      table('| `trailer.gvw` | 5,000 lb |'),
      ['9:3: `trailer.gvw` is not a fact of any topic. Did you mean `trailer.gvwr`?'],
    ],
    [
      table('| `trailer.gvwr` | 5,000 |'),
      [
        '9:20: `trailer.gvwr`: “5,000” has no unit; write a number with its unit, such as “1,250 lb”.',
      ],
    ],
    [
      `${table('| `trailer.gvwr` | 5,000 lb |')}\n## Leavin\n\nGone.`,
      ['11:1: “Leavin” is no moment of this rig. Did you mean leaving?'],
    ],
    [
      '## Home\n\nA\n\n## Home\n\nB',
      ['11:1: “home” has a heading above already; put all of a moment under one.'],
    ],
    [
      '| Expect | Value |\n| --- | --- |\n| `tow-fit@camp/verdict` | fits |\n',
      [
        '9:3: `tow-fit@camp/verdict` is not a topic, perhaps with a moment, and a result of it, of a rig.',
      ],
    ],
    [
      '| Expect | Value |\n| --- | --- |\n| `tow-fit@home/verdikt` | fits |\n',
      ['9:3: `verdikt` is not a result, limit or finding of tow-fit. Did you mean `verdict`?'],
    ],
  ])('%s', (body, says) => {
    expect(rig(body)).toEqual(says);
  });

  test('a fact of a moment replaces, and is not given twice', () => {
    const body = `${table('| `trailer.gvwr` | 5,000 lb |')}\n## Home\n\n${table('| `trailer.gvwr` | 6,000 lb |')}`;
    expect(rig(body)).toEqual([]);
    expect(rig(`${body}\n${table('| `trailer.gvwr` | 7,000 lb |')}`)).toHaveLength(1);
  });
});

test('as JSON each answer has its moment and level, and the whole says what the others need', () => {
  const [, text] = rigs.find(([name]) => name.includes('coming-home')) ?? ['', ''];
  const doc = readRig(text);
  const told = JSON.parse(JSON.stringify(judgedRig(doc, judgeRig(doc, topics))));
  expect(told.topic).toBe('rig');
  expect(told.answers[0]).toMatchObject({ topic: 'tow-fit', moment: 'home', level: 'stop' });
  expect(Object.keys(told.moments)).toEqual(['leaving', 'home']);
  expect(told.needs['hitch-setup'].length).toBeGreaterThan(0);
});
