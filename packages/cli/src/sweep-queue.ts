import { randomUUID } from 'node:crypto';
import { rm } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import type { Swept } from '@tarebook/sweep/many';
import { BadInput } from './files';
import {
  answering,
  mostTries,
  type PartJob,
  planFile,
  queueAt,
  queueName,
  vehiclesFile,
} from './queue';
import type { SweepPlan } from './sweep-job';
import { type Counts, partThere } from './sweep-parts';
import type { Doer } from './sweep-threads';
import { writeBeside } from './write-beside';

/** So many parts wait in the queue or are being done. */
const partsAtOnce = 32;

const lookMilliseconds = 200;
/** Now and then the queue is asked as well: a server that was started anew may have forgotten. */
const looksBetweenAsking = 10;

const pause = (): Promise<void> => new Promise((done) => setTimeout(done, lookMilliseconds));

/**
 * Parts done by whatever machines take them. What counts is what stands in the folder that all of them
 * see; the queue only hands out.
 */
export async function queueDoer(plan: SweepPlan, address: string): Promise<Doer> {
  if (plan.folder === undefined) {
    throw new BadInput(
      '--queue hands out parts of a file; name it with --out, where all machines see it.',
    );
  }
  const folder = resolve(plan.folder);
  const { library, connection, shown } = await queueAt(address);
  const queue = new library.Queue<PartJob>(queueName, { connection });
  // A server that goes away is waited for.
  queue.on('error', () => {});
  await answering(queue.waitUntilReady(), shown).catch(async (problem: unknown) => {
    queue.disconnect().catch(() => {});
    throw problem;
  });
  await writeBeside(join(folder, planFile), JSON.stringify({ ...plan, folder }));
  const run = randomUUID();
  const idOf = (part: number): string => `${run}-${part}`;
  const hand = (part: number): Promise<unknown> =>
    queue.add(
      'part',
      { folder, run, part },
      {
        jobId: idOf(part),
        attempts: mostTries,
        removeOnComplete: true,
      },
    );

  /** Hands a part out again where the queue has lost it; tells what went wrong where it gave up. */
  const lookAfter = async (part: number, vehicles: readonly Swept[]): Promise<void> => {
    const job = await queue.getJob(idOf(part));
    if (!job) {
      if ((await partThere(folder, part)) === undefined) await hand(part);
    } else if (await job.isFailed()) {
      const of = `part ${part}, ${vehicles[0]?.name} to ${vehicles.at(-1)?.name}`;
      throw new BadInput(
        `${of}: given up after ${mostTries} tries; ${job.failedReason.split('\n')[0]} Once that is mended, the same command with --resume goes on.`,
      );
    }
  };

  const does = async (part: number, vehicles: readonly Swept[]): Promise<Counts> => {
    const into = join(folder, vehiclesFile(part));
    await writeBeside(into, JSON.stringify(vehicles));
    await hand(part);
    for (let look = 1; ; look += 1) {
      const counts = await partThere(folder, part);
      if (counts) {
        await rm(into, { force: true });
        return counts;
      }
      await pause();
      if (look % looksBetweenAsking === 0) await lookAfter(part, vehicles);
    }
  };

  return {
    atOnce: partsAtOnce,
    does,
    close: async () => {
      const own = await queue.getJobs(['waiting', 'delayed', 'failed']).catch(() => []);
      for (const job of own) if (job?.data.run === run) await job.remove().catch(() => {});
      await queue.close().catch(() => {});
    },
  };
}
