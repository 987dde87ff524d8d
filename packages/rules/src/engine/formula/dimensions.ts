import {
  type Dimension,
  dimensionName,
  joined,
  plain,
  sameDimension,
  unitOf,
} from '../../quantity';
import { asks } from '../catalogue/ask-names';
import { askedWrongly } from '../catalogue/asked-wrongly';
import type { Topic } from '../define/shapes';
import { declaredUnit } from '../define/topic';
import type { Node } from './nodes';
import { FormulaError } from './parse';

/** What a part of a formula is: a number of some dimension, a truth, a word, or any number. */
type Sort =
  | { readonly kind: 'number'; readonly dimension: Dimension }
  | { readonly kind: 'truth' }
  | { readonly kind: 'word' }
  | { readonly kind: 'any-number' };

const number = (dimension: Dimension): Sort => ({ kind: 'number', dimension });
const truth: Sort = { kind: 'truth' };

function fail(text: string): never {
  throw new FormulaError(text);
}

function sortOfUnit(unit: string): Sort {
  if (unit === 'yes-no') return truth;
  if (unit === 'choice') return { kind: 'word' };
  if (unit === '') return number(plain);
  return number(unitOf(unit).dimension);
}

function numeric(sort: Sort, what: string): Sort {
  if (sort.kind === 'number' || sort.kind === 'any-number') return sort;
  return fail(`${what} wants a number, found a ${sort.kind}`);
}

/** Both sides of +, −, a comparison or a choice must be of one kind. */
function alike(a: Sort, b: Sort, what: string): Sort {
  if (a.kind === 'any-number') return numeric(b, what);
  if (b.kind === 'any-number') return numeric(a, what);
  if (a.kind === 'number' && b.kind === 'number') {
    if (sameDimension(a.dimension, b.dimension)) return a;
    return fail(`${what} joins ${dimensionName(a.dimension)} with ${dimensionName(b.dimension)}`);
  }
  if (a.kind === b.kind) return a;
  return fail(`${what} joins a ${a.kind} with a ${b.kind}`);
}

const asTruth = (sort: Sort, what: string): Sort =>
  sort.kind === 'truth' ? sort : fail(`${what} wants a yes or no, found a ${sort.kind}`);

function product(op: '*' | '/', a: Sort, b: Sort): Sort {
  const [left, right] = [numeric(a, op), numeric(b, op)];
  if (left.kind !== 'number' || right.kind !== 'number') return { kind: 'any-number' };
  return number(joined(left.dimension, right.dimension, op === '*' ? 1 : -1));
}

/** The sort of a formula; throws a FormulaError where units clash or a name is not there. */
export function sortOf(node: Node, topic: Topic, unitOfName: (name: string) => string): Sort {
  const walk = (each: Node): Sort => {
    switch (each.kind) {
      case 'number':
        // A bare zero fits beside any unit; every other bare number has no dimension.
        return each.value === 0 ? { kind: 'any-number' } : number(plain);
      case 'unlimited':
        return { kind: 'any-number' };
      case 'word':
        return { kind: 'word' };
      case 'name':
        return sortOfUnit(unitOfName(each.id));
      case 'negative':
        return numeric(walk(each.of), '−');
      case 'arithmetic':
        if (each.op === '*' || each.op === '/') return product(each.op, walk(each.a), walk(each.b));
        return alike(numeric(walk(each.a), each.op), walk(each.b), each.op);
      case 'compare': {
        const [a, b] = [walk(each.a), walk(each.b)];
        // A yes/no fact is compared with 'yes' or 'no' as a word.
        const worded = (sort: Sort): Sort => (sort.kind === 'truth' ? { kind: 'word' } : sort);
        alike(worded(a), worded(b), each.op);
        return truth;
      }
      case 'both':
      case 'either':
        asTruth(walk(each.a), each.kind);
        return asTruth(walk(each.b), each.kind);
      case 'not':
        return asTruth(walk(each.of), 'not');
      case 'choose':
        asTruth(walk(each.when), 'choose');
        return alike(walk(each.chosen), walk(each.otherwise), 'choose');
      case 'min':
      case 'max':
      case 'largestKnown':
        return each.of.map(walk).reduce((a, b) => alike(a, b, each.kind));
      case 'sum':
        return numeric(walk(each.of), 'sum');
      case 'count':
        return topic.facts[each.list]?.kind === 'rows'
          ? number(plain)
          : fail(`count wants a list, and “${each.list}” is none`);
      case 'given':
      case 'known':
        for (const name of each.names) unitOfName(name);
        return truth;
      case 'needs':
        for (const name of each.names) unitOfName(name);
        return numeric(walk(each.of), 'needs');
      case 'lookup': {
        const table = topic.tables[each.table];
        if (!table) return fail(`there is no table “${each.table}”`);
        alike(walk(each.at), number(unitOf(table.keyUnit || '1').dimension), 'lookup');
        return number(unitOf(table.valueUnit || '1').dimension);
      }
      case 'pick': {
        const table = topic.wordTables?.[each.table];
        if (!table) return fail(`there is no table of words “${each.table}”`);
        alike(walk(each.at), { kind: 'word' }, 'pick');
        return number(unitOf(table.valueUnit || '1').dimension);
      }
      case 'power':
        alike(walk(each.base), number(plain), 'power');
        return alike(walk(each.exponent), number(plain), 'power');
      case 'between':
        return numeric(alike(walk(each.a), walk(each.b), 'between'), 'between');
      case 'whole':
        return alike(walk(each.of), number(plain), 'whole');
      case 'sunHeight':
        for (const part of [each.latitude, each.day, each.hour]) {
          alike(walk(part), number(plain), 'sunHeight');
        }
        return number(plain);
      case 'over':
        if (!topic.simulations?.[each.simulation]) {
          return fail(`there is no simulation “${each.simulation}”`);
        }
        return numeric(walk(each.of), each.how);
      case 'catalogued': {
        const wrong = askedWrongly(topic.catalogues?.[each.catalogue], each);
        if (wrong !== undefined) return fail(wrong);
        if (asks[each.ask].yields === 'truth') return truth;
        const unit = topic.catalogues?.[each.catalogue]?.figures[each.args[0] ?? ''];
        return each.ask === 'figure' ? sortOfUnit(unit ?? '') : number(plain);
      }
    }
  };
  return walk(node);
}

/** Whether a formula yields what its declared unit says; a FormulaError says how it does not. */
export function checkFormulaUnit(node: Node, declared: string, topic: Topic, all: NameUnits): void {
  const unitOfName = (name: string): string =>
    all.get(name) ?? declaredUnit(topic, name) ?? fail(`there is no “${name}”`);
  const found = sortOf(node, topic, unitOfName);
  alike(found, sortOfUnit(declared), `the unit “${declared}”`);
}

/** Units of the formulas that the topic does not list itself. */
export type NameUnits = ReadonlyMap<string, string>;
