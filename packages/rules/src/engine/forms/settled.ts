import { message } from '../words/message';
import { type Sayable, text } from '../words/value';
import { askedFirst, isAnsweredOwn, isYesOrNo } from './asking';
import { lackedBy, openUntil } from './asks';
import { cautionsFitting } from './caution';
import { alsoClose, type Decider, decidersOf, isAskedOf } from './deciding';
import { following, ifShort, may, must, type Part, unlessSaid, warning } from './length';
import { isRest } from './lists';
import type { Matter } from './matter';
import { all, besideDo, besideSaid, dangersSaid, isListed } from './parts';
import { findingsTold, levelOf, verdictSaid } from './verdict';

/** What a settled verdict turns on, with what to do about it, and the next as far as there is room. */
function decidedSaid(deciders: readonly Decider[]): readonly Part[] {
  const [main, ...others] = deciders;
  if (!main) return [];
  // What to do is said, if not about the first then about the next that says it.
  const [acting = main] = main.todo ? [main] : others.filter(({ todo }) => todo);
  const [second] = others.filter((each) => each !== acting && each.todo);
  const told = (each: Decider, as: (of: Sayable) => Part, besides?: Sayable): readonly Part[] => [
    ...all(each.wrong, (said) => unlessSaid({ ...as(said), besides })),
    ...all(each.todo ? [each.todo] : [], (said) => unlessSaid(following(as(said), each.wrong[0]))),
  ];
  return [
    ...told(main, must),
    ...(acting === main ? [] : told(acting, must)),
    ...(second ? told(second, (of) => may(of, 0.3), second.todo) : []),
  ];
}

/** Whether what was asked for by its name was found, and is no limit. */
const isFound = ({ topic }: Matter, asking: string | undefined, { names }: Decider): boolean =>
  ((asking !== undefined && topic.askings?.[asking]?.results) || []).some(
    (each) => each.startsWith('finding.') && names.includes(each),
  );

/** A verdict with care: how many things are to be minded, and whether there are more. */
function careSaid(
  { topic }: Matter,
  sentence: Sayable,
  of: { readonly count: number; readonly more?: boolean },
): Sayable {
  const { plain } = topic.outcomes.care;
  if (plain === undefined) return sentence;
  return message('with-care', { sentence, plain: text(plain), more: false, ...of });
}

/** What there is to do, each once. */
const actsOf = (deciders: readonly Decider[]): readonly Sayable[] =>
  deciders.flatMap(({ todo }) => todo ?? []);

/** The verdict with care as it comes out in the end: what is said of it after, before, or not at all. */
export function careHeard(
  matter: Matter,
  asking: string | undefined,
  lines: readonly string[],
  said: (of: Sayable) => string,
): readonly string[] {
  const acts = actsOf(decidersOf(matter, asking));
  const [plain] = verdictSaid(matter);
  if (levelOf(matter) !== 'care' || acts.length === 0 || plain === undefined) return lines;
  const as = (count: number, more = false): string =>
    said(careSaid(matter, plain, { count, more }));
  const place = lines.findIndex((line) => line === as(acts.length) || line === as(0));
  if (place < 0) return lines;
  // It may stand within a longer line.
  const isIn = (line: string, act: string): boolean =>
    line.toLowerCase().includes(act.replace(/[.!]$/, '').toLowerCase());
  const places = acts
    .map((act) => lines.findIndex((line) => isIn(line, said(act))))
    .filter((at) => at >= 0);
  const after = places.filter((at) => at > place).length;
  const isAll = places.length === acts.length;
  // With nothing said to do, there is no “that” and nothing to count.
  const settledSo = places.length === 0 ? said(plain) : as(0);
  const heard = after === 0 ? settledSo : as(after, !isAll);
  return lines.map((line, at) => (at === place ? heard : line));
}

const areSame = (a: Sayable, b: Sayable): boolean => JSON.stringify(a) === JSON.stringify(b);

const isSame = (a: Sayable, { wrong }: Decider): boolean => wrong.some((each) => areSame(each, a));

/** A verdict that is settled: what it turns on and what to do, beside what was asked. */
export function settled(matter: Matter, asking: string | undefined): readonly Part[] {
  const level = levelOf(matter);
  const deciders = decidersOf(matter, asking);
  const [main, ...others] = deciders;
  const acts = actsOf(deciders).length;
  const isActed = level === 'care' && acts > 0;
  const [plain] = verdictSaid(matter);
  const answered = askedFirst(matter, asking).map((each) =>
    isActed && plain !== undefined && areSame(each, plain)
      ? careSaid(matter, each, { count: acts })
      : each,
  );
  const [first, ...lists] = answered;
  // Who may not go on hears that first, whatever else was asked.
  const isAsked = main !== undefined && isAskedOf(matter, asking, main);
  const isOfFinding = main?.names.some((each) => each.startsWith('finding.')) ?? false;
  const isOther =
    isOfFinding && (first === undefined || !main?.wrong.some((each) => areSame(each, first)));
  const isFirst = level === 'stop' && (!isAsked || isOther);
  // What was asked is wrong: what to do about it comes before the verdict.
  const isNext =
    level === 'stop' ||
    (isAsked && first !== undefined && (isSame(first, main) || isFound(matter, asking, main)));
  const decided = decidedSaid(deciders);
  // A question of yes or no hears its answer first.
  const isAnswer = !isFirst && isYesOrNo(matter, asking);
  // A verdict is left out where what to do has no room beside it.
  const verdict = all(verdictSaid(matter), (of) => {
    const said = isActed ? careSaid(matter, of, { count: isNext && !isAnswer ? 0 : acts }) : of;
    if (isAnswer) return must(said);
    return level === 'stop' ? unlessSaid(may(said, 0.01)) : may(said, 0.01);
  });
  const isOwn = isAnsweredOwn(matter, asking);
  const asked = [
    ...all(first ? [first] : [], (of) =>
      // An answer of its own comes before what else is wrong; what was only looked up, after it.
      unlessSaid(
        isFirst ? may(of, isListed(of) ? 2 : isOwn ? (isAsked ? 0.005 : 0.4) : 2.5) : must(of),
      ),
    ),
    ...all(lists, (of) =>
      isRest(of)
        ? following(may(of, isListed(first ?? of) ? 0.86 : 1.41), answered.find(isListed))
        : unlessSaid(may(of, isListed(of) ? 1.4 : 1)),
    ),
  ];
  const [caution, ...cautions] = cautionsFitting(matter);
  const told = new Set(deciders.flatMap(({ names }) => names));
  const beside = findingsTold(matter).filter(({ id }) => !told.has(`finding.${id}`));
  const lacked = lackedBy(matter, asking);
  return [
    ...(isFirst ? [...decided, ...verdict] : []),
    ...all(lacked === undefined ? [] : openUntil(matter, lacked), must),
    ...(isAnswer ? verdict : []),
    ...asked.slice(0, 1),
    ...(isNext && !isFirst ? [...decided, ...(isAnswer ? [] : verdict)] : []),
    ...asked.slice(1),
    ...(level === 'stop' ? dangersSaid(matter, 0, { from: 0.5 }) : dangersSaid(matter, 1)),
    ...(isNext ? [] : [...(isAnswer ? [] : verdict), ...decided]),
    ...others.slice(0, 3).flatMap(({ wrong, todo }) =>
      // What is to be minded is not said without what to do.
      level === 'stop' || !todo
        ? all(wrong, (of) => unlessSaid(may(of, level === 'stop' ? 0.8 : 3)))
        : besideDo(wrong[0], todo, 3),
    ),
    ...all(level === 'care' ? alsoClose(matter) : [], (of) => may(of, 0.86)),
    ...beside.slice(0, 2).flatMap((each) => besideSaid(each)),
    ...(caution ? [warning(may(caution, 0.85))] : []),
    ...cautions.slice(0, 5).map((each) => warning(ifShort(each))),
  ];
}
