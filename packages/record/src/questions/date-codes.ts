import type { Topic } from '@tarebook/rules/engine';
import type { Said } from './choices';

/** “Date code 2317”, “tires are dated 0821”, “the tires say 1119”, “mine say 3218”: the week, and the year’s two digits. */
const code =
  /(?:date codes?|dated|dot|stamped|code|(?:tires?|they|mine|ours)(?: all| both)? (?:says?|reads?)|ends? in|ending in)(?: (?:on|of|my|the|tires?|is|are|says?|reads?|code|end(?:s|ing)?(?: in)?))*[ :]{1,2}(?<week>\d{2})(?<year>\d{2})(?!\d)/giu;

/** “The tires were made in 2017”, “my tires are from 2018”: the year alone. */
const made =
  /(?<!\p{L})(?:tires?|spare)(?: [\p{L}’']+){0,3},? (?:(?:were|was|is|are) )?(?:all )?(?:made|built|manufactured|from|dated|date from|date to)(?: back)?(?: in| to)? (?<year>20[0-3]\d)(?![\d/]|[.,]\d)/giu;

function yearIn(text: string, thing: string): readonly Said[] {
  const years = [...text.matchAll(made)];
  const [found, another] = years;
  if (!found || another || /spare/i.test(found[0]) !== (thing === 'spare')) return [];
  const year = `${Number(found.groups?.year) % 100}`;
  const place = { from: found.index, to: found.index + found[0].length };
  return [{ fact: `${thing}.codeYear`, value: year, ...place }];
}

/** The week and year in which tires were made, as their code tells them; two codes are none. */
export function dateCodesIn(topic: Topic, text: string): readonly Said[] {
  const all = [...text.matchAll(code)];
  // “Say 2018 on the side (code 3118)”: the first is the year.
  const codes = all.filter(({ groups }) => !/^20[0-3]/.test(`${groups?.week}${groups?.year}`));
  const [found, another] = codes.length === 1 ? codes : all;
  const ahead = text.slice(0, found?.index ?? 0);
  const sentence = `${ahead.slice(ahead.search(/[^.?!;\n]*$/))}${/^[^.?!;\n]*/.exec(text.slice(ahead.length))?.[0] ?? ''}`;
  const isOfTires = /tires?(?!\p{L})/iu.test(sentence) && !/spare/i.test(sentence);
  const isOfSpare =
    Object.hasOwn(topic.facts, 'spare.codeWeek') && /spare/i.test(text) && !isOfTires;
  const thing = isOfSpare ? 'spare' : 'tire';
  if (!Object.hasOwn(topic.facts, `${thing}.codeWeek`)) return [];
  const { week = '', year = '' } = found?.groups ?? {};
  if (!found) return yearIn(text, thing);
  if (another || Number(week) < 1 || Number(week) > 53) return [];
  const place = { from: found.index, to: found.index + found[0].length };
  return [
    { fact: `${thing}.codeWeek`, value: `${Number(week)}`, ...place },
    { fact: `${thing}.codeYear`, value: `${Number(year)}`, ...place },
  ];
}

/** “121/118 on the sidewall”: the load index of a tire alone, and of one beside another. */
const pair =
  /(?<![\d/])(?<single>1[0-3]\d|[789]\d)\/(?<dual>1[0-3]\d|[789]\d)(?![\d/]| ?(?:psi|in|ft|amps?|a)\b)/gu;

export function loadIndexesIn(topic: Topic, text: string): readonly Said[] {
  if (!Object.hasOwn(topic.facts, 'tire.loadIndexDual')) return [];
  const [found, another] = text.matchAll(pair);
  const { single = '', dual = '' } = found?.groups ?? {};
  if (!found || another || Number(dual) > Number(single)) return [];
  const place = { from: found.index, to: found.index + found[0].length };
  return [
    { fact: 'tire.loadIndex', value: single, ...place },
    { fact: 'tire.loadIndexDual', value: dual, ...place },
  ];
}
