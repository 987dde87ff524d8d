import { BadInput } from './files';
import { withLittleRoom } from './little-room';
import { parsed } from './parsed';
import { sayJson, sayText } from './said';
import { sweepAll, sweptAsJson, sweptAsText } from './sweep';
import { comparedAsText, compareSweeps } from './sweep-compare';
import { work } from './worker';

export async function sweep(args: readonly string[]): Promise<number> {
  const { words, given } = parsed(
    args,
    ['json', 'resume', 'compare'],
    [
      'topic',
      'vehicles',
      'trailers',
      'case',
      'out',
      'threads',
      'queue',
      'house',
      'as-of',
      'ledger',
      'spread',
      'seed',
    ],
  );
  if (given.compare) {
    const [before, after, more] = words;
    if (before === undefined || after === undefined || more !== undefined) {
      throw new BadInput('`tarebook sweep` --compare takes two files that a sweep has written.');
    }
    const ledger = typeof given.ledger === 'string' ? given.ledger : undefined;
    const found = await compareSweeps(before, after, ledger);
    await (given.json ? sayJson(found) : sayText(`${comparedAsText(found)}\n`));
    return 0;
  }
  if (words.length > 0) {
    throw new BadInput('`tarebook sweep` takes its files by name: --vehicles F --trailers F.');
  }
  withLittleRoom();
  const swept = await sweepAll(given);
  await (given.json ? sayJson(sweptAsJson(swept)) : sayText(`${sweptAsText(swept)}\n`));
  return swept.isWhole ? 0 : 2;
}

export async function worker(args: readonly string[]): Promise<number> {
  const { words, given } = parsed(args, [], ['queue']);
  if (words.length > 0 || typeof given.queue !== 'string') {
    throw new BadInput('`tarebook worker` wants --queue, such as redis://localhost:6379.');
  }
  withLittleRoom();
  await work(given.queue);
  return 0;
}
