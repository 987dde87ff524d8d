import type { Fact, Topic } from '@tarebook/rules/engine';
import type { Graph, Ref } from './graph';
import { type Keys, keyAt, noKeys, pickKeys } from './keys';
import { type NumberSource, optionsOf, type Row, type Source } from './source';
import { type AmongSteps, exactly, NotHeld, type NumberSteps, type ValueSteps } from './values';

/** What a case, a row and a column tell, as values for formulas. */
export function whatIsTold(g: Graph, topic: Topic, source: Source) {
  const never = g.truth(false);
  const facts: Topic['facts'] = topic.facts;
  const places = new Map(Object.keys(facts).map((id, at) => [id, at]));
  const factOf = (name: string): Fact | undefined =>
    Object.hasOwn(facts, name) ? facts[name] : undefined;
  const listOf = (name: string): string | undefined => {
    const list = name.slice(0, Math.max(0, name.lastIndexOf('.')));
    return factOf(list)?.kind === 'rows' ? list : undefined;
  };
  /** The same bit for one input in every graph of a topic; rows come after all facts. */
  const keyOf = (name: string, isEndless: Ref, row = 0): Keys => {
    const place = places.get(name) ?? places.get(listOf(name) ?? '') ?? 0;
    return keyAt(g, place + row * places.size, isEndless);
  };
  const isWithoutEnd = (lo: Ref, hi: Ref): Ref =>
    g.or(g.same(lo, g.constant(-Infinity)), g.same(hi, g.constant(Infinity)));

  const ranged = (name: string, { lo, hi, isOpen }: NumberSource, row = 0): NumberSteps => {
    const is = g.same(lo, hi);
    const key = pickKeys(g, is, noKeys(g), keyOf(name, isWithoutEnd(lo, hi), row));
    return {
      ...{ kind: 'number', lo, hi, rises: key, falls: noKeys(g) },
      ...{ open: g.and(isOpen, g.not(is)), loose: never },
    };
  };

  const among = (name: string, fact: Fact): AmongSteps => {
    const options = optionsOf(fact);
    if (options.length > 31) throw new NotHeld(`“${name}” has more than 31 options.`);
    const { may, isOne } = source.among(name);
    const on = pickKeys(g, isOne, noKeys(g), keyOf(name, never));
    return { kind: 'among', options, may, on };
  };

  const input = (name: string): ValueSteps => {
    const fact = factOf(name);
    if (fact?.kind === 'quantity') return ranged(name, source.number(name));
    if (fact?.kind === 'rows') throw new NotHeld(`“${name}” is a list.`);
    if (fact) return among(name, fact);
    if (topic.decisions?.[name]) throw new NotHeld(`“${name}” is a decision.`);
    // A parameter, or a number of the day.
    return exactly(g, source.parameter(name));
  };

  const cell = (name: string, row: Row): NumberSteps =>
    ranged(name, source.cell(name, row), row.at + 1);

  const given = (name: string): Ref => {
    if (factOf(name)) return source.telling(name).isGiven;
    return listOf(name) === undefined ? g.truth(true) : source.column(name).isGiven;
  };

  /** As the engine asks it of a name that is not known. */
  const isOpenName = (name: string): Ref => {
    if (listOf(name) !== undefined) return source.column(name).isOpen;
    const fact = factOf(name);
    if (!fact) return g.truth(true);
    return fact.kind === 'quantity' ? source.number(name).isOpen : never;
  };
  /** A number that is a point can still be held: it is not known, and its slope is anything. */
  const heldBy = (name: string, value: ValueSteps): Keys =>
    value.kind === 'number' ? keyOf(name, isWithoutEnd(value.lo, value.hi)) : noKeys(g);

  return { factOf, listOf, given, isOpenName, heldBy, input, cell };
}
