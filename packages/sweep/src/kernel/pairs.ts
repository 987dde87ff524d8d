import {
  type Inputs,
  inBase,
  type NumberInput,
  parametersOn,
  type Topic,
} from '@tarebook/rules/engine';
import { askEngine, type Found } from './found';
import { areHeld, type Marks, marksOf, weakened } from './marks';
import { type KinJudge, kinsReady, type ReadyKins } from './pair-loop';
import { type Places, placesOf, type Side } from './places';
import type { Program } from './program';
import { sumsIn, throughSides } from './setting';
import type { Sides } from './sides';
import { type Special, specialize } from './specialize';
import { staged } from './staged';

/** What is asked of every pair of a topic's rows and columns. */
export type KernelAsked = {
  readonly topic: Topic;
  readonly sides: Sides;
  readonly asOf: string;
  readonly program: Program;
  /** Also which limit binds and what is left of it, or the level alone. */
  readonly withRoom: boolean;
  /** Cells of the case’s lists that are another number with each draw. */
  readonly moving?: ReadonlySet<NumberInput> | undefined;
};

/** A row, by its place among all, with every column, or with those that have no level yet. */
export type RowByRow = (row: number, into: Found, isRest?: boolean) => void;

/** Programs of kins that are kept; with another load mostly the same ones are asked for. */
const mostKept = 4096;

/** Makes a topic ready for rows and columns that are set in one case after another. */
export function pairing({ topic, sides, asOf, program, withRoom }: KernelAsked) {
  const outputs = [...program.verdict, ...(withRoom ? program.room : [])];
  const all = staged(program.steps, outputs);
  const parameters = inBase(parametersOn(topic, asOf), asOf);
  /** A program for kins of which so much is the same, made once. */
  const specials = new Map<string, Special>();
  const numbers = new WeakMap<Marks, number>();
  const byText = new Map<string, number>();
  const short = (marks: Marks): number => {
    const known = numbers.get(marks);
    if (known !== undefined) return known;
    const text = [...marks.values()].map((each) => Object.values(each).join(' ')).join();
    const found = byText.get(text) ?? byText.size;
    byText.set(text, found);
    numbers.set(marks, found);
    return found;
  };
  const specialFor = (marks: readonly Marks[]): Special => {
    const key = marks.map(short).join(' ');
    const before = specials.get(key);
    if (before) return before;
    if (specials.size >= mostKept) specials.clear();
    const made = specialize(all, outputs, (ref) => marks.find((each) => each.has(ref))?.get(ref));
    specials.set(key, made);
    return made;
  };

  /**
   * Rows and columns, ready to be set in one case after another. What a case was given judges until
   * the next one comes.
   */
  function over(rows: Places, columns: Places): (facts: Inputs) => RowByRow {
    const setting = { topic, sides, parameters };
    const whole = throughSides(all, setting, { rows, columns });
    const { kept, run } = whole;
    /** What held of a kin in every case so far, and what is ready for two kins by it. */
    const held = new Map<string, { readonly marks: Marks; readonly times: number }>();
    const onLists = (side: Side | 'case') =>
      new Map([...kept[side]].filter(([ref]) => whole.byLists.has(ref)));
    const moving = { case: onLists('case'), rows: onLists('rows'), columns: onLists('columns') };
    const readied = new Map<string, { readonly by: readonly Marks[]; readonly kins: ReadyKins }>();
    const marksFor = (side: Side | 'case', at: number, from: number, size: number): Marks => {
      const key = `${side} ${at}`;
      const times = whole.times();
      const before = held.get(key);
      // What does not move with the lists is what it was when these marks were found.
      const moved = before?.times === times ? moving[side] : kept[side];
      const isStill = before !== undefined && areHeld(before.marks, kept[side], moved, from, size);
      const marks = isStill
        ? before.marks
        : weakened(before?.marks, marksOf(kept[side], from, size));
      held.set(key, { marks, times });
      return marks;
    };
    const marked = (side: Side, { kin }: Places) =>
      kin.map((each, at) => ({ at, kin: each, marks: marksFor(side, at, each.from, each.size) }));
    type Marked = ReturnType<typeof marked>[number];
    const judgeOf = (ofCase: Marks, row: Marked, column: Marked): KinJudge => {
      const key = `${row.at} ${column.at}`;
      const by = [ofCase, row.marks, column.marks];
      const before = readied.get(key);
      const isStill = before?.by.every((each, at) => each === by[at]) === true;
      const kins =
        before && isStill ? before.kins : kinsReady(specialFor(by), whole, row.kin, column.kin);
      if (!isStill) readied.set(key, { by, kins });
      kins.refresh();
      return kins.judge;
    };
    return (facts) => {
      const sums = sumsIn(setting, facts, { rows, columns });
      if (!sums || !run(facts, sums)) return (_, into) => into.levels.fill(askEngine);
      const ofCase = marksFor('case', 0, 0, 1);
      const columnKins = marked('columns', columns);
      /** Made once the first of a kin is asked for, so that whoever is looked at comes first. */
      const places = new Map<
        number,
        { readonly judges: () => readonly KinJudge[]; readonly at: number }
      >();
      for (const row of marked('rows', rows)) {
        let made: readonly KinJudge[] | undefined;
        const judges = (): readonly KinJudge[] => {
          made ??= columnKins.map((column) => judgeOf(ofCase, row, column));
          return made;
        };
        row.kin.members.forEach((member, at) => {
          places.set(member, { judges, at });
        });
      }
      return (row, into, isRest) => {
        const place = places.get(row);
        if (!place) throw new Error(`There is no row ${row}.`);
        for (const judge of place.judges()) judge(place.at, into, isRest);
      };
    };
  }

  return {
    /** Rows or columns as they are told; they serve for one case after another. */
    places: (side: Side, inputs: readonly Inputs[]): Places => placesOf(topic, sides, side, inputs),
    over,
  };
}
