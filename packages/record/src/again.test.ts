import { topics } from '@tarebook/rules';
import {
  answerTraced,
  defineTopic,
  type FactsGiven,
  formOf,
  readSaved,
  type Topic,
} from '@tarebook/rules/engine';
import { towFit } from '@tarebook/rules/tow-fit';
import { describe, expect, test } from 'vitest';
import { again } from './again';
import { type Ledger, LedgerError, mergeLedgers, readLedger } from './ledger';

const day = '2026-11-28';

function entry(id: string, facts: FactsGiven, of: Topic = towFit) {
  const answer = answerTraced(of, { facts, asOf: '2026-11-01' });
  const saved = JSON.parse(JSON.stringify({ ...answer, asked: { facts } }));
  return { id, day: '2026-11-01', form: 'spoken', text: answer.sentence, saved };
}

const rig: FactsGiven = {
  'vehicle.maxTrailerWeight': '5,000 lb',
  'vehicle.maxTongueCarried': '500 lb',
  'vehicle.placardPayload': '1,260 lb',
  'trailer.dryWeight': '3,900 lb',
  'trailer.gvwr': '5,000 lb',
  'trailer.dryTongueWeight': '430 lb',
};
const overweight: FactsGiven = {
  'vehicle.maxTrailerWeight': '3,000 lb',
  'trailer.dryWeight': '3,900 lb',
};
const heavyTongue: FactsGiven = { ...rig, 'trailer.dryTongueWeight': '450 lb' };

/** The same rules with another add-on to the dry tongue. */
function withAddOn(value: number): Topic {
  const plain: Topic = towFit;
  const addOn = plain.parameters['tongue.addOn'];
  if (!addOn) throw new Error('The add-on is gone.');
  const values = [{ from: '2020-01-01', value }];
  const parameters = { ...plain.parameters, 'tongue.addOn': { ...addOn, values } };
  return defineTopic<Topic>({ ...plain, parameters });
}

const ledger = readLedger({
  version: 1,
  entries: [entry('rig', rig), entry('overweight', overweight), entry('heavy', heavyTongue)],
});

describe('what would be said today', () => {
  test('by the same rules, the same', () => {
    expect(again(ledger, { topics, day }).map(({ state }) => state)).toEqual([
      'same',
      'same',
      'same',
    ]);
  });

  test('by an add-on of 13 instead of 10 %, exactly what it turns is told', () => {
    const found = again(ledger, { topics: { 'tow-fit': withAddOn(13) }, day });
    const states = Object.fromEntries(found.map(({ id, state }) => [id, state]));
    // 430 lb × 1.13 = 485.9 lb of 500 lb: other figures; 450 lb × 1.13 = 508.5 lb: over.
    expect(states.rig).not.toBe('same');
    expect(states.overweight).toBe('same');
    expect(states.heavy).toBe('verdict');
  });

  test('exactly the answers whose sentence another add-on changes are listed', () => {
    const dry = [390, 410, 430, 440, 450, 480].map((tongue) =>
      entry(`dry-${tongue}`, { ...rig, 'trailer.dryTongueWeight': `${tongue} lb` }),
    );
    const weighed = { ...rig, 'trailer.measuredTongueWeight': '470 lb' };
    const all = readLedger({
      version: 1,
      entries: [...dry, entry('weighed', weighed), entry('overweight', overweight)],
    });
    const topic = withAddOn(13);
    const listed = again(all, { topics: { 'tow-fit': topic }, day }).filter(
      ({ state }) => state !== 'same',
    );
    const changed = all.entries.filter(({ saved }) => {
      const { asked } = readSaved(saved);
      return answerTraced(topic, { ...asked, asOf: day }).sentence !== saved.sentence;
    });
    expect(listed.map(({ id }) => id)).toEqual(changed.map(({ id }) => id));
    expect(listed.length).toBeGreaterThan(0);
    // A tongue that was weighed has no add-on, and a trailer too heavy by half stays so.
    expect(listed.map(({ id }) => id)).not.toContain('weighed');
    expect(listed.map(({ id }) => id)).not.toContain('overweight');
  });

  test('a correction is ready in the form it left, where another figure or verdict came out, and there alone', () => {
    const topic = withAddOn(13);
    const left = { ...entry('heavy', heavyTongue), form: 'post' };
    const spoken = { ...entry('aloud', heavyTongue), form: 'in a round' };
    const own = { ...entry('own', heavyTongue), form: 'own words' };
    const all = readLedger({ version: 1, entries: [left, spoken, own, entry('same', overweight)] });
    const found = again(all, { topics: { 'tow-fit': topic }, day });
    const [post, aloud, words, same] = found.map(({ correction }) => correction);
    const asked = { facts: heavyTongue, asOf: day };
    expect(post).toContain('what we said on 2026-11-01');
    expect(post).toContain(formOf('post', topic, asked));
    expect(aloud).toContain(formOf('spoken', topic, asked));
    expect(words).toContain(answerTraced(topic, asked).sentence);
    expect(same).toBeNull();
    expect(again(all, { topics, day }).every(({ correction }) => correction === null)).toBe(true);
  });

  test('a note past its day is expired', () => {
    const note = {
      id: 'note',
      day: '2026-10-01',
      form: 'post',
      text: 'The store opens at eight.',
      saved: { topic: 'note', outcome: 'holds', goodUntil: '2026-11-27' },
    };
    const found = again(readLedger({ version: 1, entries: [note] }), { topics, day });
    expect(found[0]?.state).toBe('expired');
  });

  test('rules that are gone, and facts that are none any more, are told', () => {
    const [first] = ledger.entries;
    if (!first) throw new Error('The ledger is empty.');
    const strange: Ledger = {
      version: 1,
      entries: [
        { ...first, id: 'gone', saved: { ...first.saved, topic: 'constructor' } },
        { ...first, id: 'other', saved: { ...first.saved, asked: { facts: { 'x.y': '1 lb' } } } },
      ],
    };
    expect(again(strange, { topics, day }).map(({ state }) => state)).toEqual([
      'not-judged',
      'not-judged',
    ]);
  });

  test('an answer by rules newer than any here is not the same, whatever comes out', () => {
    const [first] = ledger.entries;
    if (!first) throw new Error('The ledger is empty.');
    const saved = { ...first.saved, rules: '99.0.0' };
    const [found] = again({ version: 1, entries: [{ ...first, saved }] }, { topics, day });
    expect(found).toMatchObject({ state: 'not-judged', correction: null });
    expect(found?.now).toContain('tow-fit 99.0.0');
    const [none] = again(ledger, { topics: {}, day });
    expect(none?.state).toBe('not-judged');
  });
});

test('a form that is nearly one, and an id that stands twice, are told as data', () => {
  const [first, second] = ledger.entries;
  const entries = [first, { ...second, id: first?.id, form: 'spokn' }];
  try {
    readLedger({ version: 1, entries });
    expect.unreachable();
  } catch (problem) {
    if (!(problem instanceof LedgerError)) throw problem;
    expect(problem.problems).toMatchObject([
      { code: 'not-a-ledger', fact: 'entries.1.id', found: 'rig' },
      { code: 'not-a-ledger', fact: 'entries.1.form', found: 'spokn', near: 'spoken' },
    ]);
    expect(problem.message).toContain('Did you mean `spoken`?');
  }
  expect(() =>
    readLedger({ version: 1, entries: [{ ...first, form: 'own words' }] }),
  ).not.toThrow();
});

test('what is found where a ledger is wrong stands in the error', () => {
  try {
    readLedger({ version: 2, entries: [] });
    expect.unreachable();
  } catch (problem) {
    if (!(problem instanceof LedgerError)) throw problem;
    expect(problem.problems).toMatchObject([{ fact: 'version', found: '2' }]);
  }
});

test.each([
  [null, /the whole/],
  [{ version: 2, entries: [] }, /version/],
  [
    { version: 1, entries: [{ id: 'a', day: 'today', form: 'post', text: '', saved: {} }] },
    /entries\.0\.day/,
  ],
])('what is no ledger is told by its place: %j', (value, says) => {
  expect(() => readLedger(value)).toThrow(LedgerError);
  expect(() => readLedger(value)).toThrow(says);
});

test('two ledgers merge without losing either side’s words', () => {
  const [first, second] = ledger.entries;
  if (!first || !second) throw new Error('The ledger is too short.');
  const mine: Ledger = { version: 1, entries: [first] };
  const theirs: Ledger = { version: 1, entries: [{ ...first, text: 'Other words.' }, second] };
  const both = mergeLedgers(mine, theirs);
  expect(both.entries.map(({ text }) => text).toSorted()).toEqual(
    [first.text, second.text, 'Other words.'].toSorted(),
  );
  expect(mergeLedgers(both, theirs)).toEqual(both);
});
