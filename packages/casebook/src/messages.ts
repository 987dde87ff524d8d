import { type Budgeted, budgeted } from './budget';
import type { Place, Trouble } from './shapes';
import { onOneLine } from './unseen';

/** What can be wrong with a document beyond its facts, as data; said in words here alone. */
export type Fault =
  | { readonly code: 'over-budget'; readonly of: Budgeted; readonly most: number }
  | { readonly code: 'nul' }
  | { readonly code: 'too-deep' }
  | { readonly code: 'no-text' }
  | { readonly code: 'no-front' }
  | { readonly code: 'front-syntax'; readonly found: string }
  | { readonly code: 'front-list' }
  | { readonly code: 'front-colon' }
  | { readonly code: 'front-unread' }
  | { readonly code: 'alias' }
  | { readonly code: 'front-key'; readonly key: string; readonly near: string }
  | {
      readonly code: 'front-value';
      readonly key: string;
      readonly found: string;
      readonly wanted: string;
      readonly near?: string;
    }
  | { readonly code: 'no-topic'; readonly known: string }
  | {
      readonly code: 'unknown-topic';
      readonly found: string;
      readonly known: string;
      readonly near?: string;
    }
  | { readonly code: 'is-a-note' }
  | { readonly code: 'is-a-rig' }
  | { readonly code: 'moment'; readonly found: string; readonly near: string }
  | { readonly code: 'moment-twice'; readonly name: string }
  | { readonly code: 'no-note' }
  | { readonly code: 'front-missing'; readonly key: string; readonly wanted: string }
  | { readonly code: 'link-part'; readonly key: string }
  | { readonly code: 'link-address'; readonly found: string }
  | { readonly code: 'no-rows' }
  | { readonly code: 'note-empty' }
  | { readonly code: 'leans-on'; readonly found: string }
  | { readonly code: 'no-id'; readonly found: string; readonly wanted: string }
  | { readonly code: 'no-column'; readonly column: string; readonly table: string }
  | {
      readonly code: 'strange-column';
      readonly found: string;
      readonly list: string;
      readonly wanted: string;
      readonly near?: string;
    }
  | {
      readonly code: 'column-twice';
      readonly found: string;
      readonly table: string;
      /** Where in the line the first of them stands, and its heading. */
      readonly column: number;
      readonly first: string;
    }
  | { readonly code: 'not-a-list'; readonly found: string; readonly near?: string }
  | { readonly code: 'stray-heading'; readonly found: string; readonly meant: string }
  | { readonly code: 'stray-name'; readonly name: string; readonly heading: string }
  | { readonly code: 'no-table' }
  | { readonly code: 'twice'; readonly name: string; readonly line: number }
  | { readonly code: 'empty'; readonly name: string }
  | {
      readonly code: 'unknown-name';
      readonly name: string;
      readonly what: string;
      readonly topic: string;
      readonly near?: string;
    }
  | {
      readonly code: 'expect-word';
      readonly name: string;
      readonly found: string;
      readonly wanted: string;
      readonly near?: string;
    }
  | {
      readonly code: 'expect-value';
      readonly name: string;
      readonly found: string;
      readonly wanted: string;
    }
  | { readonly code: 'predict-open' }
  | { readonly code: 'predict-result' }
  | { readonly code: 'predict-within'; readonly found: string }
  | { readonly code: 'directive'; readonly found: string; readonly near: string };

const hint = (near: string | undefined): string =>
  near === undefined ? '' : ` Did you mean \`${near}\`?`;

function sayOver(of: Budgeted, most: number): string {
  const many = `${most.toLocaleString('en-US')} ${budgeted[of]}`;
  if (of === 'lineCharacters') return `There are more than ${many}; break the line.`;
  if (of === 'nesting') {
    return `Something is nested too deep to be read, more than ${many}; a case needs no more than a list in a quotation.`;
  }
  if (of === 'indent') return `There are more than ${many}; take out those it does not need.`;
  return `The document has more than ${many}; a case needs a tenth of them, so split it into several.`;
}

/** Where nothing was written there is nothing to quote. */
const withoutGaps = (said: string): string =>
  said.replaceAll(/“\s*”|(?<!\S)`\s*`/g, 'an empty text').replace(/^an/, 'An');

/** One sentence: what was found and what would be right. */
export const sayFault = (fault: Fault): string => withoutGaps(worded(fault));

function worded(fault: Fault): string {
  switch (fault.code) {
    case 'over-budget':
      return sayOver(fault.of, fault.most);
    case 'too-deep':
      return 'Something in the document is nested too deep to be read; a case needs no more than a list in a quotation.';
    case 'nul':
      return 'There is a NUL character here; a case is plain text, so take it out.';
    case 'no-text':
      return 'The document is empty; begin it with `---`, `title:`, `topic:` and `---`.';
    case 'no-front':
      return 'The document does not begin with front matter; begin it with `---`, `title:`, `topic:` and `---`.';
    case 'front-syntax':
      return `The front matter is not YAML: ${fault.found}; write one \`key: value\` a line.`;
    case 'front-list':
      return 'The front matter is not a list of keys and values; write one `key: value` a line.';
    case 'front-colon':
      return 'A value of the front matter holds a colon and a space; put it in quotes, such as `title: "He said: it fits"`.';
    case 'front-unread':
      return 'The front matter holds more than `key: words` lines, and what reads YAML is not here yet; reload the page.';
    case 'alias':
      return 'The front matter has a YAML anchor or alias; write the value out where it is needed.';
    case 'front-key':
      return `\`${fault.key}\` is not a key of the front matter.${hint(fault.near)}`;
    case 'front-value':
      return `\`${fault.key}\` is “${fault.found}”; write ${fault.wanted}.${hint(fault.near)}`;
    case 'no-topic':
      return `The front matter names no topic; add \`topic:\` with one of ${fault.known}.`;
    case 'unknown-topic':
      return `There is no topic “${fault.found}”; the topics are ${fault.known}.${hint(fault.near)}`;
    case 'is-a-note':
      return 'This is a note, which has no facts and no rules to be judged by; it is opened as a note.';
    case 'is-a-rig':
      return 'This is a whole rig, which every topic is asked about; `tarebook judge` answers it, and a case has one topic.';
    case 'moment':
      return `“${fault.found}” is no moment of this rig. Did you mean ${fault.near}?`;
    case 'moment-twice':
      return `“${fault.name}” has a heading above already; put all of a moment under one.`;
    case 'no-note':
      return 'This is no note; a note has `topic: note` in its front matter.';
    case 'front-missing':
      return `The front matter has no \`${fault.key}:\`; a note wants ${fault.wanted} there.`;
    case 'link-part':
      return `This link has no \`${fault.key}:\`; a link is \`- label: what is there\` and \`address: https://…\` below it.`;
    case 'link-address':
      return `“${fault.found}” is no address to open; write one that begins with https://.`;
    case 'no-rows':
      return 'A note has no facts; write a worked case for what has to be reckoned, and let the note lean on it.';
    case 'note-empty':
      return 'The note says nothing; write the answer below the front matter.';
    case 'leans-on':
      return `\`leans-on\` is “${fault.found}”; write the path of a worked case, such as ../tow-fit/payload-not-known.md.`;
    case 'no-id':
      return `“${fault.found}” has no id; begin the cell with ${fault.wanted} in a code span.`;
    case 'no-column':
      return `The table of ${fault.table} has no column “${fault.column}”; add it.`;
    case 'strange-column':
      return `“${fault.found}” is not a column of \`${fault.list}\`; its columns are ${fault.wanted}.${hint(fault.near)}`;
    case 'column-twice': {
      const as = fault.first === fault.found ? '' : ` as “${fault.first}”`;
      return `The column “${fault.found}” of ${fault.table} is given twice, first in column ${fault.column}${as}; keep one of them.`;
    }
    case 'not-a-list':
      return `\`${fault.found}\` is not a list of facts, so it cannot head a table of rows.${hint(fault.near)}`;
    case 'stray-heading':
      return `A table headed “${fault.found}” is not read, and nothing in it counts. Did you mean ${fault.meant.startsWith('`') ? fault.meant : `“${fault.meant}”`}?`;
    case 'stray-name':
      return `\`${fault.name}\` stands in a table that is not read, as it is headed “${fault.heading}”; head it “Fact” for what is told or “Expect” for what must come out, or name no fact or result there.`;
    case 'no-table':
      return 'This is no table as it is read here, and nothing in it counts; begin every line at the left with a bar, and put a line such as `| --- | --- |` with as many parts below the headings.';
    case 'twice':
      return `\`${fault.name}\` is given twice, first in line ${fault.line}; keep one of them.`;
    case 'empty':
      return `\`${fault.name}\` has no value; write one, or “unknown”.`;
    case 'unknown-name':
      return `\`${fault.name}\` is not ${fault.what} of ${fault.topic}.${hint(fault.near)}`;
    case 'expect-word':
      return `\`${fault.name}\` cannot be “${fault.found}”; write one of ${fault.wanted}.${hint(fault.near)}`;
    case 'expect-value':
      return `\`${fault.name}\`: “${fault.found}” cannot be compared; write ${fault.wanted}.`;
    case 'predict-open':
      return 'This `:::predict` is never closed; end it with a line of `:::`.';
    case 'predict-result':
      return '`predict` names no result; write `:::predict{result="tongue.loaded" within="20 lb"}`.';
    case 'predict-within':
      return `\`within\` is “${fault.found}”; write a number with its unit, such as “20 lb”.`;
    case 'directive':
      return `\`:::${fault.found}\` is not known here.${hint(fault.near)}`;
  }
}

/** What a message quotes is cut where nobody would read on. */
const brief = (says: string): string =>
  says.replace(/([“`])([^“”`]{60})[^“”`]{20,}([”`])/g, '$1$2…$3');

/** A message must not be able to reorder or break the line it stands in. */
export function trouble(place: Pick<Place, 'line' | 'column'>, says: string): Trouble {
  return { line: place.line, column: place.column, says: brief(onOneLine(says)) };
}
