import { answerNow } from '../../answer/answer';
import type { Answer } from '../../answer/shapes';
import type { FactsGiven } from '../../check/given';
import type { ForEverybody, Level } from '../../define/shapes';
import { isTold, type Matter } from '../matter';
import { type LevelAt, levelsOf } from './bench';
import { type Cell, cellsOf } from './cells';
import { presumed } from './presumed';

/** One thing to look for, and what it is then. */
export type Look = { readonly fact: string; readonly cell: Cell };

/** What a listener is told to look for, and the answer that comes out. */
export type Way = {
  readonly looks: readonly Look[];
  readonly when: FactsGiven;
  readonly given: FactsGiven;
  readonly answer: Answer;
  readonly level: Level;
};

/** More than these nobody keeps in mind while listening. */
export const mostBranches = 4;

const isSettled = (level: Level): boolean => level !== 'unknown';

type Found = { readonly looks: readonly Look[]; readonly level: Level };

/** Splits by the facts that can be looked up, in their order, as far as they decide. */
function split(
  matter: Matter,
  levelAt: LevelAt,
  facts: FactsGiven,
  looks: readonly string[],
): readonly Found[] {
  const [fact, ...rest] = looks;
  const declared = fact === undefined ? undefined : matter.topic.facts[fact];
  if (fact === undefined || !declared) return [];
  const cells = cellsOf(fact, declared, facts, levelAt);
  return cells.flatMap((cell): readonly Found[] => {
    const look = { fact, cell };
    if (isSettled(cell.level)) return [{ looks: [look], level: cell.level }];
    const deeper = split(matter, levelAt, { ...facts, [fact]: cell.value }, rest);
    return deeper.map((each) => ({ ...each, looks: [look, ...each.looks] }));
  });
}

const order: readonly Level[] = ['ok', 'care', 'if', 'stop', 'unknown'];

/** What goes ahead first, and what is simplest to look for; one of each level before a second. */
function chosen(found: readonly Found[]): readonly Found[] {
  const sorted = found.toSorted(
    (a, b) => order.indexOf(a.level) - order.indexOf(b.level) || a.looks.length - b.looks.length,
  );
  const firsts = sorted.filter((each, i) => sorted.findIndex((o) => o.level === each.level) === i);
  const more = sorted.filter((each) => !firsts.includes(each));
  const kept = [...firsts, ...more].slice(0, mostBranches);
  return sorted.filter((each) => kept.includes(each));
}

/**
 * The branches of an answer to everybody: by what decides and was not told, proved by judging the
 * case with what is looked for and what is presumed.
 */
export function waysOf(matter: Matter, everybody: ForEverybody): readonly Way[] {
  const given = presumed(matter, everybody.given ?? {}, everybody.look);
  if (!given) return [];
  const levelAt = levelsOf(matter);
  const looks = everybody.look.filter((fact) => !isTold(matter, fact));
  return chosen(split(matter, levelAt, given, looks)).flatMap(({ looks: way, level }): Way[] => {
    const when = Object.fromEntries(way.map(({ fact, cell }) => [fact, cell.value]));
    const facts = { ...matter.asked.facts, ...given, ...when };
    const answer = answerNow(matter.topic, { ...matter.asked, facts });
    const isProved = answer.outcome === matter.topic.outcomes[level].id;
    return isProved ? [{ looks: way, when, given, answer, level }] : [];
  });
}
