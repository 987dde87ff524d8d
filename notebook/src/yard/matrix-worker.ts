import kernel from 'virtual:kernel';
import { answerNow } from '@tarebook/rules/engine';
import { type Matrix, matrixOf, readCatalogue } from '@tarebook/sweep';
import { kernelFrom } from '@tarebook/sweep/kernels';
import { inventedFiles } from './invented';
import type { MatrixAsked, MatrixTold, PairAsked, YardMeant } from './matrix-asked';
import { decidesSaid, yardTopic } from './which-of';

const tell = (told: MatrixTold, ...given: Transferable[]): void =>
  postMessage(told, { transfer: given });
/** Lets what came in meanwhile be heard. */
const listen = (): Promise<void> => new Promise((done) => setTimeout(done));
/** So long it reckons, in milliseconds, before it tells what there is and listens. */
const atOnce = 40;

const today = (): string => new Date().toISOString().slice(0, 10);

let meant: YardMeant = { kind: 'yard', house: undefined, files: undefined };
let made: Promise<Matrix> | undefined;
let turn = 0;

async function matrixMade({ files, house }: YardMeant): Promise<Matrix> {
  const catalogue = readCatalogue({ ...inventedFiles, ...files });
  const topic = await yardTopic(house);
  const matrix = matrixOf(catalogue, today(), topic, kernelFrom(topic, kernel));
  const named = (entries: typeof matrix.vehicles) =>
    entries.map(({ name, cells }) => ({ name, cells }));
  tell({ kind: 'begun', vehicles: named(matrix.vehicles), trailers: named(matrix.trailers) });
  return matrix;
}

const matrix = (): Promise<Matrix> => {
  made ??= matrixMade(meant);
  return made;
};

async function all(asked: MatrixAsked): Promise<void> {
  turn = asked.turn;
  const { rows, trailers } = await matrix();
  let took = 0;
  let since = performance.now();
  let from = 0;
  let waiting: Uint8Array[] = [];
  const tellRows = (): void => {
    const levels = new Uint8Array(waiting.length * trailers.length);
    waiting.forEach((row, at) => {
      levels.set(row, at * trailers.length);
    });
    const first = from;
    from += waiting.length;
    waiting = [];
    tell({ kind: 'rows', turn: asked.turn, from: first, levels }, levels.buffer);
  };
  for (const { levels } of rows(asked.facts)) {
    waiting.push(levels);
    const now = performance.now();
    if (now - since < atOnce) continue;
    took += now - since;
    tellRows();
    await listen();
    // Somebody has moved on: what is left of this is not wanted any more.
    if (turn !== asked.turn) return;
    since = performance.now();
  }
  took += performance.now() - since;
  if (waiting.length > 0) tellRows();
  tell({ kind: 'done', turn: asked.turn, took });
}

async function pair(asked: PairAsked): Promise<void> {
  const { vehicles, trailers } = await matrix();
  const vehicle = vehicles.find(({ name }) => name === asked.vehicle);
  const trailer = trailers.find(({ name }) => name === asked.trailer);
  if (!vehicle || !trailer) return;
  const facts = { ...vehicle.facts, ...trailer.facts, ...asked.facts };
  const topic = await yardTopic(meant.house);
  const answer = answerNow(topic, { facts, units: asked.system });
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
    }
  } catch (problem) {
    tell({ kind: 'refused', says: problem instanceof Error ? problem.message : String(problem) });
  }
});
