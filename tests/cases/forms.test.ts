import { readdirSync } from 'node:fs';
import { askedOf, judgeNote, noteForms, readNote } from '@tarebook/casebook';
import {
  type Answer,
  answerTraced,
  type FormName,
  type Forms,
  formsOf,
  type Level,
  levels,
  say,
  type Topic,
  urgentOf,
  wordsIn,
} from '@tarebook/rules/engine';
import { flesch } from 'flesch';
import { syllable } from 'syllable';
import { describe, expect, test } from 'vitest';
import { readFiled } from './filed';
import { casesFolder, markdownBelow, notesFolder, refusedFolder } from './files';

/**
 * How every filed case, minimal document and note leaves: as long as each form may be, in words that
 * can be read aloud, with what was asked first. The lengths are those of the forms: ten to
 * twenty-five seconds on the phone and 20 to 65 to everybody at 175 words a minute, 40 to 80 words in
 * public, at most 350 in a letter.
 */
type Left = {
  readonly name: string;
  readonly forms: Forms;
  readonly asked?: {
    readonly topic: Topic;
    readonly answer: Answer;
    readonly asking: string;
    readonly told: boolean;
  };
};

const cases: readonly Left[] = markdownBelow(casesFolder, refusedFolder).map(({ name, text }) => {
  const doc = readFiled(text);
  const { topic, asked } = askedOf(doc);
  const { title, asking: named } = doc.front;
  const { asking, forms } = formsOf(topic, asked, { title, asking: named });
  const answer = answerTraced(topic, asked);
  const told = Object.keys(asked.facts).length > 0;
  return { name, forms, ...(asking && { asked: { topic, answer, asking, told } }) };
});
const notes: readonly Left[] = markdownBelow(notesFolder).map(({ name, text }) => ({
  name,
  forms: noteForms(judgeNote(readNote(text), '2026-11-28')),
}));
const left = [...cases, ...notes];

test('every filed case and note is here', () => {
  const folders = readdirSync(casesFolder).filter((name) => !['refused', 'rig'].includes(name));
  expect([...new Set(left.map(({ name }) => name.split('/')[0]))].toSorted()).toEqual(
    folders.toSorted(),
  );
});

const lengths: readonly (readonly [form: FormName, least: number, most: number])[] = [
  ['short', 12, 80],
  ['spoken', 29, 73],
  ['everybody', 60, 190],
  ['post', 40, 80],
  ['letter', 1, 350],
];

/** What may not reach an ear: ids, quotation marks, code, abbreviations of units, what says nothing. */
const unspeakable: readonly (readonly [what: string, found: RegExp])[] = [
  ['an id', /\b[a-z][a-zA-Z]*\.[a-z][a-zA-Z]+\b/],
  ['a quotation mark', /[“”"„`]/],
  [
    'an abbreviation of a unit',
    /\d ?(?:lb|lbf|kg|ft|in|mi|gal|psi|inWC|A|Ah|V|W|kW|Wh|kWh|mph|hp|oz|°F|F°|°C)\b/,
  ],
  ['a sign', /[%°±≥≤×→|_]/],
  ['a hole', /[{}]|undefined|NaN|Infinity|\bnull\b/],
  ['that it cannot be said', /cannot be said|cannot say/i],
  ['two stops', /\.\.|\.,|:\.|,,| ,| \./],
];
const unpublished = unspeakable.filter(([what]) =>
  ['an id', 'a hole', 'that it cannot be said', 'two stops'].includes(what),
);

describe.each(left)('$name', ({ forms }) => {
  test.each(lengths)('%s has %d to %d words', (form, least, most) => {
    expect(wordsIn(forms[form]), forms[form]).toBeGreaterThanOrEqual(least);
    expect(wordsIn(forms[form]), forms[form]).toBeLessThanOrEqual(most);
  });

  test.each(['spoken', 'everybody'] as const)('%s can be read aloud', (form) => {
    for (const [what, found] of unspeakable) expect(forms[form], what).not.toMatch(found);
  });

  test.each(['short', 'post', 'ticket', 'letter', 'askBack'] as const)(
    '%s can leave as it is',
    (form) => {
      const may =
        form === 'post' ? unpublished : unpublished.filter(([what]) => !/said/.test(what));
      for (const [what, found] of may)
        expect(forms[form].replace(/https?:\S+/g, ''), what).not.toMatch(found);
    },
  );
});

const sentences = new Intl.Segmenter('en-US', { granularity: 'sentence' });
const sentencesOf = (text: string): readonly string[] =>
  [...sentences.segment(text)].map(({ segment }) => segment.trim());

const levelOf = (topic: Topic, { outcome }: Answer): Level =>
  levels.find((level) => topic.outcomes[level].id === outcome) ?? 'unknown';

test('no letter and no sheet says its verdict twice', () => {
  const twice = left.flatMap(({ name, forms, asked }) => {
    if (!asked) return [];
    const verdict = asked.topic.outcomes[levelOf(asked.topic, asked.answer)].sentence;
    return (['letter', 'sheet'] as const).flatMap((form) =>
      sentencesOf(forms[form]).filter((each) => each === verdict).length > 1
        ? [`${name}: ${form}`]
        : [],
    );
  });
  expect(twice).toEqual([]);
});

/** Results that are from none to all, and so no figure; there are few, or the check holds nothing. */
const figureless = new Set<string>();

/** Any of these words said is a result said. */
function saidAs(
  { topic, answer }: { topic: Topic; answer: Answer },
  result: string,
  medium: 'spoken' | 'written',
): readonly string[] {
  const spoken = { medium } as const;
  if (result === 'verdict')
    return answer.outcome === 'cannot-say' ? [] : [verdictOf(topic, levelOf(topic, answer))];
  const [kind = '', id = ''] = result.split(/\.(.*)/);
  if (kind === 'limit') {
    const limit = answer.limits.find((each) => each.id === id);
    const isClosed =
      limit && Number.isFinite(limit.headroom.lo) && Number.isFinite(limit.headroom.hi);
    // Of a limit that may be over, and of which nothing may be used, no result is known.
    const isWide = limit && limit.headroom.lo < 0 && limit.used.lo <= 0;
    if (isClosed && isWide && limit.headroom.hi >= 0)
      figureless.add(`${topic.id} ${answer.sentence}`);
    const isKnown = isClosed && limit.state !== 'not-asked' && !(isWide && limit.headroom.hi >= 0);
    return isKnown ? [topic.limits[id]?.short ?? id] : [];
  }
  if (kind === 'finding') {
    const finding = answer.findings.find((each) => each.id === id);
    // Of more than three possible results only the ends are named, and that answers nothing.
    const isAnything = finding?.level === 'unknown' && finding.alternatives.length > 3;
    const isKnown = finding && finding.level !== 'not-asked' && !isAnything;
    return isKnown ? [say(finding.messages.wrong, spoken)] : [];
  }
  const list = answer.selections.find((each) => each.id === result);
  if (list) return list.items.filter(({ chosen }) => chosen === 'yes').map(({ label }) => label);
  const choice = answer.choices[result];
  if (choice) {
    const [only, ...more] = choice.among;
    const words =
      only === undefined || more.length > 0 ? undefined : topic.decisions?.[result]?.results[only];
    return [words?.says, ...(more.length === 0 ? choice.labels : [])].flatMap((each) => each ?? []);
  }
  const value = answer.values[result];
  if (!value || !Number.isFinite(value.lo) || !Number.isFinite(value.hi)) return [];
  // A pressure that may be anything from nothing on is none.
  if (value.unit === 'psi' && value.lo <= 0) return [];
  // Half of all that is possible, or more, is no figure.
  if (value.unit === '1' && value.hi - value.lo > 0.49) {
    figureless.add(`${topic.id} ${answer.sentence}`);
    return [];
  }
  return [say({ ...value, style: 'round' }, spoken), say({ ...value, style: 'exact' }, spoken)];
}

/** What answers an asking by itself, without a figure; the verdict where the question is yes or no. */
function fixedOf({ topic, asking, answer }: NonNullable<Left['asked']>): readonly string[] {
  const { says = [], yesOrNo = false } = topic.askings?.[asking] ?? {};
  const all = typeof says === 'string' ? [{ says }] : says;
  const whole = all.filter((each) => !('when' in each)).map((each) => each.says);
  const first = whole
    .filter((each) => !each.includes('{'))
    .flatMap((each) => sentencesOf(each)[0] ?? []);
  const level = levelOf(topic, answer);
  const isAnswered = yesOrNo && level !== 'unknown';
  return isAnswered ? [...first, verdictOf(topic, level)] : first;
}

const verdictOf = (topic: Topic, level: Level): string =>
  topic.outcomes[level].sentence.replace(/, with care\.$/, '');

/** What an asking says of itself where something holds: a figure that cannot be told, or none that is needed. */
function saidWhere({ topic, asking }: NonNullable<Left['asked']>): readonly string[] {
  const { says = [] } = topic.askings?.[asking] ?? {};
  const all = typeof says === 'string' ? [] : says.filter((each) => 'when' in each);
  return all.flatMap((each) => {
    if (!each.says.includes('{')) return sentencesOf(each.says).slice(0, 1);
    const cannot = each.says
      .split(/\{[^}]*\}/)
      .filter((part) => /cannot be told|^Nothing may be/.test(part));
    // Where the figure is to be read stands whole in its own sentence.
    const where = sentencesOf(each.says).filter((said) => /stands on the label/.test(said));
    return [...cannot, ...where];
  });
}

const plain = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[“”]|\.$/g, '')
    .trim();

/** What must not be, with what to do about it: that may stand before what was asked. */
function stopsSaid({ topic, answer }: { topic: Topic; answer: Answer }): readonly string[] {
  const level = levelOf(topic, answer);
  if (level !== 'stop' && level !== 'unknown') return [];
  // A danger that is open, or calls for care, comes first whatever else the answer waits for.
  const isDanger = ({ id, level: at }: Answer['findings'][number]): boolean =>
    level === 'unknown' && (at === 'if' || at === 'care') && topic.findings[id]?.first === true;
  const found = answer.findings.filter((each) => each.level === level || isDanger(each));
  const over = answer.limits.filter(({ state }) => state === 'stop' && level === 'stop');
  return [
    ...found.flatMap(({ messages }) => (messages.do ? [messages.do] : [messages.wrong])),
    ...over
      .flatMap(({ id }) => topic.limits[id]?.do?.split('{')[0] ?? topic.limits[id]?.short ?? [])
      .map((text) => ({ text })),
  ].map((each) => say(each, { medium: 'spoken' }));
}

test('what was asked is said in the first two sentences, or that people are to get out, or what stops it and what to do', () => {
  const asked = cases.flatMap(({ name, forms, asked }) => {
    // Whoever told nothing hears what to look at; there is no result yet.
    if (!asked?.told || urgentOf(asked.topic, asked.answer.findings)) return [];
    const results = asked.topic.askings?.[asked.asking]?.results ?? [];
    const own = fixedOf(asked);
    const words = results.flatMap((result) => saidAs(asked, result, 'spoken')).concat(own);
    const written = results.flatMap((result) => saidAs(asked, result, 'written')).concat(own);
    return words.length === 0 ? [] : [{ name, forms, words, written, asked }];
  });
  const late = asked.flatMap(({ name, forms, words, written, asked }) =>
    (['spoken', 'post'] as const).flatMap((form) => {
      const first = sentencesOf(forms[form]).slice(0, 2).join(' ');
      const wanted = [...(form === 'spoken' ? words : written), ...saidWhere(asked)];
      const stops = stopsSaid(asked);
      const opens = sentencesOf(forms[form]).slice(0, 4).join(' ');
      const isStopped = stops.some((each) => plain(opens).includes(plain(each)));
      const isSaid = isStopped || wanted.some((each) => plain(first).includes(plain(each)));
      return isSaid ? [] : [`${name} (${asked.asking}), ${form}: ${first}`];
    }),
  );
  expect(asked.length).toBeGreaterThan(200);
  expect(late).toEqual([]);
  expect([...figureless].length).toBeLessThanOrEqual(3);
});

/** Reading ease after Flesch (1948): 206.835 − 1.015 × words a sentence − 84.6 × syllables a word. */
function easeOf(text: string): number {
  const words = text.split(/\s+/).filter((word) => /\p{L}/u.test(word));
  const count = sentencesOf(text).filter((each) => /\p{L}/u.test(each)).length;
  const syllables = words.reduce((sum, word) => sum + Math.max(1, syllable(word)), 0);
  return flesch({ sentence: count, word: words.length, syllable: syllables });
}

/**
 * What each form must keep on the mean, and nine of ten by themselves. Sixty and more is plain English
 * by that scale; a form may become easier, not harder.
 */
const floors: readonly (readonly [form: FormName, mean: number, tenth: number])[] = [
  ['ticket', 90, 70],
  ['short', 80, 67],
  ['spoken', 80, 67],
  ['everybody', 78, 66],
  ['post', 80, 68],
  ['letter', 80, 73],
  ['askBack', 88, 78],
  ['sheet', 81, 74],
  ['slip', 81, 72],
];

test.each(floors)(
  '%s reads with an ease of %d at the least, nine of ten with %d',
  (form, mean, tenth) => {
    const eases = left.map(({ forms }) => easeOf(forms[form])).toSorted((a, b) => a - b);
    expect(eases.reduce((sum, each) => sum + each, 0) / eases.length).toBeGreaterThanOrEqual(mean);
    expect(eases[Math.floor(eases.length / 10)]).toBeGreaterThanOrEqual(tenth);
  },
);
