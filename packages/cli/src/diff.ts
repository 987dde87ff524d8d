import { stat } from 'node:fs/promises';
import { readCase } from '@tarebook/casebook';
import {
  compareTopics,
  compareVerdicts,
  type Effect,
  fieldInWords,
  isWording,
  partInWords,
  sayChange,
  type Topic,
  type TopicChange,
} from '@tarebook/rules/engine';
import { wrapped } from './columns';
import { BadInput, caseFiles, named, readText, troubleLines } from './files';
import { keptFolder, keptTopic, keptVersions } from './kept';

type CaseEffect = Effect & { readonly file: string };

/** Two versions of a rule set side by side, and what each makes of the worked cases. */
export type RulesDiff = {
  readonly topic: Topic;
  /** The older version. */
  readonly was: string;
  readonly changes: readonly TopicChange[];
  readonly cases: readonly CaseEffect[];
  /** What was left out below the paths, each in a sentence. */
  readonly skipped: readonly string[];
};

async function effects(
  was: Topic,
  now: Topic,
  paths: readonly string[],
): Promise<Pick<RulesDiff, 'cases' | 'skipped'>> {
  const found: CaseEffect[] = [];
  const { files, skipped } = await caseFiles(paths);
  const troubles = skipped.filter(({ wrong }) => wrong).map(({ says }) => says);
  for (const file of files) {
    const { troubles: wrong, front, facts, readFrom } = readCase(await readText(file));
    if (front.topic !== '' && front.topic !== now.id) continue;
    if (wrong.length > 0) {
      troubles.push(troubleLines(file, wrong));
      continue;
    }
    const asked = { facts, readFrom, ...(front.asOf && { asOf: front.asOf }) };
    found.push({ file, ...compareVerdicts(was, now, asked) });
  }
  if (troubles.length > 0) throw new BadInput(troubles.join('\n'));
  return { cases: found, skipped: skipped.map(({ says }) => says) };
}

/** The folder of worked cases, where the command is run in a place that has one. */
const casesHere = async (): Promise<readonly string[]> =>
  (await stat('cases').catch(() => undefined))?.isDirectory() ? ['cases'] : [];

/**
 * What changed in a topic since a kept version, and which of the cases below the paths come out
 * otherwise for it.
 *
 * @param paths where the cases are; none: the folder `cases`, if there is one
 * @throws BadInput when that version is not kept, or a case cannot be read
 */
export async function rulesDiff(
  topic: Topic,
  version: string,
  paths: readonly string[],
  folder: string = keptFolder(),
): Promise<RulesDiff> {
  const was = await keptTopic(topic.id, version, folder);
  if (!was) {
    const kept = await keptVersions(topic.id, folder);
    const there = kept.length === 0 ? 'none is kept yet' : `there are ${kept.join(', ')}`;
    throw new BadInput(`There is no kept version “${version}” of ${topic.id}; ${there}.`);
  }
  const places = paths.length === 0 ? await casesHere() : paths;
  const none = { cases: [], skipped: [] };
  const found = places.length === 0 ? none : await effects(was, topic, places);
  return { topic, was: version, changes: compareTopics(was, topic), ...found };
}

const count = (number: number, one: string, many: string): string =>
  `${number} ${number === 1 ? one : many}`;

/** Changes of words alone, by what is said: whose name, whose question. `--json` has each in full. */
function wordingText(changes: readonly TopicChange[]): string {
  const fields = [...new Set(changes.flatMap((each) => each.fields.map(({ field }) => field)))];
  const lines = fields.map((field) => {
    const of = changes.filter((each) => each.fields.some((one) => one.field === field));
    return `  – ${wrapped(`${fieldInWords(field)}: ${of.map(({ id }) => id).join(', ')}`, '    ')}\n`;
  });
  return lines.length === 0 ? '' : `\nSaid otherwise, with nothing else changed\n${lines.join('')}`;
}

function changesText(topic: Topic, changes: readonly TopicChange[]): string {
  const parts = [...new Set(changes.map(({ part }) => part))];
  return parts
    .map((part) => {
      const lines = changes
        .filter((change) => change.part === part)
        .map((change) => `  – ${wrapped(sayChange(change, topic), '    ')}`);
      return `\n${partInWords(part)}\n${lines.join('\n')}\n`;
    })
    .join('');
}

/** The differences of one case as lines of “was …, is …”. */
export function effectLines({ differences, leftOut, refused }: Effect): readonly string[] {
  const lines = differences.map(({ label, was, now, because }) => {
    const why = because.length === 0 ? '' : `, because of ${because.join('; ')}`;
    return `${label} was ${was}, is ${now}${why}.`;
  });
  if (leftOut.length > 0) {
    lines.push(`Asked without ${leftOut.join(', ')}, which one of the two does not know.`);
  }
  return refused ? [...lines, refused] : lines;
}

const differs = ({ differences, refused }: Effect): boolean =>
  differences.length > 0 || refused !== undefined;

/** Whether a change is told in one line with others like it: words alone, of an entry that stays. */
const together = (change: TopicChange): boolean =>
  isWording(change) && change.part !== 'sources' && change.part !== 'topic';

/** What the change does to the cases, those that come out otherwise each with its reasons. */
function casesText(cases: readonly CaseEffect[]): string {
  if (cases.length === 0)
    return '  Name a case, or a folder of cases, to see what it does to them.\n';
  const differing = cases.filter(differs);
  const outcome =
    differing.length === 0
      ? 'none comes out otherwise'
      : count(differing.length, 'comes out otherwise', 'come out otherwise');
  const moved = differing.map((effect) => {
    const lines = effectLines(effect).map((line) => `      ${wrapped(line, '        ')}\n`);
    return `  ${named(effect.file)}\n${lines.join('')}`;
  });
  return `  ${count(cases.length, 'case', 'cases')} asked under both; ${outcome}.\n${moved.join('')}`;
}

export function diffAsText({ topic, was, changes, cases }: RulesDiff): string {
  const [from, to] = was === topic.version ? [' as kept', ' as it is here'] : ['', ''];
  const entries =
    changes.length === 0
      ? 'nothing in them differs.'
      : `${count(changes.length, 'entry differs', 'entries differ')}.`;
  const inFull = changes.filter((each) => !together(each));
  return [
    `${topic.title}: what changed from ${topic.id} ${was}${from} to ${topic.version}${to}.\n`,
    `\nWorked cases\n${casesText(cases)}`,
    `\nThe rules: ${entries}\n`,
    changesText(topic, inFull),
    wordingText(changes.filter(together)),
  ].join('');
}

export function diffAsJson({ topic, was, changes, cases }: RulesDiff): object {
  return {
    topic: topic.id,
    was,
    now: topic.version,
    cases: cases.map((effect) => ({ ...effect, changed: differs(effect) })),
    changes: changes.map((change) => ({
      ...change,
      wording: isWording(change),
      says: sayChange(change, topic),
    })),
  };
}
