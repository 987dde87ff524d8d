import { addRow, type CaseDocument, type ListRow, removeRow } from '@tarebook/casebook';
import type { Source } from '@tarebook/rules/engine';
import { readDocument } from './reading';

/** The list of those who ride along, in every topic that asks for them. */
export const peopleList = 'load.occupants';

export const kindsOfPeople = ['adult', 'child', 'dog'] as const;
export type Person = (typeof kindsOfPeople)[number];

type Counted = {
  readonly one: string;
  readonly many: string;
  /** Taken until somebody says better. */
  readonly weight: string;
  readonly source: Source;
  /** What they are called in a list. */
  readonly called: RegExp;
};

const house = (cite: string): Source => ({ class: 'house', cite });

export const people: Readonly<Record<Person, Counted>> = {
  adult: {
    one: 'adult',
    many: 'adults',
    weight: '150 lb',
    source: { class: 'published', cite: '49 CFR 571.110', section: 'S3, 68 kg an occupant' },
    called:
      /\b(adult|driver|partner|wife|husband|mother|father|grand(mother|father|ma|pa)|friend)/i,
  },
  child: {
    one: 'child',
    many: 'children',
    weight: '80 lb',
    source: house('Until the parents say what theirs weighs'),
    called: /\b(child|kid|son|daughter|boy|girl|baby|toddler)/i,
  },
  dog: {
    one: 'dog',
    many: 'dogs',
    weight: '60 lb',
    source: house('A large dog with its crate, until the owner says better'),
    called: /\bdogs?\b/i,
  },
};

/** “Dog and crate” is a dog, “Older child” a child; undefined: nobody that can be counted. */
export const kindOf = (label: string): Person | undefined =>
  kindsOfPeople.find((kind) => people[kind].called.test(label));

/** The rows of a list, none where the case does not mention it. */
export const rowsOf = ({ blocks }: CaseDocument, list: string): readonly ListRow[] =>
  blocks.flatMap((block) => (block.kind === 'list' && block.fact === list ? block.rows : []));

const isMentioned = ({ blocks }: CaseDocument): boolean =>
  blocks.some((block) => block.kind === 'list' && block.fact === peopleList);

/** The rules count one driver where a case says nothing of who comes along; so does the page. */
const labelsOf = (doc: CaseDocument): readonly string[] =>
  isMentioned(doc) ? rowsOf(doc, peopleList).map(({ label }) => label) : ['Driver'];

export const countOf = (doc: CaseDocument, kind: Person): number =>
  labelsOf(doc).filter((label) => kindOf(label) === kind).length;

/** A name that no row has yet: “Adult 2”. */
function freeLabel(doc: CaseDocument, kind: Person): string {
  const taken = new Set(labelsOf(doc).map((label) => label.toLowerCase()));
  const word = `${people[kind].one.charAt(0).toUpperCase()}${people[kind].one.slice(1)}`;
  let n = countOf(doc, kind) + 1;
  while (taken.has(`${word} ${n}`.toLowerCase())) n += 1;
  return n === 1 ? word : `${word} ${n}`;
}

const withRow = (doc: CaseDocument, kind: Person, label: string): string =>
  addRow(doc, peopleList, label, { weight: people[kind].weight });

/** With one more of a kind; the driver, whom nobody had to name until then, is named with them. */
export function withOneMore(doc: CaseDocument, kind: Person): string {
  const label = freeLabel(doc, kind);
  const driven = isMentioned(doc) ? doc : readDocument(withRow(doc, 'adult', 'Driver'));
  return withRow(driven, kind, label);
}

/** Without the last of a kind; nobody drives off without a driver. */
export function withOneLess(doc: CaseDocument, kind: Person): string {
  const least = kind === 'adult' ? 1 : 0;
  if (countOf(doc, kind) <= least) return doc.text;
  const at = labelsOf(doc).findLastIndex((label) => kindOf(label) === kind);
  return removeRow(doc, peopleList, at);
}

/** “2 adults, 2 children and 1 dog” */
export function peopleInWords(doc: CaseDocument): string {
  const parts = kindsOfPeople.flatMap((kind) => {
    const n = countOf(doc, kind);
    return n === 0 ? [] : [`${n} ${n === 1 ? people[kind].one : people[kind].many}`];
  });
  const strange = labelsOf(doc).filter((label) => kindOf(label) === undefined).length;
  if (strange > 0) parts.push(`${strange} more`);
  if (parts.length === 0) return 'nobody yet';
  return parts.length === 1
    ? (parts[0] ?? '')
    : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`;
}
