import { expect, test } from 'vitest';
import { given as givenNow } from './given';
import { mergedAsked, withoutLoss } from './merge-questions';
import { recordsOf } from './questions';
import { newRound } from './round';

const pasted = { channel: 'Phone', asker: 'Ruth', askedOn: '', text: 'What pressure?' };
const asked = () => {
  const [one] = recordsOf([pasted], 1);
  if (!one) throw new Error('A message makes a record.');
  return one;
};
const given = givenNow(
  {
    ...{ day: '2026-11-27', by: 'Ines', channel: 'Phone', question: 'What pressure?' },
    ...{ form: 'post', text: 'Sixty-five.', saved: { topic: 'tires', outcome: 'holds' } },
  },
  5,
);

test('two colleagues worded one answer: both wordings stand, and doing it twice adds nothing', () => {
  const mine = { ...asked(), wordings: { 'post What pressure?': 'Mine.' }, done: 0 };
  const theirs = {
    ...asked(),
    wordings: { 'post What pressure?': 'Theirs.', 'letter What pressure?': 'Long.' },
    topics: { 'What pressure?': 'tires' },
    done: 9,
  };
  const both = mergedAsked(mine, theirs);
  expect(both.wordings['post What pressure?']).toContain('Mine.');
  expect(both.wordings['post What pressure?']).toContain('Theirs.');
  expect(both.wordings['letter What pressure?']).toBe('Long.');
  expect(both).toMatchObject({ topics: { 'What pressure?': 'tires' }, done: 9 });
  expect(mergedAsked(both, theirs)).toEqual(both);
});

test('facts that either set right and answers that left of either stand; what one lifted the other reads as it was', () => {
  const mine = {
    ...asked(),
    sent: ['What pressure?'],
    mended: { 'What pressure?': { 'tire.pressure': '65 psi' } },
    lifted: 'heat',
  };
  const theirs = {
    ...asked(),
    urgent: 'heat',
    sent: ['Which ball?'],
    mended: { 'What pressure?': { 'tire.pressure': '60 psi', 'tire.age': '5 years' } },
  };
  expect(mergedAsked(mine, theirs)).toMatchObject({
    ...{ sent: ['What pressure?', 'Which ball?'], lifted: 'heat', urgent: '' },
    mended: { 'What pressure?': { 'tire.pressure': '65 psi', 'tire.age': '5 years' } },
  });
  expect(mergedAsked(theirs, mine).urgent).toBe('heat');
});

test('answers and rounds under one name with different words both stay', () => {
  const here = [asked(), given, newRound(7)];
  const other = { ...given, text: 'Eighty.' };
  const round = { ...newRound(7), opening: 'Good morning.' };
  const written = withoutLoss(here, [asked(), other, given, round]);
  expect(written).toEqual([
    { ...other, id: `${given.id}-2` },
    { ...round, id: `${round.id}-2` },
  ]);
  expect(withoutLoss([...here, ...written], [asked(), other, given, round])).toEqual([]);
});

test('what came back to either stands, fact by fact, mine first', () => {
  const mine = {
    ...asked(),
    back: { Q: { 'trailer.gvwr': '5,000 lb', 'trailer.dryWeight': '3,900 lb' } },
  };
  const theirs = {
    ...asked(),
    back: { Q: { 'trailer.gvwr': '5,200 lb', 'vehicle.gvwr': '6,000 lb' }, R: {} },
  };
  expect(mergedAsked(mine, theirs).back).toEqual({
    Q: { 'trailer.gvwr': '5,000 lb', 'trailer.dryWeight': '3,900 lb', 'vehicle.gvwr': '6,000 lb' },
    R: {},
  });
  expect(mergedAsked(asked(), asked()).back).toBe(undefined);
});

test('what came back by other rules is not mixed: mine stands alone', () => {
  const of = (topic: string, fact: string) => ({
    ...asked(),
    ...{ back: { Q: { [fact]: '1' } }, backTopics: { Q: topic } },
  });
  const both = mergedAsked(of('tow-fit', 'a'), of('battery-runtime', 'b'));
  expect(both.back).toEqual({ Q: { a: '1' } });
  expect(both.backTopics).toEqual({ Q: 'tow-fit' });
  expect(mergedAsked(of('tow-fit', 'a'), of('tow-fit', 'b')).back).toEqual({
    Q: { a: '1', b: '1' },
  });
  expect(mergedAsked(asked(), of('tow-fit', 'b')).backTopics).toEqual({ Q: 'tow-fit' });
});
