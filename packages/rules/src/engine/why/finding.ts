import { type Interval, rounded, unitOf } from '../../quantity';
import type { Ends, FindingAnswer, Step } from '../answer/shapes';
import { type RulingLevel, rulingLevels, rulingsAt } from '../condition/rules';
import { conditionFrom } from '../condition/text';
import type { Condition, Finding, Topic } from '../define/shapes';
import { message } from '../words/message';
import type { Said, Sayable } from '../words/value';
import { type Chain, cite, named, stepNamed, tell } from './chain';
import { notAsked } from './limit';

type Leaf = Extract<Condition, { readonly fact: string }>;

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
  const among = left?.among ?? [];
  if (among.length === 0) return 'open';
  const words: readonly string[] = typeof value === 'string' ? [value] : value;
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

/** “Electric brakes” is answered yes; a yes/no formula holds or does not. */
function answered({ kind, messages, among = [], status }: Step): Said {
  const { label, value } = messages;
  const [only, more] = among;
  if (only === undefined || more !== undefined) {
    return kind === 'decision'
      ? message('decided', { label, value })
      : message(status === 'silent' ? 'nobody-answered' : 'is-unknown', { label });
  }
  if (kind === 'decision') return message('decided', { label, value });
  if (kind !== 'formula') return message('answered', { label, value: { option: only } });
  return message(only === 'yes' ? 'holds' : 'does-not-hold', { label });
}

/** “the tongue’s share of the trailer (9.1 %) is below the least usual share (10 %)” */
function comparison(chain: Chain, leaf: Leaf): Sayable | undefined {
  const left = stepNamed(chain, leaf.fact);
  if (!left) return undefined;
  const { value, operator } = leaf;
  if (typeof value !== 'object' || !('fact' in value)) return answered(left);
  const stands = standing(chain, leaf);
  const [a, b] = [named(chain, leaf.fact), named(chain, value.fact)];
  return message('compared', { a, b, operator, stands });
}

/** What goes without saying: a default that nobody named, and that something known is known. */
function isIdle(chain: Chain, leaf: Leaf): boolean {
  const step = stepNamed(chain, leaf.fact);
  if (!step || standing(chain, leaf) === 'open') return false;
  const isDefault = step.kind === 'fact' && step.status === 'silent';
  return isDefault || (step.tests === true && step.among?.join() === 'yes');
}

/** The conditions that a finding's level came from, of which those that hold; for `ok`, those that do not. */
function conditionsOf(
  chain: Chain,
  declared: Finding,
  level: FindingAnswer['level'],
): readonly Condition[] {
  const at = (each: RulingLevel) =>
    rulingsAt(declared, each).map(({ when }) => conditionFrom(when));
  if (level === 'ok' || level === 'not-asked') return rulingLevels.flatMap(at);
  const own = at(level).filter((each, _, all) => {
    const isSure = all.some((other) => overall(chain, other) === 'holds');
    return !isSure || overall(chain, each) === 'holds';
  });
  return level === 'unknown' || own.length === 0 ? [...at('stop'), ...own] : own;
}

export type AskedFinding = {
  readonly topic: Topic;
  readonly declared: Finding;
  readonly finding: FindingAnswer;
  readonly chain: Chain;
};

function leavesOf({ declared, finding, chain }: AskedFinding): readonly Leaf[] {
  const all = conditionsOf(chain, declared, finding.level).flatMap((each) => deciding(chain, each));
  const seen = new Set<string>();
  const leaves = all.filter((leaf) => {
    const key = JSON.stringify(comparison(chain, leaf) ?? null);
    return !seen.has(key) && seen.add(key);
  });
  const telling = leaves.filter((leaf) => !isIdle(chain, leaf));
  return telling.length > 0 ? telling : leaves;
}

const reasons = (chain: Chain, leaves: readonly Leaf[]): readonly Sayable[] =>
  leaves.flatMap((leaf) => comparison(chain, leaf) ?? []);

/** What is found, and the comparisons that decide it. */
export function findingShort(asked: AskedFinding): Said {
  const { finding, chain } = asked;
  if (finding.level === 'not-asked') return notAsked(asked);
  const because = reasons(chain, leavesOf(asked));
  const found = message('sentences', { of: [finding.messages.wrong] });
  return because.length === 0
    ? found
    : message('sentences', { of: [found, message('reasons', { of: because, source: null })] });
}

/** What is compared, from its facts up; the comparisons; and what follows, with the source. */
export function findingFull(asked: AskedFinding): void {
  const { finding, chain } = asked;
  if (finding.level === 'not-asked') {
    chain.sentences.push(notAsked(asked));
    return;
  }
  const leaves = leavesOf(asked);
  for (const { fact, value } of leaves) {
    tell(chain, fact);
    if (typeof value === 'object' && 'fact' in value) tell(chain, value.fact);
  }
  const because = reasons(chain, leaves);
  const source = cite(chain, finding.source);
  if (because.length > 0) chain.sentences.push(message('reasons', { of: because, source }));
  const { wrong, because: why, do: todo } = finding.messages;
  chain.sentences.push(
    message('sentences', { of: [wrong, why, todo].flatMap((each) => each ?? []) }),
  );
}
