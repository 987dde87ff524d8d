import { masked } from '@tarebook/record';
import { type Given, given } from '../state/given';
import type { Asked } from '../state/questions';
import type { Round } from '../state/round';
import { leavesOpen } from './answer-shapes';
import type { Left } from './events';
import { dayOf } from './known';
import { speakerNow } from './speaker';

/** What leaves without rules of ours stands on nothing but its words. */
const ofNote = { topic: 'note', outcome: 'holds' };

const recordOf = (value: object): Readonly<Record<string, unknown>> =>
  Object.fromEntries(Object.entries(value));

/** An answer that was copied, as the record keeps it. */
export const givenFrom = (
  { asked, question, form, text, answered }: Left,
  now: Date,
  catalogue: string,
): Given =>
  given(
    {
      ...{ day: dayOf(now), by: speakerNow(), channel: asked.channel, form, text: masked(text) },
      ...{ question: masked(question), saved: answered?.saved ?? ofNote, catalogue },
    },
    now.getTime(),
  );

/** What a question waits for once it was asked back or handed on. */
function waitsFor({ form, answered }: Left, day: string): string {
  if (form === 'slip') return `whoever it was handed to on ${day}`;
  const [ask] = answered?.asks ?? [];
  return `${ask ?? 'an answer'} (asked back on ${day})`;
}

/** What a round said, one record a question that is not in the record yet. */
export const givenIn = (
  { items }: Pick<Round, 'items'>,
  now: Date,
  catalogue: string,
): readonly Given[] =>
  items
    .filter(({ isKept }) => !isKept)
    .map(({ channel, asks, answer, saved }) =>
      given(
        {
          ...{ day: dayOf(now), by: speakerNow(), channel, form: 'in a round', text: answer },
          ...{ question: asks, saved: recordOf(saved), catalogue },
        },
        now.getTime(),
      ),
    );

/**
 * A message once an answer to one of its questions has left: done where that was the last of them,
 * waiting where something was asked back or handed on; undefined where nothing turns.
 */
export function afterLeaving(
  asked: Asked,
  left: Left,
  questions: readonly string[],
  day: string,
): Asked | undefined {
  if (left.form === 'first reply') return undefined;
  if (leavesOpen.has(left.form)) return { ...asked, waits: waitsFor(left, day) };
  // What a person has yet to copy by hand has not left.
  if (!left.isCopied) return undefined;
  const sent = [...new Set([...(asked.sent ?? []), left.question])];
  const isAll = questions.every((each) => sent.includes(each));
  return { ...asked, sent, ...(isAll && { done: Date.now(), waits: '' }) };
}
