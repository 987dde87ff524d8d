import { answerTraced, towFit, why } from '@tarebook/rules';
import { type Answer, type Topic, whys } from '@tarebook/rules/engine';
import { show } from '@tarebook/rules/quantity';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readFiled } from '../cases/filed';
import { casesFolder, markdownBelow, refusedFolder } from '../cases/files';
import { openCase } from '../differential/arbitrary-case';
import { givenOf } from '../differential/given';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);
const asOf = '2026-11-01';

type Judged = { readonly name: string; readonly topic: Topic; readonly answer: Answer };

const worked: readonly Judged[] = markdownBelow(casesFolder, refusedFolder).flatMap(
  ({ name, text }) => {
    const { topic, facts, readFrom, troubles } = readFiled(text);
    if (!topic || troubles.length > 0) return [];
    return [{ name, topic, answer: answerTraced(topic, { facts, readFrom, asOf }) }];
  },
);

const everything = ({ answer }: Judged): readonly string[] => [
  'verdict',
  ...answer.limits.map(({ id }) => `limit.${id}`),
  ...answer.findings.map(({ id }) => `finding.${id}`),
];

/** What no person would write: a blank filled with nothing, a name of the machine, an open end. */
const odd = /undefined|NaN|null|Infinity|∞|\[object|[a-z]+\.[a-z]+[A-Z]|\.\.|\s[,.;:]|\s{2}|\(\)/;

function readsWell(text: string, what: string): void {
  expect(text, what).toMatch(/^[“A-Z−\d]/);
  expect(text, what).toMatch(/\.$/);
  expect(text, what).not.toMatch(odd);
  const open = text.split('(').length;
  expect(text.split(')').length, what).toBe(open);
}

describe('why, in plain sentences', () => {
  test('every state of every worked case is told at both lengths, and reads as a person writes', () => {
    expect(worked.length).toBeGreaterThanOrEqual(26);
    const states = new Set<string>();
    for (const judged of worked) {
      const { name, topic, answer } = judged;
      for (const { state } of answer.limits) states.add(state);
      for (const of of everything(judged)) {
        readsWell(why(topic, answer, of, 'short'), `${name} ${of}`);
        readsWell(why(topic, answer, of, 'full'), `${name} ${of}`);
      }
    }
    expect([...states].sort()).toEqual(['care', 'not-asked', 'ok', 'stop', 'unknown']);
  });

  test('on random rigs with ranges and unknowns too', () => {
    fc.assert(
      fc.property(openCase(), (plain) => {
        const answer: Answer = answerTraced(towFit, { facts: givenOf(plain), asOf });
        const judged = { name: 'rig', topic: towFit, answer };
        for (const of of everything(judged)) {
          readsWell(why(towFit, answer, of, 'short'), of);
          readsWell(why(towFit, answer, of, 'full'), of);
        }
      }),
      { numRuns: 60, seed },
    );
  });

  test('the numbers of a limit’s chain are those of the answer, with used, limit and room', () => {
    for (const { topic, answer } of worked) {
      for (const { id, state, used, limit } of answer.limits) {
        if (state !== 'stop' && state !== 'care' && state !== 'ok') continue;
        const full = why(topic, answer, `limit.${id}`, 'full');
        for (const ends of [used, limit]) {
          if (ends.lo !== ends.hi) continue;
          expect(full).toContain(show(ends, ends.unit));
        }
      }
    }
  });

  test('a chain names the source of its steps, and where a fact was read', () => {
    const rig = {
      facts: {
        'vehicle.maxTrailerWeight': '5,000 lb',
        'vehicle.maxTongueCarried': '500 lb',
        'vehicle.placardPayload': '1,260 lb',
        'trailer.dryWeight': '3,900 lb',
        'trailer.gvwr': '5,000 lb',
        'trailer.dryTongueWeight': '430 lb',
        'load.occupants': [{ weight: '585 lb' }],
        'hitch.hardwareWeight': '150 lb',
      },
      readFrom: {
        'vehicle.placardPayload': 'door label',
        'trailer.dryTongueWeight': 'brochure',
        'hitch.hardwareWeight': 'scale',
      },
      asOf,
    };
    expect(why(towFit, rig, 'limit.payload', 'full')).toBe(
      'The load in the vehicle comes to 735 lb: people and animals (585 lb) and the hitch hardware (150 lb, scale) [49 CFR 571.110]. The tongue comes to 473 lb: the dry tongue (430 lb, brochure) and 10 % on top [common practice: Custom of the trade]. The payload used comes to 1,208 lb: the load in the vehicle (735 lb) and the tongue (473 lb). Against it stands the payload allowed, 1,260 lb (door label). That leaves 52 lb, less than the 5 % of it that is kept free.',
    );
    expect(why(towFit, rig, 'limit.payload', 'short')).toBe(
      'The payload used comes to 1,208 lb and the payload allowed is 1,260 lb: 52 lb left, less than the 5 % of it that is kept free.',
    );
    expect(why(towFit, { ...rig, units: 'metric' }, 'limit.payload', 'short')).toBe(
      'The payload used comes to 548 kg and the payload allowed is 572 kg: 24 kg left, less than the 5 % of it that is kept free.',
    );
    expect(why(towFit, rig, 'finding.tongue-negative', 'short')).toBe(
      'The tongue presses down on the ball. The tongue (473 lb) is not below 0 lb.',
    );
    expect(why(towFit, rig, 'limit.rear-axle', 'short')).toBe(
      'Nobody told the rear GAWR; without that “Rear axle” is not asked.',
    );
  });

  test('what is reckoned like something told already is not told again at length', () => {
    const told = worked.flatMap(({ topic, answer }) =>
      answer.limits.map(({ id }) => why(topic, answer, `limit.${id}`, 'full')),
    );
    const same = told.filter((each) => each.includes(' in the same way, from the printed '));
    expect(same.length).toBeGreaterThan(0);
    for (const each of told) {
      const numbers = each.match(/half a step either way \(/g) ?? [];
      expect(numbers.length).toBeLessThanOrEqual(1);
    }
  });

  test('a name that the topic does not have is refused in words', () => {
    expect(() => why(towFit, { facts: {} }, 'limit.moon', 'short')).toThrow(
      '`limit.moon` is nothing that tow-fit has;',
    );
  });

  test('in JSON the verdict is told at both lengths and everything asked in one sentence', () => {
    for (const { topic, answer } of worked) {
      const told = whys(topic, answer);
      const asked = answer.limits.filter(({ state }) => state !== 'not-asked');
      expect(Object.keys(told.limits)).toEqual(asked.map(({ id }) => id));
      expect(told.verdict.full.length).toBeGreaterThan(told.verdict.short.length / 2);
    }
  });
});

describe('a step of the trace', () => {
  test('that came down to one other formula shows the working, text and source of that one', () => {
    const answer: Answer = answerTraced(towFit, {
      facts: { 'trailer.dryTongueWeight': '430 lb' },
      asOf,
    });
    const { working, from, source, is } = answer.trace.steps['tongue.loaded'] ?? {};
    expect(working).toBe('430 lb × (1 + 10 %)');
    expect(from).toEqual(['trailer.dryTongueWeight', 'tongue.addOn']);
    expect(is).toBe('trailer.dryTongueWeight * (1 + tongue.addOn)');
    expect(source?.class).toBe('common-practice');
  });

  test('is written in metric units for whoever asks so, with the same numbers behind', () => {
    const facts = { 'trailer.dryTongueWeight': '200 kg' };
    const us: Answer = answerTraced(towFit, { facts, asOf });
    const metric: Answer = answerTraced(towFit, { facts, asOf, units: 'metric' });
    expect(metric.trace.units).toBe('metric');
    expect(metric.trace.steps['tongue.loaded']?.working).toBe('200 kg × (1 + 10 %)');
    expect(metric.trace.steps['tongue.loaded']?.ends).toEqual(
      us.trace.steps['tongue.loaded']?.ends,
    );
    expect(metric.limits).toEqual(us.limits);
  });
});
