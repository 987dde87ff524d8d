import { towFit } from '@tarebook/rules';
import {
  answerNow,
  declaredUnit,
  type FactsGiven,
  levels,
  type Topic,
} from '@tarebook/rules/engine';
import type { Entry } from './catalogue';
import { askEngine, roomFor } from './kernel/blocks';
import { inputsOf } from './kernel/kernel';
import { pairing, placeOf } from './kernel/pairs';

/** Every vehicle against every trailer, in the setting of one case. */
export type SweepAsked = {
  readonly topic?: Topic;
  /** All that is of neither: occupants, hitch, what is loaded. */
  readonly facts: FactsGiven;
  readonly asOf: string;
  readonly trailers: readonly Entry[];
  /** Which limit binds and what is left of it, beside the verdict. */
  readonly withRoom: boolean;
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

const sides = { rows: 'vehicle.', columns: 'trailer.' };

/** What of a case stays: its lists, and facts of neither vehicle nor trailer. */
export const settingOf = (facts: FactsGiven): FactsGiven =>
  Object.fromEntries(
    Object.entries(facts).filter(
      ([id, given]) =>
        Array.isArray(given) || !(id.startsWith(sides.rows) || id.startsWith(sides.columns)),
    ),
  );

/**
 * Makes trailers ready once, and gives what judges some vehicles with all of them: pair by pair, each
 * as `answer` judges it. Kernels do what they are sure of; the rest is asked of the engine.
 */
export function sweeping(asked: SweepAsked) {
  const { topic = towFit, asOf, trailers, withRoom } = asked;
  const facts = settingOf(asked.facts);
  const kernel = { topic, sides, asOf, inputs: inputsOf(topic, facts), withRoom };
  const place = (side: 'rows' | 'columns', entry: Entry) =>
    placeOf(kernel, side, () => inputsOf(topic, entry.facts));
  const columns = trailers.map((trailer) => place('columns', trailer));
  const judge = pairing(kernel);
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
    const row = judge(
      vehicles.map((vehicle) => place('rows', vehicle)),
      columns,
    );
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
