import { spreadInBlocks, topics, withHouse } from '@tarebook/rules';
import type { SpreadMessage, SpreadRequest } from './spread';

/** Progress is told about so often over all draws. */
const steps = 50;

/** Draws what was asked for and tells how far it is; what goes wrong is told, never thrown. */
export function drawSpread(request: SpreadRequest, tell: (message: SpreadMessage) => void): void {
  const { asked, house, draws, seed } = request;
  try {
    const topic = Object.hasOwn(topics, request.topic) ? topics[request.topic] : undefined;
    if (!topic) throw new Error(`There is no topic “${request.topic}”.`);
    const blocks = spreadInBlocks(house ? withHouse(topic, house) : topic, asked, { draws, seed });
    let told = 0;
    for (;;) {
      const { done, value } = blocks.next();
      if (done) {
        tell({ kind: 'result', spread: value });
        return;
      }
      if (value - told < draws / steps) continue;
      told = value;
      tell({ kind: 'progress', done: value });
    }
  } catch (problem) {
    tell({ kind: 'refused', says: problem instanceof Error ? problem.message : String(problem) });
  }
}
