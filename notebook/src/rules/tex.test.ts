import { topics } from '@tarebook/rules';
import { namesIn, parseFormula } from '@tarebook/rules/engine';
import { expect, test } from 'vitest';
import { formulaMath } from './mathml';
import { legendOf, namedIn, sourcesIn } from './names';
import { formulaTex, spaced } from './tex';

const every = Object.values(topics).flatMap((topic) =>
  Object.entries(topic.formulas).map(([id, formula]) => ({ topic, id, formula })),
);

test('every formula of every topic is mathematics that the typesetter takes, without style', () => {
  for (const { id, formula } of every) {
    const math = formulaMath(id, formula.is, formula.unit);
    expect(math, id).toMatch(/^<math [^>]*>.*<\/math>$/s);
    expect(math, id).not.toMatch(/ style=|merror|<script/);
  }
});

test('every name of a formula stands in its mathematics and in its legend', () => {
  for (const { topic, id, formula } of every) {
    const node = parseFormula(formula.is);
    const tex = formulaTex(id, node, formula.unit);
    const explained = new Set(legendOf(topic, formula.is).map((named) => named.id));
    for (const name of namesIn(node)) {
      expect(tex, `${id}: ${name}`).toContain(spaced(name.split('.').at(-1) ?? ''));
      if (namedIn(topic, name)) expect(explained, id).toContain(name);
    }
  }
});

test('a quotient is a fraction, a choice a brace, a sum runs over its list, and brackets stay', () => {
  const tex = (is: string) => formulaTex('x.y', parseFormula(is), 'lb');
  expect(tex('a / (b + c)')).toContain('\\dfrac{\\text{a}}{\\text{b} +\\,\\text{c}}');
  expect(tex('a * (b + c)')).toContain('\\text{a} \\times \\left(\\text{b} +\\,\\text{c}\\right)');
  expect(tex('a - (b - c)')).toContain('-\\,\\left(\\text{b} -\\,\\text{c}\\right)');
  expect(tex('choose(a > 1, b, c)')).toMatch(
    /\\begin\{cases\}.*\\text\{if \}.*\\text\{otherwise\}/s,
  );
  expect(tex('sum(load.cargo.weight)')).toContain('\\sum_{\\text{load cargo}} \\text{weight}');
  expect(formulaTex('x.y', parseFormula('a && b'), 'yes-no')).toContain('\\iff');
});

test('every source of a topic is told, the published first', () => {
  for (const topic of Object.values(topics)) {
    const classes = sourcesIn(topic).map(({ source }) => source.class);
    expect(classes.indexOf('published')).toBeLessThanOrEqual(0);
    const all = new Set(Object.values(topic.formulas).map(({ source }) => source.cite));
    const told = new Set(sourcesIn(topic).map(({ source }) => source.cite));
    for (const cite of all) expect(told).toContain(cite);
  }
});
