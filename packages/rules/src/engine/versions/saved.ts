import * as z from 'zod/mini';
import type { Asked } from '../answer/answer';
import type { HouseAnswer } from '../answer/shapes';
import { sayProblem } from '../check/messages';
import { InputError } from '../check/problem';
import { isVersion } from '../define/order';
import type { HouseLayer } from '../house/shapes';
import type { SpreadOptions } from '../spread/shapes';
import { mostDraws, mostSeed } from '../spread/spread';

function makeShape() {
  z.config({ jitless: true });
  const text = z.string();
  const day = text.check(z.regex(/^\d{4}-\d{2}-\d{2}$/));
  const cell = z.union([text, z.object({ lo: z.number(), hi: z.number(), unit: text })]);
  const given = z.record(text, z.union([cell, z.array(z.record(text, cell))]));
  const whole = (least: number, most: number) =>
    z.number().check(z.refine((n) => Number.isInteger(n) && n >= least && n <= most));
  const houseChoice = z.object({
    id: text,
    value: z.number(),
    unit: text,
    from: day,
    reason: text,
  });
  return z.object({
    topic: text,
    rules: text.check(z.refine(isVersion)),
    asOf: day,
    asked: z.object({ facts: given, readFrom: z.optional(z.record(text, text)) }),
    outcome: text,
    binding: z.nullable(text),
    limits: z.array(z.looseObject({ id: text, state: text })),
    values: z.record(text, z.looseObject({ unit: text })),
    findings: z.array(z.looseObject({ id: text, level: text })),
    parameters: z.array(z.looseObject({ id: text, value: z.number() })),
    house: z.optional(z.nullable(z.object({ name: text, parameters: z.array(houseChoice) }))),
    remedies: z.optional(z.array(z.looseObject({}))),
    why: z.optional(z.looseObject({})),
    spread: z.optional(z.looseObject({ draws: whole(1, mostDraws), seed: whole(0, mostSeed) })),
  });
}

let made: ReturnType<typeof makeShape> | undefined;
function shape(): ReturnType<typeof makeShape> {
  made ??= makeShape();
  return made;
}

/** A verdict as it was saved: what it was asked, under which rules, and all that came out. */
export type Saved = {
  readonly topic: string;
  /** The version of the rule set. */
  readonly rules: string;
  readonly asOf: string;
  readonly asked: Pick<Asked, 'facts' | 'readFrom'>;
  /** The dealer's own parameters it stood under. */
  readonly house?: Pick<HouseAnswer, 'name' | 'parameters'> | null;
  /** The draws its chances came from. */
  readonly spread?: SpreadOptions;
  /** What would have changed it, where that was asked. */
  readonly remedies?: readonly object[];
  /** Why everything stands as it does, and which facts matter most, where that was told. */
  readonly why?: object;
};

/** The house layer of a saved verdict, as a dealer would write it; none when it stood under none. */
export function houseLayerOf({ topic, house }: Saved): HouseLayer | undefined {
  if (!house) return undefined;
  const parameters = house.parameters.map(
    ({ id, value, unit, from, reason }) => [id, { value, unit, reason, from }] as const,
  );
  return { topic, name: house.name, parameters: Object.fromEntries(parameters) };
}

const isSaved = (value: unknown): value is Saved => shape().safeParse(value).success;

/** What each place of a saved verdict must hold. */
const wanted: Readonly<Record<string, string>> = {
  topic: 'the id of a topic, such as tow-fit',
  rules: 'the version of its rules, such as 1.0.0',
  asOf: 'a day such as 2026-11-01',
  asked: 'the facts as they were given, under `facts`',
  outcome: 'the verdict in one word',
  binding: 'the id of a limit, or null',
  limits: 'a list of limits, each with id and state',
  values: 'results by id, each with its ends and unit',
  findings: 'a list of findings, each with id and level',
  parameters: 'a list of numbers, each with id and value',
  house: 'the dealer’s name, and each parameter with its value, unit, first day and reason',
  remedies: 'a list of changes',
  why: 'sentences by limit and finding',
  spread: 'how many draws there were, and their seed',
};

/** What stands at a path, in a word or two. */
function found(value: unknown, path: readonly PropertyKey[]): string {
  let here = value;
  for (const key of path) {
    if (typeof here !== 'object' || here === null) return 'nothing is there';
    const own = Object.getOwnPropertyDescriptor(here, key);
    if (!own) return 'nothing is there';
    here = own.value;
  }
  if (here === null) return 'null is there';
  if (Array.isArray(here)) return 'a list is there';
  if (typeof here === 'string') return `“${here.slice(0, 40)}” is there`;
  return typeof here === 'object' ? 'an object is there' : `${String(here)} is there`;
}

/**
 * A verdict from its saved JSON, checked for all that a replay needs.
 *
 * @throws InputError naming the first place that is not right, what is there, and what would be.
 */
export function readSaved(value: unknown): Saved {
  if (isSaved(value)) return value;
  const path = shape().safeParse(value).error?.issues[0]?.path ?? [];
  const place = path.length === 0 ? 'the whole' : `\`${path.map(String).join('.')}\``;
  const right = wanted[String(path[0])];
  const advice = right
    ? `a saved verdict has there ${right}`
    : 'give a verdict as `tarebook judge CASE --json` writes it';
  throw new InputError(
    [
      {
        code: 'not-a-saved-answer',
        fact: place,
        found: found(value, path),
        wanted: advice,
      },
    ],
    sayProblem,
  );
}
