import type { Formula, Topic } from '../define/shapes';
import { allFormulas } from '../define/topic';
import { checkFormulaUnit } from '../formula/dimensions';
import type { Node } from '../formula/grammar/nodes';
import { parseFormula } from '../formula/parse';
import type { Run } from '../formula/run';
import type { Inputs } from '../value/values';
import { anyFacts } from './any-facts';
import { fallbacksIn, testedIn } from './fallbacks-in';
import { proofLacking, standInLacking, tries } from './within';

type Note = (at: string, found: string, wanted: string) => void;

/**
 * What is not told is a range, an assumption or not asked. A formula that takes something else in its
 * place, such as a usual weight, says `within` what it stays whatever is told later; where that is no
 * more than one fact by itself, its declared least and most say so.
 */
export function checkFallbacks(topic: Topic, note: Note, reckoned?: (inputs: Inputs) => Run): void {
  if (!reckoned) return;
  const all = allFormulas(topic);
  const formulas = new Map([...all].map(([name, { is }]) => [name, parseFormula(is)]));
  const units = new Map([...all].map(([name, { unit }]) => [name, unit]));
  const trial = { reckon: reckoned, facts: anyFacts(topic, tries), topic };
  for (const [name, { within, unit }] of all) {
    const node = formulas.get(name);
    if (!node || unit === 'yes-no') continue;
    const at = `formulas ${name}`;
    const names = testedIn(node);
    if (within && names.length === 0) {
      note(at, 'it says `within` and falls back on nothing', 'leave `within` out');
    } else if (within) {
      const ends = readEnds(topic, units, at, within, unit, note);
      const lacking = ends && reckonable(() => proofLacking(trial, name, names, ends, unit));
      if (lacking) note(at, ...lacking);
    } else {
      const found = fallbacksIn(node, { formulas, untold: [] });
      const bare = found.find(({ fact }) => fact === undefined);
      const lacking = bare
        ? notSaid(bare.untold)
        : found.map((each) => reckonable(() => standInLacking(trial, each))).find(Boolean);
      if (lacking) note(at, ...lacking);
    }
  }
}

const notSaid = (untold: readonly string[]): readonly [string, string] => [
  `it takes something else where ${[...new Set(untold)].join(', ')} is not told`,
  'say `within: [least, most]` what it stays by what is told',
];

/** What asks a catalogue or the sun is reckoned only where these were brought. */
function reckonable<T>(tried: () => T): T | undefined {
  try {
    return tried();
  } catch (problem) {
    if (!(problem instanceof Error)) throw problem;
    return undefined;
  }
}

function readEnds(
  topic: Topic,
  units: ReadonlyMap<string, string>,
  at: string,
  within: NonNullable<Formula['within']>,
  unit: string,
  note: Note,
): readonly [Node, Node] | undefined {
  try {
    const [least, most] = within;
    const ends = [parseFormula(least), parseFormula(most)] as const;
    for (const end of ends) checkFormulaUnit(end, unit, topic, units);
    return ends;
  } catch (problem) {
    if (!(problem instanceof Error)) throw problem;
    note(`${at} within`, problem.message, 'two formulas of its own unit');
    return undefined;
  }
}
