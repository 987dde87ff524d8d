import type { YardAsked } from './asked';
import { yardOf } from './which-of';

addEventListener('message', async ({ data }: MessageEvent<YardAsked>) => {
  try {
    postMessage({ found: await yardOf(data) });
  } catch (problem) {
    postMessage({ refused: problem instanceof Error ? problem.message : String(problem) });
  }
});
