import { compareWithExpect } from '@tarebook/casebook';
import type { Topic } from '@tarebook/rules/engine';
import { judge } from '../state/judged';
import { caseText, expectedOf } from './case-text';

/** A line of an author's table: a fact, or a row of a list with its weight or amount. */
export type AuthoredFact = {
  readonly id: string;
  readonly value: string;
  readonly readFrom: string;
};
export type AuthoredRow = {
  readonly list: string;
  readonly label: string;
  readonly amount: string;
};

/** A case as its author types it. */
export type Authored = {
  readonly title: string;
  readonly topic: string;
  readonly question: string;
  readonly facts: readonly AuthoredFact[];
  readonly rows: readonly AuthoredRow[];
  readonly predict: string;
  readonly within: string;
  readonly prompt: string;
  readonly why: string;
  /** What must come out, by its name; '' takes what comes out. */
  readonly expect: Readonly<Record<string, string>>;
};

/** The column of a list that an author fills: the first that has a unit. */
export function amountColumn(topic: Topic, list: string): string | undefined {
  const declared = topic.facts[list];
  if (declared?.kind !== 'rows') return undefined;
  return Object.entries(declared.columns).find(([, column]) => column.unit)?.[0];
}

/** A bare figure takes the unit of what it says. */
const inUnit = (text: string, unit: string | undefined): string =>
  unit && /^[\d.,\s–-]+$/.test(text) && /\d/.test(text) ? `${text.trim()} ${unit}` : text;

function tables(topic: Topic, { facts, rows }: Authored): readonly string[] {
  const cell = (text: string): string => text.replace(/\s+/g, ' ').replace(/\|/g, '\\|').trim();
  const unitOf = (id: string): string | undefined => {
    const fact = topic.facts[id];
    return fact?.kind === 'quantity' ? fact.unit : undefined;
  };
  const told = facts.map(
    ({ id, value, readFrom }) =>
      `| \`${id}\` ${topic.facts[id]?.label ?? ''} | ${cell(inUnit(value, unitOf(id))) || 'unknown'} | ${cell(readFrom)} |`,
  );
  const lists = [...new Set(rows.map(({ list }) => list))].flatMap((list) => {
    const column = amountColumn(topic, list);
    const declared = topic.facts[list];
    if (!column || declared?.kind !== 'rows') return [];
    const head = `| \`${list}\` | ${declared.columns[column]?.label ?? column} |`;
    const own = rows.filter((row) => row.list === list);
    return [
      [
        head,
        '| --- | --- |',
        ...own.map(
          ({ label, amount }) =>
            `| ${cell(label)} | ${cell(inUnit(amount, declared.columns[column]?.unit))} |`,
        ),
      ].join('\n'),
    ];
  });
  const first =
    told.length === 0
      ? []
      : [['| Fact | Value | Read from |', '| --- | --- | --- |', ...told].join('\n')];
  return [...first, ...lists];
}

/** What a case may ask for, and what must be said to come out: the verdict and every figure. */
export function resultsOf(
  topic: Topic,
): readonly { readonly id: string; readonly label: string }[] {
  const figures = Object.entries(topic.formulas).flatMap(([id, { label, unit }]) =>
    unit === 'yes-no' || !topic.headline.includes(id) ? [] : [{ id, label }],
  );
  const limit = { id: 'limit.binding', label: 'the limit that runs out first' };
  return [
    { id: 'verdict', label: 'the verdict' },
    ...(Object.keys(topic.limits).length > 0 ? [limit] : []),
    ...figures,
  ];
}

/** The case document, and all that is wrong with it; nothing is, once the command line accepts it. */
export type Written = {
  readonly text: string;
  readonly wrong: readonly string[];
  /** What came out, by name. */
  readonly found: Readonly<Record<string, string>>;
};

export function written(authored: Authored, topic: Topic): Written {
  const wrong: string[] = [];
  if (authored.title.trim() === '') wrong.push('The title is empty; write one that makes curious.');
  if (authored.question.trim() === '') wrong.push('The question is empty; write what was asked.');
  const parts = {
    title: authored.title.replace(/\s+/g, ' ').trim() || 'A case',
    topic: topic.id,
    level: 'working',
    // Read as prose, whatever is typed: no front matter and no directive of its own.
    question: authored.question.trim().replace(/^(:::|---)/gm, '\\$1') || topic.question,
    tables: tables(topic, authored),
    predict: {
      result: authored.predict,
      within: authored.within.trim(),
      prompt: authored.prompt.trim().replace(/^(:::|---)/gm, '\\$1') || 'What will come out?',
    },
    why: authored.why.trim().replace(/^(:::|---)/gm, '\\$1'),
  };
  const names = [...new Set(['verdict', authored.predict])];
  const first = judge(caseText({ ...parts, expect: [] }));
  const { answer } = first;
  if (!answer || !first.current) {
    const troubles = first.doc.troubles.map(({ says }) => says);
    return { text: caseText({ ...parts, expect: [] }), wrong: [...wrong, ...troubles], found: {} };
  }
  const found = Object.fromEntries(names.map((name) => [name, expectedOf(answer, name)]));
  const expect = names.map(
    (name) => [name, authored.expect[name]?.trim() || (found[name] ?? '')] as const,
  );
  const text = caseText({ ...parts, expect });
  const { doc } = judge(text);
  const differ = doc.troubles.length > 0 ? [] : compareWithExpect(doc, answer);
  return {
    text,
    found,
    wrong: [
      ...wrong,
      ...doc.troubles.map(({ says }) => says),
      ...differ.map(
        ({ name, expected, found: came }) =>
          `${name}: you say “${expected}”, and “${came}” comes out.`,
      ),
    ],
  };
}
