import { Piscina } from 'piscina';
import { jobOf, type PartDone, type SweepPlan } from './sweep-job';

/** What does the parts of a sweep, so many of them at once. */
export type Doer = {
  readonly atOnce: number;
  readonly does: PartDone;
  readonly close: () => Promise<void>;
};

/** What is judged is soon forgotten: with little room a thread clears up as it goes. */
const youngMebibytes = 4;

/** What a thread holds: the rules and its programs, and some thousand bytes of each trailer. */
const oldMebibytes = (trailers: number): number => 112 + Math.ceil(trailers / 128);

export async function doerOf(plan: SweepPlan, threads: number): Promise<Doer> {
  if (threads === 1) {
    return { atOnce: 1, does: await jobOf(plan), close: async () => {} };
  }
  // Beside this very file, whatever the build calls it.
  const ending = import.meta.url.endsWith('.mjs') ? 'mjs' : 'js';
  const pool = new Piscina({
    filename: new URL(`./sweep-thread.${ending}`, import.meta.url).href,
    workerData: plan,
    minThreads: threads,
    maxThreads: threads,
    resourceLimits: {
      maxYoungGenerationSizeMb: youngMebibytes,
      maxOldGenerationSizeMb: oldMebibytes(plan.trailers.length),
    },
  });
  return {
    // One more waits ready for whoever is done first.
    atOnce: threads + 1,
    does: (at, vehicles) => pool.run({ at, vehicles }),
    close: () => pool.destroy(),
  };
}
