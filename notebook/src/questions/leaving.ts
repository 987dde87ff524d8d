import { masked } from '@tarebook/record';
import { type Given, given } from '../state/given';
import type { Round } from '../state/round';
import type { Left } from './events';
import { dayOf } from './known';
import { speakerNow } from './record-desk';

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
export function waitsFor({ form, answered }: Left, day: string): string {
  if (form === 'slip') return `whoever it was handed to on ${day}`;
  const [ask] = answered?.asks ?? [];
  return `${ask ?? 'an answer'} (asked back on ${day})`;
}

/** What a round said, one record a question. */
export const givenIn = ({ items }: Round, now: Date, catalogue: string): readonly Given[] =>
  items.map(({ channel, asks, answer, saved }) =>
    given(
      {
        ...{ day: dayOf(now), by: speakerNow(), channel, form: 'in a round', text: answer },
        ...{ question: asks, saved: recordOf(saved), catalogue },
      },
      now.getTime(),
    ),
  );
