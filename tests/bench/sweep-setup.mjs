// What the main thread and the second one of the bench have in common.
import { towFit } from '@tarebook/rules';
import { levels } from '@tarebook/rules/engine';
import { programAtHand, sweeping } from '@tarebook/sweep/many';
import wabt from 'wabt';
import { asOf, asTrailer, asVehicle, setting, trailers, vehicles } from './decision.mjs';

const { parseWat } = await wabt();
export function assemble(text) {
  const module = parseWat('pairs.wat', text, { simd: true });
  const { buffer } = module.toBinary({});
  module.destroy();
  return buffer;
}

/** Vehicles judged at once: a quarter of a million pairs, as `tarebook sweep` does. */
export const atOnce = 256;

/** A yard for all who judge it. */
export const yard = (rows, columns) => {
  const told = { vehicles: vehicles(rows), trailers: trailers(columns) };
  return {
    told,
    vehicles: told.vehicles.map(asVehicle),
    trailers: told.trailers.map(asTrailer),
  };
};

/**
 * The sweep of a yard: `run(from, to, seen)` judges some vehicles, a part at a time.
 *
 * @param isReady vehicles are read before, as those of the loop by hand are
 */
export async function sweepOf({ vehicles: all, trailers: columns }, more, isReady = false) {
  const sweeper = sweeping({
    ...{ facts: setting, asOf, trailers: columns, withRoom: false },
    program: await programAtHand(towFit),
    ...more,
  });
  const part = (at, to) => all.slice(at, Math.min(at + atOnce, to));
  const ready = new Map();
  return (from, to, seen) => {
    for (let at = from; at < to; at += atOnce) {
      if (isReady && !ready.has(at)) ready.set(at, sweeper.ready(part(at, to)));
      seen(at, (ready.get(at)?.() ?? sweeper.judge(part(at, to))).levels);
    }
  };
}

/** 0 fits, 1 with care, 2 does not fit, 3 all else. */
export const shortOf = Uint8Array.from(levels, (level) =>
  Math.max(0, { ok: 0, care: 1, stop: 2 }[level] ?? 3),
);
