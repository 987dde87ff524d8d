import { expect, test } from 'vitest';
import { pack } from './link';
import { openShared } from './shared';

const front = '---\ntitle: A link\ntopic: tow-fit\n---\n\n';

test('a short link that unfolds to more than a case can need is told, and not opened', async () => {
  const packed = await pack(front + ':::a\n'.repeat(5_000));
  expect(packed.length).toBeLessThan(300);
  const before = process.cpuUsage();
  const opened = await openShared('tow-fit', 'a-link', packed);
  const { user, system } = process.cpuUsage(before);
  expect(opened).toEqual({
    says: 'This link was not opened. The document has more than 40 lines of `:::`; a case needs a tenth of them, so split it into several.',
  });
  expect((user + system) / 1000).toBeLessThan(500);
});

test('a link with a case in it is opened', async () => {
  const opened = await openShared('tow-fit', 'a-link', await pack(`${front}A question.\n`));
  expect(opened).toMatchObject({ filed: `${front}A question.\n` });
});
