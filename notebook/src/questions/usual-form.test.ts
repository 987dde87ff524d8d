import { expect, test } from 'vitest';
import { withChosen } from './usual-form';

test('a form that was chosen is the usual one where the same would fit, and nowhere else', () => {
  const once = withChosen({}, 'post', 'spoken');
  expect(once).toEqual({ post: 'spoken' });
  expect(withChosen(once, 'askBack', 'post')).toEqual({ post: 'spoken', askBack: 'post' });
});

test('whoever goes back to the short one has nothing usual; a slip never is', () => {
  expect(withChosen({ post: 'spoken' }, 'post', 'short')).toEqual({});
  expect(withChosen({ post: 'spoken' }, 'post', 'slip')).toEqual({ post: 'spoken' });
});
