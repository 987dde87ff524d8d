import {
  answerNow,
  declaredUnit,
  type FactsGiven,
  levels,
  quickly,
  refuseUnlessParts,
  type Topic,
} from '@tarebook/rules/engine';
import { towFit } from '@tarebook/rules/tow-fit';
import type { Entry } from './catalogue';
import { askEngine, type Found, roomFor } from './kernel/found';
import { type Assemble, machine } from './kernel/in-memory';
import { inputsOf, sideReader } from './kernel/inputs';
import { factsOfSide } from './kernel/places';
import { type Program, programOf } from './kernel/program';
import { towSides } from './kernel/sides';
import { tiling } from './kernel/tiles';

/** What is asked of a vehicle or trailer in a sweep. */
export type Swept = Pick<Entry, 'name' | 'facts'>;

/** Every vehicle against every trailer, in the setting of one case. */
export type SweepAsked = {
  readonly topic?: Topic;
  /** All that is of neither: occupants, hitch, what is loaded. */
  readonly facts: FactsGiven;
  readonly asOf: string;
  readonly trailers: readonly Swept[];
  /** Which limit binds and what is left of it, beside the verdict. */
  readonly withRoom: boolean;
  /** The topic's program, where it is at hand; else it is made first. */
  readonly program?: Program | undefined;
  /** Where programs may be put into WebAssembly; else plain loops go through them. */
  readonly assemble?: Assemble | undefined;
};

/** One pair as it comes out. */
export type Pair = {
  readonly vehicle: string;
  readonly trailer: string;
  readonly outcome: string;
  readonly binding: string | null;
  /** What is left on the binding limit, in its unit; null where none binds. */
  readonly left: { readonly lo: number; readonly hi: number; readonly unit: string } | null;
};

/** What of a case stays: its lists, and facts of neither vehicle nor trailer. */
export const settingOf = (facts: FactsGiven): FactsGiven =>
  Object.fromEntries(
    Object.entries(facts).filter(
      ([id, given]) =>
        Array.isArray(given) || !(id.startsWith(towSides.rows) || id.startsWith(towSides.columns)),
    ),
  );

/** What judges some vehicles with all trailers, and what its figures stand for. */
export type Sweeper = {
  /**
   * Pairs vehicle by vehicle: what is of vehicle v and trailer t stands at v × trailers + t, until the
   * next are judged. Each comes out as `answer` judges it: kernels do what they are sure of, the rest is
   * asked of the engine.
   */
  readonly judge: (vehicles: readonly Swept[]) => Found;
  /** Reads vehicles once, and gives what judges them whenever it is asked. */
  readonly ready: (vehicles: readonly Swept[]) => () => Found;
  /** The outcome of each level, in the order of their figures. */
  readonly outcomes: readonly string[];
  /** The limit of each figure, and the unit of what is left on it. */
  readonly limits: readonly { readonly id: string; readonly unit: string }[];
  /** The same as text, pair by pair. */
  readonly pairs: (vehicles: readonly Swept[]) => Generator<Pair>;
};

/** Makes trailers ready once, for vehicles that come some at a time; no more is held than of those. */
export function sweeping(asked: SweepAsked): Sweeper {
  const parts = { facts: 'parts', asOf: 'text', trailers: 'list' } as const;
  refuseUnlessParts('asked', asked, parts, '{ facts, asOf, trailers, withRoom }');
  const { topic = towFit, asOf, trailers, withRoom } = asked;
  const facts = settingOf(asked.facts);
  const program = asked.program ?? programOf(topic, towSides);
  const read = (side: 'rows' | 'columns') => {
    const inputs = sideReader(topic, factsOfSide(topic, towSides, side));
    return (entries: readonly Swept[]) => entries.map((each) => inputs(each.facts));
  };
  const readRows = read('rows');
  const kernel = { topic, sides: towSides, asOf, program, withRoom };
  const by = asked.assemble && machine(asked.assemble);
  const tiles = tiling(kernel, inputsOf(topic, facts), read('columns')(trailers), by);
  const limits = Object.entries(topic.limits).map(([id, { limit }]) => {
    const unit = declaredUnit(topic, limit) ?? '';
    return { id, unit: unit === '%' ? '1' : unit };
  });
  const outcomes = levels.map((level) => topic.outcomes[level].id);
  const quick = quickly(topic, { asOf });

  const askedOfEngine = (vehicle: Swept, trailer: Swept, at: number, into: Found): void => {
    const pair = { ...facts, ...vehicle.facts, ...trailer.facts };
    if (!withRoom) {
      into.levels[at] = levels.indexOf(quick(pair).level);
      return;
    }
    const answer = answerNow(topic, { facts: pair, asOf });
    const left = answer.limits.find(({ id }) => id === answer.binding)?.headroom;
    into.levels[at] = outcomes.indexOf(answer.outcome);
    into.bindings[at] = limits.findIndex(({ id }) => id === answer.binding);
    into.leftLo[at] = left?.lo ?? 0;
    into.leftHi[at] = left?.hi ?? 0;
  };

  let room = roomFor(0);
  const ready = (vehicles: readonly Swept[]): (() => Found) => {
    const byTiles = tiles(readRows(vehicles));
    return () => judged(vehicles, byTiles);
  };
  const judge = (vehicles: readonly Swept[]): Found => ready(vehicles)();
  const judged = (vehicles: readonly Swept[], byTiles: (into: Found) => void): Found => {
    const count = vehicles.length * trailers.length;
    if (room.levels.length < count) room = roomFor(count);
    const found: Found = {
      levels: room.levels.subarray(0, count),
      bindings: room.bindings.subarray(0, count),
      leftLo: room.leftLo.subarray(0, count),
      leftHi: room.leftHi.subarray(0, count),
    };
    byTiles(found);
    const next = (from: number): number => found.levels.indexOf(askEngine, from);
    for (let at = next(0); at >= 0; at = next(at + 1)) {
      const vehicle = vehicles[Math.floor(at / trailers.length)];
      const trailer = trailers[at % trailers.length];
      if (vehicle && trailer) askedOfEngine(vehicle, trailer, at, found);
    }
    return found;
  };

  function* pairs(vehicles: readonly Swept[]): Generator<Pair> {
    const found = judge(vehicles);
    let at = 0;
    for (const vehicle of vehicles) {
      for (const trailer of trailers) {
        const limit = withRoom ? limits[found.bindings[at] ?? -1] : undefined;
        yield {
          vehicle: vehicle.name,
          trailer: trailer.name,
          outcome: outcomes[found.levels[at] ?? 0] ?? '',
          binding: limit?.id ?? null,
          left: limit
            ? { lo: found.leftLo[at] ?? 0, hi: found.leftHi[at] ?? 0, unit: limit.unit }
            : null,
        };
        at += 1;
      }
    }
  }

  return { judge, ready, outcomes, limits, pairs };
}
