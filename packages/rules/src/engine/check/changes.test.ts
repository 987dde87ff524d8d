import { describe, expect, test } from 'vitest';
import { towFit } from '../../topics/tow-fit/index';
import type { Change } from '../define/changes';
import { formula, shelf, source } from '../define/small-topic.fixture';
import { compile } from '../formula/compile';
import { ratingsOf } from './changes';
import { sayProblem } from './messages';
import { checkTopic } from './topic';

const said = { says: 'Change it from {from} to {to}.', asks: 1, source } as const;
const lighter: Change = { ...said, kind: 'less', fact: 'box.weight', step: 1 };
const told = (...changes: readonly Change[]): string =>
  checkTopic({ ...shelf, changes })
    .map(sayProblem)
    .join('\n');

test('a change of what is loaded has nothing told against it', () => {
  expect(told(lighter)).toBe('');
  expect(checkTopic(towFit)).toEqual([]);
});

describe('a change to a rating is refused', () => {
  test('where the rating is a limit through a formula', () => {
    expect(told({ ...lighter, fact: 'shelf.rating' })).toBe(
      'changes shelf.rating: “shelf.rating” is a rating that something is held against; ratings are not changed.',
    );
  });

  test('where it is one of several facts changed in one proportion', () => {
    const scaled = ['box.weight', 'shelf.rating'];
    const change = { kind: 'scale', fact: 'box.weight', scaled, shown: 'load.total' } as const;
    expect(told({ ...said, ...change, step: 1, least: 0.5 })).toContain(
      '“shelf.rating” is a rating',
    );
  });

  test('where it is used on the other side too, and where it is set to something else', () => {
    const twice = {
      ...shelf.formulas,
      'load.total': formula('box.weight + box.lid + 0 * shelf.rating + sum(boxes.weight)'),
    };
    const change: Change = {
      ...said,
      kind: 'set',
      fact: 'shelf.rating',
      to: { sameAs: 'box.weight' },
    };
    const problems = checkTopic({ ...shelf, formulas: twice, changes: [change] }).map(sayProblem);
    expect(problems.join('\n')).toContain('“shelf.rating” is a rating');
  });

  test.each(
    Object.keys(towFit.facts).filter((id) =>
      /Rating|gvwr|gcwr|gawr|Capacity|max[A-Z]|Carried|Payload|Above/.test(id),
    ),
  )('in tow fit: %s', (fact) => {
    const change: Change = { ...said, kind: 'less', fact, step: 1 };
    const problems = checkTopic({ ...towFit, changes: [change] }).map(sayProblem);
    expect(problems.join('\n')).toContain(`“${fact}” is a rating`);
  });

  test('what only chooses between two ratings is none', () => {
    const ratings = ratingsOf(towFit, compile(towFit));
    expect(ratings.has('vehicle.maxTongueDistributed')).toBe(true);
    expect(ratings.has('hitch.distribution')).toBe(false);
    expect(ratings.has('trailer.dryWeight')).toBe(false);
  });
});

describe('a change that cannot be carried out is refused', () => {
  test.each([
    [{ ...lighter, fact: 'no.such' }, 'it names “no.such”, which is no fact'],
    [{ ...lighter, column: 'size', fact: 'boxes' }, 'there is no “boxes.size”'],
    [{ ...lighter, says: 'Leave {row}.' }, 'it says “{row}”'],
    [{ ...lighter, step: 0 }, 'its step is 0'],
    [{ ...lighter, source: { ...source, cite: ' ' } }, 'it has no source'],
    [{ ...lighter, onlyIf: { fact: 'no.such', is: 'yes' } }, '“no.such”, which is no fact'],
    [
      { ...said, kind: 'set', fact: 'shelf.kind', to: { option: 'elm' } },
      '“elm” is no option of shelf.kind',
    ],
    [
      {
        ...said,
        kind: 'scale',
        fact: 'box.weight',
        scaled: ['box.weight'],
        shown: 'no.sum',
        step: 1,
        least: 0,
      },
      '“no.sum”, which is no formula',
    ],
  ] as const)('%j', (change, why) => {
    expect(told(change)).toContain(why);
  });

  test('two that ask alike and are measured in different units', () => {
    const nearer: Change = { ...said, kind: 'shift', fact: 'shelf.span', step: 1 };
    expect(told(lighter, nearer)).toContain('give it a number of its own');
    expect(told(lighter, { ...nearer, asks: 2 })).not.toContain('give it a number of its own');
  });
});
