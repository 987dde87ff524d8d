import { type Answer, answerTraced, towFit } from '@tarebook/rules';
import { sameEnds } from './ends';
import { givenOf } from './given';
import type { PlainAnswer, PlainCase } from './plain-case';

export const asOf = '2026-11-01';

export const judged = (plain: PlainCase): Answer =>
  answerTraced(towFit, { facts: givenOf(plain), asOf });

/** Everything in which two answers on an exact case differ, in words. */
export function differences(found: Answer, wanted: PlainAnswer): string[] {
  const told: string[] = [];
  const compare = (what: string, same: boolean, a: unknown, b: unknown) => {
    if (!same) told.push(`${what}: ${JSON.stringify(a)} against ${JSON.stringify(b)}`);
  };
  compare('outcome', found.outcome === wanted.outcome, found.outcome, wanted.outcome);
  compare('binding', found.binding === wanted.binding, found.binding, wanted.binding);

  const limits = new Map(found.limits.map((each) => [each.id, each]));
  compare('how many limits', limits.size === 23, limits.size, 23);
  for (const [id, { state, used, limit }] of Object.entries(wanted.limits)) {
    const mine = limits.get(id);
    compare(`limit ${id}`, mine?.state === state, mine?.state, state);
    if (!mine || state === 'not-asked') continue;
    compare(`${id}, used`, sameEnds(mine.used, used), mine.used, used);
    compare(`${id}, limit`, sameEnds(mine.limit, limit), mine.limit, limit);
  }

  const findings = new Map(found.findings.map(({ id, level }) => [id, level]));
  const ids = Object.keys(wanted.findings);
  compare('how many findings', findings.size === ids.length, [...findings.keys()], ids);
  for (const [id, level] of Object.entries(wanted.findings)) {
    compare(`finding ${id}`, findings.get(id) === level, findings.get(id), level);
  }

  for (const [id, value] of Object.entries(wanted.values)) {
    const mine = found.values[id];
    compare(id, mine !== undefined && sameEnds(mine, value), mine, value);
  }
  const [mine, theirs] = [found.apart.largestTrailer ?? null, wanted.largestTrailer];
  const same = mine && theirs ? sameEnds(mine, theirs) : mine === theirs;
  compare('largest trailer', same, mine, theirs);
  return told;
}
