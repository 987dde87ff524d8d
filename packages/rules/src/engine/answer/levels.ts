import type { Level, State, Topic } from '../define/shapes';
import type { Run } from '../formula/run';
import type { FindingAnswer } from './shapes';

/** Which conditions hold for sure, and which may. */
export type Holding = {
  readonly certain: ReadonlySet<string>;
  readonly possible: ReadonlySet<string>;
};

/**
 * The level of a limit or finding from its two conditions.
 *
 *     stop for sure ─► stop     stop perhaps ─► unknown     care, sure or not ─► care     else ok
 */
export function levelOf(of: string, { certain, possible }: Holding): Level {
  if (certain.has(`${of}.stop`)) return 'stop';
  if (possible.has(`${of}.stop`)) return 'unknown';
  return possible.has(`${of}.care`) ? 'care' : 'ok';
}

type Asked = { readonly askedBy?: readonly string[]; readonly askedByKnown?: readonly string[] };

/** Whether a limit or finding is asked at all: a silent rating asks nothing. */
export function isAsked({ askedBy, askedByKnown }: Asked, run: Run): boolean {
  if (askedByKnown && !askedByKnown.every((name) => run.known(name))) return false;
  return !askedBy || askedBy.some((name) => run.given(name));
}

/** The state of every limit and finding, as `limit.payload` and `finding.grade`. */
export function allStates(topic: Topic, run: Run, holding: Holding): ReadonlyMap<string, State> {
  const states = new Map<string, State>();
  const note = (of: string, asked: Asked) =>
    states.set(of, isAsked(asked, run) ? levelOf(of, holding) : 'not-asked');
  for (const [id, limit] of Object.entries(topic.limits)) note(`limit.${id}`, limit);
  for (const [id, finding] of Object.entries(topic.findings)) note(`finding.${id}`, finding);
  return states;
}

/** A certain stop decides; then what is not known; then care. Nothing asked is nothing known. */
export function overall(states: Iterable<State>): Level {
  const found = new Set(states);
  found.delete('not-asked');
  if (found.size === 0) return 'unknown';
  return found.has('stop')
    ? 'stop'
    : found.has('unknown')
      ? 'unknown'
      : found.has('care')
        ? 'care'
        : 'ok';
}

const gravest: readonly State[] = ['stop', 'unknown', 'care'];

/** The findings that are said beside the limits, the gravest first; what is in order is not repeated. */
export const gravestFirst = (findings: readonly FindingAnswer[]): readonly FindingAnswer[] =>
  findings
    .filter(({ level }) => gravest.includes(level))
    .toSorted((a, b) => gravest.indexOf(a.level) - gravest.indexOf(b.level));
