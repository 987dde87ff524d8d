import { whyTooMuch } from '../aside/first';
import { filedCase } from '../state/filed';
import { frontLine } from '../state/front-line';
import type { Group, GroupCase } from '../state/group';
import { pack, unpack } from '../state/link';
import { isExercise } from '../state/practice';

/** A class as it travels to a learner's phone: who takes part, and which cases. */
export type PassedOn = {
  readonly id: string;
  readonly learners: readonly string[];
  readonly cases: readonly GroupCase[];
};

/** A case that came with the page has neither title nor text; the exercise stands last, where it is not to predict. */
type Written = readonly [
  topic: string,
  name: string,
  title: string,
  text?: string,
  exercise?: string,
];

/** A case that came with the page travels by its address, as short as may be; one that was changed, whole. */
async function written({ topic, name, title, text, exercise }: GroupCase): Promise<Written> {
  const isFiled = (await filedCase(topic, name)) === text;
  if (!isFiled) return exercise ? [topic, name, title, text, exercise] : [topic, name, title, text];
  return exercise ? [topic, name, '', '', exercise] : [topic, name, ''];
}

export async function packClass({ id, learners, cases }: Group): Promise<string> {
  return pack(JSON.stringify([id, learners, await Promise.all(cases.map(written))]));
}

const isText = (value: unknown): value is string => typeof value === 'string';
const isWritten = (value: unknown): value is Written =>
  Array.isArray(value) && value.length >= 3 && value.length <= 5 && value.every(isText);

const damaged = 'This link is no class, or is damaged; ask for it once more.';

/** @throws Error whose message is one sentence for the learner. */
async function unpackClass(packed: string): Promise<PassedOn> {
  const text = await unpack(packed);
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    throw new Error(damaged);
  }
  const [id, learners, cases]: readonly unknown[] = Array.isArray(value) ? value : [];
  if (!isText(id) || !Array.isArray(learners) || !learners.every(isText)) throw new Error(damaged);
  if (!Array.isArray(cases) || !cases.every(isWritten) || cases.length > 200) {
    throw new Error(damaged);
  }
  const whole = await Promise.all(
    cases.map(async ([topic, name, title, own, exercise]): Promise<GroupCase> => {
      const found = own || (await filedCase(topic, name));
      if (found === undefined) {
        throw new Error(
          `This page has no case “${title || name}”; reload it, or ask for the link once more.`,
        );
      }
      const said = title || frontLine(found, 'title') || name;
      return { topic, name, title: said, text: found, ...(isExercise(exercise) && { exercise }) };
    }),
  );
  return { id, learners, cases: whole };
}

/**
 * The class of a link. Cases in it that did not come with the page are read and judged beside it first.
 *
 * @throws Error whose message is one sentence for the learner.
 */
export async function openedClass(packed: string): Promise<PassedOn> {
  const passed = await unpackClass(packed);
  const filed = await Promise.all(passed.cases.map(({ topic, name }) => filedCase(topic, name)));
  const others = passed.cases.filter(({ text }, at) => text !== filed[at]);
  const says = others.length === 0 ? undefined : await whyTooMuch('This link', others);
  if (says !== undefined) throw new Error(says);
  return passed;
}
