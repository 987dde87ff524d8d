import { readdirSync, readFileSync } from 'node:fs';
import { topics } from '@tarebook/rules';
import { FormulaError, parseFormula } from '@tarebook/rules/engine';
import fc from 'fast-check';
import jsep, { type Expression } from 'jsep';
import { expect, test } from 'vitest';

// jsep, https://ericsmekens.github.io/jsep, is the outside check: it reads the same expressions, and
// what holds together in its tree is put in brackets here. Ours must make the same of both texts.

const isExpression = (value: unknown): value is Expression =>
  typeof value === 'object' && value !== null && 'type' in value;

function bracketed(node: unknown): string {
  if (!isExpression(node)) throw new Error('There is no such part.');
  const { type, operator } = node;
  switch (type) {
    case 'Literal':
      return String(node.raw);
    case 'Identifier':
      return String(node.name);
    case 'MemberExpression':
      return `${bracketed(node.object)}.${bracketed(node.property)}`;
    case 'UnaryExpression':
      return `(${operator}${bracketed(node.argument)})`;
    case 'BinaryExpression':
      return `(${bracketed(node.left)} ${operator} ${bracketed(node.right)})`;
    case 'CallExpression': {
      const args = Array.isArray(node.arguments) ? node.arguments : [];
      return `${bracketed(node.callee)}(${args.map(bracketed).join(', ')})`;
    }
    default:
      throw new Error(`${type} is none of ours.`);
  }
}

/** Every text that stands under `is`, `when`, `start` or `next`, wherever. */
function textsIn(value: unknown, found = new Set<string>()): ReadonlySet<string> {
  if (typeof value !== 'object' || value === null) return found;
  for (const [key, inner] of Object.entries(value)) {
    const isText = typeof inner === 'string' && ['is', 'when', 'start', 'next'].includes(key);
    if (isText) found.add(inner);
    else textsIn(inner, found);
  }
  return found;
}

const kept = new URL('../../packages/rules/published/', import.meta.url);
const released = readdirSync(kept, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.json'))
  .map((file): unknown => JSON.parse(readFileSync(new URL(file, kept), 'utf8')));

test('every formula and condition there is, and ever was released, reads as a library reads it', () => {
  const texts = textsIn([...Object.values(topics), ...released]);
  expect(texts.size).toBeGreaterThan(2_000);
  for (const text of texts) {
    expect(parseFormula(text), text).toEqual(parseFormula(bracketed(jsep(text))));
  }
});

const leaf = fc.constantFrom('a.b', 'c.d.e', "'oak'", '2.5', '.5', '1e3', '0');
const { formula } = fc.letrec<{ formula: string }>((tie) => ({
  formula: fc.oneof(
    { maxDepth: 5, depthSize: 'large' },
    leaf,
    fc
      .tuple(
        tie('formula'),
        fc.constantFrom('+', '-', '*', '/', '<', '<=', '>', '>=', '==', '!=', '&&', '||'),
        tie('formula'),
      )
      .map(([a, sign, b]) => `${a} ${sign} ${b}`),
    fc.tuple(fc.constantFrom('-', '!', '- ', '! '), tie('formula')).map((parts) => parts.join('')),
    tie('formula').map((inner) => `( ${inner})`),
    fc
      .tuple(fc.constantFrom('min', 'max'), tie('formula'), tie('formula'))
      .map(([name, a, b]) => `${name}(${a}, ${b} )`),
  ),
}));

test('so does whatever can be written with its signs, with or without brackets', () => {
  fc.assert(
    fc.property(formula, (text) => {
      expect(parseFormula(text)).toEqual(parseFormula(bracketed(jsep(text))));
    }),
    { numRuns: 3_000 },
  );
});

const piece = fc.constantFrom(
  ...'( ) , . + - * / < > = ! & | \' " % [ ] ; ? is a.b 7 min'.split(' '),
);

test('of any heap of signs a sentence is made, or the same formula as the library finds', () => {
  fc.assert(
    fc.property(fc.array(piece, { maxLength: 12 }), fc.constantFrom('', ' '), (pieces, gap) => {
      const text = pieces.join(gap);
      let ours: unknown;
      try {
        ours = parseFormula(text);
      } catch (problem) {
        expect(problem).toBeInstanceOf(FormulaError);
        expect(String(problem)).toContain(`“${text}”`);
        return;
      }
      expect(ours, text).toEqual(parseFormula(bracketed(jsep(text))));
    }),
    { numRuns: 10_000 },
  );
  expect(() => parseFormula('('.repeat(100_000))).toThrow(/too many brackets/);
});
