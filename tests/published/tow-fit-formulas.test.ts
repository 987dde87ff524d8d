import { type Answer, answerTraced } from '@tarebook/rules';
import {
  type CellGiven,
  type FactsGiven,
  type Formula,
  isRows,
  publish,
  type RowGiven,
  type Topic,
} from '@tarebook/rules/engine';
import { towFit } from '@tarebook/rules/tow-fit';
import fc from 'fast-check';
import {
  AccessorNode,
  FunctionNode,
  isAccessorNode,
  isFunctionNode,
  isSymbolNode,
  type MathNode,
  unit as mathjsUnit,
  parse,
  SymbolNode,
  type Unit,
} from 'mathjs';
import { describe, expect, test } from 'vitest';

/**
 * mathjs (a general library with units of its own) reads the same formula texts and must come to
 * the same numbers in the same units. Checked so are all formulas that only reckon; those that
 * choose, or ask what is known, are left to the second derivation of the whole topic.
 */
const topic: Topic = towFit;
const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);

const mathjsNames: Readonly<Record<string, string>> = {
  lb: 'lbm',
  in: 'inch',
  ft: 'foot',
  'ft²': 'sqft',
  gal: 'gallon',
  lb·ft: 'lbm foot',
  lb·in: 'lbm inch',
  'lb/gal': 'lbm/gallon',
};

type Quantity = number | Unit;

/** A number kept in one of our units as mathjs has it. */
function quantity(value: number, unit: string): Quantity {
  if (unit === '' || unit === '1') return value;
  if (unit === '%') return value / 100;
  if (unit === '% per 1,000 ft') return mathjsUnit(value / 100_000, 'foot^-1');
  return mathjsUnit(value, mathjsNames[unit] ?? unit);
}

/** Back in our unit; throws when the dimension is another. */
function inUnit(found: unknown, unit: string): number {
  if (typeof found === 'number') {
    if (unit === '' || unit === '1') return found;
    if (unit === '%') return found * 100;
    throw new Error(`A plain number came out where ${unit} was wanted.`);
  }
  if (found instanceof Object && 'toNumber' in found && typeof found.toNumber === 'function') {
    return Number(found.toNumber(mathjsNames[unit] ?? unit));
  }
  throw new Error(`Neither number nor unit came out: ${String(found)}.`);
}

const onlyReckons = ({ is }: Formula): boolean =>
  !/choose|given|known|unlimited|count|lookup|between|['<>=!&|]/.test(is);

const formulas: Readonly<Record<string, Formula>> = {
  ...topic.formulas,
  ...publishedFormulas(),
};
function publishedFormulas(): Readonly<Record<string, Formula>> {
  const all = publish(topic);
  if (!('formulas' in all)) return {};
  const isFormula = (value: unknown): value is Formula =>
    value instanceof Object && 'is' in value && 'unit' in value;
  return Object.fromEntries(
    Object.entries(Object(all.formulas)).filter((entry): entry is [string, Formula] =>
      isFormula(entry[1]),
    ),
  );
}
/** The room above empty is told only as the divisor of `roomUsed`, and is checked there. */
const checked = Object.entries(formulas).filter(
  ([name, formula]) => onlyReckons(formula) && !name.endsWith('.room'),
);

const nameOf = (node: MathNode): string => node.toString().replace(/\["(\w+)"\]/g, '.$1');
const asSymbol = (name: string) => name.replace(/\./g, '__');

/** Dotted names become one symbol, sums are written out row by row, needs(a, …) is its a. */
function translate(text: string, rows: (list: string) => number): string {
  const walk = (node: MathNode, row?: number): MathNode => {
    if (isAccessorNode(node)) {
      const name = asSymbol(nameOf(node));
      return new SymbolNode(row !== undefined && isColumn(nameOf(node)) ? `${name}__${row}` : name);
    }
    if (isFunctionNode(node) && isSymbolNode(node.fn)) {
      const [first] = node.args;
      if (node.fn.name === 'needs' && first) return walk(first, row);
      // To mathjs a bare zero is no weight: it is written as nothing of the other side.
      if (['max', 'min'].includes(node.fn.name)) {
        const sides = node.args.map((each) => walk(each, row).toString());
        const other = sides.find((each) => each !== '0') ?? '0';
        const written = sides.map((each) => (each === '0' ? `(0 * (${other}))` : each));
        return parse(`${node.fn.name}(${written.join(', ')})`);
      }
      if (node.fn.name === 'largestKnown')
        return new FunctionNode(
          'max',
          node.args.map((each) => walk(each, row)),
        );
      if (node.fn.name === 'sum' && first) {
        const list = listIn(first);
        const each = Array.from({ length: rows(list) }, (_, i) => `(${walk(first, i).toString()})`);
        return parse(`(${each.join(' + ')})`);
      }
    }
    return node.map((child) => walk(child, row));
  };
  return walk(parse(text)).toString();
}

function isColumn(name: string): boolean {
  return topic.facts[name.slice(0, name.lastIndexOf('.'))]?.kind === 'rows';
}

function listIn(node: MathNode): string {
  let list = '';
  node.traverse((each) => {
    if (each instanceof AccessorNode && isColumn(nameOf(each)) && list === '')
      list = nameOf(each).slice(0, nameOf(each).lastIndexOf('.'));
  });
  return list;
}

/** A rig of which everything is known, so that every formula has one number. */
const completeRig = fc
  .array(fc.double({ min: 0.2, max: 0.9, noNaN: true }), { minLength: 80, maxLength: 80 })
  .map((shares) => {
    let next = 0;
    const share = (): number => shares[next++ % shares.length] ?? 0.5;
    const facts: Record<string, CellGiven | readonly RowGiven[]> = {};
    const cell = (unit: string, least: number, most: number): CellGiven => {
      const value = Math.max(least, 0) + share() * Math.min(most - Math.max(least, 0), 5000);
      return { value, unit };
    };
    for (const [id, fact] of Object.entries(topic.facts)) {
      if (fact.kind === 'choice') facts[id] = fact.options[0] ?? '';
      if (fact.kind === 'yes-no') facts[id] = 'yes';
      if (fact.kind === 'quantity') {
        facts[id] = id === 'trailer.axles' ? '2' : cell(fact.unit, fact.least, fact.most);
      }
      if (fact.kind !== 'rows') continue;
      facts[id] = [0, 1].map(() =>
        Object.fromEntries(
          Object.entries(fact.columns).map(([column, { unit, least, most }]) => [
            column,
            cell(unit, least, most),
          ]),
        ),
      );
    }
    const given: FactsGiven = facts;
    return given;
  });

/** Every name that formulas may use, as mathjs takes it. */
function scopeOf(
  given: FactsGiven,
  values: Readonly<Record<string, { lo: number; unit: string }>>,
) {
  const scope = new Map<string, Quantity>();
  const put = (name: string, cell: CellGiven | undefined, unit: string) => {
    if (typeof cell === 'object' && 'value' in cell)
      scope.set(asSymbol(name), quantity(cell.value, unit));
    else if (typeof cell === 'string' && /^\d+$/.test(cell))
      scope.set(asSymbol(name), Number(cell));
  };
  for (const [id, fact] of Object.entries(topic.facts)) {
    const cell = given[id];
    if (fact.kind === 'quantity' && !isRows(cell)) put(id, cell, fact.unit);
    if (fact.kind === 'rows' && isRows(cell)) {
      cell.forEach((row, i) => {
        for (const [column, { unit }] of Object.entries(fact.columns))
          put(`${id}.${column}__${i}`, row[column], unit);
      });
    }
  }
  for (const [id, { values: dated, unit }] of Object.entries(topic.parameters)) {
    scope.set(asSymbol(id), quantity(dated.at(-1)?.value ?? Number.NaN, unit));
  }
  for (const [id, { lo, unit }] of Object.entries(values)) {
    scope.set(asSymbol(id), quantity(lo, unit));
  }
  return scope;
}

describe('every formula that only reckons, read by mathjs with its own units', () => {
  const rows = () => 2;
  const rigs = fc.sample(completeRig, { numRuns: 25, seed });
  const answers = rigs.map((given) => answerTraced(towFit, { facts: given, asOf: '2026-11-01' }));

  test('there are many of them, and they are most of what limits are made of', () => {
    expect(checked.length).toBeGreaterThan(60);
  });

  test.each(checked)('%s comes to the same number in its declared unit', (name, formula) => {
    const code = parse(translate(formula.is, rows)).compile();
    rigs.forEach((given, i) => {
      const answer = answers[i];
      if (!answer) throw new Error('A rig without an answer.');
      const at = (values: Answer['values']) =>
        inUnit(code.evaluate(scopeOf(given, values)), formula.unit);
      const found = at(answer.values);
      const ours = oursOf(answer, name);
      if (ours === undefined) throw new Error(`${name} is told nowhere.`);
      if (!Number.isFinite(ours)) {
        expect(found <= 0 || !Number.isFinite(found) || name.endsWith('.roomUsed')).toBe(true);
        return;
      }
      const off = Math.abs(found - ours);
      const usual = 2e-5 + Math.abs(found) * 2e-5;
      if (off > usual) expect(off).toBeLessThanOrEqual(usual + roundedAway(at, answer, formula));
    });
  });
});

/**
 * mathjs starts from numbers rounded to a millionth: what half of one on each of them moves the result
 * by. A share times some tons makes thousandths of it, and what is divided by a small share more.
 */
function roundedAway(
  at: (values: Answer['values']) => number,
  { values }: Answer,
  { is }: Formula,
): number {
  const half = 5e-7;
  const found = at(values);
  return Object.entries(values).reduce((sum, [id, ends]) => {
    if (ends.lo === null || !new RegExp(`(?<![\\w.])${id}(?![\\w.])`).test(is)) return sum;
    const moved = (by: number) =>
      Math.abs(at({ ...values, [id]: { ...ends, lo: Number(ends.lo) + by } }) - found);
    return sum + Math.max(moved(half), moved(-half));
  }, 0);
}

/** Where an answer tells a formula's number: among the values, or beside the limit it belongs to. */
function oursOf(answer: Answer, name: string): number | undefined {
  const value = Object.entries(answer.values).find(([id]) => id === name)?.[1];
  if (value) return value.lo;
  const [id = '', part] = name.split('.');
  const limit = answer.limits.find(
    (each) => each.id.replace(/-([a-z])/g, (_, letter: string) => letter.toUpperCase()) === id,
  );
  if (part === 'careAt') return limit?.careAt?.lo;
  if (part === 'roomUsed') return limit?.roomUsed.lo;
  return answer.trace.steps[name]?.ends?.lo;
}
