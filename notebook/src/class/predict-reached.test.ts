import { readdirSync, readFileSync } from 'node:fs';
import type { CaseDocument } from '@tarebook/casebook';
import {
  type Answer,
  answerTraced,
  type FactGiven,
  type FactsGiven,
  InputError,
  type Topic,
} from '@tarebook/rules/engine';
import { readQuantity, wasMisread } from '@tarebook/rules/quantity';
import { expect, test } from 'vitest';
import { type Drawer, oneOf, seeded } from '../practice/seeded';
import { judge } from '../state/judged';
import { openReader } from '../state/reading';
import { openTopic } from '../state/topics';
import { mostByCode } from './guess-code';
import { questionOf } from './predict';

const folder = new URL('../../../cases/', import.meta.url);
/** No cases of one topic. */
const apart = ['note', 'refused', 'rig'];
const topics = readdirSync(folder, { withFileTypes: true })
  .filter((each) => each.isDirectory() && !apart.includes(each.name))
  .map(({ name }) => name);

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);
const asOf = '2026-11-01';
/** Rigs drawn for a topic before a choice is held to be one that never comes out. */
const mostRigs = Number(process.env.TAREBOOK_RIGS ?? 2000);

/** A quantity as it was told, times a half to twice and sometimes far off, or anywhere in what it may be. */
function anotherSize(
  told: FactGiven | undefined,
  topic: Topic,
  id: string,
  draw: Drawer,
): FactGiven | undefined {
  const fact = topic.facts[id];
  if (fact?.kind !== 'quantity') return undefined;
  const unit = fact.unit === '' ? '1' : fact.unit;
  const read = typeof told === 'string' ? readQuantity(told) : undefined;
  if (read && !wasMisread(read) && draw(0, 3) > 0) {
    const times = oneOf(draw, [0.1, 0.5, 0.7, 0.8, 0.9, 1, 1.1, 1.2, 1.5, 2, 5]) ?? 1;
    const ends = [read.from * times, read.to * times * (draw(0, 4) === 0 ? 1.5 : 1)] as const;
    const inUnit = read.unit?.symbol ?? unit;
    return { lo: Math.min(...ends), hi: Math.max(...ends), unit: inUnit === '' ? '1' : inUnit };
  }
  const [a, b] = [draw(0, 1000), draw(0, 1000)].map(
    (n) => fact.least + (fact.most - fact.least) * (n / 1000) ** 3,
  );
  const [lo, hi] =
    draw(0, 3) === 0 ? [Math.min(a ?? 0, b ?? 0), Math.max(a ?? 0, b ?? 0)] : [a ?? 0, a ?? 0];
  return { lo, hi, unit };
}

/** The fact told otherwise: not at all, as not known, in another size, as another choice. */
function otherwise(
  topic: Topic,
  id: string,
  told: FactGiven | undefined,
  draw: Drawer,
): FactGiven | undefined {
  const fact = topic.facts[id];
  const how = draw(0, 9);
  if (how === 0) return undefined;
  if (fact?.kind === 'rows') return how < 4 ? [] : told;
  if (how === 1) return 'unknown';
  if (fact?.kind === 'choice') return oneOf(draw, fact.options);
  if (fact?.kind === 'quantity') return anotherSize(told, topic, id, draw);
  return oneOf(draw, ['yes', 'no']);
}

/** A filed rig with a few of its facts, and of those nobody told, told otherwise. */
function anotherRig(topic: Topic, facts: FactsGiven, draw: Drawer): FactsGiven {
  const [told, untold] = [oneOf(draw, [1, 3, 8, 15]) ?? 1, oneOf(draw, [0, 1, 4, 12]) ?? 0];
  const made = Object.keys(topic.facts).flatMap((id) => {
    const now = facts[id];
    const changes = draw(0, 29) < (now === undefined ? untold : told);
    const then = changes ? otherwise(topic, id, now, draw) : now;
    return then === undefined ? [] : [[id, then] as const];
  });
  return Object.fromEntries(made);
}

function judged(topic: Topic, facts: FactsGiven): Answer | undefined {
  try {
    return answerTraced(topic, { facts, asOf });
  } catch (problem) {
    if (problem instanceof InputError) return undefined;
    throw problem;
  }
}

type Filed = { readonly file: string; readonly doc: CaseDocument; readonly answer: Answer };

const filedOf = (topic: string): readonly Filed[] =>
  readdirSync(new URL(`${topic}/`, folder))
    .filter((file) => file.endsWith('.md'))
    .flatMap((file) => {
      const { doc, answer } = judge(readFileSync(new URL(`${topic}/${file}`, folder), 'utf8'));
      return answer ? [{ file, doc, answer }] : [];
    });

test.each(topics)('%s: every choice of every filed case comes out of some rig', async (id) => {
  await Promise.all([openTopic(id), openReader()]);
  const all = filedOf(id);
  const wrong: string[] = [];
  /** By result: a case that asks it, and each choice that no rig had yet, with where it stands. */
  const asked = new Map<
    string,
    { readonly doc: CaseDocument; readonly left: Map<string, string> }
  >();
  for (const { file, doc, answer } of all) {
    const question = questionOf(doc, answer);
    if (question.kind !== 'word') continue;
    const { words, result } = question;
    if (words.length < 2) wrong.push(`${file}: ${words.length} choices of ${result}`);
    if (words.length > mostByCode) wrong.push(`${file}: more choices than a code has letters`);
    if (new Set(words).size !== words.length) wrong.push(`${file}: a choice twice`);
    const seen = asked.get(result) ?? { doc, left: new Map<string, string>() };
    for (const word of words) if (!seen.left.has(word)) seen.left.set(word, file);
    asked.set(result, seen);
  }
  const look = (answer: Answer): void => {
    for (const [result, { doc, left }] of asked) {
      if (left.size === 0) continue;
      const question = questionOf(doc, answer);
      if (question.kind !== 'word' || question.result !== result) continue;
      left.delete(question.found);
      if (!question.words.includes(question.found))
        wrong.push(`${result}: “${question.found}” is no choice`);
    }
  };
  for (const { answer } of all) look(answer);
  const draw = seeded(seed);
  const isDone = () => [...asked.values()].every(({ left }) => left.size === 0);
  for (let n = 0; n < mostRigs && !isDone(); n += 1) {
    const from = oneOf(draw, all);
    if (!from?.doc.topic) continue;
    const answer = judged(from.doc.topic, anotherRig(from.doc.topic, from.doc.facts, draw));
    if (answer) look(answer);
  }
  for (const [result, { left }] of asked)
    for (const [word, file] of left) wrong.push(`${file}: ${result} is never “${word}”`);
  expect(wrong).toEqual([]);
});
