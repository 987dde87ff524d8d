import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { judgeCase, judged } from '@tarebook/casebook';
import { answerNow, publish, topics } from '@tarebook/rules';
import {
  compareTopics,
  compareVersions,
  keptText,
  sayChange,
  topicFromPublished,
} from '@tarebook/rules/engine';
import { towFit } from '@tarebook/rules/tow-fit';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { keptFolder, keptTopic, keptVersions } from '../../packages/cli/src/kept';
import { replaySaved } from '../../packages/cli/src/replay';
import { saved } from '../../packages/cli/src/saved.fixture';
import { readFiled } from '../cases/filed';
import { casesFolder, markdownBelow, refusedFolder } from '../cases/files';
import { openCase } from '../differential/arbitrary-case';
import { givenOf } from '../differential/given';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);
const day = '2026-11-01';
const asJson = (value: unknown): string => JSON.stringify(value);
const plain = (value: unknown): unknown => JSON.parse(asJson(value));

const keptFile = (topic: string, version: string): string =>
  readFileSync(join(keptFolder(), topic, `${version}.json`), 'utf8');

describe.each(Object.values(topics).map((topic) => ({ id: topic.id, topic })))(
  'the kept versions of $id',
  ({ id, topic }) => {
    test('the present rule set says what the kept one of the same version says, or is newer', async () => {
      const versions = await keptVersions(id);
      if (versions.includes(topic.version)) {
        const kept = JSON.parse(keptFile(id, topic.version));
        const told = compareTopics(topicFromPublished(kept), topic).map((c) => sayChange(c, topic));
        const hint = `raise the version of ${id}, then: npm run release-rules -- ${id}`;
        expect(told, hint).toEqual([]);
        expect(keptText(topic) === keptFile(id, topic.version), hint).toBe(true);
      } else {
        for (const version of versions) {
          expect(compareVersions(version, topic.version)).toBeLessThan(0);
        }
      }
    });

    test('each can be run, and is named as its file is', async () => {
      for (const version of await keptVersions(id)) {
        const kept = await keptTopic(id, version);
        expect(kept).toMatchObject({ id, version });
        if (kept) expect(answerNow(kept, { facts: {}, asOf: day }).rules).toBe(version);
      }
    });
  },
);

test('tow fit 1.0.0 is kept', async () => {
  expect(await keptVersions('tow-fit')).toContain('1.0.0');
});

test('nothing but versions of topics is kept', () => {
  for (const topic of readdirSync(keptFolder()).filter((file) => file !== 'digests.json')) {
    expect(Object.keys(topics)).toContain(topic);
    for (const file of readdirSync(join(keptFolder(), topic))) {
      expect(file).toMatch(/^\d+\.\d+\.\d+\.json$/);
    }
  }
});

describe('a rule set comes back from its JSON as it was', () => {
  test.each(Object.values(topics).map((topic) => ({ id: topic.id, topic })))(
    '$id: nothing differs, and it is published as the same text',
    ({ topic }) => {
      const back = topicFromPublished(plain(publish(topic)));
      expect(compareTopics(topic, back)).toEqual([]);
      expect(asJson(publish(back))).toBe(asJson(publish(topic)));
    },
  );

  test('it answers every random rig the same, every value, state and step', () => {
    const back = topicFromPublished(plain(publish(towFit)));
    fc.assert(
      fc.property(openCase(), (rig) => {
        const asked = { facts: givenOf(rig), asOf: day };
        expect(answerNow(back, asked)).toEqual(answerNow(towFit, asked));
      }),
      { numRuns: 60, seed },
    );
  });
});

describe('a saved verdict run again', () => {
  test('is the same to the last digit, over random rigs with ranges and unknowns', async () => {
    await fc.assert(
      fc.asyncProperty(openCase(), async (rig) => {
        const replayed = await replaySaved('saved.json', saved(towFit, givenOf(rig)));
        const { same, differences, reworded, untouched } = replayed;
        expect({ same, differences, reworded, untouched }).toEqual({
          same: true,
          differences: [],
          reworded: [],
          untouched: [],
        });
      }),
      { numRuns: 120, seed },
    );
  });

  test('is the same for every worked case, decided by the other engine and read from Markdown', async () => {
    const worked = markdownBelow(casesFolder, refusedFolder);
    expect(worked.length).toBeGreaterThan(20);
    for (const { name, text } of worked) {
      const doc = readFiled(text);
      const before = asJson(judged(await judgeCase(doc), doc));
      expect((await replaySaved(name, before)).same, name).toBe(true);
    }
  });

  test('is the same by rules that are no longer the present ones, which are asked beside them', async () => {
    const older = await keptTopic('tow-fit', '1.0.0');
    if (!older) throw new Error('Tow fit 1.0.0 is not kept.');
    expect(compareVersions(older.version, towFit.version)).toBeLessThan(0);
    await fc.assert(
      fc.asyncProperty(openCase(), async (rig) => {
        // What it was never asked, or refused, such as a pin ahead of the axle, it was not saved with.
        const facts = Object.fromEntries(
          Object.entries(givenOf({ ...rig, 'vehicle.overhang': 48 })).filter(([id]) =>
            Object.hasOwn(older.facts, id),
          ),
        );
        const replayed = await replaySaved('saved.json', saved(older, facts));
        expect(replayed).toMatchObject({ same: true, differences: [], reworded: [] });
        const now = answerNow(towFit, { facts, asOf: day });
        expect(replayed.now).toMatchObject({ rules: towFit.version, now: now.words, leftOut: [] });
      }),
      { numRuns: 40, seed },
    );
  });

  test('a tampered value, state or verdict is found out, wherever it stands', async () => {
    // What is said of a result repeats its numbers, and is wording like the text beside it.
    const isWording = (key: string) => key === 'message' || key === 'messages';
    /** Every place that holds a number or a state, as a path from the top. */
    const places = (value: unknown, path: readonly string[] = []): string[][] => {
      if (typeof value === 'number') return [[...path]];
      if (typeof value !== 'object' || value === null) return [];
      return Object.entries(value).flatMap(([key, inner]) =>
        isWording(key) ? [] : places(inner, [...path, key]),
      );
    };
    const spoil = (value: unknown, [key = '', ...rest]: readonly string[]): unknown => {
      if (typeof value !== 'object' || value === null) throw new Error(`${key} is not there.`);
      const inner = Object.entries(value).find(([each]) => each === key)?.[1];
      const spoiled =
        rest.length > 0 ? spoil(inner, rest) : typeof inner === 'number' ? inner + 1e-6 : 'fits';
      if (Array.isArray(value)) return value.map((each, i) => (String(i) === key ? spoiled : each));
      return { ...value, [key]: spoiled };
    };
    let tried = 0;
    await fc.assert(
      fc.asyncProperty(openCase(), fc.nat(), async (rig, pick) => {
        const { asked, ...whole } = JSON.parse(saved(towFit, givenOf(rig)));
        const all = places(whole);
        const path = all[pick % all.length] ?? [];
        const spoiled = asJson({ ...Object(spoil(whole, path)), asked });
        const replayed = await replaySaved('saved.json', spoiled);
        expect(replayed.same, path.join('.')).toBe(false);
        expect(replayed.differences).toHaveLength(1);
        tried += 1;
      }),
      { numRuns: 120, seed },
    );
    expect(tried).toBe(120);
  });
});
