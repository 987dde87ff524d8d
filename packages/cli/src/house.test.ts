import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { askedOf, judgeCase, judged, readCase } from '@tarebook/casebook';
import {
  type Answer,
  type Asked,
  matters,
  remedies,
  type Spread,
  spread,
  type Topic,
} from '@tarebook/rules';
import { afterAll, describe, expect, test } from 'vitest';
import { checkCases } from './check';
import { BadInput } from './files';
import { spreadFrom, underFrom } from './house';
import { sheet } from './sheet';

const folder = mkdtempSync(join(tmpdir(), 'tarebook-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function fileOf(name: string, text: string): string {
  const file = join(folder, name);
  writeFileSync(file, text);
  return file;
}

const caseText = `---
title: A trailer by the scale
topic: tow-fit
as-of: 2026-06-15
---

| Fact | Value |
| --- | --- |
| \`vehicle.maxTrailerWeight\` | 5,000 lb |
| \`vehicle.maxTongueCarried\` | 500 lb |
| \`vehicle.placardPayload\` | 1,260 lb |
| \`trailer.dryWeight\` | 4,300 ± 20 lb |
| \`trailer.gvwr\` | 4,310 lb |
| \`trailer.measuredTongueWeight\` | 440 lb |

| Expect | Value |
| --- | --- |
| \`limit.trailer-weight\` | ok |
`;
const file = fileOf('case.md', caseText);
const doc = readCase(caseText);
const house = 'seeds/house.json';

const sheetOf = (topic: Topic, asked: Asked, answer: Answer, found?: Spread): string =>
  sheet(doc.front.title, topic, answer, remedies(topic, asked), matters(topic, asked), found);

const refused = async (flags: Record<string, string>): Promise<string> =>
  underFrom(flags).then(
    () => '',
    (problem) => (problem instanceof BadInput ? problem.message : String(problem)),
  );

describe('--spread and --seed', () => {
  test.each([
    [{ spread: '0' }, '--spread: “0” is not a whole number from 1 to 10,000,000.'],
    [{ spread: '1e3' }, '--spread: “1e3” is not a whole number from 1 to 10,000,000.'],
    [{ spread: '10000001' }, '--spread: “10000001” is not a whole number from 1 to 10,000,000.'],
    [{ spread: '10', seed: '-1' }, '--seed: “-1” is not a whole number from 0 to 4,294,967,295.'],
    [{ seed: '3' }, '--seed: it belongs to --spread; give the number of draws too.'],
  ])('%o is refused in one sentence', (flags, says) => {
    expect(() => spreadFrom(flags)).toThrow(new BadInput(says));
  });

  test('without a seed draw the same each time', () => {
    expect(spreadFrom({ spread: '100' })).toEqual({ draws: 100, seed: 1 });
    expect(spreadFrom({})).toBeUndefined();
  });

  test('give each limit its chance in the JSON, and the sheet a section', async () => {
    const { topic, asked } = askedOf(doc);
    const answer = await judgeCase(doc);
    const found = spread(topic, asked, { draws: 10_000, seed: 7 });
    const written = JSON.parse(JSON.stringify(judged(answer, doc, found)));
    const chances = new Map<string, unknown>(
      written.limits.map(({ id, chance }: { id: string; chance: unknown }) => [id, chance]),
    );
    // Over by more than 10 of 20 lb about the middle: a corner of the triangle, 1 ÷ 8.
    expect(chances.get('trailer-gross')).toBeCloseTo(0.125, 1);
    expect(chances.get('trailer-weight')).toBe(0);
    expect(chances.get('receiver')).toBeNull();
    expect(written.spread).toMatchObject({ draws: 10_000, seed: 7 });
    const text = sheetOf(topic, asked, answer, found);
    expect(text).toContain('Chances, from 10,000 draws, seed 7');
    expect(text).toMatch(/Trailer’s own rating +over in 12\.\d % ± 0\.3\d % of the draws/);
    expect(text).toMatch(/Tongue weight +over in none of the draws/);
    expect(sheetOf(topic, asked, answer)).not.toContain('Chances');
  });
});

describe('--house', () => {
  test('names the dealer and what it moves on the sheet and in the JSON', async () => {
    const under = await underFrom({ house });
    const answer = await judgeCase(doc, under);
    const { topic, asked } = askedOf(doc, under);
    const text = sheetOf(topic, asked, answer);
    expect(text).toContain('As Sallowbridge Trailers keeps it');
    expect(text).toContain('Margin kept below the tow rating: 15 % instead of 10 %.');
    expect(text).toContain('as Sallowbridge Trailers keeps them, as of 2026-06-15.');
    expect(judged(answer)).toMatchObject({ house: { name: 'Sallowbridge Trailers' } });
  });

  test('counts when cases are checked', async () => {
    const [plain] = (await checkCases([file])).checked;
    const [kept] = (await checkCases([file], await underFrom({ house }))).checked;
    expect(plain?.holds).toBe(true);
    expect(kept?.differences).toEqual([
      { name: 'limit.trailer-weight', expected: 'ok', found: 'care' },
    ]);
  });

  test('a layer out of its range, of no topic, or no JSON is refused with the file’s name', async () => {
    const layer = (topic: string, value: string) =>
      JSON.stringify({
        topic,
        name: 'A',
        parameters: { 'margin.other': { value, reason: 'So.' } },
      });
    const over = fileOf('over.json', layer('tow-fit', '90 %'));
    expect(await refused({ house: over })).toBe(
      `${over}: \`margin.other\`: 90 % is outside what a house may choose; write 0–15 %.`,
    );
    const none = fileOf('none.json', layer('tow-fitt', '5 %'));
    expect(await refused({ house: none })).toMatch(
      /there is no topic “tow-fitt”.*Did you mean tow-fit\?$/,
    );
    const broken = fileOf('broken.json', '{');
    expect(await refused({ house: broken })).toContain(
      `${broken}: \`house layer\`: this is not JSON;`,
    );
    expect(await refused({ house: join(folder, 'nowhere.json') })).toContain(
      'there is no such file',
    );
  });
});

describe('--as-of', () => {
  test('stands in for the day of the case', async () => {
    const under = await underFrom({ house, 'as-of': '2026-03-31' });
    const answer = await judgeCase(readCase(caseText, under.asOf), under);
    expect(answer.asOf).toBe('2026-03-31');
    expect(answer.limits[0]?.state).toBe('ok');
    const says =
      'Margin kept below the tow rating: 10 % on 2026-03-31; from 2026-04-01 it is 15 %.';
    expect(answer.dated.map((each) => each.says)).toEqual([says]);
    const { topic, asked } = askedOf(doc, under);
    expect(sheetOf(topic, asked, answer)).toContain(`Known to change\n  – ${says}`);
  });

  test.each(['2026-02-30', 'spring', '1.4.2026'])('%s is refused in one sentence', async (day) => {
    expect(await refused({ 'as-of': day })).toBe(
      `--as-of: “${day}” is not a day; write it as 2026-11-01.`,
    );
  });

  test('a day before any value is refused, with the first day that has one', async () => {
    const under = await underFrom({ 'as-of': '2019-01-01' });
    const { checked, troubles } = await checkCases([file], under);
    expect(checked).toEqual([]);
    expect(troubles.join('\n')).toContain(
      '`margin.other` has no value on 2019-01-01; its first holds from 2020-01-01.',
    );
  });
});
