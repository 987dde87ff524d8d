import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { judged } from '@tarebook/casebook';
import { answerTraced, spread, withHouse } from '@tarebook/rules';
import { compareSaved, remedies } from '@tarebook/rules/engine';
import { towFit } from '@tarebook/rules/tow-fit';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { looksSaved, replayAsJson, replayAsText, replaySaved } from './replay';
import { keep, madeUp, saved } from './saved.fixture';

const asJson = (value: unknown): string => JSON.stringify(value);

/** Versions that never were, kept in a folder of their own. */
let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'tarebook-kept-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('a saved verdict run again', () => {
  test.each([
    ['outcome', 'fits'],
    ['binding', 'coupler'],
  ])('another %s than came out is told as was and is', async (place, lie) => {
    const whole = JSON.parse(saved(towFit, {}));
    const replayed = await replaySaved('saved.json', asJson({ ...whole, [place]: lie }));
    expect(replayed.differences).toEqual([{ place, was: lie, now: whole[place] }]);
    expect(replayAsText(replayed)).toContain(`${place} was “${lie}”, is `);
    expect(replayAsJson(replayed)).toMatchObject({ replayed: true, same: false });
  });

  test('a state that was softened, and a limit that was left out, are found out', async () => {
    const whole = JSON.parse(saved(towFit, {}));
    const [first, ...others] = whole.limits;
    const softened = asJson({ ...whole, limits: [{ ...first, state: 'ok' }, ...others] });
    expect((await replaySaved('s', softened)).differences).toEqual([
      { place: `limits.${first.id}.state`, was: 'ok', now: first.state },
    ]);
    const { differences } = await replaySaved('s', asJson({ ...whole, limits: others }));
    expect(differences.map(({ place }) => place)).toEqual([`limits.${first.id}`]);
  });

  test('a fact changed afterwards changes what comes out, and is told so', async () => {
    const facts = { 'trailer.dryWeight': '3,900 lb', 'vehicle.maxTrailerWeight': '5,000 lb' };
    const whole = JSON.parse(saved(towFit, facts));
    const asked = { ...whole.asked, facts: { ...facts, 'trailer.dryWeight': '3,901 lb' } };
    const { same, differences } = await replaySaved('s', asJson({ ...whole, asked }));
    expect(same).toBe(false);
    expect(differences).toContainEqual({ place: 'values.trailer.loaded.lo', was: 3900, now: 3901 });
  });

  test('a sentence worded otherwise is the same result in other words', async () => {
    const whole = JSON.parse(saved(towFit, {}));
    const replayed = await replaySaved('s', asJson({ ...whole, sentence: 'Perhaps.' }));
    expect(replayed.same).toBe(true);
    expect(replayed.reworded.map(({ place }) => place)).toEqual(['sentence']);
  });

  test('it is run by the rules it was made by, and told what newer rules say of it', async () => {
    const older = madeUp('0.9.0');
    keep(older, folder);
    const facts = {
      'vehicle.maxTrailerWeight': '5,000 lb',
      'vehicle.maxTongueCarried': '500 lb',
      'vehicle.placardPayload': '1,500 lb',
      'trailer.dryWeight': '3,900 lb',
      'trailer.gvwr': '5,000 lb',
      'trailer.dryTongueWeight': '430 lb',
    };
    // By hand: 430 lb × 1.25 = 537.5 lb is over 500 lb; 430 lb × 1.10 = 473 lb is not.
    const replayed = await replaySaved('s', saved(older, facts), { folder });
    expect(replayed.same).toBe(true);
    expect(replayed.answer).toMatchObject({ rules: '0.9.0', outcome: 'does-not-fit' });
    expect(replayed.now).toMatchObject({ rules: towFit.version, was: 'does not fit', leftOut: [] });
    const tongue = replayed.now?.differences.find(({ name }) => name === 'limit.tongue');
    expect(tongue).toMatchObject({ was: 'stop', now: 'ok' });
    expect(tongue?.because.join()).toContain('tongue.addOn');
    const text = replayAsText(replayed);
    expect(text).toMatch(/^SAME RESULT\n/);
    expect(text).toContain('By the rules of today');
    expect(text).toContain('Tongue weight was stop, is ok');
  });

  test('under a dealer’s own parameters, it is run under them again, and a moved one is found out', async () => {
    const layer = {
      topic: 'tow-fit',
      name: 'Sallowbridge Trailers',
      parameters: { 'margin.other': { value: '8 %', reason: 'Hills all around.' } },
    };
    const whole = saved(withHouse(towFit, layer), { 'trailer.dryWeight': '3,900 lb' });
    const replayed = await replaySaved('s', whole);
    expect(replayed).toMatchObject({ same: true, differences: [] });
    expect(replayed.answer.house?.name).toBe('Sallowbridge Trailers');
    const moved = whole.replaceAll('"instead":5', '"instead":6');
    expect(moved).not.toBe(whole);
    expect((await replaySaved('s', moved)).differences).toEqual([
      { place: 'house.parameters.margin.other.instead', was: 6, now: 5 },
    ]);
    const beyond = JSON.parse(whole);
    beyond.house.parameters[0].value = 50;
    await expect(replaySaved('s', asJson(beyond))).rejects.toThrow(/^s: .*margin\.other/);
  });

  test('with chances, the same draws are drawn again to the bit', async () => {
    const facts = {
      'vehicle.maxTrailerWeight': '5,000 lb',
      'vehicle.maxTongueCarried': '500 lb',
      'trailer.gvwr': '5,000 lb',
      'trailer.dryWeight': '3,800–4,200 lb',
      'trailer.dryTongueWeight': '450 ± 30 lb',
    };
    const asked = { facts, readFrom: {}, asOf: '2026-11-01' };
    const chances = spread(towFit, asked, { draws: 5000, seed: 7 });
    const whole = asJson(judged(answerTraced(towFit, asked), asked, chances));
    expect(await replaySaved('s', whole)).toMatchObject({ same: true, untouched: [] });
    const other = whole.replace('"seed":7', '"seed":8');
    const { same, differences } = await replaySaved('s', other);
    expect(same).toBe(false);
    expect(differences.map(({ place }) => place)).toContain('limits.tongue.chance');
    const endless = whole.replace('"draws":5000', '"draws":1e12');
    await expect(replaySaved('s', endless)).rejects.toThrow(
      /^s: `spread\.draws`: 1000000000000 is there/,
    );
  });

  test('with remedies, they are solved again, and one that was made smaller is found out', async () => {
    const facts = {
      'vehicle.maxTrailerWeight': '5,000 lb',
      'vehicle.maxTongueCarried': '500 lb',
      'trailer.gvwr': '6,000 lb',
      'trailer.dryWeight': '4,600 lb',
      'trailer.measuredTongueWeight': '490 lb',
      'trailer.cargo': [{ label: 'Tools', weight: '700 lb' }],
    };
    const asked = { facts, readFrom: {}, asOf: '2026-11-01' };
    const found = remedies(towFit, asked);
    expect(found.remedies.length).toBeGreaterThan(0);
    const whole = JSON.parse(asJson(judged(answerTraced(towFit, asked), asked, undefined, found)));
    expect(await replaySaved('s', asJson(whole))).toMatchObject({ same: true, untouched: [] });
    whole.remedies[0].outcome = 'fits-always';
    expect((await replaySaved('s', asJson(whole))).same).toBe(false);
  });

  test('rules that are not kept are refused with the versions that are', async () => {
    const whole = JSON.parse(saved(towFit, {}));
    const told = replaySaved('s.json', asJson({ ...whole, rules: '7.1.0' }));
    await expect(told).rejects.toThrow(
      /^s\.json: it was made by tow-fit 7\.1\.0, which is not kept here; there are .*1\.0\.0.*\.$/,
    );
  });
});

describe('what is no saved verdict is refused in one sentence: place, found, right', () => {
  const whole = (): Record<string, unknown> => JSON.parse(saved(towFit, {}));
  const without = (key: string): string =>
    asJson(Object.fromEntries(Object.entries(whole()).filter(([each]) => each !== key)));

  test.each([
    ['half of it', () => asJson(whole()).slice(0, 500), /^s:1:501: it ends too soon; .*whole JSON/],
    ['a stray word', () => '{\n  "topic": tow\n}', /^s:2:13: this cannot stand here; .*whole JSON/],
    ['an empty object', () => '{}', /^s: `topic`: nothing is there; .*tow-fit/],
    ['a list', () => '[1, 2]', /^s: the whole: a list is there; .*judge CASE --json/],
    ['no facts', () => without('asked'), /^s: `asked`: nothing is there; .*as they were given/],
    ['no limits', () => without('limits'), /^s: `limits`: nothing is there; .*a list of limits/],
    [
      'a day that is none',
      () => asJson({ ...whole(), asOf: 'May' }),
      /`asOf`: “May” is there; .*2026-11-01/,
    ],
    [
      'a version that is none',
      () => asJson({ ...whole(), rules: '../1.0.0' }),
      /`rules`: “\.\.\/1\.0\.0” is there/,
    ],
    [
      'a strange topic',
      () => asJson({ ...whole(), topic: '../tow-fit' }),
      /no topic “\.\.\/tow-fit”; there are tow-fit/,
    ],
    [
      'a strange fact',
      () => asJson({ ...whole(), asked: { facts: { 'vehicle.gvw': '1 lb' } } }),
      /^s: `vehicle\.gvw` is not a fact of tow-fit\. Did you mean `vehicle\.gvwr`\?$/,
    ],
    [
      'a fact that is none',
      () => asJson({ ...whole(), asked: { facts: { 'vehicle.gvwr': 5 } } }),
      /^s: `asked\.facts\.vehicle\.gvwr`: 5 is there; .*facts as they were given/,
    ],
    [
      'a prototype',
      () => asJson(whole()).replace('"facts":{', '"facts":{"__proto__":"1 lb"'),
      /^s: `__proto__` is not a fact of tow-fit/,
    ],
    ['depth without end', () => `{"topic":${'['.repeat(200_000)}`, /^s:1:\d+: it ends too soon/],
  ])('%s', async (_, text, says) => {
    const file = text();
    expect(looksSaved(file)).toBe(true);
    const problem: unknown = await replaySaved('s', file).catch((each: unknown) => each);
    expect(problem).toBeInstanceOf(Error);
    const message = problem instanceof Error ? problem.message : '';
    expect(message).toMatch(says);
    expect(message.split('\n')).toHaveLength(1);
  });

  test('a worked case is not taken for one', () => {
    const cases = new URL('../../../cases/tow-fit/', import.meta.url);
    const files = readdirSync(cases);
    expect(files.length).toBeGreaterThan(20);
    for (const file of files) {
      expect(looksSaved(readFileSync(new URL(file, cases), 'utf8'))).toBe(false);
    }
  });
});

test('an open end that was saved as null is the same open end', () => {
  const again = JSON.parse(asJson({ values: { a: { lo: 0, hi: Number.POSITIVE_INFINITY } } }));
  expect(compareSaved({ values: { a: { lo: 0, hi: null } } }, again).differences).toEqual([]);
});
