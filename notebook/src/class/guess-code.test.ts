import fc from 'fast-check';
import { expect, test } from 'vitest';
import { surenesses } from '../state/group';
import { guessCode, readGuessCode } from './guess-code';
import { leftOpen, type Question } from './predict';

const seed = { seed: Number(process.env.TAREBOOK_SEED ?? 20_261_125) };
const figure: Question = {
  kind: 'number',
  result: 'payload.used',
  label: 'Payload used',
  found: { lo: 1016, hi: 1016, unit: 'lb' },
  within: 30,
};
const word: Question = {
  kind: 'word',
  result: 'verdict',
  label: 'The verdict',
  found: 'fits',
  words: ['fits', 'fits, with care', 'does not fit', 'cannot say'],
};
const questions = [figure, word];
const cases = ['one', 'two'].map((name) => ({ topic: 'tow-fit', name, title: name, text: name }));
const learners = ['Ada', 'Ben', 'Cleo'];
const read = (code: string) => readGuessCode(code, cases, learners, (at) => questions[at]);

test('a guess comes back from its code as it was said, however it is read out', () => {
  const number = fc.integer({ min: -99_999, max: 99_999 }).map((n) => `${n / 10} lb`);
  const guess = fc.oneof(
    fc.record({ case: fc.constant(0), said: fc.oneof(number, fc.constant(leftOpen)) }),
    fc.record({ case: fc.constant(1), said: fc.constantFrom(...word.words) }),
  );
  const sure = fc.option(fc.constantFrom(...surenesses), { nil: undefined });
  fc.assert(
    fc.property(guess, fc.nat({ max: 2 }), sure, (said, learner, how) => {
      const guessed = { ...said, learner, ...(how && { sure: how }) };
      const question = questions[said.case] ?? figure;
      const code = guessCode(guessed, question, 'us') ?? '';
      expect(read(code)).toEqual(guessed);
      expect(read(code.toLowerCase().split('').join(' '))).toEqual(guessed);
      expect(read(code.replaceAll('0', 'O').replaceAll('1', 'I'))).toEqual(guessed);
    }),
    { ...seed, numRuns: 300 },
  );
});

test('what was heard wrongly is asked for once more, and never taken for another guess', () => {
  const code = guessCode({ case: 0, learner: 1, said: '1,016 lb', sure: 'certain' }, figure, 'us');
  expect(code).toMatch(/^AB31016.$/);
  for (const wrong of [
    '',
    'AB',
    `${code}1`,
    code?.replace('6', '7') ?? '',
    code?.replace('10', '1') ?? '',
  ]) {
    expect(read(wrong)).toContain('ask for it once more');
  }
  const elsewhere = guessCode({ case: 9, learner: 1, said: '9 lb' }, figure, 'us') ?? '';
  expect(read(elsewhere)).toContain('of another class');
});

test('a figure said in kilograms is taken down in kilograms; a range is no code', () => {
  const said = guessCode({ case: 0, learner: 0, said: '461 kg' }, figure, 'metric') ?? '';
  expect(read(said)).toMatchObject({ said: '461 kg' });
  expect(guessCode({ case: 0, learner: 0, said: '900–1,000 lb' }, figure, 'us')).toBeUndefined();
});

test('a figure said in another unit is carried in the one that is asked for, as a code has none', () => {
  const inDays: Question = { ...figure, found: { lo: 69.4, hi: 69.4, unit: 'd' } };
  const ask = (code: string) => readGuessCode(code, cases, learners, () => inDays);
  const code = guessCode({ case: 0, learner: 0, said: '1,667 h' }, inDays, 'us') ?? '';
  expect(ask(code)).toMatchObject({ said: '69.4583 d' });
  const ounces = guessCode({ case: 0, learner: 0, said: '16,256 oz' }, figure, 'us') ?? '';
  expect(read(ounces)).toMatchObject({ said: '1016 lb' });
});
