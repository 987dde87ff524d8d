import { nearest, type Topic } from '@tarebook/rules/engine';
import type { Nodes } from 'mdast';
import { namesOf } from './expect';
import type { Note } from './front';
import type { Grid } from './tables';

type Names = {
  /** Ids of facts, those they had before too. */
  readonly facts: readonly string[];
  /** What an Expect table may name. */
  readonly results: readonly string[];
  /** Labels of facts that are no lists. */
  readonly labels: readonly string[];
  /** Each list by its id and its label, with what its columns may be called. */
  readonly lists: readonly {
    readonly called: readonly string[];
    readonly columns: readonly string[];
  }[];
};

const lower = (text: string): string => text.trim().toLowerCase();

function namesIn(topic: Topic): Names {
  const all = Object.entries(topic.facts);
  return {
    facts: [...Object.keys(topic.facts), ...Object.keys(topic.renamed ?? {})],
    results: [...namesOf(topic).keys()],
    labels: all.flatMap(([, fact]) => (fact.kind === 'rows' ? [] : [lower(fact.label)])),
    lists: all.flatMap(([id, fact]) =>
      fact.kind === 'rows'
        ? [
            {
              called: [id, fact.label],
              columns: Object.entries(fact.columns).flatMap(([name, { label }]) => [
                lower(name),
                lower(label),
              ]),
            },
          ]
        : [],
    ),
  };
}

const none: Names = { facts: [], results: ['verdict'], labels: [], lists: [] };

/** All that a word becomes with one letter taken out, and the word. */
const lessOne = (word: string): readonly string[] => [
  word,
  ...Array.from(word, (_, at) => word.slice(0, at) + word.slice(at + 1)),
];

/** Whether one letter more, less, other or in another place makes one word of the other. */
const almost = (one: string, other: string): boolean =>
  one !== other && lessOne(one).some((each) => lessOne(other).includes(each));

/** What a table that is read is headed, with what people write for it. */
const headings = {
  Fact: ['fact', 'facts'],
  Expect: ['expect', 'expects', 'expected'],
} as const;

/**
 * The heading that was meant, where a heading is not quite it; short words are near many. What only
 * begins like it, as “Factor” or “Expected life” do, heads a table for a reader.
 */
function headingMeant({ head }: Grid): string | undefined {
  const word = lower(head[0]?.text ?? '').replace(/[^\p{L}]/gu, '');
  const values = head.slice(1).some(({ text }) => /^valu/i.test(text));
  for (const [written, known] of Object.entries(headings)) {
    const isKnown = known.some((each) => each === word);
    if (isKnown || (values && known.some((each) => almost(word, each)))) return written;
  }
  return undefined;
}

/** The list that was meant by a heading without its code span, by its id or by label and columns. */
function listMeant({ head }: Grid, { lists }: Names): string | undefined {
  const [first, ...others] = head.map(({ text }) => text);
  const found = lists.find(({ called: [id = '', label = ''], columns }) => {
    if (first?.includes('.')) return nearest(first, [id]) !== undefined;
    const named = nearest(first ?? '', [label]) !== undefined;
    return named && others.some((other) => columns.includes(lower(other)));
  });
  return found && `\`${found.called[0]}\``;
}

const idLike = /^[\p{L}-]+(\.[\p{L}\d]+)+$/u;
const ofRig = /^[a-z-]+(@[^/]+)?\/\S/;

/** A name that only a table which is read may have: of a fact, a list or a result. */
function nameIn(cell: Grid['head'][number], isFirst: boolean, names: Names): string | undefined {
  const name = cell.code ?? cell.text;
  if (name.startsWith('=')) return undefined;
  if (names.facts.includes(name)) return name;
  if (!isFirst || cell.code === undefined) return undefined;
  if (names.results.includes(name) || ofRig.test(name)) return name;
  const known = [...names.facts, ...names.results];
  return idLike.test(name) && nearest(name, known) !== undefined ? name : undefined;
}

/**
 * Notes a table that is not read but was meant to be: under a heading that is nearly a known one, or
 * with the name of a fact or result in it. A table for a reader has neither. What is passed over in
 * silence may be the rating that everything hangs on.
 *
 * @param topic absent for a note, which has no facts
 */
export function noteStray(grid: Grid, topic: Topic | undefined, note: Note): void {
  const names = topic ? namesIn(topic) : none;
  const [first] = grid.head;
  if (!first) return;
  const meant = headingMeant(grid) ?? listMeant(grid, names);
  if (meant !== undefined) {
    note(first.span.start, { code: 'stray-heading', found: first.text, meant });
    return;
  }
  for (const row of [grid.head, ...grid.rows]) {
    for (const [at, cell] of row.entries()) {
      const name = nameIn(cell, at === 0, names);
      if (name === undefined) continue;
      note(cell.span.start, { code: 'stray-name', name, heading: first.text });
      return;
    }
  }
  if (!grid.head.some(({ text }) => lower(text) === 'value')) return;
  const labeled = grid.rows.find(([cell]) => names.labels.includes(lower(cell?.text ?? '')))?.[0];
  if (labeled) {
    note(labeled.span.start, { code: 'stray-name', name: labeled.text, heading: first.text });
  }
}

const barred = /^[ \t>]*\|.*(?<!\\)\|/;
/** A heading and nothing else before its bar. */
const headed = /^[ \t>]*\|?[ \t*_]*(facts?|expect(ed|s)?)[ \t*_:]*\|/i;
/** The name of a fact or result, and a label after it, which is no sentence. */
const named = /^[ \t>]*\|?[ \t]*`(?!=)(verdict|\S*\p{L}[./]\p{L}\S*)`[^|`.;:!?\\]{0,60}\|/u;

/** Notes what looks like a table to a person and is none for Markdown. */
export function noteNoTable(node: Nodes, source: string, note: Note): void {
  const { start, end } = node.position ?? {};
  if (!start || !end) return;
  const text = source.slice(start.offset, end.offset);
  const isCode = node.type === 'code' && !/^[ \t>]*(`{3}|~{3})/.test(text);
  const lines = text.split(/\r?\n/);
  const seen =
    node.type === 'html'
      ? /<table[\s>]/i.test(text)
      : (node.type === 'paragraph' || isCode) &&
        (lines.some((line) => headed.test(line) || named.test(line)) ||
          lines.filter((line) => barred.test(line)).length > 1);
  if (seen) note(start, { code: 'no-table' });
}
