// Guesses from learners' own phones to the trainer's window, while a lesson runs. The trainer's window
// asks for it over loopback; only then something listens on the address that the trainer picks, and
// it stops when that window turns it off or closes. What passes through is kept nowhere, but for the
// lesson, which whoever joins is handed while it runs.
//
//     learner ── code, who, guess ──► /relay/learner │ /relay/trainer ── guess ──► trainer
//             ◄── lesson, names taken, ──            │                ◄── lesson, reply, over ──
//                 taken down or not, over
import { randomInt } from 'node:crypto';
import { networkInterfaces } from 'node:os';
import { WebSocketServer } from 'ws';
import { allowance, caps, guessIn, joinCode, nameIn } from './caps.mjs';

const loopback = '127.0.0.1';

/** This machine's addresses that a phone may reach, loopback first. */
export function addresses() {
  const all = Object.values(networkInterfaces()).flatMap((each) => each ?? []);
  const reached = all.filter(({ family, internal }) => family === 'IPv4' && !internal);
  return [loopback, ...reached.map(({ address }) => address)];
}

const said = (socket, message) => {
  if (socket.readyState === socket.OPEN) socket.send(JSON.stringify(message));
};

function read(data) {
  try {
    return JSON.parse(String(data));
  } catch {
    return undefined;
  }
}

/** Only a page that this very server sent may open a line to it. */
const isOurs = ({ headers }) => headers.origin === `http://${headers.host}`;

/** Upgrades what asks for one path; everything else is cut off. */
function lines(server, path, most, joined) {
  const sockets = new WebSocketServer({
    noServer: true,
    maxPayload: most,
    perMessageDeflate: false,
  });
  server.on('upgrade', (request, socket, head) => {
    socket.on('error', () => socket.destroy());
    if (request.url !== path || !isOurs(request) || sockets.clients.size >= caps.windows) {
      socket.end('HTTP/1.1 403 Forbidden\r\nConnection: close\r\n\r\n');
      return;
    }
    sockets.handleUpgrade(request, socket, head, (client) => {
      // What is too large or no message ends this line alone.
      client.on('error', () => client.terminate());
      joined(client);
    });
  });
  return sockets;
}

/** The learners' end, for as long as it is open. */
function learnersEnd(server, trainer, code) {
  let at = 0;
  let open = false;
  let lesson;
  let next = 0;
  const joined = new Map();
  /** Which learner each window is, by the window. */
  const names = new Map();
  const mayBeWrong = allowance(caps.wrongCodes, 60_000 / caps.wrongCodes);
  const count = () => said(trainer, { kind: 'count', count: joined.size });
  const taken = () => [...names.values()].toSorted((a, b) => a - b);
  /** Whose own name has turned hears that too; to the others it may be said before they are heard. */
  const tellNames = (turned) => {
    for (const [id, client] of joined) {
      const mine = turned.includes(id) ? { mine: names.get(id) ?? null } : {};
      said(client, { kind: 'names', taken: taken(), ...mine });
    }
  };
  /** Of two windows that say they are one learner the first is, unless the other takes its place. */
  const call = (id, me, instead) => {
    names.delete(id);
    const [before] = [...names].find(([, each]) => each === me) ?? [];
    if (instead && before !== undefined) names.delete(before);
    if (me !== null && !taken().includes(me)) names.set(id, me);
    tellNames(instead ? [id, before] : [id]);
  };
  const sockets = lines(server, '/relay/learner', caps.message, (client) => {
    const may = allowance(caps.burst, 1000);
    const late = setTimeout(() => client.close(1008), caps.toJoin);
    next += 1;
    const id = next;
    client.on('message', (data) => {
      if (!may()) {
        client.close(1008);
        return;
      }
      const message = read(data);
      if (joined.has(id)) {
        const guess = guessIn(message);
        const me = nameIn(message);
        if (guess) said(trainer, { kind: 'guess', from: id, ...guess });
        else if (me !== undefined) call(id, me, message.instead === true);
        else client.close(1008);
        return;
      }
      if (typeof message?.code !== 'string') {
        client.close(1008);
      } else if (message.code.toUpperCase() === code) {
        clearTimeout(late);
        joined.set(id, client);
        said(client, { kind: 'in', at, open, lesson, taken: taken() });
        count();
      } else if (mayBeWrong()) said(client, { kind: 'wrong' });
      else client.close(1013);
    });
    client.on('close', () => {
      clearTimeout(late);
      if (names.delete(id)) tellNames([]);
      if (joined.delete(id)) count();
    });
  });
  return {
    show(now, isOpen) {
      at = now;
      open = isOpen;
      for (const client of joined.values()) said(client, { kind: 'at', at, open });
    },
    over() {
      for (const client of joined.values()) said(client, { kind: 'over' });
    },
    hand(now) {
      lesson = now;
      for (const client of joined.values()) said(client, { kind: 'lesson', lesson });
    },
    reply(to, taken, says) {
      const client = joined.get(to);
      if (client) said(client, { kind: 'reply', taken, says });
    },
    close() {
      for (const client of sockets.clients) client.terminate();
      sockets.close();
    },
  };
}

/**
 * Lets the trainer's window of this server open a second one for learners.
 *
 * @param server what the trainer's page came from, on loopback
 * @param serveOn serves the same page on an address; resolves with `{ server, url, close }`
 */
export function relayBeside(server, serveOn) {
  let busy = false;
  lines(server, '/relay/trainer', caps.lesson, (trainer) => {
    let end;
    let gone = false;
    const shut = async () => {
      const now = end;
      end = undefined;
      if (!now) return;
      now.close();
      await now.served.close();
      busy = false;
    };
    const open = async (address) => {
      if (busy) {
        said(trainer, {
          kind: 'refused',
          says: 'Another window of this machine takes guesses already.',
        });
        return;
      }
      busy = true;
      try {
        const served = await serveOn(address);
        const code = joinCode((most) => randomInt(most));
        end = { ...learnersEnd(served.server, trainer, code), served };
        said(trainer, { kind: 'open', url: served.url, code });
        if (gone) await shut();
      } catch (problem) {
        busy = false;
        said(trainer, {
          kind: 'refused',
          says: `Nothing can be served on ${address}: ${problem.message}`,
        });
      }
    };
    said(trainer, { kind: 'addresses', addresses: addresses() });
    trainer.on('message', (data) => {
      const message = read(data);
      const { kind, address, at, open: isOpen, lesson, to, taken, says } = message ?? {};
      if (kind === 'open' && !end && addresses().includes(address)) void open(address);
      if (kind === 'at' && Number.isInteger(at)) end?.show(at, isOpen === true);
      if (kind === 'over') end?.over();
      if (kind === 'lesson' && typeof lesson === 'string') end?.hand(lesson);
      if (kind === 'reply' && typeof says === 'string') end?.reply(to, taken === true, says);
    });
    trainer.on('close', () => {
      gone = true;
      void shut();
    });
  });
}
