import type { Asked } from '../../answer/answer';
import { refuseAsking } from '../../check/asked';
import type { FactsGiven } from '../../check/given';
import type { Topic } from '../../define/shapes';
import { message } from '../../words/message';
import { sayer } from '../../words/say';
import { nounOr } from '../../words/value';
import { askedFirst, askingOf, isAnsweredOwn } from '../asking';
import { cautionsFitting } from '../caution';
import { decidersOf } from '../deciding';
import { fittedWith, ifShort, may, must, secondsOf, unlessSaid, warning } from '../length';
import { decidingLimit, limitSaid } from '../limit';
import { type Matter, matterOf } from '../matter';
import { dangersSaid } from '../parts';
import { everybodyFor, fromToldSaid, ruleSaid, saidIfKnown, workedSaid } from '../rule';
import {
  caresTold,
  dangersUnknown,
  findingsTold,
  isDefaultFit,
  levelOf,
  partsOf,
  urgentSaid,
  verdictSaid,
} from '../verdict';
import { whereToLook } from '../where';
import type { Written } from '../written';
import { type Way, waysOf } from './branches';
import { branchesSaid, outcomeSaid, saidOf } from './words';

export type Branch = {
  /** What a listener is told to look for. */
  readonly when: FactsGiven;
  /** What is presumed, and said as such. */
  readonly given: FactsGiven;
  readonly outcome: string;
  readonly says: string;
};

export type Everybody = {
  readonly text: string;
  readonly seconds: number;
  readonly branches: readonly Branch[];
};

/** Twenty to sixty-five seconds. */
const words = { least: 60, most: 188 } as const;

/** Whether what was asked is answered by a list, which has no branches. */
function isListed({ topic, answer }: Matter, asking: string | undefined): boolean {
  const results = asking === undefined ? [] : (topic.askings?.[asking]?.results ?? []);
  return answer.selections.some(({ id }) => results.includes(id));
}

/** Where the figure that decides is read. */
function whereSaid({ topic }: Matter, ways: readonly Way[], looks: readonly string[]) {
  const fact = ways[0]?.looks.at(-1)?.fact ?? looks[0];
  const declared = fact === undefined ? undefined : topic.facts[fact];
  const where = declared ? whereToLook(declared) : null;
  return where ? [message('found-there', { noun: nounOr(declared, fact ?? ''), where })] : [];
}

type Said = { readonly everybody: Everybody; readonly cautions: readonly string[] };

function toEverybody(matter: Matter, asking: string | undefined): Said {
  const everybody = everybodyFor(matter, asking);
  const say = sayer({ ...matter.voice, medium: 'spoken' });
  const listed = isListed(matter, asking);
  // What certainly will not do has no branches, and is not followed by what to do where nobody knows.
  const isCertain = levelOf(matter) === 'stop';
  // While a danger is in doubt, nobody is told what to look for to go ahead.
  const doubts = dangersUnknown(matter);
  const isOpen = !listed && !isCertain && doubts.length === 0;
  const ways = everybody && isOpen ? waysOf(matter, everybody) : [];
  const [caution, ...others] = cautionsFitting(matter);
  const limit = decidingLimit(matter);
  const [first, ...more] = findingsTold(matter);
  const asked = askedFirst(matter, asking);
  const dangers = dangersSaid(matter, 0);
  // Where what was asked has its answer, the rule behind it is said only where there is room.
  const isAnswered = isAnsweredOwn(matter, asking);
  const presumption =
    everybody?.givenSays !== undefined && ways.some(({ given }) => Object.keys(given).length > 0);
  const fromTold = asked.length === 0 && !isCertain ? fromToldSaid(matter, asking).said : [];
  // What a settled verdict turns on stands with it, and what is told and certain in any case.
  const [main, ...rest] = decidersOf(matter, asking);
  const isUrgent = urgentSaid(matter).length > 0;
  const turning = [...(main?.wrong ?? []), ...(main?.todo ? [main.todo] : [])];
  const decided = [
    ...(main ? verdictSaid(matter).map(isUrgent ? ifShort : must) : []),
    ...turning.map((each) => unlessSaid(isUrgent ? may(each, 0.2) : must(each))),
    ...rest.flatMap(({ wrong, todo }) =>
      [...wrong, ...(todo ? [todo] : [])].map((each) => unlessSaid(may(each, 0.2))),
    ),
  ];
  const careful = main
    ? []
    : caresTold(matter).flatMap((each, place) =>
        partsOf(each).map((said) => unlessSaid(place === 0 ? must(said) : may(said, 0.2))),
      );
  const doubt = doubts.flatMap(partsOf).map(must);
  const parts = [
    ...urgentSaid(matter).map(must),
    ...doubt,
    ...(isCertain ? decided : []),
    ...(asked.length === 0 ? careful : []),
    ...(asked.length === 0 ? dangers : []),
    ...fromTold.map((each) => may(each, 0.3)),
    ...asked.map((each, place) =>
      listed || !everybody || (isAnswered && place === 0)
        ? must(each)
        : may(each, place === 0 ? 0.5 : 1),
    ),
    ...(asked.length === 0 ? [] : dangers),
    ...(isCertain ? [] : decided),
    ...(asked.length === 0 ? [] : careful),
    ...(isCertain && limit ? limitSaid(matter, limit.id) : []).map((each) => may(each, 0.5)),
    ...ruleSaid(matter, asking).map((each) => (isAnswered ? may(each, 0.6) : must(each))),
    ...(everybody ? saidIfKnown(matter, everybody.because) : []).map((each) => may(each, 2)),
    ...(everybody && !isCertain ? workedSaid(matter, everybody) : []).map((each) => may(each, 1)),
    ...(presumption && everybody?.givenSays !== undefined
      ? [must(message('presuming', { of: saidOf(matter, everybody.givenSays) }))]
      : []),
    ...(everybody ? branchesSaid(matter, everybody, ways) : []).map(must),
    ...(ways.length === 0 ? verdictSaid(matter) : []).map((each) => may(each, everybody ? 3 : 1)),
    ...(everybody && isDefaultFit(matter) ? [saidOf(matter, everybody.otherwise)] : []).map(must),
    ...whereSaid(matter, ways, everybody?.look ?? []).map((each) => may(each, 1)),
    ...(caution ? [warning(must(caution))] : []),
    ...(limit && ways.length === 0 ? limitSaid(matter, limit.id) : []).map(ifShort),
    ...(first ? partsOf(first) : []).map(ifShort),
    ...others.map((each) => warning(ifShort(each))),
    ...more.flatMap(partsOf).map(ifShort),
  ];
  const { lines, cautions } = fittedWith(say, parts, words);
  const said = lines.join(' ');
  const branches = ways.map((way) => ({
    when: way.when,
    given: way.given,
    outcome: way.answer.outcome,
    says: say(outcomeSaid(matter, way)),
  }));
  return { everybody: { text: said, seconds: secondsOf(said), branches }, cautions };
}

/**
 * What is said to all who ask the same and told next to nothing: the rule, the reason, one figure,
 * what to look for and what follows, the safest default, one caution, where to read it.
 *
 * @throws InputError as `answer` does
 */
export function answerEverybody(topic: Topic, asked: Asked, asking?: string): Everybody {
  const matter = matterOf(topic, asked);
  refuseAsking(topic, asking);
  return toEverybody(matter, askingOf(matter, asking)).everybody;
}

export function everybodyOf(matter: Matter, asking: string | undefined): Written {
  const { everybody, cautions } = toEverybody(matter, asking);
  return { text: everybody.text, cautions };
}
