import {
  type Answer,
  type Asked,
  answerNow,
  type FactsGiven,
  type Topic,
} from '@tarebook/rules/engine';

/** What an unknown figure must come to: at the least, or at the most. */
export type Need = {
  readonly atLeast?: number;
  readonly atMost?: number;
  readonly unit: string;
};

type Open = Answer['limits'][number];

const withFact = (facts: FactsGiven, fact: string, value: number, unit: string): FactsGiven => ({
  ...facts,
  [fact]: { lo: value, hi: value, unit: unit === '' ? '1' : unit },
});

/** Whether a limit is kept, margins aside. */
const isKept = (answer: Answer, id: string): boolean =>
  answer.limits.some(
    (limit) => limit.id === id && (limit.state === 'ok' || limit.state === 'care'),
  );

/** Quantities asked of the vehicle or trailer that are not known, and on which this limit may hang. */
function candidates(topic: Topic, answer: Answer, { id }: Open): readonly string[] {
  const decide = answer.missing.filter(({ decides }) => decides.includes(`limit.${id}`));
  return decide.flatMap(({ fact }) => (topic.facts[fact]?.kind === 'quantity' ? [fact] : []));
}

/** The figure at which a limit that is open turns, with the fact that turns it by itself. */
function needFor(
  topic: Topic,
  asked: Asked,
  answer: Answer,
  open: Open,
): readonly [string, Need] | undefined {
  for (const fact of candidates(topic, answer, open)) {
    const declared = topic.facts[fact];
    if (declared?.kind !== 'quantity') continue;
    const { unit } = declared;
    const at = (value: number): boolean => {
      const facts = withFact(asked.facts, fact, value, unit);
      return isKept(answerNow(topic, { ...asked, facts }), open.id);
    };
    const { lo, hi } = open.used;
    // A rating must come to what is used at the most.
    if (Number.isFinite(hi) && lo >= 0) {
      const least = Math.ceil(hi);
      if (at(least) && !at(Math.max(0, least - 2))) return [fact, { atLeast: least, unit }];
    }
    const tip = answer.missing.find((each) => each.fact === fact)?.tips;
    if (tip === null || tip === undefined || typeof tip === 'string') continue;
    const most = Math.floor(tip.lo);
    if (most > 0 && at(most) && !at(most + 2)) return [fact, { atMost: most, unit: tip.unit }];
  }
  return undefined;
}

/**
 * What each unknown must be so that nothing is exceeded; margins are said and not demanded. A limit
 * that hangs on several unknowns at once has no need of its own.
 */
export function needsOf(
  topic: Topic,
  asked: Asked,
  answer: Answer,
): Readonly<Record<string, Need>> {
  const needs: Record<string, Need> = {};
  for (const open of answer.limits) {
    if (open.state !== 'unknown') continue;
    const found = needFor(topic, asked, answer, open);
    if (!found) continue;
    const [fact, need] = found;
    const before = needs[fact];
    const atLeast = Math.max(before?.atLeast ?? 0, need.atLeast ?? 0);
    const atMost = Math.min(before?.atMost ?? Infinity, need.atMost ?? Infinity);
    needs[fact] = {
      ...(atLeast > 0 && { atLeast }),
      ...(atMost < Infinity && { atMost }),
      unit: need.unit,
    };
  }
  return needs;
}
