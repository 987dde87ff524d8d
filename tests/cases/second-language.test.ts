import { askedOf } from '@tarebook/casebook';
import { answerTraced, matters, remedies, whys } from '@tarebook/rules';
import { describe, expect, test } from 'vitest';
import { readFiled } from './filed';
import { casesFolder, markdownBelow, refusedFolder } from './files';
import { madeUp, outside } from './made-up';

/** Where ids, units, sources and formulas stand: data for programs, not words for people. */
const codes = new Set([
  ...['id', 'topic', 'rules', 'asOf', 'outcome', 'binding', 'fact', 'code', 'level', 'state'],
  ...['unit', 'kind', 'class', 'cite', 'section', 'note', 'source', 'from', 'is', 'among'],
  ...[
    'status',
    'decides',
    'decidedBy',
    'side',
    'together',
    'parameter',
    'until',
    'of',
    'shown',
    'column',
    'chosen',
  ],
  ...['message', 'messages', 'values', 'root', 'units', 'facts', 'with', 'to', 'as', 'name'],
]);
/** What a person wrote. */
const own = new Set(['readFrom', 'rowName', 'reason']);
/** Where the keys themselves are ids, and a limit's tip may be an option. */
const isCode = (key: string): boolean => codes.has(key) || own.has(key) || key === 'tips';

/** Every text of a value with a letter outside of brackets, with where it stands. */
function unsaid(value: unknown, path: string): readonly string[] {
  if (typeof value === 'string') {
    return /\p{L}/u.test(outside(value)) ? [`${path}: ${value.slice(0, 160)}`] : [];
  }
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) =>
    isCode(key) ? [] : unsaid(inner, `${path}.${key}`),
  );
}

const filed = markdownBelow(casesFolder, refusedFolder)
  .map(({ name, text }) => ({ name, doc: readFiled(text) }))
  .filter(({ doc }) => doc.topic !== undefined && doc.troubles.length === 0);

describe('nothing is said outside of the words', () => {
  test.each(filed)('$name', ({ doc }) => {
    const { topic, asked } = askedOf(doc);
    const voice = { language: madeUp } as const;
    const answer = answerTraced(topic, { ...asked, ...voice });
    const found = { answer, trace: answer.trace, why: whys(topic, answer, voice) };
    const beside = { remedies: remedies(topic, { ...asked, ...voice }) };
    const moving = { matters: matters(topic, { ...asked, ...voice }) };
    expect(unsaid({ ...found, ...beside, ...moving }, '')).toEqual([]);
  });
});

test('a text with one word outside is found', () => {
  expect(unsaid({ says: '⟦It ⟦fits⟧.⟧ Really.' }, '')).toEqual(['.says: ⟦It ⟦fits⟧.⟧ Really.']);
  expect(unsaid({ says: '⟦It ⟦fits⟧.⟧ – 12' }, '')).toEqual([]);
});
