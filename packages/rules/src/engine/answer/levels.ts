import { rulingLevels } from '../condition/rules';
import { type Finding, type Level, levels, type State, type Topic } from '../define/shapes';
import type { Run } from '../formula/run';
import { asTruth } from '../value/truth';
import type { FindingAnswer } from './shapes';

/** Which conditions hold for sure, and which may. */
export type Holding = {
  readonly certain: ReadonlySet<string>;
  readonly possible: ReadonlySet<string>;
};

/**
 * The level of a limit or finding from its conditions.
 *
 *     stop for sure ─► stop     stop perhaps ─► unknown, or what the finding counts it as
 *     unknown, if, care: sure or perhaps ─► that level, the gravest of them     else ok
 *
 * A limit with relief stops for sure only where it would by the other way of using the rig too.
 */
export function levelOf(
  of: string,
  { certain, possible }: Holding,
  how: { readonly relieved?: boolean; readonly stopOpen?: Level } = {},
): Level {
  const firm = !how.relieved || certain.has(`${of}.firm`);
  if (certain.has(`${of}.stop`) && firm) return 'stop';
  const open = possible.has(`${of}.stop`) ? (how.stopOpen ?? 'unknown') : 'ok';
  const found = rulingLevels.filter((level) => level !== 'stop' && possible.has(`${of}.${level}`));
  return gravestOf([open, ...found]);
}

/** The gravest of some levels; `ok` where there are none. */
const gravestOf = (found: readonly Level[]): Level =>
  found.reduce<Level>((a, b) => (levels.indexOf(b) > levels.indexOf(a) ? b : a), 'ok');

type Asked = Pick<Finding, 'askedBy' | 'askedByKnown' | 'askedWhen'>;

/** Whether it may have to do with this rig at all, whatever was told of it. */
const mayApply = ({ askedWhen }: Pick<Asked, 'askedWhen'>, run: Run): boolean =>
  askedWhen === undefined || asTruth(run.value(askedWhen)).yes;

/** Whether a limit or finding is asked at all: a silent rating asks nothing. */
export function isAsked(asked: Asked, run: Run): boolean {
  const { askedBy, askedByKnown } = asked;
  if (askedByKnown && !askedByKnown.every((name) => run.known(name))) return false;
  if (!mayApply(asked, run)) return false;
  return !askedBy || askedBy.some((name) => run.given(name));
}

/** The state of every limit and finding, as `limit.payload` and `finding.grade`. */
export function allStates(topic: Topic, run: Run, holding: Holding): ReadonlyMap<string, State> {
  const states = new Map<string, State>();
  const note = (of: string, asked: Asked, how?: Parameters<typeof levelOf>[2]) =>
    states.set(of, isAsked(asked, run) ? levelOf(of, holding, how) : 'not-asked');
  for (const [id, limit] of Object.entries(topic.limits)) {
    note(`limit.${id}`, limit, { relieved: limit.relief !== undefined });
  }
  for (const [id, finding] of Object.entries(topic.findings)) {
    note(`finding.${id}`, finding, finding.stopOpen ? { stopOpen: finding.stopOpen } : {});
  }
  return states;
}

/** The gravest level decides; nothing asked is nothing known. */
export function overall(states: Iterable<State>): Level {
  const found = [...states].flatMap((state) => (state === 'not-asked' ? [] : [state]));
  return found.length === 0 ? 'unknown' : gravestOf(found);
}

const gravest: readonly State[] = levels.filter((level) => level !== 'ok').toReversed();

/** The findings that are said beside the limits, the gravest first; what is in order is not repeated. */
export const gravestFirst = (findings: readonly FindingAnswer[]): readonly FindingAnswer[] =>
  findings
    .filter(({ level }) => gravest.includes(level))
    .toSorted((a, b) => gravest.indexOf(a.level) - gravest.indexOf(b.level));
