import type { Answer } from '../../answer/shapes';
import { answerTraced } from '../../answer/traced';
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

/** What two ways differ in first: two options of one choice, or two ranges of one figure. */
function apartIn(a: Found, b: Found): readonly [Look, Look] | undefined {
  const at = a.looks.findIndex(({ cell }, i) => cell.value !== b.looks[i]?.cell.value);
  const [ours, theirs] = [a.looks[at], b.looks[at]];
  return ours && theirs ? [ours, theirs] : undefined;
}

/**
 * Whether one of two ways is the other's neighbor: another option of what is looked for, or the range
 * of a figure that comes next. Whoever hears of one of them alone may take it for both.
 */
function borders(all: readonly Found[], a: Found, b: Found): boolean {
  const apart = apartIn(a, b);
  if (!apart) return false;
  const [low, high] = apart.toSorted((x, y) => x.cell.lo - y.cell.lo);
  if (!low || !high || Number.isNaN(low.cell.lo)) return true;
  return !all.some((each) => {
    const between = apartIn(each, a)?.[0];
    if (between?.fact !== low.fact) return false;
    return between.cell.lo > low.cell.lo && between.cell.hi < high.cell.hi;
  });
}

/**
 * The same with every stop that borders on a way that is said: where there is no room for it, a stop
 * far from all others gives way, then what says again what another says, then its own neighbor.
 */
function withStops(
  found: readonly Found[],
  few: readonly Way[],
  proved: (found: Found) => Way | undefined,
): readonly Way[] {
  const stops = found.filter(({ level }) => level === 'stop');
  let said = few;
  const isSaid = ({ looks }: Found) => said.some((way) => way.looks === looks);
  const isNext = (stop: Found) => (way: Way) => way.level !== 'stop' && borders(found, stop, way);
  for (;;) {
    const left = stops.find((stop) => !isSaid(stop) && said.some(isNext(stop)));
    if (!left) return said;
    if (said.length < mostBranches) {
      const way = proved(left);
      said = way ? [...said, way] : said.filter((each) => !isNext(left)(each));
      continue;
    }
    const far = (way: Way) => way.level === 'stop' && !said.some(isNext(way));
    const again = (way: Way) =>
      way.level !== 'stop' && said.some((each) => each !== way && each.level === way.level);
    const spare = said.findLast(far) ?? said.findLast(again) ?? said.findLast(isNext(left));
    said = said.filter((way) => way !== spare);
  }
}

/**
 * The same with all else that one may find in the same place and that stops too: they are said in one
 * sentence, and whoever hears some of them named takes what is not named for good.
 */
function withAlike(
  found: readonly Found[],
  said: readonly Way[],
  proved: (found: Found) => Way | undefined,
): readonly Way[] {
  const isOption = ({ looks: [look, ...more] }: Found) =>
    more.length === 0 && look !== undefined && Number.isNaN(look.cell.lo);
  const named = new Set(
    said.filter((way) => way.level === 'stop' && isOption(way)).map(({ looks }) => looks[0]?.fact),
  );
  const left = found.filter(
    (each) =>
      each.level === 'stop' &&
      isOption(each) &&
      named.has(each.looks[0]?.fact) &&
      !said.some(({ looks }) => looks === each.looks),
  );
  return [...said, ...left.flatMap((each) => proved(each) ?? [])];
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
  const found = inOrder(split(matter, levelAt, given, looks, everybody.clauses ?? {}));
  const proved = ({ looks: way, level }: Found): Way | undefined => {
    const when = Object.fromEntries(way.map(({ fact, cell }) => [fact, cell.value]));
    const facts = { ...matter.asked.facts, ...given, ...when };
    const answer = answerTraced(matter.topic, { ...matter.asked, facts });
    const isProved = answer.outcome === matter.topic.outcomes[level].id;
    return isProved ? { looks: way, when, given, answer, level } : undefined;
  };
  const all = found.slice(0, mostTried).flatMap((each) => proved(each) ?? []);
  return inOrder(withAlike(found, withStops(found, chosen(all), proved), proved));
}
