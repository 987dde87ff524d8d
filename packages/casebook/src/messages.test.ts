import { expect, test } from 'vitest';
import { type Fault, sayFault } from './messages';

/** Every fault with something in each of its places; one that is added here is missed by the compiler. */
const faults: { readonly [C in Fault['code']]: Extract<Fault, { code: C }> } = {
  'over-budget': { code: 'over-budget', of: 'nesting', most: 20 },
  nul: { code: 'nul' },
  'too-deep': { code: 'too-deep' },
  'no-text': { code: 'no-text' },
  'no-front': { code: 'no-front' },
  'front-syntax': { code: 'front-syntax', found: 'a tab' },
  'front-list': { code: 'front-list' },
  'front-colon': { code: 'front-colon' },
  'front-unread': { code: 'front-unread' },
  alias: { code: 'alias' },
  'front-key': { code: 'front-key', key: 'tilte', near: 'title' },
  'front-value': { code: 'front-value', key: 'level', found: 'x', wanted: 'starter', near: 'y' },
  'no-topic': { code: 'no-topic', known: 'tow-fit' },
  'unknown-topic': { code: 'unknown-topic', found: 'tow', known: 'tow-fit', near: 'tow-fit' },
  'is-a-note': { code: 'is-a-note' },
  'is-a-rig': { code: 'is-a-rig' },
  moment: { code: 'moment', found: 'hom', near: 'home' },
  'moment-twice': { code: 'moment-twice', name: 'home' },
  'no-note': { code: 'no-note' },
  'front-missing': { code: 'front-missing', key: 'say', wanted: 'a sentence' },
  'link-part': { code: 'link-part', key: 'address' },
  'link-address': { code: 'link-address', found: 'ftp://' },
  'no-rows': { code: 'no-rows' },
  'note-empty': { code: 'note-empty' },
  'leans-on': { code: 'leans-on', found: 'x' },
  'no-id': { code: 'no-id', found: 'x', wanted: 'an id' },
  'no-column': { code: 'no-column', column: 'Value', table: 'the facts' },
  'strange-column': {
    code: 'strange-column',
    found: 'Heft',
    list: 'trailer.cargo',
    wanted: 'Weight',
    near: 'Weight',
  },
  'column-twice': { code: 'column-twice', found: 'A', table: 'the facts', column: 2, first: 'a' },
  'not-a-list': { code: 'not-a-list', found: 'trailer.gvwr', near: 'trailer.cargo' },
  'stray-heading': { code: 'stray-heading', found: 'Facts', meant: 'Fact' },
  'stray-name': { code: 'stray-name', name: 'trailer.gvwr', heading: 'Item' },
  'no-table': { code: 'no-table' },
  twice: { code: 'twice', name: 'trailer.gvwr', line: 7 },
  empty: { code: 'empty', name: 'trailer.gvwr' },
  'unknown-name': { code: 'unknown-name', name: 'x', what: 'a fact', topic: 'tow-fit', near: 'y' },
  'expect-word': { code: 'expect-word', name: 'verdict', found: 'x', wanted: 'fits', near: 'y' },
  'expect-value': { code: 'expect-value', name: 'x', found: 'y', wanted: 'a number' },
  'predict-open': { code: 'predict-open' },
  'predict-result': { code: 'predict-result' },
  'predict-within': { code: 'predict-within', found: 'x' },
  directive: { code: 'directive', found: 'predct', near: 'predict' },
};

const hole = / {2}|“\s*”|(?<!`)``(?!`)|\s[,;:]|\s\.(?!\.)|[,;:]\s*[.;,]|undefined/;
/** What a person types and may leave empty; of a broken front matter it is what its reader says. */
const typed = ['found', 'name', 'column', 'first', 'list'];

test.each(Object.values(faults))(
  '$code is said without a hole, with an empty text too',
  (fault) => {
    const emptied = Object.fromEntries(
      Object.entries(fault).map(([key, value]) => [
        key,
        typed.includes(key) && typeof value === 'string' && fault.code !== 'front-syntax'
          ? ''
          : value,
      ]),
    );
    // The keys are those of the fault; only what was typed is gone.
    for (const said of [sayFault(fault), sayFault({ ...fault, ...emptied } as Fault)]) {
      expect(said).not.toMatch(hole);
      expect(said).toMatch(/^[A-Z`“]/);
      expect(said).toMatch(/[.?]$/);
    }
  },
);
