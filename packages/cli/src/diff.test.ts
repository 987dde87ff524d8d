import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Topic } from '@tarebook/rules/engine';
import { towFit } from '@tarebook/rules/tow-fit';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { diffAsJson, diffAsText, rulesDiff } from './diff';
import { keep, madeUp } from './saved.fixture';

const topic: Topic = towFit;
const rig = (tongue: string): string => `---
title: An invented rig
topic: tow-fit
as-of: 2026-11-01
---

| Fact | Value |
| --- | --- |
| \`vehicle.maxTrailerWeight\` | 5,000 lb |
| \`vehicle.maxTongueCarried\` | 500 lb |
| \`vehicle.placardPayload\` | 1,500 lb |
| \`trailer.dryWeight\` | 3,900 lb |
| \`trailer.gvwr\` | 5,000 lb |
| \`trailer.dryTongueWeight\` | ${tongue} |
`;

/** A folder of kept versions that never were, and one of two cases. */
let kept = '';
let cases = '';
const file = (name: string): string => join(cases, name);
beforeAll(() => {
  kept = mkdtempSync(join(tmpdir(), 'tarebook-kept-'));
  cases = mkdtempSync(join(tmpdir(), 'tarebook-cases-'));
  keep(madeUp('0.9.0'), kept);
  keep({ ...madeUp('0.8.0'), facts: withoutWater(madeUp('0.8.0')) }, kept);
  writeFileSync(file('heavy.md'), rig('430 lb'));
  writeFileSync(file('light.md'), rig('390 lb'));
});
afterAll(() => {
  for (const each of [kept, cases]) rmSync(each, { recursive: true, force: true });
});

describe('tarebook rules TOPIC --diff VERSION', () => {
  test('says in words what a number of the trade was and is, each with its day', async () => {
    const found = await rulesDiff(topic, '0.9.0', [cases], kept);
    const text = diffAsText(found);
    expect(text).toMatch(
      /^Tow fit: what changed from tow-fit 0\.9\.0 to \d+\.\d+\.\d+\.\n\nWorked cases\n {2}2 cases asked under both; [\s\S]*\nThe rules: 1 entry differs\.\n/,
    );
    expect(text.replace(/\s+/g, ' ')).toContain(
      '(tongue.addOn): the value was 25 % since 2019-01-01, is 10 % since 2020-01-01.',
    );
  });

  test('names the cases that come out otherwise, what moved, and the change that moved it', async () => {
    // By hand: 430 lb × 1.25 = 537.5 lb is over the 500 lb, and 430 lb × 1.10 = 473 lb is not;
    // 390 lb × 1.25 = 487.5 lb and 390 lb × 1.10 = 429 lb are both within.
    const found = await rulesDiff(topic, '0.9.0', [cases], kept);
    expect(found.cases.map((each) => [each.file, each.was, each.now])).toEqual([
      [file('heavy.md'), 'does not fit', 'fits if'],
      [file('light.md'), expect.stringMatching(/^fits/), expect.stringMatching(/^fits/)],
    ]);
    const [heavy, light] = found.cases;
    const tongue = heavy?.differences.find(({ name }) => name === 'limit.tongue');
    expect(tongue).toMatchObject({ was: 'stop', now: 'ok' });
    expect(tongue?.because).toEqual([expect.stringContaining('(tongue.addOn)')]);
    expect(light?.differences.filter(({ name }) => name === 'verdict')).toEqual([]);
    const text = diffAsText(found).replace(/\s+/g, ' ');
    expect(text).toContain('The verdict was does not fit, is fits if, because of');
    expect(text).toContain('2 cases asked under both');
  });

  test('as JSON: changes with their sentence, cases with whether they changed', async () => {
    const json = JSON.parse(
      JSON.stringify(diffAsJson(await rulesDiff(topic, '0.9.0', [cases], kept))),
    );
    expect(json).toMatchObject({ topic: 'tow-fit', was: '0.9.0', now: topic.version });
    expect(json.changes).toEqual([
      {
        part: 'parameters',
        id: 'tongue.addOn',
        label: topic.parameters['tongue.addOn']?.label,
        kind: 'changed',
        wording: false,
        fields: [
          {
            field: 'values',
            was: [{ from: '2019-01-01', value: 25 }],
            now: topic.parameters['tongue.addOn']?.values,
          },
        ],
        says: expect.stringContaining('was 25 %'),
      },
    ]);
    expect(json.cases[0]).toMatchObject({ file: file('heavy.md'), changed: true });
  });

  test('where there is no folder of cases, the rules are compared all the same', async () => {
    const here = process.cwd();
    process.chdir(kept);
    try {
      const found = await rulesDiff(topic, '0.9.0', [], kept);
      expect(found.cases).toEqual([]);
      expect(diffAsText(found)).toContain('Name a case, or a folder of cases');
    } finally {
      process.chdir(here);
    }
  });

  test('a version that is not kept is refused, naming those that are', async () => {
    await expect(rulesDiff(topic, '0.1.0', [cases], kept)).rejects.toThrow(
      /^There is no kept version “0\.1\.0” of tow-fit; there are 0\.8\.0, 0\.9\.0\.$/,
    );
    await expect(rulesDiff(topic, '../0.9.0', [cases], kept)).rejects.toThrow(/no kept version/);
    await expect(rulesDiff(topic, '0.9.0', [cases], join(kept, 'no'))).rejects.toThrow(
      'There is no kept version “0.9.0” of tow-fit; none is kept yet.',
    );
  });

  test('a kept version that is no rule set any more is refused with the place', async () => {
    await expect(rulesDiff(topic, '0.8.0', [cases], kept)).rejects.toThrow(/trailer\.freshWater/);
  });

  test('against itself nothing differs and no case comes out otherwise', async () => {
    keep(topic, kept);
    const text = diffAsText(await rulesDiff(topic, topic.version, [cases], kept));
    expect(text).toContain('The rules: nothing in them differs.');
    expect(text).toContain('2 cases asked under both; none comes out otherwise.');
  });

  test('a case that cannot be read is told with its place', async () => {
    writeFileSync(file('wrong.md'), rig('430 gal'));
    await expect(rulesDiff(topic, '0.9.0', [cases], kept)).rejects.toThrow(/wrong\.md:14:\d+: /);
    rmSync(file('wrong.md'));
  });
});

/** A rule set whose formulas use a fact that is not there. */
function withoutWater({ facts }: Topic): Topic['facts'] {
  return Object.fromEntries(Object.entries(facts).filter(([id]) => id !== 'trailer.freshWater'));
}
