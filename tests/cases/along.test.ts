import { readdirSync, readFileSync } from 'node:fs';
import { askedOf, readCase } from '@tarebook/casebook';
import { answerNow } from '@tarebook/rules';
import { alongScale, remedies } from '@tarebook/rules/engine';
import { towFit } from '@tarebook/rules/tow-fit';
import { describe, expect, test } from 'vitest';

const caseOf = (name: string) => {
  const file = new URL(`../../cases/tow-fit/${name}.md`, import.meta.url);
  return askedOf(readCase(readFileSync(file, 'utf8'))).asked;
};
const names = ['crossover-and-single-axle', 'rear-axle-with-bars', 'fifth-wheel-in-the-bed'];

describe.each(names)('a trailer made lighter and heavier in proportion: %s', (name) => {
  const asked = caseOf(name);
  const { values } = answerNow(towFit, asked);
  const largest = values['largest.trailer']?.hi ?? 0;
  const along = alongScale(
    towFit,
    asked,
    1.3 * Math.max(largest, values['trailer.loaded']?.hi ?? 0),
  );
  const outcomeAt = (x: number) =>
    answerNow(towFit, { ...asked, facts: along?.at(x) ?? {} }).outcome;

  test('every weight has the outcome that the rules give for the facts so moved', () => {
    expect(along?.stretches.length).toBeGreaterThan(1);
    for (const { from, to, outcome } of along?.stretches ?? []) {
      for (const share of [0.02, 0.31, 0.77, 0.98]) {
        expect(outcomeAt(from + (to - from) * share), `${from}–${to}`).toBe(outcome);
      }
    }
  });

  test('the stretches leave no gap, and the better side of a turn holds up to it', () => {
    const all = along?.stretches ?? [];
    for (const [i, { to }] of all.slice(0, -1).entries()) {
      const next = all[i + 1];
      expect(next?.from).toBe(to);
      const better = [all[i], next].toSorted((a, b) => rank(a?.level) - rank(b?.level))[0];
      expect(outcomeAt(to)).toBe(better?.outcome);
    }
  });
});

const rank = (level = 'unknown'): number => ['ok', 'care', 'if', 'unknown', 'stop'].indexOf(level);

test('where the tongue was weighed, no weight fits beyond the largest trailer that the rules give, and with nothing else in the way all up to it do', () => {
  const folder = new URL('../../cases/tow-fit/', import.meta.url);
  const same = readdirSync(folder).flatMap((file) => {
    const asked = caseOf(file.replace('.md', ''));
    const { values } = answerNow(towFit, asked);
    const [largest, loaded] = [values['largest.trailer'], values['trailer.loaded']];
    const isWeighed = asked.facts['trailer.measuredTongueWeight'] !== undefined;
    if (!isWeighed || !largest || !loaded || largest.lo !== largest.hi) return [];
    const top = 1.3 * Math.max(largest.hi, loaded.hi);
    if (!(largest.lo > 0.6 * loaded.hi) || !Number.isFinite(top)) return [];
    const along = alongScale(towFit, asked, top);
    const fits = along?.stretches.findLast(({ level }) => level === 'ok' || level === 'care');
    if (!fits) return [];
    const most = Math.floor(largest.lo / 10) * 10;
    expect(fits.to, file).toBeLessThanOrEqual(most);
    // The trailer’s own parts may stop it before.
    return fits.to === most ? [file] : [];
  });
  expect(same.length).toBeGreaterThan(2);
});

test('the turn to a lighter trailer is that of the remedy', () => {
  const asked = caseOf('crossover-and-single-axle');
  const heavy = alongScale(towFit, asked, 7_000)?.at(6_000);
  const { remedies: found } = remedies(towFit, { ...asked, facts: heavy ?? {} });
  const lighter = found.find(({ shown }) => shown === 'trailer.loaded');
  const last = alongScale(towFit, asked, 7_000)?.stretches.find(({ to }) => {
    return typeof lighter?.to === 'object' && to === lighter.to?.hi;
  });
  expect(last?.outcome).toBe(lighter?.outcome);
});

test('a topic that scales nothing has no such line, and neither has a case without a weight', () => {
  expect(alongScale(towFit, { facts: {} }, 5_000)).toBeUndefined();
});
