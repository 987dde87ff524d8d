import type { Formula, Topic } from '../define/shapes';
import { allFormulas, namesOf } from '../define/topic';
import { checkFormulaUnit } from '../formula/dimensions';
import type { Node } from '../formula/grammar/nodes';
import { parseFormula } from '../formula/parse';
import type { Run } from '../formula/run';
import type { Inputs } from '../value/values';
import { anyFacts } from './any-facts';
import { fallbacksIn, testedIn } from './fallbacks-in';
import type { Note } from './noted';
import { noteFormula } from './told-of-formula';
import { reckonable } from './tried';
import {
  assumptionLacking,
  type Lacking,
  type Places,
  proofLacking,
  standInLacking,
  tries,
} from './within';

/** Something that is reckoned, with the texts of it in which something may stand in for a fact. */
type Reckoned = {
  readonly name: string;
  readonly at: string;
  readonly unit: string;
  readonly within?: Formula['within'];
  readonly assumes?: string;
  readonly nodes: readonly Node[];
  readonly places: Places;
};

const once: Places = ({ scope }) => [scope];

/** Formulas, and what simulations reckon at each of their steps; a state is also what is left of it. */
function allReckoned(topic: Topic): readonly Reckoned[] {
  const formulas = [...allFormulas(topic)].map(
    ([name, { is, unit, within, assumes }]): Reckoned => ({
      ...{ name, at: `formulas ${name}`, unit, within, nodes: [parseFormula(is)], places: once },
      ...(assumes !== undefined && { assumes }),
    }),
  );
  const simulated = Object.entries(topic.simulations ?? {}).flatMap(([id, { states, values }]) => {
    const steps: Places = ({ scope }) => scope.simulation(id).steps;
    const toTheEnd: Places = (run) => [...steps(run), run.scope.simulation(id).end];
    const of = (
      name: string,
      texts: readonly string[],
      places: Places,
      entry: Bounded,
    ): Reckoned => ({
      ...{ name, at: `simulations ${id} ${name}`, unit: entry.unit, within: entry.within },
      ...{ nodes: texts.map(parseFormula), places },
    });
    return [
      ...Object.entries(states).map(([name, state]) =>
        of(name, [state.start, state.next], toTheEnd, state),
      ),
      ...Object.entries(values).map(([name, value]) => of(name, [value.is], steps, value)),
    ];
  });
  return [...formulas, ...simulated];
}

type Bounded = Pick<Formula, 'unit' | 'within'>;

/**
 * What is not told is a range, an assumption or not asked. A formula that takes something else in its
 * place, such as a usual weight, says `within` what it stays whatever is told later; where that is no
 * more than one fact by itself, its declared least and most say so. So does what a simulation reckons.
 */
export function checkFallbacks(topic: Topic, note: Note, reckoned?: (inputs: Inputs) => Run): void {
  if (!reckoned) return;
  const all = allReckoned(topic);
  // A state is something else at each step.
  const formulas = new Map(
    all.flatMap(({ name, nodes: [node, ...more] }) =>
      node && more.length === 0 ? [[name, node] as const] : [],
    ),
  );
  const units = new Map(all.map(({ name, unit }) => [name, unit]));
  const trial = { reckon: reckoned, facts: anyFacts(topic, tries), topic };
  for (const { name, at, within, assumes, unit, nodes, places } of all) {
    if (unit === 'yes-no') continue;
    const names = nodes.flatMap(testedIn);
    if (within && names.length === 0) {
      note('within-of-nothing', at, within.join(', '));
    } else if (within?.[0] === '-unlimited' && within[1] === 'unlimited') {
      note('within-anything', at, within.join(', '));
    } else if (within) {
      const ends = readEnds(topic, units, at, within, unit, note);
      const lacking =
        ends && reckonable(() => proofLacking(trial, name, names, ends, unit, places));
      if (lacking) noteLacking(at, lacking, note);
    } else {
      const found = nodes.flatMap((node) => fallbacksIn(node, { formulas, untold: [] }));
      const bare = found.filter(({ fact }) => fact === undefined);
      const lacking = assumes
        ? assumptionLacking(trial, assumes, bare)
        : bare[0]
          ? notSaid(bare[0].untold)
          : found
              .map((each) => reckonable(() => standInLacking(trial, each, places)))
              .find(Boolean);
      if (lacking) noteLacking(at, lacking, note);
    }
  }
}

const noteLacking = (at: string, [code, found, beside]: NonNullable<Lacking>, note: Note): void =>
  note(code, at, found, beside);

const notSaid = (untold: readonly string[]): Lacking => [
  'not-said-within',
  [...new Set(untold)].join(', '),
];

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
    noteFormula(problem, `${at} within`, [...units.keys(), ...namesOf(topic)], note);
    return undefined;
  }
}
