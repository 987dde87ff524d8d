import * as z from 'zod/mini';
import { sayProblem } from '../check/messages';
import { InputError, type Problem } from '../check/problem';
import { checkTopic } from '../check/topic';
import type { Topic } from '../define/shapes';
import { allFormulas } from '../define/topic';
import { isVersion } from './order';

z.config({ jitless: true });

/**
 * The shape of a rule set as `publish` writes it, loosely: what is not named here stays as it is,
 * so that a version kept before some entry was invented, or after, can be read all the same. What
 * the entries say is `checkTopic`'s to judge.
 */
const text = z.string();
const source = z.object({ class: text, cite: text });
const group = <T extends z.ZodMiniType>(entry: T) => z.record(text, entry);
const labelled = { label: text, source };
const column = { label: text, unit: text, least: z.number(), most: z.number() };
const words = { label: text, ask: text, where: text };
const silent = <T extends z.ZodMiniType>(value: T) =>
  z.optional(z.object({ value, says: text, source }));

const fact = z.discriminatedUnion('kind', [
  z.object({
    ...words,
    ...column,
    kind: z.literal('quantity'),
    silent: silent(z.number()),
  }),
  z.object({ ...words, kind: z.literal('choice'), options: z.array(text), silent: silent(text) }),
  z.object({ ...words, kind: z.literal('yes-no'), silent: silent(z.enum(['yes', 'no'])) }),
  z.object({
    ...words,
    kind: z.literal('rows'),
    columns: group(z.object({ ...column, required: z.boolean() })),
    silent: z.object({ value: z.literal('none'), says: text, source }),
  }),
]);

const parameter = z.object({
  ...labelled,
  unit: text,
  values: z.array(z.object({ from: text, value: z.number() })),
  range: z.optional(z.tuple([z.number(), z.number()])),
});

const condition: z.ZodMiniType = z.lazy(() =>
  z.union([
    z.object({ all: z.array(condition) }),
    z.object({ any: z.array(condition) }),
    z.object({
      fact: text,
      operator: text,
      value: z.union([z.object({ fact: text }), text, z.array(text)]),
    }),
  ]),
);
const ruling = z.optional(z.object({ when: condition, says: text }));
const names = z.optional(z.array(text));
const outcome = z.object({ id: text, words: text, sentence: text });

const table = z.object({
  ...labelled,
  keyUnit: text,
  valueUnit: text,
  rows: z.array(z.tuple([z.number(), z.number()])),
});

const wordTable = z.object({ ...labelled, valueUnit: text, values: group(z.number()) });

const decision = z.object({
  ...labelled,
  hit: z.enum(['unique', 'first']),
  on: z.array(text),
  rows: z.array(z.object({ when: z.array(z.union([text, z.array(text)])), gives: text })),
  results: group(
    z.object({ label: text, says: text, level: z.optional(z.enum(['ok', 'care', 'stop'])) }),
  ),
});

const selection = z.object({
  ...labelled,
  amounts: group(text),
  items: group(
    z.object({ ...labelled, when: z.optional(text), amounts: group(text), because: text }),
  ),
});

const ranking = z.object({
  ...labelled,
  first: z.enum(['least', 'most']),
  of: group(z.object({ by: text, says: text })),
});

const reckoned = { ...labelled, unit: text };
const simulation = z.object({
  ...labelled,
  steps: z.union([z.number(), text]),
  states: group(z.object({ ...reckoned, start: text, next: text })),
  values: group(z.object({ ...reckoned, is: text })),
});

const shape = z.object({
  id: text,
  version: text.check(z.refine(isVersion)),
  title: text,
  question: text,
  facts: group(fact),
  parameters: group(parameter),
  tables: group(table),
  wordTables: z.optional(group(wordTable)),
  decisions: z.optional(group(decision)),
  selections: z.optional(group(selection)),
  rankings: z.optional(group(ranking)),
  simulations: z.optional(group(simulation)),
  formulas: group(z.object({ ...labelled, unit: text, is: text })),
  limits: group(
    z.object({
      ...labelled,
      short: text,
      used: text,
      limit: text,
      empty: z.optional(text),
      margin: z.optional(text),
      askedBy: names,
    }),
  ),
  findings: group(
    z.object({
      ...labelled,
      otherwise: text,
      unsure: z.optional(text),
      stop: ruling,
      care: ruling,
      askedBy: names,
      askedByKnown: names,
    }),
  ),
  outcomes: z.object({ ok: outcome, care: outcome, stop: outcome, unknown: outcome }),
  apart: group(text),
  headline: z.array(text),
  assumptions: z.array(z.object({ when: text, says: text, source })),
  cautions: z.array(z.object({ says: text, source })),
});

const isTopic = (value: unknown): value is Topic => shape.safeParse(value).success;

const refuse = (place: string, found: string, wanted: string): InputError => {
  const problem: Problem = { code: 'rule-set', fact: place, found, wanted };
  return new InputError([problem], sayProblem);
};

/** Where the shape is broken first, as `facts.vehicle.gvwr.unit`. */
function firstFault(value: unknown): string {
  const { error } = shape.safeParse(value);
  return error?.issues[0]?.path.map(String).join('.') || 'the whole';
}

/** The formulas that limits and the like add of themselves are published too; they are left out. */
function declaredOnly(topic: Topic): Topic['formulas'] {
  const added = allFormulas({ ...topic, formulas: {} });
  return Object.fromEntries(Object.entries(topic.formulas).filter(([name]) => !added.has(name)));
}

/**
 * A rule set from its published JSON, ready to be asked as it was then.
 *
 * @throws InputError naming what is no rule set, or everything that is wrong with it.
 */
export function topicFromPublished(value: unknown): Topic {
  if (!isTopic(value)) {
    throw refuse(
      firstFault(value),
      'it is missing or not what it should be',
      'give a rule set as published',
    );
  }
  const { conditions: _, ...kept }: Topic & { readonly conditions?: unknown } = value;
  const topic: Topic = { ...kept, formulas: declaredOnly(value) };
  const problems = checkTopic(topic);
  if (problems.length > 0) throw new InputError(problems, sayProblem);
  return topic;
}
