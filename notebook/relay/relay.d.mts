import type { Server } from 'node:http';

export function addresses(): readonly string[];
export type Served = {
  readonly server: Server;
  readonly url: string;
  readonly close: () => Promise<unknown>;
};
export function relayBeside(server: Server, serveOn: (address: string) => Promise<Served>): void;
