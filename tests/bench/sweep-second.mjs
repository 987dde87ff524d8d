// A thread of the bench: makes its own part of the yard ready, and judges it whenever it is told.
import { parentPort, workerData } from 'node:worker_threads';
import { assemble, sweepOf, yard } from './sweep-setup.mjs';

const { rows, columns, from, to } = workerData;
const run = await sweepOf(yard(rows, columns), { assemble }, true);
run(from, to, () => {});
parentPort.on('message', () => {
  run(from, to, () => {});
  parentPort.postMessage('done');
});
parentPort.postMessage('ready');
