import { topics } from '@tarebook/rules';
import {
  type Answer,
  answerTraced,
  type FactChange,
  type FactsGiven,
  InputError,
  type Level,
  levels,
  type Remedy,
  remedies,
  type State,
  type Topic,
} from '@tarebook/rules/engine';
import { expect, test } from 'vitest';
import { type Filed, filedByTopic, randomFrom, seed, someOf } from './rigs';

/**
 * The law of the untold, number 6: no remedy hurts. Rigs are put together from filed cases, several
 * topics in one; whatever any topic offers is carried out and tried in every topic that can answer.
 */
const asOf = '2026-11-01';
const all: readonly Topic[] = Object.values(topics);
const rigs = Number(process.env.TAREBOOK_RIGS ?? 40);

const own = (topic: Topic, facts: FactsGiven): FactsGiven =>
  Object.fromEntries(Object.entries(facts).filter(([id]) => Object.hasOwn(topic.facts, id)));

const isAsked = (topic: Topic, facts: FactsGiven): boolean =>
  Object.keys(own(topic, facts)).length > 0;

const isSame = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

/** The answer, or nothing where the facts contradict one another and are refused. */
function judged(topic: Topic, facts: FactsGiven): Answer | undefined {
  try {
    return answerTraced(topic, { facts: own(topic, facts), asOf });
  } catch (problem) {
    if (problem instanceof InputError) return undefined;
    throw problem;
  }
}

type Filing = Filed & { readonly topic: Topic };

/** What a case says against its rig, so that there is something to be changed. */
const isAgainst = ({ topic, facts }: Filing): boolean => {
  const outcome = judged(topic, facts)?.outcome;
  return outcome === topic.outcomes.stop.id || outcome === topic.outcomes.care.id;
};

/** All facts of a case that something is wrong with, or some, and some of another one. */
function* anyRigs(): Generator<readonly [string, FactsGiven]> {
  const random = randomFrom(seed);
  const filed = [...filedByTopic()].flatMap(([id, cases]) =>
    all.flatMap((topic) => (topic.id === id ? cases.map((each) => ({ ...each, topic })) : [])),
  );
  const pick = (): Filing => {
    const found = filed[Math.floor(random() * filed.length)];
    if (!found) throw new Error('No case is filed.');
    return found;
  };
  for (let i = 0; i < rigs; i += 1) {
    let a = pick();
    while (!isAgainst(a)) a = pick();
    const b = pick();
    // Where little is told little is offered, since what is missing comes first.
    const few = i % 4 === 0 ? 20 : undefined;
    const first = few === undefined ? a.facts : someOf(a.facts, few, random);
    const second = random() < 0.6 ? someOf(b.facts, 20, random) : {};
    yield [`${a.name} and ${b.name}`, { ...second, ...first }];
  }
}

const gravity = (state: State | undefined): number =>
  state === undefined || state === 'not-asked' ? 0 : levels.indexOf(state satisfies Level);

const statesOf = ({ limits, findings }: Answer): ReadonlyMap<string, State> =>
  new Map([
    ...limits.map(({ id, state }): [string, State] => [`limit ${id}`, state]),
    ...findings.map(({ id, level }): [string, State] => [`finding ${id}`, level]),
  ]);

/** What is graver in a topic than it was. */
function worseIn(topic: Topic, was: Answer, after: FactsGiven): readonly string[] {
  const is = judged(topic, after);
  if (!is) return [`${topic.id} refuses it`];
  const states = statesOf(was);
  return [...statesOf(is)].flatMap(([of, state]) =>
    gravity(state) > gravity(states.get(of))
      ? [`${topic.id} ${of}: ${states.get(of)} → ${state}`]
      : [],
  );
}

const end = (told: FactChange['to'], side: 'lo' | 'hi' = 'lo'): number =>
  told !== null && typeof told === 'object' ? told[side] : Number.NaN;

const changesOf = (each: Remedy): readonly FactChange[] => [
  each,
  ...(each.with ? [each.with] : []),
];

/** What keeps people warm, or alive, by what its row is called. */
const needed =
  /(?<!water )heat|furnace|wood stove|blanket|cpap|oxygen|medic|breath|insulin|dialys|nebul|respirat/i;

/** What no remedy may be, by its own words and facts. */
function hurtful(topic: Topic, each: Remedy): readonly string[] {
  return changesOf(each).flatMap(({ fact, column, rowName, from, to }) => {
    const isLeftOut = to === 'none';
    const id = column === undefined ? fact : `${fact}.${column}`;
    const declared = topic.facts[fact];
    const found: string[] = [];
    if (/^(trailer\.(cargo|options)\.ahead|trailer\.\w+Ahead|addon\.ahead|kit\.ahead)$/.test(id)) {
      if (end(to) < 0 && end(to) < end(from)) found.push('moves load behind the axles');
    }
    if (/inside\.temperature|heat\.setting|thermostat/i.test(id) && end(to) < end(from)) {
      found.push('asks for less heat');
    }
    if (isLeftOut && topic.facts[fact]?.kind === 'rows' && needed.test(rowName ?? '')) {
      found.push(`asks to do without ${rowName}`);
    }
    const isRating =
      (declared?.kind === 'quantity' && declared.isRating === true) ||
      /Rating|gvwr|gcwr|gawr|Capacity|\.max[A-Z]|Carried$|placardPayload|RequiredAbove|Allowed$|towPackage/.test(
        fact,
      );
    if (isRating) found.push('asks for another rating');
    const range =
      declared?.kind === 'quantity'
        ? declared
        : declared?.kind === 'rows' && column !== undefined
          ? declared.columns[column]
          : undefined;
    if (range && Number.isFinite(end(to))) {
      const [lo, hi] = [end(to), end(to, 'hi')];
      if (lo < range.least || hi > range.most) found.push(`names ${lo}, which is none of ${id}`);
    }
    return found;
  });
}

test('no remedy hurts: carried out, nothing is graver in any topic', () => {
  const wrong: string[] = [];
  let tried = 0;
  for (const [name, facts] of anyRigs()) {
    const before = new Map(
      all.flatMap((topic) => {
        const answer = isAsked(topic, facts) ? judged(topic, facts) : undefined;
        return answer ? [[topic, answer] as const] : [];
      }),
    );
    for (const topic of before.keys()) {
      const mine = own(topic, facts);
      for (const each of remedies(topic, { facts: mine, asOf }, all, facts).remedies) {
        tried += 1;
        const after = { ...facts, ...each.facts };
        const touched = Object.keys(after).filter((id) => !isSame(after[id], facts[id]));
        const worse = [...before].flatMap(([other, was]) =>
          touched.some((id) => Object.hasOwn(other.facts, id)) ? worseIn(other, was, after) : [],
        );
        const found = [...worse, ...hurtful(topic, each)];
        if (found.length > 0) wrong.push(`${name}: ${topic.id}: ${each.says} ${found.join('; ')}`);
      }
    }
  }
  expect(wrong).toEqual([]);
  expect(tried).toBeGreaterThan(rigs / 4);
}, 900_000);
