import {
  type Draw,
  drawsOf,
  type FactsGiven,
  filler,
  type Input,
  type Inputs,
  levels,
  type NumberInput,
  type SpreadOptions,
  spread,
  type Topic,
} from '@tarebook/rules/engine';
import { towFit } from '@tarebook/rules/tow-fit';
import { askEngine, roomFor } from './kernel/found';
import { machine } from './kernel/in-memory';
import { inputsOf, sideReader } from './kernel/inputs';
import { factsOfSide } from './kernel/places';
import { programOf } from './kernel/program';
import { towSides } from './kernel/sides';
import { tilesIn } from './kernel/tiles';
import { type SweepAsked, type Swept, settingOf } from './sweep';

/** So many draws are kept ready of each range at a time. */
const drawsAtOnce = 256;

/** Of each level, in their order, in how many draws each pair came to it: vehicle × trailers + trailer. */
export type Hits = readonly Uint32Array[];

type Mutable = { -readonly [K in keyof NumberInput]: NumberInput[K] };

/** Somebody's facts, and what of them is drawn. */
type Drawn = {
  readonly inputs: Inputs;
  /** The inputs that are drawn, each put to another number with every draw. */
  readonly moving: readonly NumberInput[];
  /** Begins with the first draw again. */
  readonly begin: () => void;
  /** Draws the next so many of every range. */
  readonly fill: (count: number) => void;
  /** Puts every range to where it was drawn. */
  readonly pin: (draw: number) => void;
};

/** One even number of 32 bits out of a seed and a name: what is drawn of a vehicle hangs on no other. */
function seedOf(seed: number, name: string): number {
  let hash = (seed ^ 0x811c9dc5) >>> 0;
  for (let i = 0; i < name.length; i += 1) {
    hash = Math.imul(hash ^ name.charCodeAt(i), 0x01000193) >>> 0;
  }
  hash = Math.imul(hash ^ (hash >>> 16), 0x85ebca6b);
  return (hash ^ (hash >>> 13)) >>> 0;
}

/** Inputs of one's own, of which those that are drawn can be put to a number. */
function withOwn(inputs: Inputs, draws: readonly Draw[]) {
  const own = new Map<string, Input>(inputs);
  const at = draws.map(({ told: { fact, row, column } }): Mutable => {
    const input = own.get(fact);
    if (input?.kind === 'number') {
      const made: Mutable = { ...input };
      own.set(fact, made);
      return made;
    }
    const rows = input?.kind === 'rows' ? input.rows.map((each) => ({ ...each })) : [];
    const cells = rows[(row ?? 1) - 1];
    const cell = cells?.[column ?? ''];
    if (input?.kind !== 'rows' || !cells || !cell) {
      throw new Error(`There is no “${fact}” to be drawn.`);
    }
    const made: Mutable = { ...cell };
    cells[column ?? ''] = made;
    own.set(fact, { ...input, rows });
    return made;
  });
  return { own, at };
}

function drawnFrom(topic: Topic, inputs: Inputs, facts: FactsGiven, seed: number): Drawn {
  const draws = drawsOf(topic, inputs, facts);
  if (draws.length === 0)
    return { inputs, moving: [], begin: () => {}, fill: () => {}, pin: () => {} };
  const { own, at } = withOwn(inputs, draws);
  const lanes = draws.map(() => new Float64Array(drawsAtOnce));
  let next = filler(draws, seed);
  return {
    inputs: own,
    moving: at,
    begin: () => {
      next = filler(draws, seed);
    },
    fill: (count) => next(lanes, count),
    pin: (draw) => {
      at.forEach((input, i) => {
        const value = lanes[i]?.[draw] ?? 0;
        input.lo = value;
        input.hi = value;
      });
    },
  };
}

/**
 * How every pair comes out over draws of whatever of it is a range: each draw is a yard of exact figures,
 * judged by the same kernels as any other. What is drawn of a vehicle, a trailer or the case hangs on
 * its name and the seed alone, so that it is the same in whichever part and on whichever machine. A pair
 * that no kernel can tell in some draw is drawn by the engine.
 */
export function chancing(
  asked: SweepAsked,
  { draws, seed }: SpreadOptions,
): (vehicles: readonly Swept[]) => Hits {
  const { topic = towFit, asOf, trailers } = asked;
  const facts = settingOf(asked.facts);
  const program = asked.program ?? programOf(topic, towSides);
  const ofCase = drawnFrom(topic, inputsOf(topic, facts), facts, seedOf(seed, 'case'));
  const moving = new Set(ofCase.moving);
  const kernel = { topic, sides: towSides, asOf, program, withRoom: false, moving };
  const tiles = tilesIn(kernel, asked.assemble && machine(asked.assemble));
  const reader = (side: 'rows' | 'columns', called: string) => {
    const inputs = sideReader(topic, factsOfSide(topic, towSides, side));
    return (each: Swept): Drawn =>
      drawnFrom(topic, inputs(each.facts), each.facts, seedOf(seed, `${called} ${each.name}`));
  };
  const [vehicleDrawn, trailerDrawn] = [reader('rows', 'vehicle'), reader('columns', 'trailer')];

  return (vehicles) => {
    // Every part is of the same draws of the case.
    ofCase.begin();
    const columns = trailers.map(trailerDrawn);
    const rows = vehicles.map(vehicleDrawn);
    const all = [ofCase, ...columns, ...rows];
    const [columnInputs, rowInputs] = [columns, rows].map((each) =>
      each.map(({ inputs }) => inputs),
    );
    const pairs = vehicles.length * trailers.length;
    const hits: Hits = levels.map(() => new Uint32Array(pairs));
    const room = roomFor(pairs);
    const unsure = new Uint8Array(pairs);
    for (let done = 0; done < draws; done += drawsAtOnce) {
      const count = Math.min(drawsAtOnce, draws - done);
      for (const { fill } of all) fill(count);
      for (let draw = 0; draw < count; draw += 1) {
        for (const { pin } of all) pin(draw);
        tiles(ofCase.inputs, columnInputs ?? [])(rowInputs ?? [])(room);
        tally(room.levels, hits, unsure);
      }
    }
    for (let at = unsure.indexOf(1); at >= 0; at = unsure.indexOf(1, at + 1)) {
      const vehicle = vehicles[Math.floor(at / trailers.length)];
      const trailer = trailers[at % trailers.length];
      const pair = { ...facts, ...vehicle?.facts, ...trailer?.facts };
      const named = seedOf(seed, `pair ${vehicle?.name} ${trailer?.name}`);
      const { outcomes } = spread(topic, { facts: pair, asOf }, { draws, seed: named });
      levels.forEach((level, i) => {
        const chance = outcomes[topic.outcomes[level].id]?.chance ?? 0;
        const into = hits[i];
        if (into) into[at] = Math.round(chance * draws);
      });
    }
    return hits;
  };
}

function tally(found: Uint8Array, hits: Hits, unsure: Uint8Array): void {
  for (let at = 0; at < unsure.length; at += 1) {
    const level = found[at] ?? askEngine;
    const into = hits[level];
    if (into) into[at] = (into[at] ?? 0) + 1;
    else unsure[at] = 1;
  }
}
