import {
  type Compiled,
  type Condition,
  conditionRules,
  declaredUnit,
  type Finding,
  factsBelow,
  fullName,
  type Limit,
  levels,
  roomName,
} from '@tarebook/rules/engine';
import { unitOf } from '@tarebook/rules/quantity';
import type { Reckoning } from './formulas';
import type { Graph, Ref } from './graph';
import { bitOf } from './truths';
import { NotHeld, type NumberSteps } from './values';

/** A truth between what it is at the least and at the most: they differ only where it is in doubt. */
type Bounds = { readonly least: Ref; readonly most: Ref };

/** Is it certainly so, could it be so; each in its bounds. */
type Asked = { readonly certain: Bounds; readonly possible: Bounds };

/** What comes out, step by step: numbers for levels, limits and what is left. */
export type VerdictSteps = {
  /** The level at the least and at the most; where they differ the engine must be asked. */
  readonly least: Ref;
  readonly most: Ref;
  /** The place of the binding limit among the topic's, -1 where none binds; `unsure` where the engine must be asked. */
  readonly binding: Ref;
  readonly left: { readonly lo: Ref; readonly hi: Ref };
  readonly unsure: Ref;
};

type RulingLevel = 'unknown' | 'if' | 'care';
type Levels = Readonly<Record<'stop' | RulingLevel, Ref>>;

const rank = (level: (typeof levels)[number]): number => levels.indexOf(level);

export function verdictSteps(g: Graph, compiled: Compiled, of: Reckoning): VerdictSteps {
  const { topic } = compiled;
  const never = g.truth(false);
  const level = (at: number): Ref => g.constant(at);
  const sure = (is: Ref): Bounds => ({ least: is, most: is });
  const doubted = (is: Ref, doubt: Ref): Bounds => ({ least: is, most: g.or(is, doubt) });

  const factorOf = (name: string): number => {
    const unit = compiled.formulas.get(name)?.formula.unit ?? declaredUnit(topic, name) ?? '';
    const kept = unit === '%' ? '1' : unit;
    return kept === '' || kept === 'yes-no' ? 1 : unitOf(kept).factor;
  };
  /** In the declared unit, to a millionth. */
  const endsOf = (name: string): NumberSteps => {
    const found = of.number(name);
    const factor = g.constant(factorOf(name));
    return { ...found, lo: g.round(g.div(found.lo, factor)), hi: g.round(g.div(found.hi, factor)) };
  };

  const compareNumbers = (operator: string, a: NumberSteps, b: NumberSteps): Asked => {
    const same = g.and(g.same(a.lo, a.hi), g.same(b.lo, b.hi), g.same(a.lo, b.lo));
    const apart = g.or(g.less(a.hi, b.lo), g.less(b.hi, a.lo));
    const tests: Readonly<Record<string, readonly [certain: Ref, possible: Ref]>> = {
      greaterThan: [g.less(b.hi, a.lo), g.less(b.lo, a.hi)],
      greaterThanInclusive: [g.notAbove(b.hi, a.lo), g.notAbove(b.lo, a.hi)],
      lessThan: [g.less(a.hi, b.lo), g.less(a.lo, b.hi)],
      lessThanInclusive: [g.notAbove(a.hi, b.lo), g.notAbove(a.lo, b.hi)],
      equal: [same, g.not(apart)],
      notEqual: [apart, g.not(same)],
    };
    const found = tests[operator];
    if (!found) throw new NotHeld(`A kernel compares no numbers by “${operator}”.`);
    const [certain, possible] = found;
    return inBounds(certain, possible, g.or(a.loose, b.loose));
  };

  /** What is loose may be certain though it does not look so, and impossible though it looks possible. */
  const inBounds = (certain: Ref, possible: Ref, loose: Ref): Asked => ({
    certain: { least: certain, most: g.or(certain, g.and(loose, possible)) },
    possible: { least: g.and(possible, g.or(g.not(loose), certain)), most: possible },
  });

  const compareWords = (name: string, operator: string, words: readonly string[]): Asked => {
    const value = of.value(name);
    const isNot = operator === 'notEqual' || operator === 'notIn';
    if (value.kind === 'truth') {
      const [yes, no] = [words.includes('yes'), words.includes('no')];
      if (yes === no) throw new NotHeld(`“${name}” is held against ${words.join(', ')}.`);
      const [is, isOther] = yes === isNot ? [value.no, value.yes] : [value.yes, value.no];
      return inBounds(g.and(is, g.not(isOther)), is, value.loose);
    }
    if (value.kind !== 'among') throw new NotHeld(`“${name}” is no choice.`);
    const wanted = words.reduce((bits, word) => bits | bitOf(value, word), 0);
    const outside = g.bitsAre(g.bitsAnd(value.may, g.bits(~wanted)), 0);
    const within = g.not(g.bitsAre(g.bitsAnd(value.may, g.bits(wanted)), 0));
    return isNot
      ? { certain: sure(g.not(within)), possible: sure(g.not(outside)) }
      : { certain: sure(g.and(outside, within)), possible: sure(within) };
  };

  const joined = (how: 'and' | 'or', all: readonly Asked[]): Asked => {
    const each = (pick: (asked: Asked) => Ref): Ref => g[how](...all.map(pick));
    return {
      certain: { least: each((a) => a.certain.least), most: each((a) => a.certain.most) },
      possible: { least: each((a) => a.possible.least), most: each((a) => a.possible.most) },
    };
  };

  const asked = (condition: Condition): Asked => {
    if ('all' in condition) return joined('and', condition.all.map(asked));
    if ('any' in condition) return joined('or', condition.any.map(asked));
    const { fact, operator, value } = condition;
    if (typeof value === 'string') return compareWords(fact, operator, [value]);
    if ('fact' in value) return compareNumbers(operator, endsOf(fact), endsOf(value.fact));
    return compareWords(fact, operator, value);
  };

  const conditions = new Map<string, Asked>();
  for (const { name, conditions: when } of conditionRules(topic)) conditions.set(name, asked(when));
  const impossible: Asked = { certain: sure(never), possible: sure(never) };
  const rule = (name: string): Asked => conditions.get(name) ?? impossible;

  /** Whether a limit or finding is asked at all. */
  const isAsked = ({ askedBy, askedByKnown, askedWhen }: Partial<Finding>): Bounds => {
    const parts: Bounds[] = [];
    for (const name of askedByKnown ?? []) {
      const { is, doubt } = of.known(name);
      parts.push(doubted(is, doubt));
    }
    if (askedWhen !== undefined) {
      const { yes, no, loose } = of.truth(askedWhen);
      parts.push({ least: g.and(yes, g.or(g.not(loose), g.not(no))), most: yes });
    }
    if (askedBy) parts.push(sure(g.or(...askedBy.map(of.given))));
    return {
      least: g.and(...parts.map(({ least }) => least)),
      most: g.and(...parts.map(({ most }) => most)),
    };
  };

  /** By level, whether it comes to that one or to a graver one beside it. */
  const levelsAt = (id: string, how: Partial<Finding & Limit>, at: keyof Bounds): Levels => {
    const isSo = (name: string, question: keyof Asked): Ref => rule(`${id}.${name}`)[question][at];
    const firm = how.relief ? isSo('firm', 'certain') : g.truth(true);
    const open = how.stopOpen ?? 'unknown';
    const may = (name: RulingLevel): Ref =>
      g.or(isSo(name, 'possible'), name === open ? isSo('stop', 'possible') : never);
    return {
      stop: g.and(isSo('stop', 'certain'), firm),
      unknown: may('unknown'),
      if: may('if'),
      care: may('care'),
    };
  };
  const whileAsked = (is: Ref, found: Levels): Levels => ({
    stop: g.and(is, found.stop),
    unknown: g.and(is, found.unknown),
    if: g.and(is, found.if),
    care: g.and(is, found.care),
  });

  const subjects = [
    ...Object.entries(topic.limits).map(([id, limit]) => [`limit.${id}`, limit] as const),
    ...Object.entries(topic.findings).map(([id, finding]) => [`finding.${id}`, finding] as const),
  ].map(([id, how]) => {
    const is = isAsked(how);
    return {
      ...{ id, how, is },
      least: whileAsked(is.least, levelsAt(id, how, 'least')),
      most: whileAsked(is.most, levelsAt(id, how, 'most')),
    };
  });

  const isTold = (name: string): Ref => g.or(...[...factsBelow(compiled, name)].map(of.given));
  const endless = g.constant(Infinity);
  const closed = ({ lo, hi, loose }: NumberSteps): Bounds => {
    const is = g.and(g.less(g.constant(-Infinity), lo), g.less(hi, endless));
    return doubted(is, g.and(g.not(is), loose));
  };
  const all = (...parts: readonly Bounds[]): Bounds => ({
    least: g.and(...parts.map(({ least }) => least)),
    most: g.and(...parts.map(({ most }) => most)),
  });
  const rested = (name: string): Bounds => {
    const { is, doubt } = of.restsOnKnown(of.value(name));
    return doubted(is, doubt);
  };

  /** Whether a verdict may rest on it: a limit compared by what was told, a finding that settles. */
  const grounds = subjects.map(({ id, how, is, least, most }): Bounds => {
    if ('used' in how) {
      const isRated =
        factsBelow(compiled, how.limit).size === 0 ? g.truth(true) : isTold(how.limit);
      const compared = g.and(isTold(how.used), isRated);
      const ends = [endsOf(how.used), endsOf(how.limit)].map(closed);
      return all(is, sure(compared), rested(how.limit), ...ends);
    }
    if (how.decision !== undefined) throw new NotHeld(`“${id}” is a decision.`);
    if (!how.settles) return sure(never);
    const names = [...(how.askedBy ?? []), ...(how.askedByKnown ?? [])].map(of.known);
    const any: Bounds = {
      least: g.or(...names.map((each) => each.is)),
      most: g.or(...names.map(({ is: known, doubt }) => g.or(known, doubt))),
    };
    // Once nothing of it can be unknown it tells; while a graver level is in doubt it may.
    const tells: Bounds = {
      least: g.or(least.stop, g.not(most.unknown)),
      most: g.or(most.stop, g.not(least.unknown)),
    };
    return all(is, any, tells);
  });
  const grounded: Bounds = {
    least: g.or(...grounds.map(({ least }) => least)),
    most: g.or(...grounds.map(({ most }) => most)),
  };

  const overall = (at: keyof Bounds, isOne: Ref, isGrounded: Ref): Ref => {
    const any = (name: keyof Levels): Ref => g.or(...subjects.map((each) => each[at][name]));
    const isOpen = g.or(any('unknown'), g.not(isOne), g.not(isGrounded));
    const by = (name: keyof Levels, otherwise: Ref): Ref =>
      g.choose(name === 'unknown' ? isOpen : any(name), level(rank(name)), otherwise);
    return by('stop', by('unknown', by('if', by('care', level(0)))));
  };
  const isOne: Bounds = {
    least: g.or(...subjects.map(({ is }) => is.least)),
    most: g.or(...subjects.map(({ is }) => is.most)),
  };

  let binding = g.constant(-1);
  let best = g.constant(-Infinity);
  let left = { lo: g.constant(0), hi: g.constant(0) };
  let unsure: Ref = never;
  Object.entries(topic.limits).forEach(([id, limit], at) => {
    const subject = subjects[at];
    if (!subject) return;
    const [used, rating] = [endsOf(limit.used), endsOf(limit.limit)];
    const [room, full] = [endsOf(roomName(id)), endsOf(fullName(id))];
    const may = all(subject.is, rested(limit.limit), closed(used));
    const share = g.round(g.choose(g.notAbove(room.lo, g.constant(0)), endless, full.hi));
    const isFuller = g.or(g.same(binding, g.constant(-1)), g.less(best, share));
    const isIt = g.and(may.least, isFuller);
    const loose = g.or(used.loose, rating.loose, room.loose, full.loose);
    unsure = g.or(unsure, g.and(may.most, g.or(g.not(may.least), loose)));
    binding = g.choose(isIt, g.constant(at), binding);
    best = g.choose(isIt, share, best);
    left = {
      lo: g.choose(isIt, g.round(g.add(rating.lo, g.neg(used.hi))), left.lo),
      hi: g.choose(isIt, g.round(g.add(rating.hi, g.neg(used.lo))), left.hi),
    };
  });

  return {
    least: overall('least', isOne.most, grounded.most),
    most: overall('most', isOne.least, grounded.least),
    ...{ binding, left, unsure },
  };
}
