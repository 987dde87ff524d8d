import { expect, test } from 'vitest';
import { answerNow } from '../answer/answer';
import type { Finding, Formula, Topic } from '../define/shapes';
import { formula, shelf, source } from '../define/small-topic.fixture';
import { defineTopic } from './define';
import { sayProblem } from './messages';
import { checkTopic } from './topic';

const untold: Readonly<Record<string, Formula>> = {
  'kind.isUntold': formula('!known(shelf.kind)', 'yes-no'),
  'braced.isKnown': formula('known(shelf.braced)', 'yes-no'),
  'box.isHeavy': formula('box.weight > shelf.rating', 'yes-no'),
};

function shelfWith(stop: string, proviso: string, more: Partial<Finding> = {}): Topic {
  const finding: Finding = {
    label: 'Braces',
    settles: true,
    stop: { when: stop, wrong: 'It has no braces.', proviso: 'it has braces' },
    if: { when: proviso, wrong: 'Nobody looked.', proviso: 'it is braced' },
    otherwise: 'It is braced.',
    source,
    ...more,
  };
  return defineTopic<Topic>({
    ...shelf,
    formulas: { ...shelf.formulas, ...untold },
    findings: { ...shelf.findings, braces: finding },
  });
}

const told = (topic: Topic): boolean =>
  checkTopic(topic)
    .map(sayProblem)
    .some((said) => said.startsWith('finding.braces.if: no case comes to it'));

const given = ['yes', 'no', 'unknown', undefined];
const kinds = ['oak', 'pine', 'unknown', undefined];

/** Whether any way of telling the choices comes to the proviso. */
const comesToIt = (topic: Topic): boolean =>
  given.some((braced) =>
    kinds.some((kind) =>
      ['10 lb', '200 lb', 'unknown'].some((weight) => {
        const facts = {
          ...(braced && { 'shelf.braced': braced }),
          ...(kind && { 'shelf.kind': kind }),
          ...{ 'box.weight': weight, 'shelf.rating': '100 lb' },
        };
        const { findings } = answerNow(topic, { facts, asOf: '2026-11-01' });
        return findings.find(({ id }) => id === 'braces')?.level === 'if';
      }),
    ),
  );

test.each([
  ["shelf.braced == 'no'", "shelf.braced != 'yes'", true],
  ["shelf.kind == 'pine'", 'kind.isUntold', true],
  ["shelf.braced == 'no' && shelf.kind == 'pine'", "shelf.braced == 'no' && kind.isUntold", true],
  ["braced.isKnown && shelf.braced == 'no'", "shelf.braced != 'yes'", false],
  ["shelf.braced == 'no'", "shelf.kind == 'pine'", false],
  ["shelf.kind == 'pine' && !kind.isUntold", 'kind.isUntold', false],
  ["box.isHeavy && shelf.braced == 'no'", "shelf.braced == 'no'", false],
  ["box.weight > shelf.rating && shelf.braced == 'no'", "shelf.braced != 'yes'", false],
  ["shelf.braced == 'no'", 'box.isHeavy', false],
])('stop %s beside if %s: told %s, as no case comes to it', (stop, proviso, isTold) => {
  const topic = shelfWith(stop, proviso);
  expect(told(topic)).toBe(isTold);
  expect(comesToIt(topic)).toBe(!isTold);
});

test('one whose stop counts as a proviso where it may be is not told', () => {
  const topic = shelfWith("shelf.braced == 'no'", "shelf.braced != 'yes'", { stopOpen: 'if' });
  expect(told(topic)).toBe(false);
  expect(comesToIt(topic)).toBe(true);
});
