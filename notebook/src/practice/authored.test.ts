import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { topics } from '@tarebook/rules';
import { expect, test } from 'vitest';
import { run } from '../../../packages/cli/src/run.fixture';
import { openReader, openYaml } from '../state/reading';
import { openTopic } from '../state/topics';
import { type Authored, resultsOf, written } from './authored';

const crossover: Authored = {
  title: 'A crossover: & a "box"',
  topic: 'tow-fit',
  question: '“Will it pull the box?”\n\n---\ntopic: gas-supply\n:::predict{result="verdict"}',
  facts: [
    { id: 'vehicle.maxTrailerWeight', value: '3,500 lb', readFrom: 'manual | page 12' },
    { id: 'vehicle.placardPayload', value: '1,000 lb', readFrom: 'door label' },
    { id: 'vehicle.maxTongueCarried', value: '350', readFrom: '' },
    { id: 'trailer.dryWeight', value: '2,000 lb', readFrom: 'sticker' },
    { id: 'trailer.dryTongueWeight', value: '220 lb', readFrom: 'sticker' },
    { id: 'trailer.gvwr', value: '', readFrom: '' },
  ],
  rows: [
    { list: 'load.occupants', label: 'Driver', amount: '180 lb' },
    { list: 'trailer.cargo', label: 'Bikes | two', amount: '300 lb' },
  ],
  predict: 'trailer.loaded',
  within: '20 lb',
  prompt: 'What does the box weigh, loaded?',
  why: 'Sticker and bikes: `= trailer.loaded`.',
  expect: {},
};
const rules = () => {
  const topic = topics['tow-fit'];
  if (!topic) throw new Error('There is no tow-fit.');
  return topic;
};
const write = async (part: Partial<Authored> = {}) => {
  await Promise.all([openTopic('tow-fit'), openReader(), openYaml()]);
  return written({ ...crossover, ...part }, rules());
};

test('a case typed on the page holds, whatever is typed into it stays text', async () => {
  const { text, wrong, found } = await write();
  expect(wrong).toEqual([]);
  expect(found['trailer.loaded']).toBe('2,300 lb');
  expect(text).toContain('| `trailer.loaded` | 2,300 lb |');
  expect(text).toContain('manual \\| page 12');
  expect(text).toContain('| 350 lb |');
  expect(text.match(/^:::predict/gm)).toHaveLength(1);
});

test('what is missing, cannot be read or does not come out is said, and nothing is saved as if it held', async () => {
  expect((await write({ title: ' ' })).wrong.join()).toContain('The title is empty');
  const [row] = crossover.facts;
  const heavy = row ? [{ ...row, value: 'heavy' }] : [];
  expect((await write({ facts: heavy })).wrong.join()).toContain('heavy');
  expect((await write({ expect: { 'trailer.loaded': '2,400 lb' } })).wrong).toEqual([
    'trailer.loaded: you say “2,400 lb”, and “2,300 lb” comes out.',
  ]);
  expect((await write({ expect: { verdict: 'perhaps' } })).wrong.join()).toContain('perhaps');
});

test('of several kinds of topic all that may be asked for can be said to come out', async () => {
  for (const id of ['tow-fit', 'spares-kit', 'service-triage']) {
    await Promise.all([openTopic(id), openReader()]);
    const topic = topics[id];
    if (!topic) throw new Error(`There is no ${id}.`);
    for (const { id: result } of resultsOf(topic)) {
      const blank = { title: 'x', topic: topic.id, question: 'x', facts: [], rows: [], why: '' };
      const { wrong, text } = written(
        { ...blank, predict: result, within: '', prompt: '', expect: {} },
        topic,
      );
      expect(wrong, `${topic.id} ${result}\n${text}`).toEqual([]);
    }
  }
});

test('the command line’s own check accepts what the page writes, and refuses it with another figure', async () => {
  const { text } = await write();
  const folder = mkdtempSync(join(tmpdir(), 'tarebook-'));
  try {
    const [good, bad] = ['good.md', 'bad.md'].map((file) => join(folder, file));
    writeFileSync(good ?? '', text);
    writeFileSync(bad ?? '', text.replace('| 2,300 lb |', '| 2,301 lb |'));
    expect((await run(['check', good ?? ''])).status).toBe(0);
    expect((await run(['check', bad ?? ''])).status).toBe(1);
  } finally {
    rmSync(folder, { recursive: true });
  }
});
