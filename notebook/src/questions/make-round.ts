import { masked, personalIn, type QuestionPart, type ReadMessage } from '@tarebook/record';
import type { Asked } from '../state/questions';
import { guarded } from '../state/reply';
import { isIn, type Round, type Spoken } from '../state/round';
import type { Answered } from './answer-shapes';
import { arranged, asSpoken } from './arrange';
import { soughtOf } from './known';
import { grouped } from './order';
import type { Sought } from './reader';
import { withUnread } from './unread';

type Answer = (of: Sought) => Promise<Answered | undefined>;

/** Forms whose words may be spoken: not what asks back, hands on or is a letter. */
const speakable = ['spoken', 'own', 'post', 'everybody'];

/** What a person wrote of it last, which counts before what the page would say; its own form's first. */
function writtenOf({ wordings }: Asked, { text }: QuestionPart): string | undefined {
  const own = Object.entries(wordings).filter(([place]) =>
    speakable.some((form) => place === `${form} ${text}`),
  );
  const spoken = own.find(([place]) => place.startsWith('spoken '));
  return (spoken ?? own.at(-1))?.[1];
}

/** A question as it is spoken; undefined where nothing answers it. */
export async function spokenOf(
  asked: Asked,
  part: QuestionPart,
  answer: Answer,
): Promise<Spoken | undefined> {
  const sought = soughtOf(asked, part, 'aloud');
  const plain = sought && (await answer(sought));
  const answered = plain && withUnread(plain, part, personalIn(part.text));
  const written = writtenOf(asked, part);
  // A caution that was taken out of it comes back, as where it is copied.
  const said = written === undefined ? undefined : guarded(written, answered?.cautions ?? []).text;
  const text = said ?? answered?.text ?? '';
  if (text.trim() === '') return undefined;
  return {
    ...{ message: asked.id, question: part.text, channel: asked.channel, name: '' },
    ...{ asks: masked(asSpoken(part.text)), answer: masked(text), at: -1 },
    topic: sought?.topic ?? 'note',
    isWarning: answered?.isWarning ?? false,
    ...(asked.urgent !== '' && { isUrgent: true }),
    saved: answered?.saved ?? { topic: 'note', outcome: 'holds' },
  };
}

/**
 * A round with everything open that has an answer, one of those that ask the same, in a good order.
 * What is urgent is answered at once, and not left for a round.
 */
export async function withAnswered(
  round: Round,
  messages: readonly Asked[],
  readings: ReadonlyMap<string, ReadMessage>,
  answer: Answer,
): Promise<Round> {
  const open = messages.filter(({ done, urgent }) => done === 0 && urgent === '');
  const heads = grouped(open.map((asked) => ({ asked, read: readings.get(asked.id) })));
  const wanted = heads.flatMap(([first]) =>
    (first?.read?.parts ?? []).flatMap((part) =>
      first && !isIn(round, first.asked.id, part.text) ? [{ asked: first.asked, part }] : [],
    ),
  );
  const found = await Promise.all(wanted.map(({ asked, part }) => spokenOf(asked, part, answer)));
  const fresh = found.filter((each) => each !== undefined);
  return { ...round, items: arranged([...round.items, ...fresh]) };
}
