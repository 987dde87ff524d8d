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

/** Of so many ways, the simplest first, the answers are looked at before four are chosen. */
const mostTried = 12;

/** Splits by the facts that can be looked up, in their order, as far as they decide. */
function split(
  matter: Matter,
  levelAt: LevelAt,
  facts: FactsGiven,
  looks: readonly string[],
  clauses: NonNullable<ForEverybody['clauses']>,
): readonly Found[] {
  const [fact, ...rest] = looks;
  const declared = fact === undefined ? undefined : matter.topic.facts[fact];
  if (fact === undefined || !declared) return [];
  const own = clauses[fact];
  // Where a topic names what is to be looked for, what it leaves out is no branch.
  const isNamed = ({ value }: Cell) => typeof own !== 'object' || Object.hasOwn(own, value);
  const cells = cellsOf(fact, declared, facts, levelAt).filter(isNamed);
  return cells.flatMap((cell): readonly Found[] => {
    const look = { fact, cell };
    if (isSettled(cell.level)) return [{ looks: [look], level: cell.level }];
    const deeper = split(matter, levelAt, { ...facts, [fact]: cell.value }, rest, clauses);
    return deeper.map((each) => ({ ...each, looks: [look, ...each.looks] }));
  });
}

const order: readonly Level[] = ['ok', 'care', 'if', 'stop', 'unknown'];

const inOrder = <Each extends Found>(found: readonly Each[]): readonly Each[] =>
  found.toSorted(
    (a, b) => order.indexOf(a.level) - order.indexOf(b.level) || a.looks.length - b.looks.length,
  );

/** One of each, by what it is told from, as many as there is room for; the others after them. */
function oneOfEach<Each>(
  all: readonly Each[],
  kept: readonly Each[],
  of: (each: Each) => string,
): readonly Each[] {
  const known = new Set(kept.map(of));
  const fresh = all.filter((each) => {
    if (kept.includes(each) || known.has(of(each))) return false;
    known.add(of(each));
    return true;
  });
  return [...kept, ...fresh];
}

/**
 * What goes ahead first, and what is simplest to look for; one of each level, then one of each thing
 * that comes out of each first look, and only then what says the same of something else.
 */
function chosen(ways: readonly Way[]): readonly Way[] {
  const firstLook = ({ looks }: Way) => looks[0]?.cell.value ?? '';
  const outcome = ({ level, answer }: Way) =>
    answer.findings.find((each) => each.level === level)?.says ?? level;
  // What goes ahead does so after each first look; what is wrong is said once.
  const said = (way: Way) => (way.level === 'ok' ? `ok ${firstLook(way)}` : outcome(way));
  const levels = oneOfEach(ways, [], ({ level }) => level);
  const kept = oneOfEach(ways, levels, said);
  const short = ways.filter((way) => !kept.includes(way) && way.looks.length === 1);
  const few = [...kept, ...short].slice(0, mostBranches);
  return ways.filter((way) => few.includes(way));
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
  const tried = inOrder(split(matter, levelAt, given, looks, everybody.clauses ?? {}));
  const all = tried.slice(0, mostTried).flatMap(({ looks: way, level }): Way[] => {
    const when = Object.fromEntries(way.map(({ fact, cell }) => [fact, cell.value]));
    const facts = { ...matter.asked.facts, ...given, ...when };
    const answer = answerNow(matter.topic, { ...matter.asked, facts });
    const isProved = answer.outcome === matter.topic.outcomes[level].id;
    return isProved ? [{ looks: way, when, given, answer, level }] : [];
  });
  return chosen(all);
}
