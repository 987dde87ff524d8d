import { masked, personalIn, type QuestionPart, type ReadMessage } from '@tarebook/record';
import type { Asked } from '../state/questions';
import { draftOf, isIn, type Round, type Spoken } from '../state/round';
import { type Answered, type AnswerForm, speakable } from './answer-shapes';
import { arranged } from './arrange';
import { asSpoken, type Heard } from './as-spoken';
import { nextAsRule, withoutNext } from './for-round';
import { formFor } from './form-for';
import { soughtOf } from './known';
import { grouped } from './order';
import type { Sought } from './reader';
import { subjectOf } from './spoken-bare';
import { withUnread } from './unread';

type Answer = (of: Sought) => Promise<Answered | undefined>;

/** How an answer is chosen for the round. */
type Chosen = {
  readonly answer: Answer;
  /** The form that the card shows; absent: the one that was chosen for that question. */
  readonly form?: AnswerForm;
  /** All that its message asks, in its order. */
  readonly parts?: readonly QuestionPart[];
};

/** The answer that the card shows, where it may be said aloud; else what may be, to everybody. */
async function shownOf(
  asked: Asked,
  part: QuestionPart,
  { answer, form }: Chosen,
): Promise<Answered | undefined> {
  const shown = soughtOf(asked, part, form ?? formFor(asked, part) ?? null);
  if (!shown) return undefined;
  const card = await answer(shown);
  if (!card || speakable.has(card.form)) return card;
  const aloud = soughtOf(asked, part, 'aloud');
  return aloud && answer(aloud);
}

/** A draft as all hear it; where it only asks, what is known to everybody takes its place. */
async function saidToAll(
  asked: Asked,
  part: QuestionPart,
  { text }: Answered,
  { answer }: Chosen,
): Promise<string> {
  const said = withoutNext(text);
  if (said !== '') return said;
  const sought = soughtOf(asked, part, 'aloud');
  const aloud = sought && (await answer(sought));
  const known = aloud && withUnread(aloud, part, personalIn(part.text)).text;
  return withoutNext(known ?? '') || nextAsRule(text);
}

/** What a question is heard with: its message, and the words from which its answer was found. */
function heardIn(
  { text }: Asked,
  part: QuestionPart,
  { parts = [] }: Chosen,
  answer: string,
): Heard {
  const { words, people = [], loads = [], open = [], because } = part;
  const listed = [...people, ...loads, ...open].map((each) => each.words ?? '');
  return {
    subject: subjectOf(text),
    before: parts.slice(0, Math.max(0, parts.indexOf(part))).map((each) => each.text),
    because,
    told: [...Object.values(words), ...listed].filter((each) => each !== ''),
    answer,
  };
}

/** A question as it is spoken, in the words of its card but for what is asked of one person; undefined where nothing answers it. */
export async function spokenOf(
  asked: Asked,
  part: QuestionPart,
  chosen: Chosen,
): Promise<Spoken | undefined> {
  const plain = await shownOf(asked, part, chosen);
  const answered = plain && withUnread(plain, part, personalIn(part.text));
  const written = asked.wordings[`${answered?.form ?? 'own'} ${part.text}`];
  const text = written ?? (answered && (await saidToAll(asked, part, answered, chosen))) ?? '';
  if (text.trim() === '') return undefined;
  const said = {
    asks: masked(asSpoken(part.text, heardIn(asked, part, chosen, text))),
    answer: masked(text),
  };
  return {
    ...{ message: asked.id, question: part.text, channel: asked.channel, name: '' },
    ...{ ...said, drafted: draftOf(said), at: -1 },
    topic: soughtOf(asked, part)?.topic ?? 'note',
    isWarning: answered?.isWarning ?? false,
    ...(answered && answered.cautions.length > 0 && { cautions: answered.cautions }),
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
  chosen: Chosen,
): Promise<Round> {
  const open = messages.filter(({ done, urgent }) => done === 0 && urgent === '');
  const heads = grouped(open.map((asked) => ({ asked, read: readings.get(asked.id) })));
  const wanted = heads.flatMap(([first]) => {
    const parts = first?.read?.parts ?? [];
    return parts.flatMap((part) =>
      first && !isIn(round, first.asked.id, part.text) ? [{ asked: first.asked, part, parts }] : [],
    );
  });
  const found = await Promise.all(
    wanted.map(({ asked, part, parts }) => spokenOf(asked, part, { ...chosen, parts })),
  );
  const fresh = found.filter((each) => each !== undefined);
  return { ...round, items: arranged([...round.items, ...fresh]) };
}

/**
 * A round whose answers follow their questions: what was set right beside a question since is said so.
 * What a person wrote in the round stays, and so does what was printed or spoken.
 */
export async function followed(
  round: Round,
  messages: readonly Asked[],
  readings: ReadonlyMap<string, ReadMessage>,
  chosen: Chosen,
): Promise<Round> {
  const items = await Promise.all(
    round.items.map(async (item) => {
      const asked = messages.find(({ id }) => id === item.message);
      const parts = readings.get(item.message)?.parts ?? [];
      const part = parts.find(({ text }) => text === item.question);
      if (!asked || !part || item.isKept || item.drafted !== draftOf(item)) return item;
      const now = await spokenOf(asked, part, { ...chosen, parts });
      if (!now || now.drafted === item.drafted) return item;
      return { ...now, name: item.name, at: item.at };
    }),
  );
  return items.every((each, at) => each === round.items[at]) ? round : { ...round, items };
}
