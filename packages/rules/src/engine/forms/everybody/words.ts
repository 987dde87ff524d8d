import { openingOf } from '../../answer/sentence';
import type { LimitAnswer } from '../../answer/shapes';
import { textOf } from '../../answer/shown';
import type { ForEverybody } from '../../define/shapes';
import { message } from '../../words/message';
import { nounOr, type Sayable, text } from '../../words/value';
import { decidingLimit } from '../limit';
import type { Matter } from '../matter';
import type { Look, Way } from './branches';

/** What a quantity is looked at for: “at least 1,180 lb”. */
function boundSaid({ topic }: Matter, { fact, cell }: Look): Sayable {
  const declared = topic.facts[fact];
  const unit = declared?.kind === 'quantity' ? declared.unit : '';
  const { lo, hi } = cell;
  const style = 'exact';
  if (hi === Infinity) return message('at-least', { of: { lo, hi: lo, unit, style } });
  if (lo === -Infinity) return message('at-most', { of: { lo: hi, hi, unit, style } });
  return { lo, hi, unit, style };
}

/** One condition, as a clause after “if”. */
function clauseSaid(matter: Matter, { clauses = {} }: ForEverybody, look: Look): Sayable {
  const { fact, cell } = look;
  const declared = matter.topic.facts[fact];
  const own = clauses[fact];
  const isQuantity = declared?.kind === 'quantity';
  const value = isQuantity ? boundSaid(matter, look) : { option: cell.value };
  if (typeof own === 'string') return text(own, { value });
  const clause = own?.[cell.value];
  if (clause !== undefined) return text(clause);
  return message('it-is', { noun: nounOr(declared, fact), value });
}

/** Whether the last thing looked for is one of several that are named, and no figure. */
const isPicked = ({ topic }: Matter, looks: readonly Look[]): boolean =>
  topic.facts[looks.at(-1)?.fact ?? '']?.kind !== 'quantity';

/**
 * Whether a limit stands so over all of a branch: one that is looked for in a range may be close to
 * its end at one edge of the range, with ample room at the other.
 */
const isSure = ({ state, used, careAt }: LimitAnswer): boolean =>
  state === 'stop' || (careAt !== undefined && used.lo > careAt.hi);

/** Why it comes out so, in a few words: what is over, or what is wrong. */
function reasonSaid(matter: Matter, { answer, level, looks }: Way): readonly Sayable[] {
  if (level === 'ok' || level === 'if') return [];
  const { topic } = matter;
  const limit = decidingLimit({ ...matter, answer });
  const declared = limit && topic.limits[limit.id];
  const found = answer.findings.filter((each) => each.level === level);
  const sure = found.find(({ code }) => code.startsWith(`${level}.`));
  if (limit && declared && limit.state === level && (isSure(limit) || !sure)) {
    const { short, plural = false, exceeded = false, supply = false } = declared;
    const code = level === 'stop' ? 'is-over' : isSure(limit) ? 'is-close' : 'may-be-close';
    return [message(code, { short: text(short), several: plural, exceeded, supply })];
  }
  const finding = sure ?? found[0];
  if (!finding) return [];
  const { wrong, do: todo } = finding.messages;
  const { first = false, decision } = topic.findings[finding.id] ?? {};
  // Whoever was told what to look for knows what is wrong by then, and hears what to do about it;
  // a danger and what a decision says begin with that themselves.
  const isKnown = isPicked(matter, looks) && !first && decision === undefined;
  return [isKnown && todo ? todo : wrong];
}

/** What comes out of a branch: the verdict and why. */
export const outcomeSaid = (
  matter: Matter,
  way: Way,
  reason: readonly Sayable[] = reasonSaid(matter, way),
): Sayable =>
  message('sentences', {
    of: [openingOf(matter.topic, way.level, way.answer.findings), ...reason],
  });

/** From so many options of a scale on, its ends are said instead of each of them. */
const aRun = 3;

/** Places on a scale, as the first and last of each unbroken run. */
function runsIn(places: readonly number[]): readonly (readonly [number, number])[] {
  const runs: [number, number][] = [];
  for (const place of places.toSorted((a, b) => a - b)) {
    const run = runs.at(-1);
    if (run && run[1] === place - 1) run[1] = place;
    else runs.push([place, place]);
  }
  return runs;
}

/** What leads to the same: each on its own, or where it starts and ends on its scale. */
function alternatives(
  matter: Matter,
  everybody: ForEverybody,
  ways: readonly Way[],
): readonly Sayable[] {
  const [look] = ways[0]?.looks ?? [];
  const fact = look && matter.topic.facts[look.fact];
  const isOne = ways.every(({ looks }) => looks.length === 1 && looks[0]?.fact === look?.fact);
  if (look && fact?.kind === 'choice' && fact.scale === true && isOne) {
    const at = ways.map(({ looks: [each] }) => fact.options.indexOf(each?.cell.value ?? ''));
    const noun = nounOr(fact, look.fact);
    const said = (place: number): Sayable => ({ option: fact.options[place] ?? '' });
    return runsIn(at).flatMap(([first, last]) => {
      if (last - first + 1 >= aRun) {
        return [message('it-is-from', { noun, from: said(first), to: said(last) })];
      }
      const each = ways.filter(
        (_, place) => first <= (at[place] ?? -1) && (at[place] ?? -1) <= last,
      );
      return each.map(({ looks }) =>
        message('all', { of: looks.map((of) => clauseSaid(matter, everybody, of)) }),
      );
    });
  }
  return ways.map(({ looks }) =>
    message('all', { of: looks.map((each) => clauseSaid(matter, everybody, each)) }),
  );
}

/** Branches that say the same of one thing each are said together: “If it is a or b, …”. */
export function branchesSaid(
  matter: Matter,
  everybody: ForEverybody,
  ways: readonly Way[],
): readonly Sayable[] {
  const groups = new Map<string, { ways: Way[]; says: Sayable }>();
  const reasons = new Set<string>();
  for (const way of ways) {
    const says = outcomeSaid(matter, way);
    const key = JSON.stringify(way.looks.length === 1 ? says : [says, way.when]);
    const reason = reasonSaid(matter, way);
    const isNew = reason.every((each) => !reasons.has(JSON.stringify(each)));
    for (const each of reason) reasons.add(JSON.stringify(each));
    // Why is said once; whoever hears a second branch of the kind has it in the ear.
    const group = groups.get(key) ?? {
      ways: [],
      says: isNew ? says : outcomeSaid(matter, way, []),
    };
    group.ways.push(way);
    groups.set(key, group);
  }
  return [...groups.values()].map((group) =>
    message('if-then', { ifs: alternatives(matter, everybody, group.ways), says: group.says }),
  );
}

/** A text of an answer to everybody, with the values of a case in its holes. */
export const saidOf = ({ compiled, run }: Matter, words: string): Sayable =>
  textOf(compiled, run, words);
