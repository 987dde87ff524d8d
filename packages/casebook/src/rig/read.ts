import {
  type FactsGiven,
  nearest,
  type Problem,
  presentFacts,
  presentId,
  rigProblems,
  sayProblem,
  type Topic,
} from '@tarebook/rules/engine';
import type { RootContent } from 'mdast';
import { collect, type Gathered, readBody } from '../body';
import { checkExpectations } from '../expect';
import {
  type FrontFound,
  type FrontReader,
  frontFound,
  frontKeys,
  type Note,
  rigTopic,
  whoAsked,
} from '../front';
import { sayFault, trouble } from '../messages';
import { withoutMark } from '../plain';
import { begunWith, placeOfProblem, type TreeReader, unread } from '../read-with';
import type { Expectation, Trouble } from '../shapes';
import { everything } from './everything';
import type { RigDocument, RigExpectation } from './shapes';

type Topics = Readonly<Record<string, Topic>>;

/** Whether a document is a whole rig, as its front matter has it. */
export const isRig = (text: string): boolean =>
  /^---[ \t]*\r?\n(?:(?!---[ \t]*\r?\n).*\r?\n)*?topic[ \t]*:[ \t]*(["']?)rig\1[ \t]*(?:#.*)?\r?\n/.test(
    withoutMark(text).slice(0, 20_000),
  );

const mostMoments = 12;
const momentName = /^[\p{L}\p{N}][\p{L}\p{N} -]{0,39}$/u;

/** The moments that the front matter names: one word, or a list of them. */
function momentsOf({ words, lists }: FrontFound, note: Note): readonly string[] {
  const [word, list] = [words.get('at'), lists.get('at')];
  const wanted = 'a list of moments, such as [leaving, home]';
  if (list && (!list.items || list.items.length > mostMoments)) {
    note(list.place, { code: 'front-value', key: 'at', found: 'something else', wanted });
    return [];
  }
  const named = word ? [{ text: word.text, at: word.place }] : (list?.items ?? []);
  const at: string[] = [];
  for (const { text, at: place } of named) {
    if (momentName.test(text) && !at.includes(text)) at.push(text);
    else
      note(place, { code: 'front-value', key: 'at', found: text, wanted: `${wanted}, each once` });
  }
  return at;
}

const wordsUnder = (node: RootContent): string =>
  'children' in node
    ? node.children
        .map((child) => ('value' in child ? child.value : ''))
        .join('')
        .trim()
    : '';

/** What stands above all moments and after them, and what stands under the heading of each. */
function partsOf(children: readonly RootContent[], at: readonly string[], note: Note) {
  const above: RootContent[] = [];
  const under = new Map<string, RootContent[]>();
  let into = above;
  for (const node of children) {
    if (node.type === 'heading' && node.depth <= 2) {
      const words = wordsUnder(node);
      const moment = at.find((each) => each.toLowerCase() === words.toLowerCase());
      const near = moment === undefined && at.length > 0 ? nearest(words, at) : undefined;
      const place = node.position?.start ?? { line: 1, column: 1 };
      if (near) note(place, { code: 'moment', found: words, near });
      if (moment !== undefined && under.has(moment)) {
        note(place, { code: 'moment-twice', name: moment });
      }
      into = moment === undefined ? above : (under.get(moment) ?? []);
      if (moment !== undefined) under.set(moment, into);
    }
    into.push(node);
  }
  return { above, under };
}

function expectationOf(
  row: Expectation,
  topics: Topics,
  at: readonly string[],
  note: Note,
): RigExpectation | undefined {
  const stroke = row.name.indexOf('/');
  const [head, of] = [row.name.slice(0, Math.max(0, stroke)), row.name.slice(stroke + 1)];
  const [id = '', moment] = head.split('@');
  const topic = Object.hasOwn(topics, id) ? topics[id] : undefined;
  const isMoment = moment === undefined || at.includes(moment);
  if (topic && isMoment) return { ...row, topic, moment: moment ?? null, of };
  const near = topic ? nearest(moment ?? '', at) : nearest(id, Object.keys(topics));
  const hint = near && (topic ? `${id}@${near}/${of}` : `${near}/${of}`);
  note(row.place, {
    code: 'unknown-name',
    name: row.name,
    what: 'a topic, perhaps with a moment, and a result of it,',
    topic: 'a rig',
    ...(hint && { near: hint }),
  });
  return undefined;
}

/** What is expected of each topic at each moment, checked as the topic’s own cases are. */
function checkAll(all: readonly RigExpectation[], note: Note): void {
  const groups = new Map<string, RigExpectation[]>();
  for (const row of all) {
    const place = `${row.topic.id}@${row.moment}`;
    groups.set(place, [...(groups.get(place) ?? []), row]);
  }
  for (const group of groups.values()) {
    const [first] = group;
    const rows = group.map((row) => ({ ...row, name: row.of }));
    if (first) checkExpectations(first.topic, rows, note);
  }
}

/**
 * Reads a whole rig, whose blocks `treeOf` tells. Never throws: whatever is wrong stands in
 * `troubles`, all of it at once, and a rig with troubles is not to be answered.
 */
export function readRigWith(
  treeOf: TreeReader,
  topics: Topics,
  text: string,
  yaml: FrontReader = unread,
): RigDocument {
  const troubles: Trouble[] = [];
  const note: Note = (at, fault) => troubles.push(trouble(at, sayFault(fault)));
  const none: RigDocument = {
    text,
    front: { title: 'Untitled rig', topic: rigTopic },
    ...{ at: [], facts: {}, moments: {}, readFrom: {}, blocks: [], expectations: [], troubles },
  };
  const begun = begunWith(treeOf, text);
  if ('wrong' in begun) return { ...none, troubles: [begun.wrong] };
  const { source, children, head } = begun;
  const line = (head.position?.start.line ?? 1) + 1;
  const found = frontFound(head.value, line, note, yaml, [...frontKeys, 'at'], ['at']);
  if (!found) return none;
  const at = momentsOf(found, note);
  const whole = everything(topics, at);
  if (!whole) return none;
  const { above, under } = partsOf(children, at, note);
  const read = (nodes: readonly RootContent[]) => {
    const into = readBody(nodes, source, whole, note);
    const { facts, problems } = presentFacts(whole, collect(into, note));
    return { into, facts, problems };
  };
  const base = read(above);
  const own = at.map((moment) => [moment, read(under.get(moment) ?? [])] as const);
  const told = (parts: readonly Gathered[], problems: readonly Problem[]) => {
    for (const problem of problems) {
      const into = parts.findLast((each) => isIn(each, whole, problem)) ?? parts[0];
      if (!into || isLeftEmpty(into, whole, problem)) continue;
      const place = placeOfProblem(problem, into, whole, problem.code);
      troubles.push(trouble(place, sayProblem(problem)));
    }
  };
  told([base.into], [...base.problems, ...rigProblems(topics, base.facts)]);
  for (const [, { into, facts, problems }] of own) {
    told([into], [...problems, ...rigProblems(topics, facts)]);
  }
  const parts = [base, ...own.map(([, part]) => part)];
  const expectations = parts
    .flatMap(({ into }) => into.expectations)
    .flatMap((row) => expectationOf(row, topics, at, note) ?? []);
  checkAll(expectations, note);
  const readFrom = parts.flatMap(({ into }) =>
    into.facts.flatMap(({ id, readFrom: from }) =>
      from ? [[presentId(whole, id), from] as const] : [],
    ),
  );
  return {
    text,
    front: { ...none.front, ...whoAsked(found.words, note) },
    at,
    facts: base.facts,
    moments: Object.fromEntries(
      own.map(([moment, { facts }]): [string, FactsGiven] => [moment, facts]),
    ),
    readFrom: Object.fromEntries(readFrom),
    blocks: parts.flatMap(({ into }) => into.blocks),
    expectations,
    troubles: once(troubles).toSorted((a, b) => a.line - b.line || a.column - b.column),
  };
}

const isIn = ({ facts, lists }: Gathered, topic: Topic, { fact }: Problem): boolean =>
  facts.some(({ id }) => presentId(topic, id) === fact) ||
  lists.some((list) => presentId(topic, list.fact) === fact);

/** An empty value is told where it was read. */
const isLeftEmpty = ({ facts }: Gathered, topic: Topic, { fact }: Problem): boolean =>
  facts.some(({ id, value }) => value === '' && presentId(topic, id) === fact);

const once = (troubles: readonly Trouble[]): readonly Trouble[] => [
  ...new Map(troubles.map((each) => [`${each.line}:${each.column} ${each.says}`, each])).values(),
];
