import type { Asked } from '../../answer/answer';
import { refuseAsking } from '../../check/asked';
import type { FactsGiven } from '../../check/given';
import type { ForEverybody, Topic } from '../../define/shapes';
import { restsOnKnown } from '../../formula/reckon';
import { holesIn } from '../../words/fill';
import { message } from '../../words/message';
import { sayer } from '../../words/say';
import { type Sayable, text } from '../../words/value';
import { askedFirst, askingOf } from '../asking';
import { cautionsFitting } from '../caution';
import { fitted, ifShort, may, must, secondsOf } from '../length';
import { decidingLimit, limitSaid } from '../limit';
import { type Matter, matterOf } from '../matter';
import { findingsTold, partsOf, urgentSaid, verdictSaid } from '../verdict';
import { type Way, waysOf } from './branches';
import { presumed } from './presumed';
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

/** Whether every value that a text names is known well enough to be said. */
const canSay = ({ run }: Matter, words: string): boolean =>
  holesIn(words).every((name) => {
    const value = run.value(name);
    if (value.kind === 'number') return restsOnKnown(value, run.isOpen);
    return value.kind === 'among' ? value.options.length === 1 : value.yes !== value.no;
  });

/** The worked figure: a text filled from the case and what it is worked out from. */
function workedSaid(matter: Matter, { worked }: ForEverybody): readonly Sayable[] {
  if (!worked) return [];
  const given = presumed(matter, worked.given ?? {}, []);
  const facts = { ...matter.asked.facts, ...given };
  const example = matterOf(matter.topic, { ...matter.asked, facts });
  return canSay(example, worked.says) ? [saidOf(example, worked.says)] : [];
}

/** Where the figure that decides is read. */
function whereSaid({ topic }: Matter, ways: readonly Way[], looks: readonly string[]) {
  const fact = ways[0]?.looks.at(-1)?.fact ?? looks[0];
  const declared = fact === undefined ? undefined : topic.facts[fact];
  return declared ? [message('found-there', { where: text(declared.where) })] : [];
}

function toEverybody(matter: Matter, asking: string | undefined): Everybody {
  const { topic } = matter;
  const own = topic.everybody ?? {};
  const everybody = (asking === undefined ? undefined : own[asking]) ?? own.any;
  const say = sayer({ ...matter.voice, medium: 'spoken' });
  const listed = isListed(matter, asking);
  const ways = everybody && !listed ? waysOf(matter, everybody) : [];
  const [caution, ...others] = cautionsFitting(matter);
  const limit = decidingLimit(matter);
  const [first, ...more] = findingsTold(matter);
  const asked = askedFirst(matter, asking);
  const presumption =
    everybody?.givenSays !== undefined && ways.some(({ given }) => Object.keys(given).length > 0);
  const parts = [
    ...urgentSaid(matter).map(must),
    ...asked.map((each) => (listed || !everybody ? must(each) : may(each, 1))),
    ...(everybody && canSay(matter, everybody.rule) ? [must(saidOf(matter, everybody.rule))] : []),
    ...(everybody && canSay(matter, everybody.because)
      ? [may(saidOf(matter, everybody.because), 2)]
      : []),
    ...(everybody ? workedSaid(matter, everybody) : []).map((each) => may(each, 1)),
    ...(presumption && everybody?.givenSays !== undefined
      ? [must(message('presuming', { of: text(everybody.givenSays) }))]
      : []),
    ...(everybody ? branchesSaid(matter, everybody, ways) : []).map(must),
    ...(ways.length === 0 ? verdictSaid(matter) : []).map((each) => may(each, 1)),
    ...(everybody ? [must(saidOf(matter, everybody.otherwise))] : []),
    ...whereSaid(matter, ways, everybody?.look ?? []).map((each) => may(each, 1)),
    ...(caution ? [must(caution)] : []),
    ...(limit && ways.length === 0 ? limitSaid(matter, limit.id) : []).map(ifShort),
    ...(first ? partsOf(first) : []).map(ifShort),
    ...others.map(ifShort),
    ...more.flatMap(partsOf).map(ifShort),
  ];
  const said = fitted(say, parts, words).join(' ');
  const branches = ways.map((way) => ({
    when: way.when,
    given: way.given,
    outcome: way.answer.outcome,
    says: say(outcomeSaid(matter, way)),
  }));
  return { text: said, seconds: secondsOf(said), branches };
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
  return toEverybody(matter, askingOf(matter, asking));
}

export const everybodyOf = toEverybody;
