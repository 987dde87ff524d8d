import { askedOf, judgeNote, noteForms, readNote } from '@tarebook/casebook';
import { topics } from '@tarebook/rules';
import {
  type Asked,
  answerTraced,
  english,
  type FactsGiven,
  formOf,
  levels,
  type Topic,
  urgentOf,
  writtenForm,
} from '@tarebook/rules/engine';
import { describe, expect, test } from 'vitest';
import { readFiled } from './filed';
import { casesFolder, markdownBelow, notesFolder, refusedFolder } from './files';
import { untoldLeft } from './left';

/**
 * What somebody hears who drives: every filed case, every note, every asking with nothing told, and
 * every fact of a filed case told alone. A listener cannot read back, so each sentence is short, says
 * of what it speaks, and what was told is heard again in the answer.
 */
type Heard = { readonly name: string; readonly spoken: string };

const asOf = '2026-11-01';
const spokenOf = (topic: Topic, asked: Asked, asking?: string): string =>
  formOf('spoken', topic, asked, { asking });

const documents = markdownBelow(casesFolder, refusedFolder).map(({ name, text }) => {
  const doc = readFiled(text);
  return { name, asking: doc.front.asking, ...askedOf(doc) };
});

const filed = documents.map((document) => {
  const { topic, asked, asking } = document;
  const { text: spoken, cautions } = writtenForm('spoken', topic, asked, { asking });
  return { ...document, answer: answerTraced(topic, asked), spoken, cautions };
});

const notes: readonly Heard[] = markdownBelow(notesFolder).map(({ name, text }) => ({
  name,
  spoken: noteForms(judgeNote(readNote(text), '2026-11-28')).spoken,
}));

const nothing: readonly Heard[] = untoldLeft().map(({ name, forms }) => ({
  name,
  spoken: forms.spoken,
}));

type Alone = Heard & { readonly topic: Topic; readonly fact: string; readonly asked: Asked };

/** Each fact of a topic as the first filed case tells it, by itself. */
const alone: readonly Alone[] = Object.values(topics).flatMap((topic) => {
  const told: Record<string, FactsGiven[string]> = {};
  for (const document of documents) {
    if (document.topic.id !== topic.id) continue;
    for (const [fact, given] of Object.entries(document.asked.facts)) {
      if (given !== 'unknown') told[fact] ??= given;
    }
  }
  return Object.entries(told).map(([fact, given]) => {
    const asked = { facts: { [fact]: given }, asOf };
    return { name: `${topic.id}: ${fact}`, topic, fact, asked, spoken: spokenOf(topic, asked) };
  });
});

const all: readonly Heard[] = [...filed, ...notes, ...nothing, ...alone];

/** The asking of a topic that what was told implies. */
function impliedIn({ askings = {} }: Topic, { facts }: Asked): string {
  const isTold = (fact: string): boolean => (facts[fact] ?? 'unknown') !== 'unknown';
  const all = Object.entries(askings);
  const implied = all.find(([, { impliedBy = [] }]) => impliedBy.some(isTold));
  return (implied ?? all.find(([, { usual }]) => usual) ?? all[0])?.[0] ?? '';
}

/** Sentences as they are heard; one may begin with a figure. */
const sentencesOf = (text: string): readonly string[] => text.split(/(?<=[.?!])\s+(?=[\p{Lu}\d])/u);

/** “2 and a half inches” is heard as one figure. */
const asOneFigure = (sentence: string): string =>
  sentence.replace(/\d+ and (?:an? |\w+ )(?:half|quarters?|eighths?|sixteenths?)/g, '1');

const wordsOf = (sentence: string): number =>
  asOneFigure(sentence)
    .split(/\s+/)
    .filter((word) => /[\p{L}\p{N}]/u.test(word)).length;

/** A list is heard one thing after the other. */
const isList = (sentence: string): boolean => /^[^:;]+: [^;]+; /.test(sentence);

const hearing = (isFound: (sentence: string) => boolean): readonly string[] => [
  ...new Set(
    all.flatMap(({ name, spoken }) =>
      sentencesOf(spoken)
        .filter(isFound)
        .map((sentence) => `${name}: ${sentence}`),
    ),
  ),
];

describe('who drives and listens', () => {
  test('there is much to hear', () => {
    expect(filed.length).toBeGreaterThan(400);
    expect(nothing.length).toBeGreaterThan(80);
    expect(alone.length).toBeGreaterThan(400);
  });

  test('hears no sentence that is lost before its end', () => {
    expect(hearing((said) => wordsOf(said) > (isList(said) ? 34 : 24))).toEqual([]);
  });

  test('hears who does what, and never that somebody told nothing', () => {
    expect(
      hearing((said) => /\bnobody (?:has )?(?:said|told|knows|reads?|looked)\b/i.test(said)),
    ).toEqual([]);
    expect(hearing((said) => /^(?:Whoever|Perhaps:)/.test(said))).toEqual([]);
    expect(hearing((said) => /among other things|; and more[:.]/.test(said))).toEqual([]);
  });

  test('hears of what care is to be taken, and never of a sheet that is not there', () => {
    const idle = all.filter(({ spoken }) => /, with care\.(?! [A-Z])/.test(spoken));
    expect(idle.map(({ name, spoken }) => `${name}: ${spoken}`)).toEqual([]);
    expect(hearing((said) => /, with care\.$/.test(said))).toEqual([]);
    expect(hearing((said) => /\bthis (?:sheet|page)\b/i.test(said))).toEqual([]);
    // Of what follows, nobody knows which of it is meant.
    expect(hearing((said) => /if you do what follows/.test(said))).toEqual([]);
    const minded = all.filter(({ spoken }) =>
      /, but mind (?:one thing|\w+ things|this first)\. [A-Z]/.test(spoken),
    );
    expect(minded.length).toBeGreaterThan(30);
  });

  test('hears of what is over what there is, and what may be', () => {
    // Of an end that is open, of volts and of hours there is nothing to count out.
    const alone = /^[^,;:]+ (?:is|are) over by (?!.*(?:or more|volts|hours|percent)\.)[^,;:]+\.$/;
    const bare = filed.filter(({ spoken }) => sentencesOf(spoken).some((said) => alone.test(said)));
    // Where both have been said before, they are not said again.
    const lost = bare.filter(({ spoken }) => (spoken.match(/\d[\d,.]*\d|\d/g) ?? []).length < 3);
    expect(lost.map(({ name, spoken }) => `${name}: ${spoken}`)).toEqual([]);
    expect(
      hearing((said) => / over by .*: .* at most .* will do\.$/.test(said)).length,
    ).toBeGreaterThan(15);
    const short = all.filter(({ spoken }) =>
      / falls? short by [^:;]*\. The need is .*, and there are /.test(spoken),
    );
    expect(short.length).toBeGreaterThan(5);
  });

  test('hears what a term of the trade is, once, right after it', () => {
    const explained = (english.terms ?? []).flatMap(({ says, heard }) =>
      filed.filter(({ spoken }) => spoken.includes(says)).map((each) => ({ ...each, says, heard })),
    );
    expect(explained.length).toBeGreaterThan(50);
    for (const { name, spoken, says, heard } of explained) {
      const [before = '', ...after] = spoken.split(says);
      expect(after, name).toHaveLength(1);
      expect(before, name).toMatch(heard);
      expect(after[0]?.trim(), name).not.toBe('');
    }
    expect((english.terms ?? []).filter(({ says }) => wordsOf(says) > 14)).toEqual([]);
  });

  test('hears no caution about something else while there is one for everybody', () => {
    const beside = filed.flatMap(({ name, topic, asked, answer, cautions }) => {
      const { findings, limits, binding } = answer;
      const up = new Set([
        ...findings.flatMap(({ id, level }) =>
          level === 'ok' || level === 'not-asked' ? [] : [`finding.${id}`],
        ),
        ...limits.flatMap(({ id, state }) =>
          state === 'ok' || state === 'not-asked' ? [] : [`limit.${id}`],
        ),
        `limit.${binding}`,
        ...Object.keys(asked.facts),
      ]);
      const isAbout = ({ fits = [] }: Topic['cautions'][number]): boolean =>
        fits.some((each) => up.has(each));
      const general = topic.cautions.filter(({ fits }) => fits === undefined);
      const stray = topic.cautions.filter((each) => each.fits !== undefined && !isAbout(each));
      const isStray = stray.some(({ says }) => cautions.includes(says));
      return isStray && !general.some(({ says }) => cautions.includes(says)) && general.length > 0
        ? [name]
        : [];
    });
    expect(beside).toEqual([]);
  });

  test('hears that a list goes on only after the list, and once', () => {
    const goesOn = all.filter(({ spoken }) => spoken.includes('The whole list can be sent to you'));
    const lost = goesOn.filter(({ spoken }) => !/: [^.]+\. .*The whole list/.test(spoken));
    expect(goesOn.length).toBeGreaterThan(5);
    expect(lost.map(({ name, spoken }) => `${name}: ${spoken}`)).toEqual([]);
  });

  test('hears no share of a share, none that may be anything, and no supply that is over', () => {
    expect(hearing((said) => /percent left of [\d.]+ percent/.test(said))).toEqual([]);
    expect(hearing((said) => /\bup to 100 percent (?:left|full)/.test(said))).toEqual([]);
    expect(
      hearing((said) => /^The (?:gas|fresh water|battery|day’s charge) is over/.test(said)),
    ).toEqual([]);
  });

  test('hears no word that only the trade knows, unless it is said what it is', () => {
    const trade =
      /\bshunt|\bA-frame|\b(?:fuller|each|two|both) legs?\b|\bbreak-even|whose band|tilt\b|stop line/;
    expect(hearing((said) => trade.test(said))).toEqual([]);
  });

  test('hears the verdict first where the question is one of yes or no', () => {
    const asked = Object.values(topics).flatMap((topic) =>
      Object.values(topic.askings ?? {}).filter(({ yesOrNo }) => yesOrNo),
    );
    expect(asked.length).toBeGreaterThan(12);
    const settled = filed.flatMap(({ name, topic, asked, asking, answer, spoken }) => {
      const { outcome, findings } = answer;
      const level = levels.find((each) => topic.outcomes[each].id === outcome);
      const first = asking ?? impliedIn(topic, asked);
      const isAsked = topic.askings?.[first]?.yesOrNo === true;
      if (!isAsked || (level !== 'ok' && level !== 'care') || urgentOf(topic, findings)) return [];
      return [
        { name, spoken, words: topic.outcomes[level].sentence.replace(/(?:, with care)?\.$/, '') },
      ];
    });
    expect(settled.length).toBeGreaterThan(15);
    const late = settled.filter(({ words, spoken }) => !spoken.startsWith(words));
    expect(late.map(({ name }) => name)).toEqual([]);
  });

  test('hears a noun before it hears a pronoun', () => {
    const opening = all.filter(({ spoken }) => /^(?:It|Its|They|This|One that)\b/.test(spoken));
    expect(opening.map(({ name, spoken }) => `${name}: ${spoken}`)).toEqual([]);
    // A question stands by itself, and is remembered when all else is forgotten.
    expect(
      hearing((said) =>
        /^Find out next: (?:is|are|was|has|does|did|how \w+(?: \w+)?|what|where|when) (?:is |does |did |was )?(?:it|its|they)\b/.test(
          said,
        ),
      ),
    ).toEqual([]);
  });

  test('hears as many conditions as are counted, or that there are more', () => {
    const three = all.filter(({ spoken }) => / on three conditions\./.test(spoken));
    expect(three.length).toBeGreaterThan(10);
    const whole = three.filter(({ spoken }) => / First, .* Second, .* Third, /.test(spoken));
    expect(whole).toEqual(three);
    const many = all.filter(({ spoken }) => / on (?!one|two)\w+ conditions\./.test(spoken));
    expect(many.length).toBeGreaterThan(three.length);
    for (const { spoken } of many) expect(spoken).toMatch(/ Third, /);
    for (const { spoken } of many.filter((each) => / on four conditions/.test(each.spoken))) {
      expect(spoken).toMatch(/ Fourth, /);
    }
    // Whoever listens has no written answer.
    expect(hearing((said) => /The written answer has the rest/.test(said))).toEqual([]);
  });

  test('hears the figure first where the question is how much, which or where', () => {
    const asked = Object.values(topics).flatMap(({ id, askings = {} }) =>
      Object.values(askings)
        .filter(({ label, yesOrNo }) => yesOrNo && /^(?:How|What|Which|Where)\b/.test(label))
        .map(({ label }) => `${id}: ${label}`),
    );
    expect(asked).toEqual([]);
  });
});

/** The figures in a fact as a listener hears them. */
const figuresOf = (given: FactsGiven[string] | undefined): readonly string[] =>
  typeof given === 'string' ? (given.match(/\d[\d,]*/g) ?? []) : [];

/** A rule that is the same for all who ask. */
const rulesOf = (topic: Topic): readonly string[] =>
  Object.values(topic.everybody ?? {}).flatMap(({ rule }) => sentencesOf(rule).slice(0, 1));

test('whoever told one fact hears it, and not the rule that everybody hears', () => {
  const ruled = alone.filter(({ topic, spoken }) =>
    rulesOf(topic).some((rule) => spoken.includes(rule)),
  );
  const unheard = ruled.filter(({ topic, spoken, asked, fact }) => {
    if (topic.facts[fact]?.kind !== 'quantity' || spoken.includes('You told me ')) return false;
    return !figuresOf(asked.facts[fact]).some((figure) => spoken.includes(figure));
  });
  expect(ruled.length).toBeGreaterThan(50);
  expect(unheard.map(({ name, spoken }) => `${name}: ${spoken}`)).toEqual([]);
});

function heardOf(id: string, facts: FactsGiven): string {
  const topic = topics[id];
  if (!topic) throw new Error(`There is no topic ${id}.`);
  return spokenOf(topic, { facts, asOf });
}

test('what is short is not called over beside what is, nor what is over short', () => {
  const tanks = { 'stay.days': '6 d', 'water.freshTank': '20 gal', 'water.grayTank': '20 gal' };
  const said = heardOf('off-grid-stay', { ...tanks, 'water.daily': '8 gal/d' });
  expect(said).toMatch(
    /fresh water falls short by 28 gallons; over, too: the gray tank\.|gray tank is over by .* gallons; the fresh water falls short too\./,
  );
  expect(said).not.toMatch(/so is the fresh water|so does the gray tank/);
});

test('a tank, days and a rating are made something of before a day’s use or a trailer is known', () => {
  expect(heardOf('off-grid-stay', { 'water.freshTank': '40 gal' })).toMatch(
    /your fresh tank of 40 gallons lasts 5 days/,
  );
  expect(heardOf('off-grid-stay', { 'water.grayTank': '32 gal' })).toMatch(
    /your gray tank of 32 gallons is full after/,
  );
  expect(heardOf('off-grid-stay', { 'stay.days': '4 d' })).toMatch(/4 days take 32 gallons/);
  const rated = {
    'vehicle.maxTrailerWeight': '5,000 lb',
    'trailer.dryWeight': 'about 4,600 lb',
  };
  expect(heardOf('tow-fit', rated)).toMatch(/4,370 to 4,830 pounds.*5,000 pounds/);
});
