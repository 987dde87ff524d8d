import { towFit } from '@tarebook/rules';
import {
  answerNow,
  declaredUnit,
  type FactsGiven,
  levels,
  type Topic,
} from '@tarebook/rules/engine';
import type { Entry } from './catalogue';
import { inputsOf } from './kernel/inputs';
import { askEngine, roomFor } from './kernel/pair-loop';
import { pairing } from './kernel/pairs';
import { type Program, programOf } from './kernel/program';
import { towSides } from './kernel/sides';

/** Every vehicle against every trailer, in the setting of one case. */
export type SweepAsked = {
  readonly topic?: Topic;
  /** All that is of neither: occupants, hitch, what is loaded. */
  readonly facts: FactsGiven;
  readonly asOf: string;
  readonly trailers: readonly Entry[];
  /** Which limit binds and what is left of it, beside the verdict. */
  readonly withRoom: boolean;
  /** The topic's program, where it is at hand; else it is made first. */
  readonly program?: Program;
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

/**
 * Makes trailers ready once, and gives what judges some vehicles with all of them: pair by pair, each
 * as `answer` judges it. Kernels do what they are sure of; the rest is asked of the engine.
 */
export function sweeping(asked: SweepAsked) {
  const { topic = towFit, asOf, trailers, withRoom } = asked;
  const facts = settingOf(asked.facts);
  const program = asked.program ?? programOf(topic, towSides);
  const { places, over } = pairing({ topic, sides: towSides, asOf, program, withRoom });
  const read = (entries: readonly Entry[]) => entries.map((each) => inputsOf(topic, each.facts));
  const setting = inputsOf(topic, facts);
  const columns = places('columns', read(trailers));
  const limits = Object.entries(topic.limits).map(([id, { limit }]) => {
    const unit = declaredUnit(topic, limit) ?? '';
    return { id, unit: unit === '%' ? '1' : unit };
  });
  const outcomes = levels.map((level) => topic.outcomes[level].id);

  const byEngine = (vehicle: Entry, trailer: Entry): Pair => {
    const answer = answerNow(topic, {
      facts: { ...facts, ...vehicle.facts, ...trailer.facts },
      asOf,
    });
    const { outcome, binding } = answer;
    const left = answer.limits.find(({ id }) => id === binding)?.headroom ?? null;
    return { vehicle: vehicle.name, trailer: trailer.name, outcome, binding, left };
  };

  return function* sweep(vehicles: readonly Entry[]): Generator<Pair> {
    const row = over(places('rows', read(vehicles)), columns)(setting);
    const found = roomFor(trailers.length);
    for (const [at, vehicle] of vehicles.entries()) {
      row(at, found);
      for (const [to, trailer] of trailers.entries()) {
        const level = found.levels[to] ?? askEngine;
        if (level === askEngine) {
          yield byEngine(vehicle, trailer);
          continue;
        }
        const limit = withRoom ? limits[found.bindings[to] ?? -1] : undefined;
        yield {
          vehicle: vehicle.name,
          trailer: trailer.name,
          outcome: outcomes[level] ?? '',
          binding: limit?.id ?? null,
          left: limit
            ? { lo: found.leftLo[to] ?? 0, hi: found.leftHi[to] ?? 0, unit: limit.unit }
            : null,
        };
      }
    }
  };
}
