import { masked, type QuestionPart } from '@tarebook/record';
import { houseOf } from '../state/house';
import type { Asked } from '../state/questions';
import type { Sought } from './reader';
import { factsOf, openOf } from './told-so-far';

export const dayOf = (now: Date): string => {
  const two = (value: number): string => String(value).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
};

/** What a question is about: a rule set’s id, `note/<name>`, or `none`. A person’s choice counts first. */
export const aboutOf = ({ topics }: Asked, { text, topic }: QuestionPart): string =>
  (Object.hasOwn(topics, text) ? topics[text] : undefined) ?? topic ?? 'none';

/** What an answer to a question hangs on; undefined where nothing here answers it. */
export function soughtOf(
  asked: Asked,
  part: QuestionPart,
  form: Sought['form'] = null,
): Sought | undefined {
  const about = aboutOf(asked, part);
  if (about === 'none') return undefined;
  const note = /^note\/(.+)$/.exec(about)?.[1] ?? null;
  // The rules are asked again for what a person chose; until then its facts are those of another.
  if (note === null && part.topic !== about) return undefined;
  const day = dayOf(new Date());
  const topic = note === null ? about : null;
  const house = topic === null ? undefined : houseOf(topic);
  const facts = note === null ? factsOf(asked, part) : {};
  const open = note === null ? openOf(asked, part) : [];
  return {
    topic,
    note,
    ...(note === null && part.asking !== undefined && { asking: part.asking }),
    ...(note === null && part.look !== undefined && { look: part.look }),
    ...(open.length > 0 && { open: open.map(({ value, among }) => ({ value, among })) }),
    facts,
    question: masked(part.text),
    house,
    day,
    form,
  };
}
