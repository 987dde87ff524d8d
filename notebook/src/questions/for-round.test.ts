import { expect, test } from 'vitest';
import { nextAsRule, withoutNext } from './for-round';

const short =
  'Should it be 65 psi. Find out next: what does the trailer weigh empty? (brochure, or the sticker of that very trailer)';

test('what is asked of one person is not said to all, in whatever form it stands', () => {
  expect(withoutNext(short)).toBe('Should it be 65 psi.');
  expect(
    withoutNext(
      'Weigh it. Find out next: how high is it? Where to look: the hitch, a tape. Drive on.',
    ),
  ).toBe('Weigh it. Drive on.');
  expect(withoutNext('Weigh it. Find out next: which plan do you mean?')).toBe('Weigh it.');
  expect(withoutNext('If it is A: no. If it is B: yes. Which is it?')).toBe(
    'If it is A: no. If it is B: yes.',
  );
  expect(withoutNext('Never adapt a hose (of any kind).')).toBe(
    'Never adapt a hose (of any kind).',
  );
});

test('where nothing else can be said, what has to be known is said without brackets', () => {
  const alone = 'Find out next: what do the bars weigh? (a kitchen or bathroom scale)';
  expect(withoutNext(alone)).toBe('');
  expect(nextAsRule(alone)).toBe(
    'That cannot be said before this is known: what do the bars weigh?',
  );
  expect(nextAsRule('Weigh it.')).toBe('');
});
