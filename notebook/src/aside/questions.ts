import { judged, judgeNote, noteForms, readNote } from '@tarebook/casebook';
import {
  type Again,
  again,
  type Findable,
  type Ledger,
  LedgerError,
  lineReader,
  loadsOf,
  mergeLedgers,
  peopleOf,
  type QuestionPart,
  type ReadMessage,
  reader,
  readLedger,
  searchOver,
  splitBunch,
} from '@tarebook/record';
import {
  answerTraced,
  type FactsGiven,
  type Topic,
  withHouse,
  writtenForm,
} from '@tarebook/rules/engine';
import type {
  Answerable,
  Answered,
  AnswerForm,
  FiledWords,
  NoteText,
  QuestionsAsked,
  QuestionsTold,
} from '../questions/answer-shapes';
import { askedAsCase } from '../questions/as-case';
import { eitherSaid, knownAmong } from '../questions/either';
import { tableOf } from '../questions/table-of';
import { backOf, factsOf, type ReadPart } from '../questions/told-so-far';
import { allowedHouse } from '../state/house-numbers';
import { levelOf } from '../state/level';
import type { Asked } from '../state/questions';
import { loadedTopics, openAllTopics, openTopic } from '../state/topics';
import { madeOf } from './either';

type Tell = (told: QuestionsTold) => void;

/** So many are read in one go; then what was read is told, and whoever asks anew is heard. */
const inOneGo = 25;
/** Behind the first screens more are told at a time, so that the page has less to draw. */
const inOneGoLater = 100;
const later = 100;
const breath = (): Promise<void> => new Promise((done) => setTimeout(done));

/** The cases and notes that came with the page, by the words they are found by. */
const findable = (filed: FiledWords): readonly Findable[] =>
  Object.entries(filed).flatMap(([topic, { cases }]) =>
    Object.entries(cases).map(([name, text]) => ({
      ...{ path: `${topic}/${name}`, topic, title: name.replaceAll('-', ' '), text },
    })),
  );

let search: ReturnType<typeof searchOver> | undefined;
let about: ReturnType<typeof lineReader> | undefined;

/** A question whose topic a person chose, read once more for that topic. */
function forTopic(part: QuestionPart, chosen: string): QuestionPart {
  const { people: _, loads: __, open: before = [], ...plain } = part;
  const none = { ...plain, topic: null, because: [], facts: {}, words: {}, ask: [] };
  const topic = Object.hasOwn(loadedTopics, chosen) ? loadedTopics[chosen] : undefined;
  if (!topic) return none;
  about ??= lineReader(loadedTopics);
  const { marks } = about(part.text, chosen);
  const told = marks.flatMap((mark) => (mark.kind === 'fact' ? [mark] : []));
  const people = peopleOf(topic, part.text);
  const facts = Object.fromEntries(told.map(({ fact, value }) => [fact, value]));
  const said = told.map(({ fact, from, to }) => [fact, part.text.slice(from, to)]);
  const loads = loadsOf(topic, part.text);
  const open = before.flatMap((each) => {
    const among = knownAmong(topic, each);
    return among.length > 1 ? [{ ...each, among }] : [];
  });
  return {
    ...{ ...none, topic: chosen, facts, words: Object.fromEntries(said) },
    ...(people.length > 0 && { people }),
    ...(loads.length > 0 && { loads }),
    ...(open.length > 0 && { open }),
    ask: asksOf(topic, facts),
  };
}

const asksOf = (topic: Topic, facts: FactsGiven): readonly string[] =>
  answerTraced(topic, { facts })
    .missing.filter(({ fact }) => !Object.hasOwn(facts, fact))
    .slice(0, 3)
    .map((each) => each.ask);

/** As a person corrected it: another topic, facts set right, and what came back by a link. */
function asChosen(read: ReadMessage, asked: Asked): ReadMessage {
  const { topics } = asked;
  const parts = read.parts.map((part): ReadPart => {
    const chosen = Object.hasOwn(topics, part.text) ? topics[part.text] : undefined;
    const now = chosen === undefined || chosen === part.topic ? part : forTopic(part, chosen);
    const topic = now.topic === null ? undefined : loadedTopics[now.topic];
    const isMended = Object.keys(asked.mended?.[part.text] ?? {}).length > 0;
    if (!topic || (!isMended && Object.keys(backOf(asked, now)).length === 0)) return now;
    try {
      return { ...now, ask: asksOf(topic, factsOf(asked, now)) };
    } catch (problem) {
      // One message that cannot be answered never keeps the others from being read.
      const why = problem instanceof Error ? problem.message : String(problem);
      const what = isMended ? 'What is told' : 'What came back';
      const refused = `${what} cannot be answered with: ${why}`;
      return { ...now, ask: [], refused };
    }
  });
  return { ...read, parts };
}

let wanted = 0;

type ReadAsked = Extract<QuestionsAsked, { ask: 'read' }>;

async function read({ messages, turn, filed }: ReadAsked, tell: Tell): Promise<void> {
  // While this code is still coming, the later of two may be heard first.
  if (turn < wanted) return;
  wanted = turn;
  await openAllTopics();
  search ??= searchOver(findable(filed), loadedTopics);
  const before = Object.entries(filed).flatMap(([topic, { asked }]) =>
    Object.values(asked).map((text) => ({ topic, text })),
  );
  const readOne = reader({ topics: loadedTopics, before });
  const of = messages.length;
  const all: ReadMessage[] = [];
  for (let at = 0; at < of || at === 0; at = all.length) {
    if (wanted !== turn) return;
    const some = messages.slice(at, at + (at < later ? inOneGo : inOneGoLater));
    const found = some.map((each) => asChosen(readOne(each), each));
    all.push(...found);
    tell({ told: 'read', turn, read: found, done: all.length, of, near: false });
    if (of === 0) return;
    await breath();
  }
  // What is filed near to a question takes longest to find, and nobody waits for it.
  for (let at = 0; at < of; at += inOneGo) {
    if (wanted !== turn) return;
    const found = all.slice(at, at + inOneGo).map(withNear);
    tell({ told: 'read', turn, read: found, done: of, of, near: at + inOneGo >= of });
    await breath();
  }
}

/** With the case or note that is nearest to each question; of a topic, its own cases. */
function withNear(read: ReadMessage): ReadMessage {
  const parts = read.parts.map((part) => {
    const { topic } = part;
    const near = search?.(part.text).find((hit) =>
      topic === null ? !Object.hasOwn(loadedTopics, hit.topic) : hit.topic === topic,
    );
    return { ...part, answeredBy: near?.path ?? null };
  });
  return { ...read, parts };
}

/**
 * Which form fits: what is decided goes to whoever asked; what told nothing, to everybody; aloud
 * nobody is asked back.
 */
function fitting(isDecided: boolean, { facts, form }: Answerable): AnswerForm {
  if (form === 'aloud') return isDecided ? 'spoken' : 'everybody';
  if (isDecided) return 'post';
  return Object.keys(facts).length === 0 ? 'everybody' : 'askBack';
}

/** The form that was wanted, else the short one. */
const formOf = (fits: AnswerForm, { form }: Answerable): AnswerForm =>
  form === 'aloud' ? fits : (form ?? 'short');

async function answerOf(of: Answerable): Promise<Answered | undefined> {
  const { topic: id, note, facts, house, day } = of;
  if (note !== null) return noteAnswer(note, of);
  const plain = id === null ? undefined : await openTopic(id);
  if (!plain) return undefined;
  const layer = house && allowedHouse(plain, house).house;
  const topic = layer ? withHouse(plain, layer) : plain;
  const asked = { facts, asOf: day };
  const answer = answerTraced(topic, asked);
  const level = levelOf(topic.outcomes, answer.outcome);
  const fits = fitting(level !== 'unknown', of);
  const form = formOf(fits, of);
  const { asking } = of;
  const { text: written, cautions } = writtenForm(form, topic, asked, { asking });
  const [open] = of.open ?? [];
  const isBrief = form === 'short' || form === 'post';
  const made = isBrief ? madeOf(topic, asked, of) : '';
  const asks = open && form === 'askBack' ? `${written}\n${eitherSaid(topic, open)}` : written;
  const text = made || asks;
  return {
    form,
    fits,
    text,
    cautions: made === '' ? cautions : [],
    saved: JSON.parse(JSON.stringify(judged(answer, { facts }))),
    isWarning: level === 'stop',
    doc: askedAsCase(
      topic,
      of.question,
      facts,
      answer.missing.map(({ fact }) => fact),
    ),
    asks: answer.missing.map(({ ask }) => ask),
  };
}

function noteAnswer({ name, text }: NoteText, of: Answerable): Answered | undefined {
  const note = readNote(text);
  if (note.troubles.length > 0) return undefined;
  const found = judgeNote(note, of.day);
  const fits = of.form === 'aloud' ? 'spoken' : 'post';
  const form = formOf(fits, of);
  const { goodUntil, front } = note;
  return {
    form,
    fits,
    text: noteForms(found)[form],
    cautions: [],
    saved: { topic: 'note', outcome: found.outcome, goodUntil, title: front.title, name },
    isWarning: false,
    asks: [],
  };
}

/** A ledger of a colleague's, beside one's own. */
function mergeOf(mine: Ledger, text: string): Ledger | { readonly says: string } {
  let value: unknown;
  try {
    value = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch {
    return { says: 'This file is no JSON; choose one that was saved here for a colleague.' };
  }
  try {
    // Both as they read, so that the same answer is known as the same.
    return mergeLedgers(readLedger(mine), readLedger(value));
  } catch (problem) {
    if (!(problem instanceof LedgerError)) throw problem;
    return { says: `Nothing was taken in. ${problem.message}` };
  }
}

type AgainAsked = Extract<QuestionsAsked, { ask: 'again' }>;

/** What would be said today, under the dealer's numbers of today. */
async function againOf({ ledger, day, houses }: AgainAsked): Promise<readonly Again[]> {
  await openAllTopics();
  const house = houses.flatMap((each) => {
    const topic = loadedTopics[each.topic];
    return topic ? [allowedHouse(topic, each).house] : [];
  });
  return again(ledger, { topics: loadedTopics, day, house });
}

/** Splits, reads and answers beside the page, so that no bunch of whatever size holds it. */
export async function hearQuestions(asked: QuestionsAsked, tell: Tell): Promise<void> {
  if (asked.ask === 'split') tell({ told: 'split', found: splitBunch(asked.text) });
  else if (asked.ask === 'table') {
    tell({ told: 'table', table: tableOf(asked.text, asked.columns) });
  } else if (asked.ask === 'read') await read(asked, tell);
  else if (asked.ask === 'again') tell({ told: 'again', found: await againOf(asked) });
  else if (asked.ask === 'merge') {
    tell({ told: 'merge', merged: mergeOf(asked.mine, asked.text) });
  } else {
    const answered = await answerOf(asked.of).catch(() => undefined);
    tell({ told: 'answer', key: asked.key, answered });
  }
}
