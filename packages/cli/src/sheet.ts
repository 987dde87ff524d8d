import {
  type Answer,
  againstOf,
  atMost,
  gravestFirst,
  type LimitAnswer,
  leftOf,
  type Matter,
  mattersSays,
  overOf,
  type Remedies,
  type Source,
  type Spread,
  type Topic,
  why,
} from '@tarebook/rules/engine';
import { type Interval, show, showMargin, showNumber } from '@tarebook/rules/quantity';
import { rankingRows, selectionRows } from './beyond';
import { chancesSection } from './chances';
import { columns, wrapped } from './columns';

const section = (title: string, body: string): string =>
  body === '' ? '' : `\n${title}\n${body}\n`;

const bullets = (lines: readonly string[]): string =>
  lines.map((line) => `  – ${wrapped(line, '    ')}`).join('\n');

/** A little more or less than the whole is not the whole. */
const places = (share: number): number => (share !== 1 && Math.abs(share - 1) < 5e-4 ? 3 : 1);

function percent({ lo, hi }: Interval): string {
  if (!Number.isFinite(hi)) return '';
  if (!Number.isFinite(lo)) return show({ lo, hi }, '1');
  const [a, b] = [lo, hi].map((end) => showNumber(end * 100, places(end)));
  return a === b ? `${a} %` : `${a}–${b} %`;
}

function leftSaid(limit: LimitAnswer): string {
  const { lo, hi, unit } = limit.headroom;
  if (hi < 0) return `${showMargin(overOf(limit), unit)} over`;
  if (!Number.isFinite(lo) || !Number.isFinite(hi)) return '';
  if (lo < 0 && hi > 0) {
    return `${showMargin(atMost(overOf(limit)), unit)} over to ${showMargin(atMost(leftOf(limit)), unit)} left`;
  }
  return `${showMargin(leftOf(limit), unit)} left`;
}

/** What is certainly over comes before what may be. */
const gravity = ({ state }: LimitAnswer): number => (state === 'stop' ? 1 : 0);

/** Why a limit at 83 % may stand before one at 87 %. */
const fullest = 'By the room above empty that is used; the percentage is of the whole limit.';

function limitRows(limits: readonly LimitAnswer[]): string {
  const asked = limits
    .filter((limit) => limit.state !== 'not-asked')
    .toSorted((a, b) => gravity(b) - gravity(a) || b.roomUsed.hi - a.roomUsed.hi);
  const rows = columns(
    asked.map((limit) => {
      const { used, of } = againstOf(limit);
      const share = of === '' ? '' : percent(limit.share);
      return [limit.label, used, of && 'of', of, share, leftSaid(limit), limit.state];
    }),
    [1, 3, 4, 5],
  );
  return asked.length < 2 ? rows : `  ${fullest}\n${rows}`;
}

/** What nobody can know from these facts needs no line of working. */
const isOpen = (ends: Interval | undefined): boolean =>
  ends !== undefined && !(Number.isFinite(ends.lo) && Number.isFinite(ends.hi));

function workingRows(topic: Topic, answer: Answer): string {
  // A result shown by itself that is not known, or has nothing left, has no working to show.
  const hidden = Object.entries(topic.apart).flatMap(([id, name]) =>
    answer.apart[id] === null ? [name] : [],
  );
  const rows = topic.headline.flatMap((name) => {
    const step = answer.trace.steps[name];
    if (!step || isOpen(step.ends) || hidden.includes(name)) return [];
    const working = step.working && step.working !== step.value ? `= ${step.working}` : '';
    return [
      `  ${step.label}: ${step.value}${working === '' ? '' : `\n      ${wrapped(working, '      ', 86)}`}`,
    ];
  });
  return rows.join('\n');
}

const cited = ({ class: kind, cite, section: where, note }: Source): string =>
  `${kind}: ${cite}${where ? `, ${where}` : ''}${note ? `. ${note}` : ''}`;

/** The sources of everything that the verdict came from, each once. */
function sourcesOf(answer: Answer): readonly string[] {
  const sources = Object.values(answer.trace.steps).flatMap(({ source }) =>
    source ? [cited(source)] : [],
  );
  return [...new Set(sources)].sort();
}

/** Under whose own parameters the answer stands, and what they move. */
function houseSection({ house }: Answer): readonly string[] {
  if (!house) return [];
  const moved = house.parameters.map(({ says }) => says);
  const none = ['Its layer moves nothing on this day.'];
  return [section(`As ${house.name} keeps it`, bullets(moved.length === 0 ? none : moved))];
}

const mostChanges = 8;

/** Those that ask least; the whole list is in the JSON. */
function changeLines({ remedies, cutShort }: Remedies): readonly string[] {
  const shown = remedies.slice(0, mostChanges).map(({ says }) => says);
  const more = remedies.length - shown.length;
  const rest = more === 1 ? 'And one more that asks more.' : `And ${more} more that ask more.`;
  const untried = 'Not every change was tried: so many rows leave too many of them.';
  return [...shown, ...(more > 0 ? [rest] : []), ...(cutShort ? [untried] : [])];
}

/** The fullest limits; what moves the others matters less. */
const mostLooked = 4;

/** Of the fullest limits the fact that moves each most. */
function secondLooks(answer: Answer, matter: readonly Matter[]): readonly string[] {
  const fullest = answer.limits
    .filter(({ state }) => state !== 'not-asked')
    .toSorted((a, b) => b.roomUsed.hi - a.roomUsed.hi)
    .slice(0, mostLooked);
  return mattersSays(
    matter,
    fullest.map(({ id }) => `limit.${id}`),
  );
}

/** A finding; where another topic goes on from there, which. */
const foundLine = ({ label, level, says, see }: Answer['findings'][number]): string =>
  `${label} (${level}): ${says}${see ? ` ${see.says}: the topic ${see.topic}.` : ''}`;

const keptBy = ({ house }: Answer): string => (house ? `, as ${house.name} keeps them` : '');

function head(answer: Answer): string {
  return `${answer.words.toUpperCase()}\n${wrapped(answer.sentence, '')}`;
}

/** An answer as plain text that can be pasted into a mail: verdict first, then why. */
export function sheet(
  title: string,
  topic: Topic,
  answer: Answer,
  found: Remedies,
  matter: readonly Matter[],
  spread?: Spread,
): string {
  const told = gravestFirst(answer.findings);
  const missing = answer.missing.map(
    ({ label, ask, where, says }) => `${label}: ${ask} (${where}.) ${says}`,
  );
  const parameters = answer.parameters
    .filter(({ id }) => answer.trace.steps[id])
    .map(({ label, value, unit, source }) => [
      label,
      show({ lo: value, hi: value }, unit),
      source.class,
    ]);
  const assumed = answer.assumed.map(({ says }) => says);
  return [
    `${head(answer)}\n`,
    `\n${title}\n`,
    section('Find out first', bullets(missing)),
    section('Limits, the fullest first', limitRows(answer.limits)),
    answer.restsOn === '' ? '' : `  ${wrapped(answer.restsOn, '  ')}\n`,
    section('Also', bullets(told.map(foundLine))),
    ...[...selectionRows(answer), ...rankingRows(answer)].map(([title, body]) =>
      section(title, body),
    ),
    section('What would change it', bullets(changeLines(found))),
    section('Why', `  ${wrapped(why(topic, answer, 'verdict', 'full'), '  ')}`),
    section('Worth a second look', bullets(secondLooks(answer, matter))),
    section('Working', workingRows(topic, answer)),
    ...(spread ? [section(...chancesSection(topic, answer, spread))] : []),
    section('Taken for granted', bullets(assumed)),
    section('Be careful', bullets(answer.cautions)),
    section('Numbers of the trade', columns(parameters, [1])),
    ...houseSection(answer),
    section('Known to change', bullets(answer.dated.map(({ says }) => says))),
    section('Sources', bullets(sourcesOf(answer))),
    `\nRules: ${answer.topic} ${answer.rules}${keptBy(answer)}, as of ${answer.asOf}.\n`,
  ].join('');
}
