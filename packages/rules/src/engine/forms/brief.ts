import { message } from '../words/message';
import { sayer } from '../words/say';
import type { Medium, Sayable } from '../words/value';
import { text } from '../words/value';
import { askedFigure, askedFirst } from './asking';
import { nextAsked } from './asks';
import { cautionsFitting } from './caution';
import { fittedWith, following, ifShort, may, must, type Part, warning } from './length';
import { decidingLimit, limitSaid } from './limit';
import { isAnythingTold, type Matter } from './matter';
import { defaultSaid, reasonSaid, ruleSaid } from './rule';
import { dangersTold, findingsTold, levelOf, partsOf, urgentSaid, verdictSaid } from './verdict';
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
    return [
      ...(wrong ? [place < mostMust ? must(wrong) : may(wrong, rank)] : []),
      ...(todo ? [following(may(todo, rank + 0.005), wrong)] : []),
    ];
  });

/**
 * What was asked, the verdict, the limit, what is wrong and what to do, and the one caution that
 * fits; more only where that is too little to be an answer.
 */
function briefly(matter: Matter, asking: string | undefined): readonly Part[] {
  const [caution, ...others] = cautionsFitting(matter);
  const [first, ...more] = findingsTold(matter);
  const urgent = urgentSaid(matter);
  const level = levelOf(matter);
  const answered = askedFirst(matter, asking);
  const isUrgent = urgent.length > 0;
  const dangers = isUrgent ? [] : dangersSaid(matter, 2);
  const isOpen = !isUrgent && isRuleWanted(matter);
  const asked = isOpen && answered.length === 0 ? ruleSaid(matter, asking) : answered;
  // Whoever told nothing and hears a list hears by what rule it is chosen.
  const isListOnly = isOpen && answered.length > 0 && !isAnythingTold(matter);
  // What is only a proviso waits where the answer itself is open; a danger does not.
  const isOpenOnly = first?.code === 'decision-open' || first?.code === 'perhaps';
  const isGrave = first?.level === 'stop' || (first?.level === 'unknown' && !isOpenOnly);
  const [wrong, todo] = first ? partsOf(first) : [];
  const hinges = (each: Sayable): Part => {
    if (!isOpen || asked.length === 0) return must(each);
    return answered.length > 0 ? ifShort(each) : may(each, 3);
  };
  return [
    ...all(urgent, must),
    // A rule is no answer of this rig’s own: what is dangerous on it comes first.
    ...(answered.length === 0 ? dangers : []),
    ...all(isUrgent ? [] : asked.slice(0, 1), must),
    ...(answered.length === 0 ? [] : dangers),
    ...all(isListOnly ? ruleSaid(matter, asking) : [], (each) => may(each, 0.3)),
    ...all(isUrgent ? [] : asked.slice(1), (each) => may(each, isListOnly ? 2 : 0.4)),
    ...all(isOpen ? reasonSaid(matter, asking) : [], (each) => may(each, 1)),
    ...all(isUrgent ? [] : verdictSaid(matter), hinges),
    ...all(isUrgent ? [] : limitOf(matter), (each) =>
      isOver(matter) ? may(each, 0.5) : may(each, 2),
    ),
    ...(wrong ? [may(wrong, isOpen && !isGrave ? 3 : 1)] : []),
    ...(todo ? [following(may(todo, 3), wrong)] : []),
    ...more.slice(0, 2).flatMap((each) => all(partsOf(each).slice(0, 1), (said) => may(said, 4))),
    ...all(level === 'unknown' ? nextAsked(matter, asking) : [], (each) =>
      isOpen && answered.length > 0 ? ifShort(each) : may(each, 1),
    ),
    ...all(isOpen ? defaultSaid(matter, asking) : [], (each) => may(each, 2)),
    ...(caution ? [warning(may(caution, 1))] : []),
    ...(first?.messages.because ? [ifShort(first.messages.because)] : []),
    ...others.slice(0, 5).map((each) => warning(ifShort(each))),
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
