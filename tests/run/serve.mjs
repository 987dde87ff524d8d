// The built notebook on this machine, for looking at.
import { connect } from 'node:net';
import { join } from 'node:path';
import { giveUp, root } from './shared.mjs';

/** The port that PORT asks for, once nothing else answers there. */
export async function freePort() {
  const asked = process.env.PORT ?? '4173';
  const port = Number(asked);
  if (!/^\d+$/.test(asked) || port < 1 || port > 65_535) {
    giveUp(`PORT is “${asked}”; give a whole number from 1 to 65535.`, 2);
  }
  const answers = await new Promise((resolve) => {
    const socket = connect({ port, host: 'localhost', autoSelectFamily: true });
    socket.setTimeout(2000, () => resolve(true));
    socket.once('connect', () => resolve(true));
    socket.once('error', () => resolve(false));
  });
  if (answers) giveUp(taken(port));
  return port;
}

const taken = (port) =>
  `Port ${port} is taken by another program; set PORT to another number, such as PORT=${port + 1}.`;

/** An address that is short enough to be typed from a wall. */
const shortAddress = {
  name: 'short-address',
  configurePreviewServer({ middlewares }) {
    middlewares.use('/join', (_, response) => {
      response.writeHead(302, { location: '/#/class/join/-/at-once' }).end();
    });
  },
};

/** Serves notebook/dist; resolves with the server once it listens. */
export async function serve(port) {
  const { preview } = await import('vite');
  const { relayBeside } = await import('../../notebook/relay/relay.mjs');
  const on = (host, from, strictPort, plugins = []) =>
    preview({
      root: join(root, 'notebook'),
      logLevel: 'error',
      plugins,
      preview: { port: from, strictPort, host, open: false },
    });
  // For a class, and while it runs: the same page on an address that learners' phones reach.
  const forLearners = async (address) => {
    const server = await on(address, port + 1, false, [shortAddress]);
    const { port: own } = server.httpServer.address();
    return {
      server: server.httpServer,
      url: `http://${address}:${own}/`,
      close: () => server.close(),
    };
  };
  try {
    const server = await on('127.0.0.1', port, true);
    relayBeside(server.httpServer, forLearners);
    return server;
  } catch (problem) {
    const used = problem.code === 'EADDRINUSE' || /in use/.test(problem.message);
    return giveUp(used ? taken(port) : `The notebook cannot be served: ${problem.message}`);
  }
}
