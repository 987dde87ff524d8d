import type { CaseDocument, ListRow } from '@tarebook/casebook';
import type { Source } from '@tarebook/rules/engine';

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

export const isMentioned = ({ blocks }: CaseDocument): boolean =>
  blocks.some((block) => block.kind === 'list' && block.fact === peopleList);

/** The rules count one driver where a case says nothing of who comes along; so does the page. */
export const labelsOf = (doc: CaseDocument): readonly string[] =>
  isMentioned(doc) ? rowsOf(doc, peopleList).map(({ label }) => label) : ['Driver'];

export const countOf = (doc: CaseDocument, kind: Person): number =>
  labelsOf(doc).filter((label) => kindOf(label) === kind).length;

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
