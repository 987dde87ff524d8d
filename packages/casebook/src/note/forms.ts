import {
  type Forms,
  fitted,
  ifShort,
  may,
  message,
  must,
  own,
  type Part,
  type Sayable,
  sayer,
  secondsOf,
  type Voice,
  wordsIn,
} from '@tarebook/rules/engine';
import { type JudgedNote, noteSentence, ownerOf } from './judge';
import { paragraphsOf, sentencesOf } from './said';

/** As long as the same form of a worked case may be. */
const words = {
  short: { least: 42, most: 80 },
  spoken: { least: 30, most: 72 },
  everybody: { least: 60, most: 188 },
  post: { least: 42, most: 80 },
  letter: { most: 340 },
  sheet: { most: 480 },
} as const;

const isOver = ({ outcome }: JudgedNote): boolean => outcome === 'expired';

/** What has to be said before the answer to whoever is not of the house. */
function before(judged: JudgedNote): readonly Part[] {
  const { note } = judged;
  const owner = ownerOf(note);
  if (isOver(judged)) {
    const until = note.goodUntil;
    return [
      must(message('note-check-first', { until, owner })),
      must(message('note-as-it-was', {})),
    ];
  }
  return note.say === 'ask-first' ? [must(message('note-ask-us', { owner }))] : [];
}

/** The same for whoever answers. */
function forUs(judged: JudgedNote): readonly Sayable[] {
  const { note } = judged;
  const owner = ownerOf(note);
  const until = note.goodUntil;
  return [
    isOver(judged) ? message('note-was-until', { until, owner }) : message('note-until', { until }),
    ...(note.say === 'ask-first' ? [message('note-ask-first', { owner })] : []),
    ...(note.owner === undefined ? [] : [message('note-kept-by', { owner })]),
  ];
}

const leaningSaid = ({ leaning }: JudgedNote): readonly Sayable[] =>
  leaning
    ? [
        message('note-case-says', {
          title: own(leaning.title),
          sentence: leaning.answer.messages.sentence,
        }),
      ]
    : [];

/** The caution of the case it leans on, which goes wherever its verdict goes. */
const cautionSaid = ({ leaning }: JudgedNote): readonly Sayable[] =>
  leaning?.answer.messages.cautions.slice(0, 1) ?? [];

/** The verdict it leans on with its caution, which goes along; one that cannot be told yet is no news. */
function verdictSaid(judged: JudgedNote): readonly Sayable[] {
  const { leaning } = judged;
  if (!leaning) return [];
  const isOpen = leaning.answer.outcome === leaning.topic.outcomes.unknown.id;
  const of = [...(isOpen ? [] : leaningSaid(judged)), ...cautionSaid(judged)];
  return [message('sentences', { of })];
}

/** In one breath: sentences from the first, as many as there is room for, and where more is read. */
function inOne(
  judged: JudgedNote,
  form: 'short' | 'spoken' | 'everybody' | 'post',
  voice: Voice,
): string {
  const { note } = judged;
  const say = sayer({
    ...voice,
    medium: form === 'post' || form === 'short' ? 'written' : 'spoken',
  });
  const [link] = note.links;
  const sentences = sentencesOf(note).map(own);
  const opening = before(judged);
  const verdict = verdictSaid(judged);
  const lengthOf = (of: readonly Sayable[]) => wordsIn(of.map(say).join(' '));
  const beside = [...opening.map(({ of }) => of), ...verdict];
  // What is left out takes along all that follows it, so that no sentence hangs in the air.
  const told = sentences.filter(
    (_, i) => i === 0 || lengthOf([...beside, ...sentences.slice(0, i + 1)]) <= words[form].most,
  );
  const parts = [
    ...opening,
    ...told.map(must),
    ...verdict.map((each) => may(each, 1)),
    ...(link ? [may(message('note-more', { label: own(link.label) }), 2)] : []),
    ...(isOver(judged) ? [] : [ifShort(message('note-until', { until: note.goodUntil }))]),
    ...(note.owner === undefined
      ? []
      : [ifShort(message('note-kept-by', { owner: ownerOf(note) }))]),
  ];
  return fitted(say, parts, words[form]).join(' ');
}

const part = (of: string, lines: readonly Sayable[]): Sayable =>
  message('part', { title: message('heading', { of }), of: lines });

const linkLines = ({ note }: JudgedNote): readonly Sayable[] =>
  note.links.map(({ label, address }) =>
    message('note-link', { label: own(label), address: own(address) }),
  );

/** Mail and print: the whole text, the verdict it leans on, where to read on, until when it is good. */
function atLength(judged: JudgedNote, form: 'letter' | 'sheet', voice: Voice): string {
  const say = sayer({ ...voice, medium: form === 'sheet' ? 'print' : 'written' });
  const { note } = judged;
  const parts = [
    must(own(note.front.title)),
    ...(form === 'letter' ? before(judged) : []),
    ...paragraphsOf(note).map((each, place) => (place === 0 ? must(own(each)) : may(own(each), 1))),
    ...leaningSaid(judged).map(must),
    ...(cautionSaid(judged).length > 0 ? [must(part('careful', cautionSaid(judged)))] : []),
    ...(note.links.length > 0 ? [must(part('links', linkLines(judged)))] : []),
    ...(form === 'sheet' ? forUs(judged) : [message('note-until', { until: note.goodUntil })])
      .filter(() => form === 'sheet' || !isOver(judged))
      .map(must),
    must(message('note-as-of', { day: judged.day })),
  ];
  return fitted(say, parts, words[form]).join('\n\n');
}

function ticket(judged: JudgedNote, voice: Voice): string {
  const outcome = message('note-standing', { expired: isOver(judged) });
  const sentence = noteSentence(judged);
  const [first] = judged.note.say === 'ask-first' ? forUs(judged).slice(1) : [];
  return sayer(voice)(message('ticket', { outcome, figure: first ?? null, sentence }));
}

function slip(judged: JudgedNote, voice: Voice): string {
  const { note } = judged;
  const lines = [
    message('goes-to', {}),
    own(note.front.title),
    part('answer', paragraphsOf(note).map(own)),
    part('open', forUs(judged)),
    message('promised-by', {}),
    message('note-as-of', { day: judged.day }),
  ];
  return lines.map(sayer(voice)).join('\n\n');
}

function askBack(judged: JudgedNote, voice: Voice): string {
  const say = sayer(voice);
  const first = before(judged)[0];
  return first ? say(first.of) : say(message('nothing-to-ask', {}));
}

/** All forms in which a note leaves. */
export const noteForms = (judged: JudgedNote, voice: Voice = {}): Forms => ({
  ticket: ticket(judged, voice),
  short: inOne(judged, 'short', voice),
  spoken: inOne(judged, 'spoken', voice),
  everybody: inOne(judged, 'everybody', voice),
  post: inOne(judged, 'post', voice),
  letter: atLength(judged, 'letter', voice),
  askBack: askBack(judged, voice),
  sheet: atLength(judged, 'sheet', voice),
  slip: slip(judged, voice),
});

/** What is said to everybody; a note has no branches. */
export function noteEverybody(judged: JudgedNote, voice: Voice = {}) {
  const said = inOne(judged, 'everybody', voice);
  return { text: said, seconds: secondsOf(said), branches: [] };
}
