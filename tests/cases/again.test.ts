import { readdirSync, readFileSync } from 'node:fs';
import { judged } from '@tarebook/casebook';
import { again, mergeLedgers, readLedger } from '@tarebook/record';
import { answerTraced, defineTopic, formOf, type Topic } from '@tarebook/rules/engine';
import { towFit } from '@tarebook/rules/tow-fit';
import { expect, test } from 'vitest';
import { readFiled } from './filed';

const day = '2026-11-30';
const folder = new URL('../../cases/tow-fit/', import.meta.url);
const filed = readdirSync(folder).map((name) => ({
  name,
  doc: readFiled(readFileSync(new URL(name, folder), 'utf8')),
}));

/** Tow fit with another add-on to a dry tongue. */
function withAddOn(value: number): Topic {
  const plain: Topic = towFit;
  const addOn = plain.parameters['tongue.addOn'];
  if (!addOn) throw new Error('The add-on is gone.');
  const values = [{ from: '2020-01-01', value }];
  return defineTopic<Topic>({
    ...plain,
    parameters: { ...plain.parameters, 'tongue.addOn': { ...addOn, values } },
  });
}

/** What was answered to every filed case of tow fit, in the form in which it left. */
const ledger = readLedger({
  version: 1,
  entries: filed
    .filter(({ doc }) => doc.front.topic === 'tow-fit' && doc.troubles.length === 0)
    .map(({ name, doc: { facts } }) => {
      const asked = { facts, asOf: day };
      const answer = answerTraced(towFit, asked);
      const saved: unknown = JSON.parse(JSON.stringify(judged(answer, { facts })));
      return { id: name, day, form: 'post', text: formOf('post', towFit, asked), saved };
    }),
});

test('of all filed cases exactly those are listed whose sentence an add-on of 13 % changes', () => {
  expect(ledger.entries.length).toBeGreaterThan(20);
  const topics = { 'tow-fit': withAddOn(13) };
  const listed = again(ledger, { topics, day }).filter(({ state }) => state !== 'same');
  const sentence = (topic: Topic, { id }: { readonly id: string }): string => {
    const facts = filed.find(({ name }) => name === id)?.doc.facts ?? {};
    return answerTraced(topic, { facts, asOf: day }).sentence;
  };
  const changed = ledger.entries.filter(
    (each) => sentence(topics['tow-fit'], each) !== sentence(towFit, each),
  );
  expect(listed.map(({ id }) => id)).toEqual(changed.map(({ id }) => id));
  expect(changed.length).toBeGreaterThan(2);
  expect(changed.length).toBeLessThan(ledger.entries.length);
  // At the add-on of today nothing is listed.
  const same = again(ledger, { topics: { 'tow-fit': withAddOn(10) }, day });
  expect(same.filter(({ state }) => state !== 'same')).toEqual([]);
});

test('two colleagues’ ledgers merge, whichever comes first, and none of either’s words is lost', () => {
  const [first, second, third] = ledger.entries;
  if (!first || !second || !third) throw new Error('Too few cases are filed.');
  const mine = readLedger({ version: 1, entries: [first, second] });
  const theirs = readLedger({
    version: 1,
    entries: [second, { ...first, text: 'In other words.' }, third],
  });
  const texts = (of: typeof mine) => of.entries.map(({ text }) => text).toSorted();
  const both = mergeLedgers(mine, theirs);
  expect(texts(both)).toEqual(texts(mergeLedgers(theirs, mine)));
  expect(texts(both)).toEqual([first.text, second.text, third.text, 'In other words.'].toSorted());
  expect(mergeLedgers(both, theirs)).toEqual(both);
});
