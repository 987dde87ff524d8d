import { rounded } from '../../quantity';
import {
  type AmongValue,
  joinOn,
  movedBy,
  type NumberValue,
  nothing,
  type TruthValue,
  type Value,
} from './values';

export type Compare = '<' | '<=' | '>' | '>=' | '==' | '!=';

export function asNumber(value: Value): NumberValue {
  if (value.kind === 'number') return value;
  throw new Error('A number was wanted here.');
}

export function asTruth(value: Value): TruthValue {
  if (value.kind === 'truth') return value;
  if (value.kind === 'among') {
    const yes = value.options.includes('yes');
    const no = value.options.some((option) => option !== 'yes');
    return { kind: 'truth', yes, no, on: yes && no ? value.on : nothing };
  }
  throw new Error('A yes or no was wanted here.');
}

function compareNumbers(op: Compare, a: NumberValue, b: NumberValue): TruthValue {
  const [al, ah, bl, bh] = [rounded(a.lo), rounded(a.hi), rounded(b.lo), rounded(b.hi)];
  const same = al === ah && bl === bh && al === bl;
  const apart = ah < bl || bh < al;
  const possible: Record<Compare, readonly [yes: boolean, no: boolean]> = {
    '<': [al < bh, ah >= bl],
    '<=': [al <= bh, ah > bl],
    '>': [ah > bl, al <= bh],
    '>=': [ah >= bl, al < bh],
    '==': [!apart, !same],
    '!=': [!same, !apart],
  };
  const [yes, no] = possible[op];
  const on = yes && no ? new Set([...movedBy(a), ...movedBy(b)]) : nothing;
  return { kind: 'truth', yes, no, on };
}

function compareWords(op: Compare, a: AmongValue, b: AmongValue): TruthValue {
  const shared = a.options.some((option) => b.options.includes(option));
  const single = a.options.length === 1 && b.options.length === 1;
  const equal = { yes: shared, no: !(shared && single) };
  const { yes, no } = op === '==' ? equal : { yes: equal.no, no: equal.yes };
  return { kind: 'truth', yes, no, on: yes && no ? joinOn(a.on, b.on) : nothing };
}

/** Whether one value stands to another as asked: certainly, possibly or not at all. */
export function compare(op: Compare, a: Value, b: Value): TruthValue {
  if (a.kind === 'among' && b.kind === 'among') return compareWords(op, a, b);
  return compareNumbers(op, asNumber(a), asNumber(b));
}

export function both(a: TruthValue, b: TruthValue): TruthValue {
  const yes = a.yes && b.yes;
  const no = a.no || b.no;
  return { kind: 'truth', yes, no, on: yes && no ? joinOn(a.on, b.on) : nothing };
}

export const opposite = (a: TruthValue): TruthValue => ({
  kind: 'truth',
  yes: a.no,
  no: a.yes,
  on: a.on,
});
