import { expect, test } from 'vitest';
import type { YardAsked, YardFound, YardWhy } from './asked';
import { yardAsking } from './asking';

const asked = (name: string): YardAsked => ({
  kind: 'which',
  facts: {},
  chosen: { side: 'vehicles', name },
  system: 'us',
  house: undefined,
  files: undefined,
  wishes: [],
  people: 0,
});
const found = (sentence: string): YardFound => ({
  against: 'trailers',
  sentence,
  next: '',
  sleeps: '',
  rows: [],
  cautions: [],
  took: 0,
});

function teller() {
  const sent: YardAsked[] = [];
  const worker = {
    onmessage: null as ((event: MessageEvent) => void) | null,
    onerror: null as (() => void) | null,
    postMessage: (each: YardAsked) => sent.push(each),
    terminate: () => undefined,
  };
  const tell = (data: unknown) => worker.onmessage?.(new MessageEvent('message', { data }));
  return { worker, sent, tell };
}

test('of what is asked meanwhile only the last is reckoned', async () => {
  const { worker, sent, tell } = teller();
  const { ask } = yardAsking(() => worker);
  const [first, second, third] = [ask(asked('a')), ask(asked('b')), ask(asked('c'))];
  expect(await second).toBeUndefined();
  tell({ found: found('A') });
  expect((await first)?.sentence).toBe('A');
  tell({ found: found('C') });
  expect((await third)?.sentence).toBe('C');
  expect(sent.map(({ chosen }) => chosen?.name)).toEqual(['a', 'c']);
});

test('whys are heard of what was found last, and of nothing before', async () => {
  const { worker, tell } = teller();
  const { ask } = yardAsking(() => worker);
  const heard: string[] = [];
  const hear = (whys: readonly YardWhy[]) => heard.push(...whys.map(({ name }) => name));
  const why = (name: string) => ({ name, asks: [], says: 'So.' });
  const first = ask(asked('a'), hear);
  tell({ found: found('A') });
  await first;
  tell({ whys: [why('of the first')], turn: 1 });
  const second = ask(asked('b'), hear);
  tell({ whys: [why('too late')], turn: 1 });
  tell({ found: found('B') });
  await second;
  tell({ whys: [why('too late as well')], turn: 1 });
  tell({ whys: [why('of the second')], turn: 2 });
  expect(heard).toEqual(['of the first', 'of the second']);
});

test('what is refused is told in its sentence, and what breaks is told too', async () => {
  const { worker, tell } = teller();
  const { ask } = yardAsking(() => worker);
  const refused = ask(asked('a'));
  tell({ refused: 'Payload is above zero.' });
  await expect(refused).rejects.toThrow('Payload is above zero.');
  const broken = ask(asked('b'));
  worker.onerror?.();
  await expect(broken).rejects.toThrow(/could not be reckoned/);
});
