import { spread, towFit } from '@tarebook/rules';
import { expect, test } from 'vitest';
import { type SpreadMessage, type SpreadRequest, startSpread } from './spread';
import { drawSpread } from './spread-drawn';

const request: SpreadRequest = {
  topic: 'tow-fit',
  asked: {
    asOf: '2026-11-01',
    facts: {
      'vehicle.maxTrailerWeight': '5,000 lb',
      'vehicle.maxTongueCarried': '500 lb',
      'vehicle.placardPayload': '1,260 lb',
      'trailer.dryWeight': '4,600–5,200 lb',
      'trailer.gvwr': '5,400 lb',
      'trailer.dryTongueWeight': '430 ± 10 lb',
    },
  },
  draws: 20_000,
  seed: 7,
};

/** A worker on the page's own thread, a turn later. */
function worker(ended: { value: boolean }) {
  const made = {
    onmessage: null as ((event: MessageEvent) => void) | null,
    onerror: null,
    postMessage: (asked: SpreadRequest) => {
      setTimeout(() => drawSpread(asked, (data) => tell(data)), 0);
    },
    terminate: () => {
      ended.value = true;
    },
  };
  const tell = (data: SpreadMessage) => {
    if (!ended.value) made.onmessage?.(new MessageEvent('message', { data }));
  };
  return made;
}

test('what comes back is the spread of the library, with progress up to all of it', async () => {
  const ended = { value: false };
  const shares: number[] = [];
  const { result } = startSpread(
    request,
    (share) => shares.push(share),
    () => worker(ended),
  );
  const { draws, seed } = request;
  expect(await result).toEqual(spread(towFit, request.asked, { draws, seed }));
  expect(shares.length).toBeGreaterThan(5);
  expect(shares).toEqual(shares.toSorted((a, b) => a - b));
  expect(shares.at(-1)).toBeLessThanOrEqual(1);
  expect(ended.value).toBe(true);
});

test('left off, it ends the worker and comes back with nothing', async () => {
  const ended = { value: false };
  const { result, cancel } = startSpread(request, undefined, () => worker(ended));
  cancel();
  expect(await result).toBeUndefined();
  expect(ended.value).toBe(true);
});

test('a case that cannot be drawn is told in the words of the library', async () => {
  const facts = { 'vehicle.gvw': '5,000 lb' };
  const { result } = startSpread({ ...request, asked: { facts } }, undefined, () =>
    worker({ value: false }),
  );
  await expect(result).rejects.toThrow(
    '`vehicle.gvw` is not a fact of tow-fit. Did you mean `vehicle.gvwr`?',
  );
});

test('under a house layer, by the house’s parameters', async () => {
  const house = {
    topic: 'tow-fit',
    name: 'Sallowbridge Trailers',
    parameters: { 'margin.towRating': { value: '25 %', reason: 'Hills.' } },
  };
  const told: SpreadMessage[] = [];
  drawSpread({ ...request, house }, (message) => told.push(message));
  const last = told.at(-1);
  if (last?.kind !== 'result') throw new Error('There is no result.');
  expect(last.spread.outcomes.fits?.chance).toBe(0);
});
