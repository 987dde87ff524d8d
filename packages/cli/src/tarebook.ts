#!/usr/bin/env node
import { parseArgs } from 'node:util';
import { askedOf, isNote, isRig, judgeCase, judged, readCase } from '@tarebook/casebook';
import { matters, remedies, spread, whys } from '@tarebook/rules';
import type { RefusedRow } from '@tarebook/sweep';
import { accessoriesAsText, accessoriesOf } from './accessories';
import { againAsJson, againAsText, againOf, isSame } from './again';
import { catalogueMovesAsText, catalogueMovesOf } from './catalogue-moves';
import { checkCases, checkedAsJson, checkedAsText } from './check';
import { diffAsJson, diffAsText, rulesDiff } from './diff';
import { BadInput, named, readText, renamedLines, troubleLines } from './files';
import { asBadInput, spreadFrom, underFrom } from './house';
import { leavingAsText, leavingOf, wantedFrom } from './leaving';
import { noteAsJson, noteAsText, noteOf, savedNote } from './note';
import { offersAsText, offersOf } from './offers';
import { topicsFrom } from './own-topics';
import { questionsAsText, questionsOf } from './questions';
import { looksSaved, replayAsJson, replayAsText, replaySaved } from './replay';
import { rigAsJson, rigAsText, rigOf } from './rig';
import { replayedRigAsJson, replayedRigAsText, replayRig, savedRig } from './rig-saved';
import { topicAsJson, topicList, topicListAsText, topicNamed, topicSchema } from './rules';
import { sayBeside, sayJson, sayText } from './said';
import { sheet } from './sheet';
import { sweepAll, sweptAsJson, sweptAsText } from './sweep';
import { comparedAsText, compareSweeps } from './sweep-compare';
import { topicAsText } from './topic-page';
import { usage } from './usage';
import { whichAsJson, whichAsText, whichOf } from './which';
import { work } from './worker';

type Flags = Readonly<Record<string, unknown>>;

/** The words and flags of a command; anything else is told with the usage. */
function parsed(
  args: readonly string[],
  flags: readonly string[],
  valued: readonly string[] = [],
  repeated: readonly string[] = [],
): { words: string[]; given: Flags } {
  const options = Object.fromEntries([
    ...flags.map((flag) => [flag, { type: 'boolean' as const }] as const),
    ...valued.map((flag) => [flag, { type: 'string' as const }] as const),
    ...repeated.map((flag) => [flag, { type: 'string' as const, multiple: true }] as const),
  ]);
  try {
    const { values, positionals } = parseArgs({ args: [...args], options, allowPositionals: true });
    return { words: positionals, given: values };
  } catch (problem) {
    const reason = problem instanceof Error ? (problem.message.split(/\. |\.?\n/)[0] ?? '') : '';
    throw new BadInput(`${reason}. Run \`tarebook --help\` for what there is.`);
  }
}

async function check(args: readonly string[]): Promise<number> {
  const { words, given } = parsed(args, ['json'], ['house', 'as-of', 'topics']);
  const among = await topicsFrom(given);
  const under = await underFrom(given);
  const paths = words.length === 0 ? ['cases'] : words;
  const { checked, troubles, skipped } = await checkCases(paths, under, among);
  if (given.json) await sayJson(checkedAsJson(checked));
  else if (checked.length > 0) await sayText(checkedAsText(checked));
  const beside = [...troubles, ...skipped];
  if (beside.length > 0) await sayBeside(beside.join('\n'));
  if (troubles.length > 0) return 2;
  return checked.every(({ holds }) => holds) ? 0 : 1;
}

async function judge(args: readonly string[]): Promise<number> {
  const { words, given } = parsed(
    args,
    ['json', 'everybody', 'forms'],
    ['spread', 'seed', 'house', 'as-of', 'asking', 'topics', 'topic'],
  );
  const among = await topicsFrom(given);
  const wanted = wantedFrom(given);
  const [file, more] = words;
  if (file === undefined || more !== undefined) {
    throw new BadInput('`tarebook judge` takes one file, or - for standard input.');
  }
  const [under, draws] = [await underFrom(given), spreadFrom(given)];
  const text = await readText(file);
  const name = named(file);
  const saved = looksSaved(text) ? savedNote(text) : undefined;
  if (saved !== undefined || isNote(text)) {
    if (draws) throw new BadInput(`${name}: a note has no ranges; leave out --spread.`);
    const told = await noteOf(file, saved ?? text, under);
    await (given.json ? sayJson(noteAsJson(told, wanted)) : sayText(noteAsText(told, wanted)));
    return 0;
  }
  if (looksSaved(text)) {
    if (draws || under.asOf !== undefined || under.house) {
      throw new BadInput(
        `${name}: a saved answer is run again as it was made; leave out --spread, --house and --as-of.`,
      );
    }
    const own = ['house', 'as-of', 'spread', 'seed'].find((flag) => given[flag] !== undefined);
    if (own) throw new BadInput(`\`--${own}\` is for a case; a saved answer has its own.`);
    const rig = savedRig(text);
    if (rig) {
      const again = await replayRig(name, rig, among);
      await (given.json ? sayJson(replayedRigAsJson(again)) : sayText(replayedRigAsText(again)));
      return again.every(({ same }) => same) ? 0 : 1;
    }
    const replayed = await replaySaved(name, text, { among });
    await (given.json ? sayJson(replayAsJson(replayed)) : sayText(replayAsText(replayed)));
    return replayed.same ? 0 : 1;
  }
  const only = typeof given.topic === 'string' ? given.topic : undefined;
  if (isRig(text)) {
    if (draws) throw new BadInput(`${name}: chances are drawn for one topic; leave out --spread.`);
    const told = rigOf(file, text, under, among, only);
    await (given.json
      ? sayJson(rigAsJson(told, wanted, among))
      : sayText(rigAsText(told, wanted, among)));
    return 0;
  }
  if (only !== undefined) {
    throw new BadInput(`${name}: \`--topic\` is for a whole rig; a case names its own.`);
  }
  const doc = readCase(text, under.asOf, among);
  if (doc.troubles.length > 0 || !doc.topic) {
    throw new BadInput(troubleLines(file, doc.troubles));
  }
  for (const says of renamedLines(file, doc.renamed)) await sayBeside(says);
  const answer = await judgeCase(doc, under).catch((problem) => {
    throw asBadInput(name, problem);
  });
  const { topic, asked } = askedOf(doc, under);
  const chances = draws && spread(topic, asked, draws);
  const found = remedies(topic, asked, Object.values(among));
  const matter = matters(topic, asked);
  const reasons = { matters: matter, why: whys(topic, answer) };
  const has = { title: doc.front.title, asking: doc.front.asking, changes: found };
  const leaving = leavingOf(topic, asked, wanted, has);
  if (given.json) await sayJson({ ...judged(answer, doc, chances, found, reasons), ...leaving });
  else if (wanted.everybody || wanted.forms) await sayText(leavingAsText(leaving));
  else await sayText(sheet(doc.front.title, topic, answer, found, matter, chances));
  return 0;
}

/** Rows of a catalogue that were not taken, each with its place. */
async function sayRefused(rows: readonly RefusedRow[]): Promise<void> {
  if (rows.length === 0) return;
  await sayBeside(rows.map(({ file, line, says }) => `${file}:${line}: ${says}`).join('\n'));
}

async function whichOnes(args: readonly string[]): Promise<number> {
  const { words, given } = parsed(args, ['json'], ['house', 'as-of', 'catalogue'], ['where']);
  const [file, more] = words;
  if (file === undefined || more !== undefined) {
    throw new BadInput('`tarebook which` takes one file, or - for standard input.');
  }
  const found = await whichOf(file, given);
  await (given.json ? sayJson(whichAsJson(found)) : sayText(`${whichAsText(found)}\n`));
  await sayRefused(found.refused);
  return 0;
}

async function catalogueChanged(args: readonly string[]): Promise<number> {
  const { words, given } = parsed(args, ['json'], ['topics', 'ledger']);
  const ledger = typeof given.ledger === 'string' ? given.ledger : undefined;
  const moves = await catalogueMovesOf(words, await topicsFrom(given), ledger);
  await (given.json ? sayJson(moves) : sayText(`${catalogueMovesAsText(moves)}\n`));
  return [...moves.cases, ...moves.answers].every(({ was, is }) => was === is) ? 0 : 1;
}

async function offers(args: readonly string[]): Promise<number> {
  const { words, given } = parsed(args, ['json'], ['catalogue']);
  if (words.length > 2) {
    throw new BadInput(
      '`tarebook offers` takes an option and a line, such as "Heated tanks" osier.',
    );
  }
  const folder = typeof given.catalogue === 'string' ? given.catalogue : undefined;
  const told = await offersOf(words, folder);
  await (given.json ? sayJson(told) : sayText(`${offersAsText(told)}\n`));
  await sayRefused(told.refused);
  return 0;
}

async function accessories(args: readonly string[]): Promise<number> {
  const { words, given } = parsed(args, ['json'], ['catalogue']);
  if (words.length > 2) {
    throw new BadInput(
      '`tarebook accessories` takes an accessory and a trailer or a line, such as "Roof vent with a fan" osier.',
    );
  }
  const folder = typeof given.catalogue === 'string' ? given.catalogue : undefined;
  const told = await accessoriesOf(words, folder);
  await (given.json ? sayJson(told) : sayText(`${accessoriesAsText(told)}\n`));
  await sayRefused(told.refused);
  return 0;
}

async function sweep(args: readonly string[]): Promise<number> {
  const { words, given } = parsed(
    args,
    ['json', 'resume', 'compare'],
    [
      'topic',
      'vehicles',
      'trailers',
      'case',
      'out',
      'threads',
      'queue',
      'house',
      'as-of',
      'ledger',
    ],
  );
  if (given.compare) {
    const [before, after, more] = words;
    if (before === undefined || after === undefined || more !== undefined) {
      throw new BadInput('`tarebook sweep` --compare takes two files that a sweep has written.');
    }
    const ledger = typeof given.ledger === 'string' ? given.ledger : undefined;
    const found = await compareSweeps(before, after, ledger);
    await (given.json ? sayJson(found) : sayText(`${comparedAsText(found)}\n`));
    return 0;
  }
  if (words.length > 0) {
    throw new BadInput('`tarebook sweep` takes its files by name: --vehicles F --trailers F.');
  }
  const swept = await sweepAll(given);
  await (given.json ? sayJson(sweptAsJson(swept)) : sayText(`${sweptAsText(swept)}\n`));
  return swept.isWhole ? 0 : 2;
}

async function worker(args: readonly string[]): Promise<number> {
  const { words, given } = parsed(args, [], ['queue']);
  if (words.length > 0 || typeof given.queue !== 'string') {
    throw new BadInput('`tarebook worker` wants --queue, such as redis://localhost:6379.');
  }
  await work(given.queue);
  return 0;
}

async function questions(args: readonly string[]): Promise<number> {
  const { words, given } = parsed(args, ['json']);
  const [file, more] = words;
  if (file === undefined || more !== undefined) {
    throw new BadInput('`tarebook questions` takes one CSV file, or - for standard input.');
  }
  const { read, refused } = await questionsOf(file);
  await (given.json ? sayJson(read) : sayText(questionsAsText(read)));
  for (const says of refused) await sayBeside(says);
  return refused.length > 0 ? 2 : 0;
}

async function againToday(args: readonly string[]): Promise<number> {
  const { words, given } = parsed(args, ['json'], ['house', 'as-of']);
  const [file, more] = words;
  if (file === undefined || more !== undefined) {
    throw new BadInput('`tarebook again` takes one ledger, or - for standard input.');
  }
  const under = await underFrom(given);
  const day = under.asOf ?? new Date().toISOString().slice(0, 10);
  const found = await againOf(file, day, under.house);
  await (given.json ? sayJson(againAsJson(found)) : sayText(`${againAsText(found)}\n`));
  return found.every(isSame) ? 0 : 1;
}

async function rules(args: readonly string[]): Promise<number> {
  const { words, given } = parsed(args, ['json', 'schema'], ['diff', 'topics']);
  const among = await topicsFrom(given);
  const [name, more] = words;
  if (typeof given.diff === 'string') return diff(words, given.diff, given.json === true);
  if (more !== undefined) throw new BadInput('`tarebook rules` takes one topic at the most.');
  if (name === undefined) {
    if (given.schema)
      throw new BadInput('`tarebook rules --schema` wants a topic, such as tow-fit.');
    await (given.json ? sayJson(topicList(among)) : sayText(topicListAsText(among)));
    return 0;
  }
  const topic = topicNamed(name, among);
  if (given.schema) await sayJson(topicSchema(topic));
  else await (given.json ? sayJson(topicAsJson(topic)) : sayText(topicAsText(topic)));
  return 0;
}

async function diff(
  [name, ...paths]: readonly string[],
  version: string,
  asJson: boolean,
): Promise<number> {
  if (name === undefined) {
    throw new BadInput('`tarebook rules --diff` wants a topic, such as tow-fit.');
  }
  const found = await rulesDiff(topicNamed(name), version, paths);
  await (asJson ? sayJson(diffAsJson(found)) : sayText(diffAsText(found)));
  if (found.skipped.length > 0) await sayBeside(found.skipped.join('\n'));
  return 0;
}

/** What went wrong in a sentence; a fault of ours too, since a stack helps nobody at a counter. */
function saidOf(problem: unknown): string {
  if (problem instanceof BadInput) return problem.message;
  const says = problem instanceof Error ? (problem.message.split('\n')[0] ?? '') : String(problem);
  return `Tarebook itself went wrong, and no answer came out: ${says.slice(0, 300)}.`;
}

async function main([command, ...args]: readonly string[]): Promise<number> {
  if (args.includes('--help') || args.includes('-h')) {
    await sayText(usage);
    return 0;
  }
  switch (command) {
    case 'check':
      return check(args);
    case 'judge':
      return judge(args);
    case 'again':
      return againToday(args);
    case 'questions':
      return questions(args);
    case 'which':
      return whichOnes(args);
    case 'catalogue':
      return catalogueChanged(args);
    case 'offers':
      return offers(args);
    case 'accessories':
      return accessories(args);
    case 'sweep':
      return sweep(args);
    case 'worker':
      return worker(args);
    case 'rules':
      return rules(args);
    case undefined:
    case 'help':
    case '--help':
    case '-h':
      await sayText(usage);
      return command === undefined ? 2 : 0;
    default:
      throw new BadInput(
        `There is no command “${command}”. Run \`tarebook --help\` for what there is.`,
      );
  }
}

try {
  process.exitCode = await main(process.argv.slice(2));
} catch (problem) {
  await sayBeside(saidOf(problem));
  process.exitCode = 2;
}
