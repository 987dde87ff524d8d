import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { afterEach, expect, test } from 'vitest';
import { WebSocket } from 'ws';
import { allowance, caps, guessIn } from '../../relay/caps.mjs';
import { addresses, relayBeside } from '../../relay/relay.mjs';

type Said = Readonly<Record<string, unknown>>;
/** One end of a line, with all that it heard. */
type End = { socket: WebSocket; heard: Said[]; closed: Promise<number> };

const closing: (() => Promise<unknown>)[] = [];
afterEach(async () => {
  for (const close of closing.splice(0).reverse()) await close();
});

async function listening(address = '127.0.0.1'): Promise<{ server: Server; host: string }> {
  const server = createServer((_, response) => response.end('page'));
  await new Promise<void>((done) => server.listen(0, address, done));
  const { port } = server.address() as AddressInfo;
  return { server, host: `${address}:${port}` };
}
const shut = (server: Server) =>
  new Promise((done) => {
    server.closeAllConnections();
    server.close(done);
  });

function line(host: string, who: 'trainer' | 'learner', origin = `http://${host}`): End {
  const socket = new WebSocket(`ws://${host}/relay/${who}`, { origin });
  const heard: Said[] = [];
  socket.on('message', (data) => heard.push(JSON.parse(String(data))));
  socket.on('error', () => undefined);
  const closed = new Promise<number>((done) => {
    socket.on('close', (code) => done(code));
  });
  closing.push(async () => socket.terminate());
  return { socket, heard, closed };
}
const say = (end: End, message: unknown) => end.socket.send(JSON.stringify(message));
const hears = (end: End, kind: string) =>
  expect.poll(() => end.heard.filter((each) => each.kind === kind)).not.toEqual([]);
const last = (end: End, kind: string) => end.heard.findLast((each) => each.kind === kind);

/** A trainer's page with the relay turned on, and where learners join. */
async function open() {
  const { server, host } = await listening();
  closing.push(() => shut(server));
  let served: string | undefined;
  relayBeside(server, async (address) => {
    const inner = await listening(address);
    served = inner.host;
    return {
      server: inner.server,
      url: `http://${inner.host}/`,
      close: async () => {
        served = undefined;
        await shut(inner.server);
      },
    };
  });
  const trainer = line(host, 'trainer');
  await hears(trainer, 'addresses');
  expect(served, 'nothing listens before it is asked for').toBeUndefined();
  say(trainer, { kind: 'open', address: '127.0.0.1' });
  await hears(trainer, 'open');
  const { code } = last(trainer, 'open') ?? {};
  return {
    trainer,
    host,
    where: served ?? '',
    code: String(code),
    isServed: () => served !== undefined,
  };
}
async function join(where: string, code: string) {
  const learner = line(where, 'learner');
  await new Promise((done) => learner.socket.on('open', done));
  say(learner, { code });
  return learner;
}

test('six learners’ guesses reach the trainer, and each hears its own reply alone', async () => {
  const { trainer, where, code } = await open();
  const learners = await Promise.all(
    Array.from({ length: 6 }, () => join(where, code.toLowerCase())),
  );
  for (const each of learners) await hears(each, 'in');
  await expect.poll(() => last(trainer, 'count')?.count).toBe(6);
  for (const [at, each] of learners.entries())
    say(each, { guess: `A${'ABCDEF'[at]}1100X`, why: 'so' });
  await expect.poll(() => trainer.heard.filter(({ kind }) => kind === 'guess').length).toBe(6);
  for (const { kind, from, guess } of trainer.heard) {
    if (kind === 'guess')
      say(trainer, { kind: 'reply', to: from, taken: true, says: `got ${guess}` });
  }
  for (const [at, each] of learners.entries()) {
    await hears(each, 'reply');
    const replies = each.heard.filter(({ kind }) => kind === 'reply');
    expect(replies).toEqual([{ kind: 'reply', taken: true, says: `got A${'ABCDEF'[at]}1100X` }]);
  }
  say(trainer, { kind: 'at', at: 2 });
  for (const each of learners) await expect.poll(() => last(each, 'at')?.at).toBe(2);
});

test('a name that one phone has is offered to no other, until that phone is gone', async () => {
  const { trainer, where, code } = await open();
  const ada = await join(where, code);
  await hears(ada, 'in');
  say(ada, { me: 0 });
  await expect.poll(() => last(ada, 'names')).toEqual({ kind: 'names', taken: [0], mine: 0 });
  const ben = await join(where, code);
  await hears(ben, 'in');
  expect(last(ben, 'in')?.taken).toEqual([0]);
  say(ben, { me: 0 });
  await expect.poll(() => last(ben, 'names')).toEqual({ kind: 'names', taken: [0], mine: null });
  say(ben, { me: 1 });
  await expect.poll(() => last(ada, 'names')?.taken).toEqual([0, 1]);
  // Whose phone fell asleep takes the name along to another.
  say(ben, { me: 0, instead: true });
  await expect.poll(() => last(ada, 'names')).toEqual({ kind: 'names', taken: [0], mine: null });
  say(ben, { me: 1 });
  await expect.poll(() => last(ada, 'names')?.taken).toEqual([1]);
  say(ada, { me: 0 });
  say(ada, { me: null });
  await expect.poll(() => last(ben, 'names')?.taken).toEqual([1]);
  ben.socket.close();
  await expect.poll(() => last(ada, 'names')?.taken).toEqual([]);
  expect(trainer.heard.map(({ kind }) => kind)).not.toContain('names');
  for (const me of [-1, 0.5, 1e9, 'Ada']) {
    const odd = await join(where, code);
    await hears(odd, 'in');
    say(odd, { me });
    expect(await odd.closed).toBe(1008);
  }
});

test('whoever comes late hears that the working is open, and all hear that the class is over', async () => {
  const { trainer, where, code } = await open();
  const early = await join(where, code);
  await hears(early, 'in');
  expect(last(early, 'in')?.open).toBe(false);
  say(trainer, { kind: 'at', at: 1, open: true });
  await expect.poll(() => last(early, 'at')).toEqual({ kind: 'at', at: 1, open: true });
  const late = await join(where, code);
  await expect.poll(() => last(late, 'in')?.open).toBe(true);
  say(trainer, { kind: 'over' });
  trainer.socket.close();
  await Promise.all([early.closed, late.closed]);
  expect([last(early, 'over'), last(late, 'over')]).toEqual([{ kind: 'over' }, { kind: 'over' }]);
});

test('a wrong code gets nothing through, and guessing codes is cut off', async () => {
  const { trainer, where } = await open();
  const stranger = await join(where, 'WRONG1');
  await hears(stranger, 'wrong');
  say(stranger, { guess: 'AA1100X' });
  expect(await stranger.closed).toBe(1008);
  const codes: number[] = [];
  for (let i = 0; i < caps.wrongCodes + 2; i += 1) {
    const next = await join(where, 'WRONG2');
    const what = await Promise.race([next.closed, hears(next, 'wrong').then(() => 0)]);
    codes.push(what);
    next.socket.terminate();
  }
  expect(codes.slice(-1)).toEqual([1013]);
  expect(trainer.heard.filter(({ kind }) => kind === 'guess' || kind === 'count')).toEqual([]);
});

test('a flood, a message too large, or anything but a guess ends that line alone', async () => {
  const { trainer, where, code } = await open();
  const good = await join(where, code);
  await hears(good, 'in');
  const flood = await join(where, code);
  for (let i = 0; i < 2000; i += 1) say(flood, { guess: 'AA1100X', why: 'flood' });
  expect(await flood.closed).toBe(1008);
  const large = await join(where, code);
  await hears(large, 'in');
  say(large, { guess: 'AA1100X', why: 'x'.repeat(100_000) });
  await large.closed;
  for (const other of [{ kind: 'open', address: '127.0.0.1' }, { guess: '<b>' }, 'AA1100X', null]) {
    const odd = await join(where, code);
    await hears(odd, 'in');
    say(odd, other);
    expect(await odd.closed).toBe(1008);
  }
  const flooded = trainer.heard.filter(({ why }) => why === 'flood').length;
  expect(flooded).toBeLessThan(caps.burst + 2);
  say(good, { guess: 'AB1100X', why: 'still here' });
  await expect.poll(() => last(trainer, 'guess')?.why).toBe('still here');
});

test('more windows than a room has are not let in', async () => {
  const { where, code } = await open();
  const all = await Promise.all(Array.from({ length: caps.windows }, () => join(where, code)));
  for (const each of all) await hears(each, 'in');
  expect(await line(where, 'learner').closed).toBe(1006);
});

test('it is served only while the trainer’s window is there, on an address of this machine', async () => {
  const { trainer, host, where, isServed } = await open();
  const second = line(host, 'trainer');
  await hears(second, 'addresses');
  say(second, { kind: 'open', address: '127.0.0.1' });
  await hears(second, 'refused');
  say(second, { kind: 'open', address: '0.0.0.0' });
  expect(addresses()[0]).toBe('127.0.0.1');
  expect(addresses()).not.toContain('0.0.0.0');
  expect((await fetch(`http://${where}/`)).status).toBe(200);
  trainer.socket.close();
  await expect.poll(isServed).toBe(false);
  await expect(fetch(`http://${where}/`)).rejects.toThrow();
});

test('a page from elsewhere can open neither end', async () => {
  const { host, where, trainer } = await open();
  for (const [at, who] of [
    [host, 'trainer'],
    [where, 'learner'],
  ] as const) {
    expect(await line(at, who, 'http://elsewhere.example').closed).toBe(1006);
  }
  expect(await line(where, 'trainer').closed).toBe(1006);
  expect(trainer.socket.readyState).toBe(WebSocket.OPEN);
});

test('only a guess is a guess, and an allowance fills again with time', () => {
  expect(guessIn({ guess: 'AA1100X', why: 'so', more: 1 })).toEqual({
    guess: 'AA1100X',
    why: 'so',
  });
  expect(guessIn({ guess: 'AA1100X', again: true, more: 1 })).toEqual({
    ...{ guess: 'AA1100X', why: '', again: true },
  });
  expect(guessIn({ guess: 'AA1100X', why: 'x'.repeat(301) })).toBeUndefined();
  let now = 0;
  const may = allowance(2, 1000, () => now);
  expect([may(), may(), may()]).toEqual([true, true, false]);
  now = 1000;
  expect([may(), may()]).toEqual([true, false]);
});
