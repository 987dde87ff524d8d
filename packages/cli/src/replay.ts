import { judged, onOneLine } from '@tarebook/casebook';
import { topics } from '@tarebook/rules';
import {
  type Answer,
  type Asked,
  answerTraced,
  compareSaved,
  compareVerdicts,
  compareVersions,
  type Effect,
  type HouseLayer,
  houseLayerOf,
  InputError,
  matters,
  type Replay,
  type ReplayDifference,
  readSaved,
  remedies,
  spread,
  type Topic,
  whys,
  withHouse,
} from '@tarebook/rules/engine';
import { wrapped } from './columns';
import { effectLines } from './diff';
import { BadInput } from './files';
import { keptFolder, keptTopic, keptVersions } from './kept';
import { topicNamed } from './rules';

type Shelf = Readonly<Record<string, Topic>>;

/** A saved verdict run again under the rules it was made by, and under those of today. */
export type Replayed = Replay & {
  readonly topic: Topic;
  readonly answer: Answer;
  readonly same: boolean;
  /** What the present version makes of it, where that is a newer one. */
  readonly now?: Effect & { readonly rules: string };
};

/** A saved verdict is JSON, and no worked case begins so. */
export const looksSaved = (text: string): boolean => /^\uFEFF?\s*[{[]/.test(text);

const mostCharacters = 20_000_000;

/** Whether JSON is whole as far as it goes: what is wrong with it is only that it ends. */
function endsTooSoon(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch (problem) {
    const says = problem instanceof Error ? problem.message : '';
    if (/end of JSON|Unterminated/.test(says)) return true;
    const at = /at position (\d+)/.exec(says)?.[1];
    return at !== undefined && Number(at) >= text.length;
  }
}

/** Line and column, from 1, of the first character that cannot stand where it does. */
function faultIn(text: string): string {
  let [good, bad] = [0, text.length + 1];
  while (bad - good > 1) {
    const middle = Math.floor((good + bad) / 2);
    if (endsTooSoon(text.slice(0, middle))) good = middle;
    else bad = middle;
  }
  const before = text.slice(0, good).split('\n');
  return `${before.length}:${(before.at(-1)?.length ?? 0) + 1}`;
}

function parsed(name: string, text: string): unknown {
  if (text.length > mostCharacters) {
    throw new BadInput(`${name}: this is too long for a saved verdict; give one verdict a file.`);
  }
  const json = text.replace(/^\uFEFF/, '');
  try {
    return JSON.parse(json);
  } catch {
    const rest = endsTooSoon(json) ? 'it ends too soon' : 'this cannot stand here';
    throw new BadInput(
      `${name}:${faultIn(json)}: ${rest}; a saved verdict is whole JSON, as \`tarebook judge CASE --json\` writes it.`,
    );
  }
}

/** The very rules a saved verdict names. */
async function rulesOf(id: string, version: string, folder: string, among: Shelf): Promise<Topic> {
  const present = topicNamed(id, among);
  const kept = await keptTopic(id, version, folder);
  if (kept) return kept;
  if (present.version === version) return present;
  const there = [...(await keptVersions(id, folder)), present.version];
  throw new BadInput(
    `it was made by ${id} ${version}, which is not kept here; there are ${[...new Set(there)].join(', ')}.`,
  );
}

/** As other programs read it back: an open end is null. */
const asWritten = (...all: Parameters<typeof judged>): unknown =>
  JSON.parse(JSON.stringify(judged(...all)));

/** Under the dealer's own parameters, where the verdict stood under some. */
const under = (topic: Topic, house: HouseLayer | undefined): Topic =>
  house ? withHouse(topic, house) : topic;

/** What today's rules say of the same facts as of the same day; nothing when they are the same. */
function today(
  was: Topic,
  asked: Asked,
  house: HouseLayer | undefined,
  among: Shelf,
): Pick<Replayed, 'now'> {
  const present = among[was.id];
  if (!present || compareVersions(present.version, was.version) <= 0) return {};
  const rules = present.version;
  try {
    return { now: { rules, ...compareVerdicts(was, under(present, house), asked) } };
  } catch (problem) {
    if (!(problem instanceof InputError)) throw problem;
    const refused = `The house layer does not go with ${rules}: ${problem.message}`;
    return { now: { rules, differences: [], leftOut: [], refused } };
  }
}

/**
 * Runs a saved verdict again under the rules it names, as of its day, and compares all of it.
 *
 * @param name how the file is called in what is said
 * @throws BadInput when it is not JSON, not a verdict, or its rules are not kept.
 */
export async function replaySaved(
  name: string,
  text: string,
  {
    folder = keptFolder(),
    among = topics,
  }: { readonly folder?: string; readonly among?: Shelf } = {},
): Promise<Replayed> {
  const value = parsed(name, text);
  try {
    const saved = readSaved(value);
    const house = houseLayerOf(saved);
    const topic = under(await rulesOf(saved.topic, saved.rules, folder, among), house);
    const asked: Asked = { ...saved.asked, asOf: saved.asOf };
    const answer = answerTraced(topic, asked);
    const chances = saved.spread && spread(topic, asked, saved.spread);
    const found = saved.remedies && remedies(topic, asked, Object.values(among));
    const reasons = saved.why && { matters: matters(topic, asked), why: whys(topic, answer) };
    const replay = compareSaved(value, asWritten(answer, asked, chances, found, reasons));
    const same = replay.differences.length === 0;
    return { topic, answer, same, ...replay, ...today(topic, asked, house, among) };
  } catch (problem) {
    if (!(problem instanceof InputError) && !(problem instanceof BadInput)) throw problem;
    const told = problem.message.split('\n').map((line) => `${name}: ${line}`);
    throw new BadInput(told.join('\n'));
  }
}

function shown(value: unknown): string {
  if (value === undefined) return 'not there';
  if (typeof value === 'string') return `“${onOneLine(value.slice(0, 200))}”`;
  if (typeof value === 'object' && value !== null)
    return Array.isArray(value) ? 'a list' : 'a part';
  return value === null ? 'open (null)' : String(value);
}

const bullets = (lines: readonly string[]): string =>
  lines.map((line) => `  – ${wrapped(line, '    ')}\n`).join('');

const mostTold = 40;

function compared(all: readonly ReplayDifference[]): string {
  const told = all.slice(0, mostTold);
  const lines = told.map(({ place, was, now }) => `${place} was ${shown(was)}, is ${shown(now)}.`);
  const more = all.length - told.length;
  return bullets(more > 0 ? [...lines, `And ${more} more, each in --json.`] : lines);
}

/** Texts of the reasoning are many and follow from a few: they are counted. */
function rewordedText(all: readonly ReplayDifference[]): string {
  const shownInFull = all.filter(({ place }) => !place.startsWith('trace.'));
  const inReasoning = all.length - shownInFull.length;
  if (inReasoning === 0) return compared(shownInFull);
  const steps = `${inReasoning} ${inReasoning === 1 ? 'text' : 'texts'} of the reasoning, each in --json.`;
  return `${compared(shownInFull)}${bullets([steps])}`;
}

const section = (title: string, body: string): string => (body === '' ? '' : `\n${title}\n${body}`);

function nowText({ topic, now }: Replayed): string {
  if (!now) return '';
  const lines = effectLines(now);
  const head = `${topic.id} ${now.rules}, as of the same day: ${now.now ?? 'no verdict'}.`;
  return bullets([
    head,
    ...(lines.length === 0 ? ['Verdict, limits and findings all stand as they did.'] : lines),
  ]);
}

export function replayAsText(replayed: Replayed): string {
  const { topic, answer, same, differences, reworded, untouched } = replayed;
  const { limits, findings, values } = answer;
  const run = `Run again by ${topic.id} ${topic.version} as of ${answer.asOf}: ${answer.words}`;
  const counts = `${limits.length} limits, ${findings.length} findings and ${Object.keys(values).length} results`;
  const told = same
    ? `${run}, as it was. All ${counts} came out as saved, to the last digit.`
    : `${run}. What was saved does not say the same in ${differences.length} ${differences.length === 1 ? 'place' : 'places'}.`;
  return [
    `${same ? 'SAME RESULT' : 'NOT THE SAME'}\n${wrapped(told, '')}\n`,
    section('Saved, and run again', compared(differences)),
    section('The same, said in other words', rewordedText(reworded)),
    section('By the rules of today', nowText(replayed)),
    section('Not run again', untouched.length === 0 ? '' : `  ${untouched.join(', ')}\n`),
    section('Be careful', bullets(answer.cautions)),
  ].join('');
}

export function replayAsJson(replayed: Replayed): object {
  const { topic, answer, same, differences, reworded, untouched, now } = replayed;
  return {
    replayed: true,
    topic: topic.id,
    rules: topic.version,
    asOf: answer.asOf,
    outcome: answer.outcome,
    same,
    differences,
    reworded,
    untouched,
    ...(now && { now }),
    cautions: answer.cautions,
  };
}
