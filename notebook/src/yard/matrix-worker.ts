import kernel from 'virtual:kernel';
import { answerNow } from '@tarebook/rules/engine';
import { type Matrix, matrixOf, readCatalogue } from '@tarebook/sweep';
import { kernelFrom } from '@tarebook/sweep/kernels';
import { inventedFiles } from './invented';
import type { MatrixAsked, MatrixTold, PairAsked } from './matrix-asked';
import { yardTopic } from './which-of';

const tell = (told: MatrixTold): void => postMessage(told);
/** Lets what came in meanwhile be heard. */
const listen = (): Promise<void> => new Promise((done) => setTimeout(done));
/** So long it reckons, in milliseconds, before it listens. */
const atOnce = 40;

const today = (): string => new Date().toISOString().slice(0, 10);

let last: { readonly key: string; readonly matrix: Matrix } | undefined;
let turn = 0;

async function matrixFor({ files, house }: Pick<MatrixAsked, 'files' | 'house'>): Promise<Matrix> {
  const key = JSON.stringify([files, house]);
  if (last?.key !== key) {
    const catalogue = readCatalogue({ ...inventedFiles, ...files });
    const topic = await yardTopic(house);
    last = { key, matrix: matrixOf(catalogue, today(), topic, kernelFrom(topic, kernel)) };
  }
  return last.matrix;
}

async function all(asked: MatrixAsked): Promise<void> {
  turn = asked.turn;
  const begun = performance.now();
  const { vehicles, trailers, rows } = await matrixFor(asked);
  const named = (entries: typeof vehicles) => entries.map(({ name, cells }) => ({ name, cells }));
  tell({ kind: 'begun', turn: asked.turn, vehicles: named(vehicles), trailers: named(trailers) });
  let since = performance.now();
  for (const { row, levels } of rows(asked.facts)) {
    tell({ kind: 'row', turn: asked.turn, row, levels });
    if (performance.now() - since < atOnce) continue;
    await listen();
    // Somebody has moved on: what is left of this is not wanted any more.
    if (turn !== asked.turn) return;
    since = performance.now();
  }
  tell({ kind: 'done', turn: asked.turn, took: performance.now() - begun });
}

async function pair(asked: PairAsked): Promise<void> {
  const { vehicles, trailers } = await matrixFor(asked);
  const vehicle = vehicles.find(({ name }) => name === asked.vehicle);
  const trailer = trailers.find(({ name }) => name === asked.trailer);
  if (!vehicle || !trailer) return;
  const facts = { ...vehicle.facts, ...trailer.facts, ...asked.facts };
  const topic = await yardTopic(asked.house);
  const { words, sentence } = answerNow(topic, { facts, units: asked.system });
  const told = { vehicle: vehicle.name, trailer: trailer.name, words, says: sentence, facts };
  tell({ kind: 'pair', pair: told });
}

addEventListener('message', async ({ data }: MessageEvent<MatrixAsked | PairAsked>) => {
  try {
    await (data.kind === 'all' ? all(data) : pair(data));
  } catch (problem) {
    tell({ kind: 'refused', says: problem instanceof Error ? problem.message : String(problem) });
  }
});
