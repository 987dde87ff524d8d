import type { Facts, ForEverybody, Topic, Worked } from '../define/shapes';
import { isSettled } from '../formula/reckon';
import type { Run } from '../formula/run';
import type { Inputs } from '../value/values';
import { holesIn } from '../words/fill';
import { readFacts } from './facts';
import { described } from './given';
import { meant } from './near';
import { type Note, noting } from './noted';
import type { Problem } from './problem';
import { reckonable } from './tried';

const isResult = (value: Facts[string]): value is string =>
  typeof value === 'string' && value.startsWith('=');

/** Facts that a rule set presumes, read as those of a case are; those that follow from a result apart. */
function checkGiven(
  topic: Topic,
  known: ReadonlySet<string>,
  at: string,
  given: Facts,
  problems: Problem[],
): Inputs {
  const note = noting(problems);
  const written: Record<string, Facts[string]> = {};
  for (const [id, value] of Object.entries(given)) {
    if (!Object.hasOwn(topic.facts, id)) {
      note('not-a-fact', at, id, meant(id, Object.keys(topic.facts)));
    } else if (isResult(value)) {
      const name = value.slice(1).trim();
      if (!known.has(name)) note('not-a-value', `${at} ${id}`, name, meant(name, known));
    } else written[id] = value;
  }
  const read = readFacts(topic, written);
  for (const each of read.problems) problems.push({ ...each, fact: `${at} ${each.fact}` });
  return read.inputs;
}

/** How facts are told after “if”: of a choice by its options, of a figure with its hole. */
function checkClauses(topic: Topic, at: string, { clauses = {} }: ForEverybody, note: Note): void {
  for (const [id, words] of Object.entries(clauses)) {
    const fact = topic.facts[id];
    if (!fact) {
      note('not-a-fact', `${at} clauses`, id, meant(id, Object.keys(topic.facts)));
      continue;
    }
    if (fact.kind === 'quantity' || fact.kind === 'rows') {
      if (typeof words !== 'string' || !holesIn(words).includes('value'))
        note('clause-without-value', at, described(words), { of: id });
      continue;
    }
    if (typeof words === 'string') continue;
    const options = fact.kind === 'choice' ? fact.options : ['yes', 'no'];
    for (const option of Object.keys(words)) {
      if (!options.includes(option))
        note('not-an-option', `${at} clauses`, option, {
          ...{ of: id, options },
          ...meant(option, options),
        });
    }
  }
}

/** A worked example stands by itself: of what it is given, every figure that it names is known. */
function checkWorked(at: string, { says }: Worked, run: Run, note: Note): void {
  for (const name of holesIn(says)) {
    if (!isSettled(run.value(name), run.isOpen)) note('worked-from-nothing', at, name);
  }
}

/**
 * What is said to everybody: a fact, an option or a figure misspelled here would take a branch or a
 * sentence out of the answer, and nobody would miss it.
 *
 * @param problems takes down what is wrong
 * @param reckon reckons facts; absent while something else is wrong that they cannot be reckoned by
 */
export function checkEverybody(
  topic: Topic,
  known: ReadonlySet<string>,
  problems: Problem[],
  reckon?: (inputs: Inputs) => Run,
): void {
  const note = noting(problems);
  for (const [id, each] of Object.entries(topic.everybody ?? {})) {
    const at = `everybody ${id}`;
    checkGiven(topic, known, `${at} given`, each.given ?? {}, problems);
    checkClauses(topic, at, each, note);
    for (const [place, worked] of (each.fromTold ?? []).entries()) {
      checkGiven(topic, known, `${at} fromTold ${place + 1}`, worked.given ?? {}, problems);
    }
    if (!each.worked) continue;
    const inputs = checkGiven(topic, known, `${at} worked`, each.worked.given ?? {}, problems);
    const isOwn = !Object.values(each.worked.given ?? {}).some(isResult);
    const run = reckon && isOwn ? reckonable(() => reckon(inputs)) : undefined;
    if (run) checkWorked(`${at} worked`, each.worked, run, note);
  }
}
