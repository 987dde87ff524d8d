import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { verdictOf } from '../aside/verdict-of';
import { verdicts } from './verdict';

const text = (title: string) => `---\ntitle: ${title}\ntopic: tow-fit\n---\n\nWhat then?\n`;

/** A worker that answers when it is let, or never. */
function workers(answers: boolean) {
  const made = { count: 0, ended: 0, asked: [] as unknown[] };
  const make = () => {
    made.count += 1;
    const one = {
      onmessage: null as ((event: MessageEvent) => void) | null,
      onerror: null,
      terminate: () => {
        made.ended += 1;
      },
      postMessage: (asked: unknown) => {
        made.asked.push(asked);
        const data = { stands: 'ok', words: `answer ${made.asked.length}` };
        if (answers) setTimeout(() => one.onmessage?.(new MessageEvent('message', { data })));
      },
    };
    return one;
  };
  return { made, make };
}

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

test('the same text is judged once, whoever asks', async () => {
  const { made, make } = workers(true);
  const verdictFor = verdicts(make);
  const both = Promise.all([
    verdictFor('tow-fit', text('A')),
    verdictFor('tow-fit', text('A')),
    verdictFor('tow-fit', text('B')),
  ]);
  await vi.runAllTimersAsync();
  expect((await both).map(({ words }) => words)).toEqual(['answer 1', 'answer 1', 'answer 2']);
  expect(made).toMatchObject({ count: 1, ended: 0 });
});

test('a case that takes too long is said so, and holds up none after it', async () => {
  const { made, make } = workers(false);
  const verdictFor = verdicts(make);
  const slow = verdictFor('tow-fit', text('A'));
  const next = verdictFor('tow-fit', text('B'));
  await vi.runAllTimersAsync();
  expect((await slow).words).toBe('takes too long to judge here');
  expect((await next).words).toBe('takes too long to judge here');
  expect(made).toMatchObject({ count: 2, ended: 2 });
});

test('what went out of sight before its turn is not judged, and is once it is seen again', async () => {
  const { made, make } = workers(true);
  const verdictFor = verdicts(make);
  const first = verdictFor('tow-fit', text('A'), () => false);
  await vi.runAllTimersAsync();
  await first;
  expect(made.asked).toEqual([]);
  const again = verdictFor('tow-fit', text('A'));
  await vi.runAllTimersAsync();
  expect((await again).words).toBe('answer 1');
});

test('what one list has out of sight and another still wants is judged, for both', async () => {
  const { made, make } = workers(true);
  const verdictFor = verdicts(make);
  const both = Promise.all([
    verdictFor('tow-fit', text('A'), () => false),
    verdictFor('tow-fit', text('A'), () => true),
  ]);
  await vi.runAllTimersAsync();
  expect((await both).map(({ words }) => words)).toEqual(['answer 1', 'answer 1']);
  expect(made.asked).toHaveLength(1);
});

test('a verdict is that of the case under the dealer’s numbers; what cannot be read is said so', async () => {
  vi.useRealTimers();
  const house = undefined;
  expect(await verdictOf({ topic: 'tow-fit', text: text('A'), house })).toEqual({
    stands: 'unknown',
    words: 'cannot say',
    asks: 'What does the trailer weigh empty?',
  });
  expect((await verdictOf({ topic: 'tow-fit', text: 'no case', house })).words).toBe(
    'not readable yet',
  );
});
