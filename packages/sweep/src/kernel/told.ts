import type { Fact, Status, Topic } from '@tarebook/rules/engine';
import type { Graph, Ref } from './graph';
import { type Keys, keyAt, noKeys, pickKeys } from './keys';
import type { NumberSource, Source } from './source';
import { type AmongSteps, exactly, NotHeld, type NumberSteps, type ValueSteps } from './values';

/** One row of a list, whose columns mean its cells. */
export type Row = { readonly list: string; readonly at: number };

/** What a case, a row and a column tell, as values for formulas. */
export function whatIsTold(g: Graph, topic: Topic, source: Source) {
  const keys = new Map<string, number>();
  const never = g.truth(false);
  const facts: Topic['facts'] = topic.facts;
  const factOf = (name: string): Fact | undefined =>
    Object.hasOwn(facts, name) ? facts[name] : undefined;
  const listOf = (name: string): string | undefined => {
    const list = name.slice(0, Math.max(0, name.lastIndexOf('.')));
    return factOf(list)?.kind === 'rows' ? list : undefined;
  };
  const keyOf = (name: string, isEndless: Ref): Keys => {
    const at = keys.get(name) ?? keys.size;
    keys.set(name, at);
    return keyAt(g, at, isEndless);
  };
  const isWithoutEnd = (lo: Ref, hi: Ref): Ref =>
    g.or(g.same(lo, g.constant(-Infinity)), g.same(hi, g.constant(Infinity)));

  const ranged = (name: string, { lo, hi, isOpen }: NumberSource): NumberSteps => {
    const is = g.same(lo, hi);
    const key = pickKeys(g, is, noKeys(g), keyOf(name, isWithoutEnd(lo, hi)));
    return {
      ...{ kind: 'number', lo, hi, rises: key, falls: noKeys(g) },
      ...{ open: g.and(g.truth(isOpen), g.not(is)), loose: never },
    };
  };

  const among = (name: string, options: readonly string[]): AmongSteps => {
    if (options.length > 31) throw new NotHeld(`“${name}” has more than 31 options.`);
    const may = source.options(name).reduce((bits, each) => bits | (1 << options.indexOf(each)), 0);
    const isOne = (may & (may - 1)) === 0;
    const on = isOne ? noKeys(g) : keyOf(name, never);
    return { kind: 'among', options, may: g.bits(may), on };
  };

  const input = (name: string): ValueSteps => {
    const fact = factOf(name);
    switch (fact?.kind) {
      case 'quantity':
        return ranged(name, source.number(name));
      case 'choice':
        return among(name, fact.options);
      case 'yes-no':
        return among(name, ['yes', 'no']);
      case 'rows':
        throw new NotHeld(`“${name}” is a list.`);
      default:
        break;
    }
    if (topic.decisions?.[name]) throw new NotHeld(`“${name}” is a decision.`);
    // A parameter, or a number of the day.
    return exactly(g, g.constant(source.parameter(name)));
  };

  const rowsOf = (list: string): readonly Row[] =>
    Array.from({ length: source.rows(list) }, (_, at) => ({ list, at }));
  const cell = (name: string, row: Row): NumberSteps =>
    ranged(`${name}#${row.at}`, source.cell(name, row.at));
  const isGiven = (status: Status): boolean => status !== 'silent';

  const given = (name: string): Ref => {
    if (factOf(name)) return g.truth(isGiven(source.status(name)));
    const list = listOf(name);
    if (list === undefined) return g.truth(true);
    return g.truth(rowsOf(list).some((row) => isGiven(source.cell(name, row.at).status)));
  };

  /** As the engine asks it of a name that is not known. */
  const isOpenName = (name: string, list: string | undefined): boolean => {
    if (list !== undefined) return rowsOf(list).some((row) => source.cell(name, row.at).isOpen);
    const fact = factOf(name);
    if (!fact) return true;
    return fact.kind === 'quantity' && source.number(name).isOpen;
  };
  /** A number that is a point can still be held: it is not known, and its slope is anything. */
  const heldBy = (name: string, value: ValueSteps): Keys =>
    value.kind === 'number' ? keyOf(name, isWithoutEnd(value.lo, value.hi)) : noKeys(g);

  return { factOf, listOf, rowsOf, isGiven, given, isOpenName, heldBy, input, cell };
}
