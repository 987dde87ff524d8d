import {
  addRow,
  judgeCase,
  judgeCaseNow,
  judgeNote,
  judgeRig,
  readCase,
  readNote,
  readRig,
  setFact,
} from '@tarebook/casebook';
import { again, mergeLedgers, reader, readMessages, splitBunch, urgentIn } from '@tarebook/record';
import { topics } from '@tarebook/rules';
import { InputError, sayProblem } from '@tarebook/rules/engine';
import { towFit } from '@tarebook/rules/tow-fit';
import { readCatalogue, which, whichSaid } from '@tarebook/sweep';
import { programAtHand, sweeping } from '@tarebook/sweep/many';
import { expect, test } from 'vitest';

// Called as a program without a compiler calls it.
// biome-ignore lint/suspicious/noExplicitAny: what a caller without types hands over
type Loose = any;
const any = (value: unknown): Loose => value;

const doc = readCase('---\ntitle: x\ntopic: tow-fit\n---\n\nSo?\n');
const troubled = readCase('---\ntitle: x\ntopic: tow-fit\n---\n\n`= nothing.there`\n');
const catalogue = readCatalogue({ 'trailers.csv': 'name,gvwr\nHeron 14,2600\n' });
const ledger = { version: 1, entries: [] } as const;
const day = '2026-11-28';
const facts = { 'vehicle.maxTrailerWeight': '5,000 lb' };

test.each<readonly [string, () => unknown, string]>([
  ['readCase of null', () => readCase(any(null)), 'text'],
  ['readCase of bytes', () => readCase(any(new Uint8Array(3))), 'text'],
  ['readRig of null', () => readRig(any(null)), 'text'],
  ['readNote of null', () => readNote(any(null)), 'text'],
  ['judgeCaseNow of a text', () => judgeCaseNow(any('a text')), 'document'],
  ['judgeCase of null', () => judgeCase(any(null)), 'document'],
  ['judgeRig of null', () => judgeRig(any(null), topics), 'document'],
  ['judgeNote of a text', () => judgeNote(any('a'), day), 'document'],
  ['judgeCaseNow with troubles', () => judgeCaseNow(troubled), '6:1'],
  ['setFact of a number', () => setFact(doc, 'trailer.gvwr', any(5000)), 'value'],
  ['setFact of null', () => setFact(doc, 'trailer.gvwr', any(null)), 'value'],
  ['setFact in nothing', () => setFact(any(null), 'trailer.gvwr', '5 lb'), 'document'],
  ['addRow of a number', () => addRow(doc, 'load.cargo', 'Box', any({ weight: 5 })), 'value'],
  ['again of nothing', () => again(any(null), { topics, day }), 'ledger'],
  ['again without rules', () => again(ledger, any({ day })), 'options.topics'],
  [
    'again with a list of rules',
    () => again(ledger, any({ topics: [towFit], day })),
    'options.topics',
  ],
  ['again on no day', () => again(ledger, { topics, day: 'today' }), 'options.day'],
  ['again with a strange key', () => again(ledger, any({ topics, day, hous: [] })), 'options'],
  ['mergeLedgers with null', () => mergeLedgers(ledger, any(null)), 'theirs'],
  ['readMessages of null', () => readMessages(any(null), { topics }), 'messages'],
  ['readMessages of texts', () => readMessages(any(['a text']), { topics }), 'messages.0'],
  [
    'readMessages of other keys',
    () => readMessages(any([{ id: 'a', body: 'a text' }]), { topics }),
    'messages.0.text',
  ],
  ['reader without rules', () => reader(any({})), 'options.topics'],
  ['urgentIn null', () => urgentIn(any(null)), 'text'],
  ['splitBunch null', () => splitBunch(any(null)), 'text'],
  ['readCatalogue of null', () => readCatalogue(any(null)), 'files'],
  ['readCatalogue of a text', () => readCatalogue(any('name,gvwr')), 'files'],
  ['readCatalogue of trailer.csv', () => readCatalogue(any({ 'trailer.csv': 'name' })), 'files'],
  ['readCatalogue of bytes', () => readCatalogue(any({ 'trailers.csv': 5 })), 'files.trailers.csv'],
  ['which of nothing', () => which(any({}), { facts }), 'catalogue.vehicles'],
  ['which of null', () => which(any(null), { facts }), 'catalogue'],
  ['which without facts', () => which(catalogue, any({})), 'asked.facts'],
  ['which of neither', () => which(catalogue, { facts: {} }), 'asked.facts'],
  ['which with asof', () => which(catalogue, any({ facts, asof: day })), 'asked'],
  [
    'whichSaid, swapped',
    () => whichSaid(any(which(catalogue, { facts })), any(towFit)),
    'topic.outcomes',
  ],
  ['sweeping nothing', () => sweeping(any({})), 'asked.facts'],
  ['programAtHand of a name', () => programAtHand(any('tow-fit')), 'topic'],
])('%s is told in full', async (_, enter, place) => {
  const problem = await (async () => enter())().then(
    () => undefined,
    (found: unknown) => found,
  );
  expect(problem).toBeInstanceOf(InputError);
  if (!(problem instanceof InputError)) return;
  const [first] = problem.problems;
  expect(first?.fact).toBe(place);
  expect(first?.code).not.toBe('');
  expect(first?.wanted).not.toBe('');
  expect(first && sayProblem(first)).toMatch(/^[^\n]{15,}[.?]$/);
});

test('a key that is nearly one is offered', () => {
  expect(() => readCatalogue(any({ 'trailer.csv': 'name' }))).toThrow(
    'Did you mean `trailers.csv`?',
  );
  expect(() => which(catalogue, any({ facts, asof: day }))).toThrow('Did you mean `asOf`?');
});
