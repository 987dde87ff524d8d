import type { AnyAsked, AnyTold } from './asked';
import { importOf } from './import-of';
import { yardOf } from './which-of';

async function answered(asked: AnyAsked): Promise<AnyTold> {
  try {
    return asked.kind === 'import' ? { imported: importOf(asked) } : { found: await yardOf(asked) };
  } catch (problem) {
    return { refused: problem instanceof Error ? problem.message : String(problem) };
  }
}

addEventListener('message', async ({ data }: MessageEvent<AnyAsked>) => {
  postMessage(await answered(data));
});
