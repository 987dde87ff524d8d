import { expect, test } from 'vitest';
import { comingBack, type Done, sumsOf } from './weeks';

const day = 24 * 60 * 60 * 1000;
const done = (at: number, met: boolean, part: Partial<Done> = {}): Done => ({
  ...{ learner: 'Ada', topic: 'tow-fit', name: 'x', title: 'X', exercise: 'predict' },
  ...{ at: at * day, met },
  ...part,
});
const days = (all: readonly Done[]) => comingBack(all).map(({ due }) => due / day);

test('what was missed comes back after one day, met after three and seven more, then never', () => {
  expect(days([done(0, true)])).toEqual([]);
  expect(days([done(0, false)])).toEqual([1]);
  expect(days([done(0, false), done(1, true)])).toEqual([4]);
  expect(days([done(0, false), done(1, true), done(4, true)])).toEqual([11]);
  expect(days([done(0, false), done(1, true), done(4, true), done(11, true)])).toEqual([]);
  expect(days([done(0, false), done(1, true), done(4, false)])).toEqual([5]);
});

test('every learner, case and exercise comes back by itself, in whatever order they are kept', () => {
  const all = [
    done(3, true, { learner: 'Ben' }),
    done(2, false, { learner: 'Ben' }),
    done(1, false),
    done(0, false, { exercise: 'spot' }),
  ];
  expect(
    comingBack(all).map(({ learner, exercise, due }) => [learner, exercise, due / day]),
  ).toEqual([
    ['Ada', 'spot', 1],
    ['Ada', 'predict', 2],
    ['Ben', 'predict', 6],
  ]);
});

test('mistakes are counted by learner', () => {
  const all = [
    done(0, false, { mistake: 'dry' }),
    done(1, false, { mistake: 'dry', isCertain: true }),
    done(2, false, { mistake: 'brochure' }),
    done(3, true, { learner: 'Ben', isCertain: true }),
  ];
  expect(sumsOf(all)).toEqual([
    { learner: 'Ada', of: 3, met: 0, misled: 1, mistakes: { dry: 2, brochure: 1 } },
    { learner: 'Ben', of: 1, met: 1, misled: 0, mistakes: {} },
  ]);
});
