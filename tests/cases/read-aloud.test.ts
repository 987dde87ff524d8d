import { topics } from '@tarebook/rules';
import { levels, say, urgentOf } from '@tarebook/rules/engine';
import { describe, expect, test } from 'vitest';
import { filedLeft, type Left, untoldLeft } from './left';

/**
 * What a listener hears who sees nothing: every filed case, and every asking of every topic with
 * nothing told. Each check stands for something that was once heard and left the listener at a loss.
 */
const [filed, untold] = [filedLeft(), untoldLeft()];
const all = [...filed, ...untold];

const segments = new Intl.Segmenter('en-US', { granularity: 'sentence' });
const sentencesOf = (text: string): readonly string[] =>
  [...segments.segment(text)].map(({ segment }) => segment.trim()).filter((each) => each !== '');

/** Every sentence heard in which something of the kind is found. */
const hearing = (isFound: (sentence: string) => boolean): readonly string[] =>
  all.flatMap(({ name, forms: { spoken, everybody } }) =>
    [...new Set([...sentencesOf(spoken), ...sentencesOf(everybody)])]
      .filter(isFound)
      .map((sentence) => `${name}: ${sentence}`),
  );

describe('what is read aloud', () => {
  test('there is much to hear', () => {
    expect(filed.length).toBeGreaterThan(400);
    expect(untold.length).toBeGreaterThan(80);
  });

  test('has no number below nothing, but for the cold', () => {
    expect(
      hearing((said) => /\bminus (?!\d+(?: to (?:minus )?\d+)? degrees)\d/i.test(said)),
    ).toEqual([]);
  });

  test('has no number of things larger than what is read out', () => {
    expect(hearing((said) => /\b\d+ (?:things|items)\b/.test(said))).toEqual([]);
  });

  test('has nothing of which there is none: no sum, stop or amp of 0', () => {
    expect(hearing((said) => /(?<![\d.,])0 (?!to )(?!degrees)[a-z]/.test(said))).toEqual([]);
  });

  test('has no verb of an outcome without a verb to it', () => {
    expect(hearing((said) => /\b(?:will|can|may|must|does) hangs\b/.test(said))).toEqual([]);
    const short = Object.values(topics).flatMap((topic) =>
      levels.map((level) => topic.outcomes[level].sentence).filter((said) => /^not\b/i.test(said)),
    );
    expect(short).toEqual([]);
  });
});

/** What the answer itself says is to be done. */
const todosOf = ({ topic, answer }: Left): readonly string[] => [
  ...answer.findings.flatMap(({ messages: { do: todo } }) =>
    todo ? [say(todo, { medium: 'spoken' })] : [],
  ),
  ...Object.values(topic.everybody ?? {}).map(({ otherwise }) => otherwise),
];

describe('where no verdict can be told', () => {
  const open = all.filter(
    ({ level, topic, answer }) => level === 'unknown' && !urgentOf(topic, answer.findings),
  );

  test('many are so', () => {
    expect(open.length).toBeGreaterThan(120);
  });

  test('one question is asked at the most, and it comes last', () => {
    const wrong = open.filter(({ forms: { spoken } }) => {
      const said = sentencesOf(spoken);
      const at = said.findIndex((each) => each.endsWith('?'));
      const questions = said.filter((each) => each.endsWith('?')).length;
      return questions > 1 || (at >= 0 && at < said.length - 2);
    });
    expect(wrong.map(({ name, forms }) => `${name}: ${forms.spoken}`)).toEqual([]);
  });

  test('what to do next is among the first three sentences, which are short, or the last', () => {
    const lost = open.filter((each) => {
      const said = sentencesOf(each.forms.spoken);
      const isAsked = said.slice(-2).some((sentence) => sentence.endsWith('?'));
      const ends = [said.slice(0, 3).join(' '), said.slice(-2).join(' ')];
      return !isAsked && !todosOf(each).some((todo) => ends.some((end) => end.includes(todo)));
    });
    expect(lost.map(({ name, forms }) => `${name}: ${forms.spoken}`)).toEqual([]);
  });
});
