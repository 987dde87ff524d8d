import type { AnyAsked, AnyTold, YardWhy } from './asked';
import { besideOf } from './beside-of';
import { importOf } from './import-of';
import { yardOf, yardWhys } from './which-of';

const tell = (told: AnyTold): void => postMessage(told);
/** Lets what came in meanwhile be heard. */
const listen = (): Promise<void> => new Promise((done) => setTimeout(done));
/** So long it reckons, in milliseconds, before it tells what there is and listens. */
const atOnce = 40;

let turn = 0;

/** Words cost more than all verdicts together: they come after them, and stop where somebody moved on. */
async function tellWhys(asked: number): Promise<void> {
  let waiting: YardWhy[] = [];
  let since = performance.now();
  for (const why of yardWhys()) {
    waiting.push(why);
    if (performance.now() - since < atOnce) continue;
    tell({ whys: waiting, turn: asked });
    waiting = [];
    await listen();
    if (turn !== asked) return;
    since = performance.now();
  }
  if (waiting.length > 0) tell({ whys: waiting, turn: asked });
}

async function answered(asked: AnyAsked): Promise<AnyTold> {
  if (asked.kind === 'import') return { imported: importOf(asked) };
  if (asked.kind === 'beside') return { beside: besideOf(asked.files) };
  return { found: await yardOf(asked) };
}

addEventListener(
  'message',
  async ({ data }: MessageEvent<AnyAsked & { readonly turn: number }>) => {
    turn = data.turn;
    try {
      tell(await answered(data));
      if (data.kind === 'which') {
        await listen();
        if (turn === data.turn) await tellWhys(data.turn);
      }
    } catch (problem) {
      tell({ refused: problem instanceof Error ? problem.message : String(problem) });
    }
  },
);
