import { topics } from '@tarebook/rules';
import {
  type Answer,
  type Asked,
  answerTraced,
  type FactsGiven,
  type FormName,
  formOf,
  type Level,
  say,
  urgentOf,
} from '@tarebook/rules/engine';
import { describe, expect, test } from 'vitest';
import { filedLeft, type Left, leftOf } from './left';

/**
 * What was told and is dangerous is heard in whatever form an answer leaves, and nothing beside it
 * says that all is well: over every filed and minimal case, and over every fact that somebody does
 * not know.
 */
const short = ['ticket', 'spoken', 'post', 'everybody'] as const satisfies readonly FormName[];
type Short = (typeof short)[number];

const left = filedLeft();

const letters = (text: string): string => text.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, ' ');

/** Whether a form says it, in its own words and its own units. */
function isSaidIn({ forms, asked }: Left, form: Short, of: Parameters<typeof say>[0]): boolean {
  const medium = form === 'spoken' || form === 'everybody' ? 'spoken' : 'written';
  return letters(forms[form]).includes(letters(say(of, { medium, units: asked.units })).trim());
}

type Finding = Answer['findings'][number];
const isCertain = ({ code }: Finding): boolean => /^\w+\.\d+$/.test(code);
const isAnySaid = (of: Left, form: Short, { messages: { wrong, do: todo } }: Finding): boolean =>
  isSaidIn(of, form, wrong) || (todo !== undefined && isSaidIn(of, form, todo));

const unsaid = (
  of: readonly Left[],
  wanted: (each: Left) => readonly Finding[],
  forms: readonly Short[] = short,
): readonly string[] =>
  of.flatMap((each) =>
    forms.flatMap((form) => {
      const found = wanted(each);
      return found.length === 0 || found.some((finding) => isAnySaid(each, form, finding))
        ? []
        : [`${each.name}, ${form}: ${found[0]?.wrong} | ${each.forms[form]}`];
    }),
  );

const certain = ({ answer }: Left, level: Level): readonly Finding[] =>
  answer.findings.filter((each) => each.level === level && isCertain(each));
const isOver = ({ answer }: Left, level: Level): boolean =>
  answer.limits.some(({ state }) => state === level);
const isUrgent = ({ topic, answer }: Left): boolean =>
  urgentOf(topic, answer.findings) !== undefined;

describe('what was found stands in every form', () => {
  test('what stops it', () => {
    const stopped = left.filter((each) => each.level === 'stop' && !isUrgent(each));
    expect(stopped.length).toBeGreaterThan(100);
    expect(unsaid(stopped, (each) => (isOver(each, 'stop') ? [] : certain(each, 'stop')))).toEqual(
      [],
    );
  });

  test('a limit that is over', () => {
    const over = left.filter(
      (each) => isOver(each, 'stop') && certain(each, 'stop').length === 0 && !isUrgent(each),
    );
    expect(over.length).toBeGreaterThan(40);
    const lost = over.flatMap(({ name, topic, answer, forms }) => {
      const names = answer.limits
        .filter(({ state }) => state === 'stop')
        .flatMap(({ id }) => topic.limits[id]?.short ?? []);
      return short.flatMap((form) =>
        names.some((each) => letters(forms[form]).includes(letters(each).trim()))
          ? []
          : [`${name}, ${form}: ${forms[form]}`],
      );
    });
    expect(lost).toEqual([]);
  });

  test('all that stops it, where there is room for it', () => {
    const lost = left.flatMap((each) => {
      if (each.level !== 'stop' || each.forms.everybody.split(' ').length > 150) return [];
      const missing = certain(each, 'stop').filter((found) => !isAnySaid(each, 'everybody', found));
      return missing.map(({ wrong }) => `${each.name}: ${wrong}`);
    });
    expect(lost).toEqual([]);
  });

  test('what calls for care, whatever else is open', () => {
    const open = left.filter(
      (each) =>
        (each.level === 'unknown' || each.level === 'if') && certain(each, 'care').length > 0,
    );
    expect(open.length).toBeGreaterThan(10);
    expect(unsaid(open, (each) => certain(each, 'care'))).toEqual([]);
    const care = left.filter((each) => each.level === 'care' && !isOver(each, 'care'));
    expect(care.length).toBeGreaterThan(30);
    expect(unsaid(care, (each) => certain(each, 'care'))).toEqual([]);
  });
});

test('beside what stops it nothing is said to be in order', () => {
  const stopped = left.filter(({ level }) => level === 'stop');
  const eased = stopped.flatMap((each) =>
    short.flatMap((form) =>
      each.answer.findings
        .filter(({ level, messages: { wrong } }) => level === 'ok' && isSaidIn(each, form, wrong))
        // A figure that was asked is none of it.
        .filter(({ wrong }) => !/\d/.test(wrong))
        .map(({ wrong }) => `${each.name}, ${form}: ${wrong}`),
    ),
  );
  expect(eased).toEqual([]);
});

/** Every fact that a danger is asked by, told as not known. */
const doubts = Object.values(topics).flatMap((topic) =>
  Object.entries(topic.findings).flatMap(([id, { first, askedBy = [] }]) =>
    first
      ? askedBy.flatMap((fact) => {
          if (topic.facts[fact]?.kind === 'rows') return [];
          const facts: FactsGiven = { [fact]: 'unknown' };
          const each = leftOf(`${topic.id}: ${fact}`, topic, { facts, asOf: '2026-11-01' });
          const danger = each.answer.findings.find((found) => found.id === id);
          return danger?.level === 'unknown' || danger?.level === 'if'
            ? [{ ...each, fact, danger }]
            : [];
        })
      : [],
  ),
);

describe('a danger that somebody does not know of', () => {
  test('is found in many', () => expect(doubts.length).toBeGreaterThan(20));

  test('is said first', () => {
    const late = doubts.flatMap((each) => {
      const dangers = each.answer.findings.filter(({ id }) => each.topic.findings[id]?.first);
      return (['ticket', 'spoken'] as const).flatMap((form) => {
        const opens = { ...each, forms: { ...each.forms, [form]: each.forms[form].slice(0, 260) } };
        return dangers.some((found) => isAnySaid(opens, form, found))
          ? []
          : [`${each.name}, ${form}: ${each.forms[form]}`];
      });
    });
    expect(late).toEqual([]);
  });

  test('is asked first, and by every form the same', () => {
    const asked = doubts.flatMap(({ name, topic, fact, answer, forms }) => {
      const open = answer.missing.some((each) => each.fact === fact);
      if (!open) return [];
      const ask = letters(say({ text: topic.facts[fact]?.ask ?? '' }, { medium: 'spoken' }));
      const first = letters(forms.askBack.split('\n').find((line) => /^1\. /.test(line)) ?? '');
      const next = letters(forms.spoken.split('Find out next: ')[1] ?? ask);
      return first.includes(ask.trim().slice(0, 30)) && next.includes(ask.trim().slice(0, 30))
        ? []
        : [`${name}: ${forms.askBack} | ${forms.spoken}`];
    });
    expect(asked).toEqual([]);
  });
});

/** Every filed case that is stopped, and each danger of its topic that nobody spoke of told as not known. */
const stoppedInDoubt = left.flatMap((of) => {
  const { name, topic, asked, level } = of;
  if (level !== 'stop' || isUrgent(of)) return [];
  const open = Object.values(topic.findings)
    .filter(({ first }) => first)
    .flatMap(({ askedBy = [] }) => askedBy.slice(0, 1))
    .filter((fact) => !Object.hasOwn(asked.facts, fact) && topic.facts[fact]?.kind !== 'rows');
  return open.slice(0, 2).flatMap((fact) => {
    const doubted: Asked = { ...asked, facts: { ...asked.facts, [fact]: 'unknown' } };
    const answer = answerTraced(topic, doubted);
    const dangers = answer.findings.filter(
      ({ id, level: at }) =>
        (at === 'unknown' || at === 'if') &&
        topic.findings[id]?.first === true &&
        topic.findings[id]?.askedBy?.includes(fact),
    );
    const ticket = formOf('ticket', topic, doubted);
    const forms = { ...of.forms, ticket };
    // What nobody knows may leave the stop itself open, as cold does a battery's.
    const isStopped =
      answer.limits.some(({ state }) => state === 'stop') ||
      answer.findings.some((found) => found.level === 'stop');
    return dangers.length === 0 || !isStopped
      ? []
      : [{ ...of, name: `${name}, ${fact}`, asked: doubted, answer, dangers, forms }];
  });
});

test('a ticket says what certainly stops it before a danger of which nobody knows, and both', () => {
  expect(stoppedInDoubt.length).toBeGreaterThan(10);
  const lost = stoppedInDoubt.flatMap((each) => {
    const { name, topic, answer, dangers, forms } = each;
    const [, sentence = ''] = letters(forms.ticket).split(
      letters(topic.outcomes.stop.words).trim(),
    );
    const over = answer.limits.flatMap(({ id, state }) =>
      state === 'stop' ? (topic.limits[id]?.short ?? []) : [],
    );
    const isFirst =
      over.some((short) => sentence.trim().startsWith(letters(short).trim())) ||
      certain(each, 'stop').some(({ wrong }) => sentence.trim().startsWith(letters(wrong).trim()));
    const isBoth = dangers.some((found) => isAnySaid(each, 'ticket', found));
    return isFirst && isBoth ? [] : [`${name}: ${forms.ticket}`];
  });
  expect(lost).toEqual([]);
});
