import kernel from 'virtual:kernel';
import { answerTraced, type FactsGiven } from '@tarebook/rules/engine';
import { type Matrix, matrixOf, readCatalogue, type Settled } from '@tarebook/sweep';
import { kernelFrom } from '@tarebook/sweep/kernels';
import { inventedFiles } from './invented';
import type { MatrixAsked, MatrixTold, PairAsked, YardMeant } from './matrix-asked';
import {
  packedFor,
  packedWithin,
  type Reach,
  reachAt,
  reachesFrom,
  sliderEnds,
  wholeReach,
} from './matrix-words';
import { decidesSaid, yardTopic } from './which-of';

const tell = (told: MatrixTold, ...given: Transferable[]): void =>
  postMessage(told, { transfer: given });
/** Lets what came in meanwhile be heard. */
const listen = (): Promise<void> => new Promise((done) => setTimeout(done));
/** So long it reckons, in milliseconds, before it tells what there is and listens. */
const atOnce = 40;
/** The same while nobody waits: whoever moves a slider then is heard at once. */
const atRest = 8;

const today = (): string => new Date().toISOString().slice(0, 10);

let meant: YardMeant = {
  ...{ kind: 'yard', yard: 0, share: { at: 0, of: 1 } },
  ...{ house: undefined, files: undefined },
};
let made: Promise<Matrix> | undefined;
let turn = 0;
/** What is settled in a part of the sliders' reach, by that part. */
let settled = new Map<string, Settled>();
const nameOf = ({ adults, cargo }: Reach): string => [...adults, ...cargo].join();

/** What of all pairs need not be judged where the sliders stand. */
function settledAt(adults: number, cargo: number): Settled | undefined {
  const reach = reachAt(adults, cargo);
  return reach && (settled.get(nameOf(reach)) ?? settled.get(nameOf(wholeReach)));
}

async function matrixMade({ files, house, yard, share }: YardMeant): Promise<Matrix> {
  const catalogue = readCatalogue({ ...inventedFiles, ...files });
  const topic = await yardTopic(house);
  const { at, of } = share;
  const isOwn = (row: number): boolean => row % of === at;
  const matrix = matrixOf(catalogue, today(), topic, kernelFrom(topic, kernel), undefined, isOwn);
  const named = (entries: typeof matrix.vehicles) =>
    entries.map(({ name, cells }) => ({ name, cells }));
  tell({ kind: 'begun', yard, vehicles: named(matrix.vehicles), trailers: named(matrix.trailers) });
  return matrix;
}

const matrix = (): Promise<Matrix> => {
  made ??= matrixMade(meant);
  return made;
};

/**
 * Goes through the pairs as they are in some case, giving way again and again.
 *
 * @param asked the turn it is of
 * @param heard what was judged since the last time, row after row
 * @returns milliseconds of reckoning; undefined where somebody moved on meanwhile
 */
async function through(
  asked: number,
  facts: FactsGiven,
  known: Settled | undefined,
  heard: (rows: readonly Uint8Array[]) => void,
  most = atOnce,
): Promise<number | undefined> {
  const { rows } = await matrix();
  let took = 0;
  let since = performance.now();
  let waiting: Uint8Array[] = [];
  for (const { levels } of rows(facts, known)) {
    waiting.push(levels);
    const now = performance.now();
    if (now - since < most) continue;
    took += now - since;
    heard(waiting);
    waiting = [];
    await listen();
    // Somebody has moved on: what is left of this is not wanted any more.
    if (turn !== asked) return undefined;
    since = performance.now();
  }
  took += performance.now() - since;
  if (waiting.length > 0) heard(waiting);
  return took;
}

/** Settles what is the same in all of a reach, giving way; false where somebody moved on meanwhile. */
async function settle(asked: number, reach: Reach): Promise<boolean> {
  const [of, name] = [settled, nameOf(reach)];
  if (of.has(name)) return true;
  const steps = (await matrix()).settle(packedWithin(reach), of.get(nameOf(wholeReach)));
  let since = performance.now();
  for (;;) {
    const { done, value } = steps.next();
    if (done) {
      of.set(name, value);
      return true;
    }
    if (performance.now() - since < atRest) continue;
    await listen();
    if (turn !== asked) return false;
    since = performance.now();
  }
}

/** Whether what the sliders reach has been gone through once. */
let isWarm = false;

/**
 * The first time that a slider gets somewhere costs ten times as much as any later one: paid while
 * nobody waits, and left where somebody does. So is finding out what no move of it can change.
 */
async function whileNobodyWaits({ turn: asked, adults, cargo }: MatrixAsked): Promise<void> {
  await listen();
  for (const facts of isWarm ? [] : sliderEnds()) {
    if (turn !== asked) return;
    const took = await through(asked, facts, undefined, () => undefined, atRest);
    if (took === undefined) return;
    await listen();
  }
  isWarm = true;
  for (const reach of [wholeReach, ...reachesFrom(adults, cargo)]) {
    if (turn !== asked || !(await settle(asked, reach))) return;
  }
}

async function all(asked: MatrixAsked): Promise<void> {
  turn = asked.turn;
  const { trailers } = await matrix();
  const { at, of } = meant.share;
  let from = at;
  const { adults, cargo } = asked;
  const heard = (rows: readonly Uint8Array[]): void => {
    const levels = new Uint8Array(rows.length * trailers.length);
    rows.forEach((row, place) => {
      levels.set(row, place * trailers.length);
    });
    tell({ kind: 'rows', turn: asked.turn, from, of, levels }, levels.buffer);
    from += rows.length * of;
  };
  const facts = packedFor(adults, cargo);
  const took = await through(asked.turn, facts, settledAt(adults, cargo), heard);
  if (took === undefined) return;
  tell({ kind: 'done', turn: asked.turn, took });
  await whileNobodyWaits(asked);
}

async function pair(asked: PairAsked): Promise<void> {
  const { vehicles, trailers } = await matrix();
  const vehicle = vehicles.find(({ name }) => name === asked.vehicle);
  const trailer = trailers.find(({ name }) => name === asked.trailer);
  if (!vehicle || !trailer) return;
  const facts = { ...vehicle.facts, ...trailer.facts, ...asked.facts };
  const topic = await yardTopic(meant.house);
  const answer = answerTraced(topic, { facts, units: asked.system });
  const names = { vehicle: vehicle.name, trailer: trailer.name };
  const decides = decidesSaid(topic, answer, asked.system);
  const { words, sentence } = answer;
  tell({ kind: 'pair', pair: { ...names, words, decides, says: sentence, facts } });
}

addEventListener('message', async ({ data }: MessageEvent<YardMeant | MatrixAsked | PairAsked>) => {
  try {
    if (data.kind === 'all') await all(data);
    else if (data.kind === 'pair') await pair(data);
    else {
      meant = data;
      made = undefined;
      settled = new Map();
      isWarm = false;
    }
  } catch (problem) {
    tell({ kind: 'refused', says: problem instanceof Error ? problem.message : String(problem) });
  }
});
