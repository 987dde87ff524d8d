import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  beginGroup,
  type Commitment,
  commit,
  committed,
  type Group,
  goOn,
  isGroup,
  joined,
  markAnew,
  mergedGroups,
  openWorking,
  takeBack,
  waiting,
} from './group';

const seed = { seed: Number(process.env.TAREBOOK_SEED ?? 20_261_125) };
const cases = ['one', 'two'].map((name) => ({ topic: 'tow-fit', name, title: name, text: name }));
const begun = beginGroup(['Ada', 'Ben', 'Cleo'], cases, 1e12);

/** What a window does, one after another; `at` keeps the two windows' clocks apart. */
const deed = fc.record({
  kind: fc.constantFrom('commit', 'commit', 'commit', 'take back', 'open', 'on'),
  learner: fc.constantFrom('Ada', 'Ben', 'Cleo'),
  said: fc.constantFrom('fits', 'does not fit', '900 lb'),
});
type Deed = typeof deed extends fc.Arbitrary<infer D> ? D : never;
const after = (deeds: readonly Deed[], clock: number): Group =>
  deeds.reduce((group: Group, { kind, learner, said }, i) => {
    if (kind === 'commit') return commit(group, learner, said, clock + 10 * i);
    if (kind === 'take back') return takeBack(group, learner);
    return kind === 'open' ? openWorking(group) : goOn(group);
  }, begun);

const bySaid = (group: Group): readonly Commitment[] =>
  group.commitments.toSorted((a, b) => a.case - b.case || a.learner.localeCompare(b.learner));

test('two windows never lose a guess: of two the first stays, whichever window is asked', () => {
  fc.assert(
    fc.property(fc.array(deed), fc.array(deed), (here, there) => {
      const [ours, theirs] = [after(here, 1), after(there, 2)];
      const one = mergedGroups(ours, theirs);
      expect(bySaid(mergedGroups(theirs, ours))).toEqual(bySaid(one));
      expect(mergedGroups(one, theirs)).toEqual(one);
      expect(isGroup(JSON.parse(JSON.stringify(one)))).toBe(true);
      for (const each of [...ours.commitments, ...theirs.commitments]) {
        const kept = committed(one, each.learner, each.case);
        expect(kept?.at).toBeLessThanOrEqual(each.at);
      }
    }),
    { ...seed, numRuns: 200 },
  );
});

test('a mistyped guess may be taken back until the working is open, in both windows', () => {
  const typed = commit(begun, 'Ada', '90 lb', 1, { sure: 'certain', why: 'the label' });
  const back = takeBack(typed, 'Ada');
  expect(waiting(back)).toContain('Ada');
  expect(waiting(mergedGroups(back, typed))).toContain('Ada');
  const again = commit(back, 'Ada', '900 lb', 2);
  expect(committed(mergedGroups(typed, again), 'Ada')?.said).toBe('900 lb');
  const open = openWorking(again);
  expect(takeBack(open, 'Ada')).toBe(open);
});

test('who comes late takes part from now on', () => {
  const later = joined(begun, 'Dot');
  expect(waiting(later)).toContain('Dot');
  expect(joined(later, 'Dot')).toBe(later);
  expect(mergedGroups(begun, later).learners).toContain('Dot');
});

test('the trainer’s mark is kept, in both windows, and the last one counts', () => {
  const said = commit(begun, 'Ada', 'nothing of it', 1, {
    sure: 'certain',
    why: 'They will not do.',
  });
  expect(markAnew(said, 'Ada', 'The verdict', 2)).toBe(said);
  const open = openWorking(said);
  const marked = markAnew(open, 'Ada', 'The verdict', 5);
  for (const one of [mergedGroups(marked, open), mergedGroups(open, marked)]) {
    expect(committed(one, 'Ada')).toEqual({
      ...{ case: 0, learner: 'Ada', said: 'The verdict', at: 1, marked: 5 },
      ...{ sure: 'certain', why: 'They will not do.' },
    });
    expect(isGroup(JSON.parse(JSON.stringify(one)))).toBe(true);
  }
  const back = markAnew(marked, 'Ada', 'nothing of it', 5);
  expect(committed(mergedGroups(marked, back), 'Ada')?.said).toBe('nothing of it');
  expect(markAnew(open, 'Ben', 'The verdict', 5)).toBe(open);
});
