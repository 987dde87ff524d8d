import { english } from '../words/en';
import { message } from '../words/message';
import { sayer } from '../words/say';
import type { Medium, Sayable } from '../words/value';
import { text } from '../words/value';
import { askedFigure, askedFirst } from './asking';
import { isFired } from './caution';
import { decidersOf } from './deciding';
import { explained } from './explained';
import { begun, type Fitted, fittedWith, type Part, spare, wordsIn } from './length';
import { isAnythingTold, type Matter } from './matter';
import { isRuleWanted, limitOf } from './parts';
import { fromToldSaid, ruleSaid } from './rule';
import { careHeard, settled } from './settled';
import { unsettled } from './unsettled';
import { urgently } from './urgent';
import {
  caresTold,
  dangersUnknown,
  findingsTold,
  levelOf,
  partsOf,
  urgentSaid,
  verdictSaid,
} from './verdict';
import type { Written } from './written';

/** People get out before anything else is told; then what is settled with what to do, or what is open. */
function briefly(matter: Matter, asking: string | undefined, isShort = false): readonly Part[] {
  if (urgentSaid(matter).length > 0) return urgently(matter, asking);
  const isSettled = decidersOf(matter).length > 0;
  return isSettled ? settled(matter, asking) : unsettled(matter, asking, isShort);
}

/** Ten to twenty-five seconds on the phone. */
const spokenWords = { least: 30, most: 72 } as const;
/** A public channel. */
const postWords = { least: 42, most: 80 } as const;
/** What is read at a glance before it is sent. */
const shortWords = { least: 25, most: 50 } as const;

function linesOf(
  matter: Matter,
  asking: string | undefined,
  medium: Medium,
  words: { readonly least: number; readonly most: number },
): Fitted {
  const say = sayer({ ...matter.voice, medium });
  return fittedWith(say, briefly(matter, asking), words);
}

/** A listener cannot look a term up: what it is follows it, unless people are to get out. */
export function spoken(matter: Matter, asking: string | undefined): Written {
  const { lines, cautions } = linesOf(matter, asking, 'spoken', spokenWords);
  if (urgentSaid(matter).length > 0) return { text: lines.join(' '), cautions };
  const say = sayer({ ...matter.voice, medium: 'spoken' });
  const heard = careHeard(matter, asking, lines, (of) => begun(say(of)));
  const said = explained(heard, matter.voice.language ?? english, spokenWords.most);
  return { text: said.join(' '), cautions };
}

export function post(matter: Matter, asking: string | undefined): Written {
  const { lines, cautions } = linesOf(matter, asking, 'written', postWords);
  return { text: lines.join(' '), cautions };
}

/** Ranks above this are what else there is to know, and no part of a short answer. */
const elseRank = 1;

/**
 * The shortest that is an answer: what was asked, what it turns on, what to do or to find out next. A
 * caution about what was found stays beside an answer, one about what is merely open goes in if there is room;
 * and whoever told nothing hears by the rule itself what to look up.
 */
export function short(matter: Matter, asking: string | undefined): Written {
  const say = sayer({ ...matter.voice });
  const isRule = !isAnythingTold(matter) && ruleSaid(matter, asking).length > 0;
  const written = (isMust: boolean): Fitted => {
    const parts = briefly(matter, asking, true)
      .filter(({ of, rank }) => {
        const isOpenYet = 'code' in of && of.code === 'open-until';
        return (rank <= elseRank || rank >= spare) && !(isOpenYet && isRule);
      })
      .map((part): Part => {
        if (part.cautions && part.rank < spare) return isMust ? { ...part, rank: 0 } : part;
        const isNext = 'code' in part.of && part.of.code === 'next-asked';
        return isNext && isRule ? { ...part, rank: Math.max(part.rank, 0.9) } : part;
      });
    return fittedWith(say, parts, shortWords);
  };
  const isMust = urgentSaid(matter).length === 0 && isFired(matter);
  const whole = written(isMust);
  // Beside dangers that fill it, what to do about them is the caution.
  const isFull = wordsIn(whole.lines.join(' ')) > postWords.most;
  const { lines, cautions } = isMust && isFull ? written(false) : whole;
  return { text: lines.join(' '), cautions };
}

/** Whether two say the same, whatever the language. */
const isSame = (a: Sayable, b: Sayable | undefined): boolean =>
  JSON.stringify(a) === JSON.stringify(b);

/** What is made of the little that was told, where no limit can be said to be near or far. */
function madeOfTold(matter: Matter, asking: string | undefined): readonly Sayable[] {
  if (!isRuleWanted(matter)) return [];
  const { said, isWorked } = fromToldSaid(matter, asking);
  return isWorked ? said : [];
}

/**
 * What can be said though the verdict cannot: what was asked, what was told comes to, or the rule; '' where
 * there is nothing of the kind, or where a danger or a care is said instead.
 */
export function known(matter: Matter, asking: string | undefined): string {
  if (levelOf(matter) !== 'unknown' || urgentSaid(matter).length > 0) return '';
  const answered = askedFirst(matter, asking);
  // A danger that nobody knows of, or a care, is said instead, as on the ticket.
  if (dangersUnknown(matter).length > 0) return '';
  if (answered.length === 0 && caresTold(matter).length > 0) return '';
  const rule = isRuleWanted(matter) && isAnythingTold(matter) ? ruleSaid(matter, asking) : [];
  const [first] = [...answered, ...madeOfTold(matter, asking), ...rule];
  return first ? sayer({ ...matter.voice })(first) : '';
}

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
  const rule = isRuleWanted(matter) ? ruleSaid(matter, asking) : [];
  // What stops it stands there, and what calls for care beside what was asked.
  const [main] = decidersOf(matter, asking);
  const [wrong] = main?.wrong ?? [];
  const stops = level === 'stop' && wrong ? [wrong] : [];
  const [danger] = dangersUnknown(matter);
  const [care] = level === 'unknown' || level === 'if' ? caresTold(matter) : [];
  const isCareBeside = level === 'if' || asked.length > 0;
  const beside = level === 'care' ? wrong : isCareBeside ? care?.messages.wrong : undefined;
  // What nobody knows comes before all that is known, but for what certainly stops it.
  const doubt = danger ? message('sentences', { of: partsOf(danger) }) : undefined;
  const candidates = [
    urgent,
    ...stops,
    doubt,
    ...asked,
    care && level === 'unknown' ? message('sentences', { of: partsOf(care) }) : undefined,
    ...madeOfTold(matter, asking),
    ...rule,
    limit,
    first,
    ...verdict,
  ];
  const found = candidates.find((each) => each !== undefined);
  const also = stops.length > 0 ? doubt : danger ? undefined : beside;
  // It may stand word for word within what was asked.
  const isBeside = !urgent && found && also && !say(found).includes(say(also));
  const sentence = isBeside ? message('sentences', { of: [found, also] }) : found;
  return say(
    message('ticket', {
      outcome: text(topic.outcomes[levelOf(matter)].words),
      figure: urgent || danger || stops.length > 0 ? null : (figure ?? null),
      sentence: sentence ?? text(answer.words),
    }),
  );
}
