import { expect, test } from 'vitest';
import { topics } from '../../topics/all';
import type { Topic } from '../define/shapes';
import { shelf } from '../define/small-topic.fixture';
import { defineTopic } from './define';
import { readFacts } from './facts';
import { sayProblem } from './messages';
import { mistakes } from './mistakes';
import type { Mistake, Problem } from './problem';
import { checkTopic } from './topic';

const mistakeCodes = Object.fromEntries(
  Object.keys(mistakes).map((code) => [code, true]),
) as Record<Mistake, true>;

/** Every code, by name: one that is added without a line here does not compile. */
const codes: Readonly<Record<Problem['code'], true>> = {
  'not-a-case': true,
  'not-facts': true,
  'not-an-answer': true,
  'not-options': true,
  'wrong-argument': true,
  'in-document': true,
  'not-a-ledger': true,
  'not-a-day': true,
  'no-such-asking': true,
  'no-such-part': true,
  'not-a-whole-number': true,
  'no-such-fact': true,
  'not-a-quantity': true,
  'no-unit': true,
  'no-such-unit': true,
  'two-units': true,
  'two-ways': true,
  'wrong-unit': true,
  'back-to-front': true,
  'out-of-range': true,
  'no-such-option': true,
  'not-rows': true,
  'too-many-rows': true,
  'not-a-row': true,
  'no-such-column': true,
  'missing-cell': true,
  'not-plain': true,
  'given-twice': true,
  'not-json': true,
  'not-a-house-layer': true,
  'other-topic': true,
  'no-house-name': true,
  'no-such-house-key': true,
  'no-such-parameter': true,
  'not-a-house-choice': true,
  'not-a-parameter': true,
  'not-one-value': true,
  'beyond-house-range': true,
  'no-reason': true,
  'loosens-a-rating': true,
  'not-a-topic': true,
  'no-value-on': true,
  'not-a-saved-answer': true,
  ...mistakeCodes,
};

/** Two spaces, quotation marks around nothing, a stop behind nothing, what JavaScript says for nothing. */
const hole =
  / {2}|“\s*”|``|‘\s*’|''|""|\(\s*\)|\s[,;:]|\s\.(?!\.)|[,;:]\s*[.;,]|\.[;,]|undefined|\bNaN\b|\[object/;

const whole = (said: string): void => {
  // What is quoted is as it was given; so is the sign at which a formula cannot be read.
  const own = said.replaceAll(/“[^”]*\S[^”]*”/g, '“x”').replaceAll(/token \S/g, 'token');
  expect(own).not.toMatch(hole);
  expect(said).not.toMatch(/^[\s,.;:]/);
  expect(said).toMatch(/[.?]$/);
};

const filled = { fact: 'trailer.gvwr', found: '5,000 lbz', wanted: 'a number with its unit' };
/** What the mistakes of a rule set carry beside, each as far as its words need it. */
const beside = { of: 'shelf.kind', options: ['oak', 'pine'], least: 0, most: 9, unit: 'lb' };

test.each(Object.keys(codes) as Problem['code'][])('%s is said without a hole', (code) => {
  if (!Object.hasOwn(mistakes, code)) whole(sayProblem({ code, ...filled }));
  whole(
    sayProblem({
      code,
      ...filled,
      ...beside,
      near: 'lb',
      row: 2,
      column: 'Weight',
      limit: 'Payload',
    }),
  );
});

/** Codes that quote what a person typed, which may be nothing at all. */
const quoting: readonly Problem['code'][] = [
  ...(['not-a-quantity', 'no-unit', 'no-such-unit', 'two-units', 'wrong-unit'] as const),
  ...(['back-to-front', 'no-such-option', 'no-such-column', 'not-a-day', 'other-topic'] as const),
  ...(['no-such-asking', 'no-such-part', 'no-such-fact', 'not-one-value'] as const),
];

test.each(quoting)('%s of an empty text is said without a hole', (code) => {
  for (const found of ['', ' ', '\t']) whole(sayProblem({ code, ...filled, found }));
});

test('a name of nothing is said without a hole', () => {
  for (const code of ['no-such-fact', 'no-such-parameter', 'not-a-parameter'] as const) {
    for (const fact of ['', ' ']) whole(sayProblem({ ...filled, code, fact }));
  }
});

test.each(Object.values(topics).map((topic) => [topic.id, topic] as const))(
  'whatever is given for a fact of %s is refused without a hole',
  (_, topic) => {
    const odd = ['', '  ', 'x', '12 zz', '3–1', '-1e9 lb', '5 lb ft', [], [{}], [{ '': 1 }], {}];
    for (const id of Object.keys(topic.facts)) {
      for (const given of [...odd, null]) {
        readFacts(topic, { [id]: given })
          .problems.map(sayProblem)
          .forEach(whole);
      }
    }
    for (const id of ['', ' ', 'trailer..gvwr']) {
      readFacts(topic, { [id]: '1 lb' })
        .problems.map(sayProblem)
        .forEach(whole);
    }
  },
);

type Json = string | number | boolean | null | readonly Json[] | { readonly [key: string]: Json };

const isList = (value: Json): value is readonly Json[] => Array.isArray(value);

/** The rule set once for every text in it, with something else in that place. */
function* eachText(value: Json, other: string): Generator<Json> {
  if (typeof value === 'string') yield other;
  if (typeof value !== 'object' || value === null) return;
  for (const [key, inner] of Object.entries(value)) {
    for (const changed of eachText(inner, other)) {
      yield isList(value)
        ? value.map((each, i) => (String(i) === key ? changed : each))
        : { ...value, [key]: changed };
    }
  }
}

/** Counts beside weights, a decision and texts as conditions: what the small rule set has none of. */
const counted: Topic = defineTopic<Topic>({
  ...shelf,
  facts: {
    ...shelf.facts,
    'box.count': { ...words('How many?'), kind: 'quantity', unit: '', least: 0, most: 9 },
  },
  findings: {
    ...shelf.findings,
    heavy: {
      label: 'Heavy',
      care: { when: "load.total > shelf.rating && shelf.kind == 'oak'", wrong: 'It is heavy.' },
      stop: { when: 'load.total > box.count', wrong: 'It is too heavy for {box.count}.' },
      otherwise: 'It is light.',
      source: { class: 'invented', cite: 'A shelf of our own' },
    },
  },
});

function words(ask: string) {
  return { label: 'A count', ask, where: 'on the box' };
}

test('weights compared with a count name both sides', () => {
  const said = checkTopic(counted).map(sayProblem);
  expect(said.filter((each) => each.includes('compares'))).toEqual([
    'finding.heavy.stop: it compares lb with a plain number; both sides must share a unit.',
  ]);
});

test.each(['', 'nonsense', "shelf.kind is 'oak'", "shelf.kind = 'oak'", 'load.total +', '{', 'lb'])(
  'whatever in a rule set is “%s” is told without a hole',
  (other) => {
    const plain: Json = JSON.parse(JSON.stringify(counted));
    let told = 0;
    for (const changed of eachText(plain, other)) {
      // biome-ignore lint/suspicious/noExplicitAny: a rule set from a file may be anything
      const said = checkTopic(changed as any).map(sayProblem);
      told += said.length;
      said.forEach(whole);
    }
    expect(told).toBeGreaterThan(50);
  },
);

test('a comparison written as it is spoken says how it is written', () => {
  const told = (when: string): string => {
    const finding = { ...counted.findings.heavy, care: { when, wrong: 'It is so.' } };
    const topic: Topic = JSON.parse(JSON.stringify({ ...shelf, findings: { finding } }));
    return checkTopic(topic).map(sayProblem).join('\n');
  };
  for (const when of ["shelf.kind is 'oak'", "shelf.kind = 'oak'"])
    expect(told(when)).toMatch(/write ==/);
});
