#!/usr/bin/env node
import { againAsJson, againAsText, againOf, isSame } from './again';
import { checkCases, checkedAsJson, checkedAsText } from './check';
import { BadInput } from './files';
import { underFrom } from './house';
import { judge } from './judge';
import { accessories, catalogueChanged, offers, whichOnes } from './of-catalogues';
import { rules } from './of-rules';
import { sweep, worker } from './of-sweeps';
import { topicsFrom } from './own-topics';
import { parsed } from './parsed';
import { questionsAsText, questionsOf } from './questions';
import { sayBeside, sayJson, sayText } from './said';
import { usage } from './usage';

async function check(args: readonly string[]): Promise<number> {
  const { words, given } = parsed(args, ['json'], ['house', 'as-of', 'topics']);
  const among = await topicsFrom(given);
  const under = await underFrom(given, among);
  const paths = words.length === 0 ? ['cases'] : words;
  const { checked, troubles, skipped } = await checkCases(paths, under, among);
  if (given.json) await sayJson(checkedAsJson(checked));
  else if (checked.length > 0) await sayText(checkedAsText(checked));
  const beside = [...troubles, ...skipped];
  if (beside.length > 0) await sayBeside(beside.join('\n'));
  if (troubles.length > 0) return 2;
  return checked.every(({ holds }) => holds) ? 0 : 1;
}

async function questions(args: readonly string[]): Promise<number> {
  const { words, given } = parsed(args, ['json']);
  const [file, more] = words;
  if (file === undefined || more !== undefined) {
    throw new BadInput(
      '`tarebook questions` takes one file, a CSV table or pasted text, or - for standard input.',
    );
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
