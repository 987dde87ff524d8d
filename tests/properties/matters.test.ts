import { type Answer, answerTraced, matters, towFit } from '@tarebook/rules';
import { type Matter, mattersSays, type Topic } from '@tarebook/rules/engine';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exactCase, openCase } from '../differential/arbitrary-case';
import { givenOf } from '../differential/given';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);
const asOf = '2026-11-01';
const topic: Topic = towFit;

const rig = {
  facts: {
    'vehicle.maxTrailerWeight': '5,000 lb',
    'vehicle.maxTongueCarried': '500 lb',
    'vehicle.placardPayload': '1,260 lb',
    'trailer.dryWeight': '3,900 lb',
    'trailer.gvwr': '5,000 lb',
    'trailer.dryTongueWeight': '430 ± 40 lb',
    'load.occupants': [{ weight: '200 lb' }, { weight: '185 lb' }],
  },
  readFrom: {
    'trailer.dryWeight': 'brochure',
    'load.occupants': 'bathroom scale',
    'vehicle.placardPayload': 'door label',
  },
  asOf,
};

const of = (all: readonly Matter[], name: string) => all.find((each) => each.of === name);

describe('which number matters', () => {
  test('a range counts by half its width, everything else by how it was read', () => {
    const found = matters(towFit, rig);
    expect(
      of(found, 'limit.payload')?.facts.map(({ fact, off, moves }) => [fact, off, moves]),
    ).toEqual([
      ['trailer.dryTongueWeight', { value: 40, unit: 'lb' }, { value: 44, unit: 'lb' }],
      // Two people on a bathroom scale, 2 lb each.
      ['load.occupants', { value: 4, unit: 'lb' }, { value: 4, unit: 'lb' }],
    ]);
    expect(of(found, 'limit.payload')?.says).toBe(
      'Weigh the tongue: it matters most for payload, 44 lb either way.',
    );
    // 3 % of what a brochure says.
    expect(of(found, 'trailer.loaded')?.facts).toMatchObject([
      { fact: 'trailer.dryWeight', off: { value: 117 }, moves: { value: 117 } },
    ]);
    expect(mattersSays(found, ['limit.payload', 'limit.tongue', 'limit.trailer-weight'])).toEqual([
      'Weigh the tongue: it matters most for payload and tongue weight.',
      'Weigh the trailer: it matters most for trailer weight.',
    ]);
  });

  test('ratings are taken as written and never said to matter', () => {
    fc.assert(
      fc.property(openCase(), (plain) => {
        const exact = Object.entries(topic.facts).filter(([, { exact }]) => exact);
        expect(exact.length).toBeGreaterThan(20);
        for (const { facts } of matters(towFit, { facts: givenOf(plain), asOf })) {
          for (const { fact } of facts) {
            const said = plain[fact];
            if (typeof said === 'number') expect(topic.facts[fact]?.exact, fact).not.toBe(true);
          }
        }
      }),
      { numRuns: 60, seed },
    );
  });

  test('the list is short, largest first, and nothing in it moves by nothing', () => {
    fc.assert(
      fc.property(openCase(), (plain) => {
        for (const { facts, says } of matters(towFit, { facts: givenOf(plain), asOf })) {
          const moved = facts.map(({ moves }) => moves.value);
          expect(moved.length).toBeGreaterThan(0);
          expect(moved.length).toBeLessThanOrEqual(3);
          expect(moved).toEqual(moved.toSorted((a, b) => b - a));
          expect(Math.min(...moved)).toBeGreaterThan(0);
          expect(says).toMatch(/^[A-Z][^{}]*: it matters most for .*, .* either way\.$/);
        }
      }),
      { numRuns: 60, seed },
    );
  });

  test('what a fact is said to move a result by, it moves when it is that far off', () => {
    let moved = 0;
    fc.assert(
      fc.property(exactCase(), (plain) => {
        const facts = givenOf(plain);
        for (const { of: name, facts: movers } of matters(towFit, { facts, asOf })) {
          const [first] = movers;
          const now = first && plain[first.fact];
          if (!first || typeof now !== 'number' || name.startsWith('limit.')) continue;
          const at = (by: number) => {
            const { value, unit } = first.off;
            const told = unit === '%' ? '1' : unit === '' ? '1' : unit;
            const to = now + (by * value) / (unit === '%' ? 100 : 1);
            const answer: Answer = answerTraced(towFit, {
              facts: { ...facts, [first.fact]: { lo: to, hi: to, unit: told } },
              asOf,
            });
            return answer.values[name]?.lo ?? Number.NaN;
          };
          const half = Math.abs(at(1) - at(-1)) / 2;
          expect(Math.abs(half - first.moves.value), `${name} by ${first.fact}`).toBeLessThan(
            1e-4 * Math.max(1, half),
          );
          moved += 1;
        }
      }),
      { numRuns: 25, seed },
    );
    expect(moved).toBeGreaterThan(50);
  });
});
