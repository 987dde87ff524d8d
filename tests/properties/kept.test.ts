import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Asked, answerNow, topics } from '@tarebook/rules';
import {
  compareTopics,
  compareVersions,
  hasRisenEnough,
  keptText,
  reckonedOf,
  riseFor,
  sayChange,
  type Topic,
  topicFromPublished,
} from '@tarebook/rules/engine';
import { describe, expect, test } from 'vitest';
import { keptFolder } from '../../packages/cli/src/kept';

type Digests = Readonly<
  Record<string, Readonly<Record<string, { readonly whole: string; readonly reckons: string }>>>
>;
/** An answer as it was when the version was kept. */
type Kept = {
  readonly asked: Asked;
  readonly outcome: string;
  readonly binding: string | null;
  readonly limits: Readonly<Record<string, string>>;
  readonly findings: Readonly<Record<string, string>>;
  /** Both ends; null where one is open. */
  readonly values: Readonly<Record<string, readonly (number | null)[]>>;
};

const answersFolder = new URL('../kept/', import.meta.url).pathname;
const digests: Digests = JSON.parse(readFileSync(join(keptFolder(), 'digests.json'), 'utf8'));
const sha = (text: string): string => createHash('sha256').update(text).digest('hex');
const textOf = (id: string, version: string): string =>
  readFileSync(join(keptFolder(), id, `${version}.json`), 'utf8');

const kept = readdirSync(keptFolder(), { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .flatMap(({ name: id }) =>
    readdirSync(join(keptFolder(), id)).map((file) => ({ id, version: file.replace('.json', '') })),
  );
const latest = (id: string): string | undefined =>
  kept
    .filter((each) => each.id === id)
    .map(({ version }) => version)
    .sort(compareVersions)
    .at(-1);

test('every kept version has its digests and answers, and nothing has that is not kept', () => {
  const named = ({ id, version }: (typeof kept)[number]): string => `${id} ${version}`;
  const digested = Object.entries(digests).flatMap(([id, versions]) =>
    Object.keys(versions).map((version) => named({ id, version })),
  );
  expect(digested.sort()).toEqual(kept.map(named).sort());
  for (const { id, version } of kept) {
    expect(existsSync(join(answersFolder, id, `${version}.json`)), id).toBe(true);
  }
});

describe.each(kept)('$id $version as it is kept', ({ id, version }) => {
  const text = textOf(id, version);

  test('is what its digests say, to the byte and in what a verdict rests on', () => {
    const reckons = sha(JSON.stringify(reckonedOf(JSON.parse(text))));
    expect({ whole: sha(text), reckons }).toEqual(digests[id]?.[version]);
  });

  test('gives the answers that it gave, to the last digit', () => {
    const topic = topicFromPublished(JSON.parse(text));
    const answers: readonly Kept[] = JSON.parse(
      readFileSync(join(answersFolder, id, `${version}.json`), 'utf8'),
    );
    expect(answers.length).toBeGreaterThan(1);
    for (const { asked, ...was } of answers) {
      const { outcome, binding, limits, findings, values } = answerNow(topic, asked);
      const now = {
        outcome,
        binding,
        limits: Object.fromEntries(limits.map((each) => [each.id, each.state])),
        findings: Object.fromEntries(findings.map((each) => [each.id, each.level])),
        values: Object.fromEntries(
          Object.entries(values).map(([name, { lo, hi }]) => [name, [lo, hi]]),
        ),
      };
      expect(JSON.parse(JSON.stringify(now))).toEqual(was);
    }
  });
});

test('the present version of every topic is kept', () => {
  const lacking = Object.values<Topic>(topics).filter(({ id, version }) => latest(id) !== version);
  const told = lacking.map(({ id, version }) => `${id} ${version}`);
  expect(told, 'keep them: npm run release-rules').toEqual([]);
});

const released = Object.values<Topic>(topics).flatMap((topic) => {
  const last = latest(topic.id);
  return last === undefined ? [] : [{ id: topic.id, topic, last }];
});

test.each(released)(
  '$id has risen as far as its changes since $last ask for',
  ({ id, topic, last }) => {
    const was = topicFromPublished(JSON.parse(textOf(id, last)));
    const changes = compareTopics(was, topic);
    const told = changes.map((each) => sayChange(each, topic)).join('\n');
    const hint = `raise the ${riseFor(changes)} number of ${id} ${topic.version}, then: npm run release-rules -- ${id}\n${told}`;
    expect(hasRisenEnough(was, topic), hint).toBe(true);
    if (last === topic.version) {
      expect(keptText(topic) === textOf(id, topic.version), hint).toBe(true);
    }
  },
);
