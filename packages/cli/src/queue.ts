import { once } from 'node:events';
import { connect } from 'node:net';
import type { ConnectionOptions } from 'bullmq';
import { BadInput, named } from './files';

export const queueName = 'tarebook-sweep';

/** One part of a sweep, as it stands in the queue: where all machines see its folder, and which part. */
export type PartJob = { readonly folder: string; readonly run: string; readonly part: number };

/** A part is tried so often, and then its sweep ends with a report. */
export const mostTries = 3;

/** What stands in a shared folder beside the parts. */
export const planFile = 'plan.json';
export const vehiclesFile = (part: number): string => `${String(part).padStart(6, '0')}.in.json`;

const readySeconds = 10;

/** Once made, a queue waits for its server for good; so it is seen first that something is there. */
async function reached({ hostname, port }: URL, shown: string): Promise<void> {
  const socket = connect({ host: hostname, port: Number(port || 6379) });
  socket.setTimeout(readySeconds * 1000, () => socket.destroy(new Error('It is late.')));
  await once(socket, 'connect').catch(() => {
    throw new BadInput(
      `--queue ${shown}: no Redis answers there; start one, or look at the address.`,
    );
  });
  socket.destroy();
}

/** The queue's library is loaded by whoever has many machines, and by nobody else. */
export async function queueAt(address: string) {
  let url: URL;
  try {
    url = new URL(address);
  } catch {
    throw new BadInput(
      `--queue ${named(address)}: give an address, such as redis://localhost:6379.`,
    );
  }
  if (!['redis:', 'rediss:'].includes(url.protocol)) {
    throw new BadInput(`--queue ${named(address)}: give an address that begins with redis://.`);
  }
  const library = await import('bullmq').catch(() => undefined);
  if (!library) {
    throw new BadInput(
      '--queue: the packages bullmq and ioredis are not installed; run `npm install bullmq ioredis`.',
    );
  }
  // A password in the address is nobody's to read.
  const shown = `${url.protocol}//${url.host}`;
  await reached(url, shown);
  const connection: ConnectionOptions = { url: address, maxRetriesPerRequest: null };
  return { library, connection, shown };
}

/** Waits until the server answers; one that does not is told at once rather than waited for. */
export async function answering(ready: Promise<unknown>, shown: string): Promise<void> {
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<never>((_, reject) => {
    timer = setTimeout(
      () =>
        reject(
          new BadInput(
            `--queue ${shown}: no Redis answers there within ${readySeconds} seconds; start one, or look at the address.`,
          ),
        ),
      readySeconds * 1000,
    );
  });
  await Promise.race([ready, late]).finally(() => clearTimeout(timer));
}
