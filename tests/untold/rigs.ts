import { topics } from '@tarebook/rules';
import type { FactsGiven, Topic } from '@tarebook/rules/engine';
import { readFiled } from '../cases/filed';
import { casesFolder, markdownBelow, refusedFolder } from '../cases/files';

/** The seed of this run; another one tries other rigs. */
export const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);

/** A small generator of numbers from 0 to 1, the same for the same seed. */
export function randomFrom(start: number): () => number {
  let state = start >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}

export type Filed = { readonly name: string; readonly facts: FactsGiven };

/** The facts of every filed case, by topic: what rigs really look like. */
export function filedByTopic(): ReadonlyMap<string, readonly Filed[]> {
  const found = new Map<string, Filed[]>();
  for (const { name, text } of markdownBelow(casesFolder, refusedFolder)) {
    const doc = readFiled(text);
    const id = doc.topic?.id;
    if (id === undefined || !Object.hasOwn(topics, id) || doc.troubles.length > 0) continue;
    found.set(id, [...(found.get(id) ?? []), { name, facts: doc.facts }]);
  }
  return found;
}

const chance = (random: () => number, share: number): boolean => random() < share;

/** Some of the facts of a case, as if the rest had not been told. */
export function someOf(facts: FactsGiven, count: number, random: () => number): FactsGiven {
  const all = Object.entries(facts);
  const share = count / Math.max(1, all.length);
  return Object.fromEntries(all.filter(() => chance(random, share)));
}

/** One more thing told of a topic, vaguely: unknown, anything it may be, or a row without a place. */
export function toldVaguely(
  topic: Topic,
  facts: FactsGiven,
  random: () => number,
): { readonly fact: string; readonly facts: FactsGiven } | undefined {
  const ids = Object.keys(topic.facts);
  const fact = ids[Math.floor(random() * ids.length)] ?? '';
  const declared = topic.facts[fact];
  if (!declared) return undefined;
  const told = facts[fact];
  if (declared.kind === 'rows') {
    const cells = Object.entries(declared.columns).flatMap(([id, { required, unit }]) =>
      required ? [[id, { lo: 0, hi: 5, unit: unit === '' ? '' : unit }] as const] : [],
    );
    const before = Array.isArray(told) ? told : [];
    if (typeof told === 'string') return undefined;
    return { fact, facts: { ...facts, [fact]: [...before, Object.fromEntries(cells)] } };
  }
  if (told !== undefined) return undefined;
  if (declared.kind === 'quantity' && chance(random, 0.5)) {
    const { least, most, unit } = declared;
    return { fact, facts: { ...facts, [fact]: { lo: least, hi: most, unit } } };
  }
  return { fact, facts: { ...facts, [fact]: 'unknown' } };
}

/** One thing more told, to the figure: as the case has it, or anything that it may be. */
export function toldExactly(
  topic: Topic,
  facts: FactsGiven,
  whole: FactsGiven,
  random: () => number,
): { readonly fact: string; readonly facts: FactsGiven } | undefined {
  const silent = Object.keys(topic.facts).filter((id) => facts[id] === undefined);
  const own = silent.filter((id) => whole[id] !== undefined);
  const from = own.length > 0 && chance(random, 0.4) ? own : silent;
  const fact = from[Math.floor(random() * from.length)] ?? '';
  const declared = topic.facts[fact];
  if (!declared || declared.kind === 'rows') return undefined;
  const as = (value: NonNullable<FactsGiven[string]>) => ({
    fact,
    facts: { ...facts, [fact]: value },
  });
  if (from === own) return as(whole[fact] ?? 'unknown');
  if (declared.kind !== 'quantity') {
    const options = declared.kind === 'choice' ? declared.options : ['yes', 'no'];
    return as(options[Math.floor(random() * options.length)] ?? 'unknown');
  }
  const { least, most, unit, counted = false } = declared;
  const at = least + (most - least) * random() ** 3;
  const value = counted ? Math.round(at) : Number(at.toPrecision(3));
  return as({ lo: value, hi: value, unit });
}
