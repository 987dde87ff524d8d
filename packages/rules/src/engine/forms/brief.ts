import type { FindingAnswer } from '../answer/shapes';
import { message } from '../words/message';
import { sayer } from '../words/say';
import type { Medium, Sayable } from '../words/value';
import { text } from '../words/value';
import { askedFigure, askedFirst, isRest } from './asking';
import { askedNext, isOpenFor, nextFact } from './asks';
import { cautionsFitting } from './caution';
import { fittedWith, following, ifShort, may, must, type Part, warning } from './length';
import { decidingLimit, limitSaid } from './limit';
import { isAnythingTold, type Matter } from './matter';
import { defaultSaid, fromToldSaid, reasonSaid, ruleSaid } from './rule';
import {
  dangersTold,
  findingsTold,
  levelOf,
  partsOf,
  tippingAt,
  urgentSaid,
  verdictSaid,
} from './verdict';
import type { Written } from './written';

/** The limit that decides; where it has room and the verdict turns on something else, it is no news. */
function limitOf(matter: Matter): readonly Sayable[] {
  const limit = decidingLimit(matter);
  if (!limit) return [];
  const isNews = limit.state !== 'ok' || levelOf(matter) === 'ok';
  return isNews ? limitSaid(matter, limit.id) : [];
}

/** How the deciding limit stands; nothing where that is not known. */
function decidingSaid(matter: Matter): readonly Sayable[] {
  const limit = decidingLimit(matter);
  return limit ? limitSaid(matter, limit.id) : [];
}

/** So little was told that no limit can be said to be near or far: the rule is the answer. */
const isRuleWanted = (matter: Matter): boolean =>
  levelOf(matter) === 'unknown' && (!isAnythingTold(matter) || decidingSaid(matter).length === 0);

/** Something measured is over, and that is the answer. */
const isOver = (matter: Matter): boolean => decidingLimit(matter)?.state === 'stop';

/** A further list waits until it has been said what to do. */
const isListed = (each: Sayable): boolean => 'code' in each && each.code === 'list-short';

const all = (of: readonly Sayable[], as: (each: Sayable) => Part): readonly Part[] => of.map(as);

/**
 * Dangers, each with what to do. They come right after the answer, and before rules and figures; so
 * many of them must be said, and the others as far as there is room.
 */
export const dangersSaid = (matter: Matter, mostMust: number): readonly Part[] =>
  dangersTold(matter).flatMap((each, place) => {
    const [wrong, todo] = partsOf(each);
    // What to do about one comes before the next.
    const rank = 0.1 + place / 100;
    const isMust = place < mostMust;
    if (isMust) return [...all(wrong ? [wrong] : [], must), ...all(todo ? [todo] : [], must)];
    // Where there is no room for both, what to do says the danger too.
    return [
      ...(wrong ? [{ ...may(wrong, rank), besides: todo }] : []),
      ...(todo ? [may(todo, rank + 0.005)] : []),
    ];
  });

/**
 * What was asked, the verdict, the limit, what is wrong and what to do, and the one caution that
 * fits; more only where that is too little to be an answer.
 */
function briefly(matter: Matter, asking: string | undefined): readonly Part[] {
  const [caution, ...others] = cautionsFitting(matter);
  const urgent = urgentSaid(matter);
  const level = levelOf(matter);
  const answered = askedFirst(matter, asking);
  const isUrgent = urgent.length > 0;
  const wanted = isUrgent || level !== 'unknown' ? undefined : nextFact(matter, asking);
  // A danger that comes first and says itself what to look at is not asked for once more.
  const [gravest] = answered.length === 0 ? dangersTold(matter) : [];
  const isSaidAlready = gravest?.messages.do !== undefined && isOpenFor(matter, gravest.id, wanted);
  const next = isSaidAlready ? [] : askedNext(matter, wanted);
  // What is open only for want of what is asked next is not told beside it.
  const isBeside = ({ id, level: at, code }: FindingAnswer): boolean =>
    next.length === 0 ||
    (code !== 'perhaps' && !(at === 'unknown' && isOpenFor(matter, id, wanted)));
  // A verdict that hangs on provisos has said them.
  const isProviso = (each: FindingAnswer): boolean => level === 'if' && each.level === 'if';
  // Whoever has to get out first hears nothing of what is merely open.
  const isOpenOnlyNow = (each: FindingAnswer): boolean => isUrgent && each.level !== 'stop';
  const findings = findingsTold(matter);
  const [first, ...more] = findings.filter(
    (each) => isBeside(each) && !isProviso(each) && !isOpenOnlyNow(each),
  );
  // How to be sure of the first of them is still to be said.
  const sure = findings.find(isProviso)?.messages.do;
  const dangers = isUrgent ? [] : dangersSaid(matter, 1);
  const isOpen = !isUrgent && isRuleWanted(matter);
  const asked = isOpen && answered.length === 0 ? ruleSaid(matter, asking) : answered;
  // What was told is heard in the answer, also where it is too little for one.
  const told = fromToldSaid(matter, asking);
  const fromTold = isOpen && answered.length === 0 ? told.said : [];
  // Whoever told nothing and hears a list hears by what rule it is chosen.
  const isListOnly = isOpen && answered.length > 0 && !isAnythingTold(matter);
  const isFirst = answered.length === 0;
  // What is only a proviso waits where the answer itself is open; a danger does not.
  const isOpenOnly = first?.code === 'decision-open' || first?.code === 'perhaps';
  const isGrave = first?.level === 'stop' || (first?.level === 'unknown' && !isOpenOnly);
  const [wrong, todo] = first ? partsOf(first) : [];
  // What is to be found out next is said last, so that it is remembered; what else is open waits.
  const isLate = next.length > 0 && first?.level !== 'stop' && !(isGrave && todo);
  // The figure at which it tips is worth more than a rule.
  const tipping = isUrgent || dangers.length > 0 ? [] : tippingAt(matter, wanted);
  const hinges = (each: Sayable): Part =>
    tipping.length > 0 ? may(each, 0.02) : wanted === undefined ? must(each) : ifShort(each);
  return [
    ...all(urgent, must),
    // A rule is no answer of this rig’s own: what is dangerous on it comes first.
    ...(isFirst ? dangers : []),
    ...all(fromTold, (each) =>
      tipping.length > 0 && !told.isWorked ? may(each, 0.3) : must(each),
    ),
    ...all(isUrgent ? [] : asked.slice(0, 1), (each) =>
      isFirst && (dangers.length > 0 || tipping.length > 0 || fromTold.length > 0)
        ? may(each, 0.2)
        : must(each),
    ),
    ...(isFirst ? [] : dangers),
    ...all(isListOnly ? ruleSaid(matter, asking) : [], (each) => may(each, 0.3)),
    ...all(isUrgent ? [] : asked.slice(1), (each) =>
      isRest(each)
        ? following(may(each, 0.02), asked[0])
        : may(each, isListOnly ? 2 : isListed(each) ? 1.4 : 1),
    ),
    ...all(isOpen ? reasonSaid(matter, asking) : [], (each) =>
      following(may(each, 1.5), answered.length === 0 ? asked[0] : undefined),
    ),
    ...all(isUrgent ? [] : verdictSaid(matter), hinges),
    ...all(isUrgent ? [] : limitOf(matter), (each) =>
      isOver(matter) ? may(each, first?.level === 'stop' && todo ? 0.95 : 0.5) : may(each, 2),
    ),
    ...(wrong ? [isLate ? ifShort(wrong) : may(wrong, 0.8)] : []),
    ...(sure && !isUrgent ? [may(sure, 0.82)] : []),
    // What to do comes before what else there is to know.
    ...(todo ? [following(may(todo, 0.9), wrong)] : []),
    ...more
      .slice(0, 2)
      .flatMap((each) =>
        all(partsOf(each).slice(0, 1), (said) =>
          next.length > 0 && each.level === 'unknown' ? ifShort(said) : may(said, 4),
        ),
      ),
    ...(caution ? [warning(may(caution, 0.85))] : []),
    ...(first?.messages.because ? [ifShort(first.messages.because)] : []),
    ...others.slice(0, 5).map((each) => warning(ifShort(each))),
    ...all(isOpen ? defaultSaid(matter, asking) : [], (each) =>
      may(each, next.length > 0 ? 0.9 : 0.3),
    ),
    // After a danger with what to do about it only what there is room for, before further dangers.
    ...all(next, (each) => (dangers.length > 0 ? may(each, 0.05) : must(each))),
  ];
}

/** Ten to twenty-five seconds on the phone. */
const spokenWords = { least: 30, most: 72 } as const;
/** A public channel. */
const postWords = { least: 42, most: 80 } as const;

function inOne(
  matter: Matter,
  asking: string | undefined,
  medium: Medium,
  words: { readonly least: number; readonly most: number },
): Written {
  const say = sayer({ ...matter.voice, medium });
  const { lines, cautions } = fittedWith(say, briefly(matter, asking), words);
  return { text: lines.join(' '), cautions };
}

export const spoken = (matter: Matter, asking: string | undefined): Written =>
  inOne(matter, asking, 'spoken', spokenWords);

export const post = (matter: Matter, asking: string | undefined): Written =>
  inOne(matter, asking, 'written', postWords);

/** Whether two say the same, whatever the language. */
const isSame = (a: Sayable, b: Sayable | undefined): boolean =>
  JSON.stringify(a) === JSON.stringify(b);

/** The counter: the word, one figure, one sentence; the word is not said twice. */
export function ticket(matter: Matter, asking: string | undefined): string {
  const say = sayer({ ...matter.voice });
  const { topic, answer } = matter;
  const [limit] = limitOf(matter);
  const figure = askedFigure(matter, asking);
  const first = findingsTold(matter)[0]?.messages.wrong;
  const [urgent] = urgentSaid(matter);
  const level = levelOf(matter);
  const verdict = verdictSaid(matter);
  const isWord = level !== 'if' && level !== 'unknown';
  const asked = askedFirst(matter, asking).filter((each) => !(isWord && isSame(each, verdict[0])));
  const isOpen = isRuleWanted(matter);
  const rule = isOpen ? ruleSaid(matter, asking) : [];
  const candidates = [urgent, ...asked, ...rule, limit, first, ...verdict];
  const sentence = candidates.find((each) => each !== undefined);
  return say(
    message('ticket', {
      outcome: text(topic.outcomes[levelOf(matter)].words),
      figure: urgent ? null : (figure ?? null),
      sentence: sentence ?? text(answer.words),
    }),
  );
}
