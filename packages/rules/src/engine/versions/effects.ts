import type { Asked } from '../answer/answer';
import type { Answer } from '../answer/shapes';
import { answerTraced } from '../answer/traced';
import { refuseAsked } from '../check/asked';
import { InputError } from '../check/problem';
import type { Topic } from '../define/shapes';
import { compareTopics, isWording, type TopicChange } from './compare';
import { nameOf } from './words';

/** One thing that two versions say differently of the same case. */
export type VerdictChange = {
  /** `verdict`, `limit.binding`, `limit.payload`, `finding.grade` */
  readonly name: string;
  readonly label: string;
  readonly was: string;
  readonly now: string;
  /** The changed entries that stand in its reasoning, by name. */
  readonly because: readonly string[];
};

export type Effect = {
  /** The verdict in words; undefined when the case cannot be asked of that version. */
  readonly was?: string;
  readonly now?: string;
  readonly differences: readonly VerdictChange[];
  /** Facts of the case that the older version does not know; it was asked without them. */
  readonly leftOut: readonly string[];
  /** Why the case could not be asked of one of them. */
  readonly refused?: string;
};

/** The facts of a case that a version knows, and the ids of those it does not. */
function knownFacts(topic: Topic, asked: Asked): { asked: Asked; leftOut: readonly string[] } {
  const [known, leftOut] = [Object.entries(asked.facts), Object.keys(asked.facts)];
  const isKnown = (id: string) => Object.hasOwn(topic.facts, id);
  const facts = Object.fromEntries(known.filter(([id]) => isKnown(id)));
  return { asked: { ...asked, facts }, leftOut: leftOut.filter((id) => !isKnown(id)) };
}

/** Everything that a step of the reasoning came from, itself included. */
function behind({ trace }: Answer, roots: readonly string[]): ReadonlySet<string> {
  const found = new Set<string>();
  const walk = (name: string): void => {
    if (found.has(name)) return;
    found.add(name);
    const { from = [], decidedBy = [] } = trace.steps[name] ?? {};
    for (const each of [...from, ...decidedBy]) walk(each);
  };
  for (const root of roots) walk(root);
  return found;
}

/** The name under which a changed entry stands in a trace. */
function standsAs({ part, id }: TopicChange): string {
  if (part === 'limits') return `limit.${id}`;
  return part === 'findings' ? `finding.${id}` : id;
}

const notThere = 'not there';
const worded = (state: string | undefined): string => state?.replace('-', ' ') ?? notThere;

type State = { readonly label: string; readonly state: string };

function statesOf(answer: Answer): ReadonlyMap<string, State> {
  return new Map([
    ...answer.limits.map(({ id, label, state }) => [`limit.${id}`, { label, state }] as const),
    ...answer.findings.map(
      ({ id, label, level }) => [`finding.${id}`, { label, state: level }] as const,
    ),
  ]);
}

const binds = ({ binding, limits }: Answer): string =>
  limits.find(({ id }) => id === binding)?.label ?? 'none';

/** What rests on what: the causes of a difference among the changed entries. */
function causes(
  changes: readonly TopicChange[],
  was: Answer,
  now: Answer,
  roots: readonly string[],
): readonly string[] {
  const reached = [behind(was, roots), behind(now, roots)];
  return changes
    .filter((change) => !isWording(change))
    .filter((change) => reached.some((set) => set.has(standsAs(change))))
    .map(nameOf);
}

function differencesOf(
  changes: readonly TopicChange[],
  was: Answer,
  now: Answer,
): readonly VerdictChange[] {
  const [before, after] = [statesOf(was), statesOf(now)];
  const moved = [...new Set([...before.keys(), ...after.keys()])].filter(
    (name) => before.get(name)?.state !== after.get(name)?.state,
  );
  const why = (roots: readonly string[]) => causes(changes, was, now, roots);
  const found: VerdictChange[] = [];
  if (was.words !== now.words) {
    found.push({
      name: 'verdict',
      label: 'The verdict',
      was: was.words,
      now: now.words,
      because: why(moved),
    });
  }
  if (was.binding !== now.binding) {
    const roots = [was.binding, now.binding].flatMap((id) => (id ? [`limit.${id}`] : []));
    const label = 'What runs out first';
    found.push({
      name: 'limit.binding',
      label,
      was: binds(was),
      now: binds(now),
      because: why(roots),
    });
  }
  for (const name of moved) {
    const [a, b] = [before.get(name), after.get(name)];
    const label = b?.label ?? a?.label ?? name;
    found.push({ name, label, was: worded(a?.state), now: worded(b?.state), because: why([name]) });
  }
  return found;
}

/** The answer, or the sentences for which the case is refused. */
function tryAsk(topic: Topic, asked: Asked): Answer | string {
  try {
    return answerTraced(topic, asked);
  } catch (problem) {
    if (problem instanceof InputError) return problem.message;
    throw problem;
  }
}

/** What two versions of a rule set make of one case, and which of their changes make it so. */
export function compareVerdicts(was: Topic, now: Topic, asked: Asked): Effect {
  refuseAsked(was, asked);
  refuseAsked(now, asked);
  const before = knownFacts(was, asked);
  const after = knownFacts(now, asked);
  const [a, b] = [tryAsk(was, before.asked), tryAsk(now, after.asked)];
  const leftOut = [...before.leftOut, ...after.leftOut];
  if (typeof a === 'string' || typeof b === 'string') {
    const told = (topic: Topic, found: Answer | string): readonly string[] =>
      typeof found === 'string' ? [`By ${topic.version} it cannot be asked: ${found}`] : [];
    return {
      ...(typeof a !== 'string' && { was: a.words }),
      ...(typeof b !== 'string' && { now: b.words }),
      differences: [],
      leftOut,
      refused: [...told(was, a), ...told(now, b)].join(' '),
    };
  }
  const changes = compareTopics(was, now);
  return { was: a.words, now: b.words, differences: differencesOf(changes, a, b), leftOut };
}
