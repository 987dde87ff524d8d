import { rounded, unitOf } from '../../quantity';
import { isGrounded } from '../answer/grounds';
import { lookIn, unitOfName } from '../answer/named';
import { compare, type Named, type Question } from '../condition/operators';
import {
  type ConditionRule,
  conditionRules,
  namesCompared,
  rulingLevels,
} from '../condition/rules';
import { holds } from '../condition/walk';
import { type Condition, type Level, levels, type State, type Topic } from '../define/shapes';
import { isExact, type Lanes, type Numbers, newNumbers, newTruths } from '../value/lanes';
import { isFixed, type Setting } from './walk';

type Comparison = Extract<Condition, { readonly operator: string }>;

/** Whether a condition holds in each lane: for certain, and perhaps. */
export type Verdict = {
  readonly certain: Uint8Array;
  readonly possible: Uint8Array;
  /** The same in every draw. */
  readonly fixed: boolean;
};

/** A name's lanes in its declared unit, to a millionth: what conditions compare. */
function inDeclaredUnit(setting: Setting, name: string, lanes: Numbers): Numbers {
  const { program, compiled } = setting;
  const unit = unitOfName(compiled, name);
  const factor = unit === '' || unit === 'yes-no' ? 1 : unitOf(unit).factor;
  const exact = isExact(lanes);
  const to = newNumbers(program, exact);
  program.steps.push((count) => {
    for (let i = 0; i < count; i += 1) {
      to.lo[i] = rounded((lanes.lo[i] ?? 0) / factor);
      if (!exact) to.hi[i] = rounded((lanes.hi[i] ?? 0) / factor);
    }
  });
  return to;
}

const yesNo: readonly Named[] = [[], ['yes'], ['no'], ['yes', 'no']].map((among) => ({ among }));

function namedIn(lanes: Lanes, lane: number): Named {
  if (lanes.kind === 'words') return { among: lanes.options[lane] ?? [] };
  if (lanes.kind === 'truths') {
    return yesNo[(lanes.yes[lane] ?? 0) + 2 * (lanes.no[lane] ?? 0)] ?? { among: [] };
  }
  return { lo: lanes.lo[lane] ?? 0, hi: lanes.hi[lane] ?? 0 };
}

/** A name's lanes as conditions and people see them, each name once. */
export function shower(setting: Setting, named: (name: string) => Lanes): (name: string) => Lanes {
  const shown = new Map<string, Lanes>();
  return (name) => {
    const before = shown.get(name);
    if (before) return before;
    const lanes = named(name);
    const made = lanes.kind === 'numbers' ? inDeclaredUnit(setting, name, lanes) : lanes;
    shown.set(name, made);
    return made;
  };
}

/** The conditions of a topic, each as two arrays of what holds in which lane. */
export function decider(
  setting: Setting,
  lanesShown: (name: string) => Lanes,
): ReadonlyMap<string, Verdict> {
  const { program, compiled, run, drawn } = setting;

  const leaf = (condition: Comparison, question: Question): Uint8Array => {
    const { fact, operator, value } = condition;
    const left = lanesShown(fact);
    const right = typeof value === 'object' && 'fact' in value ? lanesShown(value.fact) : value;
    const to = newTruths(program).yes;
    const [more, less] = operator === 'lessThan' ? [right, left] : [left, right];
    if (/^(greater|less)Than$/.test(operator) && areExact(more) && areExact(less)) {
      // What limits and most findings ask, without a detour over ranges.
      program.steps.push((count) => {
        for (let i = 0; i < count; i += 1) to[i] = Number((more.lo[i] ?? 0) > (less.lo[i] ?? 0));
      });
      return to;
    }
    program.steps.push((count) => {
      for (let i = 0; i < count; i += 1) {
        const against = typeof right === 'string' || isList(right) ? right : namedIn(right, i);
        to[i] = Number(compare(question, operator, namedIn(left, i), against));
      }
    });
    return to;
  };

  const isStill = (condition: Condition): boolean =>
    namesCompared(condition).every((name) => isFixed(run.value(name), (key) => drawn.has(key)));

  const still = (condition: Condition, question: Question): Uint8Array => {
    const holding = holds(condition, question, lookIn(compiled, run));
    return newTruths(program).yes.fill(Number(holding));
  };

  const whole = (condition: Condition, question: Question): Uint8Array => {
    if (isStill(condition)) return still(condition, question);
    if ('fact' in condition) return leaf(condition, question);
    const every = 'all' in condition;
    const parts = (every ? condition.all : condition.any).map((each) => whole(each, question));
    const [only] = parts;
    if (only && parts.length === 1) return only;
    const to = newTruths(program).yes;
    program.steps.push((count) => {
      for (let i = 0; i < count; i += 1) {
        const is = every ? parts.every((part) => part[i] === 1) : parts.some((p) => p[i] === 1);
        to[i] = Number(is);
      }
    });
    return to;
  };

  const decideRule = ({ conditions }: ConditionRule): Verdict => {
    const fixed = isStill(conditions);
    const certain = whole(conditions, 'certain');
    // Where every lane is a number, what may be so is so.
    const open = fixed || namesCompared(conditions).some((name) => isOpen(lanesShown(name)));
    return { certain, possible: open ? whole(conditions, 'possible') : certain, fixed };
  };

  return new Map(conditionRules(compiled.topic).map((rule) => [rule.name, decideRule(rule)]));
}

const isList = (value: object | readonly string[]): value is readonly string[] =>
  Array.isArray(value);

function areExact(lanes: Lanes | string | readonly string[]): lanes is Numbers {
  return typeof lanes === 'object' && 'kind' in lanes && lanes.kind === 'numbers' && isExact(lanes);
}

/** Whether some lane may be other than one number or one word. */
function isOpen(lanes: Lanes): boolean {
  return lanes.kind !== 'numbers' || !isExact(lanes);
}

export type Rank = Level;
export const rankNames: readonly Rank[] = levels;
const rank = (level: Level): number => levels.indexOf(level);

/** What a limit or finding is judged by in each lane; see `levelOf`. */
type Judged = {
  readonly stop: Verdict | undefined;
  /** Without a verdict for it a stop needs no other to be certain. */
  readonly firm: Verdict | undefined;
  readonly stopOpen: number;
  readonly others: readonly (readonly [rank: number, verdict: Verdict])[];
};

function judgedIn(topic: Topic, verdicts: ReadonlyMap<string, Verdict>, of: string): Judged {
  const finding = of.startsWith('finding.')
    ? topic.findings[of.slice('finding.'.length)]
    : undefined;
  const others = rulingLevels.flatMap((level) => {
    const verdict = level === 'stop' ? undefined : verdicts.get(`${of}.${level}`);
    return verdict ? [[rank(level), verdict] as const] : [];
  });
  return {
    stop: verdicts.get(`${of}.stop`),
    firm: verdicts.get(`${of}.firm`),
    stopOpen: rank(finding?.stopOpen ?? 'unknown'),
    others,
  };
}

function rankIn({ stop, firm, stopOpen, others }: Judged, lane: number): number {
  const isFirm = firm === undefined || firm.certain[lane] === 1;
  if (stop?.certain[lane] === 1 && isFirm) return rank('stop');
  let found = stop?.possible[lane] === 1 ? stopOpen : 0;
  for (const [level, { possible }] of others) {
    if (level > found && possible[lane] === 1) found = level;
  }
  return found;
}

const isFixedJudged = ({ stop, firm, others }: Judged): boolean =>
  (stop?.fixed ?? true) && (firm?.fixed ?? true) && others.every(([, { fixed }]) => fixed);

/** The overall level of each lane: the gravest of its limits and findings. */
export function ranker(
  { program, compiled, run }: Setting,
  verdicts: ReadonlyMap<string, Verdict>,
  states: ReadonlyMap<string, State>,
): Uint8Array {
  const to = newTruths(program).yes;
  const asked = [...states].flatMap(([of, state]) =>
    state === 'not-asked' ? [] : [judgedIn(compiled.topic, verdicts, of)],
  );
  const ground = isGrounded(compiled, run, states) ? rank('ok') : rank('unknown');
  const least = asked
    .filter(isFixedJudged)
    .reduce((worst, each) => Math.max(worst, rankIn(each, 0)), ground);
  const moving = asked.filter((each) => !isFixedJudged(each));
  program.steps.push((count) => {
    for (let i = 0; i < count; i += 1) {
      let worst = least;
      for (const each of moving) worst = Math.max(worst, rankIn(each, i));
      to[i] = worst;
    }
  });
  return to;
}
