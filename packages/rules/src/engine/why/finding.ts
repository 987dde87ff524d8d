import { type Interval, rounded, unitOf } from '../../quantity';
import { capital, listed } from '../answer/phrases';
import type { Ends, FindingAnswer, Step } from '../answer/shapes';
import { type RulingLevel, rulingLevels, rulingsAt } from '../condition/rules';
import { conditionFrom } from '../condition/text';
import type { Condition, Finding, Topic } from '../define/shapes';
import { type Chain, cite, named, stepNamed, tell } from './chain';
import { notAsked } from './limit';

type Leaf = Extract<Condition, { readonly fact: string }>;

const operators: Readonly<Record<string, string>> = {
  greaterThan: 'above',
  greaterThanInclusive: 'at or above',
  lessThan: 'below',
  lessThanInclusive: 'at or below',
  equal: 'the same as',
  notEqual: 'other than',
};

type Standing = 'holds' | 'fails' | 'open';

/** A parameter written in % and a share kept as a fraction are compared as what they are. */
function inBase({ lo, hi, unit }: Ends): Interval {
  const factor = unit === '' ? 1 : unitOf(unit).factor;
  return { lo: lo * factor, hi: hi * factor };
}

/** How one comparison stands by the values in the trace. */
function standing(chain: Chain, leaf: Leaf): Standing {
  const left = stepNamed(chain, leaf.fact);
  const { value, operator } = leaf;
  if (typeof value === 'object' && 'fact' in value) {
    const right = stepNamed(chain, value.fact);
    if (!left?.ends || !right?.ends) return 'open';
    return compared(operator, inBase(left.ends), inBase(right.ends));
  }
  const said = left?.value.replace(/ \(not said\)$/, '');
  if (left === undefined || said === undefined || said === 'unknown') return 'open';
  const words: readonly string[] = typeof value === 'string' ? [value] : value;
  const among = left.among ?? [said];
  const isOne = words.includes(among[0] ?? '');
  if (among.some((word) => words.includes(word) !== isOne)) return 'open';
  return isOne === (operator === 'equal' || operator === 'in') ? 'holds' : 'fails';
}

function compared(operator: string, { lo: al, hi: ah }: Interval, right: Interval): Standing {
  const a = { lo: rounded(al), hi: rounded(ah) };
  const b = { lo: rounded(right.lo), hi: rounded(right.hi) };
  const same = a.lo === a.hi && b.lo === b.hi && a.lo === b.lo;
  const apart = a.hi < b.lo || b.hi < a.lo;
  const tests: Readonly<Record<string, readonly [holds: boolean, fails: boolean]>> = {
    greaterThan: [a.lo > b.hi, a.hi <= b.lo],
    greaterThanInclusive: [a.lo >= b.hi, a.hi < b.lo],
    lessThan: [a.hi < b.lo, a.lo >= b.hi],
    lessThanInclusive: [a.hi <= b.lo, a.lo > b.hi],
    equal: [same, apart],
    notEqual: [apart, same],
  };
  const [holds, fails] = tests[operator] ?? [false, false];
  return holds ? 'holds' : fails ? 'fails' : 'open';
}

function overall(chain: Chain, condition: Condition): Standing {
  if ('fact' in condition) return standing(chain, condition);
  const [parts, strong] = 'all' in condition ? [condition.all, 'fails'] : [condition.any, 'holds'];
  const found = parts.map((each) => overall(chain, each));
  if (found.some((each) => each === strong)) return strong === 'fails' ? 'fails' : 'holds';
  if (found.includes('open')) return 'open';
  return strong === 'fails' ? 'holds' : 'fails';
}

/** The comparisons that make a condition hold, fail or stay open: the fewest that do. */
function deciding(chain: Chain, condition: Condition): readonly Leaf[] {
  if ('fact' in condition) return [condition];
  const parts = 'all' in condition ? condition.all : condition.any;
  const stands = overall(chain, condition);
  const alike = parts.filter((each) => overall(chain, each) === stands);
  const oneIsEnough =
    ('all' in condition && stands === 'fails') || ('any' in condition && stands === 'holds');
  return (oneIsEnough ? alike.slice(0, 1) : alike).flatMap((each) => deciding(chain, each));
}

const silent = / \(not said\)$/;

/** “Electric brakes” is answered yes; a yes/no formula holds or does not. */
function answered(step: Step): string {
  const quoted = `“${step.label}”`;
  if (step.value.startsWith('unknown')) {
    return silent.test(step.value) ? `nobody answered ${quoted}` : `${quoted} is unknown`;
  }
  if (step.kind === 'decision') return `${quoted} comes to “${step.value}”`;
  if (step.kind !== 'formula') return `${quoted} is answered “${step.value.replace(silent, '')}”`;
  return `${quoted} ${step.value === 'yes' ? 'holds' : 'does not hold'}`;
}

/** “the tongue’s share of the trailer (9.1 %) is below the least usual share (10 %)” */
function comparison(chain: Chain, leaf: Leaf): string {
  const left = stepNamed(chain, leaf.fact);
  if (!left) return '';
  const { value } = leaf;
  if (typeof value !== 'object' || !('fact' in value)) return answered(left);
  const stands = standing(chain, leaf);
  const is = stands === 'holds' ? 'is' : stands === 'fails' ? 'is not' : 'may be';
  const operator = operators[leaf.operator] ?? leaf.operator;
  return `${named(chain, leaf.fact)} ${is} ${operator} ${named(chain, value.fact)}`;
}

/** What goes without saying: a default that nobody named, and that something known is known. */
function isIdle(chain: Chain, leaf: Leaf): boolean {
  const step = stepNamed(chain, leaf.fact);
  if (!step || standing(chain, leaf) === 'open') return false;
  const isDefault = step.kind === 'fact' && silent.test(step.value);
  return isDefault || (step.value === 'yes' && (step.is?.startsWith('known(') ?? false));
}

/** The condition that a finding's level came from; for `ok`, those that do not hold. */
function conditionsOf(declared: Finding, level: FindingAnswer['level']): readonly Condition[] {
  const at = (each: RulingLevel) =>
    rulingsAt(declared, each).map(({ when }) => conditionFrom(when));
  if (level === 'ok' || level === 'not-asked') return rulingLevels.flatMap(at);
  const own = at(level);
  return level === 'unknown' || own.length === 0 ? [...at('stop'), ...own] : own;
}

export type AskedFinding = {
  readonly topic: Topic;
  readonly declared: Finding;
  readonly finding: FindingAnswer;
  readonly chain: Chain;
};

function leavesOf({ declared, finding, chain }: AskedFinding): readonly Leaf[] {
  const all = conditionsOf(declared, finding.level).flatMap((each) => deciding(chain, each));
  const seen = new Set<string>();
  const leaves = all.filter((leaf) => {
    const key = comparison(chain, leaf);
    return !seen.has(key) && seen.add(key);
  });
  const telling = leaves.filter((leaf) => !isIdle(chain, leaf));
  return telling.length > 0 ? telling : leaves;
}

/** One sentence: what is found, and the comparisons that decide it. */
export function findingShort(asked: AskedFinding): string {
  const { finding, declared, topic, chain } = asked;
  if (finding.level === 'not-asked') {
    const by = declared.askedBy ?? declared.askedByKnown ?? [];
    return notAsked(topic, finding.label, by);
  }
  const because = leavesOf(asked).map((leaf) => comparison(chain, leaf));
  const head = finding.wrong.replace(/\.$/, '');
  return because.length === 0 ? `${head}.` : `${head}, since ${listed(because)}.`;
}

/** What is compared, from its facts up; the comparisons; and what follows, with the source. */
export function findingFull(asked: AskedFinding): void {
  const { finding, chain } = asked;
  if (finding.level === 'not-asked') {
    chain.sentences.push(findingShort(asked));
    return;
  }
  const leaves = leavesOf(asked);
  for (const { fact, value } of leaves) {
    tell(chain, fact);
    if (typeof value === 'object' && 'fact' in value) tell(chain, value.fact);
  }
  const because = leaves.map((leaf) => comparison(chain, leaf));
  if (because.length > 0) chain.sentences.push(`${capital(listed(because))}.`);
  chain.sentences.push(`${finding.says.replace(/\.$/, '')}${cite(chain, finding.source)}.`);
}
