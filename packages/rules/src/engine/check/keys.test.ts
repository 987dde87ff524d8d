import { describe, expect, test } from 'vitest';
import type { Topic } from '../define/shapes';
import { shelf } from '../define/small-topic.fixture';
import { sayProblem } from './messages';
import { checkTopic } from './topic';

const told = (more: object): string => {
  // As written where no compiler looks.
  const topic: Topic = JSON.parse(JSON.stringify({ ...shelf, ...more }));
  return checkTopic(topic).map(sayProblem).join('\n');
};

const { findings, limits, facts, formulas } = shelf;
/** The first entry of a group, with something more under its own name. */
const withKey = (group: object, more: object): object => {
  const [[id, entry] = ['', {}]] = Object.entries(group);
  return { ...group, [id]: { ...entry, ...more } };
};

describe('a key that nothing reads is told, with what was meant', () => {
  test.each<[string, object, RegExp]>([
    ['of a topic', { limts: {} }, /topic: it has “limts”.*Did you mean `limits`/],
    [
      'of a finding, with the ruling that would be gone',
      { findings: withKey(findings, { carre: { when: 'shelf.braced', wrong: 'It leans.' } }) },
      /it has “carre”.*Did you mean `care`/,
    ],
    ['of a finding', { findings: withKey(findings, { stopopen: 'if' }) }, /“stopopen”.*`stopOpen`/],
    [
      'of a ruling',
      {
        findings: withKey(findings, {
          stop: { when: 'shelf.braced', wrong: 'No.', provisoo: 'x' },
        }),
      },
      /stop: it has “provisoo”.*`proviso`/,
    ],
    ['of a limit', { limits: withKey(limits, { margn: 'margin.shelf' }) }, /“margn”.*`margin`/],
    ['of a fact', { facts: withKey(facts, { israting: true }) }, /“israting”.*`isRating`/],
    ['of a formula', { formulas: withKey(formulas, { unti: 'lb' }) }, /“unti”.*`unit`/],
    [
      'unlike any',
      { cautions: [{ says: 'Mind it.', source: shelf.cautions[0]?.source, whatever: 1 }] },
      /“whatever”.*says, source, fits/,
    ],
  ])('%s', (_, more, message) => {
    expect(told({})).toBe('');
    expect(told(more)).toMatch(message);
  });
});
