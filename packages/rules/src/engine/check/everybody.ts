import type { Facts, ForEverybody, Topic, Worked } from '../define/shapes';
import { isSettled } from '../formula/reckon';
import type { Run } from '../formula/run';
import type { Inputs } from '../value/values';
import { holesIn } from '../words/fill';
import { readFacts } from './facts';
import { sayProblem } from './messages';
import { nearest } from './near';

type Note = (at: string, found: string, wanted: string) => void;

/** “name a fact”, or the one that was meant. */
function meant(name: string, options: readonly string[], otherwise: string): string {
  const near = nearest(name, options);
  return near === undefined ? otherwise : `did you mean “${near}”`;
}

const isResult = (value: Facts[string]): value is string =>
  typeof value === 'string' && value.startsWith('=');

/** Facts that a rule set presumes, read as those of a case are; those that follow from a result apart. */
function checkGiven(
  topic: Topic,
  known: ReadonlySet<string>,
  at: string,
  given: Facts,
  note: Note,
): Inputs {
  const written: Record<string, Facts[string]> = {};
  for (const [id, value] of Object.entries(given)) {
    if (!Object.hasOwn(topic.facts, id)) {
      note(at, `“${id}” is no fact`, meant(id, Object.keys(topic.facts), 'name a fact'));
    } else if (isResult(value)) {
      const name = value.slice(1).trim();
      if (!known.has(name))
        note(at, `${id} is given as “${value}”`, meant(name, [...known], 'name a value'));
    } else written[id] = value;
  }
  const { inputs, problems } = readFacts(topic, written);
  for (const problem of problems) note(at, sayProblem(problem), 'give it as a case writes it');
  return inputs;
}

/** How facts are told after “if”: of a choice by its options, of a figure with its hole. */
function checkClauses(topic: Topic, at: string, { clauses = {} }: ForEverybody, note: Note): void {
  for (const [id, words] of Object.entries(clauses)) {
    const fact = topic.facts[id];
    if (!fact) {
      note(
        at,
        `its clauses name “${id}”, which is no fact`,
        meant(id, Object.keys(topic.facts), 'name a fact'),
      );
      continue;
    }
    if (fact.kind === 'quantity' || fact.kind === 'rows') {
      if (typeof words !== 'string' || !holesIn(words).includes('value'))
        note(
          at,
          `its clause of ${id} has no “{value}”`,
          'write one text, with {value} for the figure',
        );
      continue;
    }
    if (typeof words === 'string') continue;
    const options = fact.kind === 'choice' ? fact.options : ['yes', 'no'];
    for (const option of Object.keys(words)) {
      if (!options.includes(option))
        note(
          at,
          `its clauses name “${option}”, which is no option of ${id}`,
          meant(option, options, options.join(', ')),
        );
    }
  }
}

/** A worked example stands by itself: of what it is given, every figure that it names is known. */
function checkWorked(at: string, { says }: Worked, run: Run, note: Note): void {
  for (const name of holesIn(says)) {
    if (!isSettled(run.value(name), run.isOpen))
      note(
        at,
        `it is never said, since “{${name}}” does not follow from what it is given`,
        'give what it is worked out from',
      );
  }
}

/**
 * What is said to everybody: a fact, an option or a figure misspelled here would take a branch or a
 * sentence out of the answer, and nobody would miss it.
 *
 * @param reckon reckons facts; absent while something else is wrong that they cannot be reckoned by
 */
export function checkEverybody(
  topic: Topic,
  known: ReadonlySet<string>,
  note: Note,
  reckon?: (inputs: Inputs) => Run,
): void {
  for (const [id, each] of Object.entries(topic.everybody ?? {})) {
    const at = `everybody ${id}`;
    checkGiven(topic, known, `${at} given`, each.given ?? {}, note);
    checkClauses(topic, at, each, note);
    for (const [place, worked] of (each.fromTold ?? []).entries()) {
      checkGiven(topic, known, `${at} fromTold ${place + 1}`, worked.given ?? {}, note);
    }
    if (!each.worked) continue;
    const inputs = checkGiven(topic, known, `${at} worked`, each.worked.given ?? {}, note);
    const isOwn = !Object.values(each.worked.given ?? {}).some(isResult);
    if (reckon && isOwn) checkWorked(`${at} worked`, each.worked, reckon(inputs), note);
  }
}
