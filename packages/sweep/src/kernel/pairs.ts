import type { Inputs } from '@tarebook/rules/engine';
import { askEngine, type Found, type Judge, judgeInBlocks, roomFor } from './blocks';
import { byForm, type Entry, entryOf, type Like, type Side } from './form';
import { type KernelAsked, programFor } from './kernel';
import type { Program } from './program';
import { NotHeld } from './values';

/** One row or column: what it is like, and its inputs when they are wanted. */
export type Place = { readonly entry: Entry; readonly inputs: () => Inputs };

export const placeOf = (
  { topic, sides }: KernelAsked,
  side: Side,
  inputs: () => Inputs,
): Place => ({ entry: entryOf(topic, sides, side, inputs()), inputs });

/** From so many pairs of two forms on, met one time or another, a kernel pays for its making. */
const worthMaking = 200;

/** Every pair of some rows with all columns, a row at a time. */
export type RowByRow = (row: number, into: Found) => void;

/** How a program is run over rows and columns of its forms. */
export type Runner = (program: Program, rows: Like, columns: Like, withRoom: boolean) => Judge;

type Part = { readonly columns: Like; readonly judge: Judge | undefined; readonly found: Found };

/**
 * Programs by the forms of a row and a column, made once; of what no kernel can hold, and of pairs
 * too few for one, the engine is asked.
 */
export function pairing(asked: KernelAsked, run: Runner = judgeInBlocks, least = worthMaking) {
  const programs = new Map<string, Program | undefined>();
  const met = new Map<string, number>();
  const programOf = (rows: Like, columns: Like): Program | undefined => {
    const key = `${rows.form} | ${columns.form}`;
    if (programs.has(key)) return programs.get(key);
    const pairs = (met.get(key) ?? 0) + rows.places.length * columns.places.length;
    met.set(key, pairs);
    if (pairs < least) return undefined;
    const made = newProgram(rows, columns);
    programs.set(key, made);
    return made;
  };
  const newProgram = (rows: Like, columns: Like): Program | undefined => {
    try {
      return programFor(asked, rows, columns);
    } catch (problem) {
      if (problem instanceof NotHeld) return undefined;
      throw problem;
    }
  };
  return (rows: readonly Place[], columns: readonly Place[]): RowByRow => {
    const { topic, sides, withRoom } = asked;
    const columnForms = byForm(topic, sides, 'columns', columns);
    const places = new Map<number, { readonly parts: readonly Part[]; readonly at: number }>();
    for (const like of byForm(topic, sides, 'rows', rows)) {
      const parts = columnForms.map((other): Part => {
        const program = programOf(like, other);
        const judge = program && run(program, like, other, withRoom);
        return { columns: other, judge, found: roomFor(other.places.length) };
      });
      like.places.forEach((place, at) => {
        places.set(place, { parts, at });
      });
    }
    return (row, into) => {
      const place = places.get(row);
      if (!place) throw new Error(`There is no row ${row}.`);
      for (const part of place.parts) {
        if (part.judge) {
          part.judge(place.at, part.found);
          scatter(part, into);
        } else for (const column of part.columns.places) into.levels[column] = askEngine;
      }
    };
  };
}

/** What was found for columns of one form, each in its own place. */
function scatter({ columns: { places }, found }: Part, into: Found): void {
  for (let i = 0; i < places.length; i += 1) {
    const to = places[i] ?? 0;
    into.levels[to] = found.levels[i] ?? askEngine;
    into.bindings[to] = found.bindings[i] ?? -1;
    into.leftLo[to] = found.leftLo[i] ?? 0;
    into.leftHi[to] = found.leftHi[i] ?? 0;
  }
}
