import { readCase } from '@tarebook/casebook';
import { lineReader } from '@tarebook/record';
import { topics } from '@tarebook/rules';
import { beforeAll, expect, test } from 'vitest';
import { openReader } from '../state/reading';
import { openTopic } from '../state/topics';
import { noDraft } from './draft';
import { caseOfLine, markKey } from './line-case';
import { titleOf } from './line-words';

const read = lineReader(topics);
const towFit = topics['tow-fit'];
if (!towFit) throw new Error('Tow fit is gone.');

beforeAll(async () => {
  await Promise.all([openReader(), openTopic('tow-fit')]);
});

const line = 'crossover rated five thousand, trailer thirty-nine hundred, four of us and a dog';
const asked = ['vehicle.maxTrailerWeight', 'trailer.dryWeight'];
const made = (text: string, corrected = noDraft) =>
  readCase(
    caseOfLine(towFit, asked, read(text, 'tow-fit').marks, text, corrected, 'Tow fit, today'),
  );

test('a line is a case with its facts, its people, its own words, and where each was said', () => {
  const { facts, readFrom, front, troubles } = made(line);
  expect(troubles).toEqual([]);
  expect(facts['vehicle.maxTrailerWeight']).toBe('5,000 lb');
  expect(readFrom['vehicle.maxTrailerWeight']).toBe('said: “crossover rated five thousand”');
  // Nobody said which weight: it is asked, and not assumed.
  expect(facts['trailer.dryWeight']).toBe('unknown');
  expect(facts['load.occupants']).toHaveLength(5);
  expect(front.title).toBe('Crossover rated five thousand, trailer thirty-nine hundred …');
});

test('what is put right counts, and what is taken away does not', () => {
  const { marks } = read(line, 'tow-fit');
  const open = marks.find(({ kind }) => kind === 'open');
  const dog = marks.find((mark) => mark.kind === 'people' && mark.who === 'dog');
  if (!open || !dog) throw new Error('The line is read otherwise now.');
  const { facts } = made(line, {
    ...noDraft,
    dropped: [markKey(dog, line)],
    chosen: { [markKey(open, line)]: 'trailer.dryWeight' },
    values: { 'vehicle.maxTrailerWeight': '5200 lb', 'trailer.gvwr': '4900 lb' },
    counts: { adult: 2 },
  });
  expect(facts).toMatchObject({
    'vehicle.maxTrailerWeight': '5200 lb',
    'trailer.dryWeight': '3,900 lb',
    'trailer.gvwr': '4900 lb',
  });
  expect(facts['load.occupants']).toHaveLength(2);
});

test.each([
  '---\ntitle: x',
  '| a | b |\n| - | - |\n rated 5000 | <script>',
  '# rated 5000',
  '1. rated 5000 `x` ![a](javascript:1)',
  'rated 5000 \\| **x** {::options}',
])('nothing that is typed is taken for more than words: %s', (text) => {
  const { troubles, facts, front } = made(text);
  expect(troubles).toEqual([]);
  expect(front.topic).toBe('tow-fit');
  expect(Object.keys(facts).filter((id) => facts[id] !== 'unknown')).toEqual(
    text.includes('5000') ? ['vehicle.maxTrailerWeight'] : [],
  );
});

test('a line with a colon, whose title needs quotes, is a case with everybody in it', () => {
  const { facts, front, troubles } = made('crossover rated 3,500, we are four: which, and why?');
  expect(troubles).toEqual([]);
  expect(facts['load.occupants']).toHaveLength(4);
  expect(front.title).toBe('Crossover rated 3,500, we are four: which, and why?');
});

test('a line too short to be a name has the topic for one', () => {
  expect(titleOf(' ', 'Tow fit')).toBe('Tow fit');
  expect(titleOf('a truck', 'Tow fit')).toBe('A truck');
});
