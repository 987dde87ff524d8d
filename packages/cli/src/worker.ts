import { readFile, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { BadInput, named } from './files';
import {
  answering,
  mostTries,
  type PartJob,
  planFile,
  queueAt,
  queueName,
  vehiclesFile,
} from './queue';
import { sayBeside } from './said';
import { planOf, vehiclesOf } from './shared-plan';
import { jobOf, type PartDone, type SweepPlan } from './sweep-job';
import { partThere } from './sweep-parts';

/** Whoever holds a part says so again and again; so long after the last time another may take it. */
const lockMilliseconds = 20_000;
const lookMilliseconds = 5_000;

async function planIn(folder: string): Promise<SweepPlan> {
  const found = await stat(folder).catch(() => undefined);
  if (!found) throw new BadInput(`${named(folder)}: this machine does not see the folder.`);
  const file = join(folder, planFile);
  return planOf(await readFile(file, 'utf8'), file, folder);
}

/** Takes parts of sweeps from a queue until it is told to stop; the one at hand is done first. */
export async function work(address: string): Promise<void> {
  const { library, connection, shown } = await queueAt(address);
  /** The sweep at hand, made ready once. */
  let ready: { readonly run: string; readonly does: Promise<PartDone> } | undefined;
  let done = 0;
  const part = async ({ folder, run, part: at }: PartJob): Promise<void> => {
    if (await partThere(folder, at)) return;
    if (ready?.run !== run) ready = { run, does: planIn(folder).then(jobOf) };
    const does = await ready.does.catch((problem: unknown) => {
      ready = undefined;
      throw problem;
    });
    const file = join(folder, vehiclesFile(at));
    await does(at, vehiclesOf(await readFile(file, 'utf8'), file));
    done += 1;
  };
  const worker = new library.Worker<PartJob>(queueName, ({ data }) => part(data), {
    connection,
    lockDuration: lockMilliseconds,
    stalledInterval: lookMilliseconds,
    maxStalledCount: mostTries,
    autorun: false,
  });
  // A server that goes away is waited for.
  worker.on('error', () => {});
  worker.on('failed', (job, problem) => {
    const says = problem.message.split('\n')[0];
    sayBeside(`part ${job?.data.part}: ${says}`).catch(() => {});
  });
  await answering(worker.waitUntilReady(), shown).catch((problem: unknown) => {
    worker.close(true).catch(() => {});
    throw problem;
  });
  await sayBeside(`Taking parts of sweeps from ${shown}; Ctrl-C ends after the one at hand.`);
  const stop = () => {
    worker.close().catch(() => {});
  };
  process.once('SIGINT', stop);
  process.once('SIGTERM', stop);
  await worker.run();
  await sayBeside(`${done.toLocaleString('en-US')} parts done.`);
}
