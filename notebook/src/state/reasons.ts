import {
  type Answer,
  type FindingAnswer,
  gravestFirst,
  type LimitAnswer,
  type State,
} from '@tarebook/rules/engine';

/** One reason of a verdict: a limit, or what is said beside the limits. */
export type Reason =
  | { readonly kind: 'limit'; readonly level: State; readonly limit: LimitAnswer }
  | { readonly kind: 'finding'; readonly level: State; readonly finding: FindingAnswer };

const order: readonly State[] = ['stop', 'unknown', 'if', 'care', 'ok'];
const rank = (level: State): number => order.indexOf(level);

/** A reader takes in three. */
const few = 3;

/** The limit that runs out first stands before the others of its level. */
const fullestFirst =
  (binding: string | null) =>
  (a: LimitAnswer, b: LimitAnswer): number =>
    Number(b.id === binding) - Number(a.id === binding) || b.roomUsed.hi - a.roomUsed.hi;

/**
 * What a reader is told of why the verdict is what it is: the gravest first, a limit before what is
 * said beside it. Where all is well, that is how much is left where it runs out first.
 */
export function reasonsOf({ limits, findings, binding }: Answer): readonly Reason[] {
  const asked = limits.filter(({ state }) => state !== 'not-asked');
  const all: readonly Reason[] = [
    ...asked.toSorted(fullestFirst(binding)).map(
      (limit): Reason => ({
        kind: 'limit',
        level: limit.state,
        limit,
      }),
    ),
    ...gravestFirst(findings)
      .filter(({ level }) => level !== 'ok' && level !== 'not-asked')
      .map((finding): Reason => ({ kind: 'finding', level: finding.level, finding })),
  ];
  return all.toSorted((a, b) => rank(a.level) - rank(b.level)).slice(0, few);
}

/** What to do next, as the findings that were not in order say it, the gravest first. */
export function nextSteps({ findings }: Answer): readonly FindingAnswer[] {
  const told = gravestFirst(findings).filter(
    ({ level, do: what }) => level !== 'ok' && level !== 'not-asked' && what !== '',
  );
  const once = told.filter(({ do: what }, i) => told.findIndex((each) => each.do === what) === i);
  return once.slice(0, few + 1);
}
