import { expect, test, vi } from 'vitest';
import type { Row } from '../cases/rows';
import { openAmong } from './open-among';

const row = (name: string, own: Row['own'] = 'mine'): Row => ({
  ...{ topic: 'tow-fit', name, title: name, asked: '', level: '' },
  ...{ shipped: undefined, text: name, own, at: 0 },
});

test('only one’s own calls that cannot be said are open, in their order, of the latest', async () => {
  const tell = vi.fn(async (_: string, text: string) => ({
    stands: text.startsWith('open') ? ('unknown' as const) : ('ok' as const),
    words: '',
  }));
  const many = Array.from({ length: 40 }, (_, i) => row(`done ${i}`));
  const rows = [row('open 1'), row('done'), row('open changed', 'changed'), row('open 2'), ...many];
  expect((await openAmong(rows, tell)).map(({ name }) => name)).toEqual(['open 1', 'open 2']);
  expect(tell).toHaveBeenCalledTimes(20);
});
