import { findUnit, sameDimension } from '../../quantity';
import { conditionRules } from '../condition/rules';
import { type Change, namesChanged } from '../define/changes';
import type { Condition, Topic } from '../define/shapes';
import { careName, declaredUnit } from '../define/topic';
import { type Compiled, compile } from '../formula/compile';
import type { Node } from '../formula/grammar/nodes';
import { below } from '../formula/kinds';
import { meant } from './near';
import type { Note } from './noted';

/** The names whose numbers go into a formula's own number; what only chooses a way does not. */
function numbersIn(node: Node): readonly string[] {
  switch (node.kind) {
    case 'name':
      return [node.id];
    case 'choose':
      return [...numbersIn(node.chosen), ...numbersIn(node.otherwise)];
    case 'compare':
    case 'both':
    case 'either':
    case 'not':
    case 'given':
    case 'known':
    case 'may':
      return [];
    default:
      return below(node).flatMap(numbersIn);
  }
}

/** The right-hand sides of a condition: what something is held against. */
function heldAgainst(condition: Condition): readonly string[] {
  if ('all' in condition) return condition.all.flatMap(heldAgainst);
  if ('any' in condition) return condition.any.flatMap(heldAgainst);
  const { value } = condition;
  return typeof value === 'object' && 'fact' in value ? [value.fact] : [];
}

/**
 * Every fact and column whose number goes into what a condition holds something against: a rating,
 * whatever else it may be used for.
 */
export function ratingsOf(topic: Topic, { formulas }: Compiled): ReadonlySet<string> {
  const found = new Set<string>();
  // What stands on a limit empty goes into its margin, and is no rating for that.
  for (const id of Object.keys(topic.limits)) found.add(careName(id));
  const visit = (name: string): void => {
    if (found.has(name)) return;
    found.add(name);
    const formula = formulas.get(name);
    if (formula) for (const each of numbersIn(formula.node)) visit(each);
  };
  for (const { conditions } of conditionRules(topic)) heldAgainst(conditions).forEach(visit);
  for (const [id, fact] of Object.entries(topic.facts)) {
    if (fact.kind === 'quantity' && fact.isRating) found.add(id);
  }
  return new Set([...found].filter((name) => !formulas.has(name)));
}

/** The unit in which a change is measured; '' for a switch. */
function measure(topic: Topic, change: Change): string {
  if (change.kind === 'set') return '';
  const name = change.kind === 'scale' ? change.shown : (namesChanged(change)[0] ?? '');
  return declaredUnit(topic, name) ?? '';
}

function alike(a: string, b: string): boolean {
  const [of, and] = [a, b].map((unit) => findUnit(unit));
  return (
    a === b || (of !== undefined && and !== undefined && sameDimension(of.dimension, and.dimension))
  );
}

function checkNames(topic: Topic, change: Change, at: string, note: Note): void {
  const fact = topic.facts[change.fact];
  const facts = Object.keys(topic.facts);
  if (!fact) note('not-a-fact', at, change.fact, meant(change.fact, facts));
  for (const name of namesChanged(change)) {
    if (declaredUnit(topic, name) === undefined) note('not-a-value', at, name);
  }
  const others = [change.onlyIf?.fact, change.unlessKnown?.fact, change.remind?.known];
  const more = [
    change.kind === 'shift' ? change.within?.of : undefined,
    change.kind === 'set' && 'sameAs' in change.to ? change.to.sameAs : undefined,
  ];
  for (const name of [...others, ...more]) {
    if (name !== undefined && !Object.hasOwn(topic.facts, name)) {
      note('not-a-fact', at, name, meant(name, facts));
    }
  }
  for (const id of change.rights ?? []) {
    if (!Object.hasOwn(topic.findings, id)) {
      note('not-a-finding', at, id, meant(id, Object.keys(topic.findings)));
    }
  }
  if (change.kind === 'scale' && !topic.formulas[change.shown]) {
    note('not-a-formula', at, change.shown, meant(change.shown, Object.keys(topic.formulas)));
  }
  if (change.kind === 'set' && 'option' in change.to) {
    const options =
      fact?.kind === 'choice' ? fact.options : fact?.kind === 'yes-no' ? ['yes', 'no'] : [];
    const { option } = change.to;
    if (!options.includes(option)) {
      note('not-an-option', at, option, {
        ...{ of: change.fact, options },
        ...meant(option, options),
      });
    }
  }
}

function checkWords(change: Change, at: string, note: Note): void {
  const rows = change.kind === 'leave' || ('column' in change && change.column !== undefined);
  const allowed = ['from', 'to', 'amount', ...(rows ? ['row'] : [])];
  for (const [, name = ''] of change.says.matchAll(/\{([^}]*)\}/g)) {
    if (!allowed.includes(name)) note('not-a-change-hole', at, name, { options: allowed });
  }
  if (change.source.cite.trim() === '') note('no-source', at, '');
  if ('step' in change && !(change.step > 0)) {
    note('no-step', at, `${change.step}`);
  }
}

/** What is wrong with the changes a topic proposes; above all, that one of them moves a rating. */
export function checkChanges(topic: Topic, note: Note): void {
  const { changes = [] } = topic;
  if (changes.length === 0) return;
  let ratings: ReadonlySet<string>;
  try {
    ratings = ratingsOf(topic, compile(topic));
  } catch {
    // Formulas that cannot be compiled are told by themselves.
    return;
  }
  const measures = new Map<number, string>();
  for (const change of changes) {
    const at = `changes ${change.fact}`;
    checkNames(topic, change, at, note);
    checkWords(change, at, note);
    for (const name of namesChanged(change)) {
      if (ratings.has(name)) {
        note('rating-changed', at, name);
      }
    }
    const unit = measure(topic, change);
    const before = measures.get(change.asks) ?? unit;
    measures.set(change.asks, before);
    if (!alike(before, unit)) {
      const [found, of] = [unit, before].map((each) => each || 'nothing');
      note('asks-in-two-units', at, found ?? '', { of: of ?? '', least: change.asks });
    }
  }
}
