import {
  judgedAt,
  judgedRig,
  judgeRig,
  onOneLine,
  type RigDocument,
  readRig,
  type Under,
} from '@tarebook/casebook';
import {
  nearest,
  type RigAnswer,
  type RigTopic,
  remedies,
  type Topic,
} from '@tarebook/rules/engine';
import { wrapped } from './columns';
import { BadInput, troubleLines } from './files';
import { asBadInput } from './house';
import { leavingAsText, leavingOf, type Wanted } from './leaving';

type Topics = Readonly<Record<string, Topic>>;

export type JudgedRig = { readonly doc: RigDocument; readonly found: RigAnswer };

/**
 * A whole rig, asked of every topic, or of one.
 *
 * @throws BadInput when it cannot be read, or there is no such topic
 */
export function rigOf(
  file: string,
  text: string,
  under: Under,
  among: Topics,
  only?: string,
): JudgedRig {
  const doc = readRig(text, among);
  if (doc.troubles.length > 0) throw new BadInput(troubleLines(file, doc.troubles));
  const topics = Object.fromEntries(Object.values(among).map((topic) => [topic.id, topic]));
  if (only !== undefined && !Object.hasOwn(topics, only)) {
    const near = nearest(only, Object.keys(topics));
    const hint = near ? ` Did you mean ${near}?` : '';
    throw new BadInput(`\`--topic\`: there is no topic “${onOneLine(only)}”.${hint}`);
  }
  try {
    const found = judgeRig(doc, topics, under);
    return { doc, found: only === undefined ? found : onlyOf(found, only) };
  } catch (problem) {
    throw asBadInput(file, problem);
  }
}

/** One topic of a rig; of one that nothing told decides in, what it would want. */
function onlyOf({ answers, moments, needs }: RigAnswer, id: string): RigAnswer {
  const own = (all: readonly RigTopic[]) => all.filter(({ topic }) => topic.id === id);
  const wanted = needs[id];
  return {
    answers: own(answers),
    moments: Object.fromEntries(Object.entries(moments).map(([at, all]) => [at, own(all)])),
    needs: wanted ? { [id]: wanted } : {},
  };
}

const leaves = ({ everybody, forms, asking }: Wanted): boolean =>
  everybody || forms || asking !== undefined;

/** The one topic in whose forms it is to leave. */
function leavingOfRig({ doc, found }: JudgedRig, wanted: Wanted, among: Topics) {
  const [only, more] = found.answers;
  if (!only || more) {
    throw new BadInput(
      only
        ? 'A whole rig leaves in the forms of one topic at a time; name it with --topic, such as `--topic tow-fit`.'
        : 'Nothing that this rig tells decides in that topic, so there is nothing to say of it yet.',
    );
  }
  const { topic, answer, facts, moment } = only;
  const asked = { facts, readFrom: doc.readFrom, asOf: answer.asOf };
  const rig = { ...doc.facts, ...(moment !== null && doc.moments[moment]) };
  const changes = remedies(topic, asked, Object.values(among), rig);
  return leavingOf(topic, asked, wanted, { title: doc.front.title, changes });
}

export function rigAsJson(rig: JudgedRig, wanted: Wanted, among: Topics): object {
  if (!leaves(wanted)) return judgedRig(rig.doc, rig.found);
  const [only] = rig.found.answers;
  const leaving = leavingOfRig(rig, wanted, among);
  const told = judgedRig(rig.doc, rig.found);
  return only ? { ...told, answers: [{ ...judgedAt(rig.doc, only), ...leaving }] } : told;
}

const labelOf = ({ facts }: Topic, id: string): string => facts[id]?.label ?? id;

/** What stands otherwise at another moment: “leaving: fits with care”. */
function elsewhere({ topic, moment, answer }: RigTopic, { moments }: RigAnswer): string {
  const others = Object.entries(moments).flatMap(([at, all]) => {
    const there = all.find((each) => each.topic.id === topic.id);
    return at === moment || !there || there.answer.words === answer.words
      ? []
      : [`${at}: ${there.answer.words}`];
  });
  return others.length === 0 ? '' : ` (${others.join('; ')})`;
}

const settledIn = ({ answer }: RigTopic): readonly string[] =>
  answer.limits.flatMap(({ id, state }) =>
    state === 'unknown' || state === 'not-asked' ? [] : [id],
  );

/** What says no more than another: it stands as that does, and has compared nothing else. */
function isBeside(each: RigTopic, all: readonly RigTopic[]): boolean {
  const own = settledIn(each);
  const isOpen = each.level === 'unknown' || each.level === 'stop';
  return (
    isOpen &&
    all.some((other) => {
      const theirs = settledIn(other);
      const covers = own.every((id) => theirs.includes(id));
      const first = theirs.length > own.length || all.indexOf(other) < all.indexOf(each);
      return (
        other !== each && covers && first && (each.level === 'unknown' || other.level === 'stop')
      );
    })
  );
}

function wanting(topic: Topic, facts: readonly string[]): string {
  const labels = [...new Set(facts)].slice(0, mostWanted).map((fact) => labelOf(topic, fact));
  return `  – ${topic.title}: ${labels.join(', ')}`;
}

function lineOf(each: RigTopic, found: RigAnswer): string {
  const at = each.moment === null ? '' : `, ${each.moment}`;
  const head = `${each.answer.words.toUpperCase()} · ${each.topic.title}${at}`;
  return `${head}${elsewhere(each, found)}\n  ${wrapped(each.answer.sentence, '  ')}`;
}

const mostWanted = 3;

const mostTouched = 2;

/** Of the topics in which nothing is decided, those that most of what was told is about. */
function touched(topics: readonly Topic[], { facts }: RigDocument): readonly Topic[] {
  const told = (topic: Topic) => Object.keys(facts).filter((id) => topic.facts[id]).length;
  return topics
    .filter((topic) => told(topic) > 0)
    .toSorted((a, b) => told(b) - told(a))
    .slice(0, mostTouched);
}

/** What else the rig touches, and what it would take to say something of the rest. */
function restSection(
  doc: RigDocument,
  { answers, needs }: RigAnswer,
  beside: readonly RigTopic[],
  topics: Topics,
): string {
  const stopped = beside.filter(({ level }) => level === 'stop').map(({ topic }) => topic.title);
  const open = beside.filter(({ level }) => level !== 'stop');
  const untouched = Object.values(topics).filter(({ id }) => Object.hasOwn(needs, id));
  // Where nothing can be said, what was told is still about something.
  const first = answers.length === 0 ? touched(untouched, doc) : [];
  const lines = [
    ...open.map(({ topic, answer }) =>
      wanting(
        topic,
        answer.missing.map(({ fact }) => fact),
      ),
    ),
    ...first.map((topic) => wanting(topic, needs[topic.id] ?? [])),
  ];
  const titles = untouched.map(({ title }) => title).join(', ');
  const only = Object.keys(needs).length === 1 ? untouched[0] : undefined;
  return [
    stopped.length === 0 ? '' : `\nThe same stops: ${stopped.join(', ')}.\n`,
    lines.length === 0 || only ? '' : `\nTo say more, these would want\n${lines.join('\n')}\n`,
    only
      ? `\nNothing told decides here; it would want\n${wanting(only, needs[only.id] ?? [])}\n`
      : '',
    untouched.length === 0 || only
      ? ''
      : `\n${wrapped(`Nothing told decides in: ${titles}. With --topic, one of them says what it would want.`, '')}\n`,
  ].join('');
}

/** What is careful to do, once each, of the topics that object. */
function cautionsSection({ answers }: RigAnswer): string {
  const says = new Set(answers.slice(0, 3).flatMap(({ answer }) => answer.cautions.slice(0, 1)));
  return says.size === 0
    ? ''
    : `\nTake care\n${[...says].map((each) => `  – ${wrapped(each, '    ')}`).join('\n')}\n`;
}

export function rigAsText(rig: JudgedRig, wanted: Wanted, topics: Topics): string {
  if (leaves(wanted)) return leavingAsText(leavingOfRig(rig, wanted, topics));
  const { doc, found } = rig;
  const title = `${doc.front.title}\n`;
  const beside = found.answers.filter((each) => isBeside(each, found.answers));
  const said = found.answers.filter((each) => !beside.includes(each));
  const lines = said.map((each) => `\n${lineOf(each, found)}\n`);
  const none =
    found.answers.length === 0 && Object.keys(found.needs).length > 1
      ? '\nNothing told decides anything yet.\n'
      : '';
  return `${title}${none}${lines.join('')}${cautionsSection(found)}${restSection(doc, found, beside, topics)}`;
}
