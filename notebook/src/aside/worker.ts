import type { VerdictAsked } from '../cases/verdict';
import type { ChangeAsked } from '../change/asked';
import { changesOf } from './changes-of';
import { verdictOf } from './verdict-of';

/** What is reckoned beside the page; both need the rule sets, so both are asked in one place. */
export type AskedAside =
  | ({ readonly kind: 'verdict' } & VerdictAsked)
  | ({ readonly kind: 'changes' } & ChangeAsked);

addEventListener('message', async ({ data }: MessageEvent<AskedAside>) => {
  if (data.kind === 'changes') {
    try {
      postMessage(await changesOf(data));
    } catch (problem) {
      // Out of the promise, so that whoever asked hears of it as of any other mistake.
      setTimeout(() => {
        throw problem;
      });
    }
    return;
  }
  try {
    postMessage(await verdictOf(data));
  } catch {
    postMessage({ stands: 'unknown', words: 'not to be judged here' });
  }
});
