import { verdictOf } from './judge-aside';
import type { VerdictAsked } from './verdict';

addEventListener('message', async ({ data }: MessageEvent<VerdictAsked>) => {
  try {
    postMessage(await verdictOf(data));
  } catch {
    postMessage({ stands: 'unknown', words: 'not to be judged here' });
  }
});
