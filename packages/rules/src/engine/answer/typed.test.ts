import { expect, expectTypeOf, test } from 'vitest';
import { defineTopic } from '../check/define';
import { shelf as plainShelf } from '../define/small-topic.fixture';
import { answerNow } from './answer';

const source = { class: 'invented', cite: 'A shelf made up for this test' } as const;

/** A topic whose names the compiler knows. */
const hook = defineTopic({
  ...plainShelf,
  id: 'hook',
  facts: {
    'coat.weight': {
      kind: 'quantity',
      label: 'Coat',
      unit: 'lb',
      least: 0,
      most: 50,
      ask: 'How heavy is the coat?',
      where: 'a scale',
    },
    'hook.rating': {
      kind: 'quantity',
      label: 'Hook',
      unit: 'lb',
      least: 0,
      most: 50,
      ask: 'What does the hook carry?',
      where: 'its box',
    },
  },
  parameters: {},
  tables: {},
  formulas: { 'coat.total': { label: 'Coat', unit: 'lb', is: 'coat.weight * 1', source } },
  limits: {
    hook: { label: 'Hook', short: 'the hook', used: 'coat.total', limit: 'hook.rating', source },
  },
  findings: {},
  outcomes: {
    ok: { id: 'hangs', words: 'hangs', sentence: 'It hangs.' },
    care: { id: 'hangs-just', words: 'just hangs', sentence: 'It just hangs.' },
    if: { id: 'hangs-if', words: 'hangs if', sentence: 'It hangs' },
    unknown: { id: 'cannot-say', words: 'cannot say', sentence: 'That cannot be said yet.' },
    stop: { id: 'falls', words: 'falls', sentence: 'It falls.' },
  },
  apart: {},
  headline: ['coat.total'],
  assumptions: [],
  cautions: [],
});

const facts = { 'coat.weight': '5 lb', 'hook.rating': '10 lb' };

test('results, outcomes and the binding limit are known to the compiler', () => {
  const found = answerNow(hook, { facts, asOf: '2026-11-01' });
  expect(found.outcome).toBe('hangs');
  expect(found.values['coat.total'].hi).toBe(5);
  expectTypeOf(found.outcome).toEqualTypeOf<
    'hangs' | 'hangs-just' | 'hangs-if' | 'cannot-say' | 'falls'
  >();
  expectTypeOf(found.binding).toEqualTypeOf<'hook' | null>();
  // @ts-expect-error a result that there is not
  found.values['coat.totl'];
});

test('a misspelled fact is an error in the editor, and told where no compiler looks', () => {
  const misspelled = { 'coat.wait': '5 lb' };
  // @ts-expect-error a fact that there is not
  expect(() => answerNow(hook, { facts: { 'coat.wait': '5 lb' } })).toThrow(/coat\.wait/);
  expect(() => answerNow<typeof plainShelf>(hook, { facts: misspelled })).toThrow(/coat\.weight/);
});
