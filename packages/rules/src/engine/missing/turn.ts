import { factsBelow } from '../answer/grounds';
import { conditionRules } from '../condition/rules';
import type { State, Topic } from '../define/shapes';
import type { Run } from '../formula/run';
import { type OpenDecision, readings, type Setting } from './open';
import { largestKnown, plausible } from './plausible';
import { coarsely, tryAll } from './trial';
import { untoldIn } from './untold';

/** Whether a danger is open that is asked about before anything else. */
function isDanger(topic: Topic, states: ReadonlyMap<string, State>, of: string): boolean {
  const { first, askedFirst } = topic.findings[of.replace(/^finding\./, '')] ?? {};
  return states.get(of) === 'unknown' && (first === true || askedFirst === true);
}

/**
 * The facts that a danger hangs on which by itself is no more than a proviso, such as the rating of an
 * extension that nobody told: whatever is told of it takes the danger away, or makes it a limit.
 */
function namedByDangers(
  setting: Setting,
  run: Run,
  decisions: readonly OpenDecision[],
  states: ReadonlyMap<string, State>,
): ReadonlySet<string> {
  const { findings } = setting.compiled.topic;
  const open = decisions.filter(({ rule }) => {
    const { of } = rule.event.params;
    return states.get(of) === 'if' && findings[of.replace(/^finding\./, '')]?.first === true;
  });
  const largest = largestKnown(setting, run, decisions);
  const on = open.flatMap((decision) =>
    [...untoldIn(setting, decision).facts].flatMap(([fact, keys]) => {
      const values = plausible(setting, fact, keys, largest);
      const tried = values && tryAll(setting, [decision.rule], fact, values, coarsely);
      return tried?.found.every(([found]) => found === 'within') ? [fact] : [];
    }),
  );
  return new Set(on);
}

/**
 * Whether a told rating waits for a fact, as the one for a trailer without brakes does, and is certainly
 * exceeded by some word about it: that word decides, though nothing is open yet.
 */
function isAwaited(setting: Setting, states: ReadonlyMap<string, State>, fact: string): boolean {
  const { compiled, run, inputs } = setting;
  const { topic } = compiled;
  const input = inputs.get(fact);
  const declared = topic.facts[fact];
  if (input?.kind !== 'among' || input.status === 'known' || declared?.kind === 'quantity')
    return false;
  const options = declared?.kind === 'choice' ? declared.options : ['yes', 'no'];
  const waiting = Object.entries(topic.limits).flatMap(([id, { askedBy, askedWhen }]) => {
    const isWaiting =
      askedWhen !== undefined &&
      states.get(`limit.${id}`) === 'not-asked' &&
      askedBy?.some((name) => run.known(name)) &&
      factsBelow(compiled, askedWhen).has(fact);
    return isWaiting ? [`limit.${id}`] : [];
  });
  const rules = conditionRules(topic).filter(
    ({ event }) => event.type === 'stop' && waiting.includes(event.params.of),
  );
  const found = options.map((option) =>
    readings(
      setting,
      rules,
      new Map([[fact, { kind: 'among', options: [option], status: 'known' } as const]]),
    ),
  );
  return found.some((each) => each.includes('over'));
}

/**
 * In which turn a fact is asked: an open danger first, then what a told rating waits for, then what
 * decides, and what only a proviso hangs on once the rest is settled.
 */
export function turnsOf(
  setting: Setting,
  run: Run,
  decisions: readonly OpenDecision[],
  states: ReadonlyMap<string, State>,
): (fact: string, decides: readonly string[]) => number {
  const { topic } = setting.compiled;
  const named = namedByDangers(setting, run, decisions, states);
  return (fact, decides) => {
    const isProviso = decides.every((of) => states.get(of) === 'if');
    if (decides.some((of) => isDanger(topic, states, of))) return 0;
    if (!isProviso && named.has(fact)) return 0;
    if (isAwaited(setting, states, fact)) return 1;
    return isProviso ? 3 : 2;
  };
}
