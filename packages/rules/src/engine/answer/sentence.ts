import { showMargin, showNumber } from '../../quantity';
import type { Level, Limit, Topic } from '../define/shapes';
import { capital, listed, lowered } from './phrases';
import { sideShown } from './room';
import type { FindingAnswer, LimitAnswer, Missing } from './shapes';

/** "runs" of one thing, "run" of several. */
const agrees = (limit: Limit | undefined, one: string, several: string): string =>
  limit?.plural ? several : one;

function leftOf(answer: LimitAnswer): string {
  const { headroom, limit } = answer;
  const of = sideShown(answer)(limit, limit.unit);
  const left = { lo: Math.max(0, headroom.lo), hi: Math.max(0, headroom.hi) };
  if (left.hi === 0) return `nothing left of ${of}`;
  return `${showMargin(left, headroom.unit)} left of ${of}`;
}

const tooMuch = ({ headroom }: LimitAnswer): string =>
  showMargin({ lo: -headroom.hi, hi: -headroom.lo }, headroom.unit);

/** What is loaded goes over; a rating does not, it is exceeded. */
const wordFor = (topic: Topic, { id }: LimitAnswer): 'over' | 'exceeded' =>
  topic.limits[id]?.exceeded ? 'exceeded' : 'over';

/** What is said before anything else: people get out before anybody hears a verdict. */
export const urgentOf = (
  topic: Topic,
  findings: readonly FindingAnswer[],
): FindingAnswer | undefined =>
  findings.find(({ id, level }) => level === 'stop' && topic.findings[id]?.first);

type Said = {
  readonly topic: Topic;
  readonly limits: readonly LimitAnswer[];
  readonly findings: readonly FindingAnswer[];
  readonly binding: LimitAnswer | null;
  readonly missing: readonly Missing[];
  /** Results that belong into the sentence. */
  readonly told: readonly string[];
};

const shortOf = (topic: Topic, { id, label }: LimitAnswer): string =>
  topic.limits[id]?.short ?? label;

/** “, and so are payload and the ball; the tow rating is exceeded too” */
function alsoOver(topic: Topic, rest: readonly LimitAnswer[], first: 'over' | 'exceeded'): string {
  const has = (word: 'over' | 'exceeded') => rest.filter((each) => wordFor(topic, each) === word);
  const verb = (of: readonly LimitAnswer[]) =>
    of.length === 1 && of[0] ? agrees(topic.limits[of[0].id], 'is', 'are') : 'are';
  const names = (of: readonly LimitAnswer[]) => listed(of.map((each) => shortOf(topic, each)));
  const [same, word] = [has(first), first === 'over' ? 'exceeded' : 'over'] as const;
  const other = has(word);
  const so = same.length === 0 ? '' : `, and so ${verb(same)} ${names(same)}`;
  const joint = so === '' ? ', and' : ';';
  const too = `${joint} ${names(other)} ${verb(other)} ${word} too`;
  return other.length === 0 ? so : `${so}${too}`;
}

/** Every limit that is over, the fullest first, and everything else that stops it. */
function stopped({ topic, limits, findings }: Said): string {
  const over = limits.filter((limit) => limit.state === 'stop');
  const [first, ...rest] = over.toSorted((a, b) => b.roomUsed.hi - a.roomUsed.hi);
  const stops = findings.filter((each) => each.level === 'stop');
  const [finding, ...others] = stops;
  const gists = (all: readonly FindingAnswer[]) => all.map(({ wrong }) => wrong);
  if (!first) return finding ? [finding.says, ...gists(others)].join(' ') : '';
  const is = agrees(topic.limits[first.id], 'is', 'are');
  const word = wordFor(topic, first);
  const head = `${capital(shortOf(topic, first))} ${is} ${word} by ${tooMuch(first)}`;
  const limit = `${head}${alsoOver(topic, rest, word)}.`;
  return [limit, ...gists(finding ? [finding, ...others] : [])].join(' ');
}

/** A limit that may hold or not, with both of its ends: “may be over by 20 lb or have 30 lb left”. */
function straddling({ topic, limits }: Said): string {
  const open = limits.find(
    ({ state, headroom: { lo, hi } }) =>
      state === 'unknown' && Number.isFinite(lo) && Number.isFinite(hi) && lo < 0 && hi > 0,
  );
  if (!open) return '';
  const { lo, hi, unit } = open.headroom;
  const short = capital(shortOf(topic, open));
  const over = showMargin({ lo: -lo, hi: -lo }, unit);
  return `${short} may be ${wordFor(topic, open)} by as much as ${over}, or have up to ${showMargin({ lo: hi, hi }, unit)} left.`;
}

function unsettled(said: Said): string {
  const asked = said.missing
    .slice(0, 2)
    .map(({ fact, label }) => said.topic.facts[fact]?.noun ?? lowered(label));
  // A label may have commas of its own, so two are told one after the other.
  const first = asked.length === 0 ? '' : `First find out: ${asked.join('; then: ')}.`;
  return [straddling(said), first].filter((each) => each !== '').join(' ');
}

function because(level: Level, said: Said): string {
  const { topic, limits, findings, binding } = said;
  if (level === 'stop') return stopped(said);
  if (level === 'unknown') return unsettled(said);
  const cares = findings.filter((each) => each.level === 'care');
  const [first, ...others] = cares;
  // Where nothing is held against a limit, what is to be taken care of is all there is to say.
  if (first && limits.every(({ state }) => state === 'not-asked')) {
    return [first.says, ...gistsOf(others, mostGists - 1)].join(' ');
  }
  const out = binding ? runsOut(topic, binding) : '';
  const told = gistsOf(cares, mostGists);
  // Where every limit has room, the care is somewhere else, and that comes first.
  const all = limits.some(({ state }) => state === 'care') ? [out, ...told] : [...told, out];
  return all.filter((each) => each !== '').join(' ');
}

/** More than these nobody keeps in mind while listening. */
const mostGists = 2;

function gistsOf(findings: readonly FindingAnswer[], most: number): readonly string[] {
  const told = findings.slice(0, most).map(({ wrong }) => wrong);
  const left = findings.length - told.length;
  const more = left === 1 ? 'one more thing' : `${inLetters(left)} more things`;
  return left === 0
    ? told
    : [...told, `There ${left === 1 ? 'is' : 'are'} ${more} to take care of.`];
}

function runsOut(topic: Topic, binding: LimitAnswer): string {
  const runs = agrees(topic.limits[binding.id], 'runs', 'run');
  return `${capital(shortOf(topic, binding))} ${runs} out first: ${leftOf(binding)}.`;
}

/** What the verdict says first; where it hangs on what nobody told, what that is. */
function openingOf(topic: Topic, level: Level, findings: readonly FindingAnswer[]): string {
  const { sentence } = topic.outcomes[level];
  if (level !== 'if') return sentence;
  const provisos = findings.flatMap((each) => (each.level === 'if' ? [each.proviso] : []));
  return `${sentence}, if ${listed(provisos)}.`;
}

/** One or two short sentences, fit to be said aloud; what people have to do at once comes first. */
export function sentenceOf(topic: Topic, level: Level, said: Omit<Said, 'topic'>): string {
  const sentence = openingOf(topic, level, said.findings);
  const urgent = urgentOf(topic, said.findings);
  const parts = urgent
    ? [urgent.says, sentence]
    : [sentence, ...said.told, because(level, { topic, ...said })];
  return parts.filter((each) => each !== '').join(' ');
}

const smallNumbers = [
  'none',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
  'thirteen',
  'fourteen',
  'fifteen',
  'sixteen',
  'seventeen',
  'eighteen',
  'nineteen',
  'twenty',
];
const inLetters = (n: number): string => smallNumbers[n] ?? showNumber(n, 0);

/** On how many limits the verdict rests, and which were not asked. */
export function restsOn(limits: readonly LimitAnswer[]): string {
  if (limits.length === 0) return '';
  const silent = limits.filter((limit) => limit.state === 'not-asked');
  const asked = limits.length - silent.length;
  // A question that no limit has to do with rests on none, and says nothing of them.
  if (asked === 0) return '';
  const head = `This rests on ${inLetters(asked)} of the ${inLetters(limits.length)} limits.`;
  if (silent.length === 0) return head;
  return `${head} Not asked, for want of a rating: ${listed(silent.map((l) => lowered(l.label)))}.`;
}
