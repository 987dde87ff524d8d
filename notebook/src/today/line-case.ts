import type { LineMark } from '@tarebook/record';
import type { Topic } from '@tarebook/rules/engine';
import { readQuantity, show, type UnitSystem, wasMisread } from '@tarebook/rules/quantity';
import { blankCase, type Started } from '../state/blank';
import { withTitle } from '../state/front-line';
import { countOf, kindsOfPeople, type Person, peopleList } from '../state/people';
import { withOneMore } from '../state/people-counted';
import { readDocument } from '../state/reading';
import type { Corrected } from './draft';
import { plainly, titleOf } from './line-words';

/** One mark of a line under a name that stays while other words change. */
export const markKey = (mark: LineMark, text: string): string =>
  `${mark.kind === 'people' ? mark.who : mark.kind}:${text.slice(mark.from, mark.to).toLowerCase()}`;

/** “5000 lb” as people read it: 5,000 lb. */
export function shown(value: string, system: UnitSystem): string {
  const read = readQuantity(value);
  if (wasMisread(read) || !read.unit) return value;
  return show({ lo: read.from, hi: read.to }, read.unit.symbol, system);
}

/** The same for a cell: what would end it, or make more of it, is left out. */
const inCell = (text: string): string =>
  text
    .replace(/[\\`*_{}[\]<>#|~&]/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();

/** What the line tells and what was changed of it, each fact once; whatever was chosen by hand first. */
export function factsOf(
  marks: readonly LineMark[],
  text: string,
  { dropped, values, chosen }: Corrected,
): readonly Started[] {
  const found = new Map<string, Started>();
  const add = (id: string, value: string, readFrom: string): void => {
    if (id !== '' && !found.has(id)) found.set(id, { id, value: values[id] ?? value, readFrom });
  };
  const said = (mark: LineMark): string => inCell(`said: “${text.slice(mark.from, mark.to)}”`);
  const left = marks.filter((mark) => !dropped.includes(markKey(mark, text)));
  for (const mark of left) {
    if (mark.kind !== 'open') continue;
    add(chosen[markKey(mark, text)] ?? '', shown(mark.value, 'us'), said(mark));
  }
  for (const mark of left) {
    if (mark.kind === 'fact') add(mark.fact, shown(mark.value, 'us'), said(mark));
  }
  for (const [id, value] of Object.entries(values)) add(id, value, '');
  return [...found.values()];
}

/** How many of each kind ride along; undefined where nobody said. */
export function ridersOf(
  marks: readonly LineMark[],
  text: string,
  { dropped, counts }: Corrected,
): Readonly<Record<Person, number>> | undefined {
  const told: Partial<Record<Person, number>> = {};
  for (const mark of marks) {
    if (mark.kind !== 'people' || dropped.includes(markKey(mark, text))) continue;
    told[mark.who] = mark.count;
  }
  for (const kind of kindsOfPeople) {
    const count = counts[kind];
    if (count !== undefined) told[kind] = count;
  }
  if (Object.keys(told).length === 0) return undefined;
  return { adult: Math.max(1, told.adult ?? 1), child: told.child ?? 0, dog: told.dog ?? 0 };
}

/** A line with all that was read and changed, as a case; whoever rides along has a row each. */
export function caseOfLine(
  topic: Topic,
  asked: readonly string[],
  marks: readonly LineMark[],
  text: string,
  corrected: Corrected,
  named: string,
): string {
  const known = factsOf(marks, text, corrected);
  const words = plainly(text);
  const title = titleOf(text, named);
  // Its rows are added under a title that is read without quotes; “four: which” is not.
  const blank = blankCase(topic, topic.title, asked, known, words || topic.question);
  const riders = topic.facts[peopleList]?.kind === 'rows' && ridersOf(marks, text, corrected);
  if (!riders) return withTitle(blank, title);
  let doc = readDocument(blank);
  for (const kind of kindsOfPeople) {
    // The driver is there before anybody is named; a row that is not read ends it.
    for (let n = countOf(doc, kind); n < riders[kind]; n += 1) {
      doc = readDocument(withOneMore(doc, kind));
    }
  }
  return withTitle(doc.text, title);
}
