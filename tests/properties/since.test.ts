import { answer, answerTraced, spread, type Topic } from '@tarebook/rules';
import {
  checkTopic,
  dayProblems,
  defineTopic,
  type FactsGiven,
  sayProblem,
} from '@tarebook/rules/engine';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { shelf, source } from '../../packages/rules/src/engine/define/small-topic.fixture';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);

type Values = Topic['parameters'][string]['values'];

/** The shelf, with a margin that changes over the years. */
function shelfWith(values: Values): Topic {
  const margin = { label: 'Margin', unit: '%', values, range: [0, 40] as const, source };
  return defineTopic<Topic>({ ...shelf, parameters: { 'margin.shelf': margin } });
}

const changing = shelfWith([
  { from: '2020-01-01', value: 10 },
  { from: '2024-07-01', until: '2025-12-31', value: 20 },
  { from: '2026-03-01', value: 5 },
]);

const facts: FactsGiven = {
  'shelf.kind': 'oak',
  'shelf.rating': '100 lb',
  'box.weight': '85 lb',
};

const on = (topic: Topic, asOf: string) => answerTraced(topic, { facts, asOf });
const messageOn = (topic: Topic, asOf: string): string => {
  try {
    on(topic, asOf);
    return '';
  } catch (problem) {
    return problem instanceof Error ? problem.message : String(problem);
  }
};

describe('a case is judged by what held on its day', () => {
  test.each([
    ['2020-01-01', 10, 'ok'],
    ['2024-06-30', 10, 'ok'],
    ['2024-07-01', 20, 'care'],
    ['2025-12-31', 20, 'care'],
    ['2026-03-01', 5, 'ok'],
  ])('%s: a margin of %i %%, so %s', async (asOf, value, state) => {
    const found = on(changing, asOf);
    expect(found.parameters[0]?.value).toBe(value);
    expect(found.limits[0]?.state).toBe(state);
    expect(await answer(changing, { facts, asOf })).toEqual(found);
  });

  test('chances too', () => {
    const open = { ...facts, 'box.weight': '80–120 lb' };
    const limits = (asOf: string) =>
      spread(changing, { facts: open, asOf }, { draws: 2000, seed: 1 }).outcomes['holds-just'];
    expect(limits('2025-01-01')?.chance).toBeGreaterThan(limits('2026-03-01')?.chance ?? 1);
  });
});

describe('no value is used out of its time', () => {
  test.each([
    ['2019-12-31', '`margin.shelf` has no value on 2019-12-31; its first holds from 2020-01-01.'],
    [
      '2026-02-28',
      '`margin.shelf` has no value on 2026-02-28; the one before held until 2025-12-31, and its next holds from 2026-03-01.',
    ],
  ])('%s is refused in words', async (asOf, says) => {
    expect(messageOn(changing, asOf)).toBe(says);
    await expect(answer(changing, { facts, asOf })).rejects.toThrow(says);
    expect(() => spread(changing, { facts, asOf }, { draws: 1, seed: 1 })).toThrow(says);
    expect(dayProblems(changing, asOf).map(sayProblem)).toEqual([says]);
  });

  test('after the last has run out', () => {
    const ended = shelfWith([{ from: '2020-01-01', until: '2022-12-31', value: 10 }]);
    expect(messageOn(ended, '2023-01-01')).toBe(
      '`margin.shelf` has no value on 2023-01-01; its last held until 2022-12-31.',
    );
  });

  test('one that ran out does not bring back the one before it', () => {
    expect(messageOn(changing, '2026-01-15')).toContain('has no value');
  });

  test.each(['yesterday', '2026-02-30', '2026-13-01', '20260101', ''])('“%s” is no day', (asOf) => {
    expect(messageOn(changing, asOf)).toBe(
      `\`as-of\`: ${asOf === '' ? 'an empty text' : `“${asOf}”`} is not a day; write a day such as 2026-11-01.`,
    );
  });

  test('on random histories: the value used began by the day, had not ended, and none began later', () => {
    const day = fc
      .integer({ min: 0, max: 4000 })
      .map((n) => new Date(Date.UTC(2018, 0, 1 + n)).toISOString().slice(0, 10));
    const entry = fc.record({ from: day, until: fc.option(day, { nil: undefined }) });
    let used = 0;
    let refused = 0;
    fc.assert(
      fc.property(
        fc.uniqueArray(entry, { minLength: 1, maxLength: 6, selector: (e) => e.from }),
        day,
        (history, asOf) => {
          const values = history.map(({ from, until }, value) => ({
            from,
            value,
            ...(until !== undefined && until >= from && { until }),
          }));
          const topic = shelfWith(values);
          expect(checkTopic(topic)).toEqual([]);
          const message = messageOn(topic, asOf);
          const latest = values
            .filter(({ from }) => from <= asOf)
            .reduce<Values[number] | undefined>(
              (a, b) => (a && a.from > b.from ? a : b),
              undefined,
            );
          const holds = latest && (latest.until === undefined || latest.until >= asOf);
          if (!holds) {
            refused += 1;
            expect(message).toContain(`has no value on ${asOf}`);
            return;
          }
          used += 1;
          expect(on(topic, asOf).parameters[0]).toMatchObject({
            value: latest.value,
            from: latest.from,
          });
        },
      ),
      { numRuns: 500, seed },
    );
    expect(Math.min(used, refused)).toBeGreaterThan(50);
  });
});

describe('what is known to change is told', () => {
  test('a successor, with its day and its value', () => {
    expect(on(changing, '2022-05-05').dated).toMatchObject([
      {
        parameter: 'margin.shelf',
        value: 10,
        unit: '%',
        from: '2020-01-01',
        next: { from: '2024-07-01', value: 20 },
        says: 'Margin: 10 % on 2022-05-05; from 2024-07-01 it is 20 %.',
      },
    ]);
  });

  test('an end, with the successor after it or the want of one', () => {
    expect(on(changing, '2025-01-01').dated.map(({ says }) => says)).toEqual([
      'Margin: 20 % on 2025-01-01; this holds until 2025-12-31, and from 2026-03-01 it is 5 %.',
    ]);
    const ending = shelfWith([{ from: '2020-01-01', until: '2030-12-31', value: 10 }]);
    expect(on(ending, '2025-01-01').dated.map(({ says }) => says)).toEqual([
      'Margin: 10 % on 2025-01-01; this holds until 2030-12-31, and no later value is known.',
    ]);
  });

  test('nothing, where nothing is known to change', () => {
    expect(on(changing, '2026-03-01').dated).toEqual([]);
  });
});

test('a rule set whose value ends before it begins, or on no day, is refused', () => {
  const says = (until: string) =>
    checkTopic(shelfWith([{ from: '2020-01-01', until, value: 10 }])).map(sayProblem);
  expect(says('2019-12-31')).toEqual([
    'parameters margin.shelf: it runs from 2020-01-01 to “2019-12-31”; let it end on or after its beginning.',
  ]);
  expect(says('soon')).toHaveLength(1);
  expect(says('2020-01-01')).toEqual([]);
});
